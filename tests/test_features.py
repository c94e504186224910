"""Feature phrases: kind, S-57 classes and fields, and what is told of doubtful phrases."""

from concurrent.futures import ThreadPoolExecutor

import pytest
from hypothesis import given
from hypothesis import strategies as st

from noticeparse.catalogue import ENTRIES
from noticeparse.readers.features import has_kind, leads_feature, read_feature

# text, kind, S-57 classes, fields of the record (a part of it)
PHRASES = [
    # Marks
    ("port-hand light-buoy, Fl.R.2.5s No 4", "light_buoy_port", ["BOYLAT", "LIGHTS"],
     {"name": "No 4", "attributes": {"CATLAM": 1}, "light": {"period_s": 2.5}}),
    ("starboard lateral light buoy Fl(3) G 15s", "light_buoy_starboard", ["BOYLAT", "LIGHTS"],
     {"attributes": {"CATLAM": 2}, "light": {"groups": [3]}}),
    ("Starboard-hand lighted buoy Fl G 4s", "light_buoy_starboard", ["BOYLAT", "LIGHTS"], {}),
    ("Port-hand can buoy, red", "buoy_lateral_port", ["BOYLAT"],
     {"shape": "can", "colours": ["red"],
      "attributes": {"CATLAM": 1, "COLOUR": [3], "BOYSHP": 2}}),
    ("unlit port-hand buoy", "buoy_lateral_port", ["BOYLAT"], {"light": None}),
    ("light-buoy, port-hand, Fl.R.4s", "light_buoy_port", ["BOYLAT", "LIGHTS"], {}),
    ("red lateral buoy", "buoy_generic", ["BOYLAT"], {"colours": ["red"]}),
    ("preferred channel to starboard light-buoy, Fl(2+1)R.10s", "buoy_preferred_channel",
     ["BOYLAT", "LIGHTS"], {"attributes": {"CATLAM": 3}}),
    ("North cardinal buoy", "buoy_cardinal_north", ["BOYCAR"], {"attributes": {"CATCAM": 1}}),
    ("West cardinal lighted buoy VQ(9) 10s", "buoy_cardinal_west", ["BOYCAR", "LIGHTS"], {}),
    ("S cardinal spar buoy", "buoy_cardinal_south", ["BOYCAR"], {"shape": "spar"}),
    ("south cardinal beacon, topmark", "beacon_cardinal", ["BCNCAR", "TOPMAR"],
     {"attributes": {"CATCAM": 3}, "topmark": None, "companions": []}),
    ("north cardinal light-buoy, 2 cones, points up, Q", "buoy_cardinal_north",
     ["BOYCAR", "LIGHTS", "TOPMAR"],
     {"topmark": "2 cones, points up", "attributes": {"CATCAM": 1, "TOPSHP": 13}}),
    ("beacon, E cardinal, with topmark, 2 cones, base to base", "beacon_cardinal",
     ["BCNCAR", "TOPMAR"], {"topmark": "2 cones, base to base", "companions": []}),
    ('isolated danger light-buoy, Fl(2)5s "Ondra"', "buoy_isolated_danger",
     ["BOYISD", "LIGHTS"], {"name": "Ondra"}),
    ("isolated danger beacon, BRB, 2 spheres", "beacon_isolated_danger", ["BCNISD", "TOPMAR"],
     {"colours": ["black", "red", "black"], "colour_pattern": "horizontal_stripes"}),
    ("safe water buoy, RWVS", "buoy_safe_water", ["BOYSAW"],
     {"colours": ["red", "white"], "colour_pattern": "vertical_stripes"}),
    ("safe-water light-buoy, Mo(A)6s", "buoy_safe_water", ["BOYSAW", "LIGHTS"], {}),
    ("special light buoy Fl(5)Y.20s", "buoy_special", ["BOYSPP", "LIGHTS"], {}),
    ("Special buoy, yellow, spherical", "buoy_special", ["BOYSPP"],
     {"colours": ["yellow"], "shape": "spherical"}),
    ("special buoy, yellow, X topmark", "buoy_special", ["BOYSPP", "TOPMAR"],
     {"colours": ["yellow"]}),
    ("special buoy with yellow X topmark", "buoy_special", ["BOYSPP", "TOPMAR"], {"colours": []}),
    ("depth 12.5m, swept", "sounding", ["SOUNDG"], {"depth": {"kind": "swept"}}),
    ("leading beacons", "beacon_special", ["BCNSPP"], {"attributes": {"CATSPM": [16]}}),
    ("special light-buoy, X topmark, Fl.Y.5s", "buoy_special", ["BOYSPP", "LIGHTS", "TOPMAR"],
     {"topmark": "X-shape"}),
    ("three special buoys", "buoy_special", ["BOYSPP"], {}),
    ("special light beacon Fl.Y.5s", "beacon_special", ["BCNSPP", "LIGHTS"], {}),
    ("ODAS light-buoy, Fl(5)Y.20s", "buoy_odas", ["BOYSPP", "LIGHTS"], {}),
    ("emergency wreck marking buoy", "buoy_emergency_wreck", ["BOYSPP"], {}),
    ("EMERGENCY WRECK MARKING BUOY, AL.OC.BUY.3S", "buoy_emergency_wreck",
     ["BOYSPP", "LIGHTS"], {}),
    ("mooring buoy", "buoy_mooring", ["MORFAC"], {"attributes": {"CATMOR": 7}}),
    ("buoy, red, can", "buoy_generic", [], {"colours": ["red"], "shape": "can"}),
    ("light-buoy, red and white vertical stripes", "light_buoy_generic", ["LIGHTS"],
     {"colours": ["red", "white"], "colour_pattern": "vertical_stripes"}),
    ("buoy, RGR", "buoy_generic", [], {"colours": ["red", "green", "red"]}),
    ("light-buoy, BYB", "light_buoy_generic", ["LIGHTS"],
     {"attributes": {"COLOUR": [2, 6, 2], "COLPAT": [1]}}),
    ("light-vessel", "light_vessel", ["LITVES"], {}),
    # Telegraphic forms and capitals
    ("Lt By", "light_buoy_generic", ["LIGHTS"], {}),
    ("Lt Bn", "light_beacon", ["LIGHTS"], {}),
    ("S card Lt By", "buoy_cardinal_south", ["BOYCAR", "LIGHTS"], {}),
    ("stbd-hand By", "buoy_lateral_starboard", ["BOYLAT"], {}),
    ("Wk", "wreck", ["WRECKS"], {}),
    ("Wreck PA", "wreck", ["WRECKS"], {"status": ["position_approximate"]}),
    ("Obstn ED (rep 2024)", "obstruction", ["OBSTRN"],
     {"status": ["existence_doubtful", "reported"], "reported_year": 2024}),
    ("Lt (exting)", "extinguished_light", ["LIGHTS"], {"status": ["extinguished"]}),
    ("Ldg Lts", "leading_lights", ["LIGHTS"], {}),
    ("Dn", "dolphin", ["MORFAC"], {}),
    ("Tr", "tower", ["LNDMRK"], {}),
    ("Chy", "chimney", ["LNDMRK"], {}),
    ("LIGHT BUOY NO 8", "light_buoy_generic", ["LIGHTS"], {"name": "NO 8"}),
    # Lights
    ("light, Fl(2)WR.6s9m8/6M, on the outer breakwater, conspicuous", "light", ["LIGHTS"],
     {"companions": [{"role": "on", "feature": {"kind": "breakwater"}}]}),
    ("light on the new quay", "light", ["LIGHTS"], {"attributes": {}}),
    ("front leading light, Oc.R.3s6m4M", "leading_lights", ["LIGHTS"],
     {"light": {"leading": True}, "attributes": {"CATLIT": [4, 12]}}),
    ("Fl.G.3s No 5", "light", ["LIGHTS"], {"name": "No 5"}),
    ("Oc.3s12m10M & F.R.7m4M", "light", ["LIGHTS"],
     {"light": {"rhythm": "Oc"}, "more_lights": [{"rhythm": "F"}]}),
    ("light, Fl.5s, Horn(2)30s, Racon(K)", "light", ["LIGHTS", "FOGSIG", "RTPBCN"],
     {"sound": {"kind": "horn"}, "racon": {"morse": "K"}}),
    ("light, Fl(2)WRG.10s20m12-9M with sectors G 330°-010° (40°), W 010°-330°", "light",
     ["LIGHTS"], {"light": {"sectors": [{"colour": "G"}, {"colour": "W"}]}}),
    ("Brannoch Rock light, Fl.5s", "light", ["LIGHTS"], {"name": "Brannoch Rock"}),
    ("light-buoy, Port Ellory No 3, Fl.G.3s", "light_buoy_generic", ["LIGHTS"],
     {"name": "Port Ellory No 3", "attributes": {}}),
    ("Light, Dunmarrow Point, Fl.R.3s", "light", ["LIGHTS"], {"name": "Dunmarrow Point"}),
    ("light, Discontinued", "light", ["LIGHTS"], {"name": None}),
    ("light on Brannoch Rock, Fl.R.3s", "light", ["LIGHTS"], {"companions": [], "name": None}),
    ("Light F.R (priv)", "light", ["LIGHTS"], {"status": ["private"]}),
    ("platform, lit", "platform", ["OFSPLF", "LIGHTS"], {}),
    ("racon (K)", "racon", ["RTPBCN"], {"racon": {"morse": "K"}}),
    # Depths and dangers
    ("depth 7₉, enclosed by 10m contour", "sounding", ["SOUNDG"],
     {"depth": {"value_m": 7.9},
      "companions": [{"role": "enclosed_by",
                      "feature": {"kind": "depth_contour", "depth": {"value_m": 10}}}]}),
    ("depth 25 and associated contour", "sounding", ["SOUNDG"],
     {"companions": [{"role": "with", "feature": {"kind": "depth_contour", "depth": None}}]}),
    ("drying height 0.4 m", "drying_height", ["SOUNDG"], {"depth": {"value_m": -0.4}}),
    ("5m contour", "depth_contour", ["DEPCNT"], {"depth": {"kind": "contour", "value_m": 5}}),
    ("dredged channel, 9₅m, limits", "dredged_area", ["DRGARE"],
     {"depth": {"kind": "dredged", "value_m": 9.5}}),
    ("wreck, least depth 9₈, dangerous to navigation", "wreck_dangerous", ["WRECKS"],
     {"depth": {"value_m": 9.8}, "attributes": {"CATWRK": 2, "QUASOU": [6]}}),
    ("wreck, depth unknown, dangerous to navigation", "wreck_dangerous", ["WRECKS"],
     {"depth": {"value_m": None, "quality": "depth unknown"}}),
    ("wreck with a least depth of 5 m", "wreck_least_depth", ["WRECKS"], {}),
    ("wreck not dangerous", "wreck_nondangerous", ["WRECKS"], {"attributes": {"CATWRK": 1}}),
    ("Wreck showing hull", "wreck_hull_visible", ["WRECKS"], {"attributes": {"CATWRK": 5}}),
    ("Wk 12.4m swept", "wreck_swept", ["WRECKS"],
     {"depth": {"value_m": 12.4}, "attributes": {"TECSOU": [6], "QUASOU": [6]}}),
    ("wreck, safe clearance 22m", "wreck", ["WRECKS"],
     {"clearance": {"kind": "safe", "value_m": 22}, "depth": {"value_m": 22}}),
    ("rocks awash", "rock_awash", ["UWTROC"], {"attributes": {"WATLEV": 5}}),
    ("a rock which dries 3 feet", "rock", ["UWTROC"],
     {"depth": {"value_m": -0.9144}, "attributes": {"WATLEV": 4}}),
    ("drying rock, 1₂", "rock_covers", ["UWTROC"], {"depth": {"kind": "drying", "value_m": -1.2}}),
    ("obstruction (container), least depth 10₈", "obstruction", ["OBSTRN"],
     {"depth": {"value_m": 10.8}}),
    ("stumps", "stump", ["OBSTRN"], {}),
    ("Fish haven, limit of area", "fish_haven", ["OBSTRN"], {"attributes": {"CATOBS": 5}}),
    # Lines, areas, structures
    ("limit of marine farm, pecked line", "marine_farm", ["MARCUL"], {}),
    ("symbol, marine farm", "marine_farm", ["MARCUL"], {}),
    ("the limit of a harbour", "harbour_limit", ["HRBARE"], {}),
    ("disused submarine pipeline", "pipeline_disused", ["PIPSOL"],
     {"status": ["disused"], "attributes": {"STATUS": [4]}}),
    ("restricted area, entry prohibited", "restricted_area", ["RESARE"],
     {"attributes": {"RESTRN": [7]}}),
    ("leading line, 180°", "leading_line", ["NAVLNE"], {}),
    ("bridge, vertical clearance 24 m", "bridge", ["BRIDGE"],
     {"clearance": {"kind": "vertical", "value_m": 24}}),
    ("overhead power cable, safe clearance 31 m", "cable_overhead", ["CBLOHD"],
     {"clearance": {"kind": "safe"}, "depth": None}),
    ("Road bridge", "bridge", ["BRIDGE"], {}),
    ("mast, height 45 m", "radio_mast", ["LNDMRK"], {"height_m": 45}),
    ("anchor berth A3", "anchor_berth", ["ACHBRT"], {"name": "A3"}),
    ("berth A", "berth", ["BERTHS"], {"name": "A"}),
    ("reporting point No 4", "radio_reporting_point", ["RDOCAL"], {"name": "No 4"}),
    ("virtual AIS aid, Safe water", "ais_virtual", ["NEWOBJ"], {"ais": {"virtual": True}}),
    # Words for the chart
    ('legend, "Power"', "legend", [], {"legend": "Power"}),
    ("legend, Foul Ground", "legend", [], {"legend": "Foul Ground"}),
    ('accompanying note, "Submarine Cables"', "note", [], {"legend": "Submarine Cables"}),
]  # fmt: skip


