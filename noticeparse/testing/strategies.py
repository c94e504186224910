"""Hypothesis strategies: texts with what they state, exactly.

What an office may write is drawn by `noticeparse.testing.generator`; its dice are Hypothesis', so
that a failing text shrinks.  Positions are drawn here, since a shrunk position should be a plain
one.
"""

from __future__ import annotations

from collections.abc import Sequence
from random import Random

from hypothesis import strategies as st

from noticeparse.testing.generator import ALL
from noticeparse.testing.generator import depths as generated_depths
from noticeparse.testing.generator import lights as generated_lights
from noticeparse.testing.generator.coordinates import FORMS, RARE_FORMS, Form
from noticeparse.testing.generator.layouts import write_bulletin
from noticeparse.testing.generator.truth import Coordinate, Point
from noticeparse.testing.written import (
    WrittenBulletin,
    WrittenDepth,
    WrittenLight,
    WrittenPosition,
)

ALL_FORMS: tuple[Form, ...] = FORMS + RARE_FORMS
"""Every way to write a position, the usual ones first."""

_GLOBE = ((0, 90), (0, 180))
_ISLANDS = ((46, 49), (122, 128))


@st.composite
def positions(
    draw: st.DrawFn, *, forms: Sequence[Form] = ALL_FORMS, is_at_islands: bool = False
) -> WrittenPosition:
    """A position anywhere on the globe, poles and the 180th meridian included, in one of `forms`.

    Gives a `WrittenPosition`: the text, its exact value in degrees as two fractions (`exact`), and
    its ISO 6709 form in the unit and with the digits written (`iso6709`).  With `is_at_islands` it
    lies in the waters of the Tavrenne Islands (46-49 S, 122-128 W).
    """
    form = draw(st.sampled_from(list(forms)))
    decimals = draw(st.sampled_from(form.decimals))
    scale = 60**form.unit * 10**decimals
    limits = _ISLANDS if is_at_islands else _GLOBE
    if "{n}" in form.half and not is_at_islands:
        # Without noughts in front, a short longitude may have lost its first figure.
        limits = (_GLOBE[0], (100, 180))
    lat, lon = (
        Coordinate(draw(st.integers(low * scale, high * scale)), form.unit, decimals)
        for low, high in limits
    )
    letters = "SW" if is_at_islands else draw(st.sampled_from(("SW", "NE", "NW", "SE")))
    return WrittenPosition.of(form, Point(lat, lon), letters)


def _dice() -> st.SearchStrategy[Random]:
    return st.randoms(use_true_random=False, note_method_calls=False)


_LIGHT_DRAWS = (
    generated_lights.major, generated_lights.minor, generated_lights.sectored,
    generated_lights.port, generated_lights.starboard, generated_lights.special,
    generated_lights.preferred, generated_lights.safe_water, generated_lights.isolated_danger,
    *map(generated_lights.cardinal, ("north", "east", "south", "west")),
)  # fmt: skip


@st.composite
def lights(draw: st.DrawFn) -> WrittenLight:
    """A character as lighthouses, piers and marks of all kinds show it (INT 1, section P).

    Gives a `WrittenLight`: the text in one of the styles of offices, and what it says: period in
    seconds, elevation in metres, ranges in nautical miles, as exact figures.
    """
    light = draw(st.sampled_from(_LIGHT_DRAWS))(draw(_dice()))
    style = draw(st.sampled_from(generated_lights.STYLES))
    return WrittenLight(generated_lights.write_light(light, style), light)


@st.composite
def depths(draw: st.DrawFn) -> WrittenDepth:
    """A sounding or drying height that states its own unit, or has a small figure: `8₆`.

    Gives a `WrittenDepth`: the text, and the exact value in metres with the unit as written.
    """
    style = draw(
        st.sampled_from([one for one in generated_depths.STYLES if _speaks_for_itself(one)])
    )
    style = style._replace(is_deep=draw(st.booleans()) and style.name != "small")
    kind = draw(st.sampled_from(("sounding", "drying")))
    drawn = generated_depths.draw_depth(draw(_dice()), style, kind)
    words = f"dries {drawn.words}" if kind == "drying" else drawn.words
    return WrittenDepth(words, drawn.depth)


def _speaks_for_itself(style: generated_depths.DepthStyle) -> bool:
    """Whether a depth of the style means the same without the head of its chart."""
    return style.chart_unit is None or style.name in ("fathoms", "feet")


def bulletins(
    *, most_notices: int = 3, layouts: Sequence[str] = ALL
) -> st.SearchStrategy[WrittenBulletin]:
    """A clean bulletin of up to `most_notices` notices, in one of `layouts`.

    Gives a `WrittenBulletin`: the text, and the truth of every action in it: verb, feature, light,
    depth, positions as exact fractions, notice, chart and line.  Raises ValueError, when drawn
    from, for a layout that does not exist; `noticeparse.testing.generator.ALL` names them.
    """
    return st.builds(
        lambda rng, count: WrittenBulletin(*write_bulletin(rng, notices=count, layouts=layouts)),
        _dice(),
        st.integers(1, most_notices),
    )


def notices(*, layouts: Sequence[str] = ALL) -> st.SearchStrategy[WrittenBulletin]:
    """A bulletin of one clean notice, in one of `layouts`; see `bulletins`."""
    return bulletins(most_notices=1, layouts=layouts)
