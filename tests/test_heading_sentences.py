"""Sentences that begin on the line of the number and heading of their notice."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, P, codes, told

FOOT = "Chart 802 (previous 588/26).\n"


@pytest.mark.parametrize(
    ("said", "read"),
    [
        (f"The port-hand buoy in {P} has been removed.", ("delete", "buoy_lateral_port")),
        (f"A dangerous wreck has been found in {P}.", ("insert", "wreck_dangerous")),
    ],
)
@pytest.mark.parametrize("heading", ["QUILL SOUND", "QUILL SOUND, THE NARROWS", "Quill Sound"])
def test_a_sentence_behind_a_heading_is_no_part_of_it(
    heading: str, said: str, read: tuple[str, str]
) -> None:
    bulletin = parse(f"613/26. {heading}. {said}\n{FOOT}")
    assert bulletin.notices[0].heading == heading
    assert told(bulletin) == [(*read, [AT_P])]
    assert not codes(bulletin)


def test_a_remark_behind_a_heading_has_its_subject() -> None:
    bulletin = parse(f"614(T)/26. QUILL SOUND. The beacon in {P} is missing.\nChart 802.\n")
    (notice,) = bulletin.notices
    assert notice.heading == "QUILL SOUND"
    assert [one.text for one in notice.remarks] == [f"The beacon in {P} is missing."]


@pytest.mark.parametrize("heading", ["QUILL SOUND. The Narrows", "QUILL SOUND. A New Light"])
def test_a_name_or_a_command_behind_a_heading_opens_no_sentence(heading: str) -> None:
    bulletin = parse(f"613/26. {heading}. Insert wreck {P}\n{FOOT}")
    assert bulletin.notices[0].heading == heading
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
