"""Lights, sectors and aids found in running text by the terminals of light_text.lark."""

from __future__ import annotations

import time
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st
from lark import Lark

from noticeparse.grammar import from_folder
from noticeparse.readers.features import read_feature
from noticeparse.readers.light_sectors import read_sectors
from noticeparse.readers.lights import read_light


@pytest.fixture(scope="module")
def finder() -> Lark:
    grammar = """
        start: (LIGHT | LIGHT_WORDS | SECTORS | SOUND | RACON | AIS | _OTHER)*
        %import .light_text (LIGHT, LIGHT_WORDS, SECTORS, SOUND, RACON, AIS)
        _OTHER.-9: /[^a-z]|[a-z]+/i
    """
    return Lark(grammar, parser="lalr", import_paths=[from_folder])


def found(finder: Lark, text: str) -> list[str]:
    return [str(token) for token in finder.parse(text).children]


# Running text, and what is cut out of it.
RUNNING = [
    ("Fl.R.2.5s No 4  48° 03'.20 S., 126° 32'.81 W.", ["Fl.R.2.5s"]),
    ("north cardinal buoy Q 47°03.11'S 126°11.02'W", ["Q"]),
    ("Q 47S 123W", ["Q"]),
    ("buoy Fl(3) G 1s   47 12.3S", ["Fl(3) G 1s"]),
    ("Fl(3) G 1s  47°48.21'S", ["Fl(3) G 1s"]),
    ("light Fl.WR.5s17m12/9M 47°18.44'S", ["Fl.WR.5s17m12/9M"]),
    ("FL R 47S 123W", ["FL R"]),
    ("LIGHT BUOY FL R 4S IN 47-12.51S 123-45.20W", ["FL R 4S"]),
    ("V Qk Fl 47-12.3S", ["V Qk Fl"]),
    ("Q.G\t46°57.10'S", ["Q.G"]),
    ("light, F.R, close NW of (a) above", ["F.R"]),
    ("Amend elevation of light F.R to 11m", ["F.R"]),
    ("light Fl W 6s 22m 14M: range to 11M", ["Fl W 6s 22m 14M"]),
    ("replace F.G with light Fl.G.2s 47°06.50'S", ["F.G", "Fl.G.2s"]),
    ("light Fl.R.5s and F.G", ["Fl.R.5s and F.G"]),
    ("Oc.3s12m10M & F.R.7m4M", ["Oc.3s12m10M & F.R.7m4M"]),
    ("2F.R(vert), at (e) above", ["2F.R(vert)"]),
    ("light, No 2 F.R", ["F.R"]),
    ("Fl.R (a) 46°56'.60S.", ["Fl.R"]),
    ("move buoy Q from 47°03.11'S", ["Q"]),
    ("light Fl.R.5s.", ["Fl.R.5s"]),
    ("Light Q.", ["Q"]),
    ('Fl(2)5s "Ondrel", close SE of (b) above', ["Fl(2)5s"]),
    ("Fl.R.5s 10m NW of the rock", ["Fl.R.5s"]),
    ("Fl.R.5s, 5 m contour", ["Fl.R.5s"]),
    ("Iso.R.4s, 5M SE of the mole", ["Iso.R.4s"]),
    ("Fl 5s W of the rock", ["Fl 5s"]),
    ("Q W 045°-090°", ["Q", "W 045°-090°"]),
    (
        "Fl(3)WRG.15s 16/13/11M, in 47° 25.70' S, showing W 000°-090°, R 090°-170°.",
        ["Fl(3)WRG.15s 16/13/11M", "showing W 000°-090°, R 090°-170°"],
    ),
    ("Fl(4)Y.20s5M Horn(2)30s Racon(K)", ["Fl(4)Y.20s5M", "Horn(2)30s", "Racon(K)"]),
    ("racon (K), at (a) above", ["racon (K)"]),
    ("racon (a) above", ["racon"]),
    ("Racon N of the rock", ["Racon"]),
    ("delete V-AIS", ["V-AIS"]),
    ("buoy flashing red every 5 seconds in", ["flashing red every 5 seconds"]),
    ("light, fixed green, on the pier", ["fixed green"]),
    ("flashing red every 5 seconds, 2 miles NW of the point", ["flashing red every 5 seconds"]),
    # Colours in words behind a class in letters.
    ("port-hand light-buoy, red, Fl red 3s, No 2", ["Fl red 3s"]),
    ("light, Iso green 2s 5m 3M, 47°12'.3S", ["Iso green 2s 5m 3M"]),
    ("buoy, VQ(3) white 1,5s", ["VQ(3) white 1,5s"]),
    ("light, 2F green (vert) 4m 2M", ["2F green (vert) 4m 2M"]),
    ("light, Oc white/red/green 6s 12m 9M", ["Oc white/red/green 6s 12m 9M"]),
    ("light, Fl(2) white and red every 10s", ["Fl(2) white and red every 10s"]),
    ("light Fl, yellow, 5s", ["Fl, yellow, 5s"]),
    ("light, Fl.red.3s", ["Fl.red.3s"]),
    ("light, fl red 3s", ["fl red 3s"]),
    ("light, Oc white-red 8 s 12 m", ["Oc white-red 8 s 12 m"]),
    ("light, F red", ["F red"]),
    ("north cardinal buoy, VQ white, new", ["VQ white"]),
    ("Delete light F white 4m", ["F white 4m"]),
    # Malformed lights are cut out whole, so that they can be told.
    ("light VQ(6)+LFl.10 47-12.3S", ["VQ(6)+LFl.10"]),
    ("light Fl.XR.5s", ["Fl.XR.5s"]),
    ("light Fl(2+)R.10s", ["Fl(2+)R.10s"]),
    ("light LF1.10s9M", ["LF1.10s9M"]),
    ("light Q(9)l5s", ["Q(9)l5s"]),
    ("light 0c.R.3s", ["0c.R.3s"]),
    ("light Fl.5m12s10M", ["Fl.5m12s10M"]),
    ("buoy, Q(3)10sm", ["Q(3)10sm"]),
    # No lights at all.
    ("Q flag", []),
    ("F lights", []),
    ("Iso tank", []),
    ("Mo wreck", []),
    ("Fl ight", []),
    ("No F2", []),
    ("buoy Q2", []),
    ("A.F. Smith", []),
    ("Fort Flat", []),
    ("FOR THE FLOATING DOCK ALONG OCEAN FLAT", []),
    ("berths E, F, G and H", []),
    ("berth F, new", []),
    ("berth F red buoy", []),
    ("special buoy Q yellow", []),
    ("berth F red 5 m", []),
    ("dolphin Q red 5 m high", []),
    ("buoy Fl red buoy", []),
    ("Q W of the rock", []),
    ("fixed bridge", []),
    ("fixed green beacon", []),
    ("quick repair", []),
    ("Bell Rock, Horn Point", []),
    ("AISLE", []),
    ("W 15-11M and R 47-12.3S", []),
]


