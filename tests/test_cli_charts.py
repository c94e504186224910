"""`--charts LIST` of three commands."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from noticeparse.caution import CAUTION
from tests.chart_notices import CHARTS, DEMO, WRECK, notice
from tests.command import invoke
from tests.corpus_files import CORPUS


class TestCommandLine:
    """`--charts LIST` of three commands."""

    def test_parse(self) -> None:
        result = invoke("parse", "--charts", CHARTS, DEMO)
        assert (result.exit_code, result.stderr) == (0, "")
        action = json.loads(result.stdout)["notices"][0]["charts"][0]["actions"][0]
        assert action["sheet"]["positions"][0]["part"] == "centre"

    def test_check(self) -> None:
        assert invoke("check", "--charts", CHARTS, DEMO).stdout == f"{CAUTION}\n"
        found = invoke("check", "--charts", CHARTS, str(CORPUS / "demo_faulty.txt")).stdout
        assert "warning position-outside-chart (notice 2418/26, chart 802)\n" in found
        assert "  `48°20'.44S., 123°31'.02W.` lies outside" in found

    def test_charts(self) -> None:
        shown = invoke("charts", "--charts", CHARTS, DEMO).stdout.splitlines()
        assert shown[0] == "Chart 802, Quill Sound and Approaches, 1:75 000"
        assert "after 2310/26 (on the chart)" in shown[1]

    def test_charts_that_are_not_in_the_list(self, tmp_path: Path) -> None:
        path = tmp_path / "a.txt"
        path.write_text(notice("12/26", "3/26", WRECK, chart="95"), "utf-8")
        shown = invoke("charts", "--charts", CHARTS, str(path)).stdout
        assert shown.startswith("Chart 95 (not in the chart list)\n")

    def test_what_one_input_puts_on_a_chart_is_on_it_for_the_next(self, tmp_path: Path) -> None:
        item = "Delete wreck 47-20.00S 123-30.00W"
        names = []
        for number, previous in (("2411/26", "2310/26"), ("2412/26", "2411/26")):
            path = tmp_path / f"{number[:4]}.txt"
            path.write_text(notice(number, previous, item, words="WGS84"), "utf-8")
            names.append(str(path))
        assert invoke("check", "--charts", CHARTS, *names).stdout == f"{CAUTION}\n"
        assert "previous-not-last-applied" in invoke("check", "--charts", CHARTS, names[1]).stdout

    def test_a_gap_told_by_the_list_is_not_told_again(self, tmp_path: Path) -> None:
        names = []
        for number, previous in (("2411/26", "2310/26"), ("2413/26", "2412/26")):
            path = tmp_path / f"{number[:4]}.txt"
            path.write_text(notice(number, previous, WRECK, words="WGS84"), "utf-8")
            names.append(str(path))
        assert "previous-gap" in invoke("check", *names).stdout
        found = invoke("check", "--charts", CHARTS, *names).stdout
        assert "previous-not-last-applied" in found
        assert "previous-gap" not in found

    @pytest.mark.parametrize("command", ["parse", "check", "charts"])
    def test_slips_of_the_list(self, command: str, tmp_path: Path) -> None:
        path = tmp_path / "list.csv"
        text = Path(CHARTS).read_text("utf-8").replace("12500,-47.2,", "12500,47-12S,")
        path.write_text(text, "utf-8")
        result = invoke(command, "--charts", str(path), DEMO)
        assert result.stderr.startswith(
            f"{path}:5:1: error chart-list-value-unread: `47-12S` cannot be read as scale_latitude"
        )
        assert result.exit_code == 1
        assert result.stdout

    @pytest.mark.parametrize("command", ["parse", "check", "charts"])
    def test_no_list(self, command: str, tmp_path: Path) -> None:
        for name, words in ((str(tmp_path / "none.csv"), "no such file"), (DEMO, "no chart list")):
            result = invoke(command, "--charts", name, DEMO)
            assert result.exit_code == 2
            assert words in result.stderr
            assert not result.stdout

    def test_standard_input_is_for_notices(self) -> None:
        result = invoke("check", "--charts", "-", DEMO)
        assert result.exit_code == 2
        assert "give the name of a file" in result.stderr

    def test_output_over_the_list(self, tmp_path: Path) -> None:
        path = tmp_path / "list.csv"
        path.write_bytes(Path(CHARTS).read_bytes())
        result = invoke("parse", "--charts", str(path), "--out", str(path), DEMO)
        assert result.exit_code == 2
        assert path.read_bytes() == Path(CHARTS).read_bytes()
