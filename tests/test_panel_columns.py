"""Columns that name the panel of a chart, and the notice before."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q, R, errors

TITLES = "Chart   Plan              Notice before\n"


def sections(text: str) -> list[tuple[str | None, str | None, int]]:
    (notice,) = parse(text).notices
    return [(one.chart, one.panel, len(one.actions)) for one in notice.charts]


@pytest.mark.parametrize("panel", ["A", "A (Pell Basin)", "Pell Basin", "Plan A"])
def test_a_row_above_items_names_a_panel(panel: str) -> None:
    text = (
        f"15/26 Quill Sound\n\n{TITLES}412     {panel:<18}12/26\nInsert rock, {P}\n\n"
        f"{TITLES}412     -                 12/26\nInsert wreck, {Q}\n"
    )
    told = panel.partition(" (")[0]
    assert sections(text) == [("412", told, 1), ("412", None, 1)]
    assert not errors(parse(text))


def test_a_number_under_the_title_of_the_notice_before_opens_none() -> None:
    bulletin = parse(
        f"15/26 Quill Sound\n{TITLES}412     -                 12/26\nInsert wreck, {Q}\n"
    )
    (notice,) = bulletin.notices
    assert notice.charts[0].previous is not None
    assert (notice.number, notice.charts[0].previous.number) == (15, 12)


def test_rows_of_items_go_to_their_panels() -> None:
    rows = [("802", "A", P), ("802", "B", P), ("802", "-", Q), ("", "B", R)]
    body = "".join(f"{one} | {two} | 3/26 | Insert | rock | {at}\n" for one, two, at in rows)
    text = f"12/26 Quill Sound.\nChart | Panel | Previous | Action | Feature | Position\n{body}"
    assert sections(text) == [("802", "A", 1), ("802", "B", 2), ("802", None, 1)]
