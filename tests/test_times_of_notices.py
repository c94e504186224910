"""For how long a temporary notice holds, told below its commands or above them."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q, actions_of, codes, errors

BODY = f"Insert wreck {P}\nDelete rock {Q}\n"
SAID = {
    "Valid until 30 June 2026.": (None, "2026-06-30"),
    "Valid until 30 June 2026. Divers are at work between\nthe two buoys.": (None, "2026-06-30"),
    "This notice expires on 31 December 2026.": (None, "2026-12-31"),
    "This temporary notice is valid until 30 June 2026.": (None, "2026-06-30"),
    "Until 30 June 2026.": (None, "2026-06-30"),
    "Valid from 1 July 2026 to 30 September 2026.": ("2026-07-01", "2026-09-30"),
}


def _text(mark: str, said: str, *, above: bool = False) -> str:
    head = f"12{mark}/26 Quill Sound.\n"
    chart = "Chart 802 [3/26] WGS84\n"
    return f"{head}{said}\n{chart}{BODY}" if above else f"{head}{chart}{BODY}{said}\n"


@pytest.mark.parametrize("above", [False, True])
@pytest.mark.parametrize("mark", ["(T)", "(P)"])
@pytest.mark.parametrize(("said", "days"), SAID.items())
def test_time_of_a_temporary_notice_limits_no_command(
    said: str, days: tuple[str | None, str], mark: str, above: bool
) -> None:
    bulletin = parse(_text(mark, said, above=above))
    (notice,) = bulletin.notices
    assert notice.valid is not None
    dumped = notice.valid.model_dump(mode="json", by_alias=True)
    assert (dumped["from"], dumped["until"]) == days
    assert [one.usable for one in actions_of(bulletin)] == [True, True]
    assert not errors(bulletin)
    assert bulletin.coverage.unread == 0


@pytest.mark.parametrize("said", ["Valid until 30 June 2026.", "Until 30 June 2026."])
def test_time_below_a_permanent_command_holds_it_back(said: str) -> None:
    bulletin = parse(_text("", said))
    assert not any(one.usable for one in actions_of(bulletin))
    assert codes(bulletin) & {"verb-dated", "verb-limited-beside"}


def test_time_between_commands_may_be_of_the_one_above() -> None:
    wreck, rock = BODY.splitlines()
    text = f"12(T)/26 Quill Sound.\nChart 802\n{wreck}\nUntil 30 June 2026.\n{rock}\n"
    assert not actions_of(parse(text))[0].usable


def test_time_of_another_notice_is_none_of_this() -> None:
    bulletin = parse(_text("(T)", "Notice 9(T)/26 is valid until 30 June 2026."))
    assert bulletin.notices[0].valid is None
