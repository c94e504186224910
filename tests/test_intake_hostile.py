"""Files that are damaged, enormous or set as a trap: one line, in bounded time and memory."""

from __future__ import annotations

import io
import os
import subprocess
import sys
import time
import zipfile
import zlib
from collections.abc import Sequence
from contextlib import suppress
from pathlib import Path

import pytest
from reportlab.lib.pdfencrypt import StandardEncryption
from reportlab.pdfgen.canvas import Canvas

from noticeparse.intake import NotReadable, apart, read
from tests.pdf_pages import HEIGHT, MARGIN, WIDTH


def pdf(objects: Sequence[bytes], *, root: int = 1) -> bytes:
    """A file of these objects, numbered from 1, with its table."""
    body, offsets = bytearray(b"%PDF-1.7\n"), []
    for number, one in enumerate(objects, 1):
        offsets.append(len(body))
        body += b"%d 0 obj\n%b\nendobj\n" % (number, one)
    start = len(body)
    body += b"xref\n0 %d\n0000000000 65535 f \n" % (len(objects) + 1)
    for offset in offsets:
        body += b"%010d 00000 n \n" % offset
    body += b"trailer<</Size %d/Root %d 0 R>>\nstartxref\n%d\n%%%%EOF" % (
        len(objects) + 1, root, start,
    )  # fmt: skip
    return bytes(body)


def stream(data: bytes, *, keys: bytes = b"") -> bytes:
    return b"<<%b/Length %d>>stream\n%b\nendstream" % (keys, len(data), data)


FONT = b"<</Type/Font/Subtype/Type1/BaseFont/Helvetica>>"


def one_page(content: bytes, *, box: bytes = b"0 0 595 842", resources: bytes = b"") -> bytes:
    """A file with one page of this content stream."""
    return pdf(
        [
            b"<</Type/Catalog/Pages 2 0 R>>",
            b"<</Type/Pages/Kids[3 0 R]/Count 1>>",
            b"<</Type/Page/Parent 2 0 R/MediaBox[%b]/Contents 4 0 R"
            b"/Resources<</Font<</F 5 0 R>>%b>>>>" % (box, resources),
            content,
            FONT,
            stream(b"/X Do", keys=b"/Type/XObject/Subtype/Form/BBox[0 0 9 9]"
                   b"/Resources<</XObject<</X 6 0 R>>>>"),
        ]
    )  # fmt: skip


SHOWN = b"BT /F 9 Tf 40 700 Td (Delete wreck) Tj ET"


def plain_page() -> bytes:
    made = io.BytesIO()
    canvas = Canvas(made, pagesize=(WIDTH, HEIGHT))
    canvas.drawString(MARGIN, 700, "Delete wreck")
    canvas.save()
    return made.getvalue()


def encrypted() -> bytes:
    made = io.BytesIO()
    canvas = Canvas(made, encrypt=StandardEncryption("secret", "owner", strength=128))
    canvas.drawString(MARGIN, 700, "Delete wreck")
    canvas.save()
    return made.getvalue()


def packed(data: bytes, times: int) -> bytes:
    """A stream that unpacks `times` times in a row."""
    for _ in range(times):
        data = zlib.compress(data, 9)
    filters = b"[" + b"/FlateDecode" * times + b"]"
    return stream(data, keys=b"/Filter" + filters)


def many_pages(count: int) -> bytes:
    kids = b"3 0 R " * count
    return pdf(
        [
            b"<</Type/Catalog/Pages 2 0 R>>",
            b"<</Type/Pages/Kids[%b]/Count %d>>" % (kids, count),
            b"<</Type/Page/Parent 2 0 R/MediaBox[0 0 595 842]>>",
        ]
    )


REFUSED = {
    "encrypted": (encrypted(), "is encrypted with a password"),
    "only its mark": (b"%PDF-1.7\n", "damaged"),
    "cut off": (plain_page()[:300], "damaged"),
    "no table and no objects": (b"%PDF-1.7\n" + b"x" * 5000, "damaged"),
    "a root that is its own tree": (
        pdf([b"<</Type/Catalog/Pages 1 0 R/Kids[1 0 R]/Count 1>>"]), "."),
    "pages in a circle": (
        pdf([b"<</Type/Catalog/Pages 2 0 R>>", b"<</Type/Pages/Kids[2 0 R]/Count 5>>"]), "."),
    "a million pages": (
        pdf([b"<</Type/Catalog/Pages 2 0 R>>", b"<</Type/Pages/Kids[]/Count 1000000>>"]), "."),
    "too many pages": (many_pages(3001), "3001 pages"),
    "a page as large as a field": (
        one_page(stream(SHOWN), box=b"0 0 900000 900000"), "senseless size"),
    "no text at all": (one_page(stream(b"")), "holds no text"),
    "more characters than any page": (
        one_page(packed(b"BT /F 1 Tf 40 700 Td " + b"(%b) Tj " % (b"1" * 1000) * 250 + b" ET", 1)),
        "200000 characters"),
    "a form that draws itself": (
        one_page(stream(b"/X Do"), resources=b"/XObject<</X 6 0 R>>"), "."),
}  # fmt: skip


@pytest.mark.parametrize(("data", "words"), REFUSED.values(), ids=list(REFUSED))
def test_refused_in_one_line(data: bytes, words: str) -> None:
    start = time.monotonic()
    with pytest.raises(NotReadable, match=words) as caught:
        read(data, "trap.pdf")
    assert "\n" not in str(caught.value)
    assert time.monotonic() - start < 30


