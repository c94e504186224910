"""Lines of positions alone that go on with the item above, in rows with the position first."""

from __future__ import annotations

from noticeparse.layout.drafts import Item
from noticeparse.layout.evidence import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.place.led_places import has_letter
from noticeparse.readers.letters import read_letters
from noticeparse.readers.places import is_connector, split_phrase


def awaits_places(text: str, item: Item, line: Line | None, *, verbs_lead: bool) -> bool:
    """Whether the positions of a line that holds nothing else go on with an item.

    Its words end with `joining` or `from`, or lists them, where each item has its verb in front.
    """
    elements = line.elements if line else ()
    others = (e for e in elements if e.kind not in PLACES and e.kind not in ("label", "bar"))
    if not all(is_connector(text[e.start : e.end]) for e in others):
        return False
    if verbs_lead and line is not None and not line.has("verb") and _lists_places(text, item):
        return True
    words = " ".join(text[start:end] for start, end in item.words)
    parts = split_phrase(words).parts
    places = [place.element.start for place in item.places]
    above = sum(start < item.words[0][0] for start in places) if item.words else 0
    if not parts or words.endswith(".") or ("these" in words and above > 1):
        return False
    if words.rstrip(" ,:").endswith("above"):
        return False
    return parts[-1].kind in ("joining", "bounded", "from_", "separator")


def _lists_places(text: str, item: Item) -> bool:
    """Whether the last places of an item are listed behind `bounded by`."""
    lead = " ".join(text[start:end] for start, end in item.groups[-1].lead)
    parts = split_phrase(lead).parts if lead else []
    return bool(parts) and parts[-1].kind in ("joining", "bounded")


def is_to_behind_place(item: Item, words: str) -> bool:
    """Whether a lone `to` stands behind the last place of an item: it is where the thing goes."""
    if not item.words or words.strip(" ,.:").lower() != "to":
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
