"""Depths, drying heights, clearances and heights: every written form, and what is refused."""

from decimal import Decimal

import pytest

from noticeparse.catalogue import ENTRIES
from noticeparse.readers.depths import read_depth, read_height
from noticeparse.readers.features import read_feature

# name, text, unit of the chart, value in metres, unit, kind, quality
READ = [
    # The forms of the domain pack, depths section 2 and its worked examples.
    ("small figure", "8₆", "m", "8.6", "m", "sounding", None),
    ("decimal point", "8.6m", None, "8.6", "m", "sounding", None),
    ("decimal comma", "8,6 m", None, "8.6", "m", "sounding", None),
    ("nought", "0₄", "m", "0.4", "m", "sounding", None),
    ("half metre", "21₅", "m", "21.5", "m", "sounding", None),
    ("whole metres", "52m", "m", "52", "m", "sounding", None),
    ("plain 86 stays 86", "depth 86", "m", "86", "m", "sounding", None),
    ("dr", "dr 1.2m", "m", "-1.2", "m", "drying", None),
    ("dries", "dries 0₇", "m", "-0.7", "m", "drying", None),
    ("a depth that dries", "depth, dries 0₇", "m", "-0.7", "m", "drying", None),
    ("plus sign", "+2.1m dries", "m", "-2.1", "m", "drying", None),
    ("drying height", "drying height 0.4 m", "m", "-0.4", "m", "drying", None),
    ("vulgar fraction", "6¼ fm", None, "11.43", "fm", "sounding", None),
    ("fraction of the chart's fathoms", "6¼", "fm_ft", "11.43", "fm_ft", "sounding", None),
    ("typed fraction", "6 1/4 fm", None, "11.43", "fm", "sounding", None),
    ("third of a fathom", "8⅓ fm", None, "15.24", "fm", "sounding", None),
    ("fathoms and feet", "3fm 2ft", "fm_ft", "6.096", "fm_ft", "sounding", None),
    ("fathoms and feet, dots", "3 fm. 2 ft.", None, "6.096", "fm_ft", "sounding", None),
    ("small figure is feet", "3₂", "fm_ft", "6.096", "fm_ft", "sounding", None),
    ("chart told in the text", "3₂ (fathoms chart)", None, "6.096", "fm_ft", "sounding", None),
    ("prose fathoms", "a depth of 8₄ fathoms", "fm_ft", "15.8496", "fm_ft", "sounding", None),
    ("plain fathoms", "the depth of 11 fathoms", "fm_ft", "20.1168", "fm", "sounding", None),
    ("unit of the chart", "depth 11", "fm_ft", "20.1168", "fm_ft", "sounding", None),
    ("feet", "11ft", "ft", "3.3528", "ft", "sounding", None),
    ("feet of the chart", "depth 24", "ft", "7.3152", "ft", "sounding", None),
    ("half a fathom", "½ fm", None, "0.9144", "fm", "sounding", None),
    ("American spelling", "Depth 4.5 meters", "m", "4.5", "m", "sounding", None),
    ("capitals", "DEPTH 4 METRES", None, "4", "m", "sounding", None),
    ("out of position", "(3₉)", "m", "3.9", "m", "sounding", None),
    ("least", "least depth 9₈", "m", "9.8", "m", "least", "least depth known"),
    ("swept", "swept to 15.0m", "m", "15.0", "m", "swept", "least depth known"),
    ("dredged, survey year", "dredged to 8.5m (2024)", "m", "8.5", "m", "dredged", None),
    ("maintained", "maintained depth 9.0m", "m", "9.0", "m", "dredged", "maintained depth"),
    ("contour behind", "5m contour", "m", "5", "m", "contour", None),
    ("contour in front", "depth contour 10m", "m", "10", "m", "contour", None),
    ("contour, hyphen", "5-metre contour", "m", "5", "m", "contour", None),
    ("line", "10m line", "m", "10", "m", "contour", None),
    (
        "no bottom", "no bottom found at 180m", "m", "180", "m", "no_bottom",
        "no bottom found at value shown",
    ),
    ("no bottom behind", "126 no bottom", "m", "126", "m", "no_bottom",
     "no bottom found at value shown"),
    ("reported", "Rep 4.1m (2019)", "m", "4.1", "m", "sounding", "value reported (not surveyed)"),
    ("doubtful", "SD 4m", "m", "4", "m", "sounding", "doubtful sounding"),
    (
        "safe clearance over a wreck", "safe clearance 22m", "m", "22", "m", "swept",
        "least depth unknown, safe clearance at value shown",
    ),
    ("within a phrase", "Wk least depth 12.4m", "m", "12.4", "m", "least", "least depth known"),
    ("obstruction swept", "Obstn swept to 15.0m", "m", "15.0", "m", "swept", "least depth known"),
    ("rock dries", "Rk, dries 2.7m, position approximate", "m", "-2.7", "m", "drying", None),
]  # fmt: skip


