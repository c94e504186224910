"""Positions that can be read in two ways: never read in silence, and no value of their own.

Common practice, no published source: a longitude has three figures of degrees, and a mark or a
point between figures is easily lost.
"""

from __future__ import annotations

import pytest

from noticeparse import NoticeParseError, find_positions, parse, parse_position

HEAD = "12/26 Quill Sound.\nChart 802 [3/26] WGS84, depths in metres\n"
WHOLE = "47°12'.34S 123°45'.67W"

DOUBTFUL = {
    "two figures of longitude": ("47°12'.34S 23°45'.67W", "position-longitude-digits"),
    "one figure of longitude": ("7°12'.34S 3°45'.67W", "position-longitude-digits"),
    "two figures, blanks": ("47 12.34S 23 45.67W", "position-longitude-digits"),
    "two figures, words": ("47 deg 12.34 S, 23 deg 45.67 W", "position-longitude-digits"),
    "degrees or minutes": ("47.12S 123.45W", "position-form-unclear"),
    "seconds or decimals": ("47 12 34S 123 45 40W", "position-form-unclear"),
}


@pytest.mark.parametrize(("text", "code"), DOUBTFUL.values(), ids=DOUBTFUL)
def test_doubt_is_told(text: str, code: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {text}\n")
    assert code in {one.code for one in bulletin.findings}
    with pytest.raises(NoticeParseError) as caught:
        parse_position(text)
    assert caught.value.finding.code == code
    assert find_positions(f"Wreck in {text}.") == []


@pytest.mark.parametrize(
    "text",
    [
        "47°12'.34S 023°45'.67W", "047°12'.34S 047°45'.67W", "5°2.5'N 8°3.5'E",
        "51°28'.60N 0°12'.34W", "47.1234S 123.4567W", "47°12'34\"S 123°45'40\"W",
        "47.12°S 123.45°W",
    ],
)  # fmt: skip
def test_no_doubt(text: str) -> None:
    codes = {one.code for one in parse(f"{HEAD}Insert wreck {text}\n").findings}
    assert not codes & {"position-longitude-digits", "position-form-unclear"}


def test_a_habit_of_writing_no_noughts_is_no_doubt() -> None:
    rows = "\n".join(f"Insert wreck 36°0{n}'.34N 15°4{n}'.67W" for n in range(4))
    codes = [one.code for one in parse(f"{HEAD}{rows}\n").findings]
    assert "position-longitude-digits" not in codes
    mixed = parse(f"{HEAD}{rows}\nInsert rock 36°02'.00N 115°43'.00W\n")
    assert [one.code for one in mixed.findings].count("position-longitude-digits") == 4


def test_a_split_degree_is_no_position() -> None:
    assert find_positions("4 7°12'.34S 123°45'.67W") == []
    assert len(find_positions(f"No 4 {WHOLE}")) == 1


@pytest.mark.parametrize(
    "pair", ["47°12'.34N 123°45'.67W and 47°12'.34S 123°45'.67W",
             "47°12'.34S 123°45'.67W and 47°13'.34S 123°45'.67E"],
)  # fmt: skip
def test_two_hemispheres_in_one_action(pair: str) -> None:
    codes = {one.code for one in parse(f"{HEAD}Insert wreck {pair}\n").findings}
    assert "position-hemisphere-differs" in codes


SOUTH = "Insert wreck 47°12'.34S 123°45'.67W\n"
NORTH_AREA = (
    "Insert marine farm, bounded by 47°12'.34N 123°45'.67W, 47°12'.34N 123°46'.67W, "
    "47°13'.34N 123°46'.67W and 47°13'.34N 123°45'.67W\n"
)
EAST_MOVE = "Move dolphin from 47°12'.34S 123°45'.67E to 47°12'.54S 123°45'.67E\n"
SIDES = {
    "an area among points": SOUTH * 3 + NORTH_AREA,
    "a move among points": SOUTH * 3 + EAST_MOVE,
    "one of each": SOUTH + NORTH_AREA,
    "two of four": SOUTH * 2 + NORTH_AREA * 2,
}


@pytest.mark.parametrize("lines", SIDES.values(), ids=SIDES)
def test_an_item_is_one_witness_of_its_hemisphere(lines: str) -> None:
    found = parse(HEAD + lines).findings
    told = {one.paths[0] for one in found if one.code == "position-hemisphere-differs"}
    items = lines.splitlines()
    odd = {i for i, line in enumerate(items) if "W" not in line or "S " not in line}
    assert {f"/notices/0/charts/0/actions/{at}" for at in odd} <= told
    is_decided = len(odd) == 1 and len(items) > 2
    assert len(told) == (len(odd) if is_decided else len(items))


@pytest.mark.parametrize(
    "places",
    [
        ("51°00'.00N 001°20'.00W", "51°00'.00N 001°10'.00E"),
        ("00°20'.00N 103°20'.00E", "00°10'.00S 103°10'.00E"),
        ("18°00'.00S 179°20'.00E", "18°00'.00S 179°10'.00W"),
    ],
    ids=["Greenwich", "equator", "180 degrees"],
)
def test_both_sides_of_a_line_that_is_near(places: tuple[str, str]) -> None:
    lines = "".join(f"Insert wreck {place}\n" for place in places)
    codes = [one.code for one in parse(HEAD + lines).findings]
    assert "position-hemisphere-differs" not in codes


@pytest.mark.parametrize(
    ("words", "quality"),
    [
        ("in approximate position", "approximate"), ("about", "approximate"),
        ("in estimated position", "approximate"), ("DR position", "approximate"),
        ("in an approximate position", "approximate"), ("in doubtful position", "doubtful"),
        ("in position", None), ("in", None),
    ],
)  # fmt: skip
def test_words_in_front_give_the_quality(words: str, quality: str | None) -> None:
    (action,) = parse(f"{HEAD}Insert wreck {words} {WHOLE}\n").notices[0].charts[0].actions
    assert [one.quality for one in action.geometry.positions] == [quality]
    assert action.feature.kind == "wreck"
    assert action.feature.attributes == {}


@pytest.mark.parametrize("text", ["46°5S.20'S 127°42.11'W", "46-5S.20S 127-42.11W"])
def test_a_letter_for_a_figure_of_the_minutes_loses_no_second_item(text: str) -> None:
    bulletin = parse(f"{HEAD}Delete the wreck in {text}.\nInsert rock {WHOLE}\n")
    assert [one.usable for one in bulletin.notices[0].charts[0].actions] == [False, True]
    errors = [one.code for one in bulletin.findings if one.severity == "error"]
    assert errors == ["position-hemisphere-conflict"]
