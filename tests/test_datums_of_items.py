"""A datum named with a position that is not that of the chart, and positions told on two."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, HEAD, P, Q, codes, errors, places, usable_of

WITHOUT_DATUM = "12/26 Quill Sound.\nChart 802 [3/26]\n"


@pytest.mark.parametrize(
    "words",
    [
        f"{P} on ED50",
        f"{P} (NAD27)",
        f"{P} (WGS84 and ED50)",
        f"{P} WGS84/ED50",
        f"{P} (local datum)",
        f"{P}, old datum",
        f"{P} on European Datum",
        f"{P} [{Q} on ED50]",
        f"{P} ({Q} ED50)",
        f"{P} [{Q}]",
    ],
)
def test_a_position_on_another_datum_than_the_chart_is_held(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {words}\n")
    assert errors(bulletin) & {"position-datum-differs", "position-not-the-same"}
    assert usable_of(bulletin) == []


def test_the_position_on_the_datum_of_the_chart_stays() -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P} (WGS84), {Q} (ED50)\n")
    assert usable_of(bulletin) == [("insert", "wreck")]
    assert places(bulletin)[0] == [AT_P]


def test_two_datums_under_a_chart_that_states_none_are_held() -> None:
    bulletin = parse(f"{WITHOUT_DATUM}Insert wreck {P} (WGS84), {Q} (ED50)\n")
    assert "position-datum-differs" in errors(bulletin)
    assert usable_of(bulletin) == []


def test_a_datum_under_a_chart_that_states_none_is_told() -> None:
    bulletin = parse(f"{WITHOUT_DATUM}Insert wreck {P} (ED50)\n")
    assert "position-datum-not-kept" in codes(bulletin)
    assert usable_of(bulletin) == [("insert", "wreck")]


@pytest.mark.parametrize(
    "words",
    [
        f"wreck {P} (WGS84)",
        f"wreck Tokyo Maru {P}",
        f"depth 4m (chart datum) {P}",
        f'legend, "Old datum" {P}',
        f"wreck {P}\nChart 803 [4/26] WGS72\nInsert wreck {Q}",
    ],
)
def test_no_other_datum(words: str) -> None:
    assert not {one for one in codes(parse(f"{HEAD}Insert {words}\n")) if "position-" in one}
