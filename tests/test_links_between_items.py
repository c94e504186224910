"""Links that a page of the web has between its notices: `Show on map`, `Export CSV`."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, errors, usable_of


@pytest.mark.parametrize(
    "link",
    [
        "Show on map", "View on the map", "Show more", "Load more results", "Export CSV",
        "Download PDF", "Sort by number", "About this site", "Accept all cookies",
    ],
)  # fmt: skip
def test_a_link_below_an_item_commands_nothing(link: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\n{link}\n\nDelete rock {Q}\n{link}\n")
    assert usable_of(bulletin) == [("insert", "wreck"), ("delete", "rock")]
    assert errors(bulletin) == set()


@pytest.mark.parametrize("words", ["Show wreck", "Show on the chart wreck"])
def test_a_command_with_such_a_verb_stays_one(words: str) -> None:
    assert usable_of(parse(f"{HEAD}{words} {P}\n")) == [("insert", "wreck")]
