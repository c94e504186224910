"""Numbers of notices in a column at the right of their headings, with a word for a notice."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q, errors, usable_of

BODY = (
    f"Subject: wreck.\n\nTo be added:\n  - wreck, {P}\n\nCharts: 802, previous notice 30/2026.\n"
)
MORE = f"""

TARN CHANNEL                             Notice 42/2026
Subject: pile.

To be removed:
  - pile, {Q}

Charts: 803, previous notice 31/2026.
"""

HEADS = {
    "capitals": ("QUILL SOUND, NORTH ENTRANCE              Notice 41/2026", "41/26"),
    "little space": ("QUILL SOUND, NORTH ENTRANCE AND THE BANKS  Notice 41/2026", "41/26"),
    "small letters": ("Quill Sound, north entrance              Notice 41/2026", "41/26"),
    "temporary": ("QUILL SOUND, NORTH ENTRANCE           Notice 41(T)/2026", "41(T)/26"),
    "sign": ("QUILL SOUND, NORTH ENTRANCE           Notice No. 41/2026", "41/26"),
    "NM": ("QUILL SOUND                              NM 41/26", "41/26"),
    "below a rule": ("------------------------\nQUILL SOUND              Notice 41/2026", "41/26"),
}


@pytest.mark.parametrize(("head", "number"), HEADS.values(), ids=HEADS)
def test_opens_a_notice(head: str, number: str) -> None:
    bulletin = parse(
        f"TAVRENNE HYDROGRAPHY\nIssue 9 - 11 September 2026\n\n\n{head}\n{BODY}{MORE}"
    )
    assert [one.id for one in bulletin.notices] == [number, "42/26"]
    assert [one.chart for notice in bulletin.notices for one in notice.charts] == ["802", "803"]
    assert (bulletin.notices[0].heading or "").lower().startswith("quill sound")
    assert usable_of(bulletin) == [("insert", "wreck"), ("delete", "pile")]
    assert not errors(bulletin)


@pytest.mark.parametrize(
    "line",
    [
        "802 QUILL SOUND                          Notice 41/2026",
        "Source: Quill Sound pilots               Notice 41/2026 refers",
    ],
)
def test_notice_before_or_a_chart_opens_none(line: str) -> None:
    bulletin = parse(
        f"40/26 QUILL SOUND.\nChart 802 [30/26]\nInsert wreck {P}\n\n{line}\nAll told.\n"
    )
    assert [one.id for one in bulletin.notices] == ["40/26"]


def test_rows_of_a_list_open_none() -> None:
    rows = "QUILL SOUND          Notice 41/2026\nTARN CHANNEL         Notice 42/2026\n"
    bulletin = parse(f"{rows}\n43/26 QUILL SOUND.\nChart 802 [30/26]\nInsert wreck {P}\n")
    assert "41/26" not in [one.id for one in bulletin.notices]


def test_cancellation_behind_a_source_is_read() -> None:
    text = f"40/26 QUILL SOUND.\nChart 802 [30/26]\nInsert wreck {P}\n\n"
    (notice,) = parse(f"{text}Source: Port Ellory. Notice 32(P)/2026 is cancelled.\n").notices
    assert [(one.number, one.status) for one in notice.cancels] == [(32, "preliminary")]
