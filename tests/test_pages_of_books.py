"""Changes of books: `Page 88, line 3: for "16 miles" read "14 miles"`."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_Q, HEAD, P, Q, actions_of, errors, told

ENTRIES = [
    "Page 88, lines 12 to 14: strike out the sentence on the fishing stakes.",
    'Page 91, line 3: for "16 miles" read "14 miles".',
    'Page 88, paragraph 3: delete the words "fishing stakes".',
    f'Page 91: insert after line 3 "A wreck lies in {P}".',
    'p. 91, left column, line 2: insert "A wreck lies there".',
]


@pytest.mark.parametrize("entry", ENTRIES)
def test_an_entry_of_a_book_commands_nothing(entry: str) -> None:
    bulletin = parse(f"74/26   TAVRENNE PILOT, SECOND EDITION\n{entry}\n")
    assert actions_of(bulletin) == []
    assert not errors(bulletin)
    assert " ".join(bulletin.notices[0].remarks[0].text.split()) == " ".join(entry.split())


@pytest.mark.parametrize("entry", ENTRIES)
def test_items_beside_it_keep_their_own(entry: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {Q}\n\n{entry}\nInsert rock {Q}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_Q]), ("insert", "rock", [AT_Q])]


CODED = [
    f"Sailing Directions NP 55, page 123: delete line 12, insert: Wreck {P}",
    f"ENC TV4CORV1: insert rock {P}",
    f"ENC cell TV4CORV1: delete wreck {P}",
]


@pytest.mark.parametrize("entry", CODED)
def test_a_book_or_cell_told_by_its_code_is_no_chart(entry: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {Q}\n{entry}\nInsert rock {Q}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_Q]), ("insert", "rock", [AT_Q])]
    assert entry in [one.text for one in bulletin.notices[0].remarks]
