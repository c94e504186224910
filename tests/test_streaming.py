"""A text that is read in parts gives what it gives as a whole, in bounded memory."""

from __future__ import annotations

import errno
import io
import json
import re
from collections.abc import Iterator
from itertools import pairwise
from pathlib import Path
from typing import IO

import pytest
from hypothesis import given, settings

from noticeparse import iter_notices, parse
from noticeparse.chart_list import read_list
from noticeparse.console import long_input, streaming
from noticeparse.intake import NotReadable, decode
from noticeparse.parts import WHOLE, Terms, read_parts
from noticeparse.pipeline import read_bulletin
from noticeparse.records.bulletin import Bulletin
from noticeparse.records.finding import Finding
from noticeparse.records.notice import Notice
from noticeparse.testing.generator import ALL, generate
from noticeparse.writers.lines_out import write_lines
from noticeparse.writers.parts_out import write_parts
from tests.command import invoke
from tests.laws.strategies import anything
from tests.specimens import bad_text

CORPUS = Path(__file__).parent.parent / "corpus_synthetic"
COUNTS = ("characters", "read", "ignored", "unread")

# What a part cannot know of the others, or says once for each of them.
OF_A_WHOLE = frozenset(
    "notice-number-twice notice-out-of-order notice-outside-range notice-missing in-force-missing"
    " index-chart-not-in-notice index-notice-not-here index-without-chart cancelled-by-none"
    " cancelled-not-listed cancels-permanent previous-fork previous-gap previous-goes-back"
    " previous-later position-far-away position-hemisphere-differs datum-not-stated"
    " text-in-parts text-control-character text-surrogate".split()
)
HEAD = "12/26 Quill Sound.\nChart 802 [3/26] WGS84, depths in metres\n"
ITEM = "Insert depth 8m 46-00.00S 122-00.00W\n"


def in_parts(text: str, part: int, whole: int | None = None) -> list[Bulletin]:
    pieces = text.splitlines(keepends=True)
    return list(read_parts(pieces, Terms(part=part, whole=whole or 4 * part)))


def notices_of(parts: list[Bulletin]) -> list[Notice]:
    return [notice for part in parts for notice in part.notices]


def bare(notices: list[Notice]) -> list[Notice]:
    """The notices without what their findings say."""
    return [one.model_copy(update={"findings": []}) for one in notices]


def told(findings: list[Finding]) -> list[str]:
    return sorted(one.model_dump_json() for one in findings if one.code not in OF_A_WHOLE)


def same(text: str, parts: list[Bulletin]) -> None:
    whole = parse(text)
    assert bare(notices_of(parts)) == bare(whole.notices)
    assert told([one for part in parts for one in part.findings]) == told(whole.findings)
    assert [one for part in parts for one in part.lists] == whole.lists
    for name in COUNTS:
        assert sum(getattr(part.coverage, name) for part in parts) == getattr(whole.coverage, name)
    for part in parts:
        assert part.edition == whole.edition


