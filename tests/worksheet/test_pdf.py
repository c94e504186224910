"""The PDF work sheet: every position digit for digit, every character shown, whole actions."""

from __future__ import annotations

import re
from functools import cache

import pypdfium2
import pytest

import noticeparse
from noticeparse.caution import CAUTION
from noticeparse.worksheet.collecting import chart_sheets
from noticeparse.worksheet.documents import sheet_document
from noticeparse.worksheet.fonts import register, showable
from tests.worksheet.week import CORPUS, WEEK, chart_list, sheets_of

_POSITION = re.compile(r"([0-9]+)°([0-9.]+)'([NS])\s+([0-9]+)°([0-9.]+)'([EW])")


def texts_of(document: bytes) -> list[str]:
    """The words of each page, its lines joined."""
    pages = pypdfium2.PdfDocument(document)
    return [" ".join(page.get_textpage().get_text_range().split()) for page in pages]


@cache
def pages_of(text: str) -> list[str]:
    return texts_of(sheet_document(sheets_of(text, charts=chart_list()), "pdf"))


def iso6709(match: re.Match[str]) -> str:
    """The figures of a position on the sheet in the form of the records."""
    north, north_minutes, ns, east, east_minutes, ew = match.groups()
    latitude = f"{'-' if ns == 'S' else '+'}{north}{north_minutes}"
    return f"{latitude}{'-' if ew == 'W' else '+'}{east}{east_minutes}/"


@pytest.mark.parametrize("name", ["demo", "demo_faulty"])
def test_positions_are_those_of_the_records(name: str) -> None:
    text = (CORPUS / f"{name}.txt").read_text("utf-8")
    bulletin = noticeparse.parse(text)
    wanted = []
    for chart in ("802", "803"):
        for notice in bulletin.notices:
            for section in notice.charts:
                for action in section.actions if section.chart == chart else []:
                    if action.usable:
                        ends = [action.geometry, getattr(action, "destination", None)]
                        wanted += [p.iso6709 for end in ends if end for p in end.positions]
    found = [iso6709(match) for match in _POSITION.finditer(" ".join(pages_of(text)))]
    assert found == wanted


def test_faulty_position_stands_as_written_only() -> None:
    text = (CORPUS / "demo_faulty.txt").read_text("utf-8")
    words = " ".join(pages_of(text))
    assert "The notice says, week.txt:11: Delete depth 12.4m 47°73'.02S., 123°44'.31W." in words
    assert "73.02'S" not in words
    assert words.count("Must not be applied") == 1


def test_every_page_has_the_chart_and_the_caution() -> None:
    pages = pages_of(WEEK)
    assert len(pages) > 2
    for number, page in enumerate(pages, 1):
        assert f"Chart 803 {CAUTION}" in page
        assert f"{number} / {len(pages)}" in page


def test_what_the_page_says_stands_here_too() -> None:
    words = " ".join(pages_of(WEEK))
    (sheet,) = sheets_of(WEEK, charts=chart_list())
    assert sheet.account() in words
    assert all(alarm in words for alarm in sheet.alarms)
    assert words.count("checked by colleague") == 9
    assert words.count(" applied checked by colleague") == 9
    for line in sheet.lines():
        for told in [*line.facts, *line.told]:
            assert " ".join(told.words.split()) in words
    for panel in sheet.panels:
        for block in panel.blocks:
            for remark in block.remarks:
                assert " ".join(remark.split()) in words


def test_actions_are_whole() -> None:
    pages = pages_of(WEEK)
    (sheet,) = sheets_of(WEEK, charts=chart_list())
    for line in sheet.lines():
        words = " ".join(line.written.split())
        (page,) = [page for page in pages if words in page]
        assert all(told.words in page for told in line.told)


def test_action_longer_than_a_page() -> None:
    corners = "\n".join(f"46°{n // 60:02}'.{n % 60:02}S., 123°30'.00W." for n in range(300))
    head = "11/26 Quill Sound.\nChart 802 [10/26] WGS84\nInsert submarine cable, joining"
    pages = pages_of(f"{head}\n{corners}")
    assert len(pages) > 4
    assert len(_POSITION.findall(" ".join(pages))) == 300


NAMES = ("′", "″", "°", "₆", "½", "¼", "é", "ø", "Ł", "Ω", "Ж", "–", "“", "’", "×", "±", "→")


def test_typeface_has_what_notices_are_written_with() -> None:
    lacks = [one for one in NAMES if ord(one) not in register()]
    assert lacks == ["→"]
    digits = [chr(0x2080 + number) for number in range(10)]
    assert not [one for one in digits if ord(one) not in register()]


@pytest.mark.parametrize("sign", [*NAMES, "⚓", "日", "\U0001f6a2", "\x07"])
def test_no_character_vanishes(sign: str) -> None:
    head = "11/26 Quill Sound.\nChart 802 [10/26] WGS84\n"
    bulletin = noticeparse.parse(f"{head}Insert depth 8m 46-00.00S 123-00.00W\n")
    notice = bulletin.notices[0].model_copy(update={"heading": f"A{sign}B"})
    bulletin = bulletin.model_copy(update={"notices": [notice]})
    words = " ".join(texts_of(sheet_document(chart_sheets([("a", bulletin)], None), "pdf")))
    shown = f"A{sign}B" if ord(sign) in register() else showable(f"A{sign}B")
    assert f"11/26 {shown} " in words
    if sign in ("⚓", "日", "→"):
        assert shown == f"A[U+{ord(sign):04X}]B"


def test_same_bytes() -> None:
    sheets = sheets_of(WEEK, charts=chart_list())
    assert sheet_document(sheets, "pdf") == sheet_document(sheets, "pdf")


def test_markup_in_words_is_no_markup() -> None:
    text = WEEK.replace("Works. Lights", "<b>Works</b> &amp; <img src='x'/>")
    assert "<b>Works</b> &amp; <img src='x'/>" in " ".join(pages_of(text))


def test_head_of_a_notice_stands_with_its_first_action() -> None:
    """At whatever height of the page a notice begins."""
    for filler in range(1, 9):
        first = "2430/26  TAVRENNE ISLANDS - Quill Sound - Wreck.\nChart 802 WGS84\n" + "".join(
            f"Insert wreck 47°18'.{n:02}S., 123°44'.20W.\n" for n in range(filler)
        )
        corners = "".join(f"   47°{15 + n % 5}'.{n:02}S., 123°44'.20W.\n" for n in range(14))
        second = (
            "\n2431/26  TAVRENNE ISLANDS - Quill Sound - Cable.\nChart 802 WGS84\n"
            f"Insert submarine cable, joining\n{corners}"
        )
        (sheet,) = sheets_of(first + second, "802")
        pages = texts_of(sheet_document([sheet], "pdf"))
        (head,) = [n for n, words in enumerate(pages) if "Quill Sound - Cable" in words]
        assert "submarine cable" in pages[head]
