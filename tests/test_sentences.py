"""What sentences say of a thing: below it, of its light, or to mariners."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Amend, Move, Replace
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, WRECK_AND_ROCK, P, Q, R, errors, told

# text, kind: what a rock gives its name to is no rock
AIDS_ON_ROCKS = [
    ("BRANNOCH ROCK RACON (K)", "racon"),
    ("BRANNOCH ROCK FOG SIGNAL, Horn(3)60s", "fog_signal"),
    ("PELLAN ISLAND FOG SIGNAL", "fog_signal"),
    ("North mole fog signal, Horn 30s", "fog_signal"),
    ("South pier sound signal", "fog_signal"),
    ("South pier racon (K)", "racon"),
    ("South pier, Horn 30s", "pier"),
    ("pier with fog signal", "pier"),
    ("BRANNOCH ROCK Fl(2)10s18m12M", "light"),
    ("BRANNOCH ROCK LIGHT", "light"),
    ("BRANNOCH ROCK", "rock"),
]


@pytest.mark.parametrize(("phrase", "kind"), AIDS_ON_ROCKS)
def test_an_aid_named_by_a_rock_is_no_rock(phrase: str, kind: str) -> None:
    assert told(parse(f"{HEAD}Delete {phrase} {P}\n")) == [("delete", kind, [AT_P])]


class TestToldBelow:
    """A thing with its place, and what became of it on the line below."""

    def test_all_verbs(self) -> None:
        text = (
            f"{HEAD}\nPIER LIGHT, F.R.9m5M, {P}.\n    Elevation altered to 11m.\n\n"
            f"SPIT PORT-HAND BUOY, {Q}.\n    Permanently withdrawn.\n\n"
            f"ELLORY SAFE-WATER LIGHT-BUOY, Mo(A)8s, {R}.\n    Moved to {Q}.\n\n"
            f"JETTY LIGHT, {P}.\n    Established.\n"
        )
        bulletin = parse(text)
        assert [(verb, at) for verb, _, at in told(bulletin)] == [
            ("amend", [AT_P]), ("delete", [AT_Q]), ("move", [AT_R]), ("insert", [AT_P]),
        ]  # fmt: skip
        amend, _, move, _ = bulletin.notices[0].charts[0].actions
        assert isinstance(amend, Amend)
        assert [(c.property, c.new) for c in amend.changes] == [("light.elevation_m", 11)]
        assert isinstance(move, Move)
        assert [one.iso6709 for one in move.destination.positions] == [AT_Q]

    @pytest.mark.parametrize(
        "words", ["Reported removed.", "Temporarily withdrawn.", "Not established."]
    )
    def test_what_tells_less_is_no_verb(self, words: str) -> None:
        bulletin = parse(f"{HEAD}\nPIER LIGHT, {P}.\n    {words}\n")
        assert not told(bulletin)
        assert errors(bulletin)


class TestRemarksAmongCommands:
    """What is said to mariners between or behind commands; no position of it becomes an action."""

    @pytest.mark.parametrize(
        "remark",
        [
            f"\nMariners should keep clear of the ship in {Q} until 3 May.",
            f"\nKeep clear of the works in {Q}.",
            f"\nThe wreck in {Q} will be removed in May.",
            f"Note: a ship lies in {Q}.",
        ],
    )
    def test_remark(self, remark: str) -> None:
        bulletin = parse(f"{HEAD}Insert rock {P}\n{remark}\n\nDelete wreck {R}\n")
        assert told(bulletin) == [("insert", "rock", [AT_P]), ("delete", "wreck", [AT_R])]
        (found,) = bulletin.notices[0].remarks
        assert [one.iso6709 for one in found.positions] == [AT_Q]
        assert errors(bulletin) == set()

    def test_an_item_below_a_heading_is_never_a_remark(self) -> None:
        item = f"Wreck, whose depth should be verified, in {Q}\n"
        bulletin = parse(f"{HEAD}INSERT\n\nRock  {P}\n\n{item}")
        assert bulletin.notices[0].remarks == []
        assert errors(bulletin)

    def test_a_description_in_a_sentence_is_none(self) -> None:
        body = f"INSERT\n\nRock which is awash in {P}\n\nWreck, which has lain long, in {Q}\n"
        assert [one[2] for one in told(parse(HEAD + body))] == [[AT_P], [AT_Q]]


def test_taken_from_a_position_is_its_own_place() -> None:
    bulletin = parse(f"{HEAD}The buoy No 3 has been withdrawn from position {P}.\n")
    assert told(bulletin) == [("delete", "buoy_generic", [AT_P])]
    bulletin = parse(f"{HEAD}The buoy No 3, 045° 200M from position {P}, has been withdrawn.\n")
    assert told(bulletin) == []


@pytest.mark.parametrize(
    ("words", "kind"),
    [
        ("Remove    depth 8.8 m, from:", "sounding"),
        ("Delete depth of 8.8 m from", "sounding"),
        ("Withdraw wreck, least depth 8.8 m, from", "wreck_least_depth"),
        ("Delete sounding 8.8 m, from", "sounding"),
        ("Remove bridge, vertical clearance 20 m, from:", "bridge"),
        ("Erase rock, depth 3 fm, from", "rock"),
    ],
)
def test_what_is_taken_from_a_position_has_its_depth_before_it(words: str, kind: str) -> None:
    assert told(parse(f"{HEAD}{words} {P}\n")) == [("delete", kind, [AT_P])]


@pytest.mark.parametrize(
    "words",
    [
        "Delete rock 50 m from",
        "Delete sounding 50 m from",
        "Delete depth 8.8 m, 50 m from",
        "Delete depth, 50 m from",
        "Insert depth 8.8 m from",
    ],
)
def test_a_distance_from_a_position_is_no_depth(words: str) -> None:
    bulletin = parse(f"{HEAD}{words} {P}\n")
    assert told(bulletin) == []
    assert "offset-not-worked-out" in errors(bulletin)


def test_a_sentence_to_mariners_below_an_item_is_a_remark() -> None:
    advice = ("Mariners are advised to keep clear.", "Masters shall report to the harbour office.")
    text = f"{HEAD}Insert wreck {P}\n{advice[0]}\nDelete rock {Q}\n{advice[1]}\n"
    bulletin = parse(text)
    assert told(bulletin) == WRECK_AND_ROCK
    assert [remark.text for remark in bulletin.notices[0].remarks] == list(advice)
    phrases = [a.feature.text for a in bulletin.notices[0].charts[0].actions]
    assert phrases == ["wreck", "rock"]


def test_what_a_light_now_shows() -> None:
    body = f"The light in position {P} now shows Fl.R.5s8m5M.\n"
    (action,) = parse(HEAD + body).notices[0].charts[0].actions
    assert isinstance(action, Amend)
    assert [(one.property, one.new.written) for one in action.changes] == [  # type: ignore[union-attr]
        ("light", "Fl.R.5s8m5M")
    ]


def test_erratum() -> None:
    body = f"For wreck read dangerous wreck {P}\nFOR depth 5.2m READ depth 4.7m in {Q}\n"
    first, second = parse(HEAD + body).notices[0].charts[0].actions
    assert isinstance(first, Replace)
    assert (first.feature.kind, first.replacement.kind) == ("wreck", "wreck_dangerous")
    assert second.usable
    assert second.feature.depth is not None
    assert str(second.feature.depth.value_m) == "5.2"


class TestPlacesOfStatements:
    """Two statements in one sentence, and the place of each."""

    def test_a_place_that_opens_the_sentence_is_that_of_all(self) -> None:
        text = f"{HEAD}In position {P} a wreck is inserted and the rock is deleted.\n"
        bulletin = parse(text)
        assert told(bulletin) == [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_P])]
        assert [a.feature.text for a in bulletin.notices[0].charts[0].actions] == [
            "a wreck", "the rock",
        ]  # fmt: skip

    @pytest.mark.parametrize(
        ("sentence", "kept"),
        [
            (f"A wreck is inserted in {P} and the rock is deleted.", "wreck"),
            (f"The rock is deleted and a wreck is inserted in {P}.", "wreck"),
        ],
    )
    def test_a_place_within_one_statement_is_not_that_of_the_other(
        self, sentence: str, kept: str
    ) -> None:
        bulletin = parse(f"{HEAD}{sentence}\n")
        assert [(kind, at) for _, kind, at in told(bulletin)] == [(kept, [AT_P])]
        assert errors(bulletin) == {"item-without-position"}

    def test_a_sentence_above_lettered_things_is_no_part_of_their_names(self) -> None:
        text = (
            f"{HEAD}\nThe following changes have been made to lights.\n"
            f"(a) Pier light, {P}.\n    Range reduced to 12M.\n"
            f"(b) Spit light, {Q}.\n    Permanently discontinued.\n"
        )
        bulletin = parse(text)
        assert [verb for verb, _, _ in told(bulletin)] == ["amend", "delete"]
        assert not errors(bulletin)


def test_an_order_that_breaks_off_before_its_thing_is_told() -> None:
    text = (
        f"12/26 Quill Sound.\nFollowing the survey, mariners should insert on chart 802 (last\n"
        f"circular 3/26) a wreck in {P}. The rock in {Q} should be deleted.\n"
    )
    assert "sentence-unread" in [one.code for one in parse(text).findings]


@pytest.mark.parametrize("lead", ["to", "to:", "to position"])
def test_the_new_place_of_a_move_stands_below_its_own_line(lead: str) -> None:
    text = (
        f"{HEAD}   The special buoy is moved from\n     {P}\n   {lead}\n     {Q}\n"
        f"   A wreck is inserted in\n     {R}\n"
    )
    bulletin = parse(text)
    assert told(bulletin) == [("move", "buoy_special", [AT_P]), ("insert", "wreck", [AT_R])]
    (move, _) = bulletin.notices[0].charts[0].actions
    assert isinstance(move, Move)
    assert [one.iso6709 for one in move.destination.positions] == [AT_Q]
    assert errors(bulletin) == set()


@pytest.mark.parametrize("link", ["joining", "through", "running through", "connecting"])
def test_an_area_bounded_by_a_line_is_an_area(link: str) -> None:
    text = f"{HEAD}A marine farm is inserted, bounded by a line {link}\n{P}\n{Q}\n{R}\n"
    (action,) = parse(text).notices[0].charts[0].actions
    assert (action.geometry.shape, len(action.geometry.positions)) == ("area", 3)


@pytest.mark.parametrize(
    "words",
    [
        "The block for chart 802 is printed on the last sheet of this number.",
        "Accompanying blocks are given at the end of the list.",
        "A reproduction can be obtained, the block is attached to this notice.",
        "The chart block is available from the office.",
    ],
)
def test_where_a_block_is_printed_is_a_remark(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\n\n{words}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    assert errors(bulletin) == set()


@pytest.mark.parametrize(
    "words", [f"Insert the accompanying block {Q}", f"The block is to be inserted in {Q}."]
)
def test_a_block_that_is_put_on_the_chart_is_no_remark(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert told(bulletin) == [("insert", "block", [AT_Q])]


def test_a_sentence_goes_on_below_the_place_of_its_thing() -> None:
    text = f"{HEAD}The wreck in\n    {P}\nis deleted.\nA rock is inserted in\n    {Q}\n"
    assert told(parse(text)) == [("delete", "wreck", [AT_P]), ("insert", "rock", [AT_Q])]


def test_the_first_line_of_a_paragraph_stands_in_and_its_rest_goes_on() -> None:
    text = (
        "No. 43 of 2026. QUILL SOUND.\n\n    Chart 802 (depths in metres), last corrected by\n"
        "Notice No. 41 of 2026, is to be altered as follows:\n\n"
        "    A spoil ground, bounded by a line joining latitude 46° 00' 00\" South, longitude\n"
        "122° 00' 00\" West; latitude 46° 00' 30\" South, longitude 122° 00' 00\" West;\n"
        "and latitude 46° 00' 06\" South, longitude 122° 00' 12\" West, is to be inserted.\n\n"
        "    A pier is to be inserted in latitude 46° 00' 00\" South,\n"
        "longitude 122° 00' 00\" West.\n"
    )
    bulletin = parse(text)
    area, pier = bulletin.notices[0].charts[0].actions
    assert (area.feature.kind, area.geometry.shape) == ("spoil_ground", "area")
    assert len(area.geometry.positions) == 3
    assert [one.iso6709 for one in pier.geometry.positions] == ["-460000-1220000/"]
    assert errors(bulletin) == set()


@pytest.mark.parametrize(
    ("words", "old", "new"),
    [
        (f"For the depth of 7.1 m in {P}, a depth of 5.2 m is to be substituted.", 71, 52),
        (f"For a depth of 7.1 m in {P}, a depth of 5.2 m is substituted.", 71, 52),
    ],
)
def test_what_goes_may_stand_behind_for(words: str, old: int, new: int) -> None:
    (action,) = parse(f"{HEAD}{words}\n").notices[0].charts[0].actions
    assert isinstance(action, Replace)
    assert action.usable
    assert (action.feature.depth.value_m * 10, action.replacement.depth.value_m * 10) == (old, new)


@pytest.mark.parametrize(
    "words",
    [
        f"For the light-buoy, Fl.R.3s, the old one, a light-buoy, Fl.R.5s, in {P} is substituted.",
        f"For the wreck in {P} an obstruction is substituted.",
    ],
)
def test_where_it_ends_must_be_plain(words: str) -> None:
    (action,) = parse(f"{HEAD}{words}\n").notices[0].charts[0].actions
    assert not action.usable
