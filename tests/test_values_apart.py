"""Values that a remark tells of a thing above it, which holds none.

Common practice, no published source.
"""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, codes


@pytest.mark.parametrize(
    ("thing", "said"),
    [
        ("wreck", "Least depth 5.1 m."),
        ("wreck", "The wreck has a least depth of 5.1 m."),
        ("special buoy, Fl.Y.5s", "Racon (K)"),
        ("safety zone", "Radius 500 m."),
        ("light, Fl.WRG.5s12m9M", "G 300°-312°, W 312°-318°, R 318°-330°"),
        ("light, Fl.WRG.5s12m9M", "The light shows green from 300° to 312°, white to 318°."),
    ],
)
def test_what_is_told_apart_is_no_plain_remark(thing: str, said: str) -> None:
    assert "value-told-apart" in codes(parse(f"{HEAD}Insert {thing} {P}\n\n{said}\n"))


@pytest.mark.parametrize(
    ("thing", "said"),
    [
        ("wreck, least depth 5.1 m", "The wreck has a least depth of 5.1 m."),
        ("wreck", "The light has a range of 5 M."),
        ("wreck", "The wreck is marked by no buoy."),
        ("wreck", "All depths are in metres."),
        ("light, Fl.R.3s", f"The light stands near {Q}."),
    ],
)
def test_other_remarks_tell_no_value_of_it(thing: str, said: str) -> None:
    assert "value-told-apart" not in codes(parse(f"{HEAD}Insert {thing} {P}\n\n{said}\n"))


def test_what_is_deleted_is_charted_without_values() -> None:
    assert "value-told-apart" not in codes(
        parse(f"{HEAD}Delete wreck {P}\n\nLeast depth 5.1 m.\n")
    )
