"""Values that cannot be read for certain: left out, and never without a finding."""

from __future__ import annotations

from decimal import Decimal

import pytest

from noticeparse import parse
from noticeparse.readers.amounts import ChartUnit
from noticeparse.readers.changes import read_change
from noticeparse.readers.depths import read_depth, read_height
from noticeparse.readers.features import read_feature
from noticeparse.readers.letters import read_letters
from noticeparse.readers.light_sectors import read_sectors
from noticeparse.readers.lights import read_light
from tests.short_notices import HEAD, P

# Further slips of codes whose specimen in the catalogue shows another.
SLIPS = {
    "letter-unknown": (
        f"Insert (a) wreck {P}\n(b) rock 46-01.00S 122-00.00W\nInsert cable joining (b)-(a) above"
    ),
    "light-unreadable": f"Insert light, Fl. Horn(2)30s {P}",
    "mark-cardinal-light": f"Amend north cardinal light-buoy, Q, to Q(3)10s {P}",
    "mark-light": f"Insert special light-buoy, Fl.Y.5s & F.W {P}",
    "feature-companions-deep": f"Insert wreck{' and wreck' * 450} {P}",
}


@pytest.mark.parametrize("code", SLIPS)
def test_slip_has_its_finding(code: str) -> None:
    assert [one.code for one in parse(HEAD + SLIPS[code] + "\n").findings] == [code]


DEPTHS_UNREAD = [
    "depth ⑧m",
    "depth ²m",
    "sounding of five metres",
    "wreck, least depth ⑧m",
    "wreck, depth VIII m",
    "rock, dries ⑧m",
]


@pytest.mark.parametrize("phrase", DEPTHS_UNREAD)
def test_depth_without_a_figure_is_an_error(phrase: str) -> None:
    reading = read_feature(phrase, "m")
    assert reading.feature.depth is None
    assert [fault.code for fault in reading.faults] == ["depth-unread"]


@pytest.mark.parametrize(
    "phrase",
    ["wreck, depth unknown", "obstruction, depth over it unknown", "wreck, depth not known"],
)
def test_unknown_depth_is_none(phrase: str) -> None:
    reading = read_feature(phrase, "m")
    assert reading.feature.depth is not None
    assert reading.feature.depth.quality == "depth unknown"
    assert reading.faults == ()


@pytest.mark.parametrize(
    "text", ["3fm 2.5ft", "3 fm 2½ ft", "3₂ fm 2 ft", "3½ fm 2 ft", "3.5 fm 2 ft", "3 fm 6 ft"]
)
def test_feet_beside_fathoms_are_whole(text: str) -> None:
    reading = read_depth(text, "fm_ft")
    assert reading.depth is None
    assert [fault.code for fault in reading.faults] in (["depth-unread"], ["depth-feet-over-five"])


# A clearance in the unit of soundings is one over ground only.
CLEARANCES = [
    ("wreck, safe clearance 8₆", None, None, ["depth-feet-over-five"]),
    ("wreck, safe clearance 8₄", "15.8496", "15.8496", []),
    ("overhead cable, safe clearance 20", None, None, ["clearance-unit-unclear"]),
    ("overhead cable, safe clearance 20m", "20", None, []),
]


@pytest.mark.parametrize(("phrase", "clearance", "depth", "codes"), CLEARANCES)
def test_safe_clearance_on_a_fathom_chart(
    phrase: str, clearance: str | None, depth: str | None, codes: list[str]
) -> None:
    feature, faults = read_feature(phrase, "fm_ft")
    found = feature.clearance and feature.clearance.value_m
    assert found == (Decimal(clearance) if clearance else None)
    assert (feature.depth and feature.depth.value_m) == (Decimal(depth) if depth else None)
    assert [fault.code for fault in faults] == codes


HEIGHTS = [
    ("height 22m", "fm_ft", "22", []),
    ("height 22", "fm_ft", None, ["clearance-unit-unclear"]),
    ("height 22fm", "m", None, ["depth-unread"]),
    ("height 22m dries", "m", None, ["depth-unread"]),
]


@pytest.mark.parametrize(("text", "unit", "height", "codes"), HEIGHTS)
def test_height(text: str, unit: ChartUnit, height: str | None, codes: list[str]) -> None:
    reading = read_height(text, unit)
    assert reading.height_m == (Decimal(height) if height else None)
    assert [fault.code for fault in reading.faults] == codes


