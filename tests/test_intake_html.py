"""HTML: small figures, tables, and what is struck out, hidden, underlined or no text."""

from __future__ import annotations

import pytest

import noticeparse
from noticeparse.intake import Intake, read
from tests.pdf_notices import NOTICE, facts, told
from tests.sent_notices import WHERE

pytestmark = pytest.mark.usefixtures("in_this_process")


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
