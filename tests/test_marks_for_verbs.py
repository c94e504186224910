"""Verbs in brackets behind what they concern, and signs that a key gives a verb."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, WRECK_AND_ROCK, P, Q, errors, told

IN_BRACKETS = {
    "place first": f"{P}   wreck   (insert)\n{Q}   rock   (delete)",
    "one blank": f"{P} wreck (insert)\n{Q} rock (delete).",
    "feature first": f"Wreck, {P} (inserted)\nRock, {Q} (to be deleted)",
    "before the places": f"Wreck (insert)    {P}\nRock (delete)     {Q}",
}


@pytest.mark.parametrize("body", IN_BRACKETS.values(), ids=IN_BRACKETS)
def test_a_verb_in_brackets_commands(body: str) -> None:
    bulletin = parse(f"{HEAD}{body}\n")
    assert told(bulletin) == WRECK_AND_ROCK
    assert not errors(bulletin)


def test_a_word_in_brackets_that_is_no_verb_of_ours_is_told() -> None:
    bulletin = parse(f"{HEAD}{P}  wreck  (insert)\n{Q}  rock  (enlarge)\n")
    assert told(bulletin) == WRECK_AND_ROCK[:1]
    assert "item-without-verb" in errors(bulletin)
