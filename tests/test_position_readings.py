"""What the readers of positions hand on beside a value: places, words, what forbids a value."""

from __future__ import annotations

import pytest

from noticeparse.faults import Fault
from noticeparse.readers.coordinates import Coordinate, read_coordinate, read_coordinate_in
from noticeparse.readers.positions import (
    Point,
    PointReading,
    join_coordinates,
    read_signed,
    read_signed_in,
    share_latitude,
)
from noticeparse.readers.whole_positions import read_whole_position


def point_of(lat: str, lon: str) -> Point:
    reading = join_coordinates(
        read_coordinate("COORDINATE", lat, 0), read_coordinate("COORDINATE", lon, 20), "", None
    )
    assert reading.point is not None
    return reading.point


def minutes(text: str, start: int = 40) -> Coordinate:
    return read_coordinate("COORDINATE_MINUTES", text, start)


class TestSigned:
    """Pairs with signs: the whole of the text is their place and their words."""

    TEXT = "-4712.34-12345.67/"

    def test_place_of_a_point(self) -> None:
        reading = read_signed(self.TEXT, 7)
        assert (reading.start, reading.end, reading.faults) == (7, 25, ())
        assert reading.point is not None
        assert (reading.point.start, reading.point.end) == (7, 25)
        assert reading.point.iso6709 == self.TEXT

    def test_one_half_is_no_pair(self) -> None:
        fault = Fault("position-unreadable", 5, 11, {"written": "-47.2/"})
        assert read_signed("-47.2/", 5) == PointReading(None, (fault,), 5, 11)

    def test_height_and_reference_system_are_let_be(self) -> None:
        point = read_signed("-471220.4-1234540.2+12.5CRSWGS_84/", 0).point
        assert point is not None
        assert point.iso6709 == "-471220.4-1234540.2/"

    @pytest.mark.parametrize("text", ["-4712,34-12345,67/", TEXT])
    def test_decimal_sign(self, text: str) -> None:
        point = read_signed(text, 0).point
        assert point is not None
        assert point.iso6709 == self.TEXT

    def test_a_fault_of_one_half_is_one_of_the_whole(self) -> None:
        text = "-4772.34-12345.67/"
        values = {"written": text, "figure": "72.34"}
        fault = Fault("position-minutes-out-of-range", 7, 25, values)
        assert read_signed(text, 7) == PointReading(None, (fault,), 7, 25)

    def test_a_fault_of_the_pair(self) -> None:
        text = "-4712.3-12345.67/"
        reading = read_signed(text, 7)
        fault = Fault("position-precision-differs", 7, 24, {"written": text})
        assert reading.faults == (fault,)
        assert reading.point is not None

    def test_decimals_without_a_solidus(self) -> None:
        point = read_signed("+47.20567, -123.76117", 0).point
        assert point is not None
        assert point.iso6709 == "+47.20567-123.76117/"

    def test_behind_a_lost_figure(self) -> None:
        text = "\ufffd7.20567, -123.76117"
        fault = Fault("position-unreadable", 1, 21, {"written": text[1:]})
        assert read_signed_in(text, 1, 21) == PointReading(None, (fault,), 1, 21)
        assert read_signed_in(f" {text[1:]}", 1, 21).point is not None


