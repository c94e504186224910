"""Properties whose nouns end as those of deeds do, and words that are of a thing and no limit."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Amend
from noticeparse.records.depth import Clearance
from tests.short_notices import HEAD, P, actions_of, codes, errors


@pytest.mark.parametrize(
    ("words", "kind"),
    [
        ("clearance of overhead cable from 24m to 22m", "cable_overhead"),
        ("clearance of bridge from 24m to 22m", "bridge"),
        ("the clearance of the bridge to 22m", "bridge"),
    ],
)
def test_a_clearance_is_amended_and_nothing_is_cleared(words: str, kind: str) -> None:
    bulletin = parse(f"{HEAD}Amend {words} {P}\n")
    (action,) = actions_of(bulletin)
    assert isinstance(action, Amend)
    assert (action.feature.kind, action.usable) == (kind, True)
    assert [one.property for one in action.changes] == ["clearance"]
    new = action.changes[0].new
    assert isinstance(new, Clearance)
    assert str(new.value_m) == "22"
    assert errors(bulletin) == set()


def test_a_designation_is_a_name() -> None:
    (action,) = actions_of(parse(f'{HEAD}Amend designation of buoy from "E3" to "E4" {P}\n'))
    assert isinstance(action, Amend)
    assert action.usable
    assert [(one.property, one.old, one.new) for one in action.changes] == [("name", "E3", "E4")]


@pytest.mark.parametrize(
    "words",
    [
        "Amend clearance of wreck to 14m",
        "Insert clearance of wreck",
        "Delete clearance of bridge",
        "Amend insertion of rock",
        "Amend clearance of bridge from 24m to 22m, removal of pier",
        # No value of a record is a bearing.
        "Amend bearing of leading line from 044° to 045°",
    ],
)
def test_deeds_and_what_no_record_holds_are_held(words: str) -> None:
    bulletin = parse(f"{HEAD}{words} {P}\n")
    assert errors(bulletin) != set()
    assert not any(one.usable for one in actions_of(bulletin))


@pytest.mark.parametrize(
    "words", ["well (suspended)", "wellhead, suspended", "depth 5.2m (unconfirmed)"]
)
def test_a_state_of_the_thing_is_no_limit(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert {words} {P}\n")
    assert [one.usable for one in actions_of(bulletin)] == [True]
    assert codes(bulletin) == set()


@pytest.mark.parametrize(
    "words", ["wreck (suspended)", "wreck (unconfirmed)", "depth 5.2m (unconfirmed) (disregard)"]
)
def test_the_same_words_of_another_thing_limit_it(words: str) -> None:
    assert "item-limited" in errors(parse(f"{HEAD}Insert {words} {P}\n"))
