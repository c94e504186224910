"""Readings that once looked right and were wrong; each is exact or an error, never a guess."""

from __future__ import annotations

import pytest
from geographiclib.geodesic import Geodesic

from noticeparse import parse
from noticeparse.records.action import Replace
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import P, actions_of

HEAD = "TAVRENNE ISLANDS (INVENTED)\n\n12/26 Quill Sound.\nChart 802 [3/26] depths in metres\n"


def lines_of(bulletin: Bulletin) -> list[list[str]]:
    return [
        [position.iso6709 for position in action.geometry.positions]
        for action in actions_of(bulletin)
    ]


@pytest.mark.parametrize(
    ("text", "positions"),
    [
        (
            "Insert leading line joining -46.4629, -123.4706, -46.4253, -123.4527, -46.4851,\n"
            "   -123.5100, -46.4292, -123.4955.\n",
            [
                "-46.4629-123.4706/", "-46.4253-123.4527/",
                "-46.4851-123.5100/", "-46.4292-123.4955/",
            ],
        ),
        ("Remove mooring buoy No 14\n47.38658S 126.96741W\n", ["-47.38658-126.96741/"]),
        ("Insert depth 64\n47 12.44S 126 44.10W\n", ["-4712.44-12644.10/"]),
        (
            "Insert light, Fl.WRG.4s, R 305°-095°, G 285°-065°   46.52034S 122.37148W\n",
            ["-46.52034-122.37148/"],
        ),
    ],
    ids=["wrapped signs", "number above", "depth above", "sector before"],
)  # fmt: skip
def test_position_has_its_own_figures(text: str, positions: list[str]) -> None:
    bulletin = parse(HEAD + text)
    assert lines_of(bulletin) == [positions]
    assert not [f for f in bulletin.findings if f.severity == "error"]


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("Insert wreck 47\n12.34S 123 45.67W\n", "position-unreadable"),
        ("Insert wreck \ufffd7°12.34'S 123°45.67'W\n", "position-unreadable"),
        ("Insert wreck 4? 12.34 S 123 45.67 W\n", "position-unreadable"),
        ("Insert wreck \ufffd7.2056, -123.7611\n", "position-unreadable"),
        ("Insert buoy 045° 200M from 46-00.00S 122-00.00W\n", "offset-not-worked-out"),
        ("Exchange port-hand buoy for special buoy 46-00.00S 122-00.00W\n", "swap-not-divided"),
    ],
    ids=[
        "figure at a line end", "first figure lost", "figure lost before a blank",
        "first figure of decimals lost", "reference alone", "what is given for what",
    ],
)  # fmt: skip
def test_doubt_is_an_error(text: str, code: str) -> None:
    bulletin = parse(HEAD + text)
    assert code in [f.code for f in bulletin.findings if f.severity == "error"]


def test_rows_with_the_position_in_front_keep_their_own() -> None:
    text = "S48 23.01 W126 30.61   Establish buoy\nS48 22.83 W126 30.73   Delete rock\n"
    actions = actions_of(parse(HEAD + text))
    assert [(a.verb, a.geometry.positions[0].iso6709) for a in actions] == [
        ("insert", "-4823.01-12630.61/"), ("delete", "-4822.83-12630.73/"),
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("text", "miles"),
    [
        ("radius 500m centred on", 500 / 1852),
        ("500m radius, centred on", 500 / 1852),
        ("radius 0.5M centred on", 0.5),
        ("circle of radius 0,3 M, centred on", 0.3),
    ],
)
def test_metres_and_miles_of_a_radius(text: str, miles: float) -> None:
    # INT 1, section B: M is an international nautical mile, m a metre.
    bulletin = parse(f"{HEAD}Insert restricted area, {text} 46-00.00S 122-00.00W\n")
    radius = bulletin.notices[0].charts[0].actions[0].geometry.radius_nm
    assert radius is not None
    assert float(radius) == pytest.approx(miles)


def test_metres_of_an_offset() -> None:
    bulletin = parse(f"{HEAD}Insert buoy 200m N of 46-00.00S 122-00.00W\n")
    position = bulletin.notices[0].charts[0].actions[0].geometry.positions[0]
    line = Geodesic.WGS84.Inverse(-46, -122, position.lat, position.lon)
    assert line["s12"] == pytest.approx(200)


@pytest.mark.parametrize(
    "heading", ["No longer there:", "The following is struck from the sheet:", "Now gone -:"]
)
def test_no_verb_holds_below_a_heading_that_nobody_can_read(heading: str) -> None:
    text = f"Insert:\nwreck 46-00.00S 122-00.00W\n{heading}\nrock 46-00.50S 122-00.00W\n"
    bulletin = parse(HEAD + text)
    assert [(a.verb, a.feature.kind) for a in actions_of(bulletin) if a.usable] == [
        ("insert", "wreck")
    ]
    codes = [f.code for f in bulletin.findings if f.severity == "error"]
    assert codes == ["verb-unknown", "text-action-lost"]


def test_a_name_above_items_leaves_the_verb_in_force() -> None:
    text = "Insert:\nwreck 46-00.00S 122-00.00W\nQuill Sound:\nrock 46-00.50S 122-00.00W\n"
    assert [a.verb for a in actions_of(parse(HEAD + text))] == ["insert", "insert"]


@pytest.mark.parametrize("joint", ["in place of", "instead of", "in lieu of"])
def test_words_that_tell_which_goes_hold_behind_exchange_too(joint: str) -> None:
    (action,) = actions_of(parse(f"{HEAD}Exchange depth 4.1m {joint} depth 4.9m, {P}\n"))
    assert isinstance(action, Replace)
    assert action.usable
    assert (action.feature.text, action.replacement.text) == ("depth 4.9m", "depth 4.1m")
