"""HTML, mail and .docx: small figures, tables, what is struck out, hidden, attached."""

from __future__ import annotations

import io
import json
import subprocess
import sys
from email.message import EmailMessage
from email.policy import SMTP
from importlib.util import find_spec
from pathlib import Path
from typing import Any

import docx
import httpx2
import pytest
from docx.oxml import parse_xml
from docx.oxml.ns import nsdecls

import noticeparse
from noticeparse.caution import CAUTION
from noticeparse.intake import Intake, NotReadable, apart, kind_of, read
from noticeparse.intake.kinds import ENDINGS
from noticeparse.intake.mail import unflowed
from tests.command import invoke
from tests.pdf_notices import NOTICE, facts, item, told
from tests.pdf_pages import Setting, document
from tests.service import client_of, refused

HEAD = "\n".join(NOTICE) + "\n"
pytestmark = pytest.mark.usefixtures("in_this_process")
WHERE = "47°13'.05S., 123°44'.20W."


def html(body: str) -> Intake:
    return read(f"<!doctype html><html><body>{body}</body></html>".encode())


HTML = [
    ("small figure", "<p>depth 12<sub>4</sub> m", "depth 12₄ m"),
    ("two small figures", "8<sub>25</sub>", "8₂₅"),
    ("small by its style", "8<span style='vertical-align:sub'>6</span>", "8₆"),
    ("raised letter", "47<sup>o</sup>13'", "47°13'"),
    ("raised zero", "47<sup>0</sup>13'", "47°13'"),
    ("raised figure", "note<sup>1</sup>", "note¹"),
    ("fraction", "6<sup>1</sup>&frasl;<sub>4</sub> fm", "6¼ fm"),
    ("entities", "47&deg;13&prime;.05S&nbsp;x &#8322; &frac14;", "47°13′.05S x ₂ ¼"),
    ("line breaks", "a<br>b<br/>c", "a\nb\nc"),
    ("blanks", "a \n\t b<b>c</b> <i>d</i>", "a bc d"),
    ("paragraphs", "<p>a</p><p>b</p>", "a\n\nb"),
    ("list", "<ul><li>a</li><li>b</li></ul>", "a\nb"),
    ("row", "<table><tr><td>a</td> <td>b c</td></tr><tr><th>d<td>e</table>", "a\tb c\nd\te"),
    ("cell of two lines", "<table><tr><td>a<br>b<td><p>c</p><p>d</table>", "a b\tc d"),
    ("page in a cell", "<table><tr><td>" + "<p>x" * 8 + "</table>", "\n\n".join("x" * 8)),
    ("kept lines", "<pre>a  b\n c\n</pre>", "a  b\n c"),
    ("no text", "a<script>x</script><style>y</style><!-- z --><title>t</title>", "a"),
]


