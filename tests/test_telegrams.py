"""Telegrams: marks of numbers and groups of lights without brackets, notices without charts."""

from __future__ import annotations

import pytest

from noticeparse import parse, parse_light
from noticeparse.errors import NoticeParseError
from noticeparse.records.action import Replace
from tests.short_notices import AT_P, Q, actions_of, codes, errors, told, usable_of

P = "46 00.00S 122 00.00W"
AHEAD = f"NR 271 OF 2026 QUILL SOUND\nCHT 802 LAST NR 258 OF 2026\nINS RK AWASH PSN {P}\n\n"


@pytest.mark.parametrize(
    "number", ["NR 273 T OF 2026", "NR 273T OF 2026", "NR 273 (T) OF 2026", "NO 273 T OF 2026"]
)
def test_a_bare_mark_before_the_year_is_of_the_number(number: str) -> None:
    text = f"{AHEAD}{number} PELL HAVEN\nCHT 803\nLT F R PSN {P} EXTINGUISHED\n"
    first, second = parse(text).notices
    assert (first.id, second.id, second.status) == ("271/26", "273(T)/26", "temporary")
    assert not second.charts[0].actions
    assert [p.iso6709 for remark in second.remarks for p in remark.positions] == [AT_P]


@pytest.mark.parametrize(
    "clause",
    [
        "CANX NR 249 T OF 2026",
        "CANCEL NR 249 T OF 2026",
        "NR 249(T) OF 2026 CANX",
        "CANX NR 249 (T) OF 2026",
        "CANC NR 249(T) OF 2026",
        "CANC. NR 249(T)/26",
    ],
)
def test_what_a_telegram_cancels_is_no_name_of_the_item_above(clause: str) -> None:
    bulletin = parse(f"NR 275 OF 2026 QUILL SOUND\nCHT 802\nINS RACON K PSN {P}\n{clause}\n")
    (notice,) = bulletin.notices
    assert [(ref.number, ref.status) for ref in notice.cancels] == [(249, "temporary")]
    assert [a.feature.name for a in actions_of(bulletin)] == [None]
    assert told(bulletin) == [("insert", "racon", [AT_P])]


@pytest.mark.parametrize(
    "character", ["GP FL 2 W 5S", "Gp Fl 2 W 5s", "GP.FL.2.W.5S", "GP FL(2) W 5S"]
)
def test_a_group_without_brackets(character: str) -> None:
    light = parse_light(character)
    assert (light.rhythm, light.groups, light.colours, light.period_s) == ("Fl", [2], ["W"], 5)
    text = f"NR 272 OF 2026 SOUND\nCHT 802\nINS ISOLATED DANGER LT BUOY {character} PSN {P}\n"
    bulletin = parse(text)
    (action,) = actions_of(bulletin)
    assert action.feature.light is not None
    assert action.feature.light.groups == [2]
    assert not codes(bulletin)


@pytest.mark.parametrize("character", ["GP FL 2", "GP FL W 2 5S", "FL 2 W 5S"])
def test_a_figure_that_may_be_no_group_is_refused(character: str) -> None:
    with pytest.raises(NoticeParseError):
        parse_light(character)


@pytest.mark.parametrize(
    "said",
    [
        "NO CHT CORRN CHT AGENTS TO RETURN STOCK OF CHT 809 BY 31 JUL 2026",
        "NO CHTS AFFECTED AGENTS TO RETURN CHT 809",
        "NO CHART CORRNS",
        "NO CHART CORRECTIONS. CHART AGENTS TO RETURN CHART 809",
    ],
)
def test_a_notice_for_no_chart_names_none(said: str) -> None:
    bulletin = parse(f"{AHEAD}NR 276 OF 2026 GENERAL\n{said}\n")
    assert [chart.chart for chart in bulletin.notices[1].charts] == []
    assert not codes(bulletin)


SAID_BEHIND = [
    ("INSERT", "ROCK", "CANX."),
    ("INSERT", "ROCK", "IS CANX."),
    ("INSERT", "ROCK", "WDRN"),
    ("INSERT", "LIGHT", "DISCONTD."),
    ("INSERT", "LIGHT", "EXT."),
    ("INSERT", "ROCK", "CANCELLED."),
    ("INSERT", "ROCK", "DELETE."),
    ("DELETE", "LIGHT", "ESTAB"),
]


@pytest.mark.parametrize(("verb", "thing", "said"), SAID_BEHIND)
def test_the_verb_above_does_not_hold_for_what_is_said_otherwise(
    verb: str, thing: str, said: str
) -> None:
    listed = f"{verb}\nA. WRECK {P}\nB. {thing} {Q} {said}"
    for text in (f"{verb} WRECK {P}.\n{thing} {Q} {said}", listed):
        bulletin = parse(f"NR 271/26. CHART 802.\n{text}\n")
        assert usable_of(bulletin) == [(verb.lower(), "wreck")]
        assert errors(bulletin)