class TestSharedDegrees:
    """Degrees, or a latitude, taken over from the point before."""

    BEFORE = point_of("47-12.34S", "123-45.67W")

    def test_longitude_alone(self) -> None:
        reading = share_latitude(minutes("46'.20W"), self.BEFORE)
        assert (reading.start, reading.end) == (40, 47)
        assert [fault.code for fault in reading.faults] == ["position-latitude-shared"]
        assert reading.point is not None
        assert (reading.point.start, reading.point.end) == (40, 47)
        assert reading.point.iso6709 == "-4712.34-12346.20/"

    @pytest.mark.parametrize(
        ("lat", "is_doubtful"),
        [("42'.34S", False), ("43'.34S", True), ("12'.00S", False), ("00'.10S", False)],
    )
    def test_more_than_half_a_degree_away(self, lat: str, is_doubtful: bool) -> None:
        reading = join_coordinates(minutes(lat), minutes("46'.20W", 50), "", self.BEFORE)
        codes = [fault.code for fault in reading.faults]
        assert codes == ["position-shared-degrees-doubtful"] * is_doubtful

    def test_whole_coordinates_are_not_held_against_those_before(self) -> None:
        lat, lon = (read_coordinate("COORDINATE", one, 40) for one in ("47-59.00S", "123-01.00W"))
        assert join_coordinates(lat, lon, "", self.BEFORE).faults == ()

    def test_degrees_before_without_minutes_cannot_be_left(self) -> None:
        before = point_of("47.20S", "123.70W")
        reading = join_coordinates(minutes("59'.34S"), minutes("46'.20W", 50), "", before)
        assert reading.point is not None
        assert reading.faults == ()

    def test_minutes_without_degrees_before(self) -> None:
        reading = join_coordinates(minutes("12'.34S"), minutes("46'.20W", 50), "both", None)
        fault = Fault("position-shared-degrees-unknown", 40, 57, {"written": "both"})
        assert reading == PointReading(None, (fault,), 40, 57)


class TestRefused:
    """A coordinate that is refused has no value, and its fault the place of its words."""

    def test_record(self) -> None:
        values = {"written": "47-72.34S", "figure": "72.34"}
        fault = Fault("position-minutes-out-of-range", 9, 18, values)
        refused = Coordinate(None, 1, (), "", 0, "47-72.34S", 9, (fault,))
        assert read_coordinate("COORDINATE", "47-72.34S", 9) == refused
        assert not refused.is_readable

    @pytest.mark.parametrize(
        ("text", "axis"),
        [
            ("S47°12.34'E", "latitude"), ("W123°45.67'S", "longitude"),
            ("47°12.34'S W", "longitude"), ("123°45.67'W S", "latitude"),
        ],
    )  # fmt: skip
    def test_letter_in_front_or_else_the_last_says_the_axis(self, text: str, axis: str) -> None:
        (fault,) = read_coordinate("COORDINATE_DOUBTFUL", text, 0).faults
        assert fault.code == "position-hemisphere-conflict"
        assert fault.values["axis"] == axis

    @pytest.mark.parametrize("lead", ["\ufffd", "?", "#", "4\ufffd ", "4? ", "\ufffd? "])
    def test_behind_a_lost_figure(self, lead: str) -> None:
        text = f"wreck {lead}7-12.34S"
        start, end = len(text) - 8, len(text)
        fault = Fault("position-unreadable", start, end, {"written": "7-12.34S"})
        assert read_coordinate_in(text, "COORDINATE", start, end).faults == (fault,)

    @pytest.mark.parametrize("lead", ["", "a wreck? ", "\ufffd ", "4 "])
    def test_not_behind_one(self, lead: str) -> None:
        text = f"{lead}47-12.34S"
        start, end = len(lead), len(text)
        assert read_coordinate_in(text, "COORDINATE", start, end).is_readable

    @pytest.mark.parametrize(
        ("text", "is_read"),
        [
            ("47\ufffd12.34'S", True), ("123\ufffd45.67'W", True), ("47\ufffd12'20.4\"S", True),
            ("4\ufffd12.34'S", False), ("12\ufffd45.67'W", False), ("47\ufffd2.34'S", False),
            ("47\ufffd12'2.4\"S", False), ("47.2056\ufffdS", True), ("7.2056\ufffdS", False),
        ],
    )  # fmt: skip
    def test_symbol_lost_beside_all_its_figures(self, text: str, is_read: bool) -> None:
        found = read_coordinate("COORDINATE", text, 0)
        assert found.is_readable == is_read
        assert [one.code for one in found.faults] == [
            "position-symbol-lost" if is_read else "position-unreadable"
        ]


@pytest.mark.parametrize("lead", ["", " "])
def test_pair_without_letters_is_told_where_it_stands(lead: str) -> None:
    text = "47 12.34, 123 45.67"
    start, end = len(lead), len(lead + text)
    fault = Fault("position-hemisphere-missing", start, end, {"written": text})
    assert read_whole_position(lead + text) == PointReading(None, (fault,), start, end)


def test_signed_pair_is_told_where_it_stands() -> None:
    reading = read_whole_position("  -4712.34-12345.67/")
    assert (reading.start, reading.end) == (2, 20)
