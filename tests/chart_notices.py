"""Notices for one chart, and the list of charts they are held against."""

from __future__ import annotations

from tests.corpus_files import CORPUS

CHARTS = str(CORPUS / "charts.csv")
DEMO = str(CORPUS / "demo.txt")

P = "46-30.00S 122-30.00W"
WRECK = f"Delete wreck {P}"


def notice(number: str, previous: str, *items: str, chart: str = "802", words: str = "") -> str:
    """A notice after another for one chart; `words` stand behind the head of the chart."""
    return "\n".join([f"{number} Quill Sound.", f"Chart {chart} [{previous}] {words}", *items, ""])
