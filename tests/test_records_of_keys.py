"""Records of keys one below the other: which notice and chart each is for, and what it tells."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q, actions_of, codes, errors, told

T, U, V = "-4802.15-12411.40/", "-4806.15-12411.40/", "-4807.25-12412.30/"
PLACES = {
    T: "48°02'.15S., 124°11'.40W.",
    U: "48°06'.15S., 124°11'.40W.",
    V: "48°07'.25S., 124°12'.30W.",
}


def _record(head: str, verb: str, thing: str, place: str, foot: str = "") -> str:
    return f"{head}\nAction: {verb}\nObject: {thing}\nPosition: {PLACES[place]}\n{foot}"


def _sections(text: str) -> list[tuple[str | None, str | None, list[tuple[str, str]]]]:
    """Notice, chart, and verb with place of each action."""
    return [
        (
            notice.id,
            chart.chart,
            [(a.verb, a.geometry.positions[0].iso6709) for a in chart.actions],
        )
        for notice in parse(text).notices
        for chart in notice.charts
    ]


@pytest.mark.parametrize("gap", ["", "\n"])
@pytest.mark.parametrize(
    "chart", ["Chart: {}", "Sheet: {}", "Map: {}", "Sheet No: {}", "Chart: {}, previous 187/26"]
)
@pytest.mark.parametrize("notice", ["Notice: {}", "NM: {}", "Notice No: {}"])
def test_each_record_names_notice_and_chart_anew(notice: str, chart: str, gap: str) -> None:
    heads = [
        f"{notice.format(n)}\n{chart.format(c)}" for n, c in (("211/26", 640), ("211/26", 640))
    ]
    heads.append(f"{notice.format('212/26')}\n{chart.format(641)}")
    records = [
        _record(heads[0], "insert", "wreck", T),
        _record(heads[1], "delete", "port-hand buoy", U),
        _record(heads[2], "delete", "rock", V),
    ]
    assert _sections(gap.join(records)) == [
        ("211/26", "640", [("insert", T), ("delete", U)]),
        ("212/26", "641", [("delete", V)]),
    ]
    assert "notice-number-twice" not in codes(parse(gap.join(records)))


def test_notice_and_chart_on_one_line_are_named_anew() -> None:
    heads = (
        "Notice: 211/26   Sheet: 640",
        "Notice: 211/26   Sheet: 640",
        "Notice: 212/26   Sheet: 641",
    )
    rows = zip(heads, (T, U, V), strict=True)
    records = [_record(head, "insert", "wreck", place) for head, place in rows]
    assert _sections("\n".join(records)) == [
        ("211/26", "640", [("insert", T), ("insert", U)]),
        ("212/26", "641", [("insert", V)]),
    ]


@pytest.mark.parametrize("gap", ["", "\n"])
def test_a_chart_in_front_of_each_record_is_that_of_the_record_below(gap: str) -> None:
    records = [
        _record("Chart: 640", "insert", "wreck", T),
        _record("Chart: 641", "delete", "rock", U),
    ]
    assert _sections("Notice 211/26\n\n" + gap.join(records)) == [
        ("211/26", "640", [("insert", T)]),
        ("211/26", "641", [("delete", U)]),
    ]


def test_a_chart_at_the_end_of_each_record_is_that_of_the_record_above() -> None:
    ends = [("insert", "wreck", T, "640"), ("delete", "rock", U, "641")]
    records = [_record("", *row[:3], f"Chart: {row[3]}\n").lstrip() for row in ends]
    assert _sections("Notice 211/26\n\n" + "".join(records)) == [
        ("211/26", "640", [("insert", T)]),
        ("211/26", "641", [("delete", U)]),
    ]


@pytest.mark.parametrize("words", ["Sheet: 1 of 4", "Sheet: 12/14", "Sheet: 3"])
def test_a_sheet_of_paper_is_no_chart(words: str) -> None:
    text = f"{words}\n\nNotice 211/26\nChart 640\nInsert wreck  {PLACES[T]}\n"
    assert _sections(text) == [("211/26", "640", [("insert", T)])]


@pytest.mark.parametrize(
    "key",
    ["Basis", "Source", "Authority", "Origin", "Reported by", "Basis   ", "Information from"],
)
def test_the_source_of_a_record_is_no_more_of_its_feature(key: str) -> None:
    text = _record(
        "Notice: 211/26\nChart: 640", "insert", "wreck", T, f"{key}: Ellory Pilots, 20 May\n"
    )
    notice = parse(text).notices[0]
    assert (notice.authority or "").endswith("Ellory Pilots, 20 May")
    assert notice.charts[0].actions[0].feature.name is None
    assert codes(parse(text)) == set()


def test_a_place_below_a_source_is_not_lost_in_it() -> None:
    foot = f"Basis: Ellory Pilots\n{PLACES[U]}\n"
    text = _record("Notice: 211/26\nChart: 640", "insert", "wreck", T, foot)
    bulletin = parse(text)
    assert bulletin.coverage.unread or not bulletin.notices[0].charts[0].actions[-1].usable


@pytest.mark.parametrize(
    "words", ["none, for information only", "Information only", "No action (information)", "Note"]
)
def test_a_record_for_information_is_a_remark(words: str) -> None:
    text = _record("Notice: 213/26\nChart: 640", words, "light F.G on Town Pier", T)
    notice = parse(text).notices[0]
    assert [chart.actions for chart in notice.charts] == [[]]
    assert [p.iso6709 for remark in notice.remarks for p in remark.positions] == [T]


def test_a_record_without_a_verb_for_sure_is_held_back() -> None:
    text = _record("Notice: 213/26\nChart: 640", "none", "light F.G on Town Pier", T)
    assert "verb-unknown" in codes(parse(text))
    temporary = text.replace("213/26", "213(T)/26")
    assert [chart.actions for chart in parse(temporary).notices[0].charts] == [[]]
    assert told(parse(text.replace("none", "insert"))) == [("insert", "light", [T])]


@pytest.mark.parametrize(
    "line", ["Contractor: Edderly Company", "Approved by: J. Aldous", "Vessel: Correll"]
)
def test_an_unknown_key_that_tells_nothing_of_a_feature_is_a_remark(line: str) -> None:
    bulletin = parse(_record("Notice: 211/26\nChart: 640", "insert", "wreck", T, f"{line}\n"))
    (notice,) = bulletin.notices
    assert told(bulletin) == [("insert", "wreck", [T])]
    assert notice.charts[0].actions[0].feature.text == "wreck"
    assert [remark.text for remark in notice.remarks] == [line]
    assert not codes(bulletin)


@pytest.mark.parametrize(
    "line",
    [
        "Condition: extinguished",
        "Draught: 9 m",
        "Called: Brannoch",
        "Cover: rock",
        "State: if seen",
    ],
)
def test_an_unknown_key_that_may_tell_of_the_feature_is_no_remark(line: str) -> None:
    bulletin = parse(_record("Notice: 211/26\nChart: 640", "insert", "light F.G", T, f"{line}\n"))
    assert not bulletin.notices[0].remarks
    assert codes(bulletin) or not told(bulletin)


@pytest.mark.parametrize("key", ["Old position", "Previous position", "From", "Old", "Was"])
def test_an_old_position_is_no_second_one_of_what_is_inserted(key: str) -> None:
    record = f"Chart: 803\nAction: Insert\nObject: rock\nPosition: {P}\n"
    bulletin = parse(f"2417/26 QUILL SOUND\n{record}{key}: {Q}\n")
    assert [one.usable for one in actions_of(bulletin)] == [False]
    assert errors(bulletin) == {"places-of-a-move"}
    assert not errors(parse(f"2417/26 QUILL SOUND\n{record}"))


def test_an_old_position_is_where_a_move_begins() -> None:
    (move,) = actions_of(
        parse(
            "2417/26 QUILL SOUND\nChart: 803\nAction: Move\nObject: buoy\n"
            f"Old position: {P}\nNew position: {Q}\n"
        )
    )
    assert (move.verb, move.usable) == ("move", True)


RECORD = f"Action: Insert\nObject: wreck\nPosition: {P}\n"


@pytest.mark.parametrize("number", ["2310", "2310/26"])
@pytest.mark.parametrize(
    "text",
    [
        "Notice: 2417/26\nChart: 802\nPrevious: {0}\n{1}",
        "Notice: 2417/26\nPrevious: {0}\nChart: 802\n{1}",
        "Notice: 2417/26\nChart: 802\n{1}Previous: {0}\n",
        "Notice: 2417/26   Chart: 802\n{1}Previous: {0}\n",
        "Notice: 2417/26\nPrevious: {0}\n{1}",
    ],
)
def test_the_key_of_the_notice_before_may_stand_anywhere(text: str, number: str) -> None:
    bulletin = parse(text.format(number, RECORD))
    (notice,) = bulletin.notices
    (chart,) = notice.charts
    assert chart.previous is not None
    assert chart.previous.number == 2310
    assert (notice.heading, notice.remarks) == (None, [])
    assert not codes(bulletin)


def test_another_notice_before_than_that_of_the_head_is_told() -> None:
    bulletin = parse(f"Notice: 2417/26\nChart: 802 [2300/26]\n{RECORD}Previous: 2310/26\n")
    (chart,) = bulletin.notices[0].charts
    assert chart.previous is not None
    assert chart.previous.number == 2300
    assert codes(bulletin) == {"chart-head-unread"}


_FIRST = "Action: Insert\nObject: wreck\nPosition: {T}\nObject: rock\nPosition: {U}\n"
_LAST = "Object: buoy\nPosition: {V}\n"


@pytest.mark.parametrize(
    ("between", "rest"),
    [
        ("Action: Delete\n", ("211/26", "640", [("insert", T), ("insert", U), ("delete", V)])),
        ("Chart: 641\nPrevious: 187/26\n", ("211/26", "641", [("insert", V)])),
        ("Charts: 641\nAction: Delete\n", ("211/26", "641", [("delete", V)])),
        ("Notice: 212/26\nChart: 641\nAction: Delete\n", ("212/26", "641", [("delete", V)])),
    ],
    ids=["verb", "chart", "charts", "notice"],
)
def test_a_record_without_a_verb_is_whole_below_one_that_opened_with_its_verb(
    between: str, rest: tuple[str, str, list[tuple[str, str]]]
) -> None:
    text = "Notice: 211/26\nChart: 640\n" + (_FIRST + between + _LAST).format(
        T=PLACES[T], U=PLACES[U], V=PLACES[V]
    )
    above = ("211/26", "640", [("insert", T), ("insert", U)])
    expected = [above, rest] if rest[1] == "641" else [rest]
    assert _sections(text) == expected


def test_old_and_new_without_a_verb_are_whole_too() -> None:
    rows = [("depth 4 m", "depth 5 m", T), ("depth 6 m", "depth 7 m", U)]
    records = "".join(f"Old: {a}\nNew: {b}\nPosition: {PLACES[c]}\n" for a, b, c in rows)
    last = _record("", "Delete", "rock", V).lstrip()
    assert _sections(f"Notice: 211/26\nChart: 640\nAction: Replace\n{records}{last}") == [
        ("211/26", "640", [("replace", T), ("replace", U), ("delete", V)])
    ]


def test_a_verb_at_the_end_of_each_record_is_that_of_the_record_above_it() -> None:
    rows = [("wreck", T, "Insert"), ("rock", U, "Delete"), ("buoy", V, "Insert")]
    records = [f"Object: {a}\nPosition: {PLACES[b]}\nAction: {c}\n" for a, b, c in rows]
    assert _sections("Notice: 211/26\nChart: 640\n" + "".join(records)) == [
        ("211/26", "640", [("insert", T), ("delete", U), ("insert", V)])
    ]


def test_cards_have_numbers_too() -> None:
    text = (
        "Card no.: 51/26\nPlace: Quill Sound\nOn chart: 802\nAfter: 44/26\n"
        f"Do: insert\nWhat: wreck\nWhere: {P}\n-\nDo: delete\nWhat: rock\nWhere: {Q}\n\n"
        f"Card no.: 52/26\nOn chart: 803\nAfter: 29/26\nDo: insert\nWhat: rock\nWhere: {P}\n"
    )
    bulletin = parse(text)
    assert [(one.id, one.charts[0].chart) for one in bulletin.notices] == [
        ("51/26", "802"), ("52/26", "803"),
    ]  # fmt: skip
    assert [one.charts[0].previous.number for one in bulletin.notices] == [44, 29]
    assert len(told(bulletin)) == 3


@pytest.mark.parametrize("word", ["Voids", "Annuls", "Revokes", "Cancels"])
def test_records_that_are_numbered_and_end_another(word: str) -> None:
    text = (
        f"#### RECORD 76/2026 ####\nPlace     : Quill Sound\n{word}     : 49(T)/2026\n"
        f"Chart     : 2070\n  Do      : insert\n  Object  : rock\n  At      : {PLACES[T]}\n\n"
        "#### END OF SET ####\n"
    )
    bulletin = parse(text)
    (notice,) = bulletin.notices
    assert (notice.id, [one.number for one in notice.cancels]) == ("76/26", [49])
    assert told(bulletin) == [("insert", "rock", [T])]
    assert errors(bulletin) == set()
