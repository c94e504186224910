"""What the record of a position says beside its value, and positions in lists, lines and prose."""

from __future__ import annotations

from fractions import Fraction

import pytest

from noticeparse import find_positions, parse, parse_position
from noticeparse.records import Action
from tests.short_notices import HEAD_WITHOUT_UNIT as HEAD
from tests.short_notices import actions_of

RECORDS = {
    # text: iso6709, resolution in metres (half the last figure; one minute is 1852 m)
    "47-12S 123-45W": ("-4712-12345/", 930.0),
    "47-12.3S 123-45.6W": ("-4712.3-12345.6/", 93.0),
    "47-12.34S 123-45.67W": ("-4712.34-12345.67/", 9.3),
    "47°12.345'S 123°45.678'W": ("-4712.345-12345.678/", 0.93),
    "47-12.30S 123-45.60W": ("-4712.30-12345.60/", 9.3),
    "47°12'20\"S 123°45'40\"W": ("-471220-1234540/", 15.0),
    "47°12'20.4\"S 123°45'40.2\"W": ("-471220.4-1234540.2/", 1.5),
    "47°S 123°W": ("-47-123/", 56000.0),
    "47.21°S 123.76°W": ("-47.21-123.76/", 560.0),
    "-47.20567, -123.76117": ("-47.20567-123.76117/", 0.56),
    "-47.20567-123.76117/": ("-47.20567-123.76117/", 0.56),
    "-4712.34-12345.67/": ("-4712.34-12345.67/", 9.3),
    "+4712.34+00845.67/": ("+4712.34+00845.67/", 9.3),
    "4712.34N 00845.67E": ("+4712.34+00845.67/", 9.3),
    "5-02.50N 008-03.50E": ("+0502.50+00803.50/", 9.3),
    "0°00.00'S 0°00.00'W": ("+0000.00+00000.00/", 9.3),
    "00-00.50S 000-00.50W": ("-0000.50-00000.50/", 9.3),
    "47-12.34S 180-00.00E": ("-4712.34-18000.00/", 9.3),
    "47-12.34S 180-00.00W": ("-4712.34-18000.00/", 9.3),
    # The coarser of the two counts where they differ.
    "47-12.3S 123-45.67W": ("-4712.3-12345.67/", 93.0),
    "47-12.34S 123-45W": ("-4712.34-12345/", 930.0),
}


@pytest.mark.parametrize(("text", "record"), RECORDS.items(), ids=RECORDS)
def test_digits_and_resolution(text: str, record: tuple[str, float]) -> None:
    position = parse_position(text)
    assert (position.iso6709, position.resolution_m) == record


def test_both_sides_of_the_180th_meridian_are_one() -> None:
    east, west = (parse_position(f"47-12.34S 180-00.00{letter}") for letter in "EW")
    assert (east.lat, east.lon, east.iso6709) == (west.lat, west.lon, west.iso6709)
    assert abs(east.lon) == 180.0


def test_nought_has_no_sign() -> None:
    position = parse_position("0°00.00'S 0°00.00'W")
    assert (str(position.lat), str(position.lon)) == ("0.0", "0.0")


def test_words_and_place_are_those_of_the_original() -> None:
    text = "A wreck\r\n in 47º 12´·34S.,\u00a0123º 45´·67W."
    (position,) = find_positions(text)
    written = text[position.span.start : position.span.end]
    assert written.startswith("47º")
    assert "67W" in written
    assert position.written == " ".join(written.split())
    assert (position.span.line, position.span.column) == (2, 5)


QUALITIES = {
    "47-12.34S 123-45.67W (PA)": "approximate",
    "47-12.34S 123-45.67W PA": "approximate",
    "47-12.34S 123-45.67W, position approximate": "approximate",
    "47-12.34S 123-45.67W (PD)": "doubtful",
    "47-12.34S 123-45.67W (position doubtful)": "doubtful",
    "47-12.34S 123-45.67W (rep)": "reported",
}


@pytest.mark.parametrize(("text", "quality"), QUALITIES.items(), ids=QUALITIES)
def test_quality_of_a_position_in_an_action(text: str, quality: str) -> None:
    (action,) = actions_of(parse(f"{HEAD}Insert wreck   {text}\n"))
    (position,) = action.geometry.positions
    assert position.quality == quality
    assert action.feature.status == []


@pytest.mark.parametrize(("text", "quality"), QUALITIES.items(), ids=QUALITIES)
def test_quality_of_a_position_alone(text: str, quality: str) -> None:
    assert parse_position(text).quality == quality


def iso_of(action: Action) -> list[str]:
    return [position.iso6709 for position in action.geometry.positions]


