"""What stands beside the items of a chart: marks of sources, counts, keys of cards, columns."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, WRECK_AND_ROCK, P, Q, told

MARKS = {
    "in a column": [
        f"ADD      Wreck             TCG   at   {P}", f"DELETE   Rock              NHS   at   {Q}",
        f"ADD      Mooring buoy      TCG   at   {P}",
    ],
    "in brackets below": [
        f"Insert wreck   {P}\n(TH2026-114.01)", f"Delete rock   {Q}\n(TLS 26-031)",
        f"Insert mooring buoy   {P}\n(TH2026-114.02)",
    ],
}  # fmt: skip


@pytest.mark.parametrize("rows", MARKS.values(), ids=MARKS)
def test_marks_of_sources_say_nothing_of_the_feature(rows: list[str]) -> None:
    bulletin = parse(HEAD + "\n".join(rows) + "\n")
    phrases = [action.feature.text.lower() for action in bulletin.notices[0].charts[0].actions]
    assert phrases == ["wreck", "rock", "mooring buoy"]
    assert not bulletin.findings


def test_what_a_bullet_under_new_opens_is_inserted() -> None:
    text = f"{HEAD} New:      • wreck    {P}\n Removed:  • rock     {Q}\n"
    assert told(parse(text)) == WRECK_AND_ROCK


def test_items_are_counted_in_a_column() -> None:
    text = (
        f"{HEAD}  Insert\n   1  Wreck      {P}\n   2  Mooring buoy      {Q}\n"
        "  Delete\n   3  Depth 9.6 m, close W of      1 above\n"
        "   4  Depth 7.8 m, between        1 and 2 above\n"
    )
    bulletin = parse(text)
    wreck, buoy, near, between = bulletin.notices[0].charts[0].actions
    assert (wreck.label, buoy.label, near.label) == ("1", "2", "3")
    assert [p.iso6709 for p in near.geometry.positions] == [AT_P]
    assert [p.iso6709 for p in between.geometry.positions] == [AT_P, AT_Q]
    assert not [one for one in bulletin.findings if one.severity == "error"]


def test_card_whose_keys_are_parts_of_a_light() -> None:
    text = (
        f"{HEAD}\nAid:        Light\nChange:     Established\nPosition:   {P}\n"
        "Character:  Oc.WRG.8s\nElevation:  23m\nRange:      13/10/9M\n\n"
        f"Aid:        Light\nChange:     Range amended\nPosition:   {Q}\n"
        "Old range:  20M\nNew range:  17M\n"
    )
    new, changed = parse(text).notices[0].charts[0].actions
    assert new.feature.light is not None
    assert (new.feature.light.elevation_m, new.feature.light.ranges_nm) == (23, [13, 10, 9])
    assert changed.verb == "amend"
    assert [(one.property, one.old, one.new) for one in changed.changes] == [
        ("light.ranges_nm", [20], [17])
    ]


def test_key_that_holds_the_verb_and_what_a_feature_becomes() -> None:
    text = (
        f"{HEAD}\nObject:    Depth 8.1 m\nAction:    Replaced by depth 7.4 m\nPosition:  {P}\n\n"
        f"Object:    Light\nAction:    Amended to Fl.G.5s8m4M\nPosition:  {Q}\n"
    )
    depth, light = parse(text).notices[0].charts[0].actions
    assert depth.verb == "replace"
    assert depth.replacement.depth is not None
    assert (str(depth.replacement.depth.value_m), depth.written_verb) == ("7.4", "Replaced")
    assert light.verb == "amend"
    assert [one.property for one in light.changes] == ["light"]


def test_light_of_a_card_is_that_of_the_new_feature() -> None:
    text = (
        f"{HEAD}\nAid:        Starboard-hand buoy\n"
        "Change:     Replaced by starboard-hand light-buoy\n"
        f"Position:   {P}\nCharacter:  Q.G\n"
    )
    (action,) = parse(text).notices[0].charts[0].actions
    assert action.verb == "replace"
    assert action.feature.light is None
    assert action.replacement.light is not None
    assert action.replacement.light.colours == ["G"]


def test_nouns_in_the_column_of_the_verbs() -> None:
    text = (
        f"{HEAD}  (1)  Addition      Wreck          {P}\n  (2)  Deletion      Rock           {Q}\n"
    )
    assert told(parse(text)) == WRECK_AND_ROCK


def test_positions_referred_to_by_bare_numbers() -> None:
    text = (
        f"{HEAD}Positions:   1)  {P}\n             2)  {Q}\n"
        "Insert submarine cable joining positions 1 to 2.\nDelete wreck in position 2.\n"
        "Move special buoy from position 2 to position 1.\n"
    )
    bulletin = parse(text)
    cable, wreck, move = bulletin.notices[0].charts[0].actions
    assert [p.iso6709 for p in cable.geometry.positions] == [AT_P, AT_Q]
    assert [p.iso6709 for p in wreck.geometry.positions] == [AT_Q]
    assert move.verb == "move"
    assert [p.iso6709 for p in move.destination.positions] == [AT_P]
    assert not [one for one in bulletin.findings if one.severity == "error"]


# What stands where a mark of the source may stand, and tells something of the feature.
NO_MARKS = {
    "colours in a column": ["Buoy   BYB   at", "Buoy   YBY   at", "Buoy   RWVS   at"],
    "colours behind": ["Buoy   {}   BYB", "Buoy   {}   YB", "Buoy   {}   RGR"],
    "quality": ["Wreck   {}\n(PA 2026)", "Rock   {}\n(ED 2026)", "Pile   {}\n(PD 2026)"],
    "figures": ["Wreck   {}\n(8.6M)", "Rock   {}\n(4.5M)", "Pile   {}\n(2.5M)"],
}  # fmt: skip


@pytest.mark.parametrize("rows", NO_MARKS.values(), ids=NO_MARKS)
def test_what_tells_of_the_feature_is_no_mark(rows: list[str]) -> None:
    lines = [f"Insert   {row.format(P) if '{}' in row else f'{row}   {P}'}" for row in rows]
    bulletin = parse(HEAD + "\n".join(lines) + "\n")
    actions = bulletin.notices[0].charts[0].actions
    assert len(actions) == len(rows)
    told_of = {finding.code for finding in bulletin.findings}
    coloured = all(action.feature.colours for action in actions)
    assert coloured or "feature-figure-in-brackets" in told_of