def _holds(record, part):
    """Whether a record holds all that a part of it says."""
    if isinstance(part, dict):
        return isinstance(record, dict) and all(_holds(record[k], v) for k, v in part.items())
    if isinstance(part, list):
        return len(record) == len(part) and all(map(_holds, record, part))
    return record == part


@pytest.mark.parametrize(
    ("text", "kind", "s57", "fields"), PHRASES, ids=[phrase for phrase, *_ in PHRASES]
)
def test_phrase(text, kind, s57, fields):
    reading = read_feature(text, "m" if "feet" not in text else "ft")
    record = reading.feature.model_dump(mode="json")
    assert (record["kind"], record["s57"]) == (kind, s57)
    assert _holds(record, fields), record
    own = [fault for fault in reading.faults if fault.code.startswith(("feature", "depth"))]
    assert not [fault.code for fault in own if ENTRIES[fault.code].severity != "info"]


def test_text_is_the_phrase_with_blanks_collapsed():
    assert read_feature("special   buoy,  yellow,", "m").feature.text == "special buoy, yellow"


# text, code, stretch
FAULTS = [
    ("xyzzy", "feature-unknown", "xyzzy"),
    ("Fl.G.3s No 5", "feature-support-not-stated", "Fl.G.3s No 5"),
    ("buoy, red, can", "feature-class-unknown", "buoy"),
    ("buoy (removed)", "feature-negated", "removed"),
    ("former mooring buoy", "feature-negated", "former"),
    ("wreck no longer visible", "feature-negated", "no longer"),
    ("port-hand buoy, starboard-hand", "feature-category-conflict", "starboard-hand"),
    ("north cardinal buoy, south cardinal", "feature-category-conflict", "south cardinal"),
    ('buoy "Quill', "feature-quote-open", '"Quill'),
    ('note, "Cables" and "Foul"', "feature-legends-several", 'and "Foul"'),
    ("wreck 12", "feature-figure-unclear", "12"),
    ("ferry route 12", "feature-figure-unread", "12"),
    ("radio mast (152)", "feature-figure-in-brackets", "152"),
    ("ferry terminal", "feature-words-behind-kind", "terminal"),
    ("light-buoy, safe water, Iso.4s, V-AIS", "feature-virtual-with-mark", "V-AIS"),
    ("depth 1₄ (underlined)", "feature-dries-with-depth", "depth 1₄ (underlined)"),
    ("drying rock, depth 1.2 m", "feature-dries-with-depth", "drying rock, depth 1.2 m"),
    # Above chart datum or below it: the two contradict each other.
    ("drying rock, least depth 1.2 m", "feature-dries-with-depth",
     "drying rock, least depth 1.2 m"),
    ("wreck which covers and uncovers, swept to 3 m", "feature-dries-with-depth",
     "wreck which covers and uncovers, swept to 3 m"),
    ("a sounding of 1₄ (underlined)", "feature-dries-with-depth",
     "a sounding of 1₄ (underlined)"),
    ("wreck, least depth 5 m, least depth 6 m", "depth-several",
     "wreck, least depth 5 m, least depth 6 m"),
    ("wreck, least depth unknown, depth 12 m", "depth-several",
     "wreck, least depth unknown, depth 12 m"),
    ("wreck rock awash", "feature-kinds-several", "rock awash"),
    ("depth 8 6", "depth-figures-apart", "8 6"),
    ("bridge, vertical clearance 6 m, horizontal clearance 20 m", "feature-clearances-several",
     "horizontal clearance 20 m"),
]  # fmt: skip