@pytest.mark.parametrize("said", ["CANX BUOY", "WDRN ROCK", "RPLC BUOY BY LT BUOY", "Canx rock"])
def test_a_verb_cut_short_is_no_name_of_the_next_thing(said: str) -> None:
    for joint in (". ", ", "):
        bulletin = parse(f"NR 271/26. CHART 802. INSERT WRECK {P}{joint}{said} {Q}.\n")
        assert usable_of(bulletin) == [("insert", "wreck")]
        # Behind a full stop the word stands where a verb does.
        assert errors(bulletin) <= {"verb-within-words", "verb-unknown"}
        assert errors(bulletin)


@pytest.mark.parametrize(
    ("verb", "said", "meant"),
    [
        ("INSERT", "DELETED.", "delete"),
        ("INSERT", "DELD", "delete"),
        ("DELETE", "ESTABLISHED.", "insert"),
        ("DELETE", "ESTABD.", "insert"),
    ],
)
def test_a_participle_in_capitals_ends_its_sentence(verb: str, said: str, meant: str) -> None:
    bulletin = parse(f"NR 271/26. CHART 802.\n{verb} WRECK {P}.\nROCK {Q} {said}\n")
    assert usable_of(bulletin) == [(verb.lower(), "wreck"), (meant, "rock")]
    assert not codes(bulletin)


def test_what_is_cancelled_without_a_year_is_told() -> None:
    bulletin = parse(f"NR 271 OF 2026. CHART 802. CANX NR 204. INSERT WRECK {P}.\n")
    assert not bulletin.notices[0].cancels
    assert codes(bulletin) == {"chart-head-unread"}
    dated = parse(f"NR 271 OF 2026. CHART 802. CANX NR 204/26. INSERT WRECK {P}.\n")
    assert [ref.number for ref in dated.notices[0].cancels] == [204]
    assert not codes(dated)


def test_a_notice_cancelled_behind_an_item_is_no_name_of_it() -> None:
    text = f"NR 271 OF 2026\nCHART 802\nINSERT WRECK {P}\nDELETE BUOY {Q} CANX NR 204\n"
    bulletin = parse(text)
    assert usable_of(bulletin) == [("insert", "wreck")]
    assert errors(bulletin) == {"verb-within-words"}


SHORT_WORDS = {
    "shft": (f"SHFT MOORING BUOY FM {P} TO {Q}", ("move", "buoy_mooring")),
    "reposn": (f"REPOSN MOORING BUOY FM {P} TO {Q}", ("move", "buoy_mooring")),
    "least dep": (f"INS WK LEAST DEP 6.2M {P}", ("insert", "wreck_least_depth")),
    "dpth": (f"INS DPTH 6.2M {P}", ("insert", "sounding")),
    "jng": (f"INS SUBM CABLE JNG {P} AND {Q}", ("insert", "cable_submarine")),
    "bdd": (
        f"INS ANCHORAGE AREA BDD {P}, {Q} AND 46 00.50S 122 00.50W",
        ("insert", "anchorage_area"),
    ),
}


@pytest.mark.parametrize(("line", "read"), SHORT_WORDS.values(), ids=SHORT_WORDS)
def test_short_words_are_read_whole(line: str, read: tuple[str, str]) -> None:
    bulletin = parse(f"NR 271 OF 2026 QUILL SOUND\nCHT 802 LAST NR 258 OF 2026\n{line}\n")
    assert usable_of(bulletin) == [read]
    assert {f.code for f in bulletin.findings} == {"datum-not-stated"}


def test_a_shortened_cancellation_below_the_head_opens_no_notice() -> None:
    text = f"NM 646/26  TAVRENNE IS\nCanc NM 577(P)/26\nCh 884  prev 602/26\n  Ins  wreck  {P}\n"
    (notice,) = parse(text).notices
    assert [(one.number, one.status) for one in notice.cancels] == [(577, "preliminary")]
    assert [chart.chart for chart in notice.charts] == ["884"]


@pytest.mark.parametrize(
    ("first", "second", "labels"),
    [
        ("01 INS WK", "02 DEL RK", ["01", "02"]),
        ("17 INS WK", "18 DEL RK", ["17", "18"]),
        ("001 INS WK", "002 DEL RK", ["001", "002"]),
        (" 1  INS. WK", " 2  DEL. RK", ["1", "2"]),
        ("A INS WK", "B DEL RK", ["A", "B"]),
        ("A INSERT WRECK", "B DELETE ROCK", ["A", "B"]),
        ("ITEM 3 INS WK", "ITEM 4 DEL RK", [None, None]),
        ("SER 021 INS WK", "SER 022 DEL RK", [None, None]),
        ("#3 ins wreck", "#4 del rock", [None, None]),
    ],
)
def test_counts_before_short_verbs(first: str, second: str, labels: list[str | None]) -> None:
    bulletin = parse(
        f"NM 271/26   QUILL SOUND\nCH 802   LC 258/26\n{first}   {P}\n{second}   {Q}\n"
    )
    assert usable_of(bulletin) == [("insert", "wreck"), ("delete", "rock")]
    assert [a.label for a in actions_of(bulletin)] == labels
    assert not codes(bulletin)


