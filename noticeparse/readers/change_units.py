"""The unit that the old and the new value of a change share.

`clearance from 60 to 58 feet` and `from 60ft to 58` state it once; it is that of both, for nobody
changes the unit of a figure in the same breath without saying so.
"""

from __future__ import annotations

import re

from noticeparse.readers.change_parts import Value
from noticeparse.records.feature import Feature

_BARE = re.compile(r"[^0-9]{0,40}(?<![0-9.,])[0-9]{1,4}(?:[.,][0-9]{1,2})?\s*")
_IN_UNIT = re.compile(
    r"(?:[0-9]|[½¼¾])\s?(?P<unit>feet|foot|ft|fathoms?|fms?|metres|meters|metre|meter|m)\.?\s*",
    re.IGNORECASE,
)
_TAKES_UNIT = frozenset(("depth", "clearance", "height_m", "light.elevation_m"))


def shared_unit(own: str, other: str) -> str:
    """The unit that a bare figure takes from the value beside it; empty where it takes none."""
    if _BARE.fullmatch(own) is None:
        return ""
    told = list(_IN_UNIT.finditer(other))
    if not told or told[-1].end() != len(other) or told[-1]["unit"] == "M":
        # A capital letter alone may be miles.
        return ""
    units = {one["unit"].lower() for one in told}
    return f" {told[-1]['unit']}" if len(units) == 1 else ""


def written_value(feature: Feature) -> str:
    """The depth or clearance that a feature states, as written."""
    stated = [one.written for one in (feature.depth, feature.clearance) if one is not None]
    return stated[0] if len(stated) == 1 else ""


def takes_unit(value: Value) -> bool:
    """Whether a value is a length of those that may be in feet or fathoms."""
    return value.property in _TAKES_UNIT


def as_it_stands(value: Value, text: str) -> Value:
    """A value read with the unit of the other, with its own words."""
    if not hasattr(value.value, "written"):
        return value
    return value._replace(value=value.value.model_copy(update={"written": " ".join(text.split())}))


_FIGURE = (
    r"(?:[0-9]{1,3}[₀-₉]|[0-9]{1,3}(?:[.,][0-9]{1,2})? ?(?:m|met(?:re|er)s?|ft|feet|fm|fathoms?))"
)
_FIGURES = re.compile(rf"(?:from )?{_FIGURE},? (?:to|->) {_FIGURE}[ .,]*", re.IGNORECASE)


def is_bare_change(text: str) -> bool:
    """Whether nothing but an old and a new length stands: `7m to 5m`, which are depths."""
    return _FIGURES.fullmatch(text.strip(" ,")) is not None
