"""Ways of writing that say the same in another order, and where their limits are told."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records import Bulletin

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
    "letters with a key": (
        "Codes: I = insert, D = delete.\nCODE   OBJECT   POSITION\n"
        f"I      wreck    {P}\nD      rock     {Q}"
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
