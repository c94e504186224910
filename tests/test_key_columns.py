"""Keys of records whose values stand in a column, with or without a colon between the two.

Common practice, no published source.
"""

from __future__ import annotations

import pytest

from noticeparse import parse

KEYS = """\
Notice{n} 741/26
Region{n} Tavrenne Islands - Quill Sound
Chart{n} 3104
Last notice{p} 702/26
{r}
{i}Action{n} Insert
{i}Object{n} wreck, least depth 9.4m
{i}Position{n} 46°51.90'S 124°08.11'W

{i}Action{n} Replace
{i}Old{n} rock awash
{i}New{n} rock, depth 0.9m
{i}Position{n} 46°51.20'S 124°08.60'W

{i}Action{n} Move
{i}Object{n} special buoy
{i}From{n} 46°51.05'S 124°07.02'W
{i}To{n} 46°51.11'S 124°07.15'W
{r}
Notice{n} 742/26
Region{n} Tavrenne Islands - Dunmarrow Point
Chart{n} 3107
Last notice{p} 688/26
{r}
{i}Action{n} Delete
{i}Object{n} pile
{i}Position{n} 47°02.60'S 124°21.77'W
"""

WAYS = {
    "colon at the key": (":", ":", "", 0),
    "colon in a column": (" :", " :", "", 14),
    "no colon": ("", "", "", 14),
    "no colon, records indented": ("", "", "  ", 14),
    "no colon, ruled": ("", "", "", 14),
    "leaders before the colon": (" .....:", " .....:", "", 22),
    "leaders before the colon, records indented": (" .....:", " .....:", "  ", 22),
}


def written(sign: str, previous: str, indent: str, width: int, rule: str) -> str:
    lines = []
    for line in KEYS.splitlines():
        key, found, value = line.partition("{n}")
        if not found:
            key, found, value = line.partition("{p}")
        if found:
            mark = previous if "{p}" in line else sign
            shown = key.replace("{i}", indent)
            blanks = width - len(shown.lstrip()) - len(mark)
            gap = shown + " " * max(blanks, 0) + mark if mark == " :" else shown + mark
            line = gap.ljust(width) + value
        lines.append(line.replace("{r}", rule))
    return "\n".join(lines) + "\n"


@pytest.mark.parametrize("name", WAYS)
def test_keys_part_from_values_in_every_way(name: str) -> None:
    sign, previous, indent, width = WAYS[name]
    text = written(sign, previous, indent, width, "-" * 40 if "ruled" in name else "")
    bulletin = parse(text)
    assert [notice.id for notice in bulletin.notices] == ["741/26", "742/26"]
    charts = [chart for notice in bulletin.notices for chart in notice.charts]
    assert [(one.chart, one.previous and one.previous.number) for one in charts] == [
        ("3104", 702),
        ("3107", 688),
    ]
    actions = [action for chart in charts for action in chart.actions]
    assert [(one.verb, one.feature.kind, one.usable) for one in actions] == [
        ("insert", "wreck_least_depth", True),
        ("replace", "rock_awash", True),
        ("move", "buoy_special", True),
        ("delete", "pile", True),
    ]
    assert bulletin.coverage.unread == 0
    for chart in charts:
        assert "".join(chart.previous_written.split()) in "".join(text.split())


COUNTED = """\
Notice{n} 741/26
Region{n} Tavrenne Islands - Quill Sound
Chart{n} 3104
Last notice{n} 702/26

{one}Action{n} Insert
     Object{n} wreck, least depth 9.4m
     Position{n} 46°51.90'S 124°08.11'W
{two}Action{n} Move
     Object{n} special buoy
     From{n} 46°51.05'S 124°07.02'W
     To{n} 46°51.11'S 124°07.15'W
{three}Action{n} Delete
     Object{n} pile
     Position{n} 46°51.60'S 124°07.77'W
"""


@pytest.mark.parametrize("label", ["[{}]  ", "({})  ", "{}.   "])
@pytest.mark.parametrize("sign", [":", " .....:"])
def test_records_may_be_counted(sign: str, label: str) -> None:
    one, two, three = (label.format(number) for number in (1, 2, 3))
    bulletin = parse(COUNTED.format(n=sign, one=one, two=two, three=three))
    (chart,) = bulletin.notices[0].charts
    assert [(a.verb, a.feature.kind, a.usable) for a in chart.actions] == [
        ("insert", "wreck_least_depth", True),
        ("move", "buoy_special", True),
        ("delete", "pile", True),
    ]
    assert bulletin.coverage.unread == 0


