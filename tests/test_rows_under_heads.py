"""Rows of tables between the heads of charts, and what goes on below a row."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Move
from tests.short_notices import AT_Q, HEAD, P, Q, actions_of, errors

UNDER_CHARTS = """\
CHART 17   Quill Sound        WGS 84
           previous notice 302/26         this notice 318/26
LATITUDE       LONGITUDE        FEATURE                   COMMAND
S 47°12'20.4"  W 123°45'40.2"   rock awash                ADD
S 47°12'49.2"  W 123°45'55.8"   port-hand buoy            REMOVE
=================================================================
CHART 18   Brannoch Bank      WGS 84
           previous notice 290/26         this notice 319/26
LATITUDE       LONGITUDE        FEATURE                   COMMAND
S 47°02'44.0"  W 123°41'52.0"   fish haven                ADD
S 47°56'48.0"  W 123°58'36.0"   special light-buoy for
                                special buoy              SUBSTITUTE
"""


def test_the_head_of_a_chart_between_rows_is_no_row() -> None:
    read = [
        (notice.id, chart.chart, chart.previous and chart.previous.number)
        for notice in parse(UNDER_CHARTS).notices
        for chart in notice.charts
    ]
    assert read == [("318/26", "17", 302), ("319/26", "18", 290)]


def test_a_verb_on_the_last_line_of_its_row_is_not_that_of_the_row_above() -> None:
    bulletin = parse(UNDER_CHARTS)
    assert [one.verb for one in actions_of(bulletin)] == ["insert", "delete", "insert", "replace"]
    assert errors(bulletin) == set()


@pytest.mark.parametrize("thing", ["wreck for", "light-buoy, Fl.R.4s, with", "rock or"])
def test_a_thing_that_leads_on_to_nothing_is_held_back(thing: str) -> None:
    bulletin = parse(f"{HEAD}Insert {thing}   {P}\n")
    assert not actions_of(bulletin)[0].usable


STATES = """\
12/26 Quill Sound
Chart 802 [3/26] WGS84
CHANGE   POSITION                   OLD                            NEW
Move     46-00.00 S 122-00.00 W     special buoy                   at 46-00.50 S 122-00.00 W
Delete   46-00.10 S 122-00.20 W     mooring buoy                   -
Note. The buoy was lifted in March.
"""


def test_where_a_thing_goes_stands_as_its_new_state() -> None:
    bulletin = parse(STATES)
    moved, deleted = actions_of(bulletin)
    assert isinstance(moved, Move)
    assert [one.iso6709 for one in moved.destination.positions] == [AT_Q]
    assert (deleted.verb, deleted.feature.kind) == ("delete", "buoy_mooring")
    assert errors(bulletin) == set()
    assert [one.text for one in bulletin.notices[0].remarks] == [
        "Note. The buoy was lifted in March."
    ]


@pytest.mark.parametrize("lead", ["pontoon joining", "spoil ground bounded by"])
def test_places_told_row_by_row_are_held_back(lead: str) -> None:
    rows = f"{P}   {lead} this position   ADD\n{Q}   and this position   ADD\n"
    assert not any(one.usable for one in actions_of(parse(HEAD + rows)))
