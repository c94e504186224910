"""What the cells of a row tell by their words: nothing, more of the row above, two things."""

from __future__ import annotations

from collections.abc import Container, Sequence

from noticeparse.layout.column.columns import column_role
from noticeparse.layout.column.titles import Cells
from noticeparse.layout.drafts import Added, Item, Piece
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, words_of
from noticeparse.readers.features import has_kind, leads_feature, value_property
from noticeparse.readers.openings import is_parted
from noticeparse.readers.places import is_connector, read_phrase
from noticeparse.readers.positions import quality_mark
from noticeparse.readers.unchanged import changes_nothing
from noticeparse.readers.verbs import canonical_verb

_LONGEST_COUNT = 3
_NOTHING = frozenset(
    {
        "", "nil", "none", "nothing", "n/a", "na", "not charted", "uncharted", "no feature",
        "no object", "blank",
    }
)  # fmt: skip
_WORDS = frozenset(
    {"feature", "old", "new", "change", "light", "name", "legend", "colours", "shape", "topmark",
     "sectors"}
)  # fmt: skip


_DASHES = frozenset({"-", "--", "---"})
_DITTO = frozenset({'"', "''", "do", "ditto", "id", "idem"})


def is_empty(text: str, role: str, cell: Sequence[Element]) -> bool:
    """Whether a cell says nothing, or that the cell above holds for it too."""
    words = words_of(text, cell).strip()
    is_dash = role not in ("old", "new", "verb") and words in _DASHES
    return is_dash or words.strip(" .-").lower() in _DITTO


def is_nothing(words: str) -> bool:
    """Whether the words of an OLD or NEW cell say that nothing is there: `nil`, a dash."""
    return words.lower().strip(" .-") in _NOTHING


def goes_on_in_cells(text: str, above: Cells, below: Cells) -> bool:
    """Whether a row holds more words for cells of the row above it, or its position too.

    A cell that could be a feature of its own goes on only where the words above break off.
    """
    more = [role for role in below if role in _WORDS]
    if not more or not set(more) <= set(above):
        return False
    if any(e.kind != "words" for role in more for e in below[role]):
        return False
    if "label" in above and not {"label", "verb"} & set(below):
        # Every row is counted; one without its count is more of the row above.
        return not all(is_connector(words_of(text, below[role])) for role in more)
    beside = set(below) - set(more)
    if beside == {"verb"} and "verb" not in above and _lacks_place(below):
        # The verb stands on the last line of the row, as a total does.
        beside = set()
    if beside and not (_is_place(below, more) and _lacks_place(above)):
        return False
    return all(_goes_on(words_of(text, above[role]), words_of(text, below[role])) for role in more)


def _is_place(cells: Cells, words: list[str]) -> bool:
    return set(cells) - set(words) <= {"position", "latitude", "longitude"}


def _lacks_place(cells: Cells) -> bool:
    return not any(e.kind in ("point", "half", "reference") for c in cells.values() for e in c)


def _goes_on(above: str, below: str) -> bool:
    if above.strip() in _DASHES:
        # A cell that holds nothing breaks off nowhere.
        return False
    if above.endswith((",", ":", "-", "/", "&", " and", " of", " with", " by", " to", " for")):
        return True
    roles = value_property(below)
    describes = bool(roles) and not roles & {"kind", "unknown"} and not leads_feature(below)
    return is_parted(above, below) or (describes and not is_nothing(above))


def with_links_apart(text: str, cells: Cells) -> Cells:
    """The cells, a `to` alone under OLD or NEW with the place beside it, whose end it tells.

    In the column of the verbs `moved to P` tells where a thing goes.
    """
    made = dict(cells)
    verb = cells.get("verb", [])
    places = [e for e in verb if e.kind in PLACES]
    told = [e for e in verb if e.kind not in PLACES]
    if places and "to" not in cells and canonical_verb(words_of(text, told)) == "move":
        made["verb"], made["to"] = told, places
    new = cells.get("new", [])
    ends = [e for e in new if e.kind in PLACES]
    links = words_of(text, [e for e in new if e.kind not in PLACES]).strip(" -,.")
    is_moved = bool(ends) and canonical_verb(words_of(text, verb)) == "move"
    if is_moved and "to" not in cells and (not links or is_connector(links)):
        # `Move | P | light-buoy | at Q`: the new state of the thing is where it goes.
        made["to"] = made.pop("new")
    for role in ("old", "new"):
        cell = made.get(role, [])
        words = words_of(text, cell).strip(" -")
        if words and all(e.kind == "words" for e in cell) and is_connector(words):
            made["position"] = [*made.pop(role), *made.get("position", [])]
    return made


