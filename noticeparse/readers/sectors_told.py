"""Sectors whose colour stands in the name of what changes: `white sector to 045°-060°`.

In come the sectors of a new value and the colours named ahead of it; out come the sectors with
these colours, and whether they are all that the light has.  Which sectors it has besides is not
looked up here.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.records.light import LightColour, Sector


def with_told(
    sectors: Sequence[Sector], colours: Sequence[LightColour], visibility: str | None
) -> list[Sector]:
    """The sectors with what is named ahead; none where the names do not fit them.

    `white and red sectors to 045°-060° and 060°-100°` name them in turn, and `white sector to R
    045°-060°` may be any of two things.
    """
    if visibility is not None and any(one.colour or one.visibility for one in sectors):
        return []
    if visibility is not None:
        return [one.model_copy(update={"visibility": visibility}) for one in sectors]
    if not colours:
        return list(sectors)
    if any(one.colour not in (None, *colours) for one in sectors):
        return []
    if len(colours) == 1:
        return [one.model_copy(update={"colour": colours[0]}) for one in sectors]
    if all(one.colour for one in sectors):
        return list(sectors)
    if len(colours) != len(sectors) or any(one.colour for one in sectors):
        return []
    return [
        one.model_copy(update={"colour": colour})
        for one, colour in zip(sectors, colours, strict=True)
    ]


def is_part_of_circle(sectors: Sequence[Sector], *, is_one: bool, is_of_one_colour: bool) -> bool:
    """Whether a list of sectors may be a part of those of the light, and not all of them."""
    widths = [(one.to_deg - one.from_deg + 360) % 360 or 360 for one in sectors]
    if sum(widths) >= 360:
        return False
    return is_one if is_of_one_colour or len(sectors) > 1 else True
