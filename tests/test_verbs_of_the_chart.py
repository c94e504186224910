"""Verbs that name their chart, `To add on the chart` over a list, and who a notice goes to."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.verbs import canonical_verb
from tests.short_notices import (
    AT_P,
    AT_Q,
    HEAD,
    WRECK_AND_ROCK,
    P,
    Q,
    actions_of,
    codes,
    errors,
    told,
)


@pytest.mark.parametrize("bullet", ["  - ", "  * ", "    ", "", "  a) ", "\n  - "])
@pytest.mark.parametrize("ends", ["", ":"])
@pytest.mark.parametrize(
    ("insert", "delete"),
    [
        ("To add on the chart", "To take off the chart"),
        ("ADD ON THE CHART", "STRIKE OUT FROM THE CHART"),
        ("To put on the chart", "To strike off the chart"),
        ("Enter in the chart", "To take away from the chart"),
        ("To be inserted on the chart", "To be taken off the chart"),
        ("To insert on this chart", "To remove from this chart"),
    ],
)
def test_a_verb_that_names_the_chart_heads_the_list_below(
    insert: str, delete: str, ends: str, bullet: str
) -> None:
    body = f"{insert}{ends}\n{bullet}wreck {P}\n{delete}{ends}\n{bullet}rock {Q}\n"
    bulletin = parse(HEAD + body)
    assert told(bulletin) == WRECK_AND_ROCK
    assert not codes(bulletin) - {"letter-used-twice"}


@pytest.mark.parametrize(
    ("heading", "item", "verb", "kind"),
    [
        ("To displace on the chart", f"wreck, from {P} to {Q}", "move", "wreck"),
        ("To alter on the chart", f"light to Fl.5s {P}", "amend", "light"),
        ("To replace on the chart", f"depth 8m by depth 7m {P}", "replace", "sounding"),
    ],
)
def test_the_words_for_the_chart_are_none_of_the_feature(
    heading: str, item: str, verb: str, kind: str
) -> None:
    bulletin = parse(f"{HEAD}  {heading}\n   - {item}\n")
    assert [(one.verb, one.feature.kind, one.usable) for one in actions_of(bulletin)] == [
        (verb, kind, True)
    ]


@pytest.mark.parametrize(
    ("written", "verb"),
    [
        ("To take off the chart", "delete"),
        ("taken off this chart", "delete"),
        ("To strike out", "delete"),
        ("To put on the chart", "insert"),
        ("To write in", "insert"),
        ("not to take off the chart", None),
    ],
)
def test_verbs_of_two_words_behind_to(written: str, verb: str | None) -> None:
    assert canonical_verb(written) == verb


def test_what_stands_on_the_chart_is_no_heading() -> None:
    bulletin = parse(f"{HEAD}Amend on the chart\ntitle to QUILL SOUND\nInsert wreck {P}\n")
    assert told(bulletin)[-1:] == [("insert", "wreck", [AT_P])]
    assert "on the chart" not in [one.written_verb for one in actions_of(bulletin)]


def test_a_sentence_that_breaks_behind_the_chart_goes_on() -> None:
    bulletin = parse(f"{HEAD}A wreck is to be inserted on the chart\nin {P}.\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P])]


@pytest.mark.parametrize(
    "opening",
    [
        "ADVICE TO MARINERS 31/26",
        "Advice to shipping No 31/26",
        "Announcement to Mariners 31/26",
        "CIRCULAR TO MASTERS NO. 31/26",
        "Information for mariners 31/26",
        "Notice for Seafarers 31/26",
    ],
)
def test_words_for_a_notice_may_say_to_whom_it_goes(opening: str) -> None:
    bulletin = parse(f"{opening}\nQuill Sound\nChart 802\nInsert wreck {P}\n")
    assert [one.id for one in bulletin.notices] == ["31/26"]
    assert bulletin.notices[0].heading == "Quill Sound"
    assert not errors(bulletin)


@pytest.mark.parametrize("said", ["remains in force.", "is superseded.", "refers."])
def test_an_advice_that_is_spoken_of_opens_no_notice(said: str) -> None:
    text = f"{HEAD}Insert wreck {P}\nAdvice to mariners 31/26 {said}\n"
    assert [one.id for one in parse(text).notices] == ["12/26"]


@pytest.mark.parametrize(
    "listed",
    [
        "Previous 9/26 for chart 802 and 8/26 for chart 803",
        "PREVIOUS 9/26 FOR CHART 802, 8/26 FOR CHART 803",
        "Last correction: 9/26 (chart 802), 8/26 (chart 803)",
        "Last advices: 9/26 (chart 802), 8/26 (chart 803).",
        "Latest notice: 8/26 on chart 803; 9/26 on chart 802",
        "Previous notice 9/26 of chart 802 & 8/26 of chart 803",
        "Previous 9/26 (chart 802) 8/26 (chart 803)",
    ],
)
@pytest.mark.parametrize("joint", ["\n", "\n   ", ". "])
def test_a_list_of_notices_before_that_names_the_charts_of_the_head(
    listed: str, joint: str
) -> None:
    text = f"Notice 12/26 Quill Sound\nCharts 802 and 803{joint}{listed}\nInsert wreck {P}\n"
    (notice,) = parse(text).notices
    assert [(one.chart, one.previous and one.previous.number) for one in notice.charts] == [
        ("802", 9),
        ("803", 8),
    ]
    assert [len(one.actions) for one in notice.charts] == [1, 1]


def test_a_notice_before_and_one_chart_open_a_section_of_their_own() -> None:
    text = (
        f"Notice 12/26 Quill Sound\nChart 802, previous 9/26\nInsert wreck {P}\n"
        f"Chart 803, previous 8/26\nDelete rock {Q}\n"
    )
    (notice,) = parse(text).notices
    assert [(one.chart, [a.verb for a in one.actions]) for one in notice.charts] == [
        ("802", ["insert"]),
        ("803", ["delete"]),
    ]
    assert [p.iso6709 for p in notice.charts[1].actions[0].geometry.positions] == [AT_Q]
