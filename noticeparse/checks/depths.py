"""Depths and clearances that disagree with what stands beside them in the same feature.

In comes a notice; out come troubles.  Shoals are what notices insert, and the contour round a
shoal is deeper than it: IHO S-4 B-411.  A hole in shallow water is rare.
"""

from __future__ import annotations

from collections.abc import Iterator

from noticeparse.checks.features import in_each_feature, trouble_of
from noticeparse.checks.trouble import Placed, Trouble
from noticeparse.records.feature import Feature
from noticeparse.records.notice import Notice

_OVERHEAD = frozenset(("BRIDGE", "CBLOHD", "PIPOHD", "CONVYR"))
"""What crosses above the water, and has a clearance and no depth."""


def check_depths(notice: Notice) -> Iterator[Trouble]:
    """A depth beyond its contour, a depth of what is overhead, a clearance of nought."""
    yield from in_each_feature(notice, _check)


def _check(placed: Placed, feature: Feature) -> Iterator[Trouble]:
    depth, clearance = feature.depth, feature.clearance
    if depth is not None and depth.value_m is not None:
        for companion in feature.companions:
            around = companion.feature.depth
            if around is None or around.value_m is None or around.kind != "contour":
                continue
            # `and associated 10m contour` is drawn around the depth as well.
            if companion.role != "on" and depth.value_m > around.value_m:
                values = {"written": depth.written, "contour": around.written}
                yield trouble_of("depth-deeper-than-contour", placed, **values)
    if depth is not None and not _OVERHEAD.isdisjoint(feature.s57[:1]):
        yield trouble_of("depth-of-overhead", placed, written=depth.written)
    if clearance is not None and clearance.value_m == 0:
        yield trouble_of("clearance-zero", placed, written=clearance.written)
