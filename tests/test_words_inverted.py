"""Names with the noun in front: `buoy, mooring, yellow` is a yellow mooring buoy."""

from __future__ import annotations

import pytest

from noticeparse.readers.features import read_feature

INVERTED = [
    ("buoy, mooring, yellow", "buoy_mooring", ["yellow"]),
    ("buoy, yellow, mooring", "buoy_mooring", ["yellow"]),
    ("buoy (mooring)", "buoy_mooring", []),
    ("buoys, mooring", "buoy_mooring", []),
    ("buoy, mooring, with light Fl.Y.5s", "buoy_mooring", []),
    ("a buoy, ODAS", "buoy_odas", []),
    ("buoy, cardinal, north", "buoy_cardinal_north", []),
    ("buoy, lateral, port hand", "buoy_lateral_port", []),
    ("beacon, special", "beacon_special", []),
    ("beacon, leading", "beacon_special", []),
    ("lights, leading", "leading_lights", []),
    ("cable, overhead", "cable_overhead", []),
    ("tower, radio", "radio_mast", []),
]


@pytest.mark.parametrize(("words", "kind", "colours"), INVERTED)
def test_the_noun_may_stand_in_front(words: str, kind: str, colours: list[str]) -> None:
    feature = read_feature(words, None).feature
    assert (feature.kind, feature.colours, feature.text) == (kind, colours, words)


@pytest.mark.parametrize(
    ("words", "kind"),
    [
        # What names a thing by itself may be a second one.
        ("buoy, wreck", "buoy_generic"),
        ("light, tower", "light"),
        # Colour and shape alone make no category.
        ("buoy, can, red", "buoy_generic"),
        ("wreck, mizzled", "wreck"),
        ("buoy, mooring place for yachts", "buoy_generic"),
    ],
)
def test_other_words_stay_behind_their_noun(words: str, kind: str) -> None:
    assert read_feature(words, None).feature.kind == kind