class TestHtml:
    """What a person sees of a page, and its small figures."""

    @pytest.mark.parametrize(("body", "text"), [one[1:] for one in HTML], ids=[c[0] for c in HTML])
    def test_text(self, body: str, text: str) -> None:
        intake = html(body)
        assert intake.text.strip() == text
        assert told(intake) == []

    @pytest.mark.parametrize(
        "body",
        [
            "12<sub>a</sub> m",
            "8<sub>6<sup>2</sup></sub>",
            "6<sup>1</sup>/<sub>9</sub>",
            "13<sup>l</sup>.05",
        ],
    )
    def test_what_cannot_be_written_is_held_back(self, body: str) -> None:
        assert told(html(body)) == ["figure-in-doubt"]

    def test_small_figures_reach_the_records(self) -> None:
        body = f"<p>{NOTICE[0]}<p>{NOTICE[1]}<p>Delete depth 12<sub>4</sub> {WHERE}"
        found = noticeparse.read_file(f"<!doctype html><html>{body}".encode())
        ((*_, depth, _, _, usable),) = facts(found)
        assert (str(depth), usable) == ("12.4", True)
        assert found.source.media_type == "text/html"

    def test_struck_out_words_are_left_out_and_told(self) -> None:
        intake = html("Insert <s>wreck</s> buoy <del>old</del><ins>new words</ins> end")
        assert intake.text.strip() == "Insert buoy new words end"
        said = [(one.code, one.values["written"]) for one in intake.doubts]
        assert said == [
            ("text-struck-out", "wreck"),
            ("text-struck-out", "old"),
            ("text-inserted", "new words"),
        ]

    @pytest.mark.parametrize(
        "body",
        [
            "depth 1<s>2</s>3 m",
            "depth 8<s>6</s> m",
            "depth <s>1</s>2 m",
            "depth 8<del>.2</del><ins>.6</ins> m",
        ],
    )
    def test_a_figure_from_which_something_was_struck_is_held_back(self, body: str) -> None:
        intake = html(f"<p>{NOTICE[0]}<p>{NOTICE[1]}<p>Delete {body} {WHERE}")
        assert "figure-in-doubt" in told(intake)
        assert "\ufffd" in intake.text
        assert not any(one[-1] for one in facts(noticeparse.parse(intake.text)))

    @pytest.mark.parametrize(
        ("style", "tag"),
        [
            ("", "small"), ("", "font size=1"), ("", "span style='font-size:60%'"),
            ("", "span style='font:9px serif'"), (".s{font-size:smaller}", "span class=s"),
            ("", "span style='position:relative;top:3px'"), ("#a b{font-size:8pt}", "b"),
        ],
    )  # fmt: skip
    def test_a_figure_smaller_than_the_one_it_touches(self, style: str, tag: str) -> None:
        body = f"<style>{style}</style><p id=a>depth 8<{tag}>6</{tag.split()[0]}> m"
        assert told(html(body)) == ["figure-in-doubt"]
        whole = f"<style>{style}</style><p id=a>depth <{tag}>86</{tag.split()[0]}> m"
        assert told(html(whole)) == []

    def test_lowered_by_a_rule(self) -> None:
        intake = html("<style>.s{vertical-align:sub;font-size:60%}</style>8<i class=s>6</i>m")
        assert (intake.text.strip(), told(intake)) == ("8₆m", [])

    @pytest.mark.parametrize(
        ("style", "code"),
        [
            ("text-decoration:line-through", "text-struck-out"), ("display:none", "text-hidden"),
            ("visibility:hidden", "text-hidden"), ("font-size:0", "text-hidden"),
            ("opacity:0", "text-hidden"), ("position:absolute;left:-9999px", "text-hidden"),
            ("display:none}.x{display:block", None),
        ],
    )  # fmt: skip
    def test_rules_that_hide(self, style: str, code: str | None) -> None:
        intake = html(f"<style>/* x */ p .x{{{style}}}</style><p>a <i class=x>wreck</i> b")
        assert told(intake) == ([code] if code else [])
        assert ("wreck" in intake.text) is (code is None)

    def test_a_dialog_that_is_shut(self) -> None:
        assert told(html("a<dialog>b</dialog>")) == ["text-hidden"]
        assert told(html("a<dialog open>b</dialog>")) == []

    @pytest.mark.parametrize(
        "tag", ["<img alt=6>", "<svg><text>6</text></svg>", "<math><mn>6</mn></math>", "<input>"]
    )
    def test_what_is_no_text(self, tag: str) -> None:
        assert told(html(f"depth 8{tag}m")) == ["figure-in-doubt", "part-not-read"]
        assert "\ufffd" in html(f"depth {tag}6m").text
        assert told(html(f"a {tag} b")) == ["part-not-read"]
        assert told(html("a<img width=1 height=1>8<input type=hidden>m")) == []

    def test_a_style_sheet_elsewhere(self) -> None:
        assert told(html("<link rel=stylesheet href=a.css>8")) == ["part-not-read"]

    def test_underlined_figures(self) -> None:
        assert told(html("depth <u>1<sub>2</sub></u> m")) == ["figure-underlined"]
        assert told(html("<u>Insert</u> 1 <u>2417/26</u>")) == []

    def test_cells_of_several_lines(self) -> None:
        other = "47°14'.05S., 123°45'.20W."
        row = f"<table><tr><td>Insert{{}}<td>wreck<br>rock awash<td>{WHERE}<br>{other}</table>"
        paired = html(row.format("<br>Delete"))
        assert paired.text.split("\n")[:2] == [
            f"Insert\twreck\t{WHERE}", f"Delete\trock awash\t{other}"
        ]  # fmt: skip
        assert told(paired) == []
        assert told(html(row.format(""))) == ["cells-not-paired"]
        one = f"<table><tr><td>Insert area<td>{WHERE}<br>{other}</table>"
        assert (told(html(one)), html(one).text.strip()) == (
            [], f"Insert area\t{WHERE} {other}"
        )  # fmt: skip

    def test_what_is_told_in_a_cell_keeps_its_place(self) -> None:
        intake = html(
            "<table><tr><td>a<br>b <s>x</s>c<td>8<small>6</small> <ins>new</ins></table>"
        )
        assert intake.text.strip() == "a b c\t8\ufffd6 new"
        said = {one.code: intake.text[one.start : one.end] for one in intake.doubts}
        assert said == {
            "text-struck-out": "", "figure-in-doubt": "8\ufffd6", "text-inserted": "new"
        }  # fmt: skip

    def test_counted_items_are_told_once(self) -> None:
        assert told(html("<ul><li>a</ul><ol><li>b<li>c</ol>")) == ["list-number-left-out"]

    @pytest.mark.parametrize("how", ["hidden", "style='display: none'", "style=visibility:hidden"])
    def test_hidden_words(self, how: str) -> None:
        intake = html(f"a <span {how}>Delete wreck</span> b")
        assert (intake.text.strip(), told(intake)) == ("a b", ["text-hidden"])

    @pytest.mark.parametrize("encoding", ["utf-8", "cp1252", "utf-16", "iso-8859-15"])
    def test_encodings(self, encoding: str) -> None:
        text = f"<html><head><meta charset={encoding}></head><body>47°12'.34S é</body></html>"
        assert read(text.encode(encoding)).text.strip() == "47°12'.34S é"

    def test_lost_characters_are_told(self) -> None:
        intake = read(b"<html><body>47\xb012'.34S</body></html>")
        assert told(intake) == ["text-not-utf8", "figure-in-doubt"]


