"""Texts with what they state, exactly: what the strategies draw and the mutations damage."""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction

from noticeparse.testing.generator import Truth
from noticeparse.testing.generator.coordinates import Form, write_point
from noticeparse.testing.generator.truth import Coordinate, Depth, Light, Point


@dataclass(frozen=True, slots=True)
class WrittenPosition:
    """A position as written in `form`, and its exact value.

    `point` counts whole steps of the last digit written, away from the equator and the prime
    meridian; `letters` are the two hemispheres, `"SW"`.
    """

    text: str
    form: Form
    point: Point
    letters: str

    @classmethod
    def of(cls, form: Form, point: Point, letters: str) -> WrittenPosition:
        """The position written in a form."""
        return cls(write_point(form, point, letters), form, point, letters)

    @property
    def exact(self) -> tuple[Fraction, Fraction]:
        """Latitude and longitude in degrees, exactly; south and west negative.

        The 180th meridian is west (ISO 6709).
        """
        lat, lon = (
            -one.exact() if letter in "NE" else one.exact()
            for one, letter in zip(self.point, self.letters, strict=True)
        )
        return lat, -lon if lon == 180 else lon

    @property
    def iso6709(self) -> str:
        """The same in ISO 6709 form, in the unit and with the digits written."""
        signs = ["-" if value < 0 else "+" for value in self.exact]
        return "".join(map(_iso_half, signs, self.point, (2, 3))) + "/"

    def saying(self, text: str) -> WrittenPosition:
        """The same value in another text."""
        return replace(self, text=text)


def _iso_half(sign: str, one: Coordinate, width: int) -> str:
    degrees, minutes, seconds, decimals = one.fields()
    fields = (f"{minutes:02d}", f"{seconds:02d}")[: one.unit]
    return f"{sign}{degrees:0{width}d}{''.join(fields)}" + (f".{decimals}" if decimals else "")


@dataclass(frozen=True, slots=True)
class WrittenLight:
    """A light's character as written, and what it says: seconds, metres, nautical miles."""

    text: str
    light: Light

    def saying(self, text: str) -> WrittenLight:
        """The same character in another text."""
        return replace(self, text=text)


@dataclass(frozen=True, slots=True)
class WrittenDepth:
    """A depth as written, and what it says: metres, drying heights negative."""

    text: str
    depth: Depth

    def saying(self, text: str) -> WrittenDepth:
        """The same depth in another text."""
        return replace(self, text=text)


@dataclass(frozen=True, slots=True)
class WrittenBulletin:
    """A text of one notice or several, and all the actions in it."""

    text: str
    truth: Truth

    def saying(self, text: str, lines: dict[int, int] | None = None) -> WrittenBulletin:
        """The same actions in another text; `lines` tells where each line of the old one went."""
        if lines is None:
            return replace(self, text=text)
        notices = [
            replace(
                notice,
                line=lines[notice.line],
                actions=[replace(action, line=lines[action.line]) for action in notice.actions],
            )
            for notice in self.truth.notices
        ]
        return WrittenBulletin(text, replace(self.truth, notices=notices))


Written = WrittenPosition | WrittenLight | WrittenDepth | WrittenBulletin
