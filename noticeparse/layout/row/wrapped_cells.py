"""Cells whose words run on below their row, in their own column: what may belong to which row.

Nothing stands on such a line but words for columns of words.  It is more of the row above where
its words break off or fill their column, or where those below are no feature of their own; else
which it is cannot be told, and the row is held back.
"""

from __future__ import annotations

from typing import Literal, NamedTuple

from noticeparse.layout.column.titles import Cells, Table
from noticeparse.layout.evidence import OPEN_END
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line, words_of
from noticeparse.layout.line.joints import opens_note
from noticeparse.readers.features import has_kind, leads_feature, read_feature, value_property
from noticeparse.readers.openings import is_parted
from noticeparse.readers.places import is_connector, split_phrase
from noticeparse.readers.taken_back import takes_back

Verdict = Literal["more", "doubtful", "other"]
"""Whether words are more of the cell above them, may be, or have nothing to do with it."""

_WORDS = frozenset(
    {"feature", "old", "new", "change", "light", "name", "legend", "colours", "shape", "topmark",
     "sectors", "remark"}
)  # fmt: skip
"""Roles of the columns of words."""
PLACE_CELLS = frozenset({"position", "latitude", "longitude"})
_HANGING = 4
"""Blanks by which the further lines of a cell may stand in."""
_TALLEST = 60
"""Parts of a row, above which no more lines are taken to be of it."""
_SLACK = 3
"""Figures by which a cell may be shorter than its column is wide, and yet be full."""
_TELLING = frozenset({"kind", "light", "depth", "measure", "wreck", "category", "sectors"})

_VALUES = frozenset({"light", "measure", "depth", "quoted", "colour", "sectors"})


class Rest(NamedTuple):
    """What a line below a row may hold for it."""

    cells: Cells
    has_places: bool
    """Whether a further place of the row stands beside the words."""
    width: dict[str, int]
    """How many figures go into a line of each column, where that is known."""
    is_fixed: bool
    """Whether the columns are parted by blanks."""
    runs_over: bool
    """Whether words reach into the next column."""
    is_indented: bool
    """Whether a column that the line leaves blank stands left of its words."""


def rest_below(text: str, table: Table, line: Line, cells: Cells) -> Rest | None:
    """What a line may hold for the row above: words that keep to columns of words."""
    of_words = _WORDS | {"verb"} if table.tells_done else _WORDS
    worded = {role: cell for role, cell in cells.items() if role in of_words}
    if not worded or not set(cells) <= of_words | PLACE_CELLS:
        return None
    if table.mark != " ":
        plain = all(e.kind == "words" for cell in worded.values() for e in cell)
        has_places = len(worded) < len(cells)
        rest = Rest(cells, has_places, {}, is_fixed=False, runs_over=False, is_indented=True)
        return rest if plain else None
    width: dict[str, int] = {}
    runs_over = False
    for role, cell in worded.items():
        column = next((one for one in table.columns if one.role == role), None)
        if column is None:
            return None
        following = [one.start for one in table.columns if one.start > column.start]
        at = cell[0].start - line.start - column.start
        if not 0 <= at <= _HANGING or cell[0].kind in ("rule", "bar", "key"):
            return None
        if following:
            width[role] = following[0] - column.start - 1
            runs_over = runs_over or cell[-1].end - line.start > following[0]
    first = table.columns[0]
    is_indented = line.elements[0].start - line.start > first.start + _HANGING
    has_places = any(e.kind in PLACES for cell in cells.values() for e in cell)
    runs_over = runs_over or (len(worded) < len(cells) and not has_places)
    return Rest(cells, has_places, width, True, runs_over, is_indented)


def take_rest(text: str, above: Cells, rest: Rest) -> bool:
    """Take a line as more of the cells of the row above it; where it only may be, with a fault."""
    behind_blank = _stands_behind_blank(text, above, rest.cells)
    is_stacked = not behind_blank and _has_other_half(above, rest.cells)
    verdict = "more" if is_stacked else _judge(text, above, rest, behind_blank=behind_blank)
    if verdict == "other":
        return False
    for role, elements in rest.cells.items():
        if verdict == "doubtful":
            above["rest"] = above.get("rest", []) + elements
        if role in above or role in PLACE_CELLS or is_stacked:
            above[role] = above.get(role, []) + [_as_words(element) for element in elements]
    return True


def _has_other_half(above: Cells, below: Cells) -> bool:
    """Whether a line has the longitude of the row above it, whose cell has the latitude alone."""
    halves = [
        [e.value.axis for e in cells.get("position", []) if e.kind in PLACES and e.kind == "half"]
        for cells in (above, below)
    ]
    whole = any(e.kind == "point" for cells in (above, below) for e in cells.get("position", []))
    return halves == [["latitude"], ["longitude"]] and not whole


def _as_words(element: Element) -> Element:
    return element if element.kind in PLACES else element._replace(kind="words")


def _stands_behind_blank(text: str, above: Cells, below: Cells) -> bool:
    end = max(e.end for cell in above.values() for e in cell)
    between = text[end : min(e.start for cell in below.values() for e in cell)]
    return not between.strip() and between.count("\n") > 1


