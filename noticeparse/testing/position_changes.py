"""What may befall a position.

Each function makes another text of it, and says its value anew where the text now states another.
"""

from __future__ import annotations

from hypothesis import assume
from hypothesis import strategies as st

from noticeparse.testing import characters
from noticeparse.testing.generator.coordinates import write_half, write_point
from noticeparse.testing.generator.truth import Coordinate, Point
from noticeparse.testing.written import WrittenPosition

Draw = st.DrawFn

MARKS = "°'′´’\"″"
_LAST = (90, 180)
_OTHER_SIDE = {"N": "S", "S": "N", "E": "W", "W": "E"}


def halves_of(one: WrittenPosition, pattern: str | None = None) -> tuple[str, str]:
    """Latitude and longitude each as written, or by another pattern."""
    lat, lon = (
        write_half(pattern or one.form.half, half, letter=letter)
        for half, letter in zip(one.point, one.letters, strict=True)
    )
    return lat, lon


def _joined(one: WrittenPosition, lat: str, lon: str) -> WrittenPosition:
    return one.saying(lat + one.form.joint + lon + one.form.ending)


def _one_or_both(draw: Draw, one: WrittenPosition, pattern: str) -> WrittenPosition:
    """The same position with one coordinate, or both, by another pattern."""
    lat, lon = halves_of(one)
    other_lat, other_lon = halves_of(one, pattern)
    which = draw(st.sampled_from(("lat", "lon", "both")))
    return _joined(one, lat if which == "lon" else other_lat, lon if which == "lat" else other_lon)


def _with_half(one: WrittenPosition, axis: int, half: Coordinate) -> WrittenPosition:
    """The position with another latitude or longitude, written anew."""
    halves = list(one.point)
    halves[axis] = half
    return WrittenPosition.of(one.form, Point(*halves), one.letters)


def as_it_is(_: Draw, one: WrittenPosition) -> WrittenPosition:
    """No change."""
    return one


def look_alike_marks(draw: Draw, one: WrittenPosition) -> WrittenPosition:
    """One kind of mark as another that looks like it."""
    return one.saying(characters.with_look_alike(draw, one.text, MARKS))


def two_marks_for_seconds(draw: Draw, one: WrittenPosition) -> WrittenPosition:
    """Two marks of minutes for one of seconds."""
    return one.saying(one.text.replace('"', 2 * draw(st.sampled_from("'´’"))))


def other_stop(draw: Draw, one: WrittenPosition) -> WrittenPosition:
    """The decimal stop as another dot."""
    return one.saying(characters.with_other_stop(draw, one.text))


def other_dash(draw: Draw, one: WrittenPosition) -> WrittenPosition:
    """The hyphen as another dash."""
    return one.saying(characters.with_look_alike(draw, one.text, "-"))


def true_minus(_: Draw, one: WrittenPosition) -> WrittenPosition:
    """The hyphen as a minus sign."""
    return one.saying(one.text.replace("-", "−"))


def other_blanks(draw: Draw, one: WrittenPosition) -> WrittenPosition:
    """The blanks as other blanks."""
    return one.saying(characters.with_other_blanks(draw, one.text))


def wrapped(draw: Draw, one: WrittenPosition) -> WrittenPosition:
    """A line end between latitude and longitude."""
    lat, lon = halves_of(one)
    start = one.form.joint.rstrip() + "\n" + draw(st.sampled_from(("", "  ", "        ")))
    return one.saying(lat + start + lon + one.form.ending)


def full_width(_: Draw, one: WrittenPosition) -> WrittenPosition:
    """The figures as wide as letters of East Asian type."""
    return one.saying(characters.with_figures_of(characters.FULL_WIDTH, one.text))


def digit_slip(draw: Draw, one: WrittenPosition) -> WrittenPosition:
    """One figure of a coordinate is another one, and the value is still on the globe."""
    axis = draw(st.integers(0, 1))
    before = one.point[axis]
    slip = draw(st.integers(1, 9)) * 10 ** draw(st.integers(0, before.decimals + 1))
    after = before._replace(steps=before.steps + draw(st.sampled_from((slip, -slip))))
    assume(after.steps >= 0 and -after.exact() <= _LAST[axis])
    return _with_half(one, axis, after)


def other_hemisphere(draw: Draw, one: WrittenPosition) -> WrittenPosition:
    """One letter or sign is the opposite one."""
    at = draw(st.integers(0, 1))
    letters = one.letters[:at] + _OTHER_SIDE[one.letters[at]] + one.letters[at + 1 :]
    return WrittenPosition.of(one.form, one.point, letters)


