"""Clauses that give the place first, things that share a verb, and what an erratum exchanges."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, actions_of, codes, errors, told

BEACON, BUOY = ("insert", "beacon_special", [AT_P]), ("delete", "buoy_special", [AT_P])


@pytest.mark.parametrize(
    "clauses",
    [
        f"In {P} insert a special beacon and delete the special buoy; in {Q} delete the wreck.",
        f"In {P} insert a special beacon\nand delete the special buoy;\nin {Q} delete the wreck.",
    ],
)
def test_a_second_verb_behind_and_is_said_at_the_same_place(clauses: str) -> None:
    assert told(parse(HEAD + clauses)) == [BEACON, BUOY, ("delete", "wreck", [AT_Q])]


def test_a_second_verb_has_the_place_behind_it_if_one_stands_there() -> None:
    text = (
        f"In {P} insert a special beacon and delete the special buoy in {R}; "
        f"in {Q} delete the wreck."
    )
    assert told(parse(HEAD + text)) == [
        BEACON, ("delete", "buoy_special", [AT_R]), ("delete", "wreck", [AT_Q]),
    ]  # fmt: skip


def test_a_semicolon_ends_a_clause_before_the_corners_of_the_next() -> None:
    text = (
        f'In {P} insert the legend "Overfalls"; bounded by {P}, {Q},\n{R} and '
        "46-00.30S 122-00.40W insert an anchorage area."
    )
    legend, area = actions_of(parse(HEAD + text))
    assert [len(one.geometry.positions) for one in (legend, area)] == [1, 4]
    assert area.geometry.shape == "area"


def test_a_second_verb_without_and_has_no_place() -> None:
    text = f"In {P} insert a special beacon, delete the special buoy; in {Q} delete the wreck."
    bulletin = parse(HEAD + text)
    assert ("delete", "buoy_special", [AT_Q]) not in told(bulletin)
    assert "item-without-position" in errors(bulletin)


@pytest.mark.parametrize("verb", ["are to be deleted", "have been removed", "should be deleted"])
def test_things_with_places_of_their_own_share_the_verb_at_the_end(verb: str) -> None:
    text = f"The wreck in {P} and the rock in {Q} {verb}."
    assert told(parse(HEAD + text)) == [("delete", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]


def test_a_line_end_may_part_the_halves_of_their_places() -> None:
    halves = "46-00.50S,\n   122-00.00W"
    text = f"1. The wreck in {P} and the rock in {halves} are to be deleted."
    assert told(parse(HEAD + text)) == [("delete", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]


@pytest.mark.parametrize(
    "sentence",
    [
        f"A cable between the wreck in {P} and the rock in {Q} is to be inserted.",
        f"The wreck in {P} and the rock in {Q} have been moved to {R}.",
        f"The wreck in {P} or the rock in {Q} is to be deleted.",
    ],
)
def test_things_told_by_each_other_are_not_parted(sentence: str) -> None:
    bulletin = parse(HEAD + sentence)
    assert errors(bulletin)
    assert not told(bulletin)


@pytest.mark.parametrize(
    "erratum",
    [
        f"For depth 6.3 m substitute depth 5.1 m {P}",
        f"FOR DEPTH 6.3 M SUBSTITUTE DEPTH 5.1 M {P}",
        f"For the depth of 6.3 m, substitute\na depth of 5.1 m in {P}.",
    ],
)
def test_for_one_thing_another_is_substituted(erratum: str) -> None:
    (action,) = actions_of(parse(HEAD + erratum))
    assert (action.verb, str(action.feature.depth.value_m)) == ("replace", "6.3")
    assert str(action.replacement.depth.value_m) == "5.1"


@pytest.mark.parametrize(
    "command",
    [
        "Chart a wreck",
        "1.1   Chart a wreck",
        "Exhibit a light, Fl.R.3s,",
        "MARK IN wreck",
        "Put on wreck",
        "RELOC wreck from 46-01.00S 122-00.00W to",
        "DISESTAB wreck",
        "58.01  Plot wreck",
    ],
)
def test_words_of_offices_are_commands(command: str) -> None:
    bulletin = parse(f"{HEAD}{command} {P}")
    assert told(bulletin)
    assert not codes(bulletin)


def test_a_chart_is_no_command_where_a_number_stands_behind_it() -> None:
    charts = parse(f"{HEAD}Insert wreck {P}\nChart 803 [4/26]\nDelete rock {Q}").notices[0].charts
    assert [one.chart for one in charts] == ["802", "803"]


@pytest.mark.parametrize("told_of", ['legend, "Foul" to "Wreck"', 'legend: "Foul" to "Wreck"',
                                     'legend "Foul": legend to "Wreck"'])  # fmt: skip
def test_a_legend_is_parted_from_its_wording(told_of: str) -> None:
    (action,) = actions_of(parse(f"{HEAD}Amend {told_of} {P}"))
    assert [(one.old, one.new) for one in action.changes] == [("Foul", "Wreck")]
    assert action.feature.kind == "legend"


def test_what_describes_the_old_state_is_no_change() -> None:
    text = f"Amend light, Fl W 10s, elevation 18 metres, range 11M: period to 8s {P}"
    (action,) = actions_of(parse(HEAD + text))
    assert [(one.property, str(one.new)) for one in action.changes] == [("light.period_s", "8")]
    assert str(action.feature.light.elevation_m) == "18"


def test_the_noun_of_a_light_may_be_said_again() -> None:
    (action,) = actions_of(parse(f"{HEAD}Amend light Fl.R.4s8m5M to light Fl.R.4s8m7M {P}"))
    assert [(one.property, str(one.new.ranges_nm[0])) for one in action.changes] == [
        ("light", "7")
    ]


def test_a_depth_may_be_cut_short() -> None:
    (action,) = actions_of(parse(f"{HEAD}Ins dep 4.6m {P}"))
    assert str(action.feature.depth.value_m) == "4.6"


def test_a_value_without_to_in_front_of_a_change_is_told() -> None:
    bulletin = parse(f"{HEAD}Amend light: elevation 12m, range to 10M {P}")
    assert "change-new-assumed" in codes(bulletin)


def test_kilometres_of_a_river_say_nothing_of_the_feature() -> None:
    bulletin = parse(f"{HEAD}Insert port-hand beacon, km 2.4 {P}\nDelete snag, km 3.1 {Q}")
    assert [kind for _, kind, _ in told(bulletin)] == ["beacon_lateral_port", "stump"]
    assert not codes(bulletin)


@pytest.mark.parametrize(
    "text",
    [
        f"Delete wreck {P}; retain\nrock {Q}",
        f"Delete wreck {P}. Do not\ndelete rock {Q}",
        f"NOTICE  CHART  CORRECTION\n13/26   803    Delete wreck {P}; retain\n{' ' * 15}rock {Q}",
    ],
)
def test_what_denies_a_command_may_end_the_line_above_it(text: str) -> None:
    bulletin = parse(HEAD + text)
    assert errors(bulletin)
    assert ("delete", "rock", [AT_Q]) not in told(bulletin)


def test_a_line_end_may_cut_the_thing_behind_a_semicolon() -> None:
    text = f"Insert special buoy {P}; starboard-hand\nbuoy {Q}; wreck {R}"
    assert [kind for _, kind, _ in told(parse(HEAD + text))] == [
        "buoy_special", "buoy_lateral_starboard", "wreck",
    ]  # fmt: skip


@pytest.mark.parametrize("line", ["(c) as (b) but dries 1.2m", "(c) similar to the above"])
def test_an_item_with_the_next_letter_is_not_lost_among_the_remarks(line: str) -> None:
    bulletin = parse(f"{HEAD}Insert\n(a) wreck {P}\n(b) rock, {Q}\n{line}\n")
    assert "item-without-position" in errors(bulletin)


def test_a_sentence_with_the_next_letter_is_a_remark() -> None:
    text = f"{HEAD}Insert\n(a) wreck {P}\n(b) rock {Q}\n(c) The survey was made in 2025.\n"
    assert not errors(parse(text))


def test_figures_of_a_depth_on_two_lines_are_not_shared_out() -> None:
    bulletin = parse(f"{HEAD}Insert\ndangerous wreck, least depth 1\n- 4 -\n2.5m {P}\n")
    assert "depth-figures-apart" in errors(bulletin)


COLUMN = f"""\
   {P}   insert  submarine cable, joining the three
   {Q}           positions in this column
   {R}
   46-02.00S 122-00.00W   insert  legend "HV Cable"
   46-03.00S 122-00.00W   move    special buoy, from here
   46-03.50S 122-00.00W           to here
   46-04.00S 122-00.00W   delete  wreck
"""


def test_places_in_front_go_on_with_the_item_that_counts_them() -> None:
    cable, legend, buoy, wreck = actions_of(parse(HEAD + COLUMN))
    assert cable.geometry.shape == "line"
    assert [len(one.geometry.positions) for one in (cable, legend, buoy, wreck)] == [3, 1, 1, 1]
    assert [one.iso6709 for one in buoy.destination.positions] == ["-4603.50-12200.00/"]
    assert not codes(parse(HEAD + COLUMN))


def test_places_that_an_item_lacks_may_be_those_in_front_of_the_next() -> None:
    text = COLUMN.replace("positions in this column", "and the shore")
    bulletin = parse(HEAD + text)
    assert "place-of-neighbour" in errors(bulletin)
    assert ("insert", "legend", [AT_R, "-4602.00-12200.00/"]) not in told(bulletin)


def test_a_colon_may_part_sectors_from_their_light() -> None:
    text = f"insert sector light, Oc.WRG.8s17m12/9/8M: G 200°-231°, W 231°-239°, R 239°-270° {P}"
    (action,) = actions_of(parse(HEAD + text))
    assert [one.colour for one in action.feature.light.sectors] == ["G", "W", "R"]