@pytest.mark.parametrize(
    ("text", "chart", "value", "unit", "kind", "quality"),
    [row[1:] for row in READ],
    ids=[row[0] for row in READ],
)
def test_depth_is_exact(text, chart, value, unit, kind, quality):
    reading = read_depth(text, chart)
    assert reading.depth is not None
    assert reading.depth.value_m == Decimal(value)
    assert reading.depth.unit == unit
    assert (reading.depth.kind, reading.depth.quality) == (kind, quality)
    assert not [fault for fault in reading.faults if ENTRIES[fault.code].severity != "info"]


def test_report_keeps_its_year_and_a_survey_does_not():
    assert read_depth("Rep 4.1m (2019)", "m").reported_year == 2019
    assert read_depth("dredged to 8.5m (2024)", "m").reported_year is None


def test_unknown_depth_has_no_value():
    depth = read_depth("depth unknown", "m").depth
    assert depth is not None
    assert (depth.value_m, depth.quality) == (None, "depth unknown")


def test_unknown_least_depth_is_still_a_least_depth():
    depth = read_depth("least depth unknown", "m").depth
    assert depth is not None
    assert (depth.value_m, depth.kind, depth.quality) == (None, "least", "depth unknown")


def test_unit_not_stated_is_told_and_left_null():
    reading = read_depth("depth 8₆", None)
    assert reading.depth is not None
    assert (reading.depth.value_m, reading.depth.unit) == (Decimal("8.6"), None)
    assert [fault.code for fault in reading.faults] == ["depth-unit-not-stated"]


# name, text, unit of the chart, code; no value is taken
REFUSED = [
    ("lost small figure", "depth 8 6", "m", "depth-figures-apart"),
    ("thousands by a blank", "1 234 m", "m", "depth-figures-apart"),
    ("thousands by a comma", "depth 1,234 m", "m", "depth-thousands"),
    ("seven feet over a fathom", "8₇", "fm_ft", "depth-feet-over-five"),
    ("small figure of feet", "8₆", "ft", "depth-small-figure-of-feet"),
    ("raised figure", "8⁶", "m", "depth-figure-raised"),
    ("a range", "depths 4 to 6 m", "m", "depth-several"),
    ("minus", "depth -4 m", "m", "depth-minus"),
    ("dries and depth", "drying, depth 1.2 m", "m", "depth-and-drying"),
    ("a depth of a rock that dries", "depth dries 1.2 m", "m", "depth-and-drying"),
    ("figure before both", "1.2 m depth, drying", "m", "depth-and-drying"),
    ("deeper than the sea", "depth 12000 m", "m", "depth-impossible"),
    ("over a figure", "depth over 5.2m", "m", "depth-bound-only"),
    ("more than a figure", "depth more than 5.2m", "m", "depth-bound-only"),
    ("less than a figure", "less than 5m", "m", "depth-bound-only"),
    ("a figure or more", "depth 5.2m or more", "m", "depth-bound-only"),
    ("miles", "8M", "m", "depth-unread"),
    ("glued fraction", "61/4 fm", "fm_ft", "depth-unread"),
    ("third of a metre", "8⅓ m", "m", "depth-unread"),
    ("height", "height 12 m", "m", "depth-unread"),
    ("nothing", "", "m", "depth-unread"),
    ("words", "conspicuous", "m", "depth-unread"),
]


@pytest.mark.parametrize(
    ("text", "chart", "code"), [row[1:] for row in REFUSED], ids=[row[0] for row in REFUSED]
)
def test_doubtful_depth_is_left_out(text, chart, code):
    reading = read_depth(text, chart)
    assert reading.depth is None
    assert code in [fault.code for fault in reading.faults]
    assert ENTRIES[code].severity == "error"


# name, text, unit of the chart, value, code
WARNED = [
    ("metres on a chart in fathoms", "4.5 m", "fm_ft", "4.5", "depth-unit-differs"),
    ("fathoms on a metric chart", "4 fm", "m", "7.3152", "depth-unit-differs"),
    ("capital M among small letters", "Depth 4 M", "m", "4", "depth-capital-m"),
    ("letter O", "1O.5m", "m", "10.5", "depth-letter-in-figure"),
    ("letter l", "depth l2.5", "m", "12.5", "depth-letter-in-figure"),
    ("two decimals", "depth 8.65 m", "m", "8.65", "depth-decimals"),
    ("a year", "depth 2024", "m", "2024", "depth-like-a-year"),
    ("high drying", "dries 18 m", "m", "-18", "depth-drying-high"),
]


@pytest.mark.parametrize(
    ("text", "chart", "value", "code"), [row[1:] for row in WARNED], ids=[row[0] for row in WARNED]
)
def test_suspicious_depth_is_told(text, chart, value, code):
    reading = read_depth(text, chart)
    assert reading.depth is not None
    assert reading.depth.value_m == Decimal(value)
    assert code in [fault.code for fault in reading.faults]


