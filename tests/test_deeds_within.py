"""A further deed in the words of an item: its thing is no value of the one that is read."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, errors, usable_of


@pytest.mark.parametrize(
    "words",
    [
        f"Insert wreck {P}, deleting depth 12m",
        f"Insert wreck {P}   (deleting depth 12m)",
        f"Insert wreck, erasing the charted depth 12m {P}",
        f"Insert wreck {P}, obliterating depth 12m",
        f"Insert wreck {P}, taking out depth 12m",
        f"Insert wreck {P}, covering depth 12m",
        f"Insert wreck {P}, depth 12m goes",
        f"Insert wreck ({P}), delete adjacent depth 12m",
        f"Insert rock ({P}), delete nearby depth 4m",
        f"Insert light-buoy Fl.R.3s ({P}), remove the adjacent light-buoy",
        f"Insert legend, Foul, {P}, deleting depth 12m",
        f"Replace wreck by rock {P}, deleting depth 12m",
        f"Delete wreck {P}, adding depth 9m",
    ],
)
def test_a_further_deed_holds_the_item(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert usable_of(bulletin) == []
    assert "verb-within-words" in errors(bulletin)


@pytest.mark.parametrize(
    ("words", "kind"),
    [
        (f"Insert rock, covering at high water {P}", "rock"),
        (f"Insert outfall, covering at high water {P}", "outfall"),
        (f'Insert legend, "Deleting depth 12m" {P}', "legend"),
        (f"Insert beacon, marking landing for removing passengers {P}", "beacon_generic"),
    ],
)
def test_what_a_thing_does_itself_is_no_deed(words: str, kind: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert "verb-within-words" not in errors(bulletin)
    assert [one.feature.kind for one in bulletin.notices[0].charts[0].actions] == [kind]


@pytest.mark.parametrize(
    "words",
    [
        f"Replace light-buoy by light-float, moved to {P}",
        f"Replace light-buoy by light-float, shifted into {P}",
        f"Replace beacon by light-beacon, relocated, {P}",
        f"Delete light-buoy, moved to {P}",
        f"Insert light-float (moved) {P}",
    ],
)
def test_a_thing_that_is_moved_as_well_has_two_places(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert "verb-within-words" in errors(bulletin)
    assert usable_of(bulletin) == []


@pytest.mark.parametrize(
    "words",
    [
        f'Insert legend, "Moved to north" {P}',
        f"Insert obstruction, shifted sand {P}",
        f"Move light-buoy from {P} to 46-00.50S 122-00.00W",
    ],
)
def test_nothing_is_moved_besides(words: str) -> None:
    assert "verb-within-words" not in errors(parse(f"{HEAD}{words}\n"))
