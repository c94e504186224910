"""Commands that read single values, and those that describe the output."""

from __future__ import annotations

import json
import re
import sys
from collections.abc import Sequence

import pytest

from noticeparse.caution import CAUTION
from tests.command import POSITION, invoke, process


class TestValues:
    """Single positions, lights and depths."""

    def test_text(self) -> None:
        result = invoke("position", POSITION, "47 12 S 123 45 W")
        assert result.exit_code == 0
        first, second, caution = result.stdout.split("\n\n")
        assert first.splitlines()[0] == POSITION
        assert "47° 12.34' S" in first
        assert "47° 12' S" in second
        assert caution == f"{CAUTION}\n"
        assert result.stderr == ""

    def test_empty_text(self) -> None:
        result = invoke("light", "", "Fl.R.5s", " ")
        assert result.exit_code == 1
        assert result.stderr == "the text is empty\n" * 2
        assert result.stdout.startswith("Fl.R.5s\n")

    def test_no_caution_where_nothing_was_read(self) -> None:
        assert invoke("depth", "no depth").stdout == ""

    @pytest.mark.parametrize(
        ("command", "texts", "keys"),
        [
            ("position", [POSITION, "47 12 S 123 45 W"], ["lat", "lon", "iso6709"]),
            ("light", ["Fl.R.5s", "Q.G"], ["written", "rhythm", "alternating"]),
            ("depth", ["8₂m", "dries 1.2m"], ["written", "value_m", "unit"]),
        ],
    )
    def test_json(self, command: str, texts: Sequence[str], keys: Sequence[str]) -> None:
        result = invoke(command, "--format", "json", *texts)
        assert result.exit_code == 0
        records = [json.loads(line) for line in result.stdout.splitlines()]
        assert [record["written"] for record in records] == [*texts]
        assert [*records[0]][:3] == [*keys]
        assert not result.stderr

    def test_json_of_what_cannot_be_read(self) -> None:
        result = invoke("depth", "--format", "json", "8m", "no depth", "9m")
        assert result.exit_code == 1
        read, refused, last = map(json.loads, result.stdout.splitlines())
        assert (read["value_m"], last["value_m"]) == (8, 9)
        assert [*refused] == ["error", "text"]
        assert refused["text"] == "no depth"
        assert [*refused["error"]] == [
            "code", "severity", "message", "hint", "span", "notice", "chart", "paths",
        ]  # fmt: skip

    def test_text_of_what_cannot_be_read(self) -> None:
        result = invoke("light", "no light", "Fl.R.5s")
        assert result.exit_code == 1
        assert result.stdout.startswith("Fl.R.5s\n")
        assert result.stderr.startswith("no light: error light-")
        assert "  hint: " in result.stderr

    @pytest.mark.parametrize("command", ["light", "depth", "position"])
    def test_span_counts_in_the_text_given(self, command: str) -> None:
        bad = {"light": "Fl.B.5s", "depth": "8m 9m", "position": "47°72'.34S., 123°45'.67W."}[
            command
        ]

        def span(text: str) -> tuple[int, int]:
            answer = json.loads(invoke(command, "--format", "json", text).stdout)
            return answer["error"]["span"]["start"], answer["error"]["span"]["end"]

        start, end = span(bad)
        assert span(f" \t {bad}") == (start + 3, end + 3)

    def test_minus_is_no_option(self) -> None:
        result = invoke("position", "-47.205, -123.761", "--format", "json")
        assert result.exit_code == 0
        assert json.loads(result.stdout)["lat"] == -47.205
        assert invoke("position", "--", "-4712.34-12345.67/").exit_code == 0
        assert invoke("depth", "-2m").exit_code == 1

    def test_doubtful_is_refused(self) -> None:
        assert invoke("position", "47°12'.34, 123°45'.67W.").exit_code == 1

    @pytest.mark.skipif(sys.platform == "win32", reason="arguments are bytes here")
    def test_argument_that_is_no_text(self) -> None:
        ran = process("depth", "--format", "json", b"8\xbdm\x1b")
        assert ran.returncode == 1
        assert json.loads(ran.stdout)["text"] == "8\ufffdm\x1b"
        assert b"\x1b" not in process("depth", b"8\xbdm\x1b").stderr

    def test_surrogate_from_elsewhere(self) -> None:
        assert json.loads(invoke("depth", "--format", "json", "8\ud800m").stdout)["error"]


class TestSchemaAndCatalogue:
    """What describes the output."""

    def test_schema(self) -> None:
        result = invoke("schema")
        assert result.exit_code == 0
        schema = json.loads(result.stdout)
        assert schema["$schema"] == "https://json-schema.org/draft/2020-12/schema"
        assert schema["$id"] == "urn:noticeparse:schema:bulletin:1"

    def test_explain(self) -> None:
        result = invoke("explain", "Depth-Minus")
        assert result.exit_code == 0
        assert result.stdout.startswith("depth-minus (error)\n  message  ")
        assert result.stdout.endswith(f"\n\n{CAUTION}\n")
        assert result.stderr == ""

    def test_explain_all(self) -> None:
        result = invoke("explain", "--all")
        *entries, caution = result.stdout.splitlines()
        assert caution == CAUTION
        codes = [line.split()[0] for line in entries if line[:1].strip()]
        assert codes == sorted(codes)
        assert "text-not-utf8" in codes

    def test_explain_shows_the_specimens(self) -> None:
        shown = invoke("explain", "verb-unknown").stdout
        assert (
            "  bad      Insert rock 46-00.00S 122-00.00W\n"
            "           Deelte dangerous wreck 46-00.50S 122-00.00W\n"
            "           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^\n"
            "  good     Insert rock 46-00.00S 122-00.00W\n"
            "           Delete dangerous wreck 46-00.50S 122-00.00W\n"
            "  source   "
        ) in shown

    def test_explain_what_is_not_there(self) -> None:
        result = invoke("explain", "depth-minis")
        assert result.exit_code == 2
        assert not result.stdout
        assert "is it depth-minus" in result.stderr

    def test_explain_tells_like_codes(self) -> None:
        said = invoke("explain", "depth-minus", "position-minute").stderr
        assert re.search(r"; is it [a-z-]+, [a-z-]+ or [a-z-]+\?\n$", said)
