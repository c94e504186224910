"""Which kind a file is: its bytes tell, then its name; what is read of none, and by what."""

from __future__ import annotations

import subprocess
import sys
from importlib.util import find_spec
from pathlib import Path

import pytest

from noticeparse.intake import NotReadable, apart, kind_of, read
from noticeparse.intake.kinds import ENDINGS
from tests.pdf_notices import item
from tests.sent_notices import word

pytestmark = pytest.mark.usefixtures("in_this_process")


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
