"""Names of places on lines between items, which head what stands below them.

Common practice, no published source.
"""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, actions_of, errors, told

PAIR = [("insert", "wreck", [AT_P]), ("insert", "rock", [AT_Q])]


def names(text: str) -> list[str | None]:
    return [one.feature.name for one in actions_of(parse(HEAD + text))]


@pytest.mark.parametrize(
    "heading",
    [
        "Ellory Harbour:",
        "Ellory Harbour",
        "Dunmarrow Point",
        "Quill Sound.",
        "Ellory Channel",
        "Ellory Pier :",
        "North Mole head",
        "Isle of Ellory Bay",
    ],
)
@pytest.mark.parametrize(
    "items",
    [
        f"Insert\nwreck {P}\n{{}}\nrock {Q}\n",
        f"Insert\n- wreck {P}\n{{}}\n- rock {Q}\n",
        f"Insert\n(a) wreck {P}\n{{}}\n(b) rock {Q}\n",
        f"Insert\n{P} wreck\n{{}}\n{Q} rock\n",
        f"Insert wreck {P}\n{{}}\nInsert rock {Q}\n",
    ],
)
def test_a_heading_is_no_name_of_the_item_above(items: str, heading: str) -> None:
    text = items.format(heading)
    bulletin = parse(HEAD + text)
    assert (told(bulletin), errors(bulletin)) == (PAIR, set())
    assert names(text) == [None, None]
    assert [one.text for one in bulletin.notices[0].remarks] == [heading]


def test_headings_above_every_item_are_no_names() -> None:
    text = f"Insert\nQuill Sound\nwreck {P}\nEllory Harbour\nrock {Q}\n"
    assert told(parse(HEAD + text)) == PAIR
    assert names(text) == [None, None]


@pytest.mark.parametrize("heading", ["Breakwater:", "Ellory breakwater:", "Ellory Pier:"])
def test_a_heading_with_a_colon_is_no_thing(heading: str) -> None:
    text = f"Insert\nlight, Fl.R.3s {P}\n{heading}\nlight, Q.R {Q}\n"
    bulletin = parse(HEAD + text)
    assert told(bulletin) == [("insert", "light", [AT_P]), ("insert", "light", [AT_Q])]
    assert names(text) == [None, None]


@pytest.mark.parametrize("thing", ["light, Fl.R.3s", "light-buoy, Fl.R.3s", "beacon"])
def test_what_may_be_the_name_of_a_mark_holds_it_back(thing: str) -> None:
    bulletin = parse(f"{HEAD}Insert\n{thing} {P}\nDunmarrow Point\nrock {Q}\n")
    assert told(bulletin) == PAIR[1:]
    assert errors(bulletin) == {"cell-rest-doubtful"}


def test_names_below_all_lights_are_theirs() -> None:
    text = f"Insert\nlight, Fl.R.3s {P}\nDunmarrow Point\nlight, Q.R {Q}\nEllory Pier\n"
    assert errors(parse(HEAD + text)) == set()
    assert names(text) == ["Dunmarrow Point", "Ellory Pier"]


def test_the_name_of_a_light_above_another_command_is_its_own() -> None:
    text = f"Insert light, Fl.R.3s {P}\nDunmarrow Point\nDelete rock {Q}\n"
    assert names(text) == ["Dunmarrow Point", None]
    assert errors(parse(HEAD + text)) == set()


@pytest.mark.parametrize("name", ['"Halcyon"', "Ellory Rock", "Brack Shoal"])
def test_other_names_stay(name: str) -> None:
    assert parse(f"{HEAD}Insert\nrock {P}\n{name}\nrock {Q}\n").notices[0].remarks == []
