"""Lists of aids whose remarks tell what was done: rows without, and lists below a verb."""

from __future__ import annotations

from noticeparse.layout.column.titles import Cells, Table

_THINGS = frozenset({"feature", "name", "light"})


def without_carried_verb(table: Table | None, cells: Cells) -> Cells:
    """The cells of a row; where its remark is left blank, the verb above it does not hold on."""
    if table is None or not table.tells_done or "verb" in cells or _THINGS.isdisjoint(cells):
        return cells
    first = next(iter(cells[role] for role in ("feature", "name", "light") if role in cells))[0]
    return {**cells, "verb": [first._replace(kind="key", end=first.start)]}


def with_plain_remarks(titles: Table, above: Table | None, *, is_headed: bool) -> Table:
    """The titles; below a verb of their own what stands in their remarks is no other.

    So it is below the same titles on the next page.
    """
    goes_on = above is not None and not above.tells_done and "remark" in above.roles
    if not titles.tells_done or not (is_headed or goes_on):
        return titles
    columns = (
        one._replace(role="remark") if one.role == "verb" else one for one in titles.columns
    )
    return titles._replace(columns=tuple(columns), tells_done=False)
