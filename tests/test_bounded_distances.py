"""Distances that only bound where a thing lies, and distances that are told as about so far."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, actions_of, errors, usable_of


@pytest.mark.parametrize(
    "words",
    [
        "within 0.5M S of",
        "within about 0.5M S of",
        "up to 2 cables N of",
        "at least 0.5M S of",
        "less than 0.5M 180° from",
        "no more than 2 cables N of",
        "over 1M N of",
        "as far as 2 cables N of",
        "extending up to 0.5M S from",
        "a few cables N of",
        "0.5M off",
    ],
)
def test_a_bound_is_no_distance(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {words} {P}\n")
    assert errors(bulletin) & {"relation-unclear", "offset-not-worked-out"}
    assert usable_of(bulletin) == []


@pytest.mark.parametrize("words", ["about", "approximately", "some", "nearly"])
def test_a_rough_distance_leads_to_an_approximate_place(words: str) -> None:
    (action,) = actions_of(parse(f"{HEAD}Insert wreck {words} 0.5M S of {P}\n"))
    assert action.usable
    assert action.geometry.relation == "from_reference"
    assert [one.quality for one in action.geometry.positions] == ["approximate"]


def test_within_a_distance_of_a_place_is_about_it() -> None:
    (action,) = actions_of(parse(f"{HEAD}Insert wreck within 0.5M of {P}\n"))
    assert (action.usable, action.geometry.relation) == (True, "vicinity")


@pytest.mark.parametrize(
    "words", ["wreck, least depth 5m, 0.5M S of", "wreck 0.5M S of", "wreck 180° 0.5M from"]
)
def test_a_distance_is_exact_without_such_words(words: str) -> None:
    (action,) = actions_of(parse(f"{HEAD}Insert {words} {P}\n"))
    assert action.usable
    assert [one.quality for one in action.geometry.positions] == [None]
