"""District lists: numbered entries with keys in a column, in parts between rules."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.references import read_number
from tests.short_notices import AT_P, AT_Q, P, Q, codes, errors, told, usable_of

FRONT = "DISTRICT LIST No. 31      week ending Saturday 1 August 2026\n"
RULE = "=" * 60 + "\n"
KEYS = f"""\
  Place    : Grell Passage
  Charts   : 305 (last item 388-26), 306 (last item 377-26)
  Datum    : WGS 84
  Add      : wreck                 {P}
  Remove   : jetty                 {Q}
"""


@pytest.mark.parametrize(
    "head", ["Item 412-26", "Item No. 412-26", "Item 412-2026", "ENTRY 412-26", "Advice 412 - 26"]
)
def test_entry_with_year_is_a_notice(head: str) -> None:
    bulletin = parse(f"{FRONT}{RULE}{head}\n{KEYS}Item 413-26\n  Charts   : 309\n")
    assert [notice.id for notice in bulletin.notices] == ["412/26", "413/26"]
    charts = bulletin.notices[0].charts
    assert [(c.chart, c.previous and c.previous.number) for c in charts] == [
        ("305", 388), ("306", 377),
    ]  # fmt: skip
    assert [a.feature.name for c in charts for a in c.actions] == [None] * 4
    assert not errors(bulletin)


@pytest.mark.parametrize("head", ["Item 3", "Items 12-26"])
def test_counted_items_are_no_notices(head: str) -> None:
    bulletin = parse(f"41/26 Quill Sound\nChart 802 [30/26] WGS84\n{head}\nInsert wreck {P}\n")
    assert [notice.id for notice in bulletin.notices] == ["41/26"]


@pytest.mark.parametrize("key", ["Told by ", "Source  ", "Reported by", "Informant", "Surveyor"])
def test_who_told_is_no_name(key: str) -> None:
    line = f"  {key:<9}: Edderly Company No. 2\n"
    bulletin = parse(f"{FRONT}Item 412-26\n{KEYS}{line}")
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("delete", "pier", [AT_Q])] * 2
    names = [a.feature.name for c in bulletin.notices[0].charts for a in c.actions]
    assert names == [None] * 4
    assert not codes(bulletin)


@pytest.mark.parametrize(
    "value", ["not before 1 November", "when the buoy is laid", "wreck", "12 m", f"to {P}"]
)
def test_unknown_key_that_may_bear_on_an_item_is_told(value: str) -> None:
    bulletin = parse(f"{FRONT}Item 412-26\n{KEYS}  Relation : {value}\n")
    assert bulletin.findings


def test_cancelled_entry() -> None:
    bulletin = parse(f"{FRONT}Item 412-26\n{KEYS}  Cancels  : Item 371(P)-26\n")
    (ref,) = bulletin.notices[0].cancels
    assert (ref.number, ref.year, ref.status) == (371, 2026, "preliminary")
    assert read_number("Item 371(P)-26", 2026) == ref


def test_title_of_a_part_between_rules_ends_the_notice() -> None:
    parts = f"{RULE}PART 1.  TEMPORARY CONDITIONS\n{RULE}Item 406(T)-26\n  Charts   : 305\n"
    parts += f"  Matter   : Buoy in {P} is unlit.\n"
    bulletin = parse(f"{FRONT}{parts}{RULE}PART 2.  CHANGES FOR CHARTS\n{RULE}Item 412-26\n{KEYS}")
    first, second = bulletin.notices
    assert (first.id, second.id) == ("406(T)/26", "412/26")
    assert ["PART" in remark.text for remark in first.remarks] == [False]
    assert usable_of(bulletin) == [("insert", "wreck"), ("delete", "pier")] * 2