def mail(text: str, **head: str) -> EmailMessage:
    message = EmailMessage()
    message["Subject"], message["From"] = "Notices", "a@example.org"
    message["Date"] = "Wed, 01 Jul 2026 10:00:00 +0000"
    for name, value in head.items():
        message[name] = value
    message.set_content(text)
    return message


class TestMail:
    """What a person reads of a message, and what is attached."""

    def test_the_head_makes_no_notice(self) -> None:
        text = f"{HEAD}Delete wreck {WHERE}\n"
        message = mail(text)
        message.replace_header("Subject", "Fwd: 2416/26 Chart 801, Delete buoy")
        found = noticeparse.read_file(message.as_bytes())
        assert facts(found) == facts(noticeparse.parse(text))
        assert [one.id for one in found.notices] == ["2417/26"]
        # What a subject may bear is told; one that says nothing is passed over.
        assert found.coverage.unread > 0
        assert noticeparse.read_file(mail(text).as_bytes()).coverage.unread == 0

    @pytest.mark.parametrize("charset", ["utf-8", "iso-8859-1", "windows-1252"])
    @pytest.mark.parametrize("transfer", ["quoted-printable", "base64"])
    def test_charsets(self, charset: str, transfer: str) -> None:
        message = mail("x")
        message.set_content("47°12'.34S., é\n", charset=charset, cte=transfer)
        assert read(message.as_bytes()).text.endswith("47°12'.34S., é\n")

    def test_the_plain_alternative_is_read_and_once(self) -> None:
        message = mail("plain words\n")
        message.add_alternative("<p>html words", subtype="html")
        text = read(message.as_bytes()).text
        assert "plain words" in text
        assert "html words" not in text

    @pytest.mark.parametrize(
        ("plain", "depth", "codes"),
        [
            ("{head}Insert depth 86m {where}", "8.6", []),
            ("{head}Insert depth 8.6m {where}", "8.6", []),
            ("see html", "8.6", ["text-hidden"]),
            ("{head}Insert depth 9m {where}", None, ["alternatives-differ"]),
            ("{head}Delete depth 86m {where}", None, ["alternatives-differ"]),
        ],
    )
    def test_html_keeps_the_small_figures(
        self, plain: str, depth: str | None, codes: list[str]
    ) -> None:
        message = mail(plain.format(head=HEAD, where=WHERE) + "\n")
        message.add_alternative(
            f"<p>{NOTICE[0]}<p>{NOTICE[1]}<p>Insert depth 8<sub>6</sub>m {WHERE}", subtype="html"
        )
        found = noticeparse.read_file(message.as_bytes())
        usable = [str(one[-3]) for one in facts(found) if one[-1]]
        shown = [str(one[-4]) for one in facts(found)]
        assert told(read(message.as_bytes())) == codes
        assert (bool(usable), shown) == (depth is not None, ["8.6"])

    def test_a_point_lost_in_html_is_told(self) -> None:
        message = mail("depth 8.6m and 1\n")
        message.add_alternative("<p>depth 86m and 1", subtype="html")
        assert told(read(message.as_bytes())) == ["alternatives-differ"]

    def test_html_alone(self) -> None:
        message = EmailMessage()
        message["Subject"] = "x"
        message.set_content("<p>depth 8<sub>6</sub> m", subtype="html")
        assert read(message.as_bytes(policy=SMTP), "a.eml").text.endswith("depth 8₆ m\n\n")

    FLOWED = [
        ("one line of two", "Insert wreck \nleast depth", "Insert wreck least depth"),
        ("a hard end", "Insert\nDelete", "Insert\nDelete"),
        ("quoted", "> Insert \n> wreck\n> Delete", "> Insert wreck\n> Delete"),
        ("another depth of quotes ends it", "> Insert \n>> wreck", "> Insert \n>> wreck"),
        ("a signature stands", "Insert \n-- \nname", "Insert \n-- \nname"),
        ("stuffed", " From here", "From here"),
    ]

    @pytest.mark.parametrize(
        ("given", "text"), [c[1:] for c in FLOWED], ids=[c[0] for c in FLOWED]
    )
    def test_flowed(self, given: str, text: str) -> None:
        assert unflowed(given) == text

    def test_flowed_words_cut_without_a_blank(self) -> None:
        assert unflowed("Insert wr \neck", deletes=True) == "Insert wreck"

    def test_attachments(self) -> None:
        message = mail("See the attachments.\n")
        message.add_attachment(f"{HEAD}Delete wreck {WHERE}\n", filename="a.txt")
        message.add_attachment(item(f"Insert buoy {WHERE}"), maintype="application",
                               subtype="octet-stream", filename="b.pdf")  # fmt: skip
        message.add_attachment("<p>8<sub>6</sub>", subtype="html", filename="c.html")
        message.add_attachment(word(), maintype="application", subtype="octet-stream",
                               filename="d.docx")  # fmt: skip
        message.add_attachment(b"\x00\x01" * 99, maintype="image", subtype="png", filename="e.png")
        message.add_attachment(mail("inner words\n"))
        intake = read(message.as_bytes())
        words = ["See the", "Delete wreck", "Insert buoy", "8₆", "Delete depth 8₆", "inner words"]
        places = [intake.text.index(one) for one in words]
        assert places == sorted(places)
        (doubt,) = [one for one in intake.doubts if one.code == "attachment-not-read"]
        assert doubt.values["name"] == "e.png"
        assert intake.places == ()
        assert len(facts(noticeparse.read_file(message.as_bytes()))) == 3

    def test_a_pasted_mail_stays_plain_text(self) -> None:
        pasted = f"From: x\nSubject: y\nDate: 1 July 2026\n\n{HEAD}"
        assert kind_of(pasted.encode()) is None
        assert kind_of(pasted.encode(), "a.eml") == "mail"
        assert read(pasted.encode()).text == pasted


