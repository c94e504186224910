"""What is forbidden in an area, where one word forbids several things.

`anchoring and fishing prohibited`, `no anchoring or trawling`: in comes a phrase, out come the
codes of S-57 RESTRN.  Each of them alone is a kind of its own in the vocabulary; of several none
is the kind, and the area is a restricted one.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.faults import Fault
from noticeparse.readers.amounts import shown
from noticeparse.readers.words import Item
from noticeparse.vocabulary import kinds
from noticeparse.vocabulary.codes import Attributes, add

_CODES = {
    "anchoring": 1, "anchorage": 1, "fishing": 3, "trawling": 5, "entry": 7, "entering": 7,
    "dredging": 9, "diving": 11,
}  # fmt: skip
_DEED = rf"(?:{'|'.join(_CODES)})"
_JOINT = r"(?:, (?:and |or )?| and | or | nor | ?& ?| ?/ ?)"
_LIST = rf"{_DEED}(?:{_JOINT}(?:no )?{_DEED}){{1,5}}"
_FORBIDDEN = re.compile(
    rf"(?<![A-Za-z-])(?:(?P<behind>{_LIST}),? (?:(?:is|are|strictly) ){{0,2}}"
    r"(?:prohib(?:ited|\.)?|proh(?:b?d)?|forbidden|banned|not (?:permitted|allowed))"
    rf"|(?:no|prohibited:?|prohibition of) (?P<before>{_LIST}))(?![A-Za-z-])",
    re.IGNORECASE,
)
_ALONE = re.compile(rf"(?<![A-Za-z-]){_DEED}(?![A-Za-z-])", re.IGNORECASE)
_FORBIDDING = frozenset(("prohibited", "forbidden", "banned", "restricted"))


def restrictions(text: str) -> Attributes:
    """The codes of what is forbidden together, in the order written."""
    found: list[int] = []
    for told in _FORBIDDEN.finditer(text):
        words = told["behind"] or told["before"]
        codes = [_CODES[one[0].lower()] for one in _ALONE.finditer(words)]
        found += [code for code in codes if code not in found]
    return {"RESTRN": found} if found else {}


def restrictions_of(text: str, items: Sequence[Item]) -> Attributes:
    """All that a restricted area forbids: `restricted area, entry prohibited` has it behind."""
    found = restrictions(text)
    for item in items:
        if item.role == "kind":
            codes = item.sense.attributes if item.sense else {}
            own = {**kinds()[item.value].attributes, **codes}
            add(found, {name: code for name, code in own.items() if name == "RESTRN"})
    return found


def unread_restrictions(text: str, items: Sequence[Item]) -> Iterator[Fault]:
    """What is forbidden and went into no code: `swimming or fishing prohibited`."""
    read = [told.span() for told in _FORBIDDEN.finditer(text)]
    for at, item in enumerate(items):
        word = item.text.lower()
        is_kind = item.role == "kind" and "prohibited" in item.value
        if not is_kind and not (item.role == "unknown" and word in _FORBIDDING):
            continue
        first = at
        while first and _goes_on(text, items[first - 1], items[first]):
            first -= 1
        deeds = [one for one in items[first:at] if one.role != "plain"]
        if deeds and not any(start <= deeds[0].start < end for start, end in read):
            start, end = deeds[0].start, item.end
            yield Fault("feature-words-unread", start, end, {"written": shown(text[start:end])})


def _goes_on(text: str, before: Item, item: Item) -> bool:
    """Whether an item is a deed, or a joint of deeds, in front of the next."""
    is_deed = before.role == "unknown" and before.text.lower().endswith(("ing", "entry", "age"))
    is_joint = before.text.lower() in ("and", "or", "nor", "&", "/", "is", "are", "strictly")
    return (is_deed or is_joint) and text[before.end : item.start] in (" ", ", ", "/", "")
