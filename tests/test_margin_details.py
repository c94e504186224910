"""What is said of a chart in the margin beside its items, and columns of verb and feature."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.chart import ChartSection
from tests.short_notices import P, Q, R, codes, errors, usable_of

HEADING = "12/26           Quill Sound - Wreck, rock\n"
ITEMS = (f"Insert   wreck    {P}", f"         rock     {Q}", f"Delete   pile     {R}")
READ = [("insert", "wreck"), ("insert", "rock"), ("delete", "pile")]


def beside(*margin: str, items: tuple[str, ...] = ITEMS) -> str:
    return "".join(
        f"{words:<16}{item}\n".rstrip(" ") for words, item in zip(margin, items, strict=True)
    )


def section(text: str) -> ChartSection:
    (notice,) = parse(text).notices
    (chart,) = notice.charts
    return chart


@pytest.mark.parametrize(
    ("margin", "said"),
    [
        (("Chart 802", "INT 9802", ""), ("INT 9802", None, None)),
        (("Chart 802", "INT 9802", "[3/26]"), ("INT 9802", 3, None)),
        (("Chart 802", "[3/26]", "WGS84"), (None, 3, "WGS84")),
        (("Chart 802", "", "INT 9802"), ("INT 9802", None, None)),
        (("Chart 802", "Prev 3/26", ""), (None, 3, None)),
        (("Chart 802", "(INT 9802)", "[3/26] WGS84"), ("INT 9802", 3, "WGS84")),
    ],
)
def test_the_margin_beside_the_items_is_of_the_chart(
    margin: tuple[str, ...], said: tuple[str | None, int | None, str | None]
) -> None:
    text = HEADING + beside(*margin)
    chart = section(text)
    previous = chart.previous.number if chart.previous else None
    assert (chart.international, previous, chart.datum and chart.datum.name) == said
    assert usable_of(parse(text)) == READ
    assert not codes(parse(text))


def test_the_margin_beside_the_places_of_a_line() -> None:
    items = (f"Insert   cable, joining   {P}", f"                         {Q}")
    chart = section(HEADING + beside("Chart 802", "INT 9802", items=items))
    assert [len(a.geometry.positions) for a in chart.actions] == [2]
    assert chart.international == "INT 9802"


@pytest.mark.parametrize("words", ["ask pilots", "No 4", "Pell Bank"])
def test_other_words_in_the_margin_are_not_of_the_chart(words: str) -> None:
    chart = section(HEADING + beside("Chart 802", words, ""))
    assert (chart.international, chart.previous, chart.datum) == (None, None, None)


def test_a_number_below_the_items_that_stands_nowhere_else_is_no_margin() -> None:
    text = f"{HEADING}Chart 802\nInsert   wreck    {P}\nINT 9802  rock   {Q}\n"
    assert section(text).international is None


TITLES = [
    "NOTICE          ACTION AND FEATURE            POSITION\n",
    "Notice          Verb and object               Position\n",
    "Notice          Action / feature              Position\n"
    "--------------  ----------------------------  ------------------\n",
]


@pytest.mark.parametrize("titles", TITLES)
def test_a_column_of_verb_and_feature_beside_heads_in_the_margin(titles: str) -> None:
    bulletin = parse(titles + HEADING + beside("Chart 802", "INT 9802", ""))
    (notice,) = bulletin.notices
    assert (notice.id, notice.heading) == ("12/26", "Quill Sound - Wreck, rock")
    assert [(one.chart, one.international) for one in notice.charts] == [("802", "INT 9802")]
    assert usable_of(bulletin) == READ
    assert not errors(bulletin)


@pytest.mark.parametrize("between", [" ", "   "])
def test_rows_with_their_charts_under_such_titles(between: str) -> None:
    text = (
        "Chart     Action and feature            Position\n"
        f"802       {f'Insert{between}wreck':<30}{P}\n"
        f"802       {f'Delete{between}rock':<30}{Q}\n"
        f"803       {f'Insert{between}pile':<30}{R}\n"
    )
    bulletin = parse(text)
    assert [one.chart for one in bulletin.notices[0].charts] == ["802", "803"]
    assert usable_of(bulletin) == [("insert", "wreck"), ("delete", "rock"), ("insert", "pile")]
