"""A long input is understood as a short one is, with other means."""

from __future__ import annotations

import errno
import io
import json
import re
from collections.abc import Iterator
from pathlib import Path
from typing import IO

import pytest

from noticeparse.console import long_input, streaming
from noticeparse.intake import NotReadable, decode
from noticeparse.parts import WHOLE
from noticeparse.testing.generator import generate
from tests.command import invoke


class TestLongInput:
    """A long input is understood as a short one is, with other means."""

    @pytest.mark.parametrize("block", [1 << 20, 7])
    @pytest.mark.parametrize(
        "data",
        [
            "abc °\n".encode() * 50,
            b"\xef\xbb\xbfabc \xc2\xb0",
            "abc 47° \n".encode("utf-16"),
            b"charset=windows-1252\n 47\xb0 \x92 x",
            b"charset=iso-8859-1\n 47\xb0 \x92 x",
            b"charset=ascii \xe9",
            b"ab\xc2 x\xb0 q \xe2\x82",
            "é\U0001d11e abc".encode()[:-5] + b"\xffzz",
            b"  \n ",
            b"%PDF-1.7",
            b"\x00\x01" * 50,
            "a\n".encode("utf-16-le"),
            b"\xff\xfea",
        ],
    )
    def test_as_intake(self, data: bytes, block: int, monkeypatch: pytest.MonkeyPatch) -> None:
        monkeypatch.setattr(long_input, "_BLOCK", block)
        file = io.BytesIO(data)
        try:
            short = decode(data, "a.txt")
        except NotReadable as error:
            short, why = None, str(error)
        if short is None:
            with pytest.raises(NotReadable, match=re.escape(why)):
                long_input.survey(file, "a.txt")
            return
        known = long_input.survey(file, "a.txt")
        text = "".join(long_input.pieces(file, known))
        assert (text, known.sha256) == (short.text, short.sha256)
        assert [(f.code, f.values) for f in known.faults] == [
            (f.code, f.values) for f in short.faults
        ]
        for fault in known.faults:
            assert fault.code != "text-not-utf8" or text[fault.start] == "\ufffd"

    def test_changed_between_the_passes(self) -> None:
        known = long_input.survey(io.BytesIO(b"abc"), "a.txt")
        with pytest.raises(NotReadable, match="changed"):
            list(long_input.pieces(io.BytesIO(b"abcd"), known))


def test_command_reads_a_long_stream(tmp_path: Path) -> None:
    """From standard input as from a file, with spans in the whole and the fault of a byte."""
    text = generate(3, size_bytes=8000, layouts=("notice_first",)).text
    # One notice more than is read as one, most of it blank.
    long = (
        text.encode()
        + (b" " * 999 + b"\n") * (WHOLE // 1000)
        + b"\xff left over\n\n"
        + text.encode()
    )
    path = tmp_path / "long.txt"
    path.write_bytes(long)
    named = invoke("parse", "--format", "jsonl", str(path))
    piped = invoke("parse", "--format", "jsonl", "-", given=long)
    assert named.stdout.splitlines()[:-1] == piped.stdout.splitlines()[:-1]
    *notices, last = map(json.loads, named.stdout.splitlines())
    bulletin = json.loads(piped.stdout.splitlines()[-1])
    assert bulletin["source"].pop("name") is None
    assert last["source"].pop("name") == str(path)
    assert last == bulletin
    read = long.decode("utf-8", "replace")
    assert last["source"]["characters"] == len(read)
    for notice in notices:
        number = str(notice["number"])
        assert number in read[notice["span"]["start"] :][:12]
    lost = [one for one in last["findings"] if one["code"] == "text-not-utf8"]
    assert [read[one["span"]["start"]] for one in lost] == ["\ufffd"]
    assert "text-in-parts" in {one["code"] for one in last["findings"]}


def test_records_of_all_outputs_are_the_same(tmp_path: Path) -> None:
    """Read in parts for lines alone; with a table beside them, both have those of the whole."""
    text = generate(3, size_bytes=8000, layouts=("notice_first",)).text
    path, lines, table = (tmp_path / name for name in ("long.txt", "a.jsonl", "b.csv"))
    path.write_text(text + (" " * 999 + "\n") * (WHOLE // 1000), "utf-8")
    codes = []
    for outs in ([lines], [lines, tmp_path / "c.jsonl"], [lines, table]):
        for jobs in ([], ["--jobs", "2"]):
            ways = [one for out in outs for one in ("--out", str(out))]
            invoke("parse", str(path), *ways, *jobs)
            *_, last = lines.read_text("utf-8").splitlines()
            codes.append("text-in-parts" in {one["code"] for one in json.loads(last)["findings"]})
    assert codes == [True, True, True, True, False, False]
    assert lines.read_text("utf-8").count('"iso6709"') >= len(
        table.read_text("utf-8").splitlines()
    )
    assert (tmp_path / "c.jsonl").exists()


def test_an_input_that_fails_halfway(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """No file is left with half of its records, and no other input goes on behind them."""
    text = generate(3, size_bytes=8000, layouts=("notice_first",)).text

    def fails(file: IO[bytes], known: long_input.Survey) -> Iterator[str]:
        yield text + "\n" + (" " * 999 + "\n") * (WHOLE // 1000) + text
        raise OSError(errno.EIO, "Input/output error")

    path, out = tmp_path / "long.txt", tmp_path / "all.jsonl"
    path.write_text(text + (" " * 999 + "\n") * (WHOLE // 1000), "utf-8")
    other = tmp_path / "other.txt"
    other.write_text(text, "utf-8")
    monkeypatch.setattr(streaming, "pieces", fails)
    arguments = ["parse", "--format", "jsonl", str(path), str(other)]
    result = invoke(*arguments, "--out", str(out))
    assert result.exit_code == 2
    assert "cannot be read: Input/output error; the output is broken off" in result.stderr
    assert not out.exists()
    records = [json.loads(line)["record"] for line in invoke(*arguments).stdout.splitlines()]
    assert set(records) == {"notice"}
