"""The mutations of lights and of depths."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from decimal import Decimal
from typing import Any

from hypothesis import assume
from hypothesis import strategies as st

from noticeparse.testing import characters
from noticeparse.testing.cases import Kind, Mutation, Outcome
from noticeparse.testing.generator import lights as generated
from noticeparse.testing.strategies import depths, lights
from noticeparse.testing.written import WrittenDepth, WrittenLight

Draw = st.DrawFn
Text = Callable[[st.DrawFn, str], str]

_PERIOD = re.compile(r"[0-9][0-9.·]*(?= ?s)")
_STOP = re.compile(r"(?<=[0-9])[.·](?=[0-9])")
_SMALL = "₀₁₂₃₄₅₆₇₈₉"
_UNIT = re.compile(r" ?(m|metres|fm|fathoms|ft|feet)$")


def _on_text(change: Text) -> Callable[[st.DrawFn, Any], Any]:
    return lambda draw, one: one.saying(change(draw, one.text))


def _needs(text: str, pattern: str) -> None:
    assume(re.search(pattern, text) is not None)


def _as_it_is(_: Draw, text: str) -> str:
    return text


def _other_stop(draw: Draw, text: str) -> str:
    _needs(text, _STOP.pattern)
    return characters.with_other_stop(draw, text)


def _other_blanks(draw: Draw, text: str) -> str:
    _needs(text, " ")
    return characters.with_other_blanks(draw, text)


def _full_width(_: Draw, text: str) -> str:
    return characters.with_figures_of(characters.FULL_WIDTH, text)


def _foreign_figures(draw: Draw, text: str) -> str:
    _needs(text, "[0-9]")
    script = draw(st.sampled_from(characters.FOREIGN_SCRIPTS))
    return characters.with_figures_of(script, text)


def _figure_lost(draw: Draw, text: str) -> str:
    _needs(text, "[0-9]")
    return characters.with_figure_lost(draw, text)


def _figure_split(draw: Draw, text: str) -> str:
    _needs(text, "[0-9][0-9]")
    return characters.with_figure_split(draw, text)


def _wrapped_light(draw: Draw, text: str) -> str:
    places = [match.end() for match in re.finditer(r"[.)](?=[A-Z])| (?=[A-Z0-9])", text)]
    assume(places)
    at = draw(st.sampled_from(places))
    return text[:at].rstrip(" ") + "\n" + text[at:]


def _long_units(_: Draw, text: str) -> str:
    return re.sub(r"(?<=[0-9])M$", " miles", re.sub(r"(?<=[0-9])s(?![a-z])", "sec.", text))


def _other_period(draw: Draw, one: WrittenLight) -> WrittenLight:
    assume(one.light.period_s is not None)
    # Long enough for any group, and not so long that a figure may have slipped.
    period = Decimal(draw(st.integers(24, 40))) / 2
    assume(period != one.light.period_s)
    return _rewritten(draw, replace(one.light, period_s=Decimal(f"{period:g}")))


def _stop_of_period(draw: Draw, one: WrittenLight) -> WrittenLight:
    assume(one.light.period_s is not None)
    period = Decimal(draw(st.integers(12, 20))) + Decimal("0.5")
    other = _rewritten(draw, replace(one.light, period_s=period))
    return other.saying(characters.with_other_stop(draw, other.text))


def _other_elevation(draw: Draw, one: WrittenLight) -> WrittenLight:
    assume(one.light.elevation_m is not None)
    height = Decimal(draw(st.integers(4, 40)))
    assume(height != one.light.elevation_m)
    return _rewritten(draw, replace(one.light, elevation_m=height))


def _rewritten(draw: Draw, light: Any) -> WrittenLight:
    style = draw(st.sampled_from(generated.STYLES))
    return WrittenLight(generated.write_light(light, style), light)


def _period_twice(_: Draw, text: str) -> str:
    period = _PERIOD.search(text)
    assume(period is not None)
    assert period is not None
    return text[: period.end()] + "s" + text[period.start() :]


def _period_of_nought(_: Draw, text: str) -> str:
    _needs(text, _PERIOD.pattern)
    return _PERIOD.sub("0", text)


def _unit_of_period_lost(_: Draw, text: str) -> str:
    # Before other figures the two would run together: `5s23m` as `523m`.
    _needs(text, r"[0-9] ?s($| )")
    return re.sub(r"(?<=[0-9]) ?s($| )", r"\1", text)


def _bracket_lost(draw: Draw, text: str) -> str:
    _needs(text, r"\([0-9]")
    at = text.index(draw(st.sampled_from("()")))
    return text[:at] + text[at + 1 :]


def _group_of_nought(_: Draw, text: str) -> str:
    _needs(text, r"\([0-9]")
    return re.sub(r"(?<=\()[0-9]+", "0", text)


def _rhythm_unknown(draw: Draw, text: str) -> str:
    assume(text[0].isalpha())
    return draw(st.sampled_from(("Xl", "Zk", "Jo"))) + re.sub("^[A-Za-z]+", "", text)


def _colour_unknown(draw: Draw, one: WrittenLight) -> WrittenLight:
    light = one.light
    assume(light.is_colour_stated)
    odd = (draw(st.sampled_from("KXZ")), *light.colours[1:])
    return one.saying(_rewritten(draw, replace(light, colours=odd)).text)


def _long_unit(_: Draw, text: str) -> str:
    _needs(text, r"[0-9] ?m$")
    return re.sub(r" ?m$", " metres", text)


def _other_depth(draw: Draw, one: WrittenDepth) -> WrittenDepth:
    """Another figure, in metres and tenths."""
    sign = -1 if one.depth.kind == "drying" else 1
    tenths = draw(st.integers(1, 999 if sign > 0 else 40))
    value = Decimal(tenths) / 10
    assume(value != abs(one.depth.value_m))
    lead = "dries " if sign < 0 else ""
    words, unit = draw(st.sampled_from((
        (f"{value:.1f}m", "m"), (f"{value:.1f} m", "m"),
        (f"{tenths // 10}{_SMALL[tenths % 10]}", None),
    )))  # fmt: skip
    return WrittenDepth(lead + words, replace(one.depth, value_m=sign * value, unit=unit))


def _small_figure_lost(draw: Draw, text: str) -> str:
    _needs(text, f"[{_SMALL}]")
    return re.sub(f"[{_SMALL}]", draw(st.sampled_from(characters.LOST)), text)


def _feet_of_a_fathom(draw: Draw, _: WrittenDepth) -> WrittenDepth:
    feet = draw(st.integers(6, 99))
    text = f"{draw(st.integers(1, 40))} fm {feet} ft"
    return _.saying(text)


def _unit_unknown(draw: Draw, text: str) -> str:
    _needs(text, _UNIT.pattern)
    return _UNIT.sub(draw(st.sampled_from(("x", " k", "q"))), text)


def _cut_at_the_stop(_: Draw, text: str) -> str:
    _needs(text, _STOP.pattern)
    return re.sub(r"(?<=[.·])[0-9]", "", text)


def _figures_apart(_: Draw, text: str) -> str:
    _needs(text, "[0-9][0-9]")
    return re.sub("([0-9])([0-9])", r"\1 \2", text, count=1)


def _depth_twice(_: Draw, text: str) -> str:
    return f"{text} {text.removeprefix('dries ')}"


_BOTH: tuple[tuple[Outcome, str, Text], ...] = (
    ("same", "as written", _as_it_is),
    ("same", "no-break or thin blanks", _other_blanks),
    ("same", "figures as wide as East Asian letters", _full_width),
    ("finding", "something unseen between two figures", _figure_split),
    ("refused", "a figure lost", _figure_lost),
    ("refused", "figures of another script", _foreign_figures),
)


def _named(change: Callable[..., Any]) -> str:
    return change.__name__.strip("_").replace("_", "-")


def _light(
    outcome: Outcome, what: str, change: Callable[[st.DrawFn, WrittenLight], Any], name: str,
    *codes: str,
) -> Mutation:  # fmt: skip
    return Mutation(name, "lights", outcome, what, lights, change, frozenset(codes))


def _depth(
    outcome: Outcome, what: str, change: Callable[[st.DrawFn, WrittenDepth], Any], name: str,
    *codes: str,
) -> Mutation:  # fmt: skip
    return Mutation(name, "depths", outcome, what, depths, change, frozenset(codes))


def _for_both(kind: Kind) -> tuple[Mutation, ...]:
    clean: Callable[[], st.SearchStrategy[Any]] = lights if kind == "lights" else depths
    return tuple(
        Mutation(_named(change), kind, outcome, what, clean, _on_text(change))
        for outcome, what, change in _BOTH
    )


LIGHT_MUTATIONS: tuple[Mutation, ...] = (
    *_for_both("lights"),
    _light("same", "a raised or heavy dot for the decimal stop", _stop_of_period, "other-stop"),
    _light("same", "a line end between two parts", _on_text(_wrapped_light), "wrapped"),
    _light("same", "units in longer words", _on_text(_long_units), "long-units"),
    _light("as-written", "another period", _other_period, "other-period"),
    _light("as-written", "another elevation", _other_elevation, "other-elevation"),
    _light("refused", "the period twice", _on_text(_period_twice), "period-twice",
           "light-period-twice"),
    _light("refused", "a period of nought", _on_text(_period_of_nought), "period-of-nought",
           "light-figure-zero"),
    _light("refused", "the unit of the period lost", _on_text(_unit_of_period_lost),
           "unit-of-period-lost"),
    _light("refused", "a bracket of the group lost", _on_text(_bracket_lost), "bracket-lost"),
    _light("refused", "a group of nought", _on_text(_group_of_nought), "group-of-nought",
           "light-group-zero"),
    _light("refused", "a rhythm that there is not", _on_text(_rhythm_unknown), "rhythm-unknown"),
    _light("refused", "a colour that there is not", _colour_unknown, "colour-unknown"),
)  # fmt: skip

DEPTH_MUTATIONS: tuple[Mutation, ...] = (
    *_for_both("depths"),
    _depth("same", "a raised or heavy dot for the decimal stop", _on_text(_other_stop),
           "other-stop"),
    _depth("same", "the unit in full", _on_text(_long_unit), "long-unit"),
    _depth("as-written", "another depth", _other_depth, "other-depth"),
    _depth("refused", "the small figure lost", _on_text(_small_figure_lost), "small-figure-lost"),
    _depth("refused", "six feet or more beside fathoms", _feet_of_a_fathom, "feet-of-a-fathom",
           "depth-feet-over-five"),
    _depth("refused", "a unit that there is not", _on_text(_unit_unknown), "unit-unknown"),
    _depth("refused", "cut off at the decimal stop", _on_text(_cut_at_the_stop),
           "cut-at-the-stop"),
    _depth("refused", "a blank between two figures", _on_text(_figures_apart), "figures-apart"),
    _depth("refused", "the depth twice", _on_text(_depth_twice), "depth-twice"),
)  # fmt: skip
