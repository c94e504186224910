"""Sentences beside the items of a chart that speak of them, and say how far they hold.

`Disregard the above.`, `The above applies to chart 904 only.`, `Only if charted.`, `Void`.  What
tells of the waters, of a thing or of the paper as such (`It is not lit.`, `The above positions are
referred to WGS84.`) limits nothing.
"""

from __future__ import annotations

import re
from collections.abc import Set
from typing import Literal

from noticeparse.readers.dates import MONTH
from noticeparse.readers.limiting_words import limits_in, tells_use

Side = Literal["above", "below"]

_ITEMS = (
    r"(?:correction|insertion|addition|deletion|removal|alteration|amendment|change|item|action"
    r"|command|instruction|entry|entrie|order|one)s?"
)
_SAYS = (
    r"(?:is|are|was|were|appl(?:y|ies)|holds?|refers?|relates?|concerns?|should|must|will|shall"
    r"|needs?|to be|may|do|does|only|has|have|affects?|not|cannot|comes?|takes?|valid|effective)\b"
)
_OF_ITEMS = re.compile(
    r"(?:both |all |each |any )?(?:of )?"
    r"(?:(?:the |this |these )?(?P<side>above|foregoing|preceding|following|below|latter|former"
    r"|next)"
    rf"(?:[- ](?:mentioned|named|listed))?(?: {_ITEMS})?"
    r"|(?:this|the present|the above) notice"
    rf"|(?:the|this|these|those|that|both|all|last|first) (?:(?:last|first|two|three) )?{_ITEMS}"
    r"|(?:items?|nos?\.?|entr(?:y|ies)|lines?|corrections?) \(?[0-9]{1,2}\)?"
    r"(?:(?:,| and| to| &|-) ?\(?[0-9]{1,2}\)?)*) " + _SAYS,
    re.IGNORECASE,
)
_OF_THIS = re.compile(rf"(?:this|these|it|they|that|those|both|all|which) {_SAYS}", re.IGNORECASE)
_WEIGHS = re.compile(
    r"\b(?:proposals?|proposed|provisional(?:ly)?|tentative(?:ly)?|draft"
    r"|error|erroneous|wrong(?:ly)?|incorrect(?:ly)?|omit(?:ted)?|ignored?|disregard(?:ed)?"
    r"|cancelled|void|superseded|suspended|postponed|deferred|invalid|valid|in(?:to)? force"
    r"|effective|effect|already (?:been )?(?:made|done|charted|inserted|deleted|applied|included"
    r"|carried out)|on hold|confirmed|confirmation|unconfirmed|optional|examples?"
    r"|for information|exercise|test|(?:not|only) to be (?:done|carried out|applied|made|used"
    r"|inserted|deleted|charted|plotted|omitted)|in pencil|need not)\b",
    re.IGNORECASE,
)
"""Words about whether a command holds, whatever the sentence begins with."""
_LIMITS = re.compile(
    r"\b(?:only|alone|not|if|unless|until|when|once|pending|subject to|after|before|from"
    r"|editions?|charts?|ENCs?|inset|panel|plan|later|temporar(?:y|ily)|hold|withdrawn)\b"
    rf"|\b[0-9]{{1,2}} {MONTH}\b",
    re.IGNORECASE,
)
"""Words that limit what is said of items by that name."""
_APPLIES = re.compile(r"[a-z]+ (?:only )?(?:appl(?:y|ies)|holds?|is valid)\b", re.IGNORECASE)
_CHARTS = re.compile(
    r"(?:(?P<all>(?:both|all|each of the|all of the|all the|every) )charts?|\bcharts? "
    r"(?:(?:[A-Z]{0,3} ?[0-9]{1,6}[A-Z]?|and|&|,|to) ?)+)(?: ?(?:only|alone))?",
    re.IGNORECASE,
)
_ORDER = re.compile(
    r"(?:(?:please|to) )?(?:be )?(?:disregard|ignore|omit|do not|don't|never) "
    r"(?:all |any |both )?(?:the )?(?:of )?"
    r"(?:(?P<side>above|foregoing|preceding|following|below)|this|these|it|them|that|last|"
    rf"{_ITEMS}|insert|delete|add|remove|chart|plot|apply|carry|correct|amend|make|use|enter)\b",
    re.IGNORECASE,
)
_ALONE = re.compile(
    r"(?:(?:the |this )?notice (?:is )?(?:now |hereby )?(?:void|cancell?ed|withdrawn|superseded))"
    r"|(?:to be )?(?:void|null and void|cancelled|superseded|suspended|withdrawn|deferred"
    r"|postponed|disregard(?:ed)?|ignored?|omit(?:ted)?|provisional(?:ly)?|tentative(?:ly)?|unconfirmed"
    r"|(?:an? )?propos(?:al|ed)|draft|(?:an? )?examples?|(?:in )?error|erroneous|wrong|incorrect"
    r"|on hold|in abeyance|optional|specimen|sample|for information|exercise|not applicable|n/a"
    r"|to be confirmed|t\.?b\.?c|in pencil|and not|not so|not now|not yet|rejected|expired"
    r"|revoked|rescinded|hold|held|repeated|temporar(?:y|ily)|test|quote"
    r"|under consideration|or|either|except(?:ing)?|instead(?: of)?|alternative(?:ly)?"
    r"|recommended|later|old|was|as it was|forthcoming|(?:as )?previously(?: [a-z]+ed)?"
    r"|formerly|as amended"
    r"|done(?: already)?)"
    r"(?: only)?",
    re.IGNORECASE,
)
_FRAGMENT = re.compile(
    r"(?:and |but )?(?:only )?(?:if|unless|until|till|once|when(?:ever)?|where(?:ver)?|pending"
    r"|subject to|provided|provisional(?:ly)? (?:on|upon|until)|on receipt|on confirmation"
    r"|(?:up)?on (?:completion|publication|approval)|not (?:to be|yet|before|until|if|when|on"
    r"|for|applicable|valid|in force)|no action|for information|for (?:the )?(?:next|new|old"
    r"|previous|forthcoming) editions?|only (?:on|for|in|from|after|at|the|charts?|editions?)"
    r"|not on|for charts? [A-Z]{0,3}[0-9][^.;]{0,40} (?:only|alone)|applies|valid|effective"
    r"|(?:phase|stage) (?:[0-9]|one|two|three))\b"
    r"(?! navigation| to scale)",
    re.IGNORECASE,
)
_MORE_IS_SAID = re.compile(
    r",|\b(?:will|shall|should|must|may|can|requested|advised|mariners|vessels)\b", re.IGNORECASE
)
_IS_SAID = re.compile(r"\b(?:is|are|was|were|has|have|had)\b", re.IGNORECASE)
_HEADS_CHART = re.compile(
    r"(?:please )?(?:also )?(?:correct|amend)\b|(?:on |for )?charts? (?![^(\[]*\b(?:only|not)\b)",
    re.IGNORECASE,
)
_SIGNED = re.compile(
    r"(?i:(?:done|given|signed|dated|issued|made|sealed)"
    r"(?: under (?:my|our|the) (?:hand|seal)s?)?,? (?:at|in) )[A-Z][A-Za-z' -]{1,60}?"
    r",? (?i:(?:on |this )?(?:the )?"
    rf"[0-9]{{1,2}}(?:st|nd|rd|th)?(?: day)?(?: of)? {MONTH}\.?,? [0-9]{{4}})"
)
"""How a decree closes: `Done at Quill on 5 March 2026`; the day is that of the notice."""
_LONGEST_ASIDE = 7
"""Blanks in a few words without a verb."""
_STAYS = re.compile(
    r"\b(?:not be|not (?:now |yet )?to be) (?:deleted|inserted|removed|charted|plotted|applied"
    r"|added|amended|moved|expunged)\b|\b(?:be|is|are) retained\b|\bto remain\b"
    r"|\bremains? charted\b"
    r"|\bno (?:correction|change|insertion|deletion)s? (?:is|are) (?:to be|required|needed)\b"
    r"|\bnone of (?:the above|these|them)\b"
    r"|\b(?:replaces|supersedes|cancels) the (?:above|foregoing)",
    re.IGNORECASE,
)
"""What says in a sentence, whatever its subject, that a command is not to be carried out."""
_ANNOUNCES = re.compile(r"\b(?:following|below)\b|:\s*$", re.IGNORECASE)
_KEY = re.compile(
    r"(?:remarks?|notes?|n\.?b\.?|stop press|comments?|status|state|validity|important|caution"
    r"|attention) ?[:.–-]+ *",
    re.IGNORECASE,
)
_COUNT = re.compile(r"^[0-9]{1,2}[).] (?=[A-Z])")
"""The mark of a note in front of it: `(1) For chart 904 only.`"""
_NOT_AFFECTED = re.compile(
    r"\b(?:not|un)[ -]?(?:affected|concerned|to be corrected)\b(?! by (?!this|these|the above))"
    r"|[0-9] (?:only )?(?:if|unless|until|when|once)\b"
    r"|\bneeds? no correct|\bno (?:corrections?|changes?|action)\b",
    re.IGNORECASE,
)


