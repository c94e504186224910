"""Ways of writing that say the same in another order, and where their limits are told."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records import Bulletin
from noticeparse.records.action import Amend, Move, Replace

HEAD = "12/26 Quill Sound.\nChart 802 [3/26] WGS84, depths in metres\n"
P, Q, R = "46-00.00S 122-00.00W", "46-00.50S 122-00.00W", "46-00.10S 122-00.20W"
AT_P, AT_Q, AT_R = "-4600.00-12200.00/", "-4600.50-12200.00/", "-4600.10-12200.20/"


def told(bulletin: Bulletin) -> list[tuple[str, str, list[str]]]:
    return [
        (action.verb, action.feature.kind, [p.iso6709 for p in action.geometry.positions])
        for notice in bulletin.notices
        for chart in notice.charts
        for action in chart.actions
        if action.usable
    ]


def errors(bulletin: Bulletin) -> set[str]:
    return {finding.code for finding in bulletin.findings if finding.severity == "error"}


WRECK_AND_ROCK = [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]

SAME = {
    "verb behind a dash": f"* {P}: wreck - established\n* {Q}: rock - withdrawn",
    "verb in the last column": f"Wreck   {P}   to be entered\nRock    {Q}   to be struck out",
    "tags": f"[ADD] wreck @ {P}\n[DEL] rock @ {Q}",
    "nouns over the items": f"ADDITIONS\n  {P} ..... wreck\nREMOVALS\n  {Q} ..... rock",
    "orders over the items": f"To be inserted\n  Wreck ..... {P}\nTo be removed\n  Rock ..... {Q}",
    "place before the verb": f"In {P}, insert a wreck.\nIn {Q}, eliminate the rock.",
    "place behind the verb": f"- to insert, in {P}, a wreck;\n- to delete, in {Q}, the rock;",
    "clauses of a law": (
        f"1.1 there shall be inserted a wreck in {P};\n"
        f"1.2 there shall be deleted the rock in {Q}."
    ),
    "plain-text markup": f"- **Add** wreck at {P}\n- **Remove** rock at {Q}\n- **x**",
    "two tongues": f"INSERT / SETJA INN\n  Wreck   {P}\nDELETE / STRIKA\n  Rock   {Q}",
    "states": (
        f"Existing: nothing charted\nAmended to read: wreck, {P}\n\n"
        f"Existing: rock, {Q}\nAmended to read: deleted"
    ),
    "verbs over rows": (
        "| Object | Latitude | Longitude |\n"
        "| INSERT |\n| Wreck | 46-00.00S | 122-00.00W |\n"
        "| DELETE |\n| Rock | 46-00.50S | 122-00.00W |"
    ),
    "courtesy": f"- Please add wreck at {P}\n- Kindly remove rock at {Q}",
    "slashes": f"INSERT / WRECK / {P}\nDELETE / ROCK / {Q}",
    "square letters": (
        f"Insert wreck ......... [A] {P}\nDelete rock .......... [B] {Q}"
    ),
    "positions first": (
        f"Positions  (1) {P}\n           (2) {Q}\n"
        "Matter     Insert wreck at (1).\n           Delete rock at (2)."
    ),
    "letters with a key": (
        "Codes: I = insert, D = delete.\nCODE   OBJECT   POSITION\n"
        f"I      wreck    {P}\nD      rock     {Q}"
    ),
    "states below the verb": (
        f"INSERT   at   {P}\n         NEW  wreck\nDELETE   at   {Q}\n         OLD  rock"
    ),
    "abbreviated": f"INS WK PSN {P}\nDEL RK PSN {Q}",
    "one sentence": f"A wreck is to be inserted in {P}, and the rock in {Q} is to be deleted.",
    "sentences of a harbour": (
        f"A wreck has been found in position {P}.\n"
        f"The rock in position {Q} has been taken down.\n"
    ),
    "latitude above longitude": (
        "To insert:\n  1) Wreck\n       Lat.  46-00.00 S\n       Long. 122-00.00 W\n"
        "To delete:\n  2) Rock\n       Lat.  46-00.50 S\n       Long. 122-00.00 W\n"
    ),
    "small letters": "ins wk 4600.00s 12200.00w\ndel rk 4600.50s 12200.00w",
}  # fmt: skip


@pytest.mark.parametrize("body", SAME.values(), ids=SAME)
def test_says_the_same(body: str) -> None:
    bulletin = parse(HEAD + body + "\n")
    assert told(bulletin) == WRECK_AND_ROCK


NOT_GUESSED = {
    "one verb behind two items": (f"Wreck   {P}\nRock   {Q}   to be struck out", "wreck"),
    "a word that is no verb": (f"In {P}, insert a wreck.\nIn {Q}, admire the rock.", "rock"),
    "letters without a key": (f"CODE   OBJECT   POSITION\nI      wreck    {P}", "wreck"),
    "states at two places": (
        f"Existing: depth 6.4 m, {P}\nAmended to read: depth 5.9 m, {Q}", "sounding",
    ),
}  # fmt: skip


@pytest.mark.parametrize(("body", "kind"), NOT_GUESSED.values(), ids=NOT_GUESSED)
def test_is_an_error_and_no_action(body: str, kind: str) -> None:
    bulletin = parse(HEAD + body + "\n")
    assert errors(bulletin)
    assert kind not in [one for _, one, _ in told(bulletin)]


def test_exported_rows() -> None:
    rows = (
        '"Notice","Chart","Previous","Action","Object","Position"\n'
        f'"12/26","802","3/26","Insert","legend ""Foul""","{P}"\n'
        f'"12/26","802","3/26","Delete","rock","{Q}"\n'
    )
    bulletin = parse(rows)
    assert told(bulletin) == [("insert", "legend", [AT_P]), ("delete", "rock", [AT_Q])]
    assert bulletin.notices[0].charts[0].actions[0].feature.legend == "Foul"
    assert errors(parse(rows + '"12/26","802","3/26","Delete","stump","46-00.1'))