class TestParts:
    """Cut where notices begin."""

    @pytest.mark.parametrize("layout", ALL)
    @pytest.mark.parametrize("seed", [3, 4])
    def test_each_layout(self, layout: str, seed: int) -> None:
        text = generate(seed, size_bytes=12_000, layouts=(layout,)).text
        parts = in_parts(text, 2500)
        assert len(parts) >= 3
        same(text, parts)

    @pytest.mark.parametrize("name", ["clean/weekly_full", "clean/email_quote", "clean/key_value"])
    def test_corpus(self, name: str) -> None:
        text = (CORPUS / f"{name}.txt").read_text("utf-8")
        same(text, in_parts(text, 800))

    def test_spans_lead_into_the_whole_text(self) -> None:
        text = generate(5, size_bytes=12_000).text
        lines = text.split("\n")
        for notice in notices_of(in_parts(text, 2500)):
            written = text[notice.span.start : notice.span.end]
            assert lines[notice.span.line - 1][notice.span.column - 1 :].startswith(
                written.split("\n")[0]
            )

    def test_front_matter_holds_on(self) -> None:
        front = (
            "WEEKLY EDITION 12\n26 March 1999\nAll depths in fathoms and feet. Datum: WGS84\n\n"
        )
        one = (
            "{0}/99  Quill Sound - Depth.\nChart 802 [3/99]\nInsert depth 3 46-00.0S 122-00.0W\n\n"
        )
        parts = in_parts(front + "".join(one.format(n) for n in range(1, 100)), 1000)
        last = parts[-1].notices[-1]
        assert len(parts) > 3
        assert (last.year, last.charts[0].datum and last.charts[0].datum.name) == (1999, "WGS84")
        assert last.charts[0].depth_unit == "fm_ft"

    @pytest.mark.parametrize(
        ("titles", "row"),
        [
            pytest.param(
                "Notice   Chart  Action  Feature    Latitude    Longitude\n",
                "{0}/26   802    Insert  depth 5m   46-0{1}.0S    122-00.0W\n",
                id="columns",
            ),
            pytest.param(
                "Notice   Chart  Action  Feature    Latitude S  Longitude W\n",
                "{0}/26   802    Insert  depth 5m   46-0{1}.0     122-00.0\n",
                id="hemispheres",
            ),
            pytest.param(
                "Notice   Chart  Action  Feature    Latitude S  Longitude W\n"
                "99/26    802    Insert  depth 5m   46 01.0     122 00.0\n",
                "{0}/26   802    Insert  depth 5m      0{1}.5        30.5\n",
                id="degrees",
            ),
            pytest.param(
                "I = insert, D = delete\n\n"
                "Notice   Chart  Act  Feature    Latitude    Longitude\n",
                "{0}/26   802    I    depth 5m   46-0{1}.0S    122-00.0W\n",
                id="letters",
            ),
            pytest.param(
                "99/26  Quill Sound\n802     [98/26] WGS84\n",
                "\n{0}/26  Quill Sound\n802     Insert depth 3m 46-0{1}.0S 122-00.0W\n",
                id="margin",
            ),
        ],
    )
    def test_what_is_told_on_the_way_holds_on(self, titles: str, row: str) -> None:
        """Titles and the like far behind the front matter, and cuts far behind them."""
        one = "{0}/26  Quill Sound.\nChart 802 [3/26]\nInsert depth 3m 46-00.0S 122-00.0W\n\n"
        text = "WEEKLY EDITION 12\n26 March 2026\n\n"
        text += "".join(one.format(n) for n in range(1, 20)) + titles
        text += "".join(row.format(n, n % 10) for n in range(100, 160))
        parts = in_parts(text, 1000)
        assert len(parts) > 3
        assert len(parts[-1].notices[-1].charts[0].actions) == 1
        same(text, parts)

    @pytest.mark.parametrize(
        ("front", "chart"),
        [
            pytest.param(
                "Chart 700 WGS84\n"
                "Notice   Action  Feature    Latitude    Longitude\n"
                "99/26    Insert  depth 5m   46-00.0S    122-00.0W\n\n",
                "Chart {1} WGS84\n{0}/26            depth 5m   46-0{2}.0S    122-00.0W\n\n",
                id="verb of the row above",
            ),
            pytest.param(
                "Chart 700 WGS84\n"
                "Insert the following depths:\n"
                "Notice   Feature    Latitude    Longitude\n"
                "99/26    depth 5m   46-00.0S    122-00.0W\n\n",
                "Chart {1} WGS84\n{0}/26   depth 5m   46-0{2}.0S    122-00.0W\n\n",
                id="verb of a heading",
            ),
            pytest.param(
                "",
                "{0}. Chart {1} WGS84\n{0}/26 Insert depth 5m 46-0{2}.0S 122-00.0W\n\n",
                id="charts with the numbers of paragraphs",
            ),
        ],
    )
    def test_what_holds_on_under_the_next_chart(self, front: str, chart: str) -> None:
        text = "WEEKLY EDITION 12\n26 March 2026\n\n" + front
        text += "".join(chart.format(n, n + 600, n % 10) for n in range(101, 180))
        parts = in_parts(text, 1000)
        assert len(parts) > 3
        assert [a.verb for c in parts[-1].notices[-1].charts for a in c.actions] == ["insert"]
        same(text, parts)

    def test_columns_end_with_their_section(self) -> None:
        """Titles in the front matter do not come back behind the section that they are for."""
        row = "{0}/26   802    Insert  depth 5m   46-0{1}.0S    122-00.0W\n"
        one = "{0}/26  Quill Sound.\nChart 802 [3/26]\nInsert depth 3m 46-00.0S 122-00.0W\n\n"
        text = "WEEKLY EDITION 12\n26 March 2026\n\n"
        text += "Notice   Chart  Action  Feature    Latitude    Longitude\n"
        text += "".join(row.format(n, n % 10) for n in range(100, 120)) + "\n\nPART II\n\n"
        text += "".join(one.format(n) for n in range(1, 60))
        same(text, in_parts(text, 1000))

    @pytest.mark.parametrize(
        ("front", "units"),
        [
            ("All depths in fathoms and feet.\n", ["fm_ft", None]),
            ("", [None, "m"]),
        ],
    )
    def test_a_unit_that_another_section_states(self, front: str, units: list[str | None]) -> None:
        """It holds from its part on; against another one, none is said of all."""
        one = "{0}/26  Quill Sound.\nChart 802 [3/26]\nInsert depth 3 46-00.0S 122-00.0W\n\n"
        text = "WEEKLY EDITION 12\n26 March 2026\n" + front + "\n"
        text += "".join(one.format(n) for n in range(1, 40))
        text += "PART II - NOTICES\n\nAll depths in metres.\n\n"
        text += "".join(one.format(n) for n in range(40, 90))
        notices = notices_of(in_parts(text, 1000))
        assert [n.charts[0].depth_unit for n in (notices[0], notices[-1])] == units
        assert parse(text).notices[-1].charts[0].depth_unit == units[1]

    def test_numbers_behind_their_headings(self) -> None:
        """A heading in front of a cut stays that of the notice behind it."""
        one = "Quill Sound - Wreck {1}                         {0}/26\n"
        one += "Chart 802 [3/26] WGS84, depths in metres\n" + ITEM + "\n"
        text = "".join(one.format(n, "ABC"[n % 3]) for n in range(1, 90))
        parts = in_parts(text, 1000)
        assert len(parts) > 3
        same(text, parts)

    def test_only_the_first_number_of_all_is_that_of_the_edition(self) -> None:
        """A notice without a word is one, also where a later part begins with it."""
        one = HEAD.replace("12/26", "{0}/26") + ITEM + "\n"
        text = "Circular 7 of 2026\n26 March 2026\n\n"
        text += "".join(one.format(n) + f"{n + 200}/26\n\n" for n in range(1, 90))
        for part in (700, 730, 760, 790):
            parts = in_parts(text, part)
            assert any(part.notices[0].number > 200 for part in parts[1:])
            same(text, parts)

    def test_furniture_of_an_early_part_is_known_later(self) -> None:
        """A page head that a later part shows once is no notice there."""
        page = "\f NOTICES TO MARINERS   3/2026   {0}\n\n"
        one = HEAD.replace("12/26", "{0}/26") + ITEM + "\n"
        rows = [one.format(n) + (page.format(n) if n % 7 == 0 else "") for n in range(1, 60)]
        text = page.format(1) + "".join(rows)
        same(text, in_parts(text, 1200))

    def test_what_is_put_on_a_chart_is_on_it_for_the_next_part(self) -> None:
        charts = read_list(
            "number,scale,south,west,north,east,last_notice\n802,75000,-47,-123,-45,-121,0/26\n"
        )
        one = "{0}/26 Quill Sound.\nChart 802 [{1}/26] WGS84\n" + ITEM + "\n"
        text = "".join(one.format(n, n - 1) for n in range(1, 60))
        parts = list(read_parts([text], Terms(charts=charts, part=1000, whole=2000)))
        codes = {one.code for part in parts for one in part.findings}
        assert len(parts) > 3
        assert "previous-not-last-applied" not in codes
        assert "notice-applied-already" not in codes

    def test_that_there_are_parts_is_said_once(self) -> None:
        text = generate(3, size_bytes=12_000).text
        findings = [one for part in in_parts(text, 2500) for one in part.findings]
        assert [
            one.span and one.span.start for one in findings if one.code == "text-in-parts"
        ] == [0]


