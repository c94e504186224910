"""Checks over the actions of a notice: what is told, and what lies near it and is in order."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, R

TOLD = {
    "east among west": (
        f"Insert wreck {P}\nInsert rock {Q}\nInsert stump {R}\nInsert perch 46-00.20S 122-00.10E",
        "position-hemisphere-differs",
    ),
    "move of several to their own places": (
        f"Move buoys from {P} and {Q} to {P} and {Q}", "move-to-same-place",
    ),
    "bow tie over the antimeridian": (
        "Insert foul area bounded by 46-00.00S 179-59.50E, 46-01.00S 179-59.50W, "
        "46-00.00S 179-59.50W and 46-01.00S 179-59.50E",
        "area-crosses-itself",
    ),
    "number left out": (
        f"Insert:\n  1. wreck {P}\n  2. rock {Q}\n  4. stump {R}", "letter-out-of-order",
    ),
    "verb at the end": (f"Insert wreck {P}\nDelete", "verb-without-item"),
    "two verbs above each other": (f"Insert\nDelete\nwreck {P}", "verb-without-item"),
}  # fmt: skip

SILENT = {
    "both sides of the equator": (
        "Insert wreck 0-00.20S 122-00.00W\nInsert rock 0-00.10N 122-00.00W\n"
        "Insert stump 0-00.30S 122-00.00W\nInsert perch 0-00.40S 122-00.00W"
    ),
    "both sides of the antimeridian": (
        "Insert wreck 46-00.20S 179-59.90W\nInsert rock 46-00.10S 179-59.90E\n"
        "Insert stump 46-00.30S 179-59.80W\nInsert perch 46-00.40S 179-59.70W"
    ),
    "ring closed in the text": (
        "Insert foul area bounded by 46-00.00S 122-00.00W, 46-00.00S 122-01.00W, "
        "46-01.00S 122-01.00W and 46-00.00S 122-00.00W"
    ),
    "one for another at its place": f"Insert (a) wreck {P}\nDelete (b) rock {P}",
    "same kind, other light": (
        f"Insert port-hand light-buoy Fl.R.3s {P}\nDelete port-hand light-buoy Fl.R.5s {P}"
    ),
    "letters begun anew": (
        f"Insert (a) wreck {P}\n(b) rock {Q}\nDelete (a) stump {R}\n"
        "(b) perch 46-00.20S 122-00.10W"
    ),
    "letters of the two ends of a move": (
        f"Insert (a) wreck {P}\nMove special buoy from (b) {Q} to (c) {R}\n"
        "Delete (d) perch 46-00.20S 122-00.10W"
    ),
    "long cable": (
        "Insert submarine cable joining 46-00.00S 122-00.00W, 46-20.00S 122-10.00W, "
        "46-50.00S 122-20.00W, 47-30.00S 122-30.00W and 48-20.00S 122-40.00W"
    ),
}  # fmt: skip


def codes(text: str) -> list[str]:
    findings = parse(HEAD + text + "\n").findings
    return [finding.code for finding in findings if finding.severity != "info"]


@pytest.mark.parametrize(("text", "code"), TOLD.values(), ids=TOLD)
def test_is_told(text: str, code: str) -> None:
    assert code in codes(text)


@pytest.mark.parametrize("text", SILENT.values(), ids=SILENT)
def test_is_in_order(text: str) -> None:
    assert codes(text) == []


def test_the_same_light_at_two_places_on_two_charts() -> None:
    first = f"Insert port-hand light-buoy, Fl.R.3s No 4 {P}\nChart 803 [4/26] WGS84\n"
    again = "Insert port-hand light-buoy, Fl.R.3s No 4 "
    assert codes(first + again + "46-00.0S 122-00.0W") == []
    assert codes(first + again + R) == ["position-differs-by-chart"]