def test_states_below_a_verb_are_what_goes_and_what_comes() -> None:
    body = f"REPLACE   at   {P}\n          OLD  depth 18.2 m\n          NEW  depth 16.9 m\n"
    (action,) = parse(HEAD + body).notices[0].charts[0].actions
    assert isinstance(action, Replace)
    depths = (action.feature.depth, action.replacement.depth)
    assert [depth and str(depth.value_m) for depth in depths] == ["18.2", "16.9"]


def test_a_light_below_its_replacement_is_that_of_the_new_mark() -> None:
    body = (
        "Action: Replace\nObject: special buoy\nReplacement: special light buoy\n"
        f"Light: Fl.Y.5s\nPosition: {P}\n"
    )
    (action,) = parse(HEAD + body).notices[0].charts[0].actions
    assert isinstance(action, Replace)
    assert action.feature.light is None
    assert action.replacement.light is not None


def test_an_old_value_in_its_column_is_that_of_what_is_deleted() -> None:
    body = (
        "CHANGE    POSITION               OBJECT     OLD      NEW\n"
        f"Amend     {P}  Depth      9.2 m    8.7 m\nDelete    {Q}  Depth      17 m     -\n"
    )
    _, delete = parse(HEAD + body).notices[0].charts[0].actions
    assert delete.feature.depth is not None
    assert delete.feature.depth.value_m == 17


@pytest.mark.parametrize(
    ("feature", "shape"),
    [("breakwater", "line"), ("anchorage area", "area"), ("special buoys", "points")],
)
def test_positions_that_keys_count(feature: str, shape: str) -> None:
    keys = "".join(f"Position {n}: {one}\n" for n, one in enumerate((P, Q, R), 1))
    bulletin = parse(f"{HEAD}Action: Insert\nObject: {feature}\n{keys}")
    (action,) = bulletin.notices[0].charts[0].actions
    assert (action.geometry.shape, len(action.geometry.positions)) == (shape, 3)
    assert not [one for one in bulletin.findings if one.severity == "warning"]