PUSHED_OUT = """\
NOTICE     741/26
AREA       Quill Sound
CHART      3104
LAST       702/26
    ACTION    Insert
    OBJECT    restricted area{r}
    {k}46°51.90'S 124°08.11'W

    ACTION    Delete
    OBJECT    pile
    POSITION  46°51.60'S 124°07.77'W

    ACTION    Delete
    OBJECT    rock
    POSITION  46°51.70'S 124°07.77'W
"""


@pytest.mark.parametrize(
    ("key", "more", "relation"),
    [
        ("CENTRED ON  ", ", circle of radius 0.5 miles", "centred_on"),
        ("POSITION  ", "", "at"),
        ("CO-ORDINATES  ", "", "at"),
    ],
)
def test_key_longer_than_its_column_pushes_the_value_out(
    key: str, more: str, relation: str
) -> None:
    bulletin = parse(PUSHED_OUT.format(k=key, r=more))
    (chart,) = bulletin.notices[0].charts
    first = chart.actions[0]
    assert len(chart.actions) == 3
    assert (first.verb, first.feature.kind, first.usable) == ("insert", "restricted_area", True)
    assert first.geometry.relation == relation
    assert (first.geometry.radius_nm is not None) is bool(more)
    assert not [one for one in bulletin.findings if one.severity != "info"]


def test_places_in_square_brackets_may_open_a_line() -> None:
    text = (
        "12/26 Quill Sound.\nChart 802 [3/26] WGS84\n[1] 46-00.00S 122-00.00W\n"
        "[2] 46-00.50S 122-00.00W\n[3] 46-00.10S 122-00.20W\nInsert cable, joining [1],\n"
        "[2] and [3]\n"
    )
    (action,) = parse(text).notices[0].charts[0].actions
    assert (len(action.geometry.positions), action.usable) == (3, True)


def test_the_same_chart_named_between_rules_is_no_head_of_a_page() -> None:
    rule = "=" * 40
    block = (
        "{rule}\nNotice:        {n}/26\nChart:         3110\n{rule}\nAction:        Insert\n"
        "Object:        rock\nPosition:      46°51.22'S 124°07.35'W\n"
    )
    bulletin = parse("".join(block.format(rule=rule, n=n) for n in (741, 742, 743)))
    assert [[one.chart for one in notice.charts] for notice in bulletin.notices] == [["3110"]] * 3


def test_columns_without_verbs_behind_their_keys_are_no_records() -> None:
    rows = "".join(f"Change      rock            46°51.{n:02}'S 124°08.10'W\n" for n in range(14))
    text = f"71/26 Quill Sound.\nChart 3104 [60/26]\n{rows}"
    (notice,) = parse(text).notices
    (chart,) = notice.charts
    assert len(chart.actions) == 14
    assert {one.verb for one in chart.actions} == {"amend"}


@pytest.mark.parametrize("key", ["Words", "Wording", "Legend"])
def test_the_words_of_a_legend_have_a_key_of_their_own(key: str) -> None:
    text = (
        "12/26 Quill Sound.\nChart 802 [3/26] WGS84\nAction: Insert\nObject: legend\n"
        f"{key}: Ferries cross\nPosition: 46-00.00S 122-00.00W\n"
    )
    ((action,),) = (chart.actions for chart in parse(text).notices[0].charts)
    assert (action.usable, action.feature.legend) == (True, "Ferries cross")


LED = (
    ("NOTICE NO", "301/26"), ("CHART", "802"), ("LAST NOTICE", "266/26"), ("ACTION", "INSERT"),
    ("FEATURE", "Rock awash"), ("LATITUDE", "47-15.61S"), ("LONGITUDE", "123-30.22W"),
)  # fmt: skip


@pytest.mark.parametrize("width", [13, 14, 18])
@pytest.mark.parametrize("sign", [":", " :"])
def test_the_longest_key_has_the_shortest_leader(width: int, sign: str) -> None:
    text = "".join(f"{f'{key} '.ljust(width, '.')}{sign} {value}\n" for key, value in LED)
    (notice,) = parse(text).notices
    (chart,) = notice.charts
    assert chart.previous is not None
    assert chart.previous.number == 266
    assert [one.feature.kind for one in chart.actions if one.usable] == ["rock_awash"]
