"""Verbs that say what was done, in the place of a command, and words there that are none."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, R, errors, told

PARTICIPLES = [
    ("laid", "insert"),
    ("relaid", "insert"),
    ("built", "insert"),
    ("found", "insert"),
    ("erected", "insert"),
    ("drawn in", "insert"),
    ("taken out", "delete"),
    ("taken up", "delete"),
    ("struck out", "delete"),
    ("crossed out", "delete"),
    ("gone", "delete"),
    ("dismantled", "delete"),
]


@pytest.mark.parametrize(("written", "verb"), PARTICIPLES, ids=[one for one, _ in PARTICIPLES])
def test_what_was_done_is_to_be_charted(written: str, verb: str) -> None:
    for opens in (f"{written}   ", f"{written.capitalize()}: ", f"{written.upper()} - "):
        bulletin = parse(f"{HEAD}lifted   rock   {Q}\n{opens}wreck   {P}\n")
        assert told(bulletin) == [("delete", "rock", [AT_Q]), (verb, "wreck", [AT_P])]
        assert not errors(bulletin)


NO_VERBS = {
    "a colon": ("Removed: rock {Q}", "Fished up: wreck {P}"),
    "four words": ("Removed: rock {Q}", "No longer seen there: wreck {P}"),
    "a dash": ("Removed - rock {Q}", "Dug away - wreck {P}"),
    "a gap": ("removed   rock   {Q}", "fished up   wreck   {P}"),
    "a particle": ("removed   rock   {Q}", "put out   port-hand buoy   {P}"),
    "the place in front": ("{Q}   removed   rock", "{P}   fished up   wreck"),
    "one blank": ("Remove rock {Q}", "Fish up wreck {P}"),
    "an own line": ("Removed:   rock {Q}", "No longer there:   wreck {P}"),
}


@pytest.mark.parametrize("lines", NO_VERBS.values(), ids=NO_VERBS)
def test_the_verb_above_does_not_hold_for_words_in_its_place(lines: tuple[str, str]) -> None:
    first, second = (line.format(P=P, Q=Q) for line in lines)
    bulletin = parse(f"{HEAD}{first}\n{second}\n")
    assert told(bulletin) == [("delete", "rock", [AT_Q])]
    assert "verb-unknown" in errors(bulletin)


def test_a_participle_in_running_text_commands_nothing() -> None:
    text = (
        "12(T)/26 Quill Sound.\nChart 802 [3/26] WGS84\n"
        f"The buoys that the tender\nlaid on the bank in {P} are\nfound out of place.\n"
    )
    bulletin = parse(text)
    assert told(bulletin) == []
    assert not errors(bulletin)


def test_a_name_before_an_item_hangs_under_its_verb() -> None:
    bulletin = parse(f"{HEAD}Laid:   rock {Q}\n        Tarn Point: wreck {P}\nGone:   wreck {R}\n")
    assert [(verb, kind) for verb, kind, _ in told(bulletin)] == [
        ("insert", "rock"),
        ("insert", "wreck"),
        ("delete", "wreck"),
    ]


@pytest.mark.parametrize("mark", ["- ", "  - ", "1. ", "12) ", "(a) ", ""])
def test_a_light_exhibited_is_to_be_charted(mark: str) -> None:
    bulletin = parse(f"{HEAD}{mark}Exhibited: light, Fl.4s9m7M {P}\n")
    assert told(bulletin) == [("insert", "light", [AT_P])]
    assert errors(bulletin) == set()