def word(paint: Any = None) -> bytes:
    document_ = docx.Document()
    if paint is None:
        for line in NOTICE:
            document_.add_paragraph(line)
        one = document_.add_paragraph("Delete depth 8")
        one.add_run("6").font.subscript = True
        one.add_run(f" {WHERE}")
    else:
        paint(document_)
    made = io.BytesIO()
    document_.save(made)
    return made.getvalue()


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


class TestKinds:
    """The bytes tell the kind before the name does."""

    def test_bytes_before_name(self) -> None:
        assert kind_of(item("x"), "a.txt") == "pdf"
        assert kind_of(word()[:8192], "a.pdf") == "docx"
        assert kind_of(b"<?xml version='1.0'?>\n<!-- x -->\n<HTML><p>x") == "html"
        assert kind_of(b"\xff\xfe" + "<html><p>".encode("utf-16-le")) == "html"
        assert kind_of(b"plain text of a notice", "a.pdf") is None
        assert kind_of(b"plain <b>text</b>", "a.html") is None
        assert kind_of(b"<p>text", "a.html") == "html"
        assert kind_of(b"<p>text", "a.txt") is None

    def test_every_ending_is_lower_and_begins_with_a_stop(self) -> None:
        assert all(one == one.lower() and one.startswith(".") for one in ENDINGS)

    @pytest.mark.parametrize(
        ("data", "words"),
        [(b"\xd0\xcf\x11\xe0" + bytes(90), "old office"), (b"{\\rtf1 x}", "RTF"),
         (b"PK\x03\x04abc", "zip archive")],
    )  # fmt: skip
    def test_other_kinds_say_what_to_do(self, data: bytes, words: str) -> None:
        with pytest.raises(NotReadable, match=words):
            read(data)

    def test_a_library_that_is_not_there(self, monkeypatch: pytest.MonkeyPatch) -> None:
        def finds(name: str) -> object:
            return None if name == "pypdfium2" else find_spec(name)

        monkeypatch.setattr(apart, "find_spec", finds)
        with pytest.raises(NotReadable, match=r"PDF file; .*pip install 'noticeparse\[intake\]'"):
            read(item("x"))
        assert read(b"<html><p>x").text.strip() == "x"

    def test_plain_text_takes_no_library(self) -> None:
        code = (
            "import sys; from noticeparse.intake import read; read(b'Delete wreck', 'a.txt');"
            "print(sorted(m for m in sys.modules if m.startswith(('pypdfium2', 'selectolax',"
            " 'email.parser', 'subprocess', 'xml.', 'noticeparse.intake.apart'))))"
        )
        ran = subprocess.run([sys.executable, "-c", code], capture_output=True, check=True,
                             cwd=Path(__file__).parents[1])  # fmt: skip
        assert ran.stdout.strip() == b"[]"


