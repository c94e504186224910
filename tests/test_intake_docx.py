"""Word files: what styles, sizes, rows, comments and formulas do to the words."""

from __future__ import annotations

import io
import zipfile

import pytest

from noticeparse.intake import Intake, read
from tests.pdf_notices import told

pytestmark = pytest.mark.usefixtures("in_this_process")
_SPACES = (
    'xmlns:w="http://schemas.openxmlformats.org/wordprocessingml/2006/main"'
    ' xmlns:m="http://schemas.openxmlformats.org/officeDocument/2006/math"'
)
_STYLES = (
    '<w:style w:type="character" w:styleId="Sub"><w:rPr><w:vertAlign w:val="subscript"/></w:rPr>'
    '</w:style><w:style w:type="character" w:styleId="Low"><w:basedOn w:val="Sub"/></w:style>'
    '<w:style w:type="character" w:styleId="Old"><w:rPr><w:strike/></w:rPr></w:style>'
    '<w:style w:type="paragraph" w:styleId="OldP"><w:rPr><w:dstrike/></w:rPr></w:style>'
    '<w:style w:type="character" w:styleId="Hid"><w:rPr><w:vanish/></w:rPr></w:style>'
    '<w:style w:type="character" w:styleId="Ring"><w:basedOn w:val="Ring"/></w:style>'
)
_COMMENT = '<w:comment w:id="3"><w:p><w:r><w:t>cancelled</w:t></w:r></w:p></w:comment>'


def run(words: str, properties: str = "") -> str:
    return (
        f"<w:r><w:rPr>{properties}</w:rPr>"
        f'<w:t xml:space="preserve">{words}</w:t></w:r>'
    )  # fmt: skip


def paragraph(*runs: str, style: str = "") -> str:
    named = f'<w:pPr><w:pStyle w:val="{style}"/></w:pPr>' if style else ""
    return f"<w:p>{named}{''.join(runs)}</w:p>"


def row(*cells: str, properties: str = "") -> str:
    within = "".join(f"<w:tc>{one}</w:tc>" for one in cells)
    return f"<w:tbl><w:tr><w:trPr>{properties}</w:trPr>{within}</w:tr></w:tbl>"


def word(body: str) -> Intake:
    made = io.BytesIO()
    with zipfile.ZipFile(made, "w") as file:
        for name, root, words in (
            ("document", "document", f"<w:body>{body}</w:body>"),
            ("styles", "styles", _STYLES),
            ("comments", "comments", _COMMENT),
        ):
            file.writestr(f"word/{name}.xml", f"<w:{root} {_SPACES}>{words}</w:{root}>")
    return read(made.getvalue(), "a.docx")


@pytest.mark.parametrize("style", ["Sub", "Low"])
def test_lowered_by_a_style(style: str) -> None:
    intake = word(paragraph(run("8"), run("6", f'<w:rStyle w:val="{style}"/>'), run(" m")))
    assert (intake.text.strip(), told(intake)) == ("8₆ m", [])


@pytest.mark.parametrize(
    ("style", "code"), [("Old", "text-struck-out"), ("Hid", "text-hidden"), ("Ring", None)]
)
def test_left_out_by_a_style(style: str, code: str | None) -> None:
    intake = word(paragraph(run("a "), run("wreck", f'<w:rStyle w:val="{style}"/>'), run(" b")))
    assert told(intake) == ([code] if code else [])
    assert ("wreck" in intake.text) is (code is None)


def test_left_out_by_the_style_of_its_paragraph_but_for_what_a_run_says() -> None:
    intake = word(
        paragraph(run("Delete "), run("wreck", '<w:dstrike w:val="0"/>'), style="OldP")
        + paragraph(run("next"))
    )
    assert (intake.text.split(), told(intake)) == (["wreck", "next"], ["text-struck-out"])


def test_a_deleted_row_is_left_out() -> None:
    gone = row(paragraph(run("Delete")), paragraph(run("wreck")), properties="<w:del/>")
    intake = word(gone + row(paragraph(run("Insert")), paragraph(run("buoy"))))
    assert (intake.text.strip(), told(intake)) == ("Insert\tbuoy", ["text-struck-out"] * 2)


@pytest.mark.parametrize(
    "how", ['<w:sz w:val="12"/>', '<w:position w:val="-1"/><w:sz w:val="14"/>']
)
def test_a_figure_smaller_than_the_one_it_touches(how: str) -> None:
    intake = word(paragraph(run("depth 8"), run("6", how), run("m")))
    assert told(intake) == ["figure-in-doubt"]
    assert told(word(paragraph(run("depth "), run("86", how), run("m")))) == []


@pytest.mark.parametrize(
    "what", ["<m:oMath><m:r><m:t>6</m:t></m:r></m:oMath>", "<w:r><w:drawing/></w:r>"]
)
def test_what_is_no_text(what: str) -> None:
    intake = word(paragraph(run("depth 8"), what, run("m")))
    assert told(intake) == ["figure-in-doubt", "part-not-read"]
    assert told(word(paragraph(run("a "), what))) == ["part-not-read"]


def test_a_drawing_that_holds_words_is_read() -> None:
    box = (
        f"<w:r><w:drawing><w:txbxContent>{paragraph(run('in'))}</w:txbxContent></w:drawing></w:r>"
    )
    intake = word(paragraph(run("a"), box, run("b")))
    assert (intake.text.split(), told(intake)) == (["a", "in", "b"], [])


def test_comments_and_other_files() -> None:
    mark = '<w:r><w:commentReference w:id="3"/></w:r>'
    intake = word(paragraph(run("Delete 12"), mark, run("4 m")) + "<w:altChunk/>")
    assert told(intake) == ["part-not-read"] * 2
    assert "cancelled" in intake.doubts[0].values["written"]
    assert "124 m" in intake.text


def test_underlined_figures() -> None:
    intake = word(paragraph(run("depth "), run("1.2", '<w:u w:val="single"/>'), run("m")))
    assert told(intake) == ["figure-underlined"]
    assert told(word(paragraph(run("1.2", '<w:u w:val="none"/>')))) == []


def test_cells_of_several_lines() -> None:
    places = "47°13'.05S., 123°44'.20W.", "47°14'.05S., 123°45'.20W."
    where, what = (
        "".join(paragraph(run(one)) for one in lines) for lines in (places, ("wreck", "rock"))
    )
    verbs = paragraph(run("Insert")) + paragraph(run("Delete"))
    paired = word(row(verbs, what, where))
    assert paired.text.split("\n")[:2] == [
        f"Insert\twreck\t{places[0]}", f"Delete\trock\t{places[1]}"
    ]  # fmt: skip
    assert told(paired) == []
    assert told(word(row(paragraph(run("Insert")), what, where))) == ["cells-not-paired"]
