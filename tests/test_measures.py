"""A figure in metres beside an object: the depth over it, or something else.

Common practice, no published source; S-57 VALSOU is the least depth over the object.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from noticeparse import NoticeParseError, parse, parse_depth
from noticeparse.records import Bulletin

HEAD = "12/26 Quill Sound.\nChart 802 [3/26] WGS84, depths in metres\n"
P = "46-00.00S 122-00.00W"


def read(words: str) -> tuple[Decimal | None, str | None, bool, set[str]]:
    bulletin: Bulletin = parse(f"{HEAD}Insert {words}\n")
    (action,) = bulletin.notices[0].charts[0].actions
    codes = {one.code for one in bulletin.findings}
    depth = action.feature.depth
    value = depth.value_m if depth else None
    return value, depth.quality if depth else None, action.usable, codes


OTHER = (
    "wreck, length 86m", "wreck, beam 12m", "wreck, draught 8.6m",
    "wreck of 35m fishing vessel", "wreck, 35m trawler", "obstruction, diameter 3m",
    "obstruction, 3m across", "obstruction, 3m proud of seabed", "obstruction, 3m off seabed",
    "shoal, 500m diameter", "foul ground, area 12m wide", "wreck, ±20m",
)  # fmt: skip


@pytest.mark.parametrize("words", OTHER)
def test_a_dimension_is_no_depth(words: str) -> None:
    value, _, _, codes = read(f"{words} {P}")
    assert value is None
    assert "feature-figure-unread" in codes


@pytest.mark.parametrize("behind", ["+/-50m.", "within 50m."])
def test_how_sure_a_position_is_gives_no_depth(behind: str) -> None:
    value, _, _, codes = read(f"wreck {P} {behind}")
    assert value is None
    assert "feature-figure-unread" in codes


AROUND = (
    "wreck in 35 metres of water", "wreck in 35m", "wreck, general depth 35m",
    "wreck, charted depth 35m", "wreck, water depth 35m", "wreck, depth in vicinity 35m",
    "wreck (depth 35m in vicinity)",
)  # fmt: skip


@pytest.mark.parametrize("words", AROUND)
def test_the_water_around_gives_no_depth(words: str) -> None:
    value, _, _, codes = read(f"{words} {P}")
    assert value is None
    assert "depth-of-surroundings" in codes


def test_the_water_around_told_behind_the_place() -> None:
    value, _, _, codes = read(f"wreck {P}. The depth in the vicinity is 35m.")
    assert value is None
    assert "depth-of-surroundings" in codes


@pytest.mark.parametrize(
    "words", ["depth <20m", "< 20m", "≥20m", ">20m", "20m+", "depth 20m +", "depth ≤ 20m"]
)
def test_a_sign_of_a_bound_forbids_the_depth(words: str) -> None:
    value, _, usable, codes = read(f"wreck, {words} {P}")
    assert value is None
    assert not usable
    assert "depth-bound-only" in codes


@pytest.mark.parametrize("text", ["8m+", "8.6m+", "8m +", "<8m", "≥ 8m"])
def test_the_value_alone_with_a_sign_of_a_bound(text: str) -> None:
    with pytest.raises(NoticeParseError, match="bound"):
        parse_depth(text)


def test_a_plus_in_front_still_dries() -> None:
    assert parse_depth("+8m").value_m == -8


@pytest.mark.parametrize(
    "words",
    ["rock exposed 1.2m at LW", "rock, visible at low water 1.2m",
     "wreck, mast visible 2m at low water"],
)  # fmt: skip
def test_what_stands_above_the_water_is_no_depth(words: str) -> None:
    value, _, usable, codes = read(f"{words} {P}")
    assert value is None
    assert not usable
    assert "depth-above-water" in codes


@pytest.mark.parametrize(
    ("words", "quality"),
    [
        ("depth 8.6m, SD", "doubtful sounding"),
        ("wreck, depth 8.6m, SD", "doubtful sounding"),
        ("doubtful depth 8.6m", "doubtful sounding"),
        ("depth 8.6m", None),
    ],
)
def test_a_depth_in_doubt(words: str, quality: str | None) -> None:
    assert read(f"{words} {P}")[:2] == (Decimal("8.6"), quality)


@pytest.mark.parametrize(
    "words", ["depth about 12m", "approx depth 12m", "estimated depth 12m", "wreck, ~12m"]
)
def test_an_approximate_depth_is_told(words: str) -> None:
    value, _, _, codes = read(f"{words} {P}")
    assert value == 12
    assert "depth-approximate" in codes


@pytest.mark.parametrize(
    "words",
    [
        "wreck 8.6m", "wreck, 8.6m", "wreck, depth 8.6m", "8.6m wreck",
        "dangerous wreck, least depth 8.6m (2026)", "obstruction of 8.6m, PA",
        "rock, 8.6m reported", "wreck, least depth 8.6m in position",
    ],
)  # fmt: skip
def test_a_figure_bare_or_with_its_word_is_the_depth(words: str) -> None:
    value, _, usable, codes = read(f"{words} {P}")
    assert value == Decimal("8.6")
    assert usable
    assert not {code for code in codes if code.startswith(("depth-", "feature-"))}


@pytest.mark.parametrize("words", ["rock, -0.4m", "rock -0.4m", "wreck, −1.2m", "chimney, -20m"])
def test_a_minus_at_a_bare_figure_is_not_lost(words: str) -> None:
    value, _, usable, codes = read(f"{words} {P}")
    assert (value, usable) == (None, False)
    assert "depth-minus" in codes


def test_a_dash_before_a_figure_is_no_minus() -> None:
    assert read(f"wreck - 5m {P}")[:3] == (Decimal(5), None, True)


@pytest.mark.parametrize("datum", ["chart datum", "CD", "LAT", "the level of chart datum"])
def test_a_figure_above_datum_dries(datum: str) -> None:
    value, _, usable, _ = read(f"wreck {P}, 0.4m above {datum}")
    assert (value, usable) == (Decimal("-0.4"), True)
    assert "depth-and-drying" in read(f"depth 4.1m above {datum}, {P}")[3]


@pytest.mark.parametrize(
    "words",
    [
        "wreck, 0.4m above LAT", "depth 4.1m above LAT", "rock 2m (above water)",
        "rock, above water, 2m", "rock, least depth 0.4m above",
    ],
)  # fmt: skip
def test_what_stands_above_the_water_has_no_depth(words: str) -> None:
    # In front of a latitude `LAT` is taken for the word of it.
    value, _, usable, codes = read(f"{words} {P}")
    assert (value, usable) == (None, False)
    assert "depth-above-water" in codes


@pytest.mark.parametrize(
    "words",
    [
        "wreck, in depth 12m", "wreck in a depth of 12m", "wreck lying in depths of 12m",
        "wreck, seabed depth 12m", "obstruction, bottom depth 12m",
    ],
)  # fmt: skip
def test_the_depth_of_the_ground_is_not_that_over_an_object(words: str) -> None:
    value, _, _, codes = read(f"{words} {P}")
    assert value is None
    assert "depth-of-surroundings" in codes


def test_a_drying_height_of_a_dry_rock_stays() -> None:
    assert read(f"rock, dry 0.4m, {P}")[0] == Decimal("-0.4")


def test_a_least_depth_is_over_the_object_whatever_leads_to_it() -> None:
    assert read(f"wreck in least depth 9m {P}")[0] == 9
