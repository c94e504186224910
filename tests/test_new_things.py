"""`New:` among the commands of a list, and where it tells the new state of something else."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, WRECK_AND_ROCK, P, Q, errors, told

AS_A_COMMAND = {
    "a key": f"New: wreck at {P}\nRemoved: rock at {Q}",
    "capitals": f"NEW: wreck at {P}\nGONE: rock at {Q}",
    "a column": f"New       wreck at {P}\nRemoved   rock at {Q}",
    "the place below": f"New:  wreck at\n      {P}\nRemoved:  rock at {Q}",
    "over its items": f"New:\n  wreck at {P}\nRemoved:\n  rock at {Q}",
    "newly laid": f"Newly laid   wreck at {P}\nLifted   rock at {Q}",
}


@pytest.mark.parametrize("body", AS_A_COMMAND.values(), ids=AS_A_COMMAND)
def test_what_is_new_is_to_be_inserted(body: str) -> None:
    bulletin = parse(f"{HEAD}{body}\n")
    assert told(bulletin) == WRECK_AND_ROCK
    assert not errors(bulletin)


def test_it_holds_for_the_items_below() -> None:
    bulletin = parse(f"{HEAD}New:  wreck at {P}\n      rock at {Q}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("insert", "rock", [AT_Q])]


def test_it_stands_below_a_change_that_is_whole() -> None:
    bulletin = parse(f"{HEAD}Altered: range of light to 3M at {Q}\nNew: wreck at {P}\n")
    assert told(bulletin) == [("amend", "light", [AT_Q]), ("insert", "wreck", [AT_P])]


AS_A_STATE = {
    "below a change": f"Altered: light Fl.R.5s at {P}\nNew: light Fl.R.3s at {P}",
    "above the old": f"New: light buoy Fl.R.3s at {P}\nOld: buoy at {P}",
    "below the old": f"Old: buoy at {P}\nNew: light buoy Fl.R.3s at {P}",
    "in columns": f"NEW   light buoy Fl.R.3s   {P}\nOLD   buoy   {P}",
    "below words": f"Light, Tarn Point, {P}\nNew: light Fl.R.3s at {P}",
    "below a move": f"Moved: buoy at {P}\nNew: buoy at {Q}",
    "below the old place": f"Moved: buoy from {P}\nNew: buoy at {Q}",
}


@pytest.mark.parametrize("body", AS_A_STATE.values(), ids=AS_A_STATE)
def test_beside_an_old_state_it_inserts_nothing(body: str) -> None:
    assert "insert" not in [verb for verb, _, _ in told(parse(f"{HEAD}{body}\n"))]
