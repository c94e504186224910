"""Marks that repeat the kind of the thing above: `do., Fl.R.5s, "4"` below a buoy."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import (
    AT_P,
    AT_Q,
    AT_R,
    HEAD,
    P,
    Q,
    R,
    actions_of,
    codes,
    errors,
    told,
)

BUOY = "light_buoy_port"


@pytest.mark.parametrize(
    "mark", ["do.,", "Do.,", "do,", "do.", "ditto,", "Ditto", "-do-,", "idem,", '",', '"  ']
)
def test_the_mark_repeats_the_words_up_to_the_first_comma(mark: str) -> None:
    first = f'Insert\n   port-hand light-buoy, Fl.R.3s, "2"   {P}\n'
    bulletin = parse(f'{HEAD}{first}   {mark} Fl.R.5s, "4"   {Q}\n   {mark} Q.R, "6"   {R}\n')
    assert told(bulletin) == [("insert", BUOY, [at]) for at in (AT_P, AT_Q, AT_R)]
    lights = [one.feature.light.written for one in actions_of(bulletin) if one.feature.light]
    assert lights == ["Fl.R.3s", "Fl.R.5s", "Q.R"]
    assert [one.feature.name for one in actions_of(bulletin)] == ["2", "4", "6"]
    assert codes(bulletin) == set()


@pytest.mark.parametrize(
    ("above", "mark", "kind"),
    [
        ("special buoy", "do.", "buoy_special"),
        ("special buoy", '"', "buoy_special"),
        ("(a) pile", "(b) do.", "pile"),
        ("Wreck, masts visible", "do., least depth 4.3 m", "wreck_least_depth"),
        ('legend, "Works"', 'do., "Cable"', "legend"),
    ],
)
def test_a_mark_alone_or_with_a_value(above: str, mark: str, kind: str) -> None:
    bulletin = parse(f"{HEAD}Delete\n   {above}   {P}\n   {mark}   {Q}\n")
    assert told(bulletin)[1:] == [("delete", kind, [AT_Q])]
    assert codes(bulletin) == set()


def test_the_mark_stands_below_another_verb_too() -> None:
    bulletin = parse(f"{HEAD}Delete\n   pile   {P}\nInsert\n   do., conspicuous   {Q}\n")
    assert told(bulletin) == [("delete", "pile", [AT_P]), ("insert", "pile", [AT_Q])]


@pytest.mark.parametrize(
    ("above", "mark"),
    [
        ('special light-buoy, Fl.Y.5s, "Ossel"', "do."),
        ('special buoy "Ossel"', 'do., "Quill"'),
        ("light-buoy Fl.R.3s", "do., Fl.R.5s"),
        ("beacon on mole, Fl.R.3s", "do., Fl.R.5s"),
        ("gizmo, red", "do., green"),
    ],
)
def test_what_is_not_certain_to_be_repeated_is_held_back(above: str, mark: str) -> None:
    bulletin = parse(f"{HEAD}Insert\n   {above}   {P}\n   {mark}   {Q}\n")
    assert [one.usable for one in actions_of(bulletin)][1:] == [False]
    assert "item-without-feature" in errors(bulletin)


def test_nothing_is_repeated_from_beyond_other_words() -> None:
    rows = f"   pile, white   {P}\n   The survey goes on in the north.\n   do., red   {Q}\n"
    bulletin = parse(f"{HEAD}Insert\n{rows}")
    assert not actions_of(bulletin)[-1].usable
    first = parse(f"{HEAD}Insert\n   do., Fl.R.5s   {P}\n")
    assert told(first) == []


def test_a_mark_without_a_place_of_its_own_is_the_same_place() -> None:
    bulletin = parse(f"{HEAD}Insert\n   wreck   {P}\n   pile   ditto\n")
    assert "item-without-feature" not in errors(bulletin)


def test_a_key_that_explains_the_marks_is_no_row_of_titles() -> None:
    key = "   do.   repeats the kind of object above it\n\n"
    rows = f"Insert\n   special buoy   {P}\n   do.   {Q}\n"
    bulletin = parse(f"{key}{HEAD}{rows}")
    assert [where for _, _, where in told(bulletin)] == [[AT_P], [AT_Q]]
    assert errors(bulletin) == set()


def test_a_quote_that_is_closed_is_no_mark() -> None:
    bulletin = parse(f'{HEAD}Insert\n   legend, "Works"   {P}\n   ", see note"   {Q}\n')
    assert actions_of(bulletin)[-1].feature.kind != "legend"