@pytest.mark.parametrize(("text", "wanted"), RUNNING, ids=[row[0] for row in RUNNING])
def test_lights_are_found_in_running_text(finder: Lark, text: str, wanted: list[str]) -> None:
    assert found(finder, text) == wanted


# Each is cut out whole, wherever it stands.
WHOLE = [
    "Fl.5s12m10M",
    "Fl(3)WRG.15s21m15-11M",
    "LFl.WR.8s18m12/9M",
    "Q(6)+LFl.15s",
    "Oc(2+1)W.12s",
    "2F.R(vert)8m2M",
    "2 F R (vert)",
    "2 F R (vert) 8m 2M",
    "2 F.R (vert)",
    "3F.G(hor)",
    "2F.G(vert)(occas)",
    "FFl.W.10s30m18M",
    "Mo(U)15s12m10M",
    "Al.Fl.WR.30s45m20/17M",
    "Al.Fl(2W+1R)20s",
    "Al.BuY.3s",
    "IVQ.7s",
    "UQ.Y.3M",
    "Oc.3s12m10M & F.R.7m4M",
    "Dir Fl.WRG.5s16m14-10M",
    "Aero Al.Fl.WG.7.5s88m21M (exting) (priv)",
    "Gp Oc(3) W 10s 15m 10M",
    "Gp.Occ.(2) 8s",
    "Alt. W R 6s",
    "Int Qk Fl 10s",
    "S-L Fl 10s",
    "E Int 4s",
    "FlR5s",
    "Fl (2) R. 10 s. 8 m. 6 M",
    "Fl.WRG.5s 15,13,11M",
    "FL(5)Y.20S",
    "AL.OC.BUY.3S",
    "LFL 10S 12M 9M",
    "group flashing (2) white every 10 seconds, elevation 12 metres, visible 8 miles",
]


