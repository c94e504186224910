"""Lines that lead to a block or sketch that goes with the notice, and are no item.

Common practice, no published source.
"""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, HEAD, P, errors, told

LINES = [
    "See accompanying chartlet.",
    "See accompanying block",
    "See chartlet.",
    "Refer to the accompanying sketch",
    "Please see the attached diagram.",
    "See coloured block.",
]


@pytest.mark.parametrize("line", LINES)
@pytest.mark.parametrize("verb", ["Delete", "Insert"])
def test_such_a_line_is_no_item(verb: str, line: str) -> None:
    bulletin = parse(f"{HEAD}{verb}\n{line}\nwreck {P}\n")
    assert told(bulletin) == [(verb.lower(), "wreck", [AT_P])]
    assert errors(bulletin) == set()
    assert [one.text for one in bulletin.notices[0].remarks] == [line]


def test_a_block_itself_is_an_item() -> None:
    bulletin = parse(f"{HEAD}Insert accompanying block {P}\nDelete wreck {P}\n")
    assert told(bulletin) == [("insert", "block", [AT_P]), ("delete", "wreck", [AT_P])]
