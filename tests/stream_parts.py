"""A text read in parts, held against the same text read as a whole."""

from __future__ import annotations

from noticeparse import parse
from noticeparse.parts import Terms, read_parts
from noticeparse.records.bulletin import Bulletin
from noticeparse.records.finding import Finding
from noticeparse.records.notice import Notice

COUNTS = ("characters", "read", "ignored", "unread")

# What a part cannot know of the others, or says once for each of them.
OF_A_WHOLE = frozenset(
    "notice-number-twice notice-out-of-order notice-outside-range notice-missing in-force-missing"
    " index-chart-not-in-notice index-notice-not-here index-without-chart cancelled-by-none"
    " cancelled-not-listed cancels-permanent previous-fork previous-gap previous-goes-back"
    " previous-later position-far-away position-hemisphere-differs datum-not-stated"
    " text-in-parts text-control-character text-surrogate".split()
)
ITEM = "Insert depth 8m 46-00.00S 122-00.00W\n"


def in_parts(text: str, part: int, whole: int | None = None) -> list[Bulletin]:
    pieces = text.splitlines(keepends=True)
    return list(read_parts(pieces, Terms(part=part, whole=whole or 4 * part)))


def notices_of(parts: list[Bulletin]) -> list[Notice]:
    return [notice for part in parts for notice in part.notices]


def bare(notices: list[Notice]) -> list[Notice]:
    """The notices without what their findings say."""
    return [one.model_copy(update={"findings": []}) for one in notices]


def told(findings: list[Finding]) -> list[str]:
    """The findings in order, without those that a part cannot have."""
    return sorted(one.model_dump_json() for one in findings if one.code not in OF_A_WHOLE)


def same(text: str, parts: list[Bulletin]) -> None:
    """Asserts that parts have what the whole has."""
    whole = parse(text)
    assert bare(notices_of(parts)) == bare(whole.notices)
    assert told([one for part in parts for one in part.findings]) == told(whole.findings)
    assert [one for part in parts for one in part.lists] == whole.lists
    for name in COUNTS:
        assert sum(getattr(part.coverage, name) for part in parts) == getattr(whole.coverage, name)
    for part in parts:
        assert part.edition == whole.edition
