"""Amendments and replacements: what changes, what goes, what comes."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from noticeparse.catalogue import ENTRIES
from noticeparse.readers.changes import read_change, read_swap
from noticeparse.records.feature import Racon, Sound
from noticeparse.records.light import Light


def _plain(value):
    if isinstance(value, Light):
        return value.written
    if isinstance(value, Sound):
        return value.kind, value.group, value.period_s
    if isinstance(value, Racon):
        return value.morse
    if hasattr(value, "value_m"):
        return value.value_m
    if isinstance(value, list) and value and hasattr(value[0], "from_deg"):
        return [(sector.colour, sector.from_deg, sector.to_deg) for sector in value]
    return value


_D = Decimal
# text, kind of the feature, changes as (property, old, new)
CHANGES = [
    ("light to Fl(3)W.20s33m19M", "light", [("light", None, "Fl(3)W.20s33m19M")]),
    ("depth 5,8 m to 6,4 m", "sounding", [("depth", _D("5.8"), _D("6.4"))]),
    ("depth from 5,8 m to 6,4 m", "sounding", [("depth", _D("5.8"), _D("6.4"))]),
    ("dredged area, depth 8,5 m, to 9,2 m", "dredged_area", [("depth", _D("8.5"), _D("9.2"))]),
    ("light, Fl.R.5s, to Fl(2)R.10s", "light", [("light", "Fl.R.5s", "Fl(2)R.10s")]),
    ("light to Fl.R.5s Horn(2)30s, Racon(K)", "light",
     [("light", None, "Fl.R.5s"), ("sound", None, ("horn", [2], 30)), ("racon", None, "K")]),
    ("light Fl.R.3s Horn(1)30s to Fl.R.5s Horn(2)30s", "light",
     [("light", "Fl.R.3s", "Fl.R.5s"), ("sound", ("horn", [1], 30), ("horn", [2], 30))]),
    ("fog signal to Horn(2)30s", "fog_signal", [("sound", None, ("horn", [2], 30))]),
    ("topmark to can", "topmark", [("topmark", None, "cylinder")]),
    ("light F.R.6m3M, new character Fl.R.4s6m5M", "light",
     [("light", "F.R.6m3M", "Fl.R.4s6m5M")]),
    ("light Fl.R.5s9M, new range: 7M and new period 6s", "light",
     [("light.ranges_nm", [_D(9)], [_D(7)]), ("light.period_s", _D(5), _D(6))]),
    ('underwater rock "Calf", new name "Grey Calf"', "rock_underwater",
     [("name", "Calf", "Grey Calf")]),
    ("light from Fl.R.3s to Fl.R.5s", "light", [("light", "Fl.R.3s", "Fl.R.5s")]),
    ("character from Fl.R.3s to Fl.R.5s", "light", [("light", "Fl.R.3s", "Fl.R.5s")]),
    ("characteristic to Fl.R.5s", "light", [("light", None, "Fl.R.5s")]),
    ("light-buoy to read Fl.Y.4s", "light_buoy_generic", [("light", None, "Fl.Y.4s")]),
    ("Light Fl W 6s 22m 14M: range to 11M", "light",
     [("light.ranges_nm", [_D(14)], [_D(11)])]),
    ("range 12M to 9M", "light", [("light.ranges_nm", [_D(12)], [_D(9)])]),
    ("light, Fl.W.5s21m12M, range 12M -> 9M", "light", [("light.ranges_nm", [_D(12)], [_D(9)])]),
    ("light, Fl.5s, range 12 miles to 9 miles", "light",
     [("light.ranges_nm", [_D(12)], [_D(9)])]),
    ("light range reduced to 6 miles", "light", [("light.ranges_nm", None, [_D(6)])]),
    ("RANGE OF LIGHT TO 15/12M", "light", [("light.ranges_nm", None, [_D(15), _D(12)])]),
    ("elevation of light F.R to 11m", "light", [("light.elevation_m", None, _D(11))]),
    ("height of light to 36 ft", "light", [("light.elevation_m", None, _D("10.9728"))]),
    ("light Fl.G.5s: period to 3s", "light", [("light.period_s", _D(5), _D(3))]),
    ("light, range to 9M and elevation to 12m", "light",
     [("light.ranges_nm", None, [_D(9)]), ("light.elevation_m", None, _D(12))]),
    ("sectors to W 000°-180°, R 180°-000°", "light",
     [("light.sectors", None, [("W", 0, 180), ("R", 180, 0)])]),
    ("dredged depth to 9₂m, dredged area", "dredged_area", [("depth", None, _D("9.2"))]),
    ("depth 5.2 to 4.8", "sounding", [("depth", _D("5.2"), _D("4.8"))]),
    ("depth from 5.2m to 4.8m", "sounding", [("depth", _D("5.2"), _D("4.8"))]),
    ("depth of 5 m to 4 m", "sounding", [("depth", _D(5), _D(4))]),
    ("depth of wreck to 9₈", "wreck", [("depth", None, _D("9.8"))]),
    ("wreck, least depth 9₈ to 8₂", "wreck", [("depth", _D("9.8"), _D("8.2"))]),
    ("wreck, depth unknown, to least depth 9₈", "wreck", [("depth", None, _D("9.8"))]),
    ("drying height 0.4 m to 0.6 m", "drying_height", [("depth", _D("-0.4"), _D("-0.6"))]),
    ("bridge, vertical clearance 24 m to 22 m", "bridge", [("clearance", _D(24), _D(22))]),
    ("height of mast to 45 m", "radio_mast", [("height_m", None, _D(45))]),
    ('legend "Foul Ground" to "Foul"', "legend", [("legend", "Foul Ground", "Foul")]),
    ("legend, Foul Ground, to Foul", "legend", [("legend", "Foul Ground", "Foul")]),
    ('name of special buoy "Ondra" to "Quill"', "buoy_special", [("name", "Ondra", "Quill")]),
    ("reporting point No 3 to No 4", "radio_reporting_point", [("name", "No 3", "No 4")]),
    ("colour of special buoy to yellow", "buoy_special", [("colours", None, ["yellow"])]),
    ("safe water buoy to red and white vertical stripes", "buoy_safe_water",
     [("colours", None, ["red", "white"]), ("colour_pattern", None, "vertical_stripes")]),
    ("colour of special buoy to red, white and black", "buoy_special",
     [("colours", None, ["red", "white", "black"])]),
    ("north cardinal buoy, topmark to 2 cones, points up", "buoy_cardinal_north",
     [("topmark", None, "2 cones, points up")]),
    ('berth "A2" to berth "A4"', "berth", [("name", "A2", "A4")]),
    ("mooring buoy No 2 to mooring buoy No 4", "buoy_mooring", [("name", "No 2", "No 4")]),
    ("light to extinguished", "light", [("status", None, ["extinguished"])]),
]  # fmt: skip


@pytest.mark.parametrize(("text", "kind", "changes"), CHANGES, ids=[row[0] for row in CHANGES])
def test_change(text, kind, changes):
    reading = read_change(text, "m")
    assert reading.feature.kind == kind
    assert [(c.property, _plain(c.old), _plain(c.new)) for c in reading.changes] == changes
    own = [f.code for f in reading.faults if f.code.startswith(("change", "feature"))]
    assert not [code for code in own if ENTRIES[code].severity != "info"]


def test_the_feature_is_the_state_before():
    feature = read_change('legend "Foul Ground" to "Foul"', "m").feature
    assert feature.legend == "Foul Ground"
    feature = read_change("depth from 5.2m to 4.8m", "m").feature
    assert feature.depth is not None
    assert feature.depth.value_m == Decimal("5.2")
    feature = read_change("light from Fl.R.3s to Fl.R.5s", "m").feature
    assert feature.light is not None
    assert feature.light.written == "Fl.R.3s"


def test_fathoms_of_the_chart():
    reading = read_change("depth 8₄ fathoms to 7₅ fathoms", "fm_ft")
    assert [_plain(change.new) for change in reading.changes] == [Decimal("14.3256")]


# text, code
UNREAD = [
    ("wreck", "change-unread"),
    ("light, Fl.R.3s", "change-unread"),
    ("", "change-unread"),
    ("light to 11m", "change-value-unread"),
    ("range to 11m", "change-value-unread"),
    ("special buoy to light-buoy, Fl.R.5s", "change-value-unread"),
    ("period to short", "change-value-unread"),
    ("depth 5.2 to 4 8", "depth-figures-apart"),
]


@pytest.mark.parametrize(("text", "code"), UNREAD, ids=[row[0] or "nothing" for row in UNREAD])
def test_what_is_no_change_is_an_error(text, code):
    reading = read_change(text, "m")
    assert reading.changes == ()
    assert code in [fault.code for fault in reading.faults]
    assert ENTRIES[code].severity == "error"


WARNED = [
    ("range to 11", "change-unit-missing"),
    ("light Fl.R.5s 9M, range from 8M to 7M", "change-old-differs"),
    ("light, Fl.R.5s9M, range 8M to 7M", "change-old-differs"),
    ("sectors W 000°-180°, R 180°-000°", "change-new-assumed"),
    ("vertical clearance to 18 m", "feature-unknown"),
    ("name to No 7", "feature-unknown"),
]


@pytest.mark.parametrize(("text", "code"), WARNED, ids=[row[0] for row in WARNED])
def test_suspicious_change_is_told(text, code):
    reading = read_change(text, "m")
    assert len(reading.changes) == 1
    assert code in [fault.code for fault in reading.faults]


# text, what goes and what comes as (kind, light or depth or legend)
SWAPS = [
    ("obstruction, least depth 8₃, with obstruction, least depth 7₇",
     ("obstruction", _D("8.3")), ("obstruction", _D("7.7"))),
    ("depth 6₇ by depth 5₉", ("sounding", _D("6.7")), ("sounding", _D("5.9"))),
    ("depth 8₆ for 9₁", ("sounding", _D("9.1")), ("sounding", _D("8.6"))),
    ("depth 8.6 for 9.1", ("sounding", _D("9.1")), ("sounding", _D("8.6"))),
    ("Depth 5.6 meters for depth 6.2 meters", ("sounding", _D("6.2")), ("sounding", _D("5.6"))),
    ("a light, Fl.R.3s, for the light, F.R", ("light", "F.R"), ("light", "Fl.R.3s")),
    ("light F.G with light Fl.G.2s", ("light", "F.G"), ("light", "Fl.G.2s")),
    ("special buoy with a safe-water light buoy, Iso.10s",
     ("buoy_special", None), ("buoy_safe_water", "Iso.10s")),
    ("East cardinal buoy by east cardinal light buoy Q(3) 10s",
     ("buoy_cardinal_east", None), ("buoy_cardinal_east", "Q(3) 10s")),
    ("special buoy with topmark with special beacon with topmark",
     ("buoy_special", None), ("beacon_special", None)),
    ("wreck with least depth 5 m by wreck with least depth 4 m",
     ("wreck_least_depth", _D(5)), ("wreck_least_depth", _D(4))),
    ("S CARD LT BY BY S CARD BN", ("buoy_cardinal_south", None), ("beacon_cardinal", None)),
    ('legend "Power to shore" by legend "Power"',
     ("legend", "Power to shore"), ("legend", "Power")),
    ("special buoy to safe-water buoy", ("buoy_special", None), ("buoy_safe_water", None)),
]  # fmt: skip


def _told(feature):
    light = feature.light.written if feature.light else None
    depth = feature.depth.value_m if feature.depth else None
    return feature.kind, light or depth or feature.legend


@pytest.mark.parametrize(("text", "goes", "comes"), SWAPS, ids=[row[0] for row in SWAPS])
def test_swap(text, goes, comes):
    reading = read_swap(text, "m")
    assert (_told(reading.feature), _told(reading.replacement)) == (goes, comes)
    assert not [f.code for f in reading.faults if ENTRIES[f.code].severity != "info"]


@pytest.mark.parametrize("text", ["depth 5, 8 m to 6 m", "depth 5,8 m [6,4 m]", "range to 15,11M"])
def test_a_comma_that_may_part_is_no_decimal_point(text):
    reading = read_change(text, "m")
    assert "error" in [ENTRIES[fault.code].severity for fault in reading.faults]


@pytest.mark.parametrize("text", ["special buoy", "buoy with topmark", "with", ""])
def test_what_does_not_divide_is_an_error(text):
    reading = read_swap(text, "m")
    assert "swap-not-divided" in [fault.code for fault in reading.faults]
    assert reading.replacement.kind == "unknown"


@given(st.text(max_size=60))
def test_any_text_is_read(text):
    for reading in (read_change(text, None), read_swap(text, None)):
        assert all(0 <= fault.start <= fault.end <= len(text) for fault in reading.faults)


@pytest.mark.parametrize("piece", ["to ", "from ", "of ", "with ", "range to 9M, ", '"', "red "])
def test_long_texts_take_linear_time(piece):
    text = piece * (20_000 // len(piece))
    read_change(text, "m")
    read_swap(text, "m")


@pytest.mark.parametrize(
    ("text", "change"),
    [
        ("depth of the obstruction, least depth 8.2 m, to 7.6 m", ("depth", _D("8.2"), _D("7.6"))),
        ("the depth of wreck, depth 5 fathoms, to 4₄ fathoms",
         ("depth", _D("9.1440"), _D("8.5344"))),
        ("the clearance of the bridge, vertical clearance 12 m, to 13 m",
         ("clearance", _D(12), _D(13))),
        ("height of the chimney, height 30 m, to 32 m", ("height_m", _D(30), _D(32))),
        ("range of the light, range 5M, to 7M", ("light.ranges_nm", [_D(5)], [_D(7)])),
        ('the legend of the area, legend "Sand", to "Mud"', ("legend", "Sand", "Mud")),
        ('name of the special buoy, name "A", to "B"', ("name", "A", "B")),
    ],
)  # fmt: skip
def test_the_old_value_may_stand_behind_the_feature_whose_property_is_named(text, change):
    reading = read_change(text, None)
    told = [(one.property, _plain(one.old), _plain(one.new)) for one in reading.changes]
    assert told == [change]
    assert reading.faults == ()


@pytest.mark.parametrize(
    "text",
    [
        "vertical clearance of the bridge, horizontal clearance 12 m, to 13 m",
        "swept depth of the wreck, least depth 8.2 m, to 7.6 m",
        "depth of the rock, depth 2 m, to 1.8 m, and the depth of the wreck, depth 3 m, to 2 m",
        "depth of the wreck, depth 5 m",
    ],
)
def test_another_property_or_no_new_value_is_no_change_of_what_is_named(text):
    codes = {fault.code for fault in read_change(text, "m").faults}
    assert codes & {"change-property-twice", "change-unread"}


@pytest.mark.parametrize(
    ("text", "kind", "comes"),
    [
        ("wreck, least depth 5 m, by least depth 4 m", "wreck_least_depth", "least depth 4 m"),
        ("the rock, least depth 5 m, with least depth of 4 m", "rock", "least depth of 4 m"),
        ("least depth 4 m for obstruction, least depth 5 m", "obstruction", "least depth 4 m"),
        ("port-hand light-buoy, Fl.R.3s, by Fl.R.5s", "light_buoy_port", "Fl.R.5s"),
        ("Fl.R.5s for port-hand light-buoy, Fl.R.3s", "light_buoy_port", "Fl.R.5s"),
    ],
)
def test_a_value_alone_that_comes_is_one_of_the_thing_that_goes(text, kind, comes):
    reading = read_swap(text, "m")
    assert reading.feature.kind == kind
    assert (reading.replacement.kind, reading.replacement.text) == (kind, comes)
    assert reading.replacement.s57 == reading.feature.s57
    assert reading.faults == ()


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("light-beacon, F.R, by light, Fl.R.5s", "light"),
        ("rock, depth 2 m, with depth 1.8 m", "sounding"),
        ("light, Fl.R.3s, by Fl.R.5s", "light"),
        ("depth 5 m by least depth 4 m", "sounding"),
    ],
)
def test_another_thing_that_comes_stays_another(text, kind):
    assert read_swap(text, "m").replacement.kind == kind