@pytest.mark.parametrize("text", WHOLE)
def test_well_formed_lights_are_found_whole(finder: Lark, text: str) -> None:
    assert found(finder, f"light, {text}, close N of (a) above") == [text]


@given(
    name=st.sampled_from(["Fl", "Oc"]),
    group=st.lists(st.integers(1, 4), max_size=2),
    colours=st.sampled_from([["W"], ["R"], ["W", "R"], ["W", "R", "G"], ["Bu", "Y"]]),
    period=st.integers(100, 300),
    elevation=st.none() | st.integers(1, 99),
    miles=st.none() | st.integers(5, 30),
    between=st.sampled_from(["", ".", " ", ". ", ", "]),
)
def test_every_spelling_gives_one_light(
    finder: Lark,
    name: str,
    group: list[int],
    colours: list[str],
    period: int,
    elevation: int | None,
    miles: int | None,
    between: str,
) -> None:
    """The separator between the parts does not change what is read."""
    parts = [
        name + (f"({'+'.join(map(str, group))})" if group else ""),
        "".join(colours),
        f"{Decimal(period) / 10}s",
    ]
    parts += [f"{elevation}m"] if elevation else []
    parts += [f"{miles}M"] if miles else []
    text = between.join(parts)
    assert found(finder, f"buoy {text}, at (a) above") == [text]
    reading = read_light(text)
    assert reading.faults == ()
    (read,) = reading.lights
    assert (read.rhythm, read.groups, read.colours) == (name, group, colours)
    assert read.period_s == Decimal(period) / 10
    assert read.elevation_m == elevation
    assert read.ranges_nm == ([miles] if miles else [])


SLOW = [
    "1",
    " ",
    ".",
    "(",
    "°",
    "Fl",
    "F ",
    "Q(3)",
    "W 171°-195° ",
    "5s",
    "15/",
    "Fl.R.5s & ",
    "red ",
]


@pytest.mark.parametrize("seed", SLOW)
def test_long_texts_take_linear_time(finder: Lark, seed: str) -> None:
    text = seed * (10_000 // len(seed))
    started = time.perf_counter()
    read_light.__wrapped__(text)
    read_sectors.__wrapped__(text, ())
    finder.parse(text)
    assert time.perf_counter() - started < 5


@pytest.mark.parametrize(
    "words",
    [
        "LIGHT FL R 2S ELEVATION 5 METRES RANGE 3 MILES",
        "light, Fl.R.2s5m, range 3 miles",
        "light Fl R 2s 5m range 3M",
        "light, Fl.R.2s, elevation 5m, range 3 nautical miles",
        "light, Fl.R.2s, elevation 5 metres and nominal range 3 miles",
    ],
)
def test_words_behind_a_character_say_elevation_and_range(words: str) -> None:
    reading = read_feature(words, None)
    light = reading.feature.light
    assert light is not None
    assert (light.period_s, light.elevation_m, light.ranges_nm) == (2, 5, [3])
    assert list(reading.faults) == []