def with_own_feature(cells: Cells) -> Cells:
    """The cells, with verb and feature apart where one cell holds both: `Insert depth 6 m`."""
    cell = cells.get("verb", [])
    if "feature" in cells or len(cell) < 2 or cell[0].kind != "verb":
        return cells
    return {**cells, "verb": cell[:1], "feature": cell[1:]}


def lone_axes(cells: Cells) -> set[str]:
    """The axes of the coordinates that stand alone in their cells; empty where any is whole."""
    axes: set[str] = set()
    for elements in cells.values():
        halves = [e for e in elements if e.kind == "half"]
        if len(halves) > 1 or any(e.kind == "point" for e in elements):
            return set()
        axes |= {str(e.value.axis) for e in halves}
    return axes


_PROPERTIES = frozenset({"range", "elevation", "name", "sectors", "colours"})


def changed_property(text: str, verb: Element) -> list[Added]:
    """What a verb such as `Range amended` adds to the feature: the property that changes."""
    head, _, last = text[verb.start : verb.end].rpartition(" ")
    if column_role(head) not in _PROPERTIES or canonical_verb(last) != "amend":
        return []
    return [Added(", ", [(verb.start, verb.start + len(head))], "")]


def awaits_destination(item: Item) -> bool:
    """Whether a row of a move has one place, so that the row below says where to."""
    is_move = item.verb is not None and canonical_verb(item.verb) == "move"
    return is_move and len(item.groups) == 1 and len(item.groups[0].places) == 1


def verb_above(text: str, cells: Cells) -> str | None:
    """The verb of a row that is nothing but a verb over the rows below: `| INSERT | | |`.

    Or a sentence that heads them: `The following light-buoys are established:`.
    """
    told = [element for cell in cells.values() for element in cell]
    if len(told) != 1 or told[0].kind not in ("verb", "words", "passive"):
        return None
    words = words_of(text, told)
    if told[0].kind == "verb" and told[0].value is not None:
        return str(told[0].value)
    is_sentence = told[0].kind == "verb" and words.endswith(":")
    is_short = is_sentence or len(words.split()) <= 3
    return words if is_short and canonical_verb(words) is not None else None


def with_change(text: str, cells: Cells) -> Cells:
    """The cells of a row, what an amendment changes `to` being its change: `to: elevation 21m`."""
    told = cells.get("to", [])
    is_amended = canonical_verb(words_of(text, cells.get("verb", []))) == "amend"
    if not told or not is_amended or {"new", "change"} & cells.keys():
        return cells
    if any(one.kind in PLACES for one in told):
        return cells
    return {("change" if role == "to" else role): cell for role, cell in cells.items()}


def with_amendment(text: str, cells: Cells, above: str | None) -> Cells:
    """The cells of a row below `The following lights are amended:`, whose verbs are no verbs.

    `range to 11M` under `Amendment` is what is changed.
    """
    told = cells.get("verb", [])
    if above is None or canonical_verb(above) != "amend" or "change" in cells or not told:
        return cells
    words = words_of(text, told)
    if " to " not in words or any(one.kind != "words" for one in told):
        return cells
    if canonical_verb(words.split()[0]) is not None:
        return cells
    return {("change" if role == "verb" else role): cell for role, cell in cells.items()}


