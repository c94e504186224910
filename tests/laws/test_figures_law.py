"""No figure of an action is passed over: another figure is another record, or a finding."""

from __future__ import annotations

import re
from typing import Any

from hypothesis import assume, given
from hypothesis import strategies as st

from noticeparse import parse
from tests.short_notices import HEAD_WITHOUT_UNIT as HEAD
from tests.short_notices import actions_of

from .strategies import Item, items, notices

FIGURE = re.compile("[0-9₀-₉]")
NOT_A_VALUE = {"written", "written_verb", "text", "span", "sha256", "findings", "unread_spans"}


def values(record: Any) -> Any:
    """A dump without the words it came from."""
    if isinstance(record, dict):
        return {key: values(part) for key, part in record.items() if key not in NOT_A_VALUE}
    if isinstance(record, list):
        return [values(part) for part in record]
    return record


def outcome(text: str) -> tuple[Any, list[tuple[str, str]]]:
    """The values of all records, and the findings by code and severity."""
    bulletin = parse(text)
    dump = bulletin.model_dump(mode="json")
    return values(dump["notices"]), [(f.code, f.severity) for f in bulletin.findings]


def with_other_figure(text: str, at: int, step: int) -> str:
    """The figure at an offset exchanged for another one of its kind."""
    base = "₀" if text[at] >= "₀" else "0"
    other = (ord(text[at]) - ord(base) + step) % 10
    return text[:at] + chr(ord(base) + other) + text[at + 1 :]


@given(items(), st.data(), st.integers(1, 9))
def test_a_figure_of_an_item_counts(item: Item, data: st.DataObject, step: int) -> None:
    text = f"{HEAD}{item.line}\n"
    places = [match.start() for match in FIGURE.finditer(text, len(HEAD))]
    changed = with_other_figure(text, data.draw(st.sampled_from(places)), step)
    before, after = outcome(text), outcome(changed)
    assert before[0] != after[0] or after[1] != before[1]


@given(items(), st.data(), st.integers(1, 9))
def test_a_figure_of_a_position_counts(item: Item, data: st.DataObject, step: int) -> None:
    text = f"{HEAD}{item.line}\n"
    start = text.index(item.position)
    places = [match.start() for match in FIGURE.finditer(text, start)]
    changed = with_other_figure(text, data.draw(st.sampled_from(places)), step)
    before, after = positions(text), positions(changed)
    assert before
    if after == before:
        raise AssertionError(f"{changed[start:].strip()} reads as {item.position}")
    assert after or any(severity == "error" for _, severity in outcome(changed)[1])


def positions(text: str) -> list[str]:
    return [
        position.iso6709
        for action in actions_of(parse(text))
        for position in action.geometry.positions
    ]


@given(items(), st.data())
def test_a_lost_figure_counts(item: Item, data: st.DataObject) -> None:
    text = f"{HEAD}{item.line}\n"
    places = [match.start() for match in FIGURE.finditer(text, len(HEAD))]
    at = data.draw(st.sampled_from(places))
    changed = text[:at] + text[at + 1 :]
    # `06` without its nought is the same number of minutes or degrees.
    assume(text[at] != "0")
    before, after = outcome(text), outcome(changed)
    assert before[0] != after[0] or after[1] != before[1]


@given(notices(), st.data(), st.sampled_from(("Deelte", "Delcte", "Inzert", "Xqvzt", "Zap")))
def test_a_verb_made_unreadable_is_an_error(text: str, data: st.DataObject, word: str) -> None:
    # The body of a temporary or preliminary notice may be prose.
    assume("(" not in text.partition("\n")[0])
    verbs = [match.start() for match in re.finditer(r"^(?:Insert|Delete)", text, re.MULTILINE)]
    at = data.draw(st.sampled_from(verbs))
    changed = text[:at] + word + text[at + 6 :]
    assert sum(action.usable for action in actions_of(parse(changed))) < len(verbs)
    assert has_error(changed)


def has_error(text: str) -> bool:
    return any(finding.severity == "error" for finding in parse(text).findings)
