"""Commands of temporary notices: read as commands, or told where they stand in prose."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, codes

HEAD = "NOTICE 344(T)/2026 - Hale Ness - Wreck\nChart: 615\n"

COMMANDS = {
    "heading with a colon": f"Insert:\nwreck {P}\n",
    "heading with a number": f"1. Insert\nwreck {P}\n",
    "heading of a list": f"Insert the following:\nwreck {P}\n",
    "heading with the chart": f"INSERT ON CHART:\nwreck {P}\n",
    "place in front": f"{P}  insert wreck\n",
    "in a place": f"In {P} insert wreck\n",
    "asked for": f"Please insert a wreck in {P}\n",
}


@pytest.mark.parametrize("body", COMMANDS.values(), ids=COMMANDS)
def test_is_read(body: str) -> None:
    bulletin = parse(HEAD + body)
    (notice,) = bulletin.notices
    (chart,) = notice.charts
    (action,) = chart.actions
    assert (action.verb, action.feature.kind, action.usable) == ("insert", "wreck", True)
    assert [one.written.rstrip(".") for one in action.geometry.positions] == [P]
    assert "temporary-with-actions" in {one.code for one in bulletin.findings}


def test_in_prose_is_told() -> None:
    bulletin = parse(f"{HEAD}The wreck: insert in {P}\n")
    assert "sentence-unread" in codes(bulletin)


@pytest.mark.parametrize(
    "sentence",
    [
        f"A wreck lies in {P}. Divers will insert sand bags round it.",
        f"A light-buoy has been laid in {P} to replace the beacon.",
    ],
)
def test_what_happens_at_sea_stays_prose(sentence: str) -> None:
    bulletin = parse(f"{HEAD}{sentence}\n")
    (notice,) = bulletin.notices
    assert [section.actions for section in notice.charts] == [[]]
    assert "sentence-unread" not in codes(bulletin)


@pytest.mark.parametrize("heading", ["Withdrawn for the winter", "Withdrawn for the season:"])
def test_participle_for_a_time_heads_what_stands_below(heading: str) -> None:
    body = f"{heading}\n  1) wreck   {P}\n"
    (notice,) = parse(HEAD + body).notices
    assert [one.verb for chart in notice.charts for one in chart.actions] == ["delete"]
    permanent = parse(f"344/2026 - Hale Ness\nChart: 615\n{body}")
    assert "item-temporary" in codes(permanent)
