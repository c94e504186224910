"""Bytes to text: marks, encodings, what is lost, what is refused."""

from __future__ import annotations

import hashlib
import io

import pytest

from noticeparse import text
from noticeparse.catalogue import ENTRIES
from noticeparse.intake import NotReadable, as_text, decode, plain, read_bytes
from noticeparse.pipeline import read_bulletin

LINE = "Insert depth 8₂ 47°12′·34S., 123°45′·67W.\r\n"

READABLE = [
    ("UTF-8", LINE.encode(), LINE),
    ("UTF-8 with a mark", LINE.encode("utf-8-sig"), LINE),
    ("UTF-16 little-endian", b"\xff\xfe" + LINE.encode("utf-16-le"), LINE),
    ("UTF-16 big-endian", b"\xfe\xff" + LINE.encode("utf-16-be"), LINE),
    ("UTF-32 little-endian", b"\xff\xfe\x00\x00" + LINE.encode("utf-32-le"), LINE),
    ("UTF-32 big-endian", b"\x00\x00\xfe\xff" + LINE.encode("utf-32-be"), LINE),
    ("plain ASCII", b"47 12.34S 123 45.67W", "47 12.34S 123 45.67W"),
    ("Windows line ends stay", b"a\r\nb\rc\n", "a\r\nb\rc\n"),
    ("a few controls of a teletype", b"\x02NOTICE 2417\x07\x03" + b" " * 40, None),
    ("declared but UTF-8", b"charset=windows-1252\n" + LINE.encode(), None),
]


@pytest.mark.parametrize(
    ("data", "expected"), [case[1:] for case in READABLE], ids=[case[0] for case in READABLE]
)
def test_text_is_read_without_fault(data: bytes, expected: str | None) -> None:
    read = decode(data)
    assert read.text == (data.decode() if expected is None else expected)
    assert read.sha256 == hashlib.sha256(data).hexdigest()
    assert read.media_type == "text/plain"
    assert read.faults == ()


DECLARED = [
    ("mail", "Content-Type: text/plain; charset=windows-1252", "cp1252", "47°12’.34S", "cp1252"),
    ("quoted", 'Content-Type: text/plain; charset="iso-8859-1"', "latin-1", "47°12½", "iso8859-1"),
    ("HTML", "<meta charset=ISO-8859-15>", "iso8859-15", "47°12€", "iso8859-15"),
    ("XML", '<?xml encoding="koi8-r"?>', "koi8-r", "47°12 ю.ш.", "koi8-r"),
    # WHATWG Encoding Standard, 4.2: the label iso-8859-1 stands for windows-1252.
    ("mail that says 8859-1", "charset=iso-8859-1", "cp1252", "47°12’.34S", "cp1252"),
]


@pytest.mark.parametrize(
    ("head", "encoding", "words", "named"),
    [case[1:] for case in DECLARED],
    ids=[case[0] for case in DECLARED],
)
def test_declared_encoding_is_used_and_told(
    head: str, encoding: str, words: str, named: str
) -> None:
    read = decode(f"{head}\n\n{words}\n".encode(encoding))
    assert read.text == f"{head}\n\n{words}\n"
    assert [(fault.code, fault.values) for fault in read.faults] == [
        ("text-other-encoding", {"encoding": named})
    ]


NOT_TRUSTED = [
    ("nothing declared", b""),
    ("not known", b"charset=no-such-page\n"),
    ("does not fit", b"charset=us-ascii\n"),
    ("no bytes to text", b"charset=rot13\n"),
    ("escapes", b"charset=unicode_escape\n"),
    ("no letters of ASCII", b"charset=cp037\n"),
    ("two bytes a letter", b"charset=utf-16\n"),
    ("too far down", b"\n" * 5000 + b"charset=windows-1252\n"),
    ("says UTF-8", b"charset=utf-8\n"),
]


@pytest.mark.parametrize(
    "head", [case[1] for case in NOT_TRUSTED], ids=[c[0] for c in NOT_TRUSTED]
)
def test_no_encoding_is_guessed(head: bytes) -> None:
    data = head + b"depth 8\xbd m\n"
    read = decode(data)
    assert read.text.endswith("depth 8\ufffd m\n")
    (fault,) = read.faults
    assert fault.code == "text-not-utf8"
    assert fault.values == {"encoding": "UTF-8", "offset": str(data.index(b"\xbd"))}


