"""Keys that lead to the places of a record: known ones are read, others hold it back."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import actions_of, codes, errors, told

P, Q, R, S = (
    "-4804.00-12416.00/", "-4804.00-12412.00/", "-4804.50-12412.00/", "-4804.50-12416.00/",
)  # fmt: skip
T, U = "-4802.15-12411.40/", "-4806.15-12411.40/"
HEAD = (
    "NOTICE: 1450/2026\nAREA: Quill Sound\nCHART: 88\nPREVIOUS NOTICE: 1391/2026\nDATUM: WGS84\n"
    f"INSERT: wreck\nAT: {T}\n"
)
FOOT = f"DELETE: rock\nAT: {U}\n"
BESIDE = [("insert", "wreck", [T]), ("delete", "rock", [U])]


@pytest.mark.parametrize(
    ("feature", "keys", "places", "shape"),
    [
        (
            "restricted area",
            "BOUNDARY|Boundaries|LIMITS OF AREA|PERIMETER|AREA ENCLOSED BY|Corners|WITHIN|AREA",
            [P, Q, R, S],
            "area",
        ),
        (
            "submarine cable",
            "LINE|ROUTE|THROUGH|CONNECTING|LINE JOINING|FROM-TO|From - to|From/To|ALONG",
            [P, Q],
            "line",
        ),
        ("rock", "IN|ON|POSITION|AT|SITE|Point", [P], "point"),
    ],
)
def test_keys_of_places_are_read(feature: str, keys: str, places: list[str], shape: str) -> None:
    for key in keys.split("|"):
        bulletin = parse(f"{HEAD}INSERT: {feature}\n{key}: {''.join(places)}\n{FOOT}")
        found = actions_of(bulletin)
        assert [p.iso6709 for p in found[1].geometry.positions] == places, key
        assert (found[1].geometry.shape, found[1].usable) == (shape, True), key
        assert [told(bulletin)[0], told(bulletin)[2]] == BESIDE, key
        assert [f.code for f in bulletin.findings] == [], key


@pytest.mark.parametrize("verb", ["INSERT: wreck", "INSERT wreck"])
@pytest.mark.parametrize(
    "key", ["FOO", "Off", "CLOSE E OF", "Near", "REFERENCE", "NAME", "Bearing from", "SEE ALSO: a"]
)
@pytest.mark.parametrize("own", ["", f"AT: {Q}\n"])
def test_places_behind_other_keys_hold_their_record_back(verb: str, key: str, own: str) -> None:
    colon = "" if ":" in key else ":"
    bulletin = parse(f"{HEAD}{verb}\n{own}{key}{colon} {P}\n{FOOT}")
    assert told(bulletin) == BESIDE
    assert errors(bulletin) == {"relation-unclear"}


def test_a_place_and_a_centre_are_not_two_places() -> None:
    bulletin = parse(f"{HEAD}INSERT: wreck\nAT: {P}\nCENTRE: {Q}\n{FOOT}")
    assert (told(bulletin), errors(bulletin)) == (BESIDE, {"relation-unclear"})


@pytest.mark.parametrize(
    ("written", "read"),
    [
        (f"MOVE: buoy\nFROM-TO: {P}{Q}\n", ([P], [Q])),
        (f"MOVE: buoy\nFROM:\n {P}\nTO:\n {Q}\n", ([P], [Q])),
        (f"INSERT: restricted area\nBOUNDARY:\n {P}\n {Q}\n {R}\n", ([P, Q, R], [])),
        (f"INSERT: restricted area\n of the bay\nBOUNDARY: {P}{Q}\n {R}\n", ([P, Q, R], [])),
        (f"INSERT wreck\nAT: {P}\n", ([P], [])),
    ],
)
def test_keys_above_their_places_and_both_ends(
    written: str, read: tuple[list[str], list[str]]
) -> None:
    bulletin = parse(f"{HEAD}{written}{FOOT}")
    action = actions_of(bulletin)[1]
    moved = getattr(action, "destination", None)
    assert [p.iso6709 for p in action.geometry.positions] == read[0]
    assert ([p.iso6709 for p in moved.positions] if moved else []) == read[1]
    assert [told(bulletin)[0], told(bulletin)[2]] == BESIDE


def test_a_command_is_no_more_of_the_places_above_it() -> None:
    bulletin = parse(f"{HEAD}INSERT\nrock\nAT: {P}\n{FOOT}")
    assert told(bulletin) == BESIDE
    assert "item-without-position" in errors(bulletin)


@pytest.mark.parametrize(
    "key",
    [
        "INTERNATIONAL: INT 9088", "INT NO: INT 9088", "INT: 9088", "INT CHART: 9088",
        "International number: 9088", "INT No.: 9088", "INTERNATIONAL     INT 9088",
    ],
)  # fmt: skip
def test_an_international_number_has_its_key(key: str) -> None:
    text = HEAD.replace("PREVIOUS", f"{key}\nPREVIOUS")
    chart = parse(text).notices[0].charts[0]
    assert (chart.international, chart.previous_written) == (
        "INT 9088",
        "PREVIOUS NOTICE: 1391/2026",
    )


def test_the_notice_before_stands_below_keys_that_nobody_knows() -> None:
    text = HEAD.replace("PREVIOUS", "SHEET TITLE: Quill\nINTERNATIONAL: none\nPREVIOUS")
    bulletin = parse(text)
    assert bulletin.notices[0].charts[0].previous_written == "PREVIOUS NOTICE: 1391/2026"
    assert codes(bulletin) == set()
