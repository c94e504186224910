"""Names that a capital alone tells, and places that are no names."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.features import read_feature
from tests.short_notices import HEAD, P, Q, R, actions_of, codes

NAMES = [
    ("Ellory light-buoy, Q.R", "Ellory"),
    ("the Ellory beacon", "Ellory"),
    ("Ellory port-hand light-buoy", "Ellory"),
    ("ELLORY light-buoy", "ELLORY"),
    ("light-buoy, Q.R, ELLORY", "ELLORY"),
    ("port-hand light-buoy, Fl.R.3s, ELLORY No 2", "ELLORY No 2"),
    ("light-buoy, Fl.Y.3s, A", "A"),
    ("Brannoch Rock", "Brannoch Rock"),
    ("Halcyon Bank, depth 5m", "Halcyon Bank"),
    ("Ellory Bridge", "Ellory Bridge"),
    ("wreck (Halcyon Star)", "Halcyon Star"),
    ("tower (Ellory Tower)", "Ellory Tower"),
    ("platform 'A'", "A"),
    ("pilot boarding place B", "B"),
    ("tidal stream diamond A", "A"),
    # Words that describe, and colours, are no names.
    ("Abandoned pier", None),
    ("Seasonal light-buoy", None),
    ("light-buoy, Fl.R.3s, RGR", None),
    ("rock (Awash)", None),
    ("Dangerous Wreck", None),
    ("obstruction (Container)", None),
    ("buoy (October)", None),
    ("Sludge Bank", None),
    ("Noth cardinal buoy", None),
    ("light-buoy, VQ, DESTROYED", None),
    ("Ferrocement pier", None),
    ("RED BUOY", None),
    # Places.
    ("wreck N of Dunmarrow Point", None),
    ("wreck SE of Ellory Harbour", None),
    ("buoy in Quill Sound", None),
    ("light-buoy, Q.R, in Ellory Channel", None),
    ("wreck between Ellory Point and Brannoch Head", None),
    ("wreck northeast of the Ellory Point", None),
    ("wreck, Halcyon Star, in Quill Sound", "Halcyon Star"),
    ("Dunmarrow Point light", "Dunmarrow Point"),
]


@pytest.mark.parametrize(("phrase", "name"), NAMES)
def test_name(phrase: str, name: str | None) -> None:
    assert read_feature(phrase).feature.name == name


def test_the_name_of_a_rock_leaves_its_kind() -> None:
    assert read_feature("Brannoch Rock").feature.kind == "rock"
    assert read_feature("Halcyon Bank, depth 5m").feature.kind == "shoal"


@pytest.mark.parametrize("words", ["buoys A, B and C", "light-buoys 1, 2 and 3"])
def test_of_several_names_none_is_that_of_all(words: str) -> None:
    told = parse(f"{HEAD}Insert {words} {P} {Q} {R}")
    (action,) = actions_of(told)
    assert (action.feature.name, action.feature.colours) == (None, [])
    assert codes(told) == {"feature-words-unread"}


def test_a_replacement_has_its_own_name() -> None:
    (action,) = actions_of(parse(f"{HEAD}Replace Ellory light-buoy by Quill light-buoy {P}"))
    assert (action.feature.name, action.replacement.name) == ("Ellory", "Quill")
