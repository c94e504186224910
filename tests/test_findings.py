"""Findings about items, charts and characters, beside the specimens of the catalogue."""

from __future__ import annotations

from noticeparse import parse
from tests.short_notices import HEAD, P, Q


def test_item_that_no_chart_takes() -> None:
    head = "12/26 Quill Sound.\nCharts 802 (a), 803 (a) WGS84\n"
    text = f"{head}Insert (a) wreck {P}\n(b) rock {Q}\n"
    (finding,) = parse(text).findings
    assert finding.code == "item-without-chart"
    assert finding.span is not None
    assert text[finding.span.start : finding.span.end] == f"(b) rock {Q}"


def test_items_without_a_letter_are_for_all_charts() -> None:
    text = f"12/26 Quill Sound.\nCharts 802 (a), 803 (a)\nInsert (a) wreck {P}\nDelete rock {Q}\n"
    charts = parse(text).notices[0].charts
    assert [[a.verb for a in chart.actions] for chart in charts] == [["insert", "delete"]] * 2


def test_chart_whose_number_cannot_be_read() -> None:
    bulletin = parse(f"12/26 Quill Sound.\nChart No: ?? [3/26] WGS84\nInsert wreck {P}\n")
    assert "chart-unread" in {finding.code for finding in bulletin.findings}


def test_words_that_may_bear_on_a_chart() -> None:
    bulletin = parse(
        f"TAVRENNE\nChart 999 is withdrawn.\n\n12/26 A\nChart 802\nInsert wreck {P}\n"
    )
    assert [f.severity for f in bulletin.findings if "999" in f.message] == ["warning"]


def test_stop_ends_a_command() -> None:
    bulletin = parse(f"{HEAD}ADD ROCK {P} STOP REMOVE WRECK {Q} STOP\n")
    actions = bulletin.notices[0].charts[0].actions
    assert [(a.verb, a.feature.kind) for a in actions] == [("insert", "rock"), ("delete", "wreck")]


def test_garbled_line_at_the_end() -> None:
    text = f"{HEAD}Insert tower {P}\n~(%) wr#ck, l&ast d~pth 4.1m\n"
    assert [finding.code for finding in parse(text).findings] == ["text-garbled"]
    assert not parse(text).notices[0].charts[0].actions[0].usable
