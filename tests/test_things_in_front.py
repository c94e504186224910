"""Things named in relation to others: the first is the thing, the second where it lies."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.feature import Feature
from tests.short_notices import AT_P, HEAD, P, actions_of, codes, errors, told


def read(words: str) -> Feature:
    (action,) = actions_of(parse(f"{HEAD}Insert {words} {P}\n"))
    return action.feature


UNKNOWN = [
    "danger line round wreck",
    "danger circle round wreck",
    "symbol enclosing wreck",
    "limit line round rock",
    "hatching indicating shoal",
    "ring enclosing the pier",
    "boulder under bridge",
    "pecked line about obstruction",
    "buoy replaced by beacon",
    "buoy, replaced by beacon",
]


@pytest.mark.parametrize("verb", ["Insert", "Delete"])
@pytest.mark.parametrize("words", UNKNOWN)
def test_what_lies_at_a_thing_is_not_that_thing(verb: str, words: str) -> None:
    bulletin = parse(f"{HEAD}{verb} {words} {P}\n")
    assert (told(bulletin), errors(bulletin)) == ([], {"feature-kinds-several"})


KNOWN = [
    ("rock in channel", "rock"),
    ("wreck in fairway", "wreck"),
    ("rock awash below bridge", "rock_awash"),
    ("limit of restricted area", "restricted_area"),
    ("large drying rock", "rock_covers"),
    ("data gathering buoy", "buoy_generic"),
    ("cable landing beacon", "beacon_generic"),
    ("visitors mooring buoy", "buoy_mooring"),
    ("câble sous-marin / submarine cable", "cable_submarine"),
]


@pytest.mark.parametrize(("words", "kind"), KNOWN)
def test_the_first_noun_is_the_thing(words: str, kind: str) -> None:
    bulletin = parse(f"{HEAD}Insert {words} {P}\n")
    assert told(bulletin) == [("insert", kind, [AT_P])]


CARRIED = [
    ("bell at light-buoy Fl.R.4s", "fog_signal"),
    ("bell at light-buoy, Fl.R.4s", "fog_signal"),
    ("horn at light Fl.R.4s", "fog_signal"),
    ("wreck marked by light-buoy Fl.R.4s", "wreck"),
    ("topmark on light-buoy Fl.R.4s No 4", "topmark"),
    ("racon on light-buoy Fl.R.4s", "racon"),
]


@pytest.mark.parametrize(("words", "kind"), CARRIED)
def test_the_light_is_that_of_what_carries_it(words: str, kind: str) -> None:
    feature = read(words)
    (companion,) = feature.companions
    assert (feature.kind, feature.light, feature.name) == (kind, None, None)
    assert companion.feature.light is not None
    assert companion.feature.light.written == "Fl.R.4s"


OWN = [
    ("light on beacon Fl.R.4s", "light"),
    ("light, on beacon, Fl.R.4s", "light"),
    ("light on pier Fl.R.4s", "light"),
    ("pier with light Fl.R.4s", "pier"),
    ("light-buoy with topmark Fl.R.4s", "light_buoy_generic"),
]


@pytest.mark.parametrize(("words", "kind"), OWN)
def test_what_has_a_light_by_its_kind_keeps_it(words: str, kind: str) -> None:
    feature = read(words)
    assert feature.kind == kind
    assert feature.light is not None


def test_a_topmark_is_not_the_aid_that_has_it() -> None:
    feature = read("virtual AIS, topmark N cardinal")
    assert (feature.kind, feature.ais and feature.ais.virtual) == ("ais_virtual", True)


def test_a_mark_whose_light_is_out_says_so() -> None:
    feature = read("light-buoy, light extinguished,")
    assert (feature.kind, feature.status) == ("light_buoy_generic", ["extinguished"])


@pytest.mark.parametrize(
    "words", ["light-buoy (light only)", "rock, symbol only", "rock (name only)"]
)
def test_a_part_that_alone_is_meant_is_not_the_thing(words: str) -> None:
    bulletin = parse(f"{HEAD}Delete {words} {P}\n")
    assert (told(bulletin), errors(bulletin)) == ([], {"feature-kinds-several", "item-limited"})


@pytest.mark.parametrize("words", ["wreck, at least 8m", "wreck, depth of at least 8m"])
def test_at_least_is_a_bound(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert {words} {P}\n")
    assert (told(bulletin), errors(bulletin)) == ([], {"depth-bound-only"})


@pytest.mark.parametrize("unit", ["cables", "miles"])
def test_a_distance_is_no_depth(unit: str) -> None:
    bulletin = parse(f"{HEAD}Insert depth 6.6 {unit} {P}\n")
    assert (told(bulletin), errors(bulletin)) == ([], {"depth-unread"})


def test_where_a_legend_stands_is_not_its_wording() -> None:
    bulletin = parse(f"{HEAD}Delete legend at beacon {P}\n")
    (action,) = actions_of(bulletin)
    assert (action.feature.legend, codes(bulletin)) == (None, {"feature-words-unread"})
    assert read("legend at anchor").legend == "at anchor"