class TestBounds:
    """What gives no place to cut stays bounded all the same, and is told."""

    @pytest.mark.parametrize(
        "text",
        [
            pytest.param("x" * 50_000, id="one endless line"),
            pytest.param("\n" * 50_000 + "x", id="blank lines"),
            pytest.param("no notice at all\n" * 3000, id="junk"),
            pytest.param(HEAD + ITEM * 1500, id="one notice"),
            pytest.param("47-12.3S " * 6000, id="halves"),
        ],
    )
    def test_no_notice_begins(self, text: str) -> None:
        taken = _Taken(text)
        parts, before = [], 0
        for part in read_parts(taken.pieces(), Terms(part=2000, whole=4000)):
            parts.append(part)
            # No more is taken in for a part than is ever read as one.
            assert taken.characters - before <= 4000 + 2 * taken.AT_A_TIME
            before = taken.characters
        assert len(parts) >= len(text) / 4000
        characters = sum(one.coverage.characters for one in parts)
        assert characters == len("".join(text.split()))

    def test_torn_notice(self) -> None:
        """Nothing is lost at a cut, and that there is one is an error where it is."""
        parts = in_parts(HEAD + ITEM * 300, 2000, 4000)
        actions = [a for n in notices_of(parts) for c in n.charts for a in c.actions]
        cuts = [f for p in parts for f in p.findings if f.code == "text-cut"]
        assert len(actions) == 300
        assert {one.severity for one in cuts} == {"error"}
        assert len(cuts) == len(parts) - 1
        assert [notice.id for notice in notices_of(parts)] == ["12/26", *[None] * len(cuts)]
        for above, below in pairwise(actions):
            assert above.span.end <= below.span.start

    def test_verb_above_a_tear_holds_no_more(self) -> None:
        """Rows behind a tear have no verb, which is told, and are read under no other."""
        row = "         depth 5m   46-00.0S    122-00.0W\n"
        text = HEAD + "Action   Feature    Latitude    Longitude\nInsert" + row[6:] + row * 300
        parts = in_parts(text, 2000, 4000)
        assert len(parts) > 2
        for part in parts[1:]:
            assert not [a for n in part.notices for c in n.charts for a in c.actions if a.usable]
            assert "item-without-verb" in {f.code for f in part.findings}

    def test_left_out_lines_that_are_torn(self) -> None:
        """What goes on with a line behind `#|`, wrapped by mail, is no action behind a tear."""
        lost = "a rock; Insert wreck 46-00.00S 122-00.00W, and\n"
        text = HEAD + ITEM + "#| Insert " + lost * 400
        parts = in_parts(text, 2000, 4000)
        assert len(parts) > 2
        assert sum(len(c.actions) for n in notices_of(parts) for c in n.charts) == 1
        assert all(part.coverage.unread for part in parts)

    def test_columns_count_in_a_line_that_is_cut(self) -> None:
        text = "insert depth 8m in 46-00.00S 122-00.00W; " * 400
        for part in in_parts(text, 1000, 2000):
            for span in part.coverage.unread_spans:
                assert (span.line, span.column) == (1, span.start + 1)


class _Taken:
    """A text in small pieces, and how many of its characters were taken."""

    AT_A_TIME = 100

    def __init__(self, text: str) -> None:
        self._text = text
        self.characters = 0

    def pieces(self) -> Iterator[str]:
        for at in range(0, len(self._text), self.AT_A_TIME):
            piece = self._text[at : at + self.AT_A_TIME]
            self.characters += len(piece)
            yield piece


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


def test_specimens_are_told_only_of_long_texts() -> None:
    for code in ("text-cut", "text-in-parts"):
        assert code not in {one.code for one in parse(bad_text(code)).findings}
