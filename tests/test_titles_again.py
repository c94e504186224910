"""The title of the paper, said again where a page ends."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, P, Q, actions_of, errors, told

TOP = "CORVANE LIGHTS OFFICE               sheet 18 of 2026\n\n"
FIRST = f"12/26 Quill Sound.\nChart 802 [3/26] WGS84\nINSERT   light, Fl.R.2s   {P}\n"
SECOND = f"13/26 Quill Sound.\nChart 802 [12/26] WGS84\nDELETE   wreck   {Q}\n"


@pytest.mark.parametrize("beside", ["18/2026, over", "sheet 18, continued", "2026"])
def test_the_title_below_a_list_is_no_item(beside: str) -> None:
    bulletin = parse(f"{TOP}{FIRST}\nCORVANE LIGHTS OFFICE          {beside}\n\n{SECOND}")
    assert told(bulletin) == [("insert", "light", [AT_P]), ("delete", "wreck", [AT_Q])]
    assert len(actions_of(bulletin)) == 2
    assert errors(bulletin) == set()


@pytest.mark.parametrize(
    "line",
    [
        "CORVANE LIGHTS OFFICE          Fl.R.2s",
        "CORVANE LIGHTS          18/2026, over",
    ],
)
def test_other_words_may_be_of_an_item(line: str) -> None:
    bulletin = parse(f"{TOP}{FIRST}\n{line}\n\n{SECOND}")
    assert errors(bulletin) == {"verb-unknown"}


def test_the_head_of_a_notice_is_no_title() -> None:
    heads = [f"QUILL SOUND WATERS     {number}/26\n" for number in (12, 13, 12)]
    chart = "Chart 802 [3/26] WGS84\nInsert wreck " + P
    bulletin = parse("".join(f"{head}{chart}\n\n" for head in heads))
    assert len(bulletin.notices) == 3