LISTS = {
    "degrees once": (
        "buoy in positions 47° 12'.34S 123° 45'.67W, 12'.90S 46'.20W and 13'.15S 46'.80W",
        ["-4712.34-12345.67/", "-4712.90-12346.20/", "-4713.15-12346.80/"],
    ),
    "longitude alone": (
        "buoy in positions 47° 12'.34S 123° 45'.67W and 46'.20W",
        ["-4712.34-12345.67/", "-4712.34-12346.20/"],
    ),
    "line": (
        "submarine cable joining: 47-12.34S 123-45.67W 47-13.34S 123-46.67W 47-14.34S 123-47.67W",
        ["-4712.34-12345.67/", "-4713.34-12346.67/", "-4714.34-12347.67/"],
    ),
    "ring closed in the text": (
        "restricted area, bounded by 47-12.34S 123-45.67W, 47-13.34S 123-45.67W, "
        "47-13.34S 123-46.67W, 47-12.34S 123-45.67W",
        ["-4712.34-12345.67/", "-4713.34-12345.67/", "-4713.34-12346.67/"],
    ),
    "across the antimeridian": (
        "submarine cable joining 46-59.50S 179-58.00E, 47-00.50S 179-57.00W",
        ["-4659.50+17958.00/", "-4700.50-17957.00/"],
    ),
}


@pytest.mark.parametrize(("words", "expected"), LISTS.values(), ids=LISTS)
def test_list_of_positions(words: str, expected: list[str]) -> None:
    bulletin = parse(f"{HEAD}Insert {words}\n")
    (action,) = actions_of(bulletin)
    assert iso_of(action) == expected
    assert action.usable


def test_minutes_past_the_next_degree_are_flagged() -> None:
    # `59'.34 … 00'.90` may be the minutes of the next degree: 48 degrees, not 47.
    text = f"{HEAD}Insert buoy in positions 47° 59'.34S 123° 45'.67W, 00'.90S 46'.20W\n"
    at = text.index("00'.90S")
    assert [
        finding.code
        for finding in parse(text).findings
        if finding.severity != "info"
        and finding.span
        and finding.span.start <= at < finding.span.end
    ]


def test_three_figures_of_latitude_are_flagged() -> None:
    bulletin = parse(f"{HEAD}Insert wreck   047-12.34S 123-45.67W\n")
    assert [f.code for f in bulletin.findings if f.code.startswith("position-")]


def test_difference_of_decimals_is_flagged_and_read() -> None:
    bulletin = parse(f"{HEAD}Insert wreck   47-12.3S 123-45.67W\n")
    (action,) = actions_of(bulletin)
    assert action.usable
    assert iso_of(action) == ["-4712.3-12345.67/"]
    assert [f.code for f in bulletin.findings] == ["position-precision-differs"]


def test_exchanged_pair_is_read_with_a_warning() -> None:
    bulletin = parse(f"{HEAD}Insert wreck   123-45.67W 47-12.34S\n")
    assert iso_of(actions_of(bulletin)[0]) == ["-4712.34-12345.67/"]
    assert [f.code for f in bulletin.findings] == ["position-exchanged"]


PROSE = {
    "plain": "The buoy in 47-12.34S 123-45.67W is unlit.",
    "brackets": "The buoy (47-12.34S 123-45.67W) is unlit.",
    "square brackets": "The buoy [47-12.34S 123-45.67W] is unlit.",
    "close bracket and stop": "The buoy is unlit (in 47-12.34S, 123-45.67W).",
    "quotation marks": 'The buoy "Quill" 47-12.34S 123-45.67W, is unlit.',
    "end of sentence": "The buoy is unlit in 47-12.34S 123-45.67W.",
    "before a compass point": "The buoy in 47-12.34S 123-45.67W, W of the pier, is unlit.",
}


@pytest.mark.parametrize("sentence", PROSE.values(), ids=PROSE)
def test_position_in_prose(sentence: str) -> None:
    exact = (-47 - Fraction("12.34") / 60, -123 - Fraction("45.67") / 60)
    assert [position.exact() for position in find_positions(sentence)] == [exact]
    notice = parse(f"2417(T)/26\nQuill Sound - Buoy.\n{sentence}\n").notices[0]
    assert [p.exact() for remark in notice.remarks for p in remark.positions] == [exact]


@pytest.mark.parametrize("stray", ["6", ".6", "4c", "12"])
def test_halves_with_a_figure_between_are_no_position_in_prose(stray: str) -> None:
    sentence = f"A wreck lies in 46-13.05S {stray} 123-44.20W, dangerous to navigation."
    assert find_positions(sentence) == []
    bulletin = parse(f"2417(T)/26\nQuill Sound - Wreck.\n{sentence}\n")
    assert not any(remark.positions for remark in bulletin.notices[0].remarks)
    assert {one.code for one in bulletin.findings if one.severity == "error"} == {
        "position-half-missing"
    }


def test_a_bearing_at_the_end_of_a_paragraph_is_no_broken_position() -> None:
    # The same words must read the same, however much stands in front of them.
    before = "The work goes on as before.\n" * 90
    for words in (before, ""):
        text = f"2417(T)/26\nQuill Sound.\n{words}The leading line is 137°\n\nThe light is out.\n"
        assert [finding.code for finding in parse(text).findings] == []
