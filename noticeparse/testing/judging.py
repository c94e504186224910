"""Holds the answer of a reader against what must become of a case.

An answer is the JSON that `noticeparse position|light|depth --format json` or `noticeparse parse`
writes, from whatever reader: only the keys that are compared need be there.
"""

from __future__ import annotations

import json
import re
from collections.abc import Callable, Iterator
from decimal import Decimal
from fractions import Fraction
from typing import Any

from noticeparse.catalogue import ENTRIES
from noticeparse.records.position import Position
from noticeparse.testing.cases import Case, Refused
from noticeparse.testing.generator import compare
from noticeparse.testing.written import (
    WrittenBulletin,
    WrittenDepth,
    WrittenLight,
    WrittenPosition,
)

_REST = r"(?:[0-9]{2}){0,2}(?:\.[0-9]+)?"
_ISO_6709 = re.compile(rf"[+-][0-9]{{2}}{_REST}[+-][0-9]{{3}}{_REST}/")


class View(dict[str, Any]):
    """A JSON object whose keys are attributes too, so that it compares like a record."""

    def __getattr__(self, name: str) -> Any:
        try:
            return self[name]
        except KeyError:
            raise AttributeError(f"the answer has no key `{name}`") from None

    def exact(self) -> tuple[Fraction, Fraction]:
        """The exact value of a position, by its key `iso6709`."""
        written = self.get("iso6709")
        if not isinstance(written, str) or _ISO_6709.fullmatch(written) is None:
            raise AttributeError(f"`{written}` is no ISO 6709 form: -4712.34-12345.67/")
        return Position.model_construct(iso6709=written).exact()


def read_reply(line: str) -> View | Refused:
    """The answer for one value: a record, or that it is refused (`null`, or a key `error`).

    Raises ValueError where it is no JSON object.
    """
    reply = _loaded(line)
    if reply is None:
        return Refused(None)
    if not isinstance(reply, View):
        raise ValueError("the answer must be an object or null")
    if "error" in reply:
        error = reply["error"]
        return Refused(error.get("code") if isinstance(error, View) else None)
    return reply


def _loaded(line: str) -> Any:
    try:
        return json.loads(line, parse_float=Decimal, object_hook=View)
    except RecursionError:
        raise ValueError("it is nested too deeply") from None


def judge(case: Case, line: str) -> str | None:
    """What is wrong with the answer `line` to a case, in words; None where it is right."""
    try:
        if case.kind == "notices":
            return _judge_bulletin(case, _bulletin(line))
        return _judge_value(case, read_reply(line))
    except (AttributeError, TypeError) as error:
        return f"the answer has not the form of the contract: {error}"
    except ValueError as error:
        return f"the answer is no JSON of the contract: {error}"


def _bulletin(line: str) -> View:
    reply = _loaded(line)
    if not isinstance(reply, View):
        raise ValueError("the answer must be an object")
    return reply


def _judge_value(case: Case, reply: View | Refused) -> str | None:
    if isinstance(reply, Refused):
        if case.outcome in ("same", "as-written"):
            return f"refused ({reply.code or 'no code'}), but it can be read for certain"
        return _unlike_code(case, [reply.code])
    if case.outcome == "refused":
        return f"read as {_shown(reply)}, but it cannot be read for certain"
    if case.outcome == "finding" and not reply.get("findings"):
        return f"read as {_shown(reply)} without a word about what is wrong"
    return "; ".join(_VALUES[type(case.truth)](reply, case.truth)) or None


def _unlike_code(case: Case, told: list[str | None]) -> str | None:
    """What is wrong with the codes told; a reader may have codes of its own, which are let be."""
    ours = sorted({code for code in told if code in ENTRIES})
    if not case.codes or not ours or case.codes & set(ours):
        return None
    return f"told as {', '.join(ours)}, not as {' or '.join(sorted(case.codes))}"


def _shown(reply: View) -> str:
    for key in ("iso6709", "litchr", "value_m"):
        if key in reply:
            words = {name: one for name, one in reply.items() if name not in ("span", "written")}
            return str(reply[key] if key == "iso6709" else words)
    return str(dict(reply))


def _position(got: View, want: WrittenPosition) -> Iterator[str]:
    """What differs; the sign of nought and the side of the 180th meridian are no difference."""
    got.exact()  # says so where it has not that form at all
    if _one_sign(got.iso6709) != want.iso6709:
        yield f"iso6709 is {got.iso6709}, not {want.iso6709}"
    lat, lon = float(got.lat), float(got.lon)
    nearest = tuple(map(float, want.exact))
    if (lat, -lon if lon == 180 else lon) != nearest:
        yield f"lat and lon are {(lat, lon)}, not {nearest}"


def _one_sign(iso6709: str) -> str:
    """The form with `+` for nought and `-` for the 180th meridian, as ISO 6709 has them."""
    positive = re.sub(r"-(?=[0.]+(?![0-9.]))", "+", iso6709)
    return re.sub(r"\+(?=180[0.]*/)", "-", positive)


def _light(got: View, want: WrittenLight) -> Iterator[str]:
    return compare.light_differences(got, want.light)


def _depth(got: View, want: WrittenDepth) -> Iterator[str]:
    return compare.depth_differences(got, want.depth)


_VALUES: dict[type, Callable[[View, Any], Iterator[str]]] = {
    WrittenPosition: _position, WrittenLight: _light, WrittenDepth: _depth,
}  # fmt: skip


def _judge_bulletin(case: Case, got: View) -> str | None:
    assert isinstance(case.truth, WrittenBulletin)
    told = [one for one in got.findings if one.severity in ("error", "warning")]
    errors = [one for one in told if one.severity == "error"]
    if case.outcome in ("same", "as-written"):
        wrong = compare.differences(got, case.truth.truth)
        if not wrong and errors:
            wrong = [f"an error finding: {errors[0].code}, {errors[0].message}"]
        return "; ".join(wrong[:5]) or None
    if case.outcome == "finding":
        if not told:
            return "no finding of severity warning or error"
        return _unlike_code(case, [one.code for one in told]) or _misread(got, case.truth)
    if not errors:
        return "no finding of severity error"
    for one in _actions(got):
        if one.usable and _stated(one):
            return f"an action is usable all the same, at {[p.iso6709 for p in _stated(one)]}"
    return _unlike_code(case, [one.code for one in errors])


def _actions(got: View) -> Iterator[View]:
    for notice in got.notices:
        for section in notice.charts:
            yield from section.actions


def _stated(action: View) -> list[View]:
    return list(action.geometry.positions)


def _misread(got: View, want: WrittenBulletin) -> str | None:
    """A usable action at a place that the text does not state."""
    stated = {point.exact() for action in want.truth.actions() for point in _points(action)}
    for action in _actions(got):
        for position in _stated(action):
            if action.usable and position.exact() not in stated:
                return f"a usable action at {position.iso6709}, which the text does not state"
    return None


def _points(action: Any) -> Iterator[Any]:
    yield from action.points
    if action.destination is not None:
        yield action.destination