def test_numbers_name_items_as_letters_do() -> None:
    body = f"(1) Insert wreck {P}\n(2) Delete rock {Q}\n(3) Insert cable joining (1)-(2) above\n"
    assert told(parse(HEAD + body))[-1] == ("insert", "cable_submarine", [AT_P, AT_Q])
    assert errors(parse(HEAD + body.replace("(1)-(2)", "(1) and (7)"))) == {"letter-unknown"}


def test_charts_parted_by_a_dash() -> None:
    text = f"12/26 Quill Sound.\nInsert wreck {P}\nCharts: 802 [3/26] - 803 (plan A) [4/26]\n"
    charts = parse(text).notices[0].charts
    assert [(one.chart, one.panel) for one in charts] == [("802", None), ("803", "plan A")]


@pytest.mark.parametrize("order", ["CANCEL NTM", "Cancel notice", "Cancels NM", "CNL NTM"])
def test_cancelled_behind_the_heading(order: str) -> None:
    bulletin = parse(
        f"12/26 - Quill Sound. {order} 9(T)/26.\nChart 802 [3/26]\nInsert wreck {P}\n"
    )
    assert [(ref.number, ref.status) for ref in bulletin.notices[0].cancels] == [(9, "temporary")]
    assert told(bulletin) == [("insert", "wreck", [AT_P])]


def test_positions_of_a_wrapped_row_are_not_those_of_the_row_above() -> None:
    body = (
        f"1.  {P}: insert light, 2F.R(vert).\n2.  {P}, {Q}\n    and {R}: insert restricted area,"
        f" bounded by these positions.\n3.  {P}: delete rock.\n"
    )
    assert [(kind, len(at)) for _, kind, at in told(parse(HEAD + body))] == [
        ("light", 1), ("restricted_area", 3), ("rock", 1),
    ]  # fmt: skip


def test_ditto_marks_stand_for_the_degrees_above() -> None:
    body = (
        "Insert\n  Wreck   46° 00'.00 S   122° 00'.00 W\n"
        "  Rock     \"  00'.50 S    \"  00'.00 W\n  Pile     \"  00'.10 S    \"  00'.20 W\n"
    )
    assert told(parse(HEAD + body)) == [
        ("insert", "wreck", [AT_P]), ("insert", "rock", [AT_Q]), ("insert", "pile", [AT_R]),
    ]  # fmt: skip


@pytest.mark.parametrize("mark", [" ...... ", " | "])
def test_keys_before_leaders_and_bars(mark: str) -> None:
    keys = ["Notice", "12/26", "Chart", "802", "Previous notice", "3/26", "Datum", "WGS84"]
    head = "".join(
        f"{key}{mark}{value}\n" for key, value in zip(keys[::2], keys[1::2], strict=True)
    )
    rows = [("Insert", "wreck", P), ("Delete", "rock", Q)]
    body = "".join(
        f"\nAction{mark}{verb}\nObject{mark}{kind}\nPosition{mark}{at}\n"
        for verb, kind, at in rows
    )
    bulletin = parse(head + body)
    (notice,) = bulletin.notices
    assert (notice.id, notice.charts[0].chart) == ("12/26", "802")
    assert told(bulletin) == WRECK_AND_ROCK


def test_what_a_light_now_shows() -> None:
    body = f"The light in position {P} now shows Fl.R.5s8m5M.\n"
    (action,) = parse(HEAD + body).notices[0].charts[0].actions
    assert isinstance(action, Amend)
    assert [(one.property, one.new.written) for one in action.changes] == [  # type: ignore[union-attr]
        ("light", "Fl.R.5s8m5M")
    ]


def test_charts_within_a_paragraph() -> None:
    first = f"12/26 Quill Sound. Chart 802 [3/26]: insert wreck in {P}. "
    text = f"{first}Chart 803 [4/26]: delete rock in {Q}.\n"
    charts = parse(text).notices[0].charts
    assert [(one.chart, len(one.actions)) for one in charts] == [("802", 1), ("803", 1)]


