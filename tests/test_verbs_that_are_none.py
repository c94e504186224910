"""Words in the place of a verb that deny it, or name two: none is chosen."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.verbs import canonical_verb
from tests.short_notices import AT_P, HEAD, P, Q, errors, told


@pytest.mark.parametrize(
    ("written", "verb"),
    [
        ("insert/delete", None),
        ("Delete / Insert", None),
        ("not insert", None),
        ("has not been removed", None),
        ("never inserted", None),
        ("add/insert", "insert"),
        ("Insert/", "insert"),
        ("to be inserted", "insert"),
    ],
)
def test_what_denies_a_verb_or_names_two_is_none(written: str, verb: str | None) -> None:
    assert canonical_verb(written) == verb


def test_a_heading_of_two_verbs_commands_nothing() -> None:
    bulletin = parse(f"{HEAD}Insert/Delete\n wreck {P}\n rock {Q}\n")
    assert told(bulletin) == []
    assert errors(bulletin) == {"item-without-verb"}


def test_two_verbs_before_a_feature_command_nothing() -> None:
    bulletin = parse(f"{HEAD}Insert/Delete wreck {P}\nAdd/insert rock {Q}\n")
    assert [verb for verb, _, _ in told(bulletin)] == ["insert"]
    assert errors(bulletin) == {"verb-within-words"}


def test_a_key_that_denies_its_verb() -> None:
    text = (
        f"{HEAD}Object: Rock\nAction: not inserted\nPosition: {Q}\n\n"
        f"Object: Wreck\nAction: delete\nPosition: {P}\n"
    )
    bulletin = parse(text)
    assert told(bulletin) == [("delete", "wreck", [AT_P])]
    assert "verb-unknown" in errors(bulletin)


def test_a_column_of_verbs() -> None:
    text = (
        "Notice | Chart | Verb | Object | Position\n"
        f"30/26 | 16 | not insert | buoy | {P}\n31/26 | 16 | insert/delete | rock | {Q}\n"
    )
    bulletin = parse(text)
    assert told(bulletin) == []
    assert errors(bulletin) == {"verb-unknown"}
