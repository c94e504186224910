"""How far and whither a thing is moved, told besides its two places: `to Q, two cables southward`.

The words say no more than the places do, and are held against them.
"""

from __future__ import annotations

import re

from noticeparse.build.positions import distance_m, worked_out
from noticeparse.faults import Fault
from noticeparse.numbers import COUNT_WORDS, NAUTICAL_MILE_M
from noticeparse.readers.offsets import Offset, read_offset
from noticeparse.records.geometry import Geometry
from noticeparse.stretch import Stretch

_COUNTS = "|".join(COUNT_WORDS)
_SHIFT = re.compile(
    r"[ ,;:(]{0,4}(?:i\.e\.,? |that is,? |or |being |by )?(?P<lead>(?:a )?distance of )?"
    r"(?:about |approximately |some )?"
    rf"(?P<length>(?:{_COUNTS}|(?:half )?an?|one|[0-9]{{1,5}}(?:[.,][0-9]{{1,3}})?)"
    r" ?(?:cables?|(?:nautical )?miles?|n\.?m\.?|(?-i:M)|m|met(?:re|er)s?)(?![a-z]))"
    r"(?:[ ,]{1,2}(?:on a bearing of |in an? |to the )?"
    r"(?P<way>[0-9]{1,3}(?:\.[0-9])?°(?: ?T)?|(?:true )?(?-i:[NS]{1,2}[EW]|[EW][NS][EW]|[NESW])"
    r"|(?:north|south)(?:-?(?:east|west))?|east|west)(?:wards?|erly(?: direction)?)?(?![a-z]))?"
    r"[ ).,]{0,4}",
    re.IGNORECASE,
)


def without_shift(
    geometry: Geometry, destination: Geometry, rest: Stretch, faults: list[Fault]
) -> Stretch:
    """The words behind the places of a move without such words, and a fault where these err."""
    told = _SHIFT.fullmatch(rest.text) if rest.text else None
    one_each = len(geometry.positions) == len(destination.positions) == 1
    if told is None or geometry.relation != "at" or not one_each:
        return rest
    is_far_alone = told["way"] is None
    if is_far_alone and told["lead"] is None and "(" not in told[0]:
        # `5M` alone may be the range of a light.
        return rest
    offset = _read(told["length"], told["way"] or "N")
    if offset is None or offset.distance_nm is None:
        return rest
    start, end = geometry.positions[0], destination.positions[0]
    put = worked_out(start, offset)
    if put is None:
        return rest
    if is_far_alone:
        apart = abs(distance_m(start, end) - float(offset.distance_nm * NAUTICAL_MILE_M))
    else:
        apart = distance_m(put, end)
    if apart > 2 * (put.resolution_m + end.resolution_m) + 20:
        extent = rest.extent(told.span())
        values = {"metres": f"{apart:.0f}", "written": told[0].strip(" ,;:()")}
        faults.append(Fault("offset-disagrees", *extent, values))
    return rest.part(0, 0)


def _read(length: str, way: str) -> Offset | None:
    """The figures of such words, counts in words being written as figures."""
    count, _, unit = length.partition(" ")
    figures = COUNT_WORDS.get(count.lower())
    amount = length if figures is None else f"{figures} {unit}"
    return read_offset(f"{amount} {way} from")
