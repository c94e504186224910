"""Notices sent out with tracings: counted heads, verbs behind the places, both ends of a move.

Common practice, no published source.
"""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, AT_R, P, Q, R, actions_of, codes, errors, told

ROWS = f"Quill Sound, wreck\n   1  wreck       {P}   insert\n   2  rock        {Q}   delete\n"
HEADS = {
    "waves": "~~~ TRACING {t} ~~~  Notice {n}  ~~~  Chart {c}, last correction {p}  ~~~",
    "narrow waves": "~~~ Tracing {t} ~~~ Notice {n} ~~~ Chart {c}, last correction {p} ~~~",
    "stars": "*** Overlay No. {t} *** Correction {n} *** Chart {c}, last correction {p}",
    "equals": "=== SLIP {t} === Notice {n} === Chart {c}, last correction {p} ===",
    "bars": "Block {t} | Notice {n} | Chart {c}, last correction {p}",
    "dashes": "TRACING {t} - Notice {n} - Chart {c}, last correction {p}",
    "strokes": "TRACING {t} / Notice {n} / Chart {c}, last correction {p}",
    "colon": "Tracing {t}: Notice {n}, Chart {c}, last correction {p}",
    "brackets": "[Tracing {t}] Notice {n}, Chart {c}, last correction {p}",
    "blanks": "TRACING {t}   Notice {n}   Chart {c}, last correction {p}",
}


@pytest.mark.parametrize("head", HEADS.values(), ids=HEADS)
def test_count_of_a_tracing_stands_before_the_notice(head: str) -> None:
    text = "TAVRENNE CHART DEPOT\n\n" + "\n".join(
        head.format(t=t, n=n, c=c, p=p) + "\n" + ROWS
        for t, n, c, p in ((1, "31/26", 802, "28/26"), (2, "32/26", 803, "29/26"))
    )
    bulletin = parse(text)
    assert not errors(bulletin)
    sections = [(notice, chart) for notice in bulletin.notices for chart in notice.charts]
    assert [
        (notice.id, notice.series, notice.heading, chart.chart, len(chart.actions))
        for notice, chart in sections
    ] == [
        ("31/26", None, "Quill Sound, wreck", "802", 2),
        ("32/26", None, "Quill Sound, wreck", "803", 2),
    ]
    assert [c.previous and c.previous.number for _, c in sections] == [28, 29]


def test_notice_may_have_no_tracing() -> None:
    head = "~~~ NO TRACING ~~~ Notice 33(P)/26 ~~~ Chart 802 ~~~\nQuill Roads, new mooring\n"
    (notice,) = parse(f"{head}   A mooring will be laid in {P}.\n").notices
    assert (notice.id, notice.status, notice.charts[0].chart) == ("33(P)/26", "preliminary", "802")


@pytest.mark.parametrize(
    "front",
    ["~~~ Page 4 ~~~ Notice 64/26", "~~~ Week 26 ~~~ Notice 64/26", "~~~ Last ~~~ NM 64/26"],
)
def test_other_counts_open_no_notice(front: str) -> None:
    text = f"31/26 Quill Sound.\nChart 802 [28/26] WGS84\nInsert wreck {P}\n{front}\n"
    assert [notice.id for notice in parse(text).notices] == ["31/26"]


HEAD = "31/26 QUILL SOUND. Buoy.\nChart 802 [28/26] WGS84\n"
MOVES = {
    "numbered": f"  1  special buoy   {P}   move from\n                    {Q}   to\n"
    f"  2  rock           {R}   insert\n",
    "last": f"  1  rock           {R}   insert\n  2  special buoy   {P}   move from\n"
    f"                    {Q}   to\n",
    "to first": f"special buoy   {Q}   move to\n               {P}   from\nrock   {R}   insert\n",
    "shifted": f"special buoy   {P}   shift from\n               {Q}   to\nrock   {R}   insert\n",
    "capitals": f"SPECIAL BUOY   {P}   MOVE FROM\n               {Q}   TO\nROCK   {R}   INSERT\n",
    "verb in front": f"Move    special buoy   {P}   from\n                       {Q}   to\n"
    f"Insert  rock           {R}\n",
    "verb above": f"Move:\n   special buoy   {P}   from\n                  {Q}   to\n"
    f"Insert:\n   rock   {R}\n",
    "wrapped": f"  1  special buoy,\n     Fl.Y.5s        {P}   move from\n"
    f"                    {Q}   to\n  2  rock           {R}   insert\n",
}


@pytest.mark.parametrize("rows", MOVES.values(), ids=MOVES)
def test_both_ends_of_a_move_are_told_behind_the_places(rows: str) -> None:
    bulletin = parse(HEAD + rows)
    assert not errors(bulletin)
    assert sorted(told(bulletin)) == [
        ("insert", "rock", [AT_R]),
        ("move", "buoy_special", [AT_P]),
    ]
    (move,) = (action for action in actions_of(bulletin) if action.verb == "move")
    assert [one.iso6709 for one in move.destination.positions] == [AT_Q]


@pytest.mark.parametrize(
    "rows",
    [
        # One end alone.
        f"special buoy   {P}   move from\nrock   {R}   insert\n",
        # A third place.
        f"special buoy   {P}   move from\n               {Q}   to\n               {R}\n",
        # No verb.
        f"special buoy   {P}   from\n               {Q}   to\nrock   {R}   insert\n",
    ],
)
def test_ends_that_do_not_pair_are_held(rows: str) -> None:
    bulletin = parse(HEAD + rows)
    assert errors(bulletin)
    assert not [a for a in actions_of(bulletin) if a.verb == "move" and a.usable]


@pytest.mark.parametrize(
    "foot",
    [
        "- Chart Depot, Issue 9/2026, page 2 -", "-- Depot of Charts, page 2 --",
        "~ Issue 9/2026, page 2 ~",
    ],
)  # fmt: skip
def test_foot_of_a_page_between_dashes_is_no_item(foot: str) -> None:
    text = f"{HEAD}Insert wreck {P}\n\n{' ' * 20}{foot}\n\nDelete rock {Q}\n"
    bulletin = parse(text)
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]
    assert not codes(bulletin)
