"""A mark behind the bracket of a number belongs to it, and is no part of the heading."""

from __future__ import annotations

import pytest

from noticeparse import parse

BODY = "Chart 802 [2310/26] WGS84\nInsert wreck 47-40.204S 126-28.771W\n"


@pytest.mark.parametrize(
    ("head", "status"),
    [
        ("[2417/26] (T)  QUILL SOUND", "temporary"),
        ("[2417/26](T) QUILL SOUND", "temporary"),
        ("[2417/26] (Temporary) QUILL SOUND", "temporary"),
        ("[2417/26] (T) - QUILL SOUND", "temporary"),
        ("[2417/26] [T] QUILL SOUND", "temporary"),
        ("(2417/26) (T) QUILL SOUND", "temporary"),
        ("2417/26 [T]  QUILL SOUND", "temporary"),
        ("[2417/26] (P)  QUILL SOUND", "preliminary"),
        ("[2417/26] QUILL SOUND (T)", "temporary"),
        ("[2417/26] QUILL SOUND", "permanent"),
    ],
)
def test_the_heading_is_without_the_mark(head: str, status: str) -> None:
    (notice,) = parse(f"{head}\n{BODY}").notices
    assert (notice.number, notice.status, notice.heading) == (2417, status, "QUILL SOUND")


@pytest.mark.parametrize("heading", ["Tavrenne. Wreck", "(Quill) Sound", "T Jetty. Works"])
def test_other_words_stay(heading: str) -> None:
    (notice,) = parse(f"2417/26  {heading}\n{BODY}").notices
    assert notice.heading is not None
    assert notice.heading.strip("(") == heading.strip("(")