@pytest.mark.parametrize(("text", "code", "stretch"), FAULTS, ids=[row[0] for row in FAULTS])
def test_doubt_is_told_at_its_place(text, code, stretch):
    faults = read_feature(text, "m").faults
    assert all(0 <= fault.start < fault.end for fault in faults)
    assert (code, stretch) in [(f.code, text[f.start : f.end]) for f in faults]


def test_messages_quote_words_of_the_phrase():
    for text, *_ in FAULTS:
        for fault in read_feature(text, "m").faults:
            assert ENTRIES[fault.code].message.format(**fault.values)
            assert fault.values["written"].partition("…")[0] in text


@pytest.mark.parametrize("text", ["half-tide rock, least depth unknown", "drying rock, dries 1₂"])
def test_dries_without_a_depth_below_datum(text):
    assert read_feature(text, "m").faults == ()


def test_two_depths_leave_none():
    assert read_feature("wreck, least depth 5 m, least depth 6 m", "m").feature.depth is None


def test_virtual_mark_is_no_buoy():
    assert read_feature("virtual safe water buoy", "m").feature.s57 == ["NEWOBJ"]


KINDS = {
    "starboard-hand light-buoy, Fl.G": (True, True),
    "light, Fl.R.3s": (True, True),
    "depth 7₉": (True, True),
    'legend "Foul"': (True, True),
    "racon (K)": (True, True),
    "symbol, marine farm": (True, True),
    "dangerous wreck": (True, True),
    "drying height 0.4 m": (True, True),
    "a yellow buoy": (True, True),
    "No 4 light-buoy, Fl.R.3s": (True, True),
    "moored data buoy": (True, True),
    "conspicuous": (False, False),
    "with sectors W 000°-090°": (False, False),
    "least depth 7₇": (False, False),
    "depth unknown": (False, False),
    "and associated contour": (False, False),
    "dangerous to navigation": (False, False),
    "Fl.G.3s No 5": (False, False),
    "topmark": (True, False),
    "Shove special buoy": (True, False),
    "close E of wreck": (True, False),
    "": (False, False),
}


@pytest.mark.parametrize("text", KINDS)
def test_has_kind_and_leads(text):
    assert (has_kind(text), leads_feature(text)) == KINDS[text]


@given(st.text(max_size=60))
def test_any_text_is_read(text):
    reading = read_feature(text, "fm_ft")
    assert all(0 <= fault.start <= fault.end <= len(text) for fault in reading.faults)
    assert all(fault.code in ENTRIES for fault in reading.faults)
    has_kind(text)
    leads_feature(text)


@pytest.mark.parametrize("piece", ["1 ", "and ", "light buoy, ", "9₈ ", "(K) ", '"', "on ", "R"])
def test_long_texts_take_linear_time(piece):
    read_feature(piece * (20_000 // len(piece)), "m")


def test_threads_share_one_parser():
    texts = [f"special light-buoy, Fl.Y.{n}s No {n}" for n in range(1, 200)]
    with ThreadPoolExecutor(4) as pool:
        names = [r.feature.name for r in pool.map(lambda text: read_feature(text, "m"), texts)]
    assert names == [f"No {n}" for n in range(1, 200)]
