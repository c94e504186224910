"""Marks of notes that stand behind the place of an item, at the end of its line.

Common practice, no published source.
"""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, actions_of, codes, errors

MARKS = [
    ("¹", "¹ Position approximate"),
    ("²", "² PA"),
    ("*", "* PA"),
    ("*)", "*) PA"),
    ("a)", "a) PA"),
    ("(a)", "(a) PA"),
    ("(1)", "(1) Position approximate"),
    ("(1)", "(1) Reported 2025"),
    ("[1]", "[1] PA"),
]


@pytest.mark.parametrize(("mark", "note"), MARKS)
def test_a_note_is_told_of_the_item_with_its_mark(mark: str, note: str) -> None:
    bulletin = parse(f"{HEAD}Insert\nwreck {P} {mark}\nrock {Q}\n{note}\n")
    wreck, rock = actions_of(bulletin)
    assert (wreck.feature.status, rock.feature.status) == ([], [])
    assert rock.geometry.positions[0].quality is None
    (told,) = (one for one in bulletin.findings if one.code == "item-with-note")
    assert told.paths == ["/notices/0/charts/0/actions/0"]


def test_a_note_that_limits_its_item_holds_it_back() -> None:
    bulletin = parse(f"{HEAD}Insert\nwreck {P} ¹\nrock {Q}\n¹ Not on chart 904\n")
    assert errors(bulletin) == {"item-limited"}
    assert [one.usable for one in actions_of(bulletin)] == [False, True]


@pytest.mark.parametrize(
    "text",
    [
        f"Insert\n(a) wreck {P}\n(b) rock {Q}\nDelete buoy close N of (a)\n",
        f"Insert\nwreck (a) {P}\nrock (b) {Q}\n",
        f"Insert wreck {P}\nInsert rock {Q} *\n",
    ],
)
def test_letters_of_items_are_no_marks(text: str) -> None:
    assert "item-with-note" not in codes(parse(HEAD + text))