# Text, unit of the chart, the stretches told: within a phrase they count from its start.
TOLD = [
    ("Wk, position approximate, least depth 8 6 m", "m", [("depth-figures-apart", "8 6 m")]),
    ("wreck, least depth 8M", "m", [("depth-capital-m", "8M")]),
    ("height 12 m", "m", [("depth-unread", "height 12 m")]),
    ("vertical clearance 18", None, [("clearance-unit-not-stated", "18")]),
    ("vertical clearance 18", "m", []),
    # Higher than any range of the tide: 15 metres are the last.
    ("dries 15 m", "m", []),
    ("dries 15.1 m", "m", [("depth-drying-high", "15.1 m")]),
    ("depth 11000 m", "m", []),
    ("depth 11001 m", "m", [("depth-impossible", "11001 m")]),
]


@pytest.mark.parametrize(("text", "chart", "told"), TOLD)
def test_what_is_told_stands_at_its_place(text, chart, told):
    assert [(f.code, text[f.start : f.end]) for f in read_depth(text, chart).faults] == told


def test_messages_quote_what_is_told():
    for text, chart, *_ in (*TOLD, *(row[1:] for row in (*REFUSED, *WARNED))):
        for fault in read_depth(text, chart).faults:
            quoted = " ".join(text[fault.start : fault.end].split())
            assert fault.values["written"] == quoted
            assert f"`{quoted}`" in ENTRIES[fault.code].message.format(**fault.values)


def test_more_than_a_depth_is_no_depth_of_a_phrase():
    for text in ("wreck, red, least depth 8m", "wreck, least depth 5m, depth 8m"):
        assert read_depth(text, "m").depth is None


def test_clearance_within_a_phrase_is_a_depth_over_the_ground_only():
    assert read_depth("bridge, safe clearance 12m", "m").depth is None
    depth = read_depth("wreck, safe clearance 12m", "m").depth
    assert depth is not None
    assert (depth.value_m, depth.kind) == (Decimal(12), "swept")


@pytest.mark.parametrize("phrase", ["depth 8m, least depth 8m", "least depth 8m, depth 8m"])
def test_of_two_like_depths_the_one_that_says_more_is_kept(phrase):
    depth = read_feature(f"wreck, {phrase}", "m").feature.depth
    assert depth is not None
    assert (depth.kind, depth.written) == ("least", "least depth 8m")


@pytest.mark.parametrize(
    "phrase", ["rock awash, 1.2m", "obstruction, submerged, 1.2m", "wreck, masts visible, 1.2m"]
)
def test_what_does_not_dry_lies_below_datum(phrase):
    depth = read_feature(phrase, "m").feature.depth
    assert depth is not None
    assert (depth.value_m, depth.kind) == (Decimal("1.2"), "sounding")


# name, text, value, kind
CLEARANCES = [
    ("vertical", "vertical clearance 18.5m", "18.5", "vertical"),
    ("abbreviated", "Vert cl 18m", "18", "vertical"),
    ("H", "H 18m", "18", "vertical"),
    ("headway", "headway 7 m", "7", "vertical"),
    ("feet", "vertical clearance 30 ft", "9.144", "vertical"),
    ("horizontal", "horizontal clearance 20 m", "20", "horizontal"),
    ("closed", "vertical clearance closed 3m", "3", "closed"),
    ("open", "vertical clearance 12 m (open)", "12", "open"),
    ("safe", "safe vertical clearance 31 m", "31", "safe"),
    ("overhead cable", "overhead cable, safe clearance 24m", "24", "safe"),
]


@pytest.mark.parametrize(
    ("text", "value", "kind"), [row[1:] for row in CLEARANCES], ids=[row[0] for row in CLEARANCES]
)
def test_clearance(text, value, kind):
    reading = read_depth(text, "m")
    assert reading.clearance is not None
    assert (reading.clearance.value_m, reading.clearance.kind) == (Decimal(value), kind)
    assert reading.clearance.written == text.removeprefix("overhead cable, ")
    assert reading.depth is None
    assert reading.faults == ()


def test_clearance_with_a_doubtful_figure_is_left_out():
    reading = read_depth("vertical clearance 8 6 m", "m")
    assert reading.clearance is None
    assert [fault.code for fault in reading.faults] == ["depth-figures-apart"]


def test_clearance_without_unit_is_never_taken_from_a_chart_of_fathoms():
    reading = read_depth("vertical clearance 18", "fm_ft")
    assert reading.clearance is None
    assert [fault.code for fault in reading.faults] == ["clearance-unit-unclear"]


def test_height():
    assert read_height("height 45 m").height_m == Decimal(45)
    assert read_height("60ft high").height_m == Decimal("18.288")
    assert read_height("conspicuous").height_m is None


@pytest.mark.parametrize("piece", ["1", " ", "½", "8 6 ", "9₈ ", "(", "depth ", "."])
def test_long_texts_take_linear_time(piece):
    reading = read_depth(piece * (20_000 // len(piece)), "m")
    assert reading.depth is None