def test_positions_with_letters_behind_leaders() -> None:
    body = (
        "Insert\n"
        "  cable joining ............ a. 46° 00'.00 S, 122° 00'.00 W\n"
        "                             b. 46° 00'.50 S, 122° 00'.00 W\n"
        "  wreck at ................. position (b)\n"
    )
    assert told(parse(HEAD + body)) == [
        ("insert", "cable_submarine", [AT_P, AT_Q]), ("insert", "wreck", [AT_Q]),
    ]  # fmt: skip


def test_a_move_over_two_rows() -> None:
    text = (
        "Codes: I = insert, M = move (second row: new position)\n"
        "NOTICE\tCHART\tCODE\tOBJECT\tLAT\tLONG\n"
        "12/26\t802\tM\tspecial buoy\t46-00.00S\t122-00.00W\n"
        "\t\t\t\t46-00.50S\t122-00.00W\n"
        "12/26\t802\tI\twreck\t46-00.10S\t122-00.20W\n"
    )
    move, wreck = parse(text).notices[0].charts[0].actions
    assert isinstance(move, Move)
    assert [one.iso6709 for one in move.destination.positions] == [AT_Q]
    assert [one.iso6709 for one in wreck.geometry.positions] == [AT_R]


def test_from_and_to_below_an_amendment() -> None:
    body = f"Amend   light, Sable Head, {P}\n    from  Fl.W.5s31m16M\n    to    Fl(2)W.10s31m18M\n"
    (action,) = parse(HEAD + body).notices[0].charts[0].actions
    assert isinstance(action, Amend)
    assert [(one.property, one.old.written, one.new.written) for one in action.changes] == [  # type: ignore[union-attr]
        ("light", "Fl.W.5s31m16M", "Fl(2)W.10s31m18M")
    ]


def test_a_verb_in_a_title_commands_nothing() -> None:
    text = f"PORT ELLORY - change forms for the chart table\n\n{HEAD}Insert wreck {P}\n"
    assert [one.id for one in parse(text).notices] == ["12/26"]


def test_erratum() -> None:
    body = f"For wreck read dangerous wreck {P}\nFOR depth 5.2m READ depth 4.7m in {Q}\n"
    first, second = parse(HEAD + body).notices[0].charts[0].actions
    assert isinstance(first, Replace)
    assert (first.feature.kind, first.replacement.kind) == ("wreck", "wreck_dangerous")
    assert second.usable
    assert second.feature.depth is not None
    assert str(second.feature.depth.value_m) == "5.2"


def test_a_figure_alone_is_a_depth_and_that_is_said() -> None:
    bulletin = parse(f"{HEAD}Delete depths 5.2 in {P} and 5.7 in {Q}\n")
    assert told(bulletin) == [("delete", "sounding", [AT_P]), ("delete", "sounding", [AT_Q])]
    assert "depth-word-missing" in [one.code for one in bulletin.findings]


def test_index_set_in_two_columns() -> None:
    text = (
        "WEEKLY EDITION No. 27 - 3 July 2026\n\nINDEX OF CHARTS AFFECTED\n"
        "   Chart      Notices            Chart      Notices\n"
        "   802        12                 803        12, 13\n\n"
        f"12/26 Quill Sound.\nChart 802 [3/26]\nInsert wreck {P}\n"
    )
    (index,) = parse(text).lists
    found = {one.chart: [ref.number for ref in one.notices] for one in index.entries if one.chart}
    assert found == {"802": [12], "803": [12, 13]}


def test_tags_with_attributes() -> None:
    bulletin = parse(
        '<notice id="12/26">\n<chart no="802" previous="3/26" datum="WGS84">\n'
        f"<insert>wreck <pos>{P}</pos></insert>\n<delete>rock <pos>{Q}</pos></delete>\n"
        "</chart>\n</notice>\n"
    )
    (notice,) = bulletin.notices
    assert (notice.id, notice.charts[0].chart) == ("12/26", "802")
    assert notice.charts[0].datum is not None
    assert told(bulletin) == WRECK_AND_ROCK


def test_lines_counted_at_the_margin() -> None:
    lines = [
        *HEAD.splitlines(),
        f"Insert wreck {P}.",
        f"Delete rock {Q}.",
        "Source: a pilot.",
        ".",
    ]
    text = "".join(f"{number:02}  {line}\n" for number, line in enumerate(lines, 1))
    assert told(parse(text)) == WRECK_AND_ROCK


