"""Layouts that offices use and that are easily misread: each specimen and what it tells."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Move
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import actions_of

TOP = "TAVRENNE ISLANDS (INVENTED)\n\n12/26 Quill Sound.\n"
HEAD = TOP + "Chart 802 [3/26] depths in metres\n"


def told(bulletin: Bulletin) -> list[tuple[str, str, list[str]]]:
    """Verb, kind and positions of every action, those of a destination behind the others."""
    found = []
    for action in actions_of(bulletin):
        ends = action.destination.positions if isinstance(action, Move) else []
        places = [p.iso6709 for p in (*action.geometry.positions, *ends)]
        found.append((action.verb, action.feature.kind, places))
    return found


def errors_of(bulletin: Bulletin) -> list[str]:
    return [f.code for f in bulletin.findings if f.severity == "error"]


P, Q, R = "46-00.10S 122-00.20W", "46-01.10S 122-01.20W", "46-02.10S 122-02.20W"
AT_P, AT_Q, AT_R = "-4600.10-12200.20/", "-4601.10-12201.20/", "-4602.10-12202.20/"

SPECIMENS = {
    "commas between commands": (
        f"Insert a rock in {P}, delete the pile in {Q} and move the mooring buoy from\n"
        f"{P} to {R}, then insert a wreck in {Q}.\n",
        [("insert", "rock", [AT_P]), ("delete", "pile", [AT_Q]),
         ("move", "buoy_mooring", [AT_P, AT_R]), ("insert", "wreck", [AT_Q])],
    ),
    "passive headings": (
        f"The following are to be inserted:\n  - Rock\n      {P}\n"
        f"The following have been removed:\n  - Pile\n      {Q}\n"
        f"To be deleted from the chart:\n  - Wreck\n      {R}\n"
        f"Marks moved:\n  - Mooring buoy\n      from {P}\n      to   {Q}\n",
        [("insert", "rock", [AT_P]), ("delete", "pile", [AT_Q]), ("delete", "wreck", [AT_R]),
         ("move", "buoy_mooring", [AT_P, AT_Q])],
    ),
    "a name parted by the line end": (
        f"Replace   isolated danger buoy by isolated danger      {P}\n"
        "          light-buoy, Fl(2)5s\n"
        f"Delete    pile                                         {Q}\n",
        [("replace", "buoy_isolated_danger", [AT_P]), ("delete", "pile", [AT_Q])],
    ),
    "old and new without a verb": (
        "POSITION                OLD             NEW\n"
        f"{P}    mooring buoy    nil\n"
        f"{Q}    nil             rock, least depth 2m\n"
        f"{R}    special buoy    special light-\n"
        "                                        buoy, Fl.Y.3s\n"
        "\nOBJECT                  OLD POSITION            NEW POSITION\n"
        f"pile                    {P}    {Q}\n",
        [("delete", "buoy_mooring", [AT_P]), ("insert", "rock", [AT_Q]),
         ("replace", "buoy_special", [AT_R]), ("move", "pile", [AT_P, AT_Q])],
    ),
    "verb and feature in one column": (
        "| POSITION    | CORRECTION              |\n"
        "| 46-00.10S   | Insert special light    |\n"
        "| 122-00.20W  | buoy, Fl.Y.3s           |\n"
        "| 46-01.10S   | Delete pile             |\n"
        "| 122-01.20W  |                         |\n",
        [("insert", "buoy_special", [AT_P]), ("delete", "pile", [AT_Q])],
    ),
    "titles that say what was and what is": (
        "POSITION                WAS             IS\n"
        f"{P}    mooring buoy    removed\n"
        f"{Q}                    rock\n"
        f"{R}    depth 8m        depth 7m\n",
        [("delete", "buoy_mooring", [AT_P]), ("insert", "rock", [AT_Q]),
         ("replace", "sounding", [AT_R])],
    ),
    "verbs as keys": (
        f"Insert:    rock awash\nPosition:  {P}\n\n"
        f"Replace:   depth 8m\nBy:        depth 7m\nPosition:  {Q}\n\n"
        f"Move:      mooring buoy\nFrom:      {P}\nTo:        {R}\n",
        [("insert", "rock_awash", [AT_P]), ("replace", "sounding", [AT_Q]),
         ("move", "buoy_mooring", [AT_P, AT_R])],
    ),
    "abbreviations": (
        f"Ins safe wtr lt-buoy Iso.4s {P}\nDel moor buoy {Q}\nIns foul gnd {R}\n",
        [("insert", "buoy_safe_water", [AT_P]), ("delete", "buoy_mooring", [AT_Q]),
         ("insert", "foul_ground", [AT_R])],
    ),
    "told twice alike": (
        f"A rock has been found and is to be inserted in {P}. The pile in 46-01.10S,\n"
        f"122-01.20W. A wreck has been found in {R}.\n",
        [("insert", "rock", [AT_P]), ("insert", "wreck", [AT_R])],
    ),
}  # fmt: skip


@pytest.mark.parametrize(("text", "expected"), SPECIMENS.values(), ids=list(SPECIMENS))
def test_items(text: str, expected: list[tuple[str, str, list[str]]]) -> None:
    bulletin = parse(HEAD + text)
    assert told(bulletin) == expected
    assert errors_of(bulletin) == []


@pytest.mark.parametrize(
    "foot",
    [
        "Charts concerned: 802 [3/26] WGS84 - 803 (INT 9803) [5/26] WGS84\n",
        "Affects: Chart 802 (previous 3/26) and Chart 803, INT 9803 (previous 5/26).\n",
        "Applies to charts 802 [3/26], 803 (INT 9803) [5/26]\n",
        "Charts affected - 802 [3/26], 803 (INT 9803) [5/26]\n",
        "(Charts 802, previous 3/26; 803, INT 9803, previous 5/26)\n",
        "To be made on: Charts 802 [3/26] - 803 (INT 9803) [5/26]\n",
    ],
)
def test_charts_at_the_foot(foot: str) -> None:
    bulletin = parse(f"{TOP}\n  Insert   a  rock     {P}\n  Delete   b  pile     {Q}\n{foot}")
    charts = [
        (c.chart, c.international, c.previous.number if c.previous else None, len(c.actions))
        for c in bulletin.notices[0].charts
    ]
    assert charts == [("802", None, 3, 2), ("803", "INT 9803", 5, 2)]
    assert [a.label for a in bulletin.notices[0].charts[0].actions] == ["a", "b"]
    assert errors_of(bulletin) == []


@pytest.mark.parametrize(
    ("text", "code"),
    [
        (f"Delete the wreck in {P}, substituting a depth of 4.5m.\n", "verb-within-words"),
        (f"Delete wreck {P}\nThere is now a rock in {Q}\n", "verb-within-words"),
    ],
)
def test_second_change_is_not_lost(text: str, code: str) -> None:
    assert code in errors_of(parse(HEAD + text))


def test_participle_does_not_hold_for_what_follows() -> None:
    text = f"Insert a rock in {P} and the pile in {Q} removed.\nWreck in {R}.\n"
    bulletin = parse(HEAD + text)
    assert told(bulletin)[:2] == [("insert", "rock", [AT_P]), ("delete", "pile", [AT_Q])]
    assert ("delete", "wreck", [AT_R]) not in told(bulletin)


def test_chart_number_lost_beside_the_notice_before() -> None:
    bulletin = parse(f"{TOP}Chart ?, previous 3/26\nInsert rock {P}\n")
    assert "chart-unread" in errors_of(bulletin)


def test_keys_of_the_head() -> None:
    text = (
        "NR: 12/26\nPlace: Quill Sound\nSubject: Rock, pile\nCH: 802\nPREV: 3/26\n"
        "Cancels:   7(T)/26\n\n"
        f"DO: insert\nMARK: rock\nCOORDS: {P}\n\nDO: delete\nMARK: pile\nCOORDS: {Q}\n"
    )
    bulletin = parse("TAVRENNE ISLANDS (INVENTED)\n\n" + text)
    (notice,) = bulletin.notices
    assert (notice.id, notice.heading) == ("12/26", "Quill Sound Rock, pile")
    assert [ref.number for ref in notice.cancels] == [7]
    assert told(bulletin) == [("insert", "rock", [AT_P]), ("delete", "pile", [AT_Q])]
    assert errors_of(bulletin) == []


def test_lettered_parts_of_an_edition() -> None:
    text = (
        "TAVRENNE ISLANDS (INVENTED)\nWeek 7 of 2026\n\nA.  CHARTS\n  Chart 802 ... 12, 13\n\n"
        "B.  NOTICES IN FORCE\n  7(T)/26\n\nC.  CORRECTIONS\n\n12*/26   Quill Sound\n"
        f"Chart 802 [3/26]\nInsert  rock   {P}\nChart 803 [4/26]\nInsert  pile   {Q}\n\n"
        f"D.  RADIO WARNINGS IN FORCE\n\nTAVRENNE COASTAL WARNING 88/26\nYACHT ADRIFT IN {R}.\n"
    )
    bulletin = parse(text)
    assert [one.kind for one in bulletin.lists] == ["index_of_charts", "in_force"]
    assert [(n.id, n.status, len(n.charts)) for n in bulletin.notices] == [
        ("12/26", "permanent", 2), ("88/26", "radio_warning", 0),
    ]  # fmt: skip
    assert bulletin.notices[0].original_information
    assert bulletin.coverage.unread == 0


@pytest.mark.parametrize(
    "written",
    ["47 21.9O S 124 02.71 W", "4O 21.95 S 124 02.71 W", "S 47 15.10  W 126 26.O4"],
)
def test_letter_among_figures_parted_by_blanks(written: str) -> None:
    # `21.9O S` is not 21.9 degrees, and `4O 21.95 S` not 4 degrees.
    bulletin = parse(f"{HEAD}Insert  rock     {written}\n")
    assert told(bulletin) == [("insert", "rock", [])]
    assert "position-unreadable" in errors_of(bulletin)


def test_lost_sign_is_noticed() -> None:
    places = ("-47.31020 -123.80411", "47.31077 -123.80520", "-47.31130 -123.80633")
    bulletin = parse(HEAD + "".join(f"Insert rock {place}\n" for place in places))
    assert "position-hemisphere-differs" in [f.code for f in bulletin.findings]


def test_places_that_go_on_below_a_place_in_front() -> None:
    rows = [(f"46-0{n}.00S 122-00.00W") for n in range(5)]
    text = (
        f"{HEAD}Insert\n{rows[0]}   fish farm, bounded by these three positions\n{rows[1]}\n"
        f"{rows[2]}\n{rows[3]}   wreck\n"
    )
    bulletin = parse(text)
    farm, wreck = (action for chart in bulletin.notices[0].charts for action in chart.actions)
    assert (farm.geometry.shape, len(farm.geometry.positions)) == ("area", 3)
    assert [p.iso6709 for p in wreck.geometry.positions] == ["-4603.00-12200.00/"]


def test_notice_in_brackets_at_the_end_of_a_row() -> None:
    text = (
        "Chart B-7, Quill Banks, edition of 2014, WGS84\n"
        "  Wreck, 46-00.00S 122-00.00W, insert (20/26)\n"
        "  Rock, 46-00.50S 122-00.00W, delete (20/26)\n"
        "  Pile, 46-00.60S 122-00.00W, insert (21/26)\n"
    )
    notices = parse(text).notices
    told = [(one.id, [(c.chart, len(c.actions)) for c in one.charts]) for one in notices]
    assert told == [("20/26", [("B-7", 2)]), ("21/26", [("B-7", 1)])]


def test_rows_led_by_one_of_the_charts_named_above() -> None:
    text = (
        "NOTICE 58/26. QUILL BANK\nCharts affected: 9 (last 44/26), 10 (last 51/26)\nINSERT\n"
        "   Chart 9     Depth 14 m      46-00.0S 122-00.0W\n"
        "   Chart 10    Depth 14.2 m    46-00.01S 122-00.02W\n"
        "DELETE\n   Chart 10    Wreck           46-00.50S 122-00.00W\n"
    )
    (notice,) = parse(text).notices
    told_of = {one.chart: [a.verb for a in one.actions] for one in notice.charts}
    assert told_of == {"9": ["insert"], "10": ["insert", "delete"]}
    assert [one.previous.number for one in notice.charts if one.previous] == [44, 51]


def test_what_is_new_on_the_chart_and_what_is_off_it() -> None:
    text = (
        "2026/201. Quill Sound.\nPrevious notices: chart 61, 2026/188; chart 62, 2026/190. "
        "Positions: WGS84.\n\nNEW ON THE CHART\n wreck (46-00.00S 122-00.00W) [61, 62]\n\n"
        "OFF THE CHART\n rock (46-00.50S 122-00.00W) [62]\n\n"
        "MOVED ON THE CHART\n special buoy, from (46-00.70S 122-00.00W) to (46-00.80S 122-00.00W)"
        " [61]\n"
    )
    bulletin = parse(text)
    (notice,) = bulletin.notices
    assert notice.id == "201/26"
    assert [
        (one.chart, one.previous.number if one.previous else None, [a.verb for a in one.actions])
        for one in notice.charts
    ] == [("61", 188, ["insert", "move"]), ("62", 190, ["insert", "delete"])]
    assert not [one for one in bulletin.findings if one.severity != "info"]


def test_a_participle_before_a_feature_is_another_verb() -> None:
    text = (
        f"{HEAD}DELETE\nwreck 46-00.00S 122-00.00W\nRELOCATED ON SITE\nbuoy 46-00.50S 122-00.00W\n"
    )
    actions = actions_of(parse(text))
    assert [a.feature.kind for a in actions if a.usable] == ["wreck"]
