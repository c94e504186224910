"""What the cell of a verb says besides: how the thing lies to its places, or what of it changes.

`insert along the line joining these places`, `amend period to 10s`.  What is neither is no verb
that is known.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.faults import Fault
from noticeparse.layout.column.titles import Cells
from noticeparse.layout.drafts import Added, Item, Piece
from noticeparse.layout.line.elements import Element
from noticeparse.readers.change_parts import divide_change
from noticeparse.readers.places import read_phrase
from noticeparse.readers.verbs import canonical_verb

_THESE = re.compile(
    r"(?:^|(?<= ))(?:this|that|these|those|the (?:same|said|above|following)) "
    r"(?:places?|positions?|points?)[ .]{0,3}$",
    re.IGNORECASE,
)
_JOINTS = frozenset(("", "and", "&"))
_LEADS = (["along", "joining"], ["joining"], ["bounded"], ["within"], ["centred"], ["close"])


def without_rest(text: str, cell: Sequence[Element]) -> list[Element]:
    """The verb alone of a cell that says besides what can be read."""
    is_read = _relation(text, cell) is not None or _tells_changes(text, cell)
    return list(cell[:1] if is_read else cell)


def settle_rest(text: str, item: Item, cells: Cells) -> None:
    """Give an item what the cell of its verb says besides."""
    cell = cells.get("verb", [])
    relation = _relation(text, cell)
    if relation is None:
        if _tells_changes(text, cell):
            item.added.append(Added(", ", [(cell[1].start, cell[-1].end)], ""))
        return
    if not text[slice(*relation)].strip():
        return
    leads = [" ".join(text[a:b] for a, b in group.lead).strip(" ,") for group in item.groups]
    is_plain = leads[:1] == [""] and all(lead in _JOINTS for lead in leads)
    if not is_plain or any(group.role is not None for group in item.groups):
        written = {"written": " ".join(text[slice(*relation)].split())}
        item.faults.append(Fault("relation-unclear", *relation, written))
        return
    item.groups[0].lead.append(relation)


def _relation(text: str, cell: Sequence[Element]) -> Piece | None:
    """How the thing is said to lie to the places of its row: `joining` before `these places`.

    An empty stretch where it says no more than that it is there; None for other words.
    """
    if len(cell) < 2 or cell[0].kind != "verb":
        return None
    start, end = cell[1].start, cell[-1].end
    pointing = _THESE.search(text, start, end)
    if pointing is None:
        return None
    words = text[start : pointing.start()].rstrip()
    kinds = [part.kind for part in read_phrase(words) if part.kind != "separator"]
    if kinds in ([], ["at"], ["from_"]):
        return start, start
    return (start, start + len(words)) if kinds in _LEADS else None


def _tells_changes(text: str, cell: Sequence[Element]) -> bool:
    """Whether an amendment says which property changes, and to what: `amend period to 10s`."""
    if len(cell) < 2 or cell[0].kind != "verb" or any(e.kind != "words" for e in cell[1:]):
        return False
    if canonical_verb(text[cell[0].start : cell[0].end]) != "amend":
        return False
    parts = divide_change(text[cell[1].start : cell[-1].end])
    return bool(parts) and all(
        part.is_change and part.property is not None and part.new is not None for part in parts
    )
