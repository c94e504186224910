"""The command `sheet`: what it writes, what it refuses, and its exit status."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest

from noticeparse.worksheet import documents
from tests.command import invoke, process
from tests.worksheet.week import CORPUS, LIST, WEEK

DEMO = str(CORPUS / "demo.txt")
FAULTY = str(CORPUS / "demo_faulty.txt")


@pytest.fixture
def week(tmp_path: Path) -> str:
    path = tmp_path / "week.txt"
    path.write_text(WEEK, "utf-8")
    return str(path)


def test_standard_output_is_html() -> None:
    result = invoke("sheet", "--chart", "802", DEMO)
    assert result.exit_code == 0
    assert result.stdout.startswith("<!doctype html>")
    assert result.stderr == "Chart 802: 6 actions of 2 notices\n"
    assert invoke("sheet", "--chart", "802", "--out", "-", DEMO).stdout == result.stdout
    given = Path(DEMO).read_text("utf-8")
    piped = invoke("sheet", "--chart", "802", given=given).stdout
    assert piped == result.stdout.replace(DEMO, "&lt;stdin&gt;")


def test_ending_tells_the_format(tmp_path: Path) -> None:
    for name, begin in (("a.html", b"<!doctype"), ("a.PDF", b"%PDF-"), ("a.htm", b"<!doctype")):
        out = tmp_path / name
        assert invoke("sheet", "--out", str(out), DEMO).exit_code == 0
        assert out.read_bytes().startswith(begin)


def test_errors_make_the_status_one(tmp_path: Path) -> None:
    result = invoke("sheet", "--out", str(tmp_path / "a.html"), FAULTY)
    assert result.exit_code == 1
    assert "Chart 802: 6 actions of 2 notices; 1 must not be applied" in result.stderr
    assert "`noticeparse check`" in result.stderr


def test_missing_notice_is_said(week: str, tmp_path: Path) -> None:
    result = invoke("sheet", "--charts", LIST, "--out", str(tmp_path / "a.html"), week)
    assert "Notice 2425/26 is missing" in result.stderr


def test_sheet_and_plot(week: str, tmp_path: Path) -> None:
    out, plot = tmp_path / "803.html", tmp_path / "plots" / "803.svg"
    plot.parent.mkdir()
    arguments = ["--chart", "803", "--charts", LIST, "--out", str(out), "--plot", str(plot)]
    assert invoke("sheet", *arguments, week).exit_code == 1
    assert 'href="../803.html#c1-1"' in plot.read_text("utf-8")
    assert 'id="c1-1"' in out.read_text("utf-8")


def test_plot_alone(tmp_path: Path) -> None:
    plot = tmp_path / "p.pdf"
    result = invoke("sheet", "--charts", LIST, "--plot", str(plot), DEMO)
    assert (result.exit_code, result.stdout) == (0, "")
    assert plot.read_bytes().startswith(b"%PDF-")
    both = invoke("sheet", "--charts", LIST, "--plot", str(plot), "--out", "-", DEMO)
    assert both.stdout.startswith("<!doctype html>")


def test_chart_that_is_not_in_the_list_has_no_plot(tmp_path: Path) -> None:
    text = tmp_path / "a.txt"
    text.write_text(Path(DEMO).read_text("utf-8").replace("Chart 803", "Chart 877"), "utf-8")
    plot = tmp_path / "p.svg"
    result = invoke("sheet", "--charts", LIST, "--plot", str(plot), str(text))
    assert result.exit_code == 0
    assert "Chart 877: 5 actions of 2 notices\n  no plot: the chart" in result.stderr
    assert "Chart 802" in plot.read_text("utf-8")
    plot.unlink()
    arguments = ["--charts", LIST, "--plot", str(plot), "--chart", "877", str(text)]
    assert invoke("sheet", *arguments).exit_code == 2
    assert not plot.exists()


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (["--chart", "999", DEMO], "no notice touches chart 999; those touched are 802, 803"),
        (["--out", "a.docx", DEMO], "`a.docx` must end with .html or .htm or .pdf"),
        (["--out", "sheet", DEMO], "`sheet` must end with"),
        (["--charts", LIST, "--plot", "a.png", DEMO], "`a.png` must end with .svg or .pdf"),
        (["--plot", "a.svg", DEMO], "--plot needs --charts LIST"),
        (["--charts", LIST, "--plot", "a.pdf", "--out", "a.pdf", DEMO], "for the sheet and for"),
        (["--out", "nowhere/a.html", DEMO], "there is no folder nowhere"),
        (["no-such-file.txt"], "no such file"),
        ([LIST], "no notice touches a chart"),
    ],
)
def test_refusals(
    arguments: list[str], words: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    result = invoke("sheet", *arguments)
    assert result.exit_code == 2
    assert words in " ".join(result.stderr.split()).replace("No such", "no such")
    assert not result.stdout
    assert not list(tmp_path.iterdir())


def test_nothing_is_written_where_an_input_is_missing(tmp_path: Path) -> None:
    out = tmp_path / "a.html"
    result = invoke("sheet", "--out", str(out), DEMO, str(tmp_path / "other.txt"))
    assert result.exit_code == 2
    assert "it would lack what could not be read" in result.stderr
    assert not out.exists()


def test_input_is_not_written_over(tmp_path: Path) -> None:
    path = tmp_path / "notices.html"
    path.write_text(WEEK, "utf-8")
    assert invoke("sheet", "--out", str(path), str(path)).exit_code == 2
    assert path.read_text("utf-8") == WEEK


def test_files_are_seen_together(tmp_path: Path) -> None:
    first = tmp_path / "a.txt"
    notice = "{}/26 Quill Sound.\nChart 802 [{}/26] WGS84\nInsert rock 47-12.00S 123-45.00W\n"
    first.write_text(notice.format(12, 11), "utf-8")
    second = tmp_path / "b.txt"
    second.write_text(notice.format(11, 10), "utf-8")
    result = invoke("sheet", str(first), str(second))
    assert result.stdout.index("<h2>11/26</h2>") < result.stdout.index("<h2>12/26</h2>")
    assert "is missing" not in result.stdout
    twice = invoke("sheet", str(first), str(first))
    assert twice.exit_code == 1
    assert "is the same as that at" in twice.stdout


def test_missing_extra(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(sys.modules, "reportlab", None)
    result = invoke("sheet", "--out", str(tmp_path / "a.pdf"), DEMO)
    assert result.exit_code == 2
    assert result.stderr == f"noticeparse: {documents.INSTALL}\n"
    assert invoke("sheet", DEMO).exit_code == 0


def test_pdf_library_is_not_loaded_for_html() -> None:
    code = (
        "import sys; from noticeparse.cli import main\n"
        f"try: main(['sheet', {DEMO!r}])\n"
        "except SystemExit as e: assert e.code == 0, e.code\n"
        "assert 'reportlab' not in sys.modules\n"
    )
    import subprocess

    ran = subprocess.run([sys.executable, "-c", code], capture_output=True, check=False)
    assert ran.returncode == 0, ran.stderr.decode()


def test_as_a_process() -> None:
    ran = process("sheet", "--chart", "803", DEMO)
    assert ran.returncode == 0
    assert ran.stdout.decode().count('class="action"') == 5
