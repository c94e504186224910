"""Words that keep a command from being carried out as it stands, wherever they are met.

`if charted`, `void`, `by 1 July`, `edition 5 only`: what hangs on a condition, a day or the paper
that is to be corrected, what is taken back, and what is meant only in part.  The words of a
feature that look like these (`maximum draft 5 m`, `entry prohibited except for ferries`, a light
shown by day only) are none.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import NamedTuple

from noticeparse.rare import Rare, openings, openings_of
from noticeparse.readers.dates import MONTH

_DAY = rf"(?:[0-9]{{1,2}}(?:st|nd|rd|th)? {MONTH}\b|{MONTH} [0-9]{{1,4}}\b|[0-9]{{4}}-[0-9]{{2}}-)"
_MONTHS = "jan feb mar apr may jun jul aug sep oct nov dec".split()
_IN_FIGURES = re.compile(r"[0-9]{4}-[0-9]{2}-")
"""Each day has the beginning of a month, or is in figures alone."""
_FIGURE = re.compile(r"[0-9]")
_SEASON = r"(?:winter|summer|spring|autumn)"


class Limit(NamedTuple):
    """A finding code, and the stretch of the words that it quotes."""

    code: str
    span: tuple[int, int]


_TAKEN_BACK = Rare(
    r"\b(?:disregard(?:ed)?|ignored?|omit(?:s|ted|ting)?|void|superseded|rescinded|revoked|repealed"
    r"|deferred|postponed|lapsed|expired|inapplicable|not applicable|on hold|in abeyance|held over"
    r"|(?:in|by) (?:error|mistake)|erroneous(?:ly)?|wrong(?:ly)?|incorrect(?:ly)?|proposals?"
    r"|tentative(?:ly)?|provisional(?:ly)?|unconfirmed|to be confirmed|for information"
    r"|for example|specimen|need(?:s|ed)? not|do not|not (?:to be (?!used|entered)|required|needed"
    r"|yet|before|until|if|when|on)|no action|already)\b",
    "abeyance action already applicable be before deferred disregard do error "
    "example expired held hold if ignored inapplicable incorrect information lapsed "
    "mistake need omit on postponed proposals repealed required rescinded revoked "
    "specimen superseded tentative unconfirmed until void when wrong yet",
    re.IGNORECASE,
)
_ALONE = re.compile(
    r"(?:(?:cancelled|suspended|withdrawn|deleted?|error|draft|example|optional(?:ly)?|nil"
    r"|no(?:ne)?|not|planned|to come|t\.?b\.?[acd]\.?|n/a|(?:in )?part|partly|partial(?:ly)?"
    r"|(?:a )?section)\b[ ;,.]*)+",
    re.IGNORECASE,
)
"""Words that take an item back where nothing else stands in their bracket."""
_HANGS = Rare(
    r"\b(?:if|unless|provided|providing|pending|once|until|till|while|whil?st|so long as"
    r"|as long as|in case|in the event"
    r"|subject to (?:confirm|approv|survey|review|verif|complet|fund|further|notice|final|change"
    r"|amend)[a-z]*"
    r"|(?:up)?on (?:receipt|completion|confirmation|publication|approval|request)"
    r"|(?:where|when)(?:ver|ever)? (?!dredged|swept|covered|uncovered|awash)"
    r"|after (?:completion|confirmation|publication|removal|approval)"
    r"|before (?:completion|confirmation|publication|removal|approval)"
    r"|during (?:the )?[a-z]+|as (?:necessary|required|appropriate|applicable|requisite))"
    r"(?:(?<= )|\b)",
    "after as before case during ever if on once pending provided so subject till "
    "unless until upo when whil",
    re.IGNORECASE,
)
_SHOWN_THEN = re.compile(
    r"(?:exhibited|shown|lit|lighted|displayed|operat[a-z]+|sound(?:ed|s)|active|activated|closed"
    r"|open(?:ed|s)?|raised|lowered|manned|prohibited|permitted|restricted|required|available"
    r"|compulsory)(?: only)?,? ?$",
    re.IGNORECASE,
)
"""Before a condition that is one of the thing: `shown when vessels are expected`."""
_OF_PAPER = Rare(
    r"\b(?:ENCs?|RNCs?|(?:raster|vector|paper|electronic|digital)(?: charts?| copies| only)"
    r"|(?:small|large|medium|other)(?:er|est)?[- ]scale(?: charts?| only)?|editions?|reprints?"
    r"|printed|(?:chart )?copies"
    r"|(?:new|next|old|previous|other|adjoining|adjacent|overlapping|both|these|those) charts?"
    r"|charts? only|(?:inset|panel|plan|main chart) only"
    r"|(?:except|not) (?:on|for|in) (?:the )?(?:charts?|inset|panel|plan))\b",
    "adjacent both copies digital editions electronic encs except large medium new "
    "next not old only other overlapping paper previous printed raster reprints "
    "rncs small the those vector",
    re.IGNORECASE,
)
_IN_PART = Rare(r"\b(?:only|alone)\b", "alone only", re.IGNORECASE)
_USED_BY = re.compile(
    r"\b(?:day|night|daytime|fog|vessels?|craft|ships?|tankers?|boats?|barges?|yachts?|ferries"
    r"|ferry|pilots?|pilotage|traffic|seaward|bearings?|sectors?|emergenc(?:y|ies)|inbound"
    r"|outbound|entering|leaving|anchorage|explosives|seaplanes?|fishing|draught|exposed|covers"
    r"|dries|visible|one way)\b",
    re.IGNORECASE,
)
"""Whom or what a thing is for, and when it is shown: `small craft only`, `by day only`."""
_LEFT_OUT = Rare(
    r"\b(?:except(?:ing)?|excluding|but not|not including)\b",
    "but except including",
    re.IGNORECASE,
)
_FORBIDS = re.compile(r"\b(?:prohibited|restricted|forbidden|entry|limited)\b", re.IGNORECASE)
_DONE = Rare(
    r"\b(?:now|since|recently|meanwhile) (?:been |to be )?"
    r"(?:replaced|moved|relocated|re-?established|restored|reinstated|inserted|shown|charted)\b",
    "meanwhile now recently since",
    re.IGNORECASE,
)
_LATER = Rare(
    r"\b(?:in due course|soon|shortly|later|eventually|tomorrow|at a later date|in future"
    r"|for (?:[0-9]{1,3}|an?|one|two|three|four|six) (?:day|week|month|year)s?"
    r"|at the (?:next|first|earliest) (?:opportunity|occasion|printing)"
    r"|(?:next|this|coming) (?:week|month|season|year|winter|summer|spring|autumn)"
    rf"|(?:in|during|for|each|every|throughout) (?:the )?{_SEASON}|in (?:the )?future)\b",
    "at autumn coming day due every future later month next shortly soon spring "
    "summer this tomorrow week winter year",
    re.IGNORECASE,
)
_PERIOD = Rare(
    rf"\b(?:from|between) {_DAY}(?: ?[0-9]{{4}})?,? (?:to|and|until|till|-) {_DAY}",
    "between from",
    re.IGNORECASE,
)
_DATED = re.compile(
    r"\b(?:by|from|on|after|before|until|as (?:from|of)|not later than|w\.?e\.?f\.?"
    r"|(?:with )?effect(?:ive)?(?: from| on)?) (?:or about |the |about )?"
    rf"{_DAY}|{_DAY} ?(?:-|to|until) ?{_DAY}",
    re.IGNORECASE,
)
_HAPPENED = re.compile(
    r"\b(?<!be )(?:[a-z]+ed|sunk|lost|found|seen|laid|aground|survey"
    r"|(?:reported|found|seen|sighted|located|observed|discovered|noticed|lost|sunk) by"
    r"(?: [a-z\"-]{1,20}){1,4})[ ,]*$",
    re.IGNORECASE,
)
"""Before the day of what happened: `wreck, reported on 3 May`."""
_IN_BRACKETS = (
    ("item-limited", _ALONE),
    ("item-temporary", re.compile(r"temporarily|for the time being|until further", re.IGNORECASE)),
    ("item-with-note", re.compile(r"(?:but )?see (?!(?:foot)?notes? )[^()]*", re.IGNORECASE)),
    (
        "verb-dated",
        re.compile(
            rf"{_DAY}(?: ?[0-9]{{4}}|[0-9]{{2}})?|[0-9]{{1,2}}\.[0-9]{{1,2}}\."
            r"[0-9]{4}",
            re.IGNORECASE,
        ),
    ),
    ("feature-words-unread", re.compile(r"[?!*#]{1,3}")),
)
"""What a bracket says that holds nothing else, by its finding code."""
_BRACKET = re.compile(r"[(\[](?P<words>[^()\[\]]+)[)\]]")

_HOLDING = (_TAKEN_BACK, _OF_PAPER, _DONE, _LATER, _PERIOD)
_OPENINGS = openings_of(*_HOLDING, _HANGS, _IN_PART, _LEFT_OUT)


_ASKS_BACK = re.compile(
    r"\b(?:confirm|acknowledge|advise|report|reply|answer|let (?:me|us) know"
    r"|(?:tell|inform) (?:me|us))"
    r"(?: (?:receipt|this|that|it|me|us|back|to us|by (?:e-?mail|telex|return))){0,3},?"
    r" (?:when|once|after|as soon as)"
    r" (?:(?:this|it|all|these|they) (?:is |are |has been |have been )?|all ?)?"
    r"(?:done|completed?|made|corrected|applied|entered|charted|finished)\b",
    re.IGNORECASE,
)
"""`Please confirm when done`: asked of the reader, and no condition of a command."""


def without_request(words: str) -> str:
    """The words, with blanks for what asks for an answer when all has been done."""
    return _ASKS_BACK.sub(lambda found: " " * len(found[0]), words)


def limits_in(words: str) -> Iterator[Limit]:
    """What in the words of an item, quotations blanked, limits its command."""
    words = without_request(words)
    if _OPENINGS.isdisjoint(openings(words)):
        # As of most items: brackets and days alone are left.
        yield from _in_brackets(words)
        yield from _days_in(words)
        return
    for limit in _HOLDING:
        for found in limit.finditer(words):
            if not _is_of_name(words, found):
                yield Limit("item-limited", _quoted(words, found.start()))
    for found in _HANGS.finditer(words):
        if not (_is_of_name(words, found) or _SHOWN_THEN.search(words, 0, found.start())):
            yield Limit("item-limited", _quoted(words, found.start()))
    yield from _in_brackets(words)
    for found in _IN_PART.finditer(words):
        start, end = _clause(words, found.start())
        clause = words[start:end]
        is_use = clause[:4].lower() == "for " or tells_use(clause)
        if not (_is_of_name(words, found) or is_use):
            yield Limit("item-limited", (start, end))
    for found in _LEFT_OUT.finditer(words):
        if not _FORBIDS.search(words):
            yield Limit("item-limited", _quoted(words, found.start()))
    yield from _days_in(words)


def _in_brackets(words: str) -> Iterator[Limit]:
    """The brackets that say nothing else."""
    for found in _BRACKET.finditer(words):
        for code, pattern in _IN_BRACKETS:
            if pattern.fullmatch(found["words"].strip()):
                yield Limit(code, found.span("words"))


def _days_in(words: str) -> Iterator[Limit]:
    """The days for which a command is given."""
    for found in _DATED.finditer(words) if _may_tell_day(words) else ():
        if not _HAPPENED.search(words, 0, found.start()):
            yield Limit("verb-dated", found.span())


def _may_tell_day(words: str) -> bool:
    if _FIGURE.search(words) is None:
        return False
    plain = words.casefold()
    return any(month in plain for month in _MONTHS) or _IN_FIGURES.search(words) is not None


def tells_use(words: str) -> bool:
    """Whether words say whom or what a thing is for, or when it is shown."""
    return _USED_BY.search(words) is not None


def _is_of_name(words: str, found: re.Match[str]) -> bool:
    """Whether a word is part of a name in capitals: `Void Rock`."""
    behind = words[found.end() :].lstrip(" ")
    is_title = found[0][:1].isupper() and found[0][1:].islower()
    return is_title and behind[:1].isupper() and behind[1:2].islower()


_ENDS = ",;()[]"


def _clause(words: str, at: int) -> tuple[int, int]:
    """The stretch between commas or brackets in which a place of some words lies."""
    start = max(words.rfind(sign, 0, at) for sign in _ENDS) + 1
    stop = min((i for sign in _ENDS if (i := words.find(sign, at)) >= 0), default=len(words))
    start += len(words[start:stop]) - len(words[start:stop].lstrip())
    return start, start + len(words[start:stop].rstrip(" ."))


def _quoted(words: str, at: int) -> tuple[int, int]:
    """The clause that a place of some words lies in; of the feature's own, what follows it."""
    start, end = _clause(words, at)
    return (start if words[:start].strip() else at), max(end, at + 1)
