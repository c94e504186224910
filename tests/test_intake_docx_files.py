"""Whole Word files: tables, page heads, tracked changes, runs struck out or hidden, text boxes."""

from __future__ import annotations

from typing import Any

import pytest
from docx.oxml import parse_xml
from docx.oxml.ns import nsdecls

import noticeparse
from noticeparse.intake import read
from tests.pdf_notices import facts, told
from tests.sent_notices import word

pytestmark = pytest.mark.usefixtures("in_this_process")


def changed(kind: str, words: str) -> Any:
    tag = "delText" if kind in ("del", "moveFrom") else "t"
    return parse_xml(
        f'<w:{kind} {nsdecls("w")} w:id="1" w:author="a"><w:r>'
        f'<w:{tag} xml:space="preserve">{words}</w:{tag}></w:r></w:{kind}>'
    )


class TestDocx:
    """Paragraphs, tables and runs; changes that are kept."""

    def test_records(self) -> None:
        found = noticeparse.read_file(word())
        ((*_, depth, _, _, usable),) = facts(found)
        assert (str(depth), usable) == ("8.6", True)
        assert found.source.media_type.endswith("wordprocessingml.document")

    def test_tables_heads_breaks_and_tabs(self) -> None:
        def paint(made: Any) -> None:
            made.sections[0].header.paragraphs[0].text = "TAVRENNE NOTICES"
            made.add_paragraph("one\ttwo").add_run().add_break()
            table = made.add_table(2, 2)
            for row in range(2):
                for column in range(2):
                    table.cell(row, column).text = f"{row}{column}\nx"
            made.add_paragraph("end")

        intake = read(word(paint))
        assert intake.text.split("\n")[:4] == ["one\ttwo", "00 x\t01 x", "10 x\t11 x", ""]
        (piece,) = intake.furniture
        assert intake.text[slice(*piece)].strip() == "TAVRENNE NOTICES"

    def test_tracked_changes(self) -> None:
        def paint(made: Any) -> None:
            one = made.add_paragraph("least depth ")
            one._p.append(changed("del", "8.2 m"))
            one._p.append(changed("ins", "8.6 m"))
            two = made.add_paragraph("depth 8")
            two._p.append(changed("del", "2"))
            two.add_run(" m")
            made.add_paragraph("moved ")._p.append(changed("moveFrom", "away"))

        intake = read(word(paint))
        assert intake.text.split("\n")[:3] == ["least depth 8.6 m", "depth 8\ufffd m", "moved"]
        assert sorted(told(intake)) == [
            "figure-in-doubt", "text-inserted", *["text-struck-out"] * 3
        ]  # fmt: skip

    def test_struck_and_hidden_runs_and_raised_ones(self) -> None:
        def paint(made: Any) -> None:
            one = made.add_paragraph("Delete ")
            one.add_run("buoy ").font.strike = True
            one.add_run("ghost ").font.hidden = True
            one.add_run("wreck 47")
            one.add_run("o").font.superscript = True
            one.add_run("13'.05S")

        intake = read(word(paint))
        assert intake.text.strip() == "Delete wreck 47°13'.05S"
        assert told(intake) == ["text-struck-out", "text-hidden"]

    def test_counted_items_are_told(self) -> None:
        def paint(made: Any) -> None:
            one = made.add_paragraph("Delete wreck")
            one._p.get_or_add_pPr().get_or_add_numPr().get_or_add_numId().val = 1

        assert told(read(word(paint))) == ["list-number-left-out"]

    def test_a_text_box_is_read_once(self) -> None:
        box = (
            f'<w:r {nsdecls("w")} xmlns:mc="http://schemas.openxmlformats.org/markup-compatibility'
            '/2006"><mc:AlternateContent><mc:Choice Requires="wps"><w:txbxContent><w:p><w:r>'
            "<w:t>in a box</w:t></w:r></w:p></w:txbxContent></mc:Choice><mc:Fallback>"
            "<w:txbxContent><w:p><w:r><w:t>in a box</w:t></w:r></w:p></w:txbxContent>"
            "</mc:Fallback></mc:AlternateContent></w:r>"
        )

        def paint(made: Any) -> None:
            made.add_paragraph("before")._p.append(parse_xml(box))

        assert read(word(paint)).text.split() == ["before", "in", "a", "box"]
