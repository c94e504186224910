"""The front door of a stream, and the bytes that are written of one."""

from __future__ import annotations

import io
import json
from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import given, settings

from noticeparse import iter_notices, parse
from noticeparse.pipeline import read_bulletin
from noticeparse.records.bulletin import Bulletin
from noticeparse.testing.generator import generate
from noticeparse.writers.lines_out import write_lines
from noticeparse.writers.parts_out import write_parts
from tests.corpus_files import CORPUS
from tests.laws.strategies import anything
from tests.short_notices import HEAD
from tests.stream_parts import ITEM, bare, in_parts, told


class TestIterNotices:
    """The front door of a stream."""

    @pytest.mark.parametrize("path", sorted(CORPUS.rglob("*.txt")), ids=lambda path: path.stem)
    def test_as_parse(self, path: Path) -> None:
        text = path.read_text("utf-8")
        found = list(iter_notices(io.StringIO(text)))
        assert bare(found) == bare(parse(text).notices)

    @given(anything)
    @settings(max_examples=25)
    def test_any_text(self, text: str) -> None:
        whole = parse(text)
        found = list(iter_notices(text.splitlines(keepends=True)))
        assert bare(found) == bare(whole.notices)
        if found:
            # Every finding has gone to some notice.
            assert {f.model_dump_json() for n in found for f in n.findings} == {
                f.model_dump_json() for f in whole.findings
            }

    def test_lines_without_ends(self) -> None:
        text = HEAD + ITEM + ITEM
        assert list(iter_notices(text.split("\n"))) == list(iter_notices([text]))

    def test_findings_outside_go_to_the_next_notice_or_the_last(self) -> None:
        junk = "Chart 77 is sold at 3 m\n\n"
        text = junk + HEAD + ITEM + "\n" + HEAD.replace("12", "13") + ITEM + "\n"
        outside = [f for f in parse(text).findings if not f.paths]
        first, *_ = iter_notices(text.splitlines(keepends=True))
        assert outside
        assert [f for f in first.findings if not f.paths] == outside

    def test_one_text_is_no_iterable_of_lines(self) -> None:
        with pytest.raises(TypeError, match="not one text"):
            list(iter_notices(HEAD))

    def test_lines_must_be_text(self) -> None:
        with pytest.raises(TypeError):
            list(iter_notices([b"bytes"]))  # type: ignore[list-item]

    def test_is_lazy(self) -> None:
        def lines() -> Iterator[str]:
            for number in range(1, 10**9):
                yield HEAD.replace("12", str(number))
                yield ITEM + "\n"

        stream = iter_notices(lines())
        assert [next(stream).number for _ in range(3)] == [1, 2, 3]


class TestWriter:
    """The bytes of a stream are those of a whole."""

    @pytest.mark.parametrize("name", ["demo", "demo_faulty", "clean/weekly_full"])
    def test_one_part(self, name: str) -> None:
        bulletin = parse((CORPUS / f"{name}.txt").read_text("utf-8"))
        assert "".join(write_parts([bulletin])) == "".join(write_lines(bulletin))

    def test_several_parts_make_one_bulletin(self) -> None:
        text = generate(6, size_bytes=12_000).text
        lines = "".join(write_parts(in_parts(text, 2500))).splitlines()
        *notices, last = map(json.loads, lines)
        whole = read_bulletin(text)
        assert len(notices) == len(whole.notices)
        assert last.pop("record") == "bulletin"
        assert list(last) == [name for name in Bulletin.model_fields if name != "notices"]
        bulletin = Bulletin.model_validate({**last, "notices": []})
        assert told(bulletin.findings) == told(whole.findings)
        assert bulletin.coverage == whole.coverage

    def test_nothing_at_all(self) -> None:
        assert list(write_parts([])) == []
