"""Values and wordings that short forms hide: they are read as meant, told, or held."""

from __future__ import annotations

from decimal import Decimal

import pytest

from noticeparse import parse
from noticeparse.readers.features import read_feature
from tests.short_notices import HEAD, P, Q, actions_of, codes, errors

LEGENDS = [
    ("legend - Works", "Works"),
    ("legend – Works", "Works"),
    ("legend: - Works", "Works"),
    ('legend - "Works"', "Works"),
    ("note – CAUTION", "CAUTION"),
    ("legend, Works - Phase 2", "Works - Phase 2"),
]


@pytest.mark.parametrize(("words", "legend"), LEGENDS)
def test_dash_before_a_legend(words: str, legend: str) -> None:
    reading = read_feature(words)
    assert (reading.feature.legend, reading.faults) == (legend, ())


@pytest.mark.parametrize("words", ["legend, Works, over", "legend, Works over"])
def test_word_before_the_place_is_none_of_the_legend(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert {words} {P}\n")
    assert actions_of(bulletin)[0].feature.legend == "Works"
    assert codes(bulletin) == {"feature-words-unread"}


DRYING = ["rock, bares 2ft", "rock which bares 2ft", "rock, uncovers 2ft"]


@pytest.mark.parametrize("words", DRYING)
def test_rock_that_bares(words: str) -> None:
    depth = read_feature(words).feature.depth
    assert depth is not None
    assert (depth.kind, depth.value_m) == ("drying", Decimal("-0.6096"))


@pytest.mark.parametrize(
    "words", ["wreck swept by wire to 5.3m", "wreck, swept by wire drag to 5.3m"]
)
def test_swept_by_wire(words: str) -> None:
    depth = read_feature(words).feature.depth
    assert depth is not None
    assert (depth.kind, depth.value_m) == ("swept", Decimal("5.3"))


def test_two_figures_behind_rep_may_be_a_year() -> None:
    reading = read_feature("obstruction rep 25")
    assert reading.feature.depth is None
    assert [one.code for one in reading.faults] == ["feature-figure-unclear"]


@pytest.mark.parametrize("words", ["obstruction rep 25m", "wreck rep 5.2", "depth reported 25"])
def test_reported_depth(words: str) -> None:
    assert read_feature(words).feature.depth is not None


@pytest.mark.parametrize("light", ["Fl.3.10s", "Oc.2.15s", "VQ.3.10s"])
def test_group_or_tenths_of_a_second(light: str) -> None:
    assert errors(parse(f"{HEAD}Insert light, {light} {P}\n")) == {"light-figures-unclear"}


@pytest.mark.parametrize("light", ["Fl.2.5s", "Fl.R.2.75s", "Fl(3)10s", "Fl.3.75s"])
def test_tenths_of_a_second(light: str) -> None:
    assert errors(parse(f"{HEAD}Insert light, {light} {P}\n")) == set()


@pytest.mark.parametrize("written", ["Long Fl R 10s", "Long Fl.10s", "LongFl.10s"])
def test_long_flash_in_half_words(written: str) -> None:
    light = read_feature(f"light, {written}").feature.light
    assert light is not None
    assert (light.rhythm, light.period_s) == ("LFl", 10)


@pytest.mark.parametrize(
    ("words", "changed"),
    [
        ('light to read: "Fl.10s18m15M"', "light"),
        ('light to "Fl.R.5s"', "light"),
        ('light-buoy to "Quill"', "name"),
        ('light-buoy to "Q"', "name"),
    ],
)
def test_light_in_quotes(words: str, changed: str) -> None:
    (action,) = actions_of(parse(f"{HEAD}Amend {words} {P}\n"))
    assert [one.property for one in action.changes] == [changed]


@pytest.mark.parametrize("words", ['R "4" Fl R 4s', 'R N "4" Fl.R.4s', 'Y "A" Fl Y 4s'])
def test_paint_of_a_mark_without_its_noun(words: str) -> None:
    assert codes(parse(f"{HEAD}Insert {words} {P}\n")) == {"feature-words-unread"}


def test_light_with_its_number_has_no_paint() -> None:
    assert codes(parse(f'{HEAD}Insert Q R "4" {P}\n')) == set()


@pytest.mark.parametrize(
    "words",
    ["wreck (or rock)", "wreck, possibly rock", "wreck, perhaps a rock", "mast (or tower)"],
)
def test_other_guess_is_held(words: str) -> None:
    assert "feature-kinds-several" in errors(parse(f"{HEAD}Insert {words} {P}\n"))


@pytest.mark.parametrize("words", ["wreck?", "wreck (?)", "light, Fl.5s, dayboard, red triangle"])
def test_doubt_is_told(words: str) -> None:
    assert codes(parse(f"{HEAD}Insert {words} {P}\n")) & {
        "feature-words-unread",
        "feature-kind-apposed",
    }


@pytest.mark.parametrize("words", ["(part)", "(in part)", "(partly)"])
def test_part_of_a_thing_is_held(words: str) -> None:
    text = f"{HEAD}Delete submarine cable, joining {P} {Q} {words}\n"
    assert errors(parse(text)) == {"item-limited"}


def test_stripes_whose_way_is_not_said() -> None:
    assert codes(parse(f"{HEAD}Amend buoy to red and white stripes {P}\n")) == {
        "feature-words-unread"
    }
    assert codes(parse(f"{HEAD}Amend buoy to red and white vertical stripes {P}\n")) == set()


def test_ruins_in_brackets_are_a_state() -> None:
    assert read_feature("pier (ruins)").feature.attributes["CONDTN"] == 2
    assert read_feature("ruins").feature.kind == "ruin"


def test_year_alone_of_a_wreck_is_told() -> None:
    assert [one.code for one in read_feature("wreck (1945)").faults] == [
        "feature-figure-in-brackets"
    ]


@pytest.mark.parametrize("behind", [f"Quill Point light ({P})", f"Quill Point light, {P}"])
def test_place_of_a_light_or_of_the_thing_itself(behind: str) -> None:
    assert errors(parse(f"{HEAD}Insert wreck 1.2M W of {behind}\n")) == {"relation-unclear"}


def test_place_that_is_named_by_nothing_is_the_reference() -> None:
    assert errors(parse(f"{HEAD}Insert wreck 1.2M W of ({P})\n")) == set()


@pytest.mark.parametrize(
    ("words", "kind"),
    [
        ("sounding of 5.3m", "sounding"),
        ("a sounding of 5.3m", "sounding"),
        ("shoaling to 5m", "shoal"),
        ("shoaling, least depth 5m", "shoal"),
    ],
)
def test_noun_of_a_depth_is_no_command(words: str, kind: str) -> None:
    bulletin = parse(f"{HEAD}Insert {words} {P}\n")
    (action,) = actions_of(bulletin)
    assert (action.feature.kind, codes(bulletin)) == (kind, set())
    assert action.feature.depth is not None


def test_noun_of_a_deed_is_one() -> None:
    assert errors(parse(f"{HEAD}Insert lighting of wreck {P}\n")) == {"verb-within-words"}


CHANGES = [
    ("characteristics of light: Fl.10s18m15M", "light"),
    ("characteristic of light-buoy: Fl(2)R.10s", "light"),
    ("range of light: for 12M read 15M", "light.ranges_nm"),
    ("elevation of light for 12m read 15m", "light.elevation_m"),
    ("characteristics of light: Fl.5s to Fl.10s", "light"),
]


@pytest.mark.parametrize(("words", "changed"), CHANGES)
def test_change_behind_a_colon(words: str, changed: str) -> None:
    (action,) = actions_of(parse(f"{HEAD}Amend {words} {P}\n"))
    assert action.usable
    assert [one.property for one in action.changes] == [changed]


@pytest.mark.parametrize(
    "words",
    ["light, Fl.5s, Ra Refl", "light-buoy, Fl.R.5s, radar reflector", "beacon, radar reflector"],
)
def test_radar_reflector_behind_a_comma(words: str) -> None:
    companions = read_feature(words).feature.companions
    assert [one.feature.kind for one in companions] == ["radar_reflector"]


def test_radar_reflector_alone() -> None:
    assert read_feature("radar reflector").feature.companions == []


@pytest.mark.parametrize("words", ["nature of seabed, M.S", "Fairway No 1 light-buoy"])
def test_words_that_are_not_kept(words: str) -> None:
    assert codes(parse(f"{HEAD}Insert {words} {P}\n")) & {
        "feature-words-unread",
        "feature-kind-apposed",
    }
