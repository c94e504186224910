"""Paragraphs in brackets below the items of a chart say nothing of the last item."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, codes, usable_of

ITEMS = f"  1) Insert wreck, at {P}\n  2) Delete crane at {Q}\n\n"
READ = [("insert", "wreck"), ("delete", "crane")]


@pytest.mark.parametrize(
    "words",
    [
        "   (The agent says the new wharf is in use already. Nothing more was told; the\n"
        "   pilots know of it.)",
        "(Our agent says that the wharf\nis in use.)",
        "  (The crane has been seen on the new wharf since May, and it is lit at night by two\n"
        "  lamps.)",
        "     (Masters should ask the pilots, who are\n     aware of the wreck.)",
        "   (The wharf was visited.)",
        "   (The harbour master says the wreck\n   will stay where it is; nobody was hurt.)",
    ],
)
def test_are_remarks(words: str) -> None:
    bulletin = parse(f"{HEAD}{ITEMS}{words}\n")
    assert usable_of(bulletin) == READ
    (notice,) = bulletin.notices
    assert any("(" in one.text for one in notice.remarks)
    assert not codes(bulletin)


@pytest.mark.parametrize(
    "words",
    [
        "   (The old wharf beside it is to be deleted, as it has gone; it was of\n   wood.)",
        "   (The above is for plan A only, and it\n   holds for no other.)",
    ],
)
def test_command_or_limit_is_not_passed_over(words: str) -> None:
    assert codes(parse(f"{HEAD}{ITEMS}{words}\n"))