def plain_sentence(words: str) -> str:
    """A sentence without its marks and the key in front of it: `Remarks: void.` is `void`."""
    plain = _COUNT.sub("", " ".join(words.split()).strip("()[]*-–:,. "))
    return plain[key.end() :] if (key := _KEY.match(plain)) is not None else plain


def limits_items(words: str, charts: Set[str] = frozenset()) -> Side | None:
    """Which items a sentence that names them limits: those above it, those below, or none.

    That they are for all `charts` under which they stand is no limit.
    """
    plain = plain_sentence(words)
    said = _without_charts(plain, charts)
    found = _ORDER.match(plain)
    if found is None:
        found = _OF_ITEMS.match(plain)
        if found is not None and not (_LIMITS.search(said) or _WEIGHS.search(said)):
            found = None
    if found is not None:
        is_below = (found["side"] or "").lower() in ("following", "below", "next")
        return "below" if is_below else "above"
    if _STAYS.search(said):
        return "below" if _ANNOUNCES.search(words) else "above"
    if not _OF_THIS.match(plain):
        return None
    is_bound = _APPLIES.match(plain) and _LIMITS.search(said) and not tells_use(plain)
    return "above" if is_bound or _WEIGHS.search(said) else None


def _without_charts(plain: str, charts: Set[str]) -> str:
    """A sentence without the charts it names, where these are all under which its items stand."""
    found = _CHARTS.search(plain)
    if found is None:
        return plain
    named = set(re.findall(r"[A-Z]*[0-9]+[A-Z]?", found[0]))
    if found["all"] or (charts and charts <= named):
        return plain[: found.start()] + plain[found.end() :]
    return plain


def limits_last(words: str, charts: Set[str] = frozenset()) -> bool:
    """Whether a sentence without a subject limits what stands right above it, under `charts`."""
    plain = _without_charts(plain_sentence(words), charts)
    if _ALONE.fullmatch(plain):
        return True
    if _SIGNED.fullmatch(plain):
        return False
    if " " not in plain or _MORE_IS_SAID.search(plain):
        # A word alone may be a key.
        return False
    if _FRAGMENT.match(plain) is not None:
        return True
    if _HEADS_CHART.match(plain):
        return False
    is_short = plain.count(" ") < _LONGEST_ASIDE and _IS_SAID.search(plain) is None
    return is_short and next(limits_in(plain), None) is not None


def tells_not_affected(words: str) -> bool:
    """Whether the line of a chart says that nothing is to be done on it, or not at once."""
    return _NOT_AFFECTED.search(words) is not None