def test_counts_go_on_through_the_notices_of_a_telegram() -> None:
    first = f"NM 271/26 SOUND\nCH 802\n01 INS WK {P}\n\n"
    second = f"NM 272/26 HAVEN\nCH 803\n02 MOV LT BY Q.R FM {P} TO {Q}\n"
    bulletin = parse(first + second)
    assert [one.id for one in bulletin.notices] == ["271/26", "272/26"]
    assert usable_of(bulletin) == [("insert", "wreck"), ("move", "light_buoy_generic")]


@pytest.mark.parametrize("line", ["2 disc topmarks", "0271 DEL", "A change"])
def test_a_figure_before_other_words_counts_nothing(line: str) -> None:
    bulletin = parse(f"NM 271/26   QUILL SOUND\nCH 802   LC 258/26\n{line}   {P}\n")
    assert not [a for a in actions_of(bulletin) if a.label]


@pytest.mark.parametrize(
    ("words", "kind"),
    [
        ("BY PORT HAND", "buoy_lateral_port"),
        ("BY STBD HAND", "buoy_lateral_starboard"),
        ("By N CARD", "buoy_cardinal_north"),
        ("BY SPEC", "buoy_special"),
        ("BY SAFE WATER NO 4", "buoy_safe_water"),
        ("BY N CARD BN", "beacon_cardinal"),
        ("PILLAR BUOY, BY, N CARD", "buoy_cardinal_north"),
    ],
)
def test_the_short_word_for_a_buoy_before_its_category(words: str, kind: str) -> None:
    bulletin = parse(f"NR 271 OF 2026 QUILL SOUND\nCHT 802\nDEL {words}   {P}\n")
    assert usable_of(bulletin) == [("delete", kind)]
    assert not codes(bulletin)


def test_a_preposition_before_a_category_is_no_buoy() -> None:
    bulletin = parse(f"NR 271 OF 2026 QUILL SOUND\nCHT 802\nInsert by port hand   {P}\n")
    assert [one.feature.kind for one in actions_of(bulletin)] == ["unknown"]


@pytest.mark.parametrize(
    ("words", "gone", "new"),
    [
        ("SUBST LT BY E CARD Q(3) 10s FOR Bn E CARD", "beacon_cardinal", "buoy_cardinal_east"),
        ("SUBST BN E CARD FOR LT BY E CARD Q(3) 10s", "buoy_cardinal_east", "beacon_cardinal"),
        ("SUBST MOORING BY FOR PILE", "pile", "buoy_mooring"),
        ("RPL BN E CARD WITH LT BY E CARD VQ(3) 5s", "beacon_cardinal", "buoy_cardinal_east"),
        ("RPL BN E CARD BY LT BY E CARD", "beacon_cardinal", "buoy_cardinal_east"),
        ("RPL BN BY LT BY", "beacon_generic", "light_buoy_generic"),
    ],
)
def test_the_short_word_for_a_buoy_divides_no_replacement(words: str, gone: str, new: str) -> None:
    (action,) = actions_of(parse(f"NR 271 OF 2026 SOUND\nCHT 802\n{words}   {P}\n"))
    assert isinstance(action, Replace)
    assert (action.usable, action.feature.kind, action.replacement.kind) == (True, gone, new)


@pytest.mark.parametrize("words", ["SUBST WRECK BY ROCK FOR PILE", "RPL WK BY RK BY PILE"])
def test_what_goes_and_what_comes_is_held_back_where_it_is_not_certain(words: str) -> None:
    bulletin = parse(f"NR 271 OF 2026 SOUND\nCHT 802\n{words}   {P}\n")
    assert "swap-not-divided" in errors(bulletin)


@pytest.mark.parametrize("words", ["SNDG 3.7", "SNDG 3.7 SD", "Sndg. 3.7m", "SNDGS 3.7"])
def test_a_figure_behind_the_short_word_for_a_sounding_is_its_depth(words: str) -> None:
    bulletin = parse(f"NR 271 OF 2026 SOUND\nCHT 802\nINS {words}   {P}\n")
    (action,) = actions_of(bulletin)
    assert action.feature.depth is not None
    assert (action.usable, str(action.feature.depth.value_m)) == (True, "3.7")
