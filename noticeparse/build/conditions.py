"""Words around a command that take part of it back: what stays, what it hangs on, what follows.

A thing that is cleared to a depth is still there; a command that holds only in winter, or when
works are complete, is not to be carried out now; what is said behind the new place of a move is a
second change.  What hangs on nothing is left to the readers.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from noticeparse.build.extents import quoting, within
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.rare import Rare
from noticeparse.readers.dates import MONTH
from noticeparse.readers.verbs import Verb, canonical_verb, is_told_by_agent
from noticeparse.records.feature import Feature
from noticeparse.stretch import Stretch, gather, without_asides

_HANGS = Rare(
    r"^[ ,;.]*(?:[a-z]+ )?(?:if|IF|unless|UNLESS|when|WHEN|once|ONCE|whenever"
    r"|provided that|subject to|pending"
    r"|(?:on|upon|after|until) (?:the )?(?:completion|publication|commencement|removal"
    r"|establishment|works?))\b"
    r"|\b(?:in|during|for|each|every|throughout) (?:the )?(?:winter|summer|spring|autumn|season"
    r"|ice|year)\b|\bseasonally\b"
    rf"|\b(?:from|between|during|in) (?i:{MONTH} (?:to|and|until|or) {MONTH})\b",
    "after apr aug autumn dec feb ice if jan july june mar may nov oct on once "
    "pending season sept spring subject summer that unless until upon when winter "
    "year",
)
"""A condition right behind the place, or a season anywhere behind it; a remark may follow both."""
_HANGS_ANYWHERE = Rare(r"\b(?:on|upon) completion\b", "completion", re.IGNORECASE)
_DATED = Rare(
    r"\b(?:on|from|after|before|until|(?:with )?effect(?:ive)? (?:from|on)) (?:or about )?"
    rf"(?:[0-9]{{1,2}}(?:st|nd|rd|th)? {MONTH}\b|{MONTH} [0-9]{{1,2}}\b|[0-9]{{4}}-[0-9]{{2}}-)",
    "after before effect from on until",
    re.IGNORECASE,
)
_TO_COME = re.compile(
    r"will be (?!(?:inserted|added|deleted|charted|plotted|entered|drawn|amended|expunged)\b)",
    re.IGNORECASE,
)
"""Works to come; what will be inserted or deleted is to be so now."""
_TO_BE = re.compile(r"(?:(?:is|are) )?to be\b", re.IGNORECASE)
_LATER = re.compile(
    r"\b(?:on|in|by|from|after|before|until|during|of|late|early|mid) (?:or )?(?:about )?(?:the )?"
    r"(?:end of |course of |early |late |mid[- ])?(?:[0-9]{1,2}(?:st|nd|rd|th)? )?"
    rf"(?:{MONTH}|20[0-9]{{2}}|winter|summer|spring|autumn)\b"
    r"|\b(?:next|this|coming) (?:week|month|season|year|winter|summer|spring|autumn)\b"
    r"|\b(?:soon|shortly|later|tomorrow|eventually|in due course)\b",
    re.IGNORECASE,
)
"""A day to come, behind `to be removed`."""
_CHANGES_MORE = Rare(
    r"\b(?:renamed?|renumber(?:ed)?|now|becomes?|is to read|to read)\b",
    "becomes is now read renamed",
    re.IGNORECASE,
)
_RETAINS = Rare(r"\b(?:retain(?:s|ing)?|but (?:keep|leave))\b", "but retain", re.IGNORECASE)
_DEPTH = r"[0-9]+(?:[.,][0-9]+|[₀-₉])? ?(?:m|met(?:re|er)s?|fm|fathoms?|ft|feet)\b"
_A_DEPTH = re.compile(_DEPTH)
_TO_DEPTH = Rare(
    r"(?<![0-9m₀-₉] )\b(?:down )?to (?:an? |at )?(?:(?:least|swept|safe|clear|clearance|minimum"
    rf"|maximum|charted) ){{0,2}}(?:depths? )?(?:of )?(?:at least |about )?{_DEPTH}",
    "down to",
    re.IGNORECASE,
)


_DESCRIBING = ("dredged", "swept", "cleared", "maintained", "deepened", "excavated")
"""Words of the state in which a thing is: `dredged area, dredged to 9m`."""


def conditions(
    context: Context, item: Item, words: Stretch, verb: Verb, feature: Feature
) -> Iterator[Fault]:
    """What in the words of an item keeps its command from being carried out as it is read."""
    behind = _behind(context, item)
    plain = without_asides(behind.text)
    told = without_asides(words.text)
    if feature.legend is None:
        found = _HANGS.search(plain)
        if found is not None:
            # Behind a comma, too, what is quoted begins with the first word.
            start = found.start() + len(found[0]) - len(found[0].lstrip(" ,;."))
            stop = next((i for i in range(found.end(), len(plain)) if plain[i] in ",.;"), None)
            span = start, len(plain.rstrip()) if stop is None else stop
            yield within(context, "verb-conditional", behind, span)
        elif (found := _HANGS_ANYWHERE.search(told)) is not None and verb != "insert":
            yield within(context, "verb-conditional", words, found.span())
        elif item.verb_piece is not None and not is_of_sentence(item.verb or ""):
            found = _DATED.search(plain)
            if found is not None:
                yield within(context, "verb-dated", behind, found.span())
    yield from _is_later(context, item, feature)
    is_dated = _DATED.search(plain) is not None or "same day" in plain
    is_to_come = _TO_COME.match(" ".join((item.verb or "").split())) is not None
    if item.verb_piece is not None and is_to_come and not is_dated:
        yield quoting(context, "verb-yet-to-come", item.verb_piece)
    if verb == "delete":
        yield from _stays(context, item, words, feature)
    elif (kept := _RETAINS.search(told)) is not None:
        yield within(context, "verb-within-words", words, kept.span())
    if verb == "move" and (more := _CHANGES_MORE.search(plain)) is not None:
        yield within(context, "verb-within-words", behind, more.span())
    if (number := _second_number(words.text, feature)) is not None:
        code = "sentence-told-twice" if verb == "amend" else "feature-stated-twice"
        yield within(context, code, words, number.span())
    own = gather(context.text, item.words)
    if second := _second_verb(own.text, verb):
        yield within(context, "verb-within-words", own, second.span())
    for stretch in (own, behind):
        for other in _IN_BRACKETS.finditer(stretch.text):
            # `wreck (insert), rock (delete)`: a command for each of two things.
            if stretch.extent(other.span()) != item.verb_piece:
                yield within(context, "verb-within-words", stretch, other.span())


def _is_later(context: Context, item: Item, feature: Feature) -> Iterator[Fault]:
    """The day for which a sentence announces its command: `to be removed in May`."""
    told = " ".join((item.verb or "").split())
    if item.verb_piece is None or feature.legend is not None or not _TO_BE.match(told):
        return
    last = item.verb_piece[1]
    places = [place.element for place in item.places]
    for start, end in sorted(set(item.pieces)):
        if start < last or any(e.start <= start < e.end for e in places):
            continue
        piece = gather(context.text, [(start, end)])
        found = _LATER.search(without_asides(piece.text))
        if found is not None:
            yield within(context, "verb-dated", piece, found.span())
            return


def _behind(context: Context, item: Item) -> Stretch:
    """The words behind the last place of an item, or behind the verb of a sentence."""
    places = [place.element.end for place in item.places]
    last = max(places, default=0)
    if not places:
        return Stretch("", ((0, 0),))
    if item.verb_piece is not None and is_of_sentence(item.verb or ""):
        last = max(last, item.verb_piece[1])
    pieces = [(max(start, last), end) for start, end in item.pieces if end > last]
    return gather(context.text, sorted(set(pieces)))


def is_of_sentence(verb: str) -> bool:
    """Whether a verb is that of a sentence: `has been laid`, `is to be removed`."""
    words = verb.lower().split()
    return is_told_by_agent(verb) or (bool(words) and words[0] in _AUXILIARIES)


_AUXILIARIES = frozenset("is are was were has have had will shall should must to may".split())


def _stays(context: Context, item: Item, words: Stretch, feature: Feature) -> Iterator[Fault]:
    """What is cleared or removed to a depth: the rest of it still lies there."""
    text = without_asides(words.text)
    found = _TO_DEPTH.search(text)
    before = text[: found.start()].rstrip().lower() if found is not None else ""
    if found is not None and " from " not in before and not before.endswith(_DESCRIBING):
        yield within(context, "deletion-to-depth", words, found.span())
        return
    if feature.depth is None or item.verb_piece is None or not is_of_sentence(item.verb or ""):
        return
    places = [place.element for place in item.places]
    leads = all(start >= item.verb_piece[1] for start, _ in item.words)
    for start, end in item.pieces:
        if start < item.verb_piece[1] or any(e.start <= start < e.end for e in places):
            continue
        if leads and (start, end) in item.words:
            # `To delete depth 18.8 m`: the depth is what goes.
            continue
        behind = gather(context.text, [(start, end)])
        told = _A_DEPTH.search(behind.text)
        if told is not None:
            yield within(context, "deletion-to-depth", behind, told.span())
            return


_NUMBER = re.compile(r"\b(?:No|Number)\.? ?[A-Z]{0,2}[0-9]{1,4}[A-Z]?\b")


def _second_number(words: str, feature: Feature) -> re.Match[str] | None:
    """A second number in one name: `light-buoy No 4 to Q.R, No 6`."""
    found = list(_NUMBER.finditer(feature.name or ""))
    if len(found) < 2 or found[0].group() == found[1].group():
        return None
    return re.compile(re.escape(found[1].group())).search(words)


# Below another verb: `MOVED ON THE CHART / buoy from P to Q`.
_WAS_TOLD = re.compile(
    r"(?:moved|deleted|removed|inserted|added|relocated|shifted|withdrawn|discontinued|expunged"
    r"|replaced|cancelled|erased|struck out|taken out)\b",
    re.IGNORECASE,
)


_IN_BRACKETS = Rare(
    r"[\[(](?:insert|add|delete|remove|move|shift|amend|replace|establish|withdraw|enter"
    r"|inserted|added|deleted|removed|moved|amended|replaced)[\])]",
    "add amend delete enter establish insert move remove replace shift withdraw",
    re.IGNORECASE,
)


_EITHER = re.compile(r"/ ?(?P<verb>[a-z]+)(?=[ :])", re.IGNORECASE)
_AND_VERB = re.compile(r"(?:or|and|and/or) (?:then )?(?:re-)?(?P<verb>[a-z]+)(?= )", re.IGNORECASE)


def _second_verb(words: str, verb: Verb) -> re.Match[str] | None:
    """A verb joined to the one above it, or one that was told: `Delete or move buoy`."""
    if told := _WAS_TOLD.match(words):
        return told
    either = _EITHER.match(words)
    if either is not None and canonical_verb(either["verb"]) not in (None, verb):
        return either
    found = _AND_VERB.match(words)
    if found is None or canonical_verb(found["verb"]) is None:
        return None
    return found
