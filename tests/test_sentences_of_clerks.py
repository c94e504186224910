"""Sentences as harbour offices write them: what is to come out, what must be on the chart."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q, errors, told

HEAD = "NOTICE No. 14 OF 2026\nFor Chart No. 2.  ({before})\n\n"
BEFORE = "Notice No. 11 of 2026 must be on it already."


def notice(text: str, before: str = BEFORE) -> str:
    return HEAD.format(before=before) + text


@pytest.mark.parametrize(
    "before",
    [
        BEFORE,
        "Notice 11/2026 should already be on the chart",
        "previously notice 11 of 2026",
        "revised to 2026-011",
    ],
)
def test_the_notice_that_must_be_on_the_chart_is_the_one_before(before: str) -> None:
    (chart,) = parse(notice(f"1)  Insert wreck {P}\n", before)).notices[0].charts
    assert (chart.chart, chart.previous and chart.previous.number) == ("2", 11)


@pytest.mark.parametrize(
    ("words", "verb"),
    [("is to come out", "delete"), ("is to come off", "delete"), ("is to go in", "insert")],
)
def test_what_is_to_come_out(words: str, verb: str) -> None:
    bulletin = parse(notice(f"1)  The red can buoy at {P} {words}.\n"))
    assert [one[:2] for one in told(bulletin)] == [(verb, "buoy_lateral_port")]
    assert errors(bulletin) == set()


def test_words_in_quotes_are_a_legend() -> None:
    (chart,) = (
        parse(notice(f'1)  The words "Ruined Pier" are to be put in at {P}.\n')).notices[0].charts
    )
    assert [one.feature.legend for one in chart.actions] == ["Ruined Pier"]


@pytest.mark.parametrize(
    "words",
    ["is to be hauled out", "now lies elsewhere", "must disappear", "is no longer there"],
)
def test_a_change_in_words_that_are_not_known_is_told(words: str) -> None:
    bulletin = parse(
        notice(f"1)  A wreck is to be put in at {Q}.\n2)  The dolphin at {P} {words}.\n")
    )
    assert [one[:2] for one in told(bulletin)] == [("insert", "wreck")]
    assert errors(bulletin) == {"sentence-unread"}


@pytest.mark.parametrize("words", ["is to be avoided", "lies close to the fairway"])
def test_what_changes_nothing_stays_a_remark(words: str) -> None:
    bulletin = parse(
        notice(f"1)  A wreck is to be put in at {Q}.\n2)  The dolphin at {P} {words}.\n")
    )
    assert errors(bulletin) == set()
    assert len(bulletin.notices[0].remarks) == 1


def test_a_bearing_in_degrees_and_a_character_with_stops() -> None:
    text = (
        "1)  A south cardinal light buoy, Q.(6)+L.Fl. 15 sec., is to be put in at "
        f"{P}.\n2)  A rock awash is to be put in 0.4 mile 205 deg from the light at {Q}.\n"
    )
    bulletin = parse(notice(text))
    buoy, rock = bulletin.notices[0].charts[0].actions
    assert buoy.feature.light is not None
    assert (buoy.feature.light.rhythm, buoy.feature.light.period_s) == ("Q+LFl", 15)
    assert rock.geometry.offset is not None
    assert (rock.geometry.offset.bearing_deg, rock.geometry.positions[0].via) == (205, "offset")
    assert errors(bulletin) == set()


def test_an_announcement_of_corrections_is_no_command() -> None:
    text = (
        "NOTICE 31/26\nInner Harbour. New lights.\n"
        "The lights were renewed on 2 April 2026, and the\nold chimney has gone. "
        f"Charts are to be corrected as follows.\nInsert a light, F.R:\n     {P}\n"
        "Chart affected: 820 (last notice 25/26).\n"
    )
    bulletin = parse(text)
    assert [one[:2] for one in told(bulletin)] == [("insert", "light")]
    assert errors(bulletin) == set()
