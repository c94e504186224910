"""What is said behind the last item of all in its list.

Common practice, no published source.
"""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, R, actions_of, errors

LISTS = [
    f"Insert\nwreck {P}\nrock {Q}\n",
    f"Insert\n{P} wreck\n{Q} rock\n",
    f"Insert wreck {P}\nInsert rock {Q}\n",
    f"Delete buoy {R}\nInsert\nwreck {P}\nrock {Q}\n",
    f"Insert\nobstruction {R}\n\nInsert\nwreck {P}\nrock {Q}\n",
]


def approximate(text: str) -> list[bool]:
    """Which of the positions of all actions are approximate."""
    return [
        one.geometry.positions[0].quality == "approximate"
        or "position_approximate" in one.feature.status
        for one in actions_of(parse(HEAD + text))
    ]


@pytest.mark.parametrize("items", LISTS[:3])
@pytest.mark.parametrize(
    "words",
    [
        "(both PA)",
        "Both PA",
        "All PA",
        "All: PA",
        "Each PA.",
        "(all are PA)",
    ],
)
def test_both_are_approximate(items: str, words: str) -> None:
    assert approximate(f"{items}{words}\n") == [True, True]
    assert errors(parse(f"{HEAD}{items}{words}\n")) == set()


def test_it_is_said_of_the_list_alone() -> None:
    assert approximate(f"{LISTS[3]}Both PA\n") == [False, True, True]
    assert approximate(f"{LISTS[4]}Both PA\n") == [False, True, True]


@pytest.mark.parametrize("joint", [" (both PA)", ", both PA"])
def test_it_may_stand_on_the_line_of_the_last(joint: str) -> None:
    assert approximate(f"Insert\nwreck {P}\nrock {Q}{joint}\n") == [True, True]
    assert approximate(f"Insert wreck {P} and rock {Q}{joint}\n") == [True, True]


@pytest.mark.parametrize(
    "words", ["Both with topmarks.", "(all with topmark)", "Each with topmark"]
)
def test_both_have_what_goes_with_them(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert\nbeacon {P}\nbeacon {Q}\n{words}\n")
    things = [[c.feature.kind for c in a.feature.companions] for a in actions_of(bulletin)]
    assert things == [["topmark"], ["topmark"]]


@pytest.mark.parametrize(
    "text",
    [
        f"Insert\nwreck {P}\nrock {Q}\nobstruction {R}\nBoth PA\n",
        f"Insert\nobstruction {R}\n\nInsert\nwreck {P}\nrock {Q}\nAll PA\n",
        f"Insert\nwreck {P}\nrock {Q}\nAll positions approximate.\n",
    ],
)
def test_which_are_meant_may_be_open(text: str) -> None:
    bulletin = parse(HEAD + text)
    assert errors(bulletin) == {"cell-tells-more"}
    assert not all(action.usable for action in actions_of(bulletin))


def test_one_item_alone_has_it() -> None:
    assert errors(parse(f"{HEAD}Insert wrecks {P} {Q}\nBoth PA\n")) == set()
    assert approximate(f"Insert wreck {P}\n\nDelete rock {Q}\nPA\n") == [False, True]
