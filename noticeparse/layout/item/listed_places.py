"""Places of a list that go on with the item above: `joining P with Q`, and lines of places alone.

Which lines of positions are further places of the row above is told for rows with the place first.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.drafts import Item, Piece
from noticeparse.layout.evidence import tells
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.place.led_places import has_letter
from noticeparse.numbers import COUNT_WORDS, counted
from noticeparse.readers.letters import read_letters
from noticeparse.readers.places import is_connector, split_phrase
from noticeparse.readers.verbs import canonical_verb
from noticeparse.stretch import Stretch, gather

_ANNOUNCED = re.compile(
    r"\b(?P<relation>joining|through|connecting|bounded by|enclosed by|limited by)"
    r"(?P<first> (?:this|the above)(?: (?:position|point|place|corner))?(?:,| and| with))?"
    r"(?: (?:the|these))?(?: (?:next|following|other|one))?"
    rf"(?: (?P<count>{'|'.join(COUNT_WORDS)}|[2-9])(?: following)?)?"
    r"(?: (?:positions?|points?|corners?|places?)(?: [a-z ]{2,40})?)?[ ,:.]*$",
    re.IGNORECASE,
)
"""Words that end with a list of places: `cable, joining the three positions in this column`.

The `first` may stand in front of them: `cable, joining this and the two positions which follow`,
`cable, joining this position with`.
"""
_ONE_MORE = re.compile(r"\b(?:next|other|one|position|point|corner|place)\b", re.IGNORECASE)
_LINKS = ("and", "with", "")
_REST_OF_LIST = re.compile(
    r"(?:in |at )?(?:the |this |these )?(?:positions?|points?|corners?|places?|column|left"
    r"|right)\b[a-z ]{0,40}",
    re.IGNORECASE,
)


def announced(words: str) -> int | None:
    """How many places the end of a description announces at least, None where it lists none."""
    told = _ANNOUNCED.search(words)
    if told is None:
        return None
    if count := told["count"]:
        return counted(count) + bool(told["first"])
    return 2 if told["relation"].lower() in ("joining", "through", "connecting") else 3


def lists_from_here(words: str) -> bool:
    """Whether the place in front of a description is the first of the list that it ends with."""
    told = _ANNOUNCED.search(words)
    return told is not None and told["first"] is not None


def is_whole_list(text: str, item: Item) -> bool:
    """Whether such a list has its places: those that it counts, or all that stand below it."""
    words = " ".join(text[start:end] for start, end in item.words)
    count = announced(words) if lists_from_here(words) else None
    if count is None:
        return False
    return len(item.places) == count or (_is_open(words) and len(item.places) > 1)


def _is_open(words: str) -> bool:
    """Whether such a list does not say how many places it has: `joining this position with`."""
    told = _ANNOUNCED.search(words)
    if told is None or told["first"] is None or told["count"] is not None:
        return False
    return _ONE_MORE.search(words, told.end("first")) is None


def links_in_list(text: str, item: Item, element: Element) -> bool:
    """Whether words only link a place of such a list to the next: `Q   and`."""
    link = text[element.start : element.end].strip(" ,;").lower()
    return link in _LINKS and _lists_on(text, item) and item.pieces[-1] == _last(item)


def _lists_on(text: str, item: Item) -> bool:
    """Whether places of a list that began in front of the words stand behind them."""
    words = " ".join(text[start:end] for start, end in item.words)
    return bool(item.words) and item.words[-1] < _last(item) and lists_from_here(words)


def _last(item: Item) -> Piece:
    """The last place of an item."""
    places = item.places
    return (places[-1].element.start, places[-1].element.end) if places else (-1, -1)


def is_at_end(text: str, item: Item) -> bool:
    """Whether the last place stands behind `and`, and no more link leads on from it."""
    if not _lists_on(text, item) or item.pieces[-1] != _last(item) or len(item.pieces) < 2:
        return False
    start, end = item.pieces[-2]
    return text[start:end].strip(" ,;").lower() == "and"


def without_count(words: Stretch) -> Stretch:
    """A description that ends with the relation of its places, and not with how many they are."""
    told = _ANNOUNCED.search(words.text)
    return words if told is None else words.part(0, told.end("relation"))


def _goes_on_in_words(text: str, item: Item, line: Line | None) -> bool:
    """Whether a line has one more of the places that an item counts, and the rest of its words."""
    count = announced(" ".join(text[start:end] for start, end in item.words))
    if count is None or line is None or line.has("verb", "label") or len(item.places) >= count:
        return False
    told = [text[e.start : e.end].strip(" ,.") for e in line.elements if e.kind == "words"]
    return all(is_connector(one) or _REST_OF_LIST.fullmatch(one) is not None for one in told)


def awaits_places(text: str, item: Item, line: Line | None, *, verbs_lead: bool) -> bool:
    """Whether the positions of a line that holds nothing else go on with an item.

    Its words end with `joining` or `from`, or lists them, where each item has its verb in front.
    """
    elements = line.elements if line else ()
    others = [e for e in elements if e.kind not in PLACES and e.kind not in ("label", "bar")]
    if _goes_on_in_words(text, item, line) or _says_where_to(text, item, others):
        return True
    if not all(is_connector(text[e.start : e.end]) for e in others):
        return False
    if is_at_end(text, item):
        return False
    if verbs_lead and line is not None and not line.has("verb") and _lists_places(text, item):
        return True
    words = " ".join(text[start:end] for start, end in item.words)
    if _is_open(words):
        return True
    parts = split_phrase(words).parts
    places = [place.element.start for place in item.places]
    above = sum(start < item.words[0][0] for start in places) if item.words else 0
    if not parts or words.endswith(".") or ("these" in words and above > 1):
        return False
    if words.rstrip(" ,:").endswith("above"):
        return False
    return parts[-1].kind in ("joining", "bounded", "from_", "separator")


def _says_where_to(text: str, item: Item, others: Sequence[Element]) -> bool:
    """Whether a line has the new place of what is moved: `P Move buoy` above `Q to here`."""
    if not item.verb or canonical_verb(item.verb) != "move" or len(item.places) != 1:
        return False
    words = [text[e.start : e.end].strip(" ,.:") for e in others]
    return len(words) == 1 and _TO_HERE.fullmatch(words[0]) is not None


def _lists_places(text: str, item: Item) -> bool:
    """Whether the last places of an item are listed behind `bounded by`."""
    lead = " ".join(text[start:end] for start, end in item.groups[-1].lead)
    parts = split_phrase(lead).parts if lead else []
    return bool(parts) and parts[-1].kind in ("joining", "bounded")


_TO_HERE = re.compile(
    r"(?:and )?to(?: (?:here|(?:(?:the|this) )?(?:(?:new|other) )?(?:position|place|point)))?",
    re.IGNORECASE,
)


def is_to_behind_place(item: Item, words: str) -> bool:
    """Whether a lone `to` stands behind the last place of an item: it is where the thing goes."""
    if not item.words or _TO_HERE.fullmatch(words.strip(" ,.:")) is None:
        return False
    last = item.groups[-1].places[-1:]
    return bool(last) and item.pieces[-1] == (last[0].element.start, last[0].element.end)


def names_what_follows(text: str, item: Item, element: Element) -> bool:
    """Whether a reference only announces letters below: `(e) P cable, joining (e)-(g):`."""
    if element.kind != "reference" or not item.words or not has_letter(item):
        return False
    letters = read_letters(text[element.start : element.end])
    is_own = letters[:1] == (item.groups[0].places[0].label,)
    return is_own and text[element.end : element.end + 9].lstrip(" ").startswith(":")


def ends_in_to(text: str, item: Item) -> bool:
    """Whether the line above ends with `to`, and the place it leads to opens this line."""
    start, end = item.words[-1]
    last = text[start:end].rstrip(" :,").rpartition(" ")[2].lower()
    return last == "to" and item.pieces[-1] == (start, end)


_FIRST = 4
"""Places of an item among which it names the corners below."""


def is_meant(text: str, line: Line | None, item: Item, element: Element, label: Element) -> bool:
    """Whether a lettered place alone on its line is one that the item refers to above.

    `(c) P restricted area, bounded by (c), (d) and (e)`, and below it `(d) Q`.
    """
    if element.kind != "point" or line is None:
        return False
    if any(tells(text, e) for e in line.elements):
        return False
    named = [
        place.element
        for group in item.groups[:_FIRST]
        for place in group.places[:_FIRST]
        if place.element.kind == "reference"
    ]
    return any(label.value in read_letters(text[e.start : e.end]) for e in named)


_WITH = re.compile(r"with(?: the)?(?: (?:position|point|place))?:?", re.IGNORECASE)


def links_places(words: str) -> bool:
    """Whether words are those between the two ends of a line: `joining P WITH POSITION Q`."""
    return _WITH.fullmatch(words.strip(" ,")) is not None


def links_on(text: str, item: Item, words: str) -> bool:
    """Whether words only link a place to those of an item: `joining P with position Q`."""
    if is_connector(words):
        return True
    if len(item.places) != 1 or not links_places(words):
        return False
    relation = split_phrase(gather(text, item.words).text).parts
    return "joining" in {part.kind for part in relation}
