"""What gives no place to cut stays bounded all the same, and is told."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

import pytest

from noticeparse.parts import Terms, read_parts
from tests.short_notices import HEAD
from tests.stream_parts import ITEM, in_parts, notices_of


class TestBounds:
    """What gives no place to cut stays bounded all the same, and is told."""

    @pytest.mark.parametrize(
        "text",
        [
            pytest.param("x" * 50_000, id="one endless line"),
            pytest.param("\n" * 50_000 + "x", id="blank lines"),
            pytest.param("no notice at all\n" * 3000, id="junk"),
            pytest.param(HEAD + ITEM * 1500, id="one notice"),
            pytest.param("47-12.3S " * 6000, id="halves"),
        ],
    )
    def test_no_notice_begins(self, text: str) -> None:
        taken = _Taken(text)
        parts, before = [], 0
        for part in read_parts(taken.pieces(), Terms(part=2000, whole=4000)):
            parts.append(part)
            # No more is taken in for a part than is ever read as one.
            assert taken.characters - before <= 4000 + 2 * taken.AT_A_TIME
            before = taken.characters
        assert len(parts) >= len(text) / 4000
        characters = sum(one.coverage.characters for one in parts)
        assert characters == len("".join(text.split()))

    def test_torn_notice(self) -> None:
        """Nothing is lost at a cut, and that there is one is an error where it is."""
        parts = in_parts(HEAD + ITEM * 300, 2000, 4000)
        actions = [a for n in notices_of(parts) for c in n.charts for a in c.actions]
        cuts = [f for p in parts for f in p.findings if f.code == "text-cut"]
        assert len(actions) == 300
        assert {one.severity for one in cuts} == {"error"}
        assert len(cuts) == len(parts) - 1
        assert [notice.id for notice in notices_of(parts)] == ["12/26", *[None] * len(cuts)]
        for above, below in pairwise(actions):
            assert above.span.end <= below.span.start

    def test_verb_above_a_tear_holds_no_more(self) -> None:
        """Rows behind a tear have no verb, which is told, and are read under no other."""
        row = "         depth 5m   46-00.0S    122-00.0W\n"
        text = HEAD + "Action   Feature    Latitude    Longitude\nInsert" + row[6:] + row * 300
        parts = in_parts(text, 2000, 4000)
        assert len(parts) > 2
        for part in parts[1:]:
            assert not [a for n in part.notices for c in n.charts for a in c.actions if a.usable]
            assert "item-without-verb" in {f.code for f in part.findings}

    def test_left_out_lines_that_are_torn(self) -> None:
        """What goes on with a line behind `#|`, wrapped by mail, is no action behind a tear."""
        lost = "a rock; Insert wreck 46-00.00S 122-00.00W, and\n"
        text = HEAD + ITEM + "#| Insert " + lost * 400
        parts = in_parts(text, 2000, 4000)
        assert len(parts) > 2
        assert sum(len(c.actions) for n in notices_of(parts) for c in n.charts) == 1
        assert all(part.coverage.unread for part in parts)

    def test_columns_count_in_a_line_that_is_cut(self) -> None:
        text = "insert depth 8m in 46-00.00S 122-00.00W; " * 400
        for part in in_parts(text, 1000, 2000):
            for span in part.coverage.unread_spans:
                assert (span.line, span.column) == (1, span.start + 1)


class _Taken:
    """A text in small pieces, and how many of its characters were taken."""

    AT_A_TIME = 100

    def __init__(self, text: str) -> None:
        self._text = text
        self.characters = 0

    def pieces(self) -> Iterator[str]:
        for at in range(0, len(self._text), self.AT_A_TIME):
            piece = self._text[at : at + self.AT_A_TIME]
            self.characters += len(piece)
            yield piece
