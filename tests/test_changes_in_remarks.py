"""Changes that stand in remarks: commands for another chart, new names, notices replaced."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.reference import NoticeRef
from tests.short_notices import AT_P, HEAD, P, Q, R, errors, told

TOLD = [
    "Note: On chart 803 insert the same depth.",
    "Note: on charts 803 and 804 also delete the rock.",
    "Remark: port-hand buoy No 4 renamed No 6.",
    "Remark: port-hand buoy No 4 has been renumbered No 6.",
]


@pytest.mark.parametrize("remark", TOLD)
def test_a_change_in_a_remark_is_told(remark: str) -> None:
    bulletin = parse(f"{HEAD}Insert depth 4 {P}\n{remark}\n")
    assert errors(bulletin)
    assert errors(bulletin) <= {"sentence-unread", "change-without-place", "chart-in-passing"}
    assert bulletin.notices[0].charts[0].actions[0].usable


UNTOLD = [
    "Note: The survey of chart 803 is of 1998.",
    "Remark: the sound was named by its surveyor.",
]


@pytest.mark.parametrize("remark", UNTOLD)
def test_other_remarks_are_no_change(remark: str) -> None:
    bulletin = parse(f"{HEAD}Insert depth 4 {P}\n{remark}\n")
    assert not errors(bulletin)


REPLACED = [
    "This notice replaces 9(T)/26.",
    "This notice replaces 9(T)/26 but 10(T)/26 remains in force.",
    "This notice replaces Notice 9(T)/26, while notices 10(T)/26 and 11(T)/26 are still in force.",
]


@pytest.mark.parametrize("sentence", REPLACED)
def test_a_notice_that_is_replaced_is_cancelled(sentence: str) -> None:
    (notice,) = parse(f"{HEAD}Insert depth 4 {P}\n{sentence}\n").notices
    assert notice.cancels == [NoticeRef(number=9, year=2026, status="temporary")]
    assert [one.feature.text for one in notice.charts[0].actions] == ["depth 4"]
    assert not [one for one in notice.findings if one.severity != "info"]


def test_a_command_in_a_temporary_notice_is_an_action_below_a_sentence() -> None:
    bulletin = parse(
        f"12(T)/26 Quill Sound.\nChart 802\nThe light at {P} is temporarily extinguished.\n"
        f"Insert frobnicator, centred on {Q}, radius 0.5M\n"
    )
    (action,) = bulletin.notices[0].charts[0].actions
    assert (action.verb, action.geometry.shape) == ("insert", "circle")
    # What the sentence tells goes into no action, and is told.
    assert "item-without-verb" in {one.code for one in bulletin.findings}


def test_how_the_inserted_thing_was_found_is_no_second_change() -> None:
    said = "Remark: the wreck was found by the survey of May 2026."
    bulletin = parse(f"{HEAD}Insert dangerous wreck {P}\n{said}\n")
    assert "change-without-place" not in {one.code for one in bulletin.findings}
    other = said.replace("the wreck", "an obstruction")
    bulletin = parse(f"{HEAD}Insert dangerous wreck {P}\n{other}\n")
    assert "change-without-place" in {one.code for one in bulletin.findings}


@pytest.mark.parametrize(
    "done",
    ["is inseted at", "is to be puut in at", "is insertedat", "is deletd at", "is rmeoved at"],
)
def test_a_sentence_with_its_verb_misspelt_is_not_passed_over(done: str) -> None:
    items = f"A wreck is inserted at {P}.\nA rock {done} {Q}.\nA pile is deleted at {R}.\n"
    bulletin = parse(HEAD + items)
    assert [verb for verb, _, _ in told(bulletin)] == ["insert", "delete"]
    assert "sentence-unread" in errors(bulletin)


@pytest.mark.parametrize(
    "done", ["is marked", "is reported", "is charged", "lies", "is dangerous"]
)
def test_a_sentence_that_tells_no_change_stays_a_remark(done: str) -> None:
    items = f"A wreck is inserted at {P}.\nA rock {done} at {Q}.\nA pile is deleted at {R}.\n"
    assert "sentence-unread" not in errors(parse(HEAD + items))


DONE = [
    "the old lock light in {} was removed from the chart by Notice 46/26.",
    "the rock in {} has been deleted by NM 46(T)/26",
]


@pytest.mark.parametrize("words", DONE)
def test_what_another_notice_has_done_is_a_remark(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\nRemark: {words.format(Q)}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    assert [len(one.positions) for one in bulletin.notices[0].remarks] == [1]
    assert errors(bulletin) == set()


@pytest.mark.parametrize("words", DONE)
def test_what_another_notice_has_done_is_no_command(words: str) -> None:
    bulletin = parse(f"{HEAD}{words.format(Q).capitalize()}\n")
    assert told(bulletin) == []
    assert errors(bulletin) == {"sentence-under-verb"}


@pytest.mark.parametrize(
    "words",
    [
        "the rock in {} has been deleted",
        "the rock in {} has been deleted by Notice 12/26.",
        "the rock in {} has been deleted by this notice.",
        "the rock in {} was deleted in error by Notice 46/26.",
        "owing to an error the rock in {} was deleted by Notice 46/26.",
        "the rock in {} was deleted by Notice 46/26 and should be restored.",
        "the rock in {}, inserted by Notice 46/26, has been deleted.",
        "the rock in {} has been inserted by Notice 46/26 and is to be deleted.",
    ],
)
def test_what_more_is_said_of_it_may_be_an_action(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\nRemark: {words.format(Q)}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    assert errors(bulletin) == {"sentence-unread"}
