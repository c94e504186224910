"""Lights whose figures may be those of another aid on the same structure.

In comes a notice; out come troubles.  What is wrong with a character in itself is told where it is
read; here it is held against the fog signal beside it.
"""

from __future__ import annotations

from collections.abc import Iterator

from noticeparse.checks.features import in_each_feature, lights_of, trouble_of
from noticeparse.checks.trouble import Placed, Trouble
from noticeparse.records.feature import Feature
from noticeparse.records.notice import Notice

_SLOW_S = 20
"""Longer than the periods that the IALA recommendation E-110 allows single flashes."""


def check_signal_periods(notice: Notice) -> Iterator[Trouble]:
    """A slow light with the very period of the fog signal: `Fl.R.30s, Horn(2)30s`."""
    yield from in_each_feature(notice, _check)


def _check(placed: Placed, feature: Feature) -> Iterator[Trouble]:
    sound = feature.sound
    if sound is None or sound.period_s is None or sound.period_s <= _SLOW_S:
        return
    for light in lights_of(feature):
        if light.period_s == sound.period_s and sum(light.groups) < 4:
            yield trouble_of("light-period-of-signal", placed, written=light.written)
