"""Remarks behind a key whose place stands, or goes on, on the line below.

Common practice, no published source.
"""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import errors

DOTS = "NOTICE ........ 457(T)/26\nPLACE ......... Quill Bay\nCHART ......... 507\n"
COLONS = "Notice: 457(T)/26\nPlace: Quill Bay\nChart: 507\n"
AT = "-4638.40-12200.30/"


@pytest.mark.parametrize(
    ("words", "places"),
    [
        ("A float is moored in 46 38.40 S\n{}122 00.30 W until 3 May 2026.", [AT]),
        ("A float is moored in\n{}46 38.40 S 122 00.30 W until 3 May 2026.", [AT]),
        ("A float is moored in\n{}46 38.40 S\n{}122 00.30 W until 3 May 2026.", [AT]),
        ("A float is moored in 46 38.40 S 122 00.30 W\n{}until 3 May 2026.", [AT]),
        (
            "Works between 46 38.40 S 122 00.30 W and\n{}46 38.60 S 122 00.30 W until 3 May 2026.",
            [AT, "-4638.60-12200.30/"],
        ),
    ],
)
@pytest.mark.parametrize(("head", "key"), [(DOTS, "REMARKS ....... "), (COLONS, "Remarks: ")])
def test_the_place_of_a_remark_stands_on_the_line_below(
    head: str, key: str, words: str, places: list[str]
) -> None:
    indent = " " * len(key)
    bulletin = parse(f"{head}{key}{words.replace('{}', indent)}\n\n")
    assert errors(bulletin) == set()
    (remark,) = bulletin.notices[0].remarks
    assert [one.iso6709 for one in remark.positions] == places


@pytest.mark.parametrize(
    "words", ["in 46 38.40 S until 3 May 2026.", "in 46 38.40 S\n         46 38.60 S."]
)
def test_half_a_place_is_told(words: str) -> None:
    assert errors(parse(f"{COLONS}Remarks: A float is moored {words}\n\n")) == {
        "position-half-missing"
    }


def test_a_place_behind_a_full_stop_is_another_remark() -> None:
    text = f"{COLONS}Remarks: A float is moored.\n         46 38.40 S 122 00.30 W\n\n"
    assert [len(one.positions) for one in parse(text).notices[0].remarks] == [0, 1]


def test_a_distance_that_disagrees_is_told_at_its_own_line() -> None:
    text = (
        "NOTICE ........ 456/26\nPLACE ......... Quill Bay\nCHART ......... 507\n\n"
        "ACTION ........ Insert\nOBJECT ........ Light, Fl.R.5s10m6M\n"
        "POSITION ...... (a) 46 47.20 S  122 03.10 W\n\n"
        "ACTION ........ Insert\nOBJECT ........ Special buoy\n"
        "POSITION ...... 0.5 miles 090° from (a), in (b) 46 47.20 S  122 01.10 W\n"
    )
    (told,) = (one for one in parse(text).findings if one.code == "offset-disagrees")
    assert (told.span.line, text[told.span.start :][:9]) == (11, "0.5 miles")
    (told,) = (
        one
        for one in parse(
            "456/26 Quill Bay.\nChart 507\nInsert light, Fl.R.5s  (a) 46-47.20S 122-03.10W\n"
            "special buoy 0.5 miles 090° from (a), in (b) 46-47.20S 122-01.10W\n"
        ).findings
        if one.code == "offset-disagrees"
    )
    assert (told.span.line, told.span.column) == (4, 1)