class TestCommands:
    """The commands that read files."""

    def test_check_names_the_page(self, tmp_path: Path) -> None:
        lines = [*NOTICE, "Delete wreck 47°73'.05S., 123°44'.20W."]
        setting = Setting(leading=40)
        file = tmp_path / "week.pdf"
        file.write_bytes(document(lines, setting))
        shown = invoke("check", str(file))
        assert f"{file}:4:14: error position-minutes-out-of-range (page 2, notice" in shown.stdout
        brief = invoke("check", "--brief", str(file))
        assert brief.stdout.split("\n")[0].endswith("(page 2)")
        assert shown.exit_code == 1

    def test_all_commands_and_formats_take_a_file(self, tmp_path: Path) -> None:
        file, text = tmp_path / "week.pdf", tmp_path / "week.txt"
        file.write_bytes(item(f"Delete wreck {WHERE}"))
        text.write_text(f"{HEAD}Delete wreck {WHERE}\n", "utf-8")
        for arguments in (["tidy"], ["charts"], ["parse", "--format", "csv"],
                          ["parse", "--format", "jsonl"]):  # fmt: skip
            one, other = (invoke(*arguments, str(path)) for path in (file, text))
            assert one.exit_code == other.exit_code == 0
            assert one.stdout.count("2417/26") == other.stdout.count("2417/26") > 0

    def test_a_directory_of_files(self, tmp_path: Path) -> None:
        (tmp_path / "a.pdf").write_bytes(item(f"Delete wreck {WHERE}"))
        (tmp_path / "b.docx").write_bytes(word())
        (tmp_path / "c.eml").write_bytes(mail(f"{HEAD}Delete wreck {WHERE}\n").as_bytes())
        (tmp_path / "d.png").write_bytes(b"x")
        ran = invoke("parse", "--format", "jsonl", str(tmp_path))
        records = [json.loads(line) for line in ran.stdout.splitlines()]
        kinds = [one["source"]["media_type"] for one in records if one["record"] == "bulletin"]
        assert [one.rpartition("/")[2][:3] for one in kinds] == ["pdf", "vnd", "rfc"]

    def test_what_cannot_be_read_exits_with_2(self, tmp_path: Path) -> None:
        file = tmp_path / "week.pdf"
        file.write_bytes(b"%PDF-1.7\n")
        ran = invoke("parse", str(file))
        assert ran.exit_code == 2
        assert "the PDF file is damaged" in ran.stderr


