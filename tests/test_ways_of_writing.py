"""Ways of writing that say the same in another order, and where their limits are told."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Amend, Move, Replace
from tests.short_notices import (
    AT_P,
    AT_Q,
    AT_R,
    HEAD,
    WRECK_AND_ROCK,
    P,
    Q,
    R,
    actions_of,
    errors,
    told,
)

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
    "positions behind their key": (
        f"Positions: (1) {P}\n(2) {Q}\nInsert wreck in (1).\nDelete rock in (2)."
    ),
    "positions above": f"{P}\nInsert wreck\n{Q}\nDelete rock",
    "verb behind a colon": f"Wreck: insert in {P}\nRock: delete in {Q}",
    "verb between dashes": f"Wreck - insert - {P}\nRock - delete - {Q}",
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


def test_a_figure_alone_is_a_depth_and_that_is_said() -> None:
    bulletin = parse(f"{HEAD}Delete depths 5.2 in {P} and 5.7 in {Q}\n")
    assert told(bulletin) == [("delete", "sounding", [AT_P]), ("delete", "sounding", [AT_Q])]
    assert "depth-word-missing" in [one.code for one in bulletin.findings]


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


def test_a_hemisphere_in_front_may_end_its_line() -> None:
    bulletin = parse(f"{HEAD}Insert wreck in S 46°00.00' W\n122°00.00'.\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    beside = parse(f"{HEAD}Insert buoy close W\n122°00.00'.\n")
    assert told(beside) == []


def test_a_dash_for_the_old_state_is_nothing() -> None:
    body = (
        f"ACTION  OLD  NEW                    POSITION\nInsert  -    port-hand light-buoy   {P}\n"
    )
    (action,) = parse(HEAD + body).notices[0].charts[0].actions
    assert (action.verb, action.feature.text) == ("insert", "port-hand light-buoy")


@pytest.mark.parametrize(
    "words",
    [
        f"Amend position of special buoy from {P} to {Q}",
        f"Correct the charted position of the special buoy, {P}, to {Q}",
        f"Change position of special buoy: from {P} to {Q}",
    ],
)
def test_a_position_that_is_amended_is_a_move(words: str) -> None:
    (move,) = actions_of(parse(HEAD + words + "\n"))
    assert isinstance(move, Move)
    assert (move.feature.kind, move.usable) == ("buoy_special", True)
    assert [p.iso6709 for p in move.geometry.positions] == [AT_P]
    assert [p.iso6709 for p in move.destination.positions] == [AT_Q]
