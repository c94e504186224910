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


def _bulletin(
    first: str, second: str, *, source: str = "(from the pilots)\n", gap: str = "\n"
) -> str:
    return (
        "TAVRENNE CHART OFFICE\n7 September 2026\n\n"
        f"{first}\n{source}Chart 802 - WGS 84 - previous notice 30/26\n  {P}   Insert   wreck\n"
        f"{gap}{second}\n{source}Chart 803 - WGS 84 - previous notice 31/26\n"
        f"  {Q}   Delete   pile\n"
    )


SIGNS = {
    "sign": ("QUILL SOUND, NORTH. Wreck.      No. 41/26", "TARN SOUND. Pile.      No. 42/26"),
    "full line": (
        "QUILL SOUND, NORTH. Wreck.                      No. 41/26",
        "TARN SOUND, KELM NARROWS. Pile, foul ground.  No. 42/26",
    ),
    "small letters": (
        "Quill Sound, north. Wreck.                No. 41/26",
        "Tarn Sound, Kelm Narrows. Pile, foul.   No. 42/26",
    ),
    "number of a mark": (
        "QUILL SOUND - Light-buoy No 4          No 41/26",
        "TARN SOUND - Pile         No 42/26",
    ),
    "year in words": (
        "QUILL SOUND - Wreck         No. 41 of 2026",
        "TARN SOUND - Pile           No. 42 of 2026",
    ),
    "leaders": ("QUILL SOUND - Wreck ...... No. 41/26", "TARN SOUND - Pile ....... No. 42/26"),
    "degree": ("QUILL SOUND - Wreck       N° 41/26", "TARN SOUND - Pile      N° 42/26"),
    "entry": ("QUILL SOUND - Wreck     Entry 41/26", "TARN SOUND - Pile     Entry 42/26"),
    "stop": ("QUILL SOUND - Wreck       No. 41/26.", "TARN SOUND - Pile       No. 42/26."),
    "star": ("QUILL SOUND - Wreck       No. 41/26 *", "TARN SOUND - Pile      *No. 42/26"),
    "bare": (
        "QUILL SOUND - Wreck                 41/26",
        "TARN SOUND - Pile                   42/26",
    ),
}


@pytest.mark.parametrize(("first", "second"), SIGNS.values(), ids=SIGNS)
@pytest.mark.parametrize("source", ["(from the pilots)\n", ""], ids=["source", "no source"])
def test_sign_for_the_number_opens_a_notice(first: str, second: str, source: str) -> None:
    bulletin = parse(_bulletin(first, second, source=source))
    assert [
        (notice.id, [(chart.chart, len(chart.actions)) for chart in notice.charts])
        for notice in bulletin.notices
    ] == [("41/26", [("802", 1)]), ("42/26", [("803", 1)])]
    assert (bulletin.notices[1].heading or "").lower().startswith("tarn sound")
    assert usable_of(bulletin) == [("insert", "wreck"), ("delete", "pile")]
    assert not errors(bulletin)


def test_no_blank_line_is_needed_above_its_source_or_chart() -> None:
    for source in ("(from the pilots)\n", ""):
        text = _bulletin(*SIGNS["full line"], source=source, gap="")
        assert [one.id for one in parse(text).notices] == ["41/26", "42/26"]


def test_heading_goes_on_below_its_number() -> None:
    first = "QUILL SOUND. Wreck, and others,      No. 41/26\nall of them lit."
    (one, two) = parse(_bulletin(first, SIGNS["sign"][1])).notices
    assert (one.id, two.id) == ("41/26", "42/26")
    assert (one.heading or "").endswith("all of them lit")


@pytest.mark.parametrize(
    "line",
    [
        "Last correction                    No. 41/26",
        "802  Quill Sound                   No. 41/26",
        "The pilots of the sound refer to   No. 41/26",
        "This correction is sent out with   No. 41/26",
    ],
)
def test_sign_for_another_notice_opens_none(line: str) -> None:
    text = f"40/26 QUILL SOUND.\nChart 802 [30/26]\nInsert wreck {P}\n{line}\nAll told.\n"
    assert "41/26" not in [one.id for one in parse(text).notices]
