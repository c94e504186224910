"""A text that is read in parts gives what it gives as a whole."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.chart_list import read_list
from noticeparse.parts import Terms, read_parts
from noticeparse.testing.generator import ALL, generate
from tests.corpus_files import CORPUS
from tests.short_notices import HEAD
from tests.specimens import bad_text
from tests.stream_parts import ITEM, in_parts, notices_of, same


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


def test_specimens_are_told_only_of_long_texts() -> None:
    for code in ("text-cut", "text-in-parts"):
        assert code not in {one.code for one in parse(bad_text(code)).findings}
