"""Lines alone between items that turn to another chart or to a book: `Also on 803`."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, actions_of, codes, errors, told

ABOVE, BELOW = f"Insert wreck {P}\n", f"Delete rock {Q}\n"
FIRST, SECOND = ("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])


@pytest.mark.parametrize(
    "line",
    [
        "On 803",
        "Also on 803",
        "For 803:",
        "Also on 803 [2/26]",
        "On the adjoining sheet, 803:",
        "Similarly, on the larger-scale plan 803",
    ],
)
@pytest.mark.parametrize("gap", ["", "\n"])
def test_a_chart_named_alone_is_that_of_the_items_below(line: str, gap: str) -> None:
    (notice,) = parse(f"{HEAD}{ABOVE}{gap}{line}\n{BELOW}").notices
    charts = [(one.chart, [action.verb for action in one.actions]) for one in notice.charts]
    assert charts == [("802", ["insert"]), ("803", ["delete"])]
    before = notice.charts[1].previous
    assert (before.number if before else None) == (2 if "[" in line else None)


def test_words_of_a_sentence_name_no_chart_of_their_own() -> None:
    (notice,) = parse(f"{HEAD}The light shown\nOn 803 is to be deleted {P}\n").notices
    assert [one.chart for one in notice.charts] == ["802"]


@pytest.mark.parametrize(
    "line", ["(803)", "[803]", "- 803 -", "803", f"{' ' * 14}803", "Sheet 803"]
)
def test_items_below_a_figure_alone_are_doubted(line: str) -> None:
    bulletin = parse(f"{HEAD}{ABOVE}{line}\n{BELOW}")
    assert "item-below-figure" in codes(bulletin)
    (found,) = [one for one in bulletin.findings if one.code == "item-below-figure"]
    assert found.paths == ["/notices/0/charts/0/actions/1"]
    assert SECOND in told(bulletin)
    assert bulletin.coverage.ignored == 0


@pytest.mark.parametrize(
    ("above", "below"),
    [(f"{ABOVE}\n", BELOW), (f"{P}  Insert wreck\n", f"{Q}  Delete rock\n")],
    ids=["behind a blank line", "below words"],
)
def test_a_figure_as_long_as_that_of_a_chart_heads_what_stands_right_below(
    above: str, below: str
) -> None:
    bulletin = parse(f"{HEAD}{above}(803)\n{below}")
    assert "item-below-figure" in codes(bulletin)
    assert told(bulletin) == [FIRST, SECOND]


@pytest.mark.parametrize(
    ("line", "code"),
    [
        ("On 803 and 804", "item-of-other-sheet"),
        ("On 803, Panel B", "item-of-other-sheet"),
        ("For 2026", "item-of-other-sheet"),
        ("On the adjoining sheet:", "item-of-other-sheet"),
        ("On the larger-scale chart:", "item-of-other-sheet"),
        ("List of Lights", "item-of-book"),
        ("LIST OF LIGHTS AND FOG SIGNALS", "item-of-book"),
        ("Light List, Volume 2:", "item-of-book"),
        ("Sailing Directions", "item-of-book"),
        ("Correction to the Sailing Directions", "item-of-book"),
        ("Tavrenne Pilot, Volume 1", "item-of-book"),
        ("Pilot book", "item-of-book"),
        ("Tide tables", "item-of-book"),
        ("List of Radio Signals", "item-of-book"),
    ],
)
@pytest.mark.parametrize("gap", ["", "\n"])
def test_items_below_another_sheet_or_a_book_are_held(line: str, code: str, gap: str) -> None:
    bulletin = parse(f"{HEAD}{ABOVE}{gap}{line}\n{BELOW}{BELOW}")
    assert told(bulletin) == [FIRST]
    assert [action.usable for action in actions_of(bulletin)] == [True, False, False]
    assert code in errors(bulletin)


@pytest.mark.parametrize(
    "body",
    [
        f"{ABOVE}{BELOW}List of Lights\n",
        f"Insert legend, see the\nList of Lights\n{P}\n{BELOW}",
        f"Insert port-hand buoy No    {P}\n803\n{BELOW}",
        f"{ABOVE}Light List No 1234\n{BELOW}",
        f"{ABOVE}On 15 March 2026\n{BELOW}",
    ],
    ids=["nothing below", "within an item", "a number of the item above", "an entry", "a day"],
)
def test_lines_that_turn_to_nothing(body: str) -> None:
    found = codes(parse(HEAD + body))
    assert not found & {"item-of-book", "item-of-other-sheet", "item-below-figure"}
