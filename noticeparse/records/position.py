"""A geographical position as read."""

from fractions import Fraction
from typing import Literal

from pydantic import Field

from noticeparse.spans import Record, Span

Via = Literal["stated", "reference", "offset"]
PositionQuality = Literal["approximate", "doubtful", "reported"]


class Position(Record):
    """One position; `iso6709` holds the exact value in the units in which it was written."""

    lat: float = Field(
        description="degrees, south negative: the number nearest to the exact value"
    )
    lon: float = Field(description="degrees, west negative: the number nearest to the exact value")
    iso6709: str = Field(
        description="the exact value in ISO 6709 form, in the units and with the digits written",
        examples=["-4712.34-12345.67/"],
    )
    written: str = Field(description="as in the text; for a reference the words of the reference")
    resolution_m: float = Field(description="half the last written digit, north-south, metres")
    label: str | None = Field(description="letter written before it or in the reference")
    via: Via = Field(description="stated, taken over from a reference, or worked out")
    quality: PositionQuality | None = Field(description="where the coordinate itself carries it")
    span: Span

    def exact(self) -> tuple[Fraction, Fraction]:
        """Latitude and longitude in degrees, exactly as written (S and W negative).

        A worked-out position has no exact value; its digits are those its resolution supports.
        """
        body = self.iso6709.rstrip("/")
        cut = max(body.rfind("+"), body.rfind("-"))
        return _degrees(body[:cut], 2), _degrees(body[cut:], 3)


def _degrees(written: str, width: int) -> Fraction:
    sign = -1 if written[0] == "-" else 1
    digits = written[1:]
    whole, _, decimals = digits.partition(".")
    fields = [whole[:width], *(whole[i : i + 2] for i in range(width, len(whole), 2))]
    value = Fraction(0)
    for place, field in enumerate(fields):
        last = place == len(fields) - 1
        figure = field + "." + decimals if last and decimals else field
        value += Fraction(figure) / 60**place
    return sign * value
