"""A week of notices of the Tavrenne Islands, for the tests of what is written from them."""

from __future__ import annotations


def notice(number: str, chart: str, previous: str, *lines: str) -> str:
    """A notice of the Tavrenne Islands for one chart."""
    head = f"{number} TAVRENNE ISLANDS - Quill Sound - Depths.\n"
    return f"{head}Chart {chart} [last correction {previous}]\n" + "\n".join(lines) + "\n\n"


LINE = "Insert depth 8m 47°12'.34S., 123°45'.67W."
OTHER_LINE = "Insert depth 9m 47°12'.34S., 123°45'.67W."
FAULTY_LINE = "Delete depth 4m 47°72'.34S., 123°45'.67W."

WEEK = (
    notice("2431(T)/26", "802", "2417/26", "Delete depth 7m 47°13'.00S., 123°45'.00W.")
    + notice("2420/26", "802", "2417/26", "Insert depth 6m 47°14'.00S., 123°45'.00W.")
    + notice("2417/26", "802", "2310/26", LINE, FAULTY_LINE)
    + notice("2425/26", "95", "2311/26", LINE)
)
