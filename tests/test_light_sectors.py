"""Sectors of a light, read by themselves and as the new ones of a light."""

from __future__ import annotations

from typing import Any

import pytest

from noticeparse import parse
from noticeparse.readers.light_sectors import read_sectors
from noticeparse.records.action import Amend
from noticeparse.records.light import Light
from tests.light_records import arc, told
from tests.short_notices import HEAD, P, actions_of

SECTORS = [
    ("G 330°-010° (40°), W 010°-045° (35°)", [arc("G", 330, 10), arc("W", 10, 45)]),
    ("with sectors W 000°-090°, R 090°-170°", [arc("W", 0, 90), arc("R", 90, 170)]),
    ("white 045° to 090° and red from 090° to 120°", [arc("W", 45, 90), arc("R", 90, 120)]),
    ("(vis 180°-270°)", [arc(None, 180, 270)]),
    ("obscd 020°-045°", [arc(None, 20, 45, "obscured")]),
    ("W 045°-090° (intens 050°-060°)", [arc("W", 45, 90), arc(None, 50, 60, "intensified")]),
    ("(unintens R 100°-110°)", [arc("R", 100, 110, "unintensified")]),
    ("faint 100°-110°, G 110°-120°", [arc(None, 100, 110, "faint"), arc("G", 110, 120)]),
    ("W 000-090, R 090-360", [arc("W", 0, 90), arc("R", 90, 360)]),
    ("W 171°30'-195.5°T", [arc("W", 171.5, 195.5)]),
    (
        "W 171°-195° 12M, R 195°-268° 9M",
        [arc("W", 171, 195, miles=12), arc("R", 195, 268, miles=9)],
    ),
    ("vis 180°-270°, 300°-310°", [arc(None, 180, 270), arc(None, 300, 310)]),
]


@pytest.mark.parametrize(("text", "wanted"), SECTORS, ids=[row[0] for row in SECTORS])
def test_sectors(text: str, wanted: list[dict[str, Any]]) -> None:
    reading = read_sectors(text)
    assert [one.model_dump(mode="json") for one in reading.sectors] == wanted
    assert {fault.code for fault in reading.faults} <= {"sector-gap"}


@pytest.mark.parametrize("text", ["", "hello", "W", "W 045° 090°", "171°"])
def test_unreadable_sectors(text: str) -> None:
    reading = read_sectors(text)
    assert reading.sectors == ()
    assert told(text, reading.faults) == [("sector-unreadable", text)]


def test_colour_without_limits_at_the_end_is_told() -> None:
    reading = read_sectors("W 171°-195°, R")
    assert told("W 171°-195°, R", reading.faults) == [("sector-unreadable", "R")]


NEW_LIGHTS = {
    "on the next line": "light in {P}, to\nOc.WR.6s14m9/7M, with sectors R 312°-337°, W 337°-352°",
    "behind a colon": "sector light in {P} to Oc.WR.6s14m9/7M: R 312°-337°, W 337°-352°",
}


@pytest.mark.parametrize("body", NEW_LIGHTS.values(), ids=NEW_LIGHTS)
def test_a_new_character_keeps_the_sectors_behind_it(body: str) -> None:
    (action,) = actions_of(parse(f"{HEAD}Amend {body.format(P=P)}\n"))
    assert isinstance(action, Amend)
    (change,) = action.changes
    assert isinstance(change.new, Light)
    assert (change.property, change.new.written) == ("light", "Oc.WR.6s14m9/7M")
    assert [one.colour for one in change.new.sectors] == ["R", "W"]


@pytest.mark.parametrize("lead", ["sectors", "with sectors", "and sectors", "showing"])
@pytest.mark.parametrize("where", ["on the mole", "on the head of the north mole", "at the pier"])
def test_words_of_its_site_may_part_a_light_from_its_sectors(lead: str, where: str) -> None:
    text = (
        f"12/26 Quill Sound.\nChart 802 [3/26] WGS84\nInsert light, Fl(2)WRG.10s15m10-7M, {where}"
        f" 46-00.00S 122-00.00W\n  {lead} G 200°-245° (45°), W 245°-262°, R 262°-310°\n"
    )
    ((action,),) = (chart.actions for chart in parse(text).notices[0].charts)
    assert action.usable
    (found,) = (action.feature.light, *action.feature.more_lights)
    sectors = [(one.colour, one.from_deg, one.to_deg) for one in found.sectors]
    assert sectors == [("G", 200, 245), ("W", 245, 262), ("R", 262, 310)]


@pytest.mark.parametrize("parted", ["range 5M on the mole", "and a second light", "on pier 5"])
def test_other_words_before_sectors_leave_open_whose_they_are(parted: str) -> None:
    text = (
        f"12/26 Quill Sound.\nChart 802 [3/26] WGS84\nInsert light, Fl(2)WRG.10s15m10-7M, {parted}"
        ", sectors G 200°-245°, W 245°-262°, R 262°-310° 46-00.00S 122-00.00W\n"
    )
    actions = [one for chart in parse(text).notices[0].charts for one in chart.actions]
    assert not any(one.usable and one.feature.light.sectors for one in actions)