READ = {
    "brackets without end": one_page(stream(b"[" * 200_000 + SHOWN)),
    "states without end": one_page(stream(b"q " * 300_000 + SHOWN)),
    "a stream that unpacks a thousandfold": one_page(packed(b" " * 50_000_000 + SHOWN, 2)),
    "no end of the file": plain_page()[:-30],
    "a wrong table": plain_page().replace(b"xref", b"xxxx"),
    "bytes before its mark": b"\x00" * 500 + plain_page(),
}


@pytest.mark.parametrize("data", READ.values(), ids=list(READ))
def test_read_or_refused_within_the_bounds(data: bytes) -> None:
    start = time.monotonic()
    with suppress(NotReadable):
        assert "wreck" in read(data, "trap.pdf").text
    assert time.monotonic() - start < 60


def test_a_file_that_takes_too_long(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(apart, "SECONDS", 1)
    page = one_page(stream(b"BT /F 1 Tf 40 700 Td " + b"(%b) Tj " % (b"1 " * 500) * 150 + b" ET"))
    kids = b"3 0 R " * 400
    data = page.replace(b"/Kids[3 0 R]/Count 1", b"/Kids[%b]/Count 400" % kids)
    with pytest.raises(NotReadable, match="takes more than 1 seconds"):
        read(data)


def test_a_file_that_takes_too_much_memory(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(apart, "MEMORY", 150 << 20)
    with pytest.raises(NotReadable, match="memory"):
        read(one_page(packed(b" " * 400_000_000 + SHOWN, 2)))


def test_a_file_that_is_too_long(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(apart, "MOST_BYTES", 1 << 20)
    with pytest.raises(NotReadable, match="longer than 1 MiB"):
        read(b"%PDF-1.7\n" + b" " * (1 << 20))


def test_no_process_is_left_behind() -> None:
    """Whoever waits is killed: the process that reads must end by itself."""
    page = one_page(stream(b"BT /F 1 Tf 40 700 Td " + b"(%b) Tj " % (b"1 " * 500) * 150 + b" ET"))
    data = page.replace(b"/Kids[3 0 R]/Count 1", b"/Kids[%b]/Count 2000" % (b"3 0 R " * 2000))
    code = (
        "import sys, subprocess\n"
        "from noticeparse.intake import apart\n"
        "real = subprocess.Popen\n"
        "class Told(real):\n"
        "    def __init__(self, *a, **k):\n"
        "        super().__init__(*a, **k)\n"
        "        print(self.pid, flush=True)\n"
        "subprocess.Popen = Told\n"
        "apart.read_apart(sys.stdin.buffer.read(), 'pdf')\n"
    )
    waiting = subprocess.Popen(
        [sys.executable, "-c", code],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        cwd=Path(__file__).parents[1],
    )
    assert waiting.stdin
    assert waiting.stdout
    waiting.stdin.write(data)
    waiting.stdin.close()
    reader = int(waiting.stdout.readline())
    waiting.kill()
    waiting.wait()
    for _ in range(100):
        try:
            os.kill(reader, 0)
            state = Path(f"/proc/{reader}/stat")
            if state.exists() and state.read_text().rpartition(")")[2].split()[0] == "Z":
                return
        except ProcessLookupError:
            return
        time.sleep(0.1)
    pytest.fail("the process that reads goes on")


def docx(parts: dict[str, bytes]) -> bytes:
    made = io.BytesIO()
    with zipfile.ZipFile(made, "w", zipfile.ZIP_DEFLATED) as file:
        file.writestr("[Content_Types].xml", b"<Types/>")
        for name, data in parts.items():
            file.writestr(name, data)
    return made.getvalue()


MAIN = "word/document.xml"
SPACE = b'xmlns:w="http://schemas.openxmlformats.org/wordprocessingml/2006/main"'
LAUGHS = b'<!DOCTYPE a [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;">]><w:document %b>&b;</w:document>'

BAD_DOCX = {
    "a bomb": (docx({MAIN: b" " * 60_000_000}), "200 times"),
    "entities": (docx({MAIN: LAUGHS % SPACE}), "entities"),
    "cut off": (docx({MAIN: b"<w:document %b>" % SPACE}), "damaged"),
    "half a zip file": (docx({MAIN: os.urandom(5000)})[:3000], "damaged"),
    "a spreadsheet": (docx({"xl/workbook.xml": b"<x/>"}), "no .docx"),
    "nothing in it": (docx({MAIN: b"<w:document %b/>" % SPACE}), "no text"),
}


@pytest.mark.parametrize(("data", "words"), BAD_DOCX.values(), ids=list(BAD_DOCX))
def test_docx_that_is_no_document(data: bytes, words: str) -> None:
    with pytest.raises(NotReadable, match=words):
        read(data, "trap.docx")


def test_html_nested_very_deep() -> None:
    data = b"<html>" + b"<div>" * 20_000 + b"Delete wreck" + b"<b>" * 5_000
    assert read(data).text.strip() == "Delete wreck"


def test_mail_nested_very_deep_and_of_many_parts() -> None:
    inner = b"Subject: wreck\r\nMIME-Version: 1.0\r\n\r\nDelete wreck\r\n"
    for _ in range(12):
        inner = b"Subject: x\r\nContent-Type: message/rfc822\r\n\r\n" + inner
    intake = read(inner, "trap.eml")
    assert "attachment-not-read" in [one.code for one in intake.doubts]
    parts = b"".join(b"--b\r\n\r\nx\r\n" for _ in range(300))
    many = b"Subject: x\r\nMIME-Version: 1.0\r\nContent-Type: multipart/mixed; boundary=b\r\n\r\n"
    with pytest.raises(NotReadable, match="200 parts"):
        read(many + parts + b"--b--\r\n", "trap.eml")
