"""Numbers and names behind one kind, and things said to be one each at several places."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, actions_of, codes, errors, told


def named(bulletin: Bulletin) -> list[tuple[str, str | None, str | None, bool]]:
    return [
        (
            one.feature.kind,
            one.feature.name,
            one.feature.light.written if one.feature.light else None,
            one.usable,
        )
        for one in actions_of(bulletin)
    ]


@pytest.mark.parametrize(
    ("words", "kind", "names", "light"),
    [
        (
            f"special light-buoys, Fl.Y.3s:\n  No 1 {P}\n  No 2 {Q}",
            "buoy_special",
            "No 1;No 2",
            "Y",
        ),
        (f"special light-buoys, Fl.Y.3s, No 2 {P} and No 4 {Q}", "buoy_special", "No 2;No 4", "Y"),
        (f"special light-buoys (Fl.Y.3s) No 2 {P}, No 4 {Q}", "buoy_special", "No 2;No 4", "Y"),
        (f'special light-buoys, Fl.Y.3s:\n  "A" {P}\n  "B" {Q}', "buoy_special", "A;B", "Y"),
        (f"special light-buoys, Fl.Y.3s: A1, {P}; A2, {Q}", "buoy_special", "A1;A2", "Y"),
        (
            f"special light-buoys, Fl.Y.3s:\n  KARRA {P}\n  ELLORY EAST {Q}",
            "buoy_special",
            "KARRA;ELLORY EAST",
            "Y",
        ),
        (f"the following special buoys: No 1 {P}, No 2 {Q}", "buoy_special", "No 1;No 2", ""),
        (f"platforms: Halcyon A, {P}; Halcyon B, {Q}", "platform", "Halcyon A;Halcyon B", ""),
        (f"anchor berths: No 1, {P}; No 2, {Q}", "anchor_berth", "No 1;No 2", ""),
    ],
)
def test_the_kind_in_front_is_that_of_each(words: str, kind: str, names: str, light: str) -> None:
    bulletin = parse(f"{HEAD}Insert {words}\n")
    shown = "Fl.Y.3s" if light else None
    assert named(bulletin) == [(kind, name, shown, True) for name in names.split(";")]
    assert told(bulletin) == [("insert", kind, [at]) for at in (AT_P, AT_Q)]
    assert codes(bulletin) == set()


@pytest.mark.parametrize(
    "words",
    [
        f"special light-buoys: No 1, Fl.Y.3s {P}; No 2, Fl.Y.5s {Q}",
        f"special light-buoys, No 1 Fl.Y.3s, {P}; No 2 Fl.Y.5s, {Q}",
        f"special light-buoys, Fl.Y.3s No 1, {P} and Fl.Y.5s No 2, {Q}",
    ],
)
def test_each_may_have_a_light_of_its_own(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert {words}\n")
    lights = [("No 1", "Fl.Y.3s"), ("No 2", "Fl.Y.5s")]
    assert named(bulletin) == [("buoy_special", *one, True) for one in lights]


@pytest.mark.parametrize(
    "words",
    [
        # One thing, and a second of which nothing is said.
        f"special light-buoy, Fl.Y.3s, No 2 {P} and No 4 {Q}",
        # A light for all, and one of its own.
        f"special light-buoys, Fl.Y.3s:\n  No 1 {P}\n  No 2, Fl.Y.5s {Q}",
        # The depth is that of the first.
        f"wrecks, depth 5m: No 1 {P}; No 2 {Q}",
        f"special light-buoys, No 1 Fl.Y.3s, {P}; No 2, {Q}",
        # Two kinds in front.
        f"light-buoys, Fl.R.3s, and beacons: No 1 {P}; No 2 {Q}",
        # The number is that of another thing.
        f"light-buoys in line with No 2 {P} and No 4 {Q}",
    ],
)
def test_what_is_not_sure_to_be_of_the_kind_is_held(words: str) -> None:
    actions = actions_of(parse(f"{HEAD}Insert {words}\n"))
    assert not actions[-1].usable


@pytest.mark.parametrize(
    "words",
    [
        f"buoys, SPAR {P}; CAN {Q}",
        f"rocks, DRIES {P}; AWASH {Q}",
        f"light-buoys: VQR {P}; VQG {Q}",
        f"wrecks: Karra Point {P}; Ellory Harbour {Q}",
        f"light-buoys: OUTER {P}; INNER {Q}",
    ],
)
def test_words_that_describe_or_name_a_place_are_no_names(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert {words}\n")
    assert actions_of(bulletin)[1].feature.kind == "unknown"
    assert "feature-unknown" in codes(bulletin)


@pytest.mark.parametrize(
    ("words", "kinds", "names"),
    [
        (f"special buoys No 2 and No 4, {P} and {Q} respectively", "buoy_special", "No 2;No 4"),
        (f"special buoys Nos 2 and 4, in {P} and {Q} respectively", "buoy_special", "No 2;No 4"),
        (f'special buoys "A" and "B", respectively at {P} and {Q}', "buoy_special", "A;B"),
        (f"a wreck and a rock in {P} and {Q}, respectively.", "wreck;rock", ""),
    ],
)
def test_respectively_gives_each_its_place(words: str, kinds: str, names: str) -> None:
    bulletin = parse(f"{HEAD}Insert {words}\n")
    both = kinds.split(";") if ";" in kinds else [kinds, kinds]
    assert told(bulletin) == [("insert", both[0], [AT_P]), ("insert", both[1], [AT_Q])]
    assert [one.feature.name or "" for one in actions_of(bulletin)] == (names or ";").split(";")
    assert codes(bulletin) == set()


def test_respectively_gives_each_its_depth_or_light() -> None:
    bulletin = parse(f"{HEAD}Insert depths 5.2m, 6.3m and 7m at {P}, {Q} and {R} respectively\n")
    depths = [one.feature.depth for one in actions_of(bulletin)]
    assert [str(one.value_m) for one in depths if one] == ["5.2", "6.3", "7"]
    assert [places for _, _, places in told(bulletin)] == [[AT_P], [AT_Q], [AT_R]]
    bulletin = parse(f"{HEAD}Insert light-buoys, Q.R and Q.G, at {P} and {Q} respectively\n")
    assert [one[2] for one in named(bulletin)] == ["Q.R", "Q.G"]


@pytest.mark.parametrize(
    "words",
    [
        f"Insert special buoys Nos 2 and 4 at {P}, {Q} and {R} respectively",
        f"Insert depths 5.2m and 6.3m at {P}, {Q} and {R} respectively",
        f"Insert wreck and rock close E of {P} and {Q} respectively",
        f"Move special buoys No 2 and No 4 from {P} and {Q} to {R} and {P} respectively",
        f"Insert beacons, red and green, at {P} and {Q} respectively",
    ],
)
def test_what_cannot_be_told_apart_is_held(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert told(bulletin) == []
    assert "relation-unclear" in errors(bulletin)
