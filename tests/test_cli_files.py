"""PDF, Word and mail files given to the commands, one by one or in a directory."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from tests.command import invoke
from tests.pdf_notices import NOTICE, item
from tests.pdf_pages import Setting, document
from tests.sent_notices import HEAD, WHERE, mail, word

pytestmark = pytest.mark.usefixtures("in_this_process")


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