def test_fault_points_at_the_lost_character_in_the_original() -> None:
    # What repair shortens, and a U+FFFD that was in the file, stand before it.
    data = "ﬁrst\u200b \ufffd line\r\n> second ".encode() + b"\xb0 \xb0"
    read = decode(data, "a.txt")
    bulletin = read_bulletin(read.text, sha256=read.sha256, faults=read.faults)
    (finding,) = [one for one in bulletin.findings if one.code == "text-not-utf8"]
    assert finding.span is not None
    assert finding.span.start == read.text.index("second ") + len("second ")
    assert finding.span.line == 2
    assert str(data.index(b"\xb0")) in finding.message
    assert bulletin.source.sha256 == hashlib.sha256(data).hexdigest()


def test_bytes_behind_a_mark_are_counted_from_the_start_of_the_file() -> None:
    (fault,) = decode(b"\xef\xbb\xbfab\xff").faults
    assert fault.values["offset"] == "5"
    (fault,) = decode(b"\xff\xfea\x00\x00\xd8b\x00").faults
    assert fault.values == {"encoding": "UTF-16-LE", "offset": "4"}


@pytest.mark.parametrize("code", ["text-not-utf8", "text-other-encoding"])
def test_codes_stand_in_the_catalogue(code: str) -> None:
    assert ENTRIES[code].severity != "error"


REFUSED = [
    ("empty", b"", "empty"),
    ("blank", b" \r\n\t\n", "empty"),
    ("only a mark", b"\xef\xbb\xbf", "empty"),
    ("only NUL", b"\x00" * 3, "not a text file"),
    ("NUL in quantity", b"abc\x00" * 40, "not a text file"),
    ("UTF-16 without its mark", LINE.encode("utf-16-le"), "UTF-16"),
    ("a program", b"\x7fELF\x02\x01\x01" + b"\x00" * 60 + bytes(range(256)), "not a text file"),
    ("a picture", b"\x89PNG\r\n\x1a\n" + bytes(range(256)) * 4, "not a text file"),
    ("all bytes", bytes(range(256)) * 8, "not a text file"),
    ("controls behind a mark", b"\xff\xfe" + "\x01\x02\x03\x04".encode("utf-16-le"), "not a text"),
    (
        "binary with a mark, half of a character at its end",
        b"\xff\xfe" + b"\x01\x00" * 40 + b"\x00",
        "not a text",
    ),
    ("PDF", b"%PDF-1.7\n1 0 obj\n", "PDF"),
    ("RTF", b"{\\rtf1\\ansi notice}", "RTF"),
    ("zip", b"PK\x03\x04abc", "zip"),
    ("gzip", b"\x1f\x8b\x08abc", "compressed"),
]


@pytest.mark.parametrize(
    ("data", "words"), [case[1:] for case in REFUSED], ids=[case[0] for case in REFUSED]
)
def test_what_is_no_text_is_refused_in_one_line(data: bytes, words: str) -> None:
    with pytest.raises(NotReadable) as caught:
        decode(data)
    assert words in str(caught.value)
    assert "\n" not in str(caught.value)


def test_repair_keeps_every_lost_character() -> None:
    # `_repaired_offset` counts on it.
    given = "\ufffd a\ufffd\ufffd-\nb ﬁ\ufffd\u00ad\ufffd"
    assert text.repair(given).text.count("\ufffd") == given.count("\ufffd")
    assert plain._repaired_offset(given, given.rindex("\ufffd")) == (
        text.repair(given).text.rindex("\ufffd")
    )


def test_files_that_cannot_be_opened(tmp_path_factory: pytest.TempPathFactory) -> None:
    folder = tmp_path_factory.mktemp("intake")
    for name, words in [
        (str(folder / "none.txt"), "no such file"),
        (str(folder), "a directory"),
        ("nul\x00byte", "cannot be read"),
        (str(folder / ("a" * 5000)), "cannot be read"),
    ]:
        with pytest.raises(NotReadable, match=words):
            read_bytes(name)


def test_standard_input_is_read_as_bytes(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("sys.stdin", io.TextIOWrapper(io.BytesIO(b"\xff\xfea\x00"), "ascii"))
    assert read_bytes("-") == b"\xff\xfea\x00"
    monkeypatch.setattr("sys.stdin", None)
    with pytest.raises(NotReadable, match="closed"):
        read_bytes("-")


def test_names_that_are_no_text() -> None:
    assert as_text("week\udcff.txt") == "week\ufffd.txt"
    assert as_text("Brannoch Rock 🚢") == "Brannoch Rock 🚢"
