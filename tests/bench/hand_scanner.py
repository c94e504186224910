"""A scanner written by hand for the notice-first layout of the generator, to measure against.

`re` patterns and descent by line: notice head, chart head, verb heading, item, further position.
It makes the same records as noticeparse, validated in one call a notice, and knows this one
layout only: no other order, no repair that changes the length of the text, and of the checks only
the one of temporary notices.
"""

from __future__ import annotations

import hashlib
import re
from collections.abc import Iterator
from itertools import accumulate
from typing import Any

from noticeparse.catalogue import ENTRIES
from noticeparse.caution import CAUTION
from noticeparse.records import Bulletin, Notice
from noticeparse.testing.generator.names import MONTHS
from noticeparse.version import VERSION
from tests.bench.hand_actions import make_action
from tests.bench.hand_phrases import plain
from tests.bench.hand_positions import Place, read_place

_NOTICE = re.compile(r"(\d+)(?:\(([TP])\))?/(?:20)?(\d\d)   (.+?)\.?$")
_NUMBER = r"(?P<number>\d+)(?:\((?P<mark>[TP])\))?/(?:20)?(?P<year>\d\d)"
_CHART_NUMBER = r"Chart (?P<chart>[A-Z0-9-]+(?: \d+)?)"
_UNIT = r"depths in (?P<unit>metres|feet|fathoms and feet)"
_BRACKETED = re.compile(
    rf"{_CHART_NUMBER}(?: \((?P<int>INT \d+)\))?(?: \({_UNIT}\))?"
    rf" \[(?P<previous>{_NUMBER})\](?P<datum> WGS84)"
)
_PLAIN = re.compile(
    rf"{_CHART_NUMBER}(?P<int>)(?:, {_UNIT})?\. (?P<previous>Last notice {_NUMBER})\.(?P<datum>)"
)
_WIDE = re.compile(
    rf"{_CHART_NUMBER}   (?P<int>INT \d+)   \((?P<previous>last correction {_NUMBER})\)"
    rf"(?P<datum>   WGS 84)(?:   {_UNIT})?"
)
_CANCEL = re.compile(r"Cancel Notice " + _NUMBER)
_FRONT = re.compile(r"edition (\d+)/(\d{4}), (\d+) (\w+) \d{4}")
_STATUS = {None: "permanent", "T": "temporary", "P": "preliminary"}
_UNITS = {None: None, "metres": "m", "feet": "ft", "fathoms and feet": "fm_ft"}
_WGS84 = {"name": "WGS84", "epsg": 4326}
_UNIT_ENTRY = ENTRIES["depth-unit-not-stated"]
_TEMPORARY_ENTRY = ENTRIES["temporary-with-actions"]


def scan(text: str) -> bytes:
    """The bulletin of a text as JSON bytes."""
    return scan_bulletin(text).model_dump_json().encode()


def scan_bulletin(text: str) -> Bulletin:
    """The bulletin of a text."""
    scanner = _Scanner(text)
    scanner.run()
    return scanner.bulletin()


def _ref(match: re.Match[str]) -> dict[str, Any]:
    number, mark, year = match.group("number", "mark", "year")
    return {"number": int(number), "year": 2000 + int(year), "status": _STATUS[mark]}