def test_chart_numbers_at_the_margin() -> None:
    text = (
        "12/26 Quill Sound.\n\n"
        f"802    Last corr. 3/26. WGS84.\n       Add       wreck {P}\n"
        f"803    Last corr. 4/26. WGS84.\n       Take out  rock {Q}\n"
    )
    bulletin = parse(text)
    charts = bulletin.notices[0].charts
    assert [chart.chart for chart in charts] == ["802", "803"]
    assert told(bulletin) == WRECK_AND_ROCK


def test_panels_on_lines_of_their_own() -> None:
    text = f"PLAN A, PORT ELLORY.\nInsert wreck {P}\nPLAN B, QUILL BASIN.\nDelete rock {Q}\n"
    charts = parse(HEAD + text).notices[0].charts
    assert [(one.chart, one.panel, len(one.actions)) for one in charts] == [
        ("802", "PLAN A", 1), ("802", "PLAN B", 1),
    ]  # fmt: skip


def test_remarks_on_items_stay_remarks() -> None:
    text = f"Insert wreck {P}\nNote to item 1: the rock was surveyed in 2025.\nDelete rock {Q}\n"
    bulletin = parse(HEAD + text)
    assert [remark.text for remark in bulletin.notices[0].remarks] == [
        "Note to item 1: the rock was surveyed in 2025."
    ]


def test_what_no_part_of_the_layout_holds_is_told() -> None:
    text = f"12/26 Quill Sound.\nChart 802 [3/26] WGS84\nInsert wreck {P}\n\nOffice 4, Bay 7\n"
    bulletin = parse(text)
    spans = [text[s.start : s.end] for s in bulletin.coverage.unread_spans]
    remarks = [remark.text for remark in bulletin.notices[0].remarks]
    assert "Office 4, Bay 7" in [*spans, *remarks]


def test_doubt_behind_the_new_place_is_the_new_place_s() -> None:
    (action,) = parse(f"{HEAD}Move wreck from {P} to {Q} (PA)\n").notices[0].charts[0].actions
    assert isinstance(action, Move)
    assert [one.quality for one in action.geometry.positions] == [None]
    assert [one.quality for one in action.destination.positions] == ["approximate"]


def test_a_letter_whose_item_has_no_place_is_no_place() -> None:
    bulletin = parse(f"{HEAD}(a) Insert wreck\n(b) Delete depth 12m, close E of (a)\n")
    assert told(bulletin) == []
    assert errors(bulletin) == {"item-without-position", "reference-unknown"}


