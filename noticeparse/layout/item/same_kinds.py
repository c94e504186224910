"""Things that are said to be of the kind of the one above: `do., Fl.R.5s, "4"` below a buoy.

The mark repeats the words above it up to the first comma, and nothing of what stands behind: the
light, name or depth of a thing is its own.  Where it is not certain what is repeated, nothing is.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item, Piece
from noticeparse.layout.line.elements import Line
from noticeparse.readers.features import has_kind
from noticeparse.readers.verbs import canonical_verb

_DITTO = re.compile(
    r"(?:(?:-do\.?-|do\.|ditto\.?|idem\.?|id\.|〃)(?=[ ,;:]|$)|do(?=,|$)"
    r'|"(?=,| {2}|$))[ ,;:]{0,4}',
    re.IGNORECASE,
)
_KIND = re.compile(
    r"(?P<kind>[A-Za-z][A-Za-z'-]{0,30}(?: [A-Za-z][A-Za-z'-]{0,30}){0,5})"
    r"(?:(?P<mark>,)| {0,4}$)"
)
"""Words up to the first comma, without a figure, name or character of a light among them."""
_OF_OTHERS = frozenset(
    "above and at below by for from in into near of off on or the these to with within".split()
)
"""Words that bring another thing, state or place into the kind: it may not be repeated."""


def with_marks_of_kinds(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines, such a mark as words where its line has a place: it says not that of another."""
    return [_with_mark(text, line) for line in lines]


def _with_mark(text: str, line: Line) -> Line:
    if not line.has("same"):
        return line
    at = next((i for i, one in enumerate(line.elements) if one.kind != "label"), 0)
    mark, behind = line.elements[at], line.elements[at + 1 :]
    is_mark = mark.kind == "same" and _DITTO.fullmatch(text, mark.start, mark.end) is not None
    if not is_mark or not any(one.kind in ("point", "half", "reference") for one in behind):
        return line
    words = mark._replace(kind="words", value=None)
    if behind[0].kind == "words":
        words, behind = words._replace(end=behind[0].end), behind[1:]
    return line._replace(elements=(*line.elements[:at], words, *behind))


def give_same_kinds(text: str, items: Sequence[Item]) -> None:
    """Tell the kind above again of items that have such a mark in its place, or hold them back."""
    above: Item | None = None
    kind: Piece | None = None
    for item in items:
        mark = _mark(text, item)
        if mark is None:
            kind = _kind_of(text, item)
            inner = (one for one in item.words[1:] if _begins(text, one))
            item.faults += [_unknown(text, piece) for piece in inner]
        else:
            start, end = item.words[0]
            rest = [*([(mark.end(), end)] if mark.end() < end else []), *item.words[1:]]
            is_next = above is not None and _stands_below(text, above, item)
            kind = kind if is_next and (rest or _says_no_more(text, above, kind)) else None
            if kind is None:
                item.faults.append(_unknown(text, (start, end)))
            item.words[:] = rest if kind is None else [kind, *rest]
        above = item


def _begins(text: str, piece: Piece) -> bool:
    return text[piece[0]] != '"' and _DITTO.match(text, *piece) is not None


def _mark(text: str, item: Item) -> re.Match[str] | None:
    """The mark that an item begins with; a quote is one where no other closes it."""
    found = _DITTO.match(text, *item.words[0]) if item.words else None
    said = "".join(text[slice(*piece)] for piece in item.words)
    is_open = said.count('"') % 2 == 1
    return found if found is None or is_open or not said.startswith('"') else None


def _unknown(text: str, piece: Piece) -> Fault:
    return Fault("item-without-feature", *piece, {"written": text[slice(*piece)]})


def _kind_of(text: str, item: Item) -> Piece | None:
    """The words of an item for the kind of its thing, where it is sure which these are."""
    found = _KIND.match(text, *item.words[0]) if item.words else None
    if found is None:
        return None
    words = found["kind"]
    is_parted = bool(found["mark"]) or len(item.words) == 1
    is_plain = is_parted and not _OF_OTHERS.intersection(words.lower().split())
    return found.span() if is_plain and has_kind(words) else None


def _stands_below(text: str, above: Item, item: Item) -> bool:
    """Whether nothing stands between two items but the verb of the second."""
    start = max(end for _, end in above.pieces)
    between = text[start : min(item.pieces)[0]].split("\n")
    told = [line.strip(" \t|.,;:()*-") for line in between]
    return all(not line or canonical_verb(line) is not None for line in told)


def _says_no_more(text: str, item: Item | None, kind: Piece | None) -> bool:
    """Whether the words for its kind are all that an item says of its thing."""
    if item is None or kind is None or item.change or item.old or item.added or item.tail:
        return False
    said = " ".join(text[a:b] for a, b in item.words if (a, b) != kind)
    return not said.strip(" ,") and not text[slice(*kind)].endswith(",")