def decimal_lost(draw: Draw, one: WrittenPosition) -> WrittenPosition:
    """The last decimal of one coordinate is lost."""
    axis = draw(st.integers(0, 1))
    before = one.point[axis]
    return _with_half(one, axis, Coordinate(before.steps // 10, before.unit, before.decimals - 1))


def exchanged(_: Draw, one: WrittenPosition) -> WrittenPosition:
    """Longitude before latitude."""
    lat, lon = halves_of(one)
    return _joined(one, lon, lat)


def degree_sign_lost(draw: Draw, one: WrittenPosition) -> WrittenPosition:
    """The degree sign as the sign of a lost character, or a star."""
    return one.saying(one.text.replace("°", draw(st.sampled_from("\ufffd*"))))


def nought_lost(_: Draw, one: WrittenPosition) -> WrittenPosition:
    """`023-45W` as `23-45W`, which may as well be `123-45W`."""
    lon = one.point.lon
    scale = 60**lon.unit * 10**lon.decimals
    short = _with_half(one, 1, lon._replace(steps=10 * scale + lon.steps % (90 * scale)))
    lat, text = halves_of(short)
    return _joined(short, lat, text.removeprefix("0"))


def minutes_of_60(draw: Draw, one: WrittenPosition) -> WrittenPosition:
    """60 to 99 minutes in one coordinate, or both."""
    figure = str(draw(st.integers(60, 99)))
    return _one_or_both(draw, one, one.form.half.replace("{m}", figure))


def seconds_of_60(draw: Draw, one: WrittenPosition) -> WrittenPosition:
    """60 to 99 seconds in one coordinate, or both."""
    figure = str(draw(st.integers(60, 99)))
    return _one_or_both(draw, one, one.form.half.replace("{s}", figure))


def off_the_globe(draw: Draw, one: WrittenPosition) -> WrittenPosition:
    """A latitude beyond 90, or a longitude beyond 180 degrees."""
    axis = draw(st.integers(0, 1))
    before = one.point[axis]
    scale = 60**before.unit * 10**before.decimals
    steps = draw(st.integers(_LAST[axis] * scale + 1, (100, 1000)[axis] * scale - 1))
    halves = list(one.point)
    halves[axis] = before._replace(steps=steps)
    return one.saying(write_point(one.form, Point(*halves), one.letters))


def hemisphere_lost(draw: Draw, one: WrittenPosition) -> WrittenPosition:
    """One coordinate, or both, without letter or word."""
    bare = one.form.half
    for written in (" {w}", "{h} ", " {h}", "{h}.", "{h}"):
        bare = bare.replace(written, "")
    return _one_or_both(draw, one, bare)


def hemisphere_twice(draw: Draw, one: WrittenPosition) -> WrittenPosition:
    """Two latitudes, or two longitudes."""
    axis = draw(st.sampled_from(("NS", "EW")))
    first, second = (
        write_half(
            one.form.half, half._replace(steps=half.steps // 2), letter=draw(st.sampled_from(axis))
        )
        for half in one.point
    )
    return _joined(one, first, second)


def sign_and_letter(draw: Draw, one: WrittenPosition) -> WrittenPosition:
    """A minus sign before a coordinate that has its letter."""
    return _one_or_both(draw, one, "-" + one.form.half)


def half_lost(draw: Draw, one: WrittenPosition) -> WrittenPosition:
    """One of the two coordinates is not there."""
    return one.saying(draw(st.sampled_from(halves_of(one))))


def figure_lost(draw: Draw, one: WrittenPosition) -> WrittenPosition:
    """A figure as the sign of a lost character, but not the last of a coordinate.

    The last one so lost may leave a coordinate with one decimal less, as `decimal_lost` does.
    """
    halves = list(halves_of(one))
    axis = draw(st.integers(0, 1))
    at = draw(st.sampled_from(characters.figures_of(halves[axis])[:-1]))
    lost = draw(st.sampled_from(characters.LOST))
    halves[axis] = halves[axis][:at] + lost + halves[axis][at + 1 :]
    return _joined(one, *halves)


def letter_for_figure(draw: Draw, one: WrittenPosition) -> WrittenPosition:
    """A nought as O, or a one as l."""
    return one.saying(characters.with_letter_for_figure(draw, one.text))


def figure_split(draw: Draw, one: WrittenPosition) -> WrittenPosition:
    """Something unseen between two figures."""
    return one.saying(characters.with_figure_split(draw, one.text))


def foreign_figures(draw: Draw, one: WrittenPosition) -> WrittenPosition:
    """The figures of a script that is not of the trade."""
    script = draw(st.sampled_from(characters.FOREIGN_SCRIPTS))
    return one.saying(characters.with_figures_of(script, one.text))


def cut_off(draw: Draw, one: WrittenPosition) -> WrittenPosition:
    """The text ends within the longitude, before its letter or word."""
    lat, lon = halves_of(one)
    end = draw(st.integers(1, max(characters.figures_of(lon)) + 1))
    return one.saying(lat + one.form.joint + lon[:end])
