"""Laws of the chart list: any file is read or refused, any text can be held against a list."""

from __future__ import annotations

import json
from typing import Any

from hypothesis import given
from hypothesis import strategies as st

import noticeparse
from noticeparse import NoticeParseError
from noticeparse.catalogue.sheets import SPECIMEN_LIST
from noticeparse.chart_list import from_bytes, read_list
from noticeparse.chart_list.columns import COLUMNS, NEEDED

from .strategies import anything, texts

CHARTS = read_list(
    SPECIMEN_LIST + "804,,Across,500000,-47,-48,179,-46,-178.5,fathoms,,,417/26\n"
    "1,,The world,40000000,0,-80,-180,80,180,ft,ED50,,\n"
)

cells = st.one_of(
    st.sampled_from(
        ["802", "", "-47", "47", "90", "-180", "180", "1e9", "1:75 000", "75000", "0", "2310/26",
         "2024-05-16", '"', '"a, b"', "#", "fathoms", "Panel A", "nan", "٤٧", "-0", "999999999"]
    ),
    st.text(max_size=4),
)  # fmt: skip
rows = st.lists(cells, max_size=len(COLUMNS) + 1).map(",".join)
tables = st.lists(rows, max_size=6).map(lambda lines: "\n".join([",".join(COLUMNS), *lines]))
values = st.one_of(cells, st.none(), st.booleans(), st.integers(), st.floats(), st.lists(cells))
boxes = st.one_of(st.none(), st.lists(st.one_of(st.floats(), st.integers(-200, 200)), max_size=5))
features = st.fixed_dictionaries(
    {
        "properties": st.dictionaries(st.sampled_from([*COLUMNS, "x"]), values),
        "bbox": boxes,
        "geometry": st.one_of(st.none(), st.fixed_dictionaries({"coordinates": st.lists(boxes)})),
    }
)
collections = st.lists(st.one_of(features, values)).map(
    lambda found: json.dumps({"features": found})
)


@given(st.one_of(tables, collections, texts))
def test_any_file_is_a_list_or_refused(text: str) -> None:
    try:
        charts = from_bytes(text.encode("utf-8", "surrogatepass"))
    except NoticeParseError:
        return
    for chart in charts.charts:
        assert chart.south < chart.north
        assert chart.scale > 0
    for finding in charts.findings:
        assert len(finding.message) < 200
        assert "{" not in finding.message or "{" in text
    noticeparse.parse(SPECIMEN, charts=charts)


SPECIMEN = """\
2417/26 Quill Sound.
Chart 802 [2310/26] WGS84, depths in metres
Insert wreck, least depth 6m 46-30.00S 122-30.00W
Move buoy from 90-00.0N 000-00.0E to 90-00.0S 180-00.0W
"""


@given(anything)
def test_any_text_can_be_held_against_a_list(text: str) -> None:
    plain = noticeparse.parse(text)
    held = noticeparse.parse(text, charts=CHARTS)
    assert held.coverage == plain.coverage
    assert len(held.notices) == len(plain.notices)
    for before, after in zip(plain.notices, held.notices, strict=True):
        for one, other in zip(before.charts, after.charts, strict=True):
            assert [*map(without_sheet, one.actions)] == [*map(without_sheet, other.actions)]


def without_sheet(action: Any) -> Any:
    return action.model_copy(update={"sheet": None})


def test_needed_columns_are_columns() -> None:
    assert set(NEEDED) <= set(COLUMNS)
