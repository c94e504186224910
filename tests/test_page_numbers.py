"""Lone figures on a line of their own: numbers of pages, depths that broke off, charts."""

from __future__ import annotations

from decimal import Decimal

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, actions_of, codes, told

TITLE = "12/26 Quill Sound.\n"
ITEM = "Insert   wreck     {}\n"
FILLING = "".join(ITEM.format(f"46-0{n}.00S 122-05.00W") for n in range(1, 9))


def _depths(text: str) -> list[Decimal | None]:
    return [a.feature.depth.value_m for a in actions_of(parse(text)) if a.feature.depth]


@pytest.mark.parametrize(
    ("body", "depths"),
    [
        (f"Insert dangerous wreck, least depth     {P}\n{' ' * 30}12\n", [12]),
        (f"Insert   depth                         {P}\n{' ' * 30}12\n"
         f"         depth                         {Q}\n{' ' * 30}13\n", [12, 13]),
        (f"Insert depth\n{' ' * 14}12\n{' ' * 14}{P}\n", [12]),
        (f"Insert depth\n\n{' ' * 14}12\n{' ' * 14}{P}\n", [12]),
        (f"Insert depth\n{' ' * 14}12.3\n{' ' * 14}{P}\n", [Decimal("12.3")]),
    ],
    ids=["below the words", "in two rows", "before the place", "over a blank", "with a point"],
)  # fmt: skip
def test_a_depth_that_broke_off_is_no_page(body: str, depths: list[Decimal]) -> None:
    assert _depths(HEAD + body) == depths
    assert codes(parse(HEAD + body)) == set()


def test_a_number_that_broke_off_is_no_page() -> None:
    (action,) = actions_of(parse(f"{HEAD}Insert port-hand buoy No\n{' ' * 12}4\n{' ' * 12}{P}\n"))
    assert action.feature.name == "No 4"


@pytest.mark.parametrize(
    "head",
    [
        "Charts affected:\n            802\n            803\n            804\n",
        "Charts                  802\n                        803\n                        804\n",
    ],
)
def test_charts_one_below_the_other_are_no_pages(head: str) -> None:
    (notice,) = parse(f"{TITLE}{head}Insert wreck {P}\n").notices
    assert [(one.chart, len(one.actions)) for one in notice.charts] == [
        ("802", 1), ("803", 1), ("804", 1),
    ]  # fmt: skip


@pytest.mark.parametrize("mark", ["- {} -", "[{}]", "                    {}"])
@pytest.mark.parametrize(
    ("first", "second"),
    [("{}\n\n", "{}\n"), ("\n{}\n", "\n{}\n"), ("\n{}\n\n", "")],
    ids=["foot and end", "below a blank line", "one alone"],
)
def test_figures_beside_blank_lines_are_pages(mark: str, first: str, second: str) -> None:
    if mark.startswith(" ") and not first.startswith("\n"):
        pytest.skip("a bare figure right below a line may belong to it")
    pages = first.format(mark.format(3)), second.format(mark.format(4))
    bulletin = parse(HEAD + ITEM.format(P) + pages[0] + ITEM.format(Q) + pages[1])
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("insert", "wreck", [AT_Q])]
    assert bulletin.coverage.ignored
    assert codes(bulletin) == set()


@pytest.mark.parametrize("mark", ["({})", "[{}]", "- {} -"])
def test_figures_between_items_are_pages_where_they_count_on(mark: str) -> None:
    pages = [f"{mark.format(n)}\n" for n in (112, 113)]
    bulletin = parse(HEAD + ITEM.format(P) + pages[0] + FILLING + pages[1] + ITEM.format(Q))
    assert bulletin.coverage.ignored == 2 * len(mark.format(112).replace(" ", ""))
    assert codes(bulletin) == set()


def test_bare_figures_between_items_are_pages_where_three_count_on() -> None:
    pages = [f"{' ' * 30}26.{n}\n" for n in (3, 4, 5)]
    bulletin = parse(HEAD + "".join(ITEM.format(P) + FILLING + page for page in pages))
    assert (len(actions_of(bulletin)), bulletin.coverage.ignored) == (27, 12)


def test_a_figure_beside_a_head_that_stands_again_is_a_page() -> None:
    head = "Orrend State Hydrographer\n"
    page = f"{' ' * 30}26.3\n{head}"
    bulletin = parse(f"{head}\n{HEAD}{ITEM.format(P)}{page}{ITEM.format(Q)}")
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("insert", "wreck", [AT_Q])]
    assert codes(bulletin) == set()


@pytest.mark.parametrize(
    "foot",
    [
        f"{'-' * 60} page 2 --",
        f"{'=' * 20} Page 2 {'=' * 20}",
        f"{' ' * 60}Sheet 7/2026\n{'-' * 60} page 2 --",
        f"--- page 2 of 5 ---\n{' ' * 60}Sheet 7/2026",
    ],
)
def test_a_rule_stands_on_the_line_of_the_page(foot: str) -> None:
    """Positions of a list go on below it, and the item above takes none of its words."""
    places = f"List of positions\n   A   {P}\n{foot}\n   B   {Q}\n"
    text = f"{HEAD}1.  Insert wreck at A.\n2.  Replace depth 5 m by depth 4 m at B.\n{places}"
    bulletin = parse(text)
    assert [one.geometry.positions[0].iso6709 for one in actions_of(bulletin)] == [AT_P, AT_Q]
    assert codes(bulletin) == set()
    assert bulletin.coverage.ignored > 0


def test_a_figure_between_dashes_stays() -> None:
    bulletin = parse(f"{HEAD}Insert depth\n{'-' * 20} 12 m\n{P}\n")
    assert bulletin.coverage.ignored <= 20
