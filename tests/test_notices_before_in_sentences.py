"""The notice before in a sentence of the head: `The last correction was Notice 22 of 2026`."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, P, codes, told

HEAD = "31/26\nTAVRENNE ISLANDS. Quill Sound. Wreck.\n\n"
BODY = f"\n\nPut in a wreck in {P}.\n"


def _before(line: str) -> list[tuple[str, int | None]]:
    bulletin = parse(HEAD + line + BODY)
    assert set(map(str, told(bulletin))) == {str(("insert", "wreck", [AT_P]))}
    (notice,) = bulletin.notices
    return [(one.chart, one.previous and one.previous.number) for one in notice.charts]


@pytest.mark.parametrize(
    "line",
    [
        "Chart 802, Quill Sound. The last correction was Notice 22 of 2026.",
        "Chart 802. The last correction is Notice 22 of 2026.",
        "Chart 802, Quill Sound.\nThe last correction was Notice 22 of 2026.",
        "Chart 802, Quill Sound. The last correction to it was Notice 22 of 2026.",
        "Chart 802. The last notice for this chart was 22 of 2026.",
        "Chart 802. The last correction made to this chart was Notice 22 of 2026.",
        "Chart 802, Quill Sound to Long Ness (the last correction was Notice 22 of 2026).",
        "Chart 802. The previous notice was No. 22 of 2026.",
        "Chart 802, previously notice 22 of 2026.",
        "Chart 802. The preceding correction was by Notice 22 of 2026.",
    ],
)
def test_a_sentence_names_the_notice_before(line: str) -> None:
    assert _before(line) == [("802", 22)]


@pytest.mark.parametrize(
    "line",
    [
        "Charts 802 and 803. The last corrections were Notices 22 of 2026 and 30 of 2026.",
        "Charts 802 and 803. The last corrections to these charts were Notices 22 of 2026 and"
        " 30 of 2026.",
        "Charts 802 and 803. The last corrections were 22/26 and 30/26.",
    ],
)
def test_a_sentence_names_those_of_several_charts_in_order(line: str) -> None:
    assert _before(line) == [("802", 22), ("803", 30)]


def test_one_notice_for_several_charts_is_told() -> None:
    line = "Charts 802 and 803. The last correction was Notice 22 of 2026."
    assert _before(line) == [("802", None), ("803", 22)]
    assert "previous-of-some" in codes(parse(HEAD + line + BODY))


def test_the_last_correction_of_something_else_is_none_of_the_chart() -> None:
    assert _before("Chart 802. The last correction of the tables was Notice 22 of 2026.") == [
        ("802", None)
    ]
