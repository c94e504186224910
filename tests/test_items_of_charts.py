"""Lists of the items that hold for each chart, beside the charts at the foot of a notice."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.head_values import read_items
from tests.short_notices import P, Q, R, actions_of, codes, errors

HEAD = "[147/2026]  TAVRENNE ISLANDS - SAMBARA SOUND - Buoys\n"
ITEMS = {
    "48-31.25S 124-02.60W": "wreck", "48-31.42S 124-02.18W": "rock",
    "48-31.80S 124-03.05W": "jetty", "48-31.66S 124-02.90W": "depth 7.3 m",
}  # fmt: skip


def _body(marks: str) -> str:
    return "".join(
        f" ({mark}) Insert in {place}: {words}\n"
        for mark, (place, words) in zip(marks.split(), ITEMS.items(), strict=True)
    )


def _labels(text: str) -> dict[str | None, str]:
    (notice,) = parse(text).notices
    return {
        chart.chart: " ".join(a.label or "-" for a in chart.actions if a.usable)
        for chart in notice.charts
    }


ROMAN, LETTERS, FIGURES = "i ii iii iv", "a b c d", "1 2 3 4"
READ = [
    (ROMAN, "items (i) to (iv); # items (i) and (iii). Datum WGS 84."),
    (ROMAN, "items (i)-(iv)\n        # items (i), (iii)"),
    (ROMAN, "(items (i) to (iv)), # (items (i) and (iii))"),
    (ROMAN, "(items i to iv), # (items i, iii)"),
    (ROMAN, "all items; # items (i), (iii) only"),
    (ROMAN, "items (i) to\n(iv); #\nitems (i) and (iii)."),
    (ROMAN, "items (i), (ii), (iii) and (iv); # items (i) and\n        (iii)."),
    (ROMAN, "corrections (i) to (iv). # corrections (i) & (iii)"),
    (ROMAN, "sl. no. (i) to (iv); # sl. no. (i) and (iii)"),
    (LETTERS, "items (a) to (d); # items (a) and (c)"),
    (LETTERS, "items a to d; # items a, c"),
    (FIGURES, "items (1) to (4); # items (1) & (3)"),
    (FIGURES, "items 1 to 4; # items 1 and 3"),
    (LETTERS, "all; # (a) (c)"),
    (LETTERS, "- all items; # - (a) and (c)."),
    (LETTERS, "(a)-(d), # (a) & (c)"),
    (LETTERS, "(a), (b), (c) and (d) and # (a), (c)"),
    (LETTERS, "- all items\n  # - (a) and (c)"),
    (LETTERS, "(all)\n        #     (a), (c)"),
    (LETTERS, "(a) (b) (c) (d)\n - #: (a), (c)"),
    (ROMAN, "all of them; # (i) and (iii) only"),
]


@pytest.mark.parametrize(("marks", "foot"), READ)
def test_each_chart_has_only_its_items(marks: str, foot: str) -> None:
    charts = "Charts: 2705 [139/2026] " + foot.replace("#", "2706 [128/2026]")
    text = f"{HEAD}{_body(marks)}{charts}\n"
    first, _, third, _ = marks.split()
    assert _labels(text) == {"2705": marks, "2706": f"{first} {third}"}
    assert not codes(parse(text)) - {"datum-of-some-charts"}


@pytest.mark.parametrize("title", ["Charts affected:\n", "Charts:\n", "Charts to correct:\n"])
@pytest.mark.parametrize("first", [" - all items", ": all", " (all)", "   all", " (a)-(d)"])
def test_charts_on_a_line_each_below_their_title(title: str, first: str) -> None:
    rows = f"  2705 [139/26]{first}\n  2706 (INT 9706) [128/26] - (a) and (c)\n"
    assert _labels(f"{HEAD}{_body(LETTERS)}{title}{rows}") == {"2705": LETTERS, "2706": "a c"}


@pytest.mark.parametrize("said", ["the lot", ": everything", "whole notice"])
def test_a_row_of_charts_that_is_not_understood_is_told(said: str) -> None:
    rows = f"Charts affected:\n  2705 [139/26]\n  2706 [128/26] {said}\n"
    text = f"{HEAD}{_body(LETTERS)}{rows}"
    assert _labels(text) == {"2705": LETTERS}
    assert "chart-left-out" in codes(parse(text))


def test_a_letter_before_its_item_is_no_list_of_a_chart() -> None:
    text = f"{HEAD}Chart 2705 [139/26]\n (a) Insert wreck {P}\n (b) Insert rock {Q}\n"
    assert _labels(text) == {"2705": "a b"}


HELD_BACK = (
    "2705 [1/26] (iv) to (i); 2706 [2/26] (i) and (iii)",
    "2705 [1/26] all but (ii); 2706 [2/26] (i) and (iii)",
    "2705 [1/26] items (iv) to (i); 2706 [2/26] items (i) and (iii)",
    "2705 [1/26] items one to four; 2706 [2/26] items one and three",
    "2705 [1/26] items (i), (ii) plus (iv); 2706 [2/26] items (i) to (iv)",
    "2705 [1/26] items (i) through (iv); 2706 [2/26] items (i) to (iv)",
    "2705 [1/26] except item (ii); 2706 [2/26]",
    "2705 [1/26] items (i) to (iv), but not (ii); 2706 [2/26]",
    "2705 [1/26] items (i) to (iv) less (ii); 2706 [2/26]",
    "2705 [1/26] items (I) to (IV); 2706 [2/26] items (I) and (III)",
    "2705 and 2707 [1/26] items (i) to (iv); 2706 [2/26] items (i) and (iii)",
    "2705, 2706 items (i) to (iii)",
    "2705 [1/26] items (v) to (x); 2706 [2/26]",
    "2705 [1/26] items (a) and (2); 2706 [2/26]",
)


@pytest.mark.parametrize("foot", HELD_BACK)
def test_lists_that_are_not_certain_hold_all_items_back(foot: str) -> None:
    text = f"{HEAD}{_body(ROMAN)}Charts: {foot}\n"
    assert "item-of-one-chart" in errors(parse(text))
    assert not any(_labels(text).values())


def test_lists_before_their_charts_hold_all_items_back() -> None:
    foot = "Items (i) to (iv): Chart 2705 [1/26]. Items (i) and (iii): Chart 2706 [2/26].\n"
    assert not any(_labels(f"{HEAD}{_body(ROMAN)}{foot}").values())


@pytest.mark.parametrize(
    ("words", "wanted"),
    [
        ("items (ii) to (iv)", "ii iii iv"),
        ("(a-c)", "a b c"),
        ("items (i) and (j)", "i j"),
        ("items (h) to (j)", "h i j"),
        ("items (ix) to (xi)", "ix x xi"),
        ("(items 2 and 3 only)", "2 3"),
        ("items (v) to (x)", None),
        ("items 4 to 2", None),
    ],
)
def test_read_items(words: str, wanted: str | None) -> None:
    told = read_items(words)
    assert told == (None if wanted is None else frozenset(wanted.split()))


@pytest.mark.parametrize(
    ("head", "notice"),
    [
        ("[147/2026]", "147/26"), ("[148(T)/2026]", "148(T)/26"), ("[147/26 (P)]", "147(P)/26"),
        ("[No. 147/26]", "147/26"), ("[2026/147]", "147/26"),
    ],
)  # fmt: skip
def test_number_in_square_brackets_opens_a_notice(head: str, notice: str) -> None:
    front = "EDITION No. 08 of 2026, DATED 16 APR 2026\n\n"
    bulletin = parse(f"{front}{head}  TAVRENNE ISLANDS - Buoys\nChart 2701 [12/26]\n")
    assert [one.id for one in bulletin.notices] == [notice]


def test_notice_before_in_square_brackets_opens_none() -> None:
    text = "41/26 Quill Sound\nChart 802\n\n[30/26]  WGS84\nInsert wreck 46-00.00S 122-00.00W\n"
    assert [one.id for one in parse(text).notices] == ["41/26"]


@pytest.mark.parametrize("words", ["stands cancelled", "and 89(T)/2026 stand cancelled"])
def test_stands_cancelled(words: str) -> None:
    text = f"{HEAD}{_body(ROMAN)}Chart: 2701 [112/26]\nNotice 88(T)/2026 {words}.\n"
    (notice,) = parse(text).notices
    assert [one.number for one in notice.cancels] == [88, 89][: 1 + words.count("89")]


def test_entries_of_a_book_are_no_lost_change() -> None:
    text = f"{HEAD}{_body(ROMAN)}Chart: 2701 [112/26]\nList of Lights: entry F 612 is to be "
    assert "change-without-place" not in codes(parse(f"{text}deleted.\n"))
    sentence = "The light-buoy nearby has been removed.\n"
    assert "change-without-place" in codes(parse(f"{text}deleted.\n{sentence}"))


def test_list_that_its_chart_has_lost_holds_all_items_back() -> None:
    foot = "Charts: 2705 [1/26]; 2706 [2/26]\n\nItems (i) and (iii).\n"
    assert not any(_labels(f"{HEAD}{_body(ROMAN)}{foot}").values())


APART = f"412/26 Quill Sound.\nChart 88 [290/26]\nInsert wreck {P}\nChart 90 [291/26]\n"
COMMANDS = {
    "both": f"On both charts delete rock {Q}\n",
    "behind the verb": f"Delete from both charts rock {Q}\n",
    "two": f"On the two charts delete rock {Q}\n",
    "each": f"On each chart delete rock {Q}\n",
    "these": f"On these charts delete rock {Q}\n",
}


@pytest.mark.parametrize("command", COMMANDS.values(), ids=list(COMMANDS))
def test_a_command_for_all_charts_is_for_those_above_too(command: str) -> None:
    bulletin = parse(f"{APART}Delete pile {R}\n{command}")
    kinds = [[a.feature.kind for a in one.actions] for one in bulletin.notices[0].charts]
    assert kinds == [["wreck", "rock"], ["pile", "rock"]]
    assert errors(bulletin) == set()


@pytest.mark.parametrize(
    "command",
    [
        *COMMANDS.values(),
        f"Insert on all three charts wreck {Q}\n",
        f"Delete rock {Q} on all three charts.\n",
        f"Both charts\nDelete rock {Q}\n",
    ],
)
def test_a_command_for_several_charts_under_one_is_held_back(command: str) -> None:
    bulletin = parse(f"412/26 Quill Sound.\nChart 88 [290/26]\n{command}")
    assert "item-of-one-chart" in errors(bulletin)
    assert not any(action.usable for action in actions_of(bulletin))


@pytest.mark.parametrize("lead", ["On both charts insert", "Both charts: insert"])
def test_a_letter_of_one_chart_is_not_that_of_the_other(lead: str) -> None:
    bulletin = parse(
        f"412/26 Quill Sound.\nChart 88 [290/26]\nInsert (a) wreck {P}\nChart 90 [291/26]\n"
        f"Delete (a) pile {Q}\n{lead} rock close W of (a) above\n"
    )
    assert "item-of-one-chart" in errors(bulletin)
    assert [a.usable for a in actions_of(bulletin) if a.feature.kind == "rock"] in (
        [False],
        [False, False],
    )
