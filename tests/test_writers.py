"""Records to text: what each output says, and that nothing of the input can disturb it."""

from __future__ import annotations

import json

import pytest

from noticeparse import parse
from noticeparse.catalogue import ENTRIES
from noticeparse.caution import CAUTION
from noticeparse.records.bulletin import Bulletin
from noticeparse.records.finding import Finding
from noticeparse.spans import LineIndex, Span
from noticeparse.writers import ENDINGS, FORMATS, Wishes, form_of, new_writer
from noticeparse.writers.catalogue_out import write_entries
from noticeparse.writers.findings_out import Tally, write_findings, write_headlines
from noticeparse.writers.quoting import pointed_at, visible
from tests.contract_keys import resolve
from tests.golden_files import written
from tests.week import FAULTY_LINE, LINE, WEEK, notice


class TestJson:
    """Bulletins as JSON."""

    def test_one_line_each(self, week: Bulletin) -> None:
        lines = written("json", week, week).splitlines(keepends=True)
        assert len(lines) == 2
        assert lines[0] == lines[1]
        assert lines[0].endswith("}\n")
        record = json.loads(lines[0])
        assert [*record] == [
            "schema_version", "generator", "caution", "source", "edition", "notices", "lists",
            "findings", "coverage",
        ]  # fmt: skip
        assert record["source"]["name"] == "w.txt"

    def test_indented_is_the_same_record(self, week: Bulletin) -> None:
        indented = written("json", week, wishes=Wishes(is_indented=True))
        assert json.loads(indented) == json.loads(written("json", week))
        assert indented.count("\n") > 100

    def test_symbols_are_written_as_themselves(self, week: Bulletin) -> None:
        assert "47°12'.34S." in written("json", week)


@pytest.mark.parametrize("form", FORMATS)
class TestEveryFormat:
    """What holds for all formats."""

    def test_is_told_by_an_ending(self, form: str) -> None:
        assert form in ENDINGS.values()

    def test_same_again(self, form: str, week: Bulletin) -> None:
        assert written(form, week) == written(form, parse(WEEK, name="w.txt")) != ""

    def test_nothing_of_nothing(self, form: str) -> None:
        assert written(form) == ""

    def test_ends_with_its_line(self, form: str, week: Bulletin) -> None:
        for bulletins in ((week,), (week, week), (parse(""),)):
            assert written(form, *bulletins).endswith("\n")

    def test_parts_depend_on_nothing_before(self, form: str, week: Bulletin) -> None:
        others = [week, parse(LINE), parse("")]
        parts = [new_writer(form).part(bulletin) for bulletin in others]
        writer = new_writer(form)
        pieces = [writer.add(part) for part in parts] + [writer.end()]
        assert "".join(pieces) == written(form, *others)

    def test_carries_the_caution(self, form: str, week: Bulletin) -> None:
        assert CAUTION in written(form, week)


@pytest.mark.parametrize(
    ("path", "form"),
    [
        ("a.json", "json"), ("a.jsonl", "jsonl"), ("a.geojson", "geojson"), ("a.CSV", "csv"),
        ("b.csv/a.txt", "text"), ("a.json.bak", None), ("a", None), (".csv", None),
    ],
)  # fmt: skip
def test_ending_tells_the_format(path: str, form: str | None) -> None:
    assert form_of(path) == form


