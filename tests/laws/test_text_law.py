"""The repaired text and the way back to the original."""

from __future__ import annotations

import re
from itertools import pairwise

from hypothesis import given
from hypothesis import strategies as st

from noticeparse.text import repair

from .strategies import texts

cuttable = st.text(st.sampled_from("ab-\n >\u00ad\u200bﬂﬁ·'47Â°â€²”“"), max_size=40)
any_text = st.one_of(texts, cuttable)

LINE_END = re.compile(r"\n|\r(?!\r?\n)")
"""Also a return of its own, the line end of old machines."""


@given(any_text)
def test_every_offset_leads_back_in_order(given_text: str) -> None:
    read = repair(given_text)
    starts = [read.original(at) for at in range(len(read.text) + 1)]
    ends = [read.original_end(at) for at in range(len(read.text) + 1)]
    assert starts == sorted(starts)
    assert ends == sorted(ends)
    assert all(0 <= at <= len(given_text) for at in starts + ends)
    assert all(start < end for start, end in zip(starts, ends[1:], strict=False))


@given(any_text)
def test_plain_characters_lead_back_to_themselves(given_text: str) -> None:
    read = repair(given_text)
    inside = {at for one in read.repairs for at in range(one.start, one.end)}
    for at, char in enumerate(read.text):
        original = read.original(at)
        if original not in inside and char.isalnum() and char.isascii():
            seen = given_text[original]
            assert seen == char or 0xFF10 <= ord(seen) <= 0xFF5A


@given(any_text)
def test_no_character_is_lost_between_repairs(given_text: str) -> None:
    read = repair(given_text)
    removed = sum(one.end - one.start for one in read.repairs)
    added = sum(len(one.read) for one in read.repairs)
    assert len(read.text) == len(given_text) - removed + added
    spans = [(one.start, one.end) for one in read.repairs]
    assert spans == sorted(spans)
    assert all(a[1] <= b[0] for a, b in pairwise(spans))


@given(any_text)
def test_repairing_twice_changes_nothing_more(given_text: str) -> None:
    once = repair(given_text).text
    assert repair(once).text == once


@given(any_text)
def test_lines_are_kept_but_for_cut_words(given_text: str) -> None:
    read = repair(given_text)
    cut = sum(bool(LINE_END.search(given_text, one.start, one.end)) for one in read.repairs)
    assert read.text.count("\n") == len(LINE_END.findall(given_text)) - cut