LIGHT_CHANGES = [
    ("range of light to 15,12M", [], "light-range-comma-unclear"),
    ("range of light to 15,5M", [], "light-range-comma-unclear"),
    ("light Fl.WR.10s: range to 15,12M", [], "light-range-comma-unclear"),
    ("light: range to 250M", [("light.ranges_nm", [Decimal(250)])], "light-range-great"),
    ("light Fl.WRG.5s: range to 15/12M", None, "light-range-count"),
    ("light: period to 0s", [], "light-figure-zero"),
    ("light: period to 120s", [("light.period_s", Decimal(120))], "light-period-long"),
    ("light Fl.5s: elevation to 0m", [], "light-figure-zero"),
    ("racon: range to 10M", [], "change-value-unread"),
    ("light Fl.5s to Fl.R.5s, range to 9M", [], "change-property-twice"),
    ("light, Fl.R.10s: colour to green", [("light.colours", ["G"])], None),
    (
        "special light-buoy, Fl.Y.10s: colour to red",
        [("colours", ["red"])],
        "change-colour-unclear",
    ),
    ("fog signal, Horn(2)30s: period to 60s", [("sound.period_s", Decimal(60))], None),
    ("light Fl.R.10s: range to 15,5M", [("light.ranges_nm", [Decimal("15.5")])], None),
]


@pytest.mark.parametrize(("phrase", "changes", "code"), LIGHT_CHANGES)
def test_change_of_a_light_has_the_limits_of_a_light(
    phrase: str, changes: list[tuple[str, object]] | None, code: str | None
) -> None:
    reading = read_change(phrase, "m")
    found = [(change.property, change.new) for change in reading.changes]
    assert changes is None or found == changes
    codes = [fault.code for fault in reading.faults]
    assert code in codes if code else codes == []


LETTERS = [
    ("(aa)-(ac) above", ("aa", "ab", "ac")),
    ("(A)-(C)", ("A", "B", "C")),
    ("(a)-(a)", ("a",)),
    ("(iii) above", ("iii",)),
    ("(i) and (viii) above", ("i", "viii")),
    ("(i)-(iii) above", ("i", "ii", "iii")),
    ("(iv) to (vi)", ("iv", "v", "vi")),
    ("(i)-(v) above", ("i", "ii", "iii", "iv", "v")),
    ("(v)-(x) above", ("v", "w", "x")),
    ("(x)-(ii)", ("x-ii",)),
    # Nobody can count these: no item has such a letter, so that the reference is reported.
    ("(c)-(a) above", ("c-a",)),
    ("(aa)-(cc)", ("aa-cc",)),
    ("(z)-(ab)", ("z-ab",)),
    ("(a)-(C)", ("a-C",)),
    ("(C)-(a)", ("C-a",)),
    ("(b)(i)-(iii) above", ("(b)(i)-(iii) above",)),
]


@pytest.mark.parametrize(("text", "letters"), LETTERS)
def test_letters_of_a_reference(text: str, letters: tuple[str, ...]) -> None:
    assert read_letters(text) == letters


LABELS_OF_FIGURES = [
    ("Fl.R.5s, visible 12m", None, []),
    ("Fl.R.5s, elevation 12M", None, []),
    ("Fl.R.5s, elevation 12m, visible 10M", 12, [10]),
    ("FL R 5S ELEVATION 12M", 12, []),
]


@pytest.mark.parametrize(("text", "elevation", "ranges"), LABELS_OF_FIGURES)
def test_word_and_unit_of_a_figure_agree(
    text: str, elevation: int | None, ranges: list[int]
) -> None:
    reading = read_light(text)
    assert (reading.lights[0].elevation_m, reading.lights[0].ranges_nm) == (elevation, ranges)
    is_clear = elevation is not None
    assert ("light-figures-unclear" in [fault.code for fault in reading.faults]) != is_clear


def test_no_bearing_has_sixty_minutes() -> None:
    reading = read_sectors("W 171°75'-195°, R 195°-268°15'")
    assert [sector.colour for sector in reading.sectors] == ["R"]
    assert [fault.code for fault in reading.faults] == ["sector-unreadable"]


ELEVATIONS = [
    ("light, Fl.W.5s, elevation 12m", 12, []),
    ("light, Fl.W.5s, elevation 12M", None, ["light-figures-unclear", "depth-capital-m"]),
    ("light, Fl.W.5s12m, elevation 12m", 12, []),
    ("light, Fl.W.5s12m, elevation 14m", 12, ["feature-stated-twice"]),
]


@pytest.mark.parametrize(("phrase", "elevation", "codes"), ELEVATIONS)
def test_elevation_apart_from_the_character_is_that_of_the_light(
    phrase: str, elevation: int | None, codes: list[str]
) -> None:
    feature, faults = read_feature(phrase, "m")
    assert feature.light is not None
    assert (feature.light.elevation_m, feature.height_m) == (elevation, None)
    assert [fault.code for fault in faults] == codes


@pytest.mark.parametrize("phrase", ["depth of less than 5m", "obstruction, depth under 5m"])
def test_words_before_a_depth_are_told(phrase: str) -> None:
    reading = read_feature(phrase, "m")
    assert reading.feature.depth is None
    assert [fault.code for fault in reading.faults] == ["depth-bound-only"]