class TestLines:
    """Bulletins as JSON Lines."""

    def test_notices_then_the_rest(self, week: Bulletin) -> None:
        records = [json.loads(line) for line in written("jsonl", week).splitlines()]
        assert [record["record"] for record in records] == ["notice"] * 4 + ["bulletin"]
        assert [*records[0]][:2] == ["record", "id"]
        assert [*records[0]][-2:] == ["findings", "schema_version"]
        assert {record["schema_version"] for record in records} == {"1"}
        assert "notices" not in records[-1]
        whole = json.loads(written("json", week))
        del whole["notices"]
        assert records[-1] == {"record": "bulletin", **whole}

    def test_paths_start_at_the_notice(self, week: Bulletin) -> None:
        records = [json.loads(line) for line in written("jsonl", week).splitlines()]
        paths = [
            path for record in records[:-1] for one in record["findings"] for path in one["paths"]
        ]
        assert "/charts/0/actions/1" in {"/".join(path.split("/")[:5]) for path in paths}
        assert not any(path.startswith("/notices") for path in paths)
        for record in records[:-1]:
            for finding in record["findings"]:
                for path in finding["paths"]:
                    resolve(record, path)

    def test_path_of_the_notice_itself_is_empty(self) -> None:
        line, _ = written("jsonl", parse(f"Chart 802\n{LINE}\n")).splitlines()
        found = {one["code"]: one["paths"] for one in json.loads(line)["findings"]}
        assert found["notice-head-missing"] == [""]

    def test_paths_of_the_bulletin_lead_into_it(self, week: Bulletin) -> None:
        record = json.loads(written("json", week))
        for finding in record["findings"]:
            for path in finding["paths"]:
                resolve(record, path)


class TestFindings:
    """Findings for a person."""

    def test_whole_finding(self) -> None:
        text = notice("2417/26", "802", "2310/26", FAULTY_LINE)
        shown = "".join(write_findings(parse(text), text, "w.txt"))
        assert (
            "w.txt:3:17: error position-minutes-out-of-range (notice 2417/26, chart 802)\n"
            "     3 | Delete depth 4m 47°72'.34S., 123°45'.67W.\n"
            "       |                 ^^^^^^^^^^^\n"
            "  `47°72'.34S.`: 72.34 minutes; 59 is the last\n"
            "  why:  the figure is impossible and is never carried over into the degrees\n"
            "  hint: look for a digit slip and ask the issuer\n\n"
        ) in shown

    def test_colour_is_on_the_severity_and_the_marks(self) -> None:
        text = notice("2417/26", "802", "2310/26", FAULTY_LINE)
        plain = "".join(write_findings(parse(text), text, "w.txt"))
        painted = "".join(
            write_findings(parse(text), text, "w.txt", lambda words, how: f"<{how}>{words}</>")
        )
        assert ": <error>error</> position-minutes" in painted
        assert "       |                 <error>^^^^^^^^^^^</>\n" in painted
        assert painted.replace("<error>", "").replace("<info>", "").replace("</>", "") == plain

    def test_stretch_of_several_lines(self) -> None:
        text = notice("2417/26", "802", "2310/26", "Insert wreck,\n   least depth\n   4m")
        shown = "".join(write_findings(parse(text), text, "w.txt"))
        assert "     3 | Insert wreck,\n       | ^^^^^^^^^^^^^ to line 5\n" in shown

    def test_one_line_each(self, week: Bulletin) -> None:
        lines = [*write_headlines(week, "-")]
        assert len(lines) == len(week.findings)
        assert all(line.count("\n") == 1 for line in lines)

    def test_without_a_place(self, week: Bulletin) -> None:
        finding = Finding(
            code="text-left-over", severity="info", message="m", hint=None, span=None, notice=None,
            chart=None, paths=[],
        )  # fmt: skip
        bulletin = week.model_copy(update={"findings": [finding]})
        assert [*write_findings(bulletin, "", "a.txt")] == [
            "a.txt: info text-left-over\n  m\n"
            "  why:  nothing in it bears on a chart as far as can be told\n\n"
        ]

    def test_controls_of_the_input_reach_no_terminal(self) -> None:
        text = (
            "2417/26 TAVRENNE\nChart 802\n"
            "Insert \x1b[2Jdepth \u202e8m 47°72'.34S\x07 123°45'.67W\n"
        )
        shown = "".join(write_findings(parse(text), text, "a.txt"))
        assert shown
        assert not set(shown) & {"\x1b", "\x07", "\u202e"}

    def test_controls_of_a_number_reach_no_terminal(self, week: Bulletin) -> None:
        finding = Finding(
            code="text-unread", severity="info", message="m\x1b", hint=None, span=None,
            notice="1\x1b", chart="2\x07", paths=[],
        )  # fmt: skip
        bulletin = week.model_copy(update={"findings": [finding]})
        assert [*write_findings(bulletin, "", "a.txt")] == [
            "a.txt: info text-unread (notice 1\ufffd, chart 2\ufffd)\n  m\ufffd\n"
            "  why:  it holds a position, a verb, a chart number or a figure with a unit\n\n"
        ]

    def test_counts(self, week: Bulletin) -> None:
        tally = Tally()
        assert tally.line() == "0 notices, 0 actions; 0 errors, 0 warnings, 0 infos"
        tally.add(week)
        assert tally.line().startswith("4 notices, 5 actions; 1 error, ")


