"""Verbs in front of an item that are used less often, and words before the verb."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, actions_of, errors, told


@pytest.mark.parametrize("verb", ["Reinstate", "Re-insert", "Reinsert", "Also insert", "Re-lay"])
def test_what_is_put_in_again_is_inserted(verb: str) -> None:
    bulletin = parse(f"{HEAD}{verb} wreck {P}\nDelete rock {Q}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]
    assert actions_of(bulletin)[0].written_verb == verb
    assert not errors(bulletin)


@pytest.mark.parametrize("verb", ["Reduce", "Increase", "Update", "Upgrade", "Also amend"])
def test_what_grows_or_is_renewed_is_amended(verb: str) -> None:
    bulletin = parse(f"{HEAD}{verb} range of light to 9M {P}\n")
    assert [(a.verb, a.usable, [c.property for c in a.changes]) for a in actions_of(bulletin)] == [
        ("amend", True, ["light.ranges_nm"])
    ]


@pytest.mark.parametrize(
    "words", ["Reduced visibility may be met near", "Increase in traffic is to be expected in"]
)
def test_such_a_word_of_a_sentence_is_no_command(words: str) -> None:
    assert not any(action.usable for action in actions_of(parse(f"{HEAD}{words} {P}\n")))
