"""Words that count the places of an item, or take some of them out: `all but the first`."""

from __future__ import annotations

import re
from collections.abc import Iterator

from noticeparse.build.extents import quoting, within
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.numbers import COUNT_WORDS, counted
from noticeparse.rare import Rare
from noticeparse.readers.verbs import canonical_verb
from noticeparse.records.feature import Feature
from noticeparse.records.geometry import Geometry
from noticeparse.stretch import Stretch, blanked, gather, unquoted
from noticeparse.vocabulary import kinds

_COUNT = Rare(
    rf"\b(?P<number>{'|'.join(COUNT_WORDS)}|[2-9]|[1-9][0-9])"
    r"(?: (?:following|new|different|charted))? (?:positions|places|locations|sites|spots)\b",
    "locations places positions sites spots",
    re.IGNORECASE,
)
_SIDE = r"(?:northern|southern|eastern|western|inner|outer|upper|lower|middle|[a-z]+(?:ern)?most)"
_SOME = Rare(
    r"\b(?:all|both|each|any|everything)(?: of (?:them|these|those))? (?:but|except|save|bar)\b"
    r"|\b(?:but|except|excepting|save|omitting|excluding) the (?:first|second|third|last|other)\b"
    rf"|\b(?:first|second|third|fourth|last|latter|former|{_SIDE})(?: (?:one|two|three))? of\b"
    r"|\b(?:one|some|any|several|most|either|neither|none|only) of (?:the|these|those|them)\b"
    r"|\b(?:only the|the) (?:first|second|third|last|latter) (?:two |three |one )?only\b"
    r"|\bonly the (?:first|second|third|last|latter)\b",
    "all any both but each everything except of omitting one only save the those three two",
    re.IGNORECASE,
)
_ONE = r"(?:[0-9]{1,2}|[b-h]|\((?:[0-9]{1,2}|[a-z]{1,4})\))"
_LEAVING_OUT = (
    "but", "except", "excepting", "excluding", "save", "bar", "omitting", "without", "other than",
    "apart from", "not",
)  # fmt: skip
_EXCEPT = rf"(?:{'|'.join(_LEAVING_OUT)})"
_NAMED = re.compile(
    rf"\b{_EXCEPT}(?: (?:for|at|in|from|the))*"
    r"(?: (?:(?:corner|point|position|posn?|place|location|site|item|number)s?|nos?\.?)){0,2}"
    rf" {_ONE}(?=\s*(?:[,;:.](?![0-9])|$|(?:and|to|or|&|-) ?{_ONE}))"
    rf"|\b{_EXCEPT}(?: (?:at|in))?\W*$",
    re.IGNORECASE,
)
"""Places that are left out by their number or letter: `at all corners except 2`."""
_DENIED = re.compile(rf"\b{_EXCEPT}(?: (?:at|in))?\W*$", re.IGNORECASE)
_LISTED = Rare(
    r"\b(?:at|in|on|through) (?:the )?(?:corner|point|position|posn?|place|location)s?"
    rf" (?P<list>{_ONE}(?:(?:,? and |, ?| & ){_ONE})*)\W*$",
    "at in on through",
    re.IGNORECASE,
)
"""Places that are named by their number or letter: `at corners 1 and 3`."""
_LED = Rare(
    r"\b(?:joining|connecting|(?:bounded|delimited|limited|enclosed) by)"
    r"(?: (?:an?|the|straight|following|lines?|joining|points?|positions?|corners?|vertices|that"
    r"|joins?|two|three|four|five|six|[0-9]{1,2}))*:?(?: \(?(?:[A-Z]|[a-z]|[0-9]{1,2})\)?)?\W*$",
    "by connecting joins",
)
"""Words that lead to the places of a line or an area, and the letter of the first of them."""
_OF_A_THING = re.compile(
    r"\W*(?:the )?(?:(?:[NS]?[NSEW]{1,2}|north|south|east|west)(?:-?(?:east|west)?(?:ern)?\b"
    r"|most\b)\.? |(?:[a-z]+most|outer|inner|seaward|shoreward) )?"
    r"(?:corner|end|part|half|extremity|edge|portion|section)s? of\b",
    re.IGNORECASE,
)
"""Words that make of a thing its corner or its end: `the south end of the cable`."""


_DESIGNATION = re.compile(r"(?:No\.? ?)?[A-Z]{0,3}[ -]?[0-9]{1,3}[A-Z]?", re.IGNORECASE)
_PLURAL = re.compile(r"(?:buoy|beacon|light|mark|pile|perche|float|vessel|no)s\b", re.IGNORECASE)
_MARKS = frozenset(("buoy", "beacon", "float"))


def numbered_marks(
    context: Context, item: Item, words: Stretch, feature: Feature, geometry: Geometry
) -> Iterator[Fault]:
    """A mark with a number of its own at a second place: `light-buoy No 4, in P and, in Q`.

    A number is that of one mark on the chart; the words of the next item may be lost (common
    practice, no published source).
    """
    form = kinds()[feature.kind].form if feature.kind in kinds() else ""
    is_at_points = geometry.shape == "points" and geometry.relation == "at" and item.places
    if not is_at_points or form not in _MARKS:
        return
    is_one = feature.name is not None and not _PLURAL.search(words.text)
    if is_one and canonical_verb(item.verb or "") in ("insert", "delete"):
        # A reference may bring several positions by itself: `(a) and (b) above`.
        second = item.places[:2][-1].element
        yield quoting(context, "place-of-another", (second.start, second.end))


def counted_places(context: Context, item: Item, geometry: Geometry) -> Iterator[Fault]:
    """A count that is not that of the places, and words that leave out some of them."""
    places = len(geometry.positions)
    leads = [piece for group in item.groups for piece in group.lead]
    words = gather(context.text, sorted({*item.words, *leads, *item.tail}))
    plain = unquoted(words.text)
    if len(item.groups) > 1:
        # `in P, not Q` denies a place, and is told of it.
        plain = blanked(plain, _DENIED)
    told = plain.lower()
    leaves_out = any(word in told for word in _LEAVING_OUT)
    out, listed = _NAMED.search(plain) if leaves_out else None, _LISTED.search(plain)
    if out is None and listed is not None:
        named = [word for word in re.findall(r"\w+", listed["list"]) if word != "and"]
        out = listed if len(named) < places else None
    if out is not None:
        yield within(context, "feature-of-several", words, out.span(), places=str(places))
    if geometry.shape not in ("point", "points") or not geometry.positions:
        return
    part = _OF_A_THING.match(plain)
    if part is not None and canonical_verb(item.verb or "") in ("delete", "move"):
        yield within(context, "feature-of-several", words, part.span(), places=str(places))
    if geometry.relation == "at" and (led := _LED.search(plain)) is not None:
        yield within(context, "relation-unclear", words, led.span())
    says_some = leaves_out or " of" in told or "only" in told
    some, count = _SOME.search(plain) if says_some else None, _COUNT.search(plain)
    for found, code in ((some, "feature-of-several"), (count, "feature-count-differs")):
        if found is None or (found is some and places < 2):
            continue
        if found is count and counted(count["number"]) == places:
            continue
        yield within(context, code, words, found.span(), places=str(places))