def test_a_hemisphere_in_front_may_end_its_line() -> None:
    bulletin = parse(f"{HEAD}Insert wreck in S 46°00.00' W\n122°00.00'.\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    beside = parse(f"{HEAD}Insert buoy close W\n122°00.00'.\n")
    assert told(beside) == []


class TestRemarksAmongCommands:
    """What is said to mariners between or behind commands; no position of it becomes an action."""

    @pytest.mark.parametrize(
        "remark",
        [
            f"\nMariners should keep clear of the ship in {Q} until 3 May.",
            f"\nKeep clear of the works in {Q}.",
            f"\nThe wreck in {Q} will be removed in May.",
            f"Note: a ship lies in {Q}.",
        ],
    )
    def test_remark(self, remark: str) -> None:
        bulletin = parse(f"{HEAD}Insert rock {P}\n{remark}\n\nDelete wreck {R}\n")
        assert told(bulletin) == [("insert", "rock", [AT_P]), ("delete", "wreck", [AT_R])]
        (found,) = bulletin.notices[0].remarks
        assert [one.iso6709 for one in found.positions] == [AT_Q]
        assert errors(bulletin) == set()

    def test_an_item_below_a_heading_is_never_a_remark(self) -> None:
        item = f"Wreck, whose depth should be verified, in {Q}\n"
        bulletin = parse(f"{HEAD}INSERT\n\nRock  {P}\n\n{item}")
        assert bulletin.notices[0].remarks == []
        assert errors(bulletin)

    def test_a_description_in_a_sentence_is_none(self) -> None:
        body = f"INSERT\n\nRock which is awash in {P}\n\nWreck, which has lain long, in {Q}\n"
        assert [one[2] for one in told(parse(HEAD + body))] == [[AT_P], [AT_Q]]


def test_a_dash_for_the_old_state_is_nothing() -> None:
    body = (
        f"ACTION  OLD  NEW                    POSITION\nInsert  -    port-hand light-buoy   {P}\n"
    )
    (action,) = parse(HEAD + body).notices[0].charts[0].actions
    assert (action.verb, action.feature.text) == ("insert", "port-hand light-buoy")


def test_main_chart_behind_a_panel_is_no_panel() -> None:
    text = (
        f"{HEAD}Plan A, Port Ellory\nInsert wreck {P}\nMain chart:\nDelete rock {Q}\n"
        f"Inset B, Dunmarrow\nInsert wreck {R}\nOn the main chart\nDelete wreck {P}\n"
    )
    bulletin = parse(text)
    sections = [
        (chart.chart, chart.panel, [(a.verb, a.feature.text) for a in chart.actions])
        for chart in bulletin.notices[0].charts
    ]
    assert sections == [
        ("802", "Plan A", [("insert", "wreck")]),
        ("802", None, [("delete", "rock")]),
        ("802", "Inset B", [("insert", "wreck")]),
        ("802", None, [("delete", "wreck")]),
    ]
    assert not bulletin.findings


@pytest.mark.parametrize(
    ("words", "cancels"),
    [
        ("Notice 10/26 refers. That notice is cancelled.", [10]),
        ("Notice 10/26 remains in force.", []),
        ("10/26 refers.", []),
    ],
)
def test_notice_that_a_sentence_speaks_of_opens_nothing(words: str, cancels: list[int]) -> None:
    bulletin = parse(f"{HEAD}{words}\nDelete wreck {P}\n")
    assert [notice.id for notice in bulletin.notices] == ["12/26"]
    assert [ref.number for ref in bulletin.notices[0].cancels] == cancels
    assert told(bulletin) == [("delete", "wreck", [AT_P])]
    assert bulletin.notices[0].charts[0].chart == "802"
    assert cancels or words in [one.text for one in bulletin.notices[0].remarks]


# text, kind: what a rock gives its name to is no rock
AIDS_ON_ROCKS = [
    ("BRANNOCH ROCK RACON (K)", "racon"),
    ("BRANNOCH ROCK FOG SIGNAL, Horn(3)60s", "fog_signal"),
    ("PELLAN ISLAND FOG SIGNAL", "fog_signal"),
    ("BRANNOCH ROCK Fl(2)10s18m12M", "light"),
    ("BRANNOCH ROCK LIGHT", "light"),
    ("BRANNOCH ROCK", "rock"),
]


@pytest.mark.parametrize(("phrase", "kind"), AIDS_ON_ROCKS)
def test_an_aid_named_by_a_rock_is_no_rock(phrase: str, kind: str) -> None:
    assert told(parse(f"{HEAD}Delete {phrase} {P}\n")) == [("delete", kind, [AT_P])]


class TestToldBelow:
    """A thing with its place, and what became of it on the line below."""

    def test_all_verbs(self) -> None:
        text = (
            f"{HEAD}\nPIER LIGHT, F.R.9m5M, {P}.\n    Elevation altered to 11m.\n\n"
            f"SPIT PORT-HAND BUOY, {Q}.\n    Permanently withdrawn.\n\n"
            f"ELLORY SAFE-WATER LIGHT-BUOY, Mo(A)8s, {R}.\n    Moved to {Q}.\n\n"
            f"JETTY LIGHT, {P}.\n    Established.\n"
        )
        bulletin = parse(text)
        assert [(verb, at) for verb, _, at in told(bulletin)] == [
            ("amend", [AT_P]), ("delete", [AT_Q]), ("move", [AT_R]), ("insert", [AT_P]),
        ]  # fmt: skip
        amend, _, move, _ = bulletin.notices[0].charts[0].actions
        assert isinstance(amend, Amend)
        assert [(c.property, c.new) for c in amend.changes] == [("light.elevation_m", 11)]
        assert isinstance(move, Move)
        assert [one.iso6709 for one in move.destination.positions] == [AT_Q]

    @pytest.mark.parametrize(
        "words", ["Reported removed.", "Temporarily withdrawn.", "Not established."]
    )
    def test_what_tells_less_is_no_verb(self, words: str) -> None:
        bulletin = parse(f"{HEAD}\nPIER LIGHT, {P}.\n    {words}\n")
        assert not told(bulletin)
        assert errors(bulletin)


class TestAnnounced:
    """Positions numbered first, and items that refer to them by number."""

    def test_relations(self) -> None:
        text = (
            f"{HEAD}Positions  (1) {P}\n           (2) {Q}\n"
            "Insert submarine cable joining (1) and (2).\nMove buoy from (2) to (1).\n"
            "Delete depth 8m, close N of (1).\n"
        )
        bulletin = parse(text)
        cable, move, depth = bulletin.notices[0].charts[0].actions
        assert (cable.geometry.shape, [p.iso6709 for p in cable.geometry.positions]) == (
            "line", [AT_P, AT_Q],
        )  # fmt: skip
        assert isinstance(move, Move)
        assert [p.iso6709 for p in move.destination.positions] == [AT_P]
        assert (depth.geometry.relation, depth.geometry.direction) == ("close", "N")
        assert not errors(bulletin)

    def test_one_that_no_item_refers_to_is_told(self) -> None:
        text = f"{HEAD}Positions  (1) {P}\n           (2) {Q}\nInsert wreck at (1).\n"
        bulletin = parse(text)
        assert told(bulletin) == [("insert", "wreck", [AT_P])]
        assert errors(bulletin) == {"item-without-verb"}

    def test_unknown_number_is_told(self) -> None:
        bulletin = parse(f"{HEAD}Positions  (1) {P}\nInsert wreck at (1).\nDelete rock at (3).\n")
        assert told(bulletin) == [("insert", "wreck", [AT_P])]
        assert errors(bulletin)


def test_charts_behind_each_other_share_the_items_below() -> None:
    head = "12/26 Quill Sound. Ch. 41 (prev. 3/26), Ch. 42 (prev. 4/26)\n"
    charts = parse(f"{head}Ins wreck, {P}\n").notices[0].charts
    assert [(chart.chart, len(chart.actions)) for chart in charts] == [("41", 1), ("42", 1)]


def test_taken_from_a_position_is_its_own_place() -> None:
    bulletin = parse(f"{HEAD}The buoy No 3 has been withdrawn from position {P}.\n")
    assert told(bulletin) == [("delete", "buoy_generic", [AT_P])]
    bulletin = parse(f"{HEAD}The buoy No 3, 045° 200M from position {P}, has been withdrawn.\n")
    assert told(bulletin) == []


def test_letters_may_leave_out_i_and_o() -> None:
    rows = [f"[{letter}] 46-0{n}.00S 122-00.00W" for n, letter in enumerate("FGHJK")]
    bulletin = parse(f"{HEAD}Insert cable, joining {rows[0]}\n" + "\n".join(rows[1:]) + "\n")
    assert "letter-out-of-order" not in {finding.code for finding in bulletin.findings}
    assert len(bulletin.notices[0].charts[0].actions[0].geometry.positions) == 5


def test_cancelled_notice_of_a_message_opens_none() -> None:
    text = (
        "1. NOTICE 12/26 / QUILL SOUND / CHART 802 / LAST 3/26 / DATUM WGS84\n"
        f"   DELETE / WRECK / {P}\n   NOTICE 9(T)/26 CANCELLED\n"
    )
    notice, *others = parse(text).notices
    assert not others
    assert (notice.id, notice.heading, notice.charts[0].chart) == ("12/26", "QUILL SOUND", "802")
    assert [ref.number for ref in notice.cancels] == [9]


def test_charts_at_the_end_of_an_item() -> None:
    head = "12/26 Quill Sound.\nCharts: 611 (previous notice 3/26), 612 (previous notice 4/26)\n"
    items = f"Insert wreck - {P} [611, 612]\nDelete rock - {Q} [612]\nInsert wreck - {R} [99]\n"
    bulletin = parse(head + items)
    assert [
        (chart.chart, [(a.verb, a.feature.kind) for a in chart.actions if a.usable])
        for chart in bulletin.notices[0].charts
    ] == [
        ("611", [("insert", "wreck")]),
        ("612", [("insert", "wreck"), ("delete", "rock")]),
    ]
    # A number that is none of the charts named is no chart.
    assert "feature-figure-unclear" in errors(bulletin)


class TestCountedGrid:
    """A ruled table that counts its rows: a cell may wrap, and a place be that of another row."""

    def test_wrapped_cells_and_references(self) -> None:
        text = (
            f"{HEAD}"
            "| Item | Action | Object                  | Position                  |\n"
            f"| 1    | Insert | Overhead cable, safe    | {P} |\n"
            f"|      |        | clearance 9 m, joining  | {Q} |\n"
            f"| 2    | Move   | Mooring buoy, from      | {P} |\n"
            f"|      |        | to                      | {Q} |\n"
            "| 3    | Delete | Depth 15.1 m, close N of | as item 1 |\n"
            "| 4    | Delete | Depth 13.6 m, close E of | as item 9 |\n"
        )
        bulletin = parse(text)
        cable, move, depth, _ = bulletin.notices[0].charts[0].actions
        assert [p.iso6709 for p in cable.geometry.positions] == [AT_P, AT_Q]
        assert cable.feature.clearance is not None
        assert isinstance(move, Move)
        assert [p.iso6709 for p in move.destination.positions] == [AT_Q]
        assert (depth.geometry.relation, depth.geometry.direction) == ("close", "N")
        assert [p.iso6709 for p in depth.geometry.positions] == [AT_P, AT_Q]
        assert errors(bulletin) == {"letter-unknown"}


def test_positions_with_letters_and_details_below() -> None:
    text = (
        f"12/26. TAVRENNE ISLANDS. Quill Sound.\nChart:       802 (last correction 3/26).\n"
        f"Position:    a) {P}\n             b) {Q}\n             c) {R}\n"
        "Details:     Insert a pier joining a) and b).\n"
        "             Move the buoy from b) to c).\n"
        "             Delete the rocks in a), b) and c).\n"
        "Source:      Harbour office, 3 June 2026.\n"
    )
    bulletin = parse(text)
    pier, move, rocks = bulletin.notices[0].charts[0].actions
    assert [p.iso6709 for p in pier.geometry.positions] == [AT_P, AT_Q]
    assert isinstance(move, Move)
    assert [p.iso6709 for p in move.destination.positions] == [AT_R]
    assert [p.iso6709 for p in rocks.geometry.positions] == [AT_P, AT_Q, AT_R]
    assert bulletin.notices[0].authority == "Harbour office, 3 June 2026"
    assert not errors(bulletin)


def test_a_sentence_to_mariners_below_an_item_is_a_remark() -> None:
    advice = ("Mariners are advised to keep clear.", "Masters shall report to the harbour office.")
    text = f"{HEAD}Insert wreck {P}\n{advice[0]}\nDelete rock {Q}\n{advice[1]}\n"
    bulletin = parse(text)
    assert told(bulletin) == WRECK_AND_ROCK
    assert [remark.text for remark in bulletin.notices[0].remarks] == list(advice)
    phrases = [a.feature.text for a in bulletin.notices[0].charts[0].actions]
    assert phrases == ["wreck", "rock"]


def test_a_move_between_numbers_that_stand_below_it() -> None:
    bulletin = parse(f"{HEAD}Move the buoy from (3) to (4):\n(3) {P}\n(4) {Q}\n")
    (move,) = bulletin.notices[0].charts[0].actions
    assert isinstance(move, Move)
    assert [p.iso6709 for p in move.geometry.positions] == [AT_P]
    assert [p.iso6709 for p in move.destination.positions] == [AT_Q]
    assert not errors(bulletin)