QUOTED = [
    ("short", "a\nInsert 8m here\nb", "8m", "Insert 8m here", "       ^^"),
    ("first line", "8m here", "8m", "8m here", "^^"),
    ("over the line end", "at 8m\nhere", "8m\nhere", "at 8m", "   ^^"),
    ("tab and carriage return", "\tat 8m\r\n", "8m", " at 8m", "    ^^"),
    ("return of its own", "a\rat 8m\rb", "8m", "at 8m", "   ^^"),
    ("wide letters", "海図 8m", "8m", "海図 8m", "     ^^"),
    ("combining marks", "e\u0301 8m", "8m", "e\u0301 8m", "  ^^"),
    ("long before", "x" * 500 + " 8m", "8m", "…" + "x" * 47 + " 8m", " " * 49 + "^^"),
    ("long behind", "8m " + "x" * 500, "8m", "8m " + "x" * 93 + "…", "^^"),
    ("just fits", "y" * 90 + " 8m\n", "8m", "y" * 90 + " 8m", " " * 91 + "^^"),
]


@pytest.mark.parametrize(
    ("text", "words", "line", "marks"),
    [case[1:] for case in QUOTED],
    ids=[case[0] for case in QUOTED],
)
def test_line_that_is_pointed_at(text: str, words: str, line: str, marks: str) -> None:
    at = text.index(words)
    assert pointed_at(text, LineIndex(text).span(at, at + len(words))) == (line, marks)


@pytest.mark.parametrize(
    "char",
    [*"\x00\x07\x1b\x7f\x85\x9b\u2028\u2029\u061c\u200e\u200f\u202a\u202e\u2066\u2069"],
    ids=lambda char: f"{ord(char):04X}",
)
def test_what_moves_a_cursor_or_turns_a_line_is_not_shown(char: str) -> None:
    assert visible(f"8{char}6") == "8\ufffd6"


def test_line_ends_and_tabs_are_shown_as_blanks() -> None:
    assert visible("a\tb\nc\rd\ve\ff °₆é") == "a b c d e f °₆é"


def test_pointing_stays_within_bounds() -> None:
    text = "8 " * 500_000
    line, marks = pointed_at(text, Span(start=500_000, end=1_000_000, line=1, column=500_001))
    assert len(line) < 150
    assert len(marks) < 150
    assert pointed_at("", Span(start=0, end=0, line=1, column=1)) == ("", "^")


class TestCatalogue:
    """Entries of the catalogue."""

    def test_entry(self) -> None:
        shown = "".join(write_entries([ENTRIES["text-not-utf8"]]))
        assert shown == (
            "text-not-utf8 (warning)\n"
            "  message  the file is not <encoding>: "
            "characters are lost, the first at byte <offset>\n"
            "  meaning  a lost character may have been a degree sign or a figure\n"
            "  hint     save the file as UTF-8 and read it again\n"
            '  bad      Insert special buoy, "L\\xe9one" 46-00.00S 122-00.00W\n'
            "                                  ^^^^\n"
            '  good     Insert special buoy, "Léone" 46-00.00S 122-00.00W\n'
            "  source   common practice, no published source\n"
        )

    def test_all_entries(self) -> None:
        shown = "".join(write_entries(ENTRIES.values()))
        heads = [line.split()[0] for line in shown.splitlines() if line[:1].strip()]
        assert heads == list(ENTRIES)