@pytest.fixture(scope="module")
def client() -> Any:
    with client_of() as one:
        yield one


class TestService:
    """The same over HTTP."""

    def test_intake(self, client: httpx2.Client) -> None:
        data = item(f"Delete depth 12‹4› {WHERE}")
        answer = client.post("/v1/intake?name=week.pdf", content=data)
        found = answer.json()
        assert answer.status_code == 200
        assert list(found) == [
            "caution", "name", "media_type", "sha256", "text", "findings", "places"
        ]  # fmt: skip
        assert (found["caution"], found["name"]) == (CAUTION, "week.pdf")
        assert found["media_type"] == "application/pdf"
        assert found["text"] == read(data).text
        assert list(found["places"][0]) == ["start", "end", "page", "x_mm", "y_mm"]
        again = client.post("/v1/parse", json={"text": found["text"]}).json()
        assert (
            again["notices"][0]["charts"][0]["actions"][0]["feature"]["depth"]["value_m"] == 12.4
        )

    def test_findings_and_plain_text(self, client: httpx2.Client) -> None:
        found = client.post("/v1/intake", content=b"<html><p>a<s>b</s>").json()
        assert [one["code"] for one in found["findings"]] == ["text-struck-out"]
        head = {"Content-Type": "application/octet-stream"}
        data = b"charset=cp1252\n47\xb0"
        plain = client.post("/v1/intake", content=data, headers=head).json()
        assert (plain["text"], plain["places"]) == ("charset=cp1252\n47°", [])
        assert [one["code"] for one in plain["findings"]] == ["text-other-encoding"]

    def test_refusals(self, client: httpx2.Client) -> None:
        for data in (b"", b"%PDF-1.7\n", b"\x00" * 99):
            refused(client.post("/v1/intake", content=data), "file-unreadable")
        refused(client.post("/v1/intake?pages=3", content=b"x"), "request-invalid")
        headers = {"Content-Encoding": "gzip"}
        refused(client.post("/v1/intake", content=b"x", headers=headers), "media-type-unsupported")

    def test_parse_takes_a_file_by_its_type(self, client: httpx2.Client) -> None:
        data = item(f"Delete depth 12‹4› {WHERE}")
        headers = {"Content-Type": "application/pdf"}
        found = client.post("/v1/parse?name=week.pdf", content=data, headers=headers).json()
        assert found["source"]["media_type"] == "application/pdf"
        assert found["notices"][0]["charts"][0]["actions"][0]["usable"]
        bad = {"Content-Type": "text/html; charset=iso-8859-1"}
        refused(client.post("/v1/parse", content=b"<p>", headers=bad), "charset-unsupported")
