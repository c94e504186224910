"""Words that take a command back, turn it round, or hang it on a condition.

Common practice, no published source, where no standard is named.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from noticeparse import parse
from noticeparse.records import Amend, Bulletin
from noticeparse.records.light import Sector

HEAD = "12/26 Quill Sound.\nChart 802 [3/26] WGS84, depths in metres\n"
P, Q = "46-00.00S 122-00.00W", "46-00.50S 122-00.00W"


def usable(bulletin: Bulletin) -> list[tuple[str, str]]:
    return [
        (action.verb, action.feature.kind)
        for notice in bulletin.notices
        for chart in notice.charts
        for action in chart.actions
        if action.usable
    ]


def codes(bulletin: Bulletin, severity: str = "error") -> set[str]:
    return {one.code for one in bulletin.findings if one.severity == severity}


def amended(bulletin: Bulletin) -> Amend:
    action = bulletin.notices[0].charts[0].actions[0]
    assert isinstance(action, Amend)
    return action


# what is named first goes, what stays is no part of it
RETAINED = [
    ("buoy but retain wreck", "buoy_generic"),
    ("dangerous wreck but retain buoy", "wreck_dangerous"),
    ("light but retain beacon", "light"),
    ("horn but retain light", "fog_signal"),
    ("radar reflector but retain buoy", "radar_reflector"),
    ("light without beacon", "light"),
    ("light, retain beacon", "light"),
    ("light, retaining beacon", "light"),
    ("wreck and leave buoy", "wreck"),
    ("wreck but keep buoy, Fl.R.5s", "wreck"),
]


@pytest.mark.parametrize(("phrase", "kind"), RETAINED)
def test_what_is_retained_is_not_deleted(phrase: str, kind: str) -> None:
    bulletin = parse(f"{HEAD}Delete {phrase} {P}\n")
    assert usable(bulletin) == [("delete", kind)]
    assert not codes(bulletin)


def test_what_is_not_there_is_no_part_of_a_feature() -> None:
    action = parse(f"{HEAD}Insert light-buoy, Fl.R.5s, without AIS {P}\n").notices[0]
    feature = action.charts[0].actions[0].feature
    assert feature.light is not None
    assert feature.ais is None


def test_what_a_replacement_retains_is_told() -> None:
    bulletin = parse(f"{HEAD}Replace light-buoy with beacon but retain light {P}\n")
    assert codes(bulletin) == {"verb-within-words"}


@pytest.mark.parametrize(
    "words",
    [
        f"The wreck in {P} has been cleared to 12m.",
        f"The wreck in {P} has been removed to a depth of 12m.",
        f"The wreck in {P} has been cleared; least depth 12m.",
        f"The wreck in {P} has been dispersed and cleared to 12m.",
        f"The shoal in {P} has been removed to a least depth of at least 9.5m.",
        f"Remove wreck to 12m {P}",
    ],
)
def test_what_is_cleared_to_a_depth_is_still_there(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert usable(bulletin) == []
    assert codes(bulletin)


@pytest.mark.parametrize(
    "words",
    [
        f"The wreck, depth 12m, in {P} has been removed.",
        f"The wreck in {P} has been cleared.",
        f"Delete wreck, depth 12m {P}",
        f"Delete wreck, cleared to 12m {P}",
        f"Delete dredged area, dredged to 9m {P}",
        f"The dredged area, dredged to 9m, in {P} has been deleted.",
    ],
)
def test_a_wreck_that_is_gone_is_deleted(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert [verb for verb, _ in usable(bulletin)] == ["delete"]
    assert "deletion-to-depth" not in codes(bulletin)


# belief, and what was to be done
UNSURE = [
    f"The light-buoy in {P} is believed to have been removed.",
    f"The light-buoy in {P} is reported to have been removed.",
    f"A light-buoy, Fl.R.5s, was to have been established in {P}.",
    f"The buoy in {P} should have been moved to {Q}.",
    f"The buoy in {P} is expected to be moved to {Q}.",
]


@pytest.mark.parametrize("sentence", UNSURE)
def test_belief_is_no_order(sentence: str) -> None:
    bulletin = parse(f"{HEAD}{sentence}\n")
    assert usable(bulletin) == []
    assert codes(bulletin) == {"sentence-unread"}


CONDITIONS = [
    f"The light-buoy in {P} is withdrawn in winter.",
    f"Delete wreck {P} when new edition is published.",
    f"Delete wreck {P} on completion of works.",
    f"Delete buoy {P} from October to April.",
    f"A light-buoy, Fl.R.5s, is to be established in {P} when the works are complete.",
]


@pytest.mark.parametrize("words", CONDITIONS)
def test_a_condition_holds_an_action_back(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert usable(bulletin) == []
    assert codes(bulletin) == {"verb-conditional"}


@pytest.mark.parametrize(
    "words",
    [
        f"Insert wreck {P}. Mariners are advised to keep clear when passing.",
        f"Insert obstruction {P} (reported when diving)",
        f"Insert restricted area, centred on {P}, radius 2M, entry prohibited when signals shown",
    ],
)
def test_a_remark_behind_an_action_is_no_condition(words: str) -> None:
    assert "verb-conditional" not in codes(parse(f"{HEAD}{words}\n"))


def test_a_condition_in_a_wording_is_none() -> None:
    bulletin = parse(f'{HEAD}Insert legend, "Dries when in winter" {P}\n')
    assert usable(bulletin) == [("insert", "legend")]


def test_the_day_of_a_command_is_told() -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P} on 1 July 2026.\n")
    assert usable(bulletin) == [("insert", "wreck")]
    assert codes(bulletin, "warning") == {"verb-dated"}
    done = parse(f"{HEAD}The wreck in {P} has been removed on 1 July 2026.\n")
    assert codes(done, "warning") == set()


@pytest.mark.parametrize("words", ["or move buoy", "and re-insert buoy", "or amend buoy"])
def test_two_verbs_joined_are_told(words: str) -> None:
    bulletin = parse(f"{HEAD}Delete {words} {P}\n")
    assert usable(bulletin) == []
    assert codes(bulletin)


@pytest.mark.parametrize("words", ["and rename No 6.", "; light now Q.R."])
def test_a_change_behind_a_move_is_not_the_state_before(words: str) -> None:
    bulletin = parse(f"{HEAD}Move light-buoy from {P} to {Q} {words}\n")
    assert usable(bulletin) == []
    assert codes(bulletin) == {"verb-within-words"}


@pytest.mark.parametrize(
    "words", ["light-buoy No 4 to Q.R, No 6", "light-buoy, No 4 Fl.R.5s, to No 6 Q.R"]
)
def test_a_new_number_is_not_added_to_the_old(words: str) -> None:
    bulletin = parse(f"{HEAD}Amend {words} {P}\n")
    assert usable(bulletin) == []
    assert codes(bulletin)


AMOUNTS = [
    (f"The depth in {P} has been increased by 1m to 9.1m.", "depth", None),
    (f"Amend depth by 1m to 9.1m {P}", "depth", None),
    (f"Amend range of light by 2M to 10M {P}", "light.ranges_nm", None),
]


@pytest.mark.parametrize(("words", "path", "old"), AMOUNTS)
def test_the_amount_of_a_change_is_no_old_value(words: str, path: str, old: None) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    change = amended(bulletin).changes[0]
    assert (change.property, change.old) == (path, old)
    assert amended(bulletin).feature.name is None
    assert not codes(bulletin)


@pytest.mark.parametrize(
    "words",
    ["limits of red sector", "limits of R sector", "red sector", "red sector of light"],
)
def test_a_sector_keeps_the_colour_that_names_it(words: str) -> None:
    action = amended(parse(f"{HEAD}Amend {words} to 180°-210° {P}\n"))
    new = action.changes[0].new
    assert isinstance(new, list)
    sector = new[0]
    assert isinstance(sector, Sector)
    assert action.feature.kind == "light"
    assert (sector.colour, sector.from_deg, sector.to_deg) == ("R", Decimal(180), Decimal(210))


@pytest.mark.parametrize("words", ["Fl.R.4s against buoy", "(PA) against wreck"])
def test_what_is_added_to_a_mark_is_no_new_mark(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert {words} {P}\n")
    assert usable(bulletin) == []
    assert codes(bulletin) == {"feature-kinds-several"}