def is_other_band(text: str, elements: Sequence[Element]) -> bool:
    """Whether elements, all of a row, stand over the rows below and are no plain verb.

    `NO CHANGE` and `RETAIN` do nothing, `DELETE (by 1 July)` not at once: no verb holds below.
    """
    told = [one for one in elements if one.kind != "bar"]
    if not told or any(one.kind not in ("verb", "words") for one in told):
        return False
    words = words_of(text, told).strip()
    if has_kind(words) or '"' in words:
        return False
    is_verb = told[0].kind == "verb" and len(told) > 1
    return is_verb or changes_nothing(words) or (words.isupper() and told[0].kind == "words")


def words_beside(text: str, cells: Cells) -> tuple[list[Piece], list[Piece]]:
    """The words before the first place of a row, and those behind its last: `close N of P`.

    Words behind that lie by the place as those before would, `P close N`, are given with these.
    """
    axes = [cells.get("latitude", []), cells.get("longitude", [])]
    parts: tuple[list[Element], list[Element]] = [], []
    for cell in [cells["position"]] if "position" in cells else axes:
        at = [i for i, element in enumerate(cell) if element.kind in PLACES]
        if at and cell is not axes[1]:
            parts[0].extend(cell[: at[0]])
        if at or (cell is axes[1] and any(e.kind in PLACES for e in axes[0])):
            parts[1].extend(cell[at[-1] + 1 if at else 0 :])
    before, behind = (
        [
            (e.start, e.end)
            for e in part
            if e.kind == "words" and any(c.isalpha() for c in text[e.start : e.end])
        ]
        for part in parts
    )
    lying = [piece for piece in behind if _lies_close(text[slice(*piece)])]
    return before + lying, [piece for piece in behind if piece not in lying]


def quality_of(text: str, cells: Cells) -> list[Piece]:
    """The mark of quality of a position that a column of its own has, or that of remarks: `PA`."""
    cell = cells.get("quality", []) or cells.get("remark", [])
    return [(e.start, e.end) for e in cell if quality_mark(text[e.start : e.end])]


def _lies_close(words: str) -> bool:
    """Whether words say on which side of a place a thing lies, and nothing else: `close N`."""
    kinds = {part.kind for part in read_phrase(words.strip(" ,.()"))}
    return bool(kinds & {"close", "vicinity"}) and kinds <= {"close", "vicinity", "separator"}


def span_of(elements: list[Element]) -> Piece | None:
    """From the first of some elements to the end of the last."""
    return (elements[0].start, elements[-1].end) if elements else None


_LINKS = {"replace": ("by", "with"), "amend": ("to",)}
_FOR_ANOTHER = ("exchanged", "swapped", "changed")
"""`exchanged for light-beacon`: what comes; `substituted for` would tell what goes."""


def verb_and_change(text: str, start: int, end: int) -> tuple[Piece, Piece] | None:
    """The verb and what the feature becomes in a cell that holds both: `Replaced by depth 6 m`."""
    head, _, rest = text[start:end].partition(" ")
    link, _, new = rest.partition(" ")
    links = _LINKS.get(canonical_verb(head) or "", ())
    if head.lower() in _FOR_ANOTHER:
        links = (*links, "for")
    if link.lower() not in links or not new.strip():
        return None
    return (start, start + len(head)), (end - len(new), end)


def set_label(text: str, item: Item, cells: Cells, codes: Container[str]) -> None:
    """Give an item the letter or number that its row has, in a column of its own or not."""
    for role in ("label", "count", "feature", "verb"):
        for element in cells.get(role, []):
            if role == "verb" and text[element.start : element.end] in codes:
                continue
            written = text[element.start : element.end].strip(" .)(")
            is_of_row = role in ("label", "count") and written.isalnum()
            is_count = is_of_row and len(written) <= _LONGEST_COUNT
            if (element.kind == "label" or is_count) and item.label is None:
                item.label = element.value or written
                item.label_piece = (element.start, element.end)


def is_whole(above: Cells, cells: Cells) -> bool:
    """Whether a row has all cells of the item above it: where no column names a feature."""
    if "feature" in above or not cells.keys() >= above.keys():
        return False
    return not cells.keys().isdisjoint(("light", "depth", "name", "legend"))
