"""What words, and no mark, say of the status of a notice: temporary, preliminary, cancelled."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, codes

REST = f"Chart 802 [9/26] WGS84\nInsert wreck {P}\n"

MARKED = {
    "17/26 - TEMPORARY - Quill Sound - Buoy": "temporary",
    "17/26: Temporary: QUILL SOUND - Buoy": "temporary",
    "17/26 Temp. QUILL SOUND - Buoy": "temporary",
    "17/26 Prelim. QUILL SOUND - Buoy": "preliminary",
    "17/26 Temporary Notice QUILL SOUND - Buoy": "temporary",
    "17/26  Quill Sound - Works (Temporary Notice)": "temporary",
    "17/26  Quill Sound - Works. Preliminary Notice.": "preliminary",
    "17/26  Quill Sound - Works, temporary": "temporary",
    "17/2026 - Quill Sound - Works. Temporary until 31 December 2026.": "temporary",
    "NtM 17-T/2026  QUILL SOUND - Works": "temporary",
    "17-P/26  QUILL SOUND - Works": "preliminary",
    "17(Temp)/26  QUILL SOUND - Works": "temporary",
    "17/26  Quill Sound - Works.\nTemporary.": "temporary",
    "17/26 TEMP Quill Sound - Works": "temporary",
    "17/26 PRELIM Quill Sound": "preliminary",
    "TEMPORARY\n17/26  Quill Sound - Works.": "temporary",
    "Preliminary Notice\n\n17/26  Quill Sound - Works.": "preliminary",
    "(T)\n17/26  Quill Sound - Works.": "temporary",
    "Temporary corrections\n\n17/26  Quill Sound - Works.": "temporary",
    "17/26  Quill Sound - Works.\nTemporary notice valid until 3 June 2026.": "temporary",
}
MAYBE = [
    "17/26  Quill Sound - Temporary light-buoys.",
    "17/26  Quill Sound - Bridge. Temporary channel.",
    "17/26 TEMPORARY BUOYAGE QUILL SOUND",
    "17/26 Temp. Quill Sound",
    "17/26 TEMP BUOY QUILL SOUND",
    "17/26  Quill Sound - Works.\nThe following temporary changes are made:",
    "17/26  Quill Sound - Works.\nFor temporary correction:",
    "17/26  Quill Sound - Works.\nTemporary until further notice.",
    "17/26  Quill Sound - Works.\nPreliminary information.",
    "17/26  Quill Sound - Works.\nTemporary amendments to the chart:",
    "17/26  Quill Sound - Works.\nFor the duration of the works:",
]
ENDED = [
    "17/26  Quill Sound - Works. Cancelled.",
    "17/26  Quill Sound - Works: superseded",
    "17/26  Quill Sound - Works.\nCancelled.",
    "17/26  Quill Sound - Works.\nVoid.",
    "17/26  Quill Sound - Works.\nNotice withdrawn.",
    "17/26  Quill Sound - Works. Notice cancelled.",
]
PERMANENT = [
    "17/26  Quill Sound - Works until 31 December 2026.",
    "17/26  Quill Sound - Wreck.\nCancels 12(T)/26.",
    "17/26  Quill Sound - Wreck.\nThe temporary notice 12(T)/26 is cancelled.",
]


@pytest.mark.parametrize(("head", "status"), MARKED.items())
def test_words_mark_the_notice(head: str, status: str) -> None:
    (notice,) = parse(f"{head}\n{REST}").notices
    assert (notice.number, notice.year, notice.status) == (17, 2026, status)
    assert notice.charts[0].actions[0].usable


@pytest.mark.parametrize("head", MAYBE)
def test_what_may_mark_it_is_told_at_its_actions(head: str) -> None:
    bulletin = parse(f"{head}\n{REST}")
    told = [one for one in bulletin.findings if one.code == "item-temporary"]
    assert bulletin.notices[0].status == "permanent"
    assert [one.paths for one in told] == [["/notices/0/charts/0/actions/0"]]


UNCLEAR = [
    "17/26 T Quill Sound",
    "17/26 P Quill Sound - Works",
    "17/26 t Quill Sound",
    "II TEMPORARY AND PRELIMINARY NOTICES\n\n17/26  Quill Sound - Works.",
    "T & P NOTICES\n\n17/26  Quill Sound - Works.",
    "SECTION 2 - T/P NOTICES\n\n17/26  Quill Sound - Works.",
    "Temporary and Preliminary Notices to Mariners\n\n17/26  Quill Sound - Works.",
]


@pytest.mark.parametrize("head", UNCLEAR)
def test_what_may_mark_the_notice_is_told(head: str) -> None:
    bulletin = parse(f"{head}\n{REST}")
    assert [one.status for one in bulletin.notices] == ["permanent"]
    assert "notice-mark-unclear" in codes(bulletin)


def test_marked_notice_of_such_a_part_is_not_doubted() -> None:
    bulletin = parse(f"TEMPORARY AND PRELIMINARY NOTICES\n\n17(T)/26  Quill Sound.\n{REST}")
    assert [one.id for one in bulletin.notices] == ["17(T)/26"]
    assert "notice-mark-unclear" not in codes(bulletin)


def test_mark_between_notices_is_of_the_one_below() -> None:
    above = f"16/26  Port Ellory.\n{REST}"
    below = f"17/26  Quill Sound.\n{REST}\n18/26  Quill Sound.\n{REST}"
    bulletin = parse(f"{above}\nTEMPORARY\n{below}")
    assert [one.id for one in bulletin.notices] == ["16/26", "17(T)/26", "18/26"]
    assert bulletin.notices[0].charts[0].actions[0].usable
    told = [one.notice for one in bulletin.findings if one.code == "notice-mark-unclear"]
    assert told == ["18/26"]


@pytest.mark.parametrize("head", ["17/26 T Head - Works", "17/26 P Jetty"])
def test_pier_in_the_form_of_a_letter_is_no_mark(head: str) -> None:
    assert "notice-mark-unclear" not in codes(parse(f"{head}\n{REST}"))


@pytest.mark.parametrize("head", ENDED)
def test_end_of_a_notice_holds_its_actions(head: str) -> None:
    (notice,) = parse(f"{head}\n{REST}").notices
    assert [one.usable for one in notice.charts[0].actions] == [False]


@pytest.mark.parametrize("head", PERMANENT)
def test_says_nothing_of_the_notice_itself(head: str) -> None:
    bulletin = parse(f"{head}\n{REST}")
    (notice,) = bulletin.notices
    assert (notice.status, notice.charts[0].actions[0].usable) == ("permanent", True)
    assert not codes(bulletin) & {"item-temporary", "verb-limited-beside"}


@pytest.mark.parametrize(
    "head", ["TEMPORARY 17/26 QUILL SOUND - Works.", "17/26  WITHDRAWN - QUILL SOUND - Works"]
)
def test_head_that_opens_no_notice_is_told(head: str) -> None:
    assert "text-unread" in codes(parse(f"{head}\n{REST}"))
