"""Forms: a key and its value on each line, the records counted, both halves of a place in one."""

from __future__ import annotations

import re

import pytest

from noticeparse import parse
from tests.short_notices import WRECK_AND_ROCK, errors, told

PLACE = "46-00.00S 122-00.00W", "46-00.50S 122-00.00W"
FORM = """\
FORM C-9, NOTICE TO CHART HOLDERS

Notice number .......... 405/26
Waters ................. Brae Sound
Chart concerned ........ 118
Notice before this ..... 391/26

{count} ............. {first}
  What to do ........... Insert
  Feature .............. Wreck
  {key} .. {0}
{count} ............. {second}
  What to do ........... Delete
  Feature .............. Rock
  {key} .. {1}
"""


@pytest.mark.parametrize("mark", ["leaders", "colons"])
@pytest.mark.parametrize(
    ("count", "first", "second"),
    [("Correction", "1 of 2", "2 of 2"), ("Item", "1/2", "2/2"), ("Entry", "1", "2")],
)
@pytest.mark.parametrize("key", ["Latitude, longitude", "Latitude and longitude", "Lat/Long"])
def test_a_form_counts_its_records(
    mark: str, count: str, first: str, second: str, key: str
) -> None:
    text = FORM.format(*PLACE, count=count, first=first, second=second, key=key)
    if mark == "colons":
        text = re.sub(r" \.{2,}", ":", text)
    bulletin = parse(text)
    (notice,) = bulletin.notices
    (chart,) = notice.charts
    assert (notice.id, notice.heading, chart.chart) == ("405/26", "Brae Sound", "118")
    assert chart.previous is not None
    assert chart.previous.number == 391
    assert told(bulletin) == WRECK_AND_ROCK
    assert not errors(bulletin)