class _Scanner:
    def __init__(self, text: str) -> None:
        self.given = text
        self.text = plain(text)
        self.front: list[str] = []
        self.notices: list[Notice] = []
        self.findings: list[dict[str, Any]] = []
        self.notice: dict[str, Any] | None = None
        self.chart: dict[str, Any] | None = None
        self.unstated: dict[str, Any] | None = None
        self.verb = ""
        self.item: list[Any] | None = None
        """Words, start, end, row, positions, and the destination."""
        self.before: Place | None = None

    def run(self) -> None:
        """Read all lines."""
        for row, start, line in self._lines():
            if line.startswith("   "):
                self._row(line, start, row)
            elif not line:
                continue
            elif line.isalpha():
                self._close_item()
                self.verb = line
            else:
                self._head(line, start, row)
        self._close_notice()

    def _lines(self) -> Iterator[tuple[int, int, str]]:
        lines = self.text.split("\n")
        starts = accumulate((len(line) + 1 for line in lines), initial=0)
        return zip(range(1, len(lines) + 1), starts, lines, strict=False)

    # Heads

    def _head(self, line: str, start: int, row: int) -> None:
        if line.startswith("Chart "):
            self._open_chart(line, start, row)
        elif line[0].isdigit():
            self._open_notice(line, start, row)
        elif line.startswith("Source: ") and self.notice is not None:
            self.notice["authority"] = line[8:]
            self.notice["span"]["end"] = start + len(line)
        elif line.startswith("Cancel") and self.notice is not None:
            self._cancel(line, start)
        else:
            self.front.append(line)

    def _open_notice(self, line: str, start: int, row: int) -> None:
        self._close_notice()
        match = _NOTICE.match(line)
        assert match is not None
        number, mark, year, heading = match.groups()
        *regions, subjects = heading.split(" - ")
        self.notice = {
            "id": f"{number}({mark})/{year}" if mark else f"{number}/{year}",
            "number": int(number), "year": 2000 + int(year), "status": _STATUS[mark],
            "series": None, "original_information": False, "heading": heading,
            "regions": regions, "subjects": subjects.split(". "), "authority": None,
            "valid": None, "cancels": [], "charts": [], "remarks": [],
            "span": _span(start, start + match.end(4), row, 1), "findings": [],
        }  # fmt: skip
        if mark == "T":
            self._commands_for_a_time(_span(start, start + line.index(" "), row, 1))

    def _commands_for_a_time(self, span: dict[str, int]) -> None:
        assert self.notice is not None
        written = self.notice["id"]
        finding = {
            "code": _TEMPORARY_ENTRY.code, "severity": _TEMPORARY_ENTRY.severity,
            "message": _TEMPORARY_ENTRY.message.format(written=written),
            "hint": _TEMPORARY_ENTRY.hint, "span": span, "notice": written, "chart": None,
            "paths": [f"/notices/{len(self.notices)}"],
        }  # fmt: skip
        self.findings.append(finding)
        self.notice["findings"].append(finding)

    def _cancel(self, line: str, start: int) -> None:
        assert self.notice is not None
        self._close_item()
        match = _CANCEL.match(line)
        assert match is not None
        self.notice["cancels"].append(_ref(match))
        self.notice["span"]["end"] = start + len(line)

    def _open_chart(self, line: str, start: int, row: int) -> None:
        self._close_chart()
        assert self.notice is not None
        pattern = _BRACKETED if "[" in line else _WIDE if "   INT" in line else _PLAIN
        match = pattern.match(line)
        assert match is not None, line
        self.unstated = None
        self.chart = {
            "chart": match["chart"], "international": match["int"] or None, "panel": None,
            "edition": None, "edition_date": None, "previous": _ref(match),
            "previous_written": match["previous"], "datum": _WGS84 if match["datum"] else None,
            "depth_unit": _UNITS[match["unit"]], "actions": [],
            "span": _span(start, start + len(line.rstrip(".")), row, 1),
        }  # fmt: skip
        self.notice["charts"].append(self.chart)

    # Items

    def _row(self, line: str, start: int, row: int) -> None:
        left, _, words = line.rpartition("    ")
        column = len(line) - len(words)
        at = start + column
        written = self.given[at : at + len(words)]
        place = read_place(words, written, at, row, column + 1, self.before)
        assert place is not None, line
        self.before = place
        left = left.strip()
        if not left or left == "to":
            assert self.item is not None
            (self.item[4] if not left else self.item[5]).append(place.record)
            self.item[2] = at + len(words)
            return
        self._close_item()
        left = self.given[start + 3 : start + 3 + len(left)]
        self.item = [left, start + 3, at + len(words), row, [place.record], []]

    def _close_item(self) -> None:
        if self.item is None:
            return
        assert self.chart is not None
        words, start, end, row, positions, destination = self.item
        self.item = None
        made = make_action(self.verb, words, self.chart["depth_unit"], positions, destination)
        written = self.given[start:end]
        made.action["text"] = " ".join(written.split())
        made.action["span"] = _span(start, end, row, 4)
        index = len(self.chart["actions"])
        self.chart["actions"].append(made.action)
        self.chart["span"]["end"] = end
        for at, figure in made.unstated:
            self._unit_not_stated(start + at, row, figure, index)

    def _unit_not_stated(self, start: int, row: int, figure: str, index: int) -> None:
        """One remark a chart section, with the paths of all its depths."""
        assert self.notice is not None
        assert self.chart is not None
        section = len(self.notice["charts"]) - 1
        path = f"/notices/{len(self.notices)}/charts/{section}/actions/{index}"
        if self.unstated is not None:
            if path not in self.unstated["paths"]:
                self.unstated["paths"].append(path)
            return
        line_start = self.text.rfind("\n", 0, start) + 1
        self.unstated = {
            "code": _UNIT_ENTRY.code, "severity": _UNIT_ENTRY.severity,
            "message": _UNIT_ENTRY.message.format(written=figure), "hint": _UNIT_ENTRY.hint,
            "span": _span(start, start + len(figure), row, start - line_start + 1),
            "notice": self.notice["id"], "chart": self.chart["chart"], "paths": [path],
        }  # fmt: skip
        self.findings.append(self.unstated)
        self.notice["findings"].append(self.unstated)

    # Ends

    def _close_chart(self) -> None:
        self._close_item()
        if self.chart is not None and self.notice is not None:
            span = self.notice["span"]
            span["end"] = max(span["end"], self.chart["span"]["end"])
        self.chart = None

    def _close_notice(self) -> None:
        self._close_chart()
        if self.notice is not None:
            self.notices.append(Notice.model_validate(self.notice))
        self.notice = None

    def bulletin(self) -> Bulletin:
        """The record of the whole text."""
        match = _FRONT.search("\n".join(self.front))
        assert match is not None
        week, year, day, month = match.groups()
        solid = len("".join(self.given.split()))
        issued = f"{year}-{MONTHS.index(month) + 1:02d}-{int(day):02d}"
        return Bulletin.model_validate(
            {
                "schema_version": "1", "generator": {"name": "noticeparse", "version": VERSION},
                "caution": CAUTION,
                "source": {
                    "name": None, "media_type": "text/plain",
                    "sha256": hashlib.sha256(self.given.encode()).hexdigest(),
                    "characters": len(self.given),
                },
                "edition": {
                    "title": self.front[0], "number": week, "year": int(year), "issued": issued,
                    "first_notice": None, "last_notice": None,
                },
                "notices": self.notices, "lists": [], "findings": self.findings,
                "coverage": {
                    "characters": solid, "read": solid, "ignored": 0, "unread": 0,
                    "unread_spans": [],
                },
            }
        )  # fmt: skip


def _span(start: int, end: int, line: int, column: int) -> dict[str, int]:
    return {"start": start, "end": end, "line": line, "column": column}