def _judge(text: str, above: Cells, rest: Rest, *, behind_blank: bool) -> Verdict:
    """Whether the words of a line are the rest of the cells of the row above it."""
    worded = [role for role in rest.cells if role in _WORDS or role == "verb"]
    if sum(len(cell) for cell in above.values()) > _TALLEST:
        return "other" if "rest" in above else "doubtful"
    if rest.has_places and not all(above.get(role) for role in worded):
        return "other"
    states = [e for role in ("old", "new") for e in above.get(role, [])]
    if rest.has_places and any(e.kind in PLACES for e in states):
        # The places above are those of a move; these are of another row.
        return "other"
    below = [e for role in worded for e in rest.cells[role]]
    if "label" in above and all(e.kind == "words" for e in below):
        # Every row is counted; one without its count is more of the row above.
        lead = all(is_connector(words_of(text, rest.cells[role])) for role in worded)
        return "other" if lead else "more"
    told = {
        _of_cell(text, above.get(role, []), rest, role, behind_blank=behind_blank)
        for role in worded
    }
    order: tuple[Verdict, ...] = ("other", "doubtful", "more")
    return next(one for one in order if one in told)


def _of_cell(
    text: str, cell: list[Element], rest: Rest, role: str, *, behind_blank: bool
) -> Verdict:
    below = words_of(text, rest.cells[role])
    if rest.runs_over:
        told = (has_kind(below) or bool(value_property(below) & _TELLING)) and rest.is_indented
        return "doubtful" if told and not opens_note(below) else "other"
    if not cell:
        return _without_cell(below, rest)
    if role in ("remark", "verb") and rest.is_indented and not behind_blank:
        return "more"
    above = words_of(text, cell)
    leads = leads_feature(below)
    breaks = _is_open(above) or is_parted(above, below)
    is_full = _is_full(text, cell[-1], below, rest.width.get(role))
    if rest.has_places:
        # `to P` is another place than that above.
        own = leads or is_connector(below) or below.lower().startswith("to ")
        own = own or (not breaks and _is_another(role, above, below))
        if not own and (breaks or is_full or above.endswith(_JOINTS) or _only_relates(below)):
            return "more"
        is_lost = (
            rest.is_fixed and rest.is_indented and below[:1].islower() and above[:1].isupper()
        )
        return "doubtful" if is_lost and not own and not has_kind(below) else "other"
    if takes_back(below) or _cuts_word(above, below):
        return "doubtful"
    kinds = {element.kind for element in rest.cells[role]}
    plain = kinds <= {"words", "label"}
    if kinds & {"number", "chart"} and not (_is_open(above) and rest.is_indented):
        # The head of the next notice or chart.
        return "other"
    goes_on = breaks or (
        (is_full or above.endswith(_JOINTS))
        and not _opens(above, below)
        and (rest.is_indented or not _opens_sentence(above, below))
    )
    if plain and goes_on and (breaks or not behind_blank):
        return "more"
    if not rest.is_fixed and leads:
        # A row of its own between bars, which lacks its place.
        return "other"
    if plain and not leads and rest.is_indented and not behind_blank:
        return "more"
    bears = rest.is_indented or bool(value_property(below) & _TELLING)
    return "doubtful" if bears else "other"


def _is_another(role: str, above: str, below: str) -> bool:
    """Whether words are those of another thing beside its place: a light, `S3` below `S1`."""
    if role == "light":
        return True
    return role == "name" and all(any(map(str.isdigit, one)) for one in (above, below))


def _only_relates(below: str) -> bool:
    """Whether words say how places belong together, and nothing else: `bounded by`."""
    return not split_phrase(below).description_end


_JOINTS = (",", ":", "-", "/", "&", "+")


def _without_cell(below: str, rest: Rest) -> Verdict:
    """Words below a row that has no cell for them: they may go with any row above."""
    if not rest.is_fixed or opens_note(below):
        return "other"
    bears = rest.is_indented or has_kind(below) or value_property(below) & _TELLING
    return "doubtful" if bears else "other"


def _is_open(words: str) -> bool:
    """Whether words stop within a bracket, a quote or a joint."""
    last = words.split()[-1].lower()
    return words.count("(") > words.count(")") or words.count('"') % 2 > 0 or last in OPEN_END


def _is_full(text: str, above: Element, below: str, width: int | None) -> bool:
    """Whether the first word below had no room on the line above."""
    if width is None:
        return False
    taken = above.end - above.start + 1 + len(below.split()[0])
    return taken > width - _SLACK


def _cuts_word(above: str, below: str) -> bool:
    """Whether a word that is cut at the end of a cell tells less than it does as a whole."""
    if not above.endswith("-"):
        return False
    parted, whole = (read_feature(above + joint + below, None).feature for joint in (" ", ""))
    return (parted.kind, parted.attributes) != (whole.kind, whole.attributes)


def _opens_sentence(above: str, below: str) -> bool:
    is_value = value_property(below) <= _VALUES and not below.endswith(".")
    return below[:1].isupper() and not above.isupper() and not is_value


def _opens(above: str, below: str) -> bool:
    """Whether words open a feature of their own below another that is whole."""
    new = leads_feature(below) and has_kind(above)
    return new and (above.endswith(",") or _opens_sentence(above, below))
