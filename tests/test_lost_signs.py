"""Degree signs that a copy has lost to another sign: read where all the text shows it, and told.

Common practice, no published source.
"""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, actions_of, errors

ROWS = """\
Insert wreck 46{d}02.31{m}S 122{d}49.20{m}W
Delete rock 46{d}02.40{m}S 122{d}48.97{m}W
Insert light Fl(2)WR.10s18m11/8M, sectors W 040{d}-215{d}, R 215{d}-300{d} \
46{d}04.05{m}S 122{d}51.33{m}W
"""
WHOLE = ROWS.format(d="°", m="'")
BEFORE = (
    "Insert wreck 46{d}02{m}.31S 122{d}49{m}.20W\nDelete rock 46{d}02{m}.40S 122{d}48{m}.97W\n"
)
SECONDS = """\
Insert wreck 46{d}02{m}31{s}S 122{d}49{m}20{s}W
Delete rock 46{d}02{m}40{s}S 122{d}48{m}57{s}W
"""


def places(text: str) -> list[str]:
    return [p.iso6709 for one in actions_of(parse(HEAD + text)) for p in one.geometry.positions]


@pytest.mark.parametrize("sign", "?¿~^@#□¬")
def test_one_sign_in_all_their_places_is_the_degree_sign(sign: str) -> None:
    text = HEAD + ROWS.format(d=sign, m="'")
    bulletin = parse(text)
    assert places(ROWS.format(d=sign, m="'")) == places(WHOLE)
    actions = actions_of(bulletin)
    assert [one.usable for one in actions] == [True] * 3
    sectors = actions[-1].feature.light.sectors
    assert [(one.from_deg, one.to_deg) for one in sectors] == [(40, 215), (215, 300)]
    (told,) = (one for one in bulletin.findings if one.code == "text-degree-sign-lost")
    assert text[told.span.start : told.span.end] == f"46{sign}02.31'S"
    for action in actions:
        for position in action.geometry.positions:
            assert position.written == text[position.span.start : position.span.end]


@pytest.mark.parametrize("rows", [ROWS, BEFORE, SECONDS])
@pytest.mark.parametrize("sign", "?□")
def test_marks_of_minutes_and_seconds_may_be_lost_to_it_too(rows: str, sign: str) -> None:
    lost = rows.format(d=sign, m=sign, s=sign)
    whole = rows.format(d="°", m="'", s='"')
    assert places(lost) == places(whole)
    assert len(places(lost)) == whole.count("\n")


@pytest.mark.parametrize(
    "damaged",
    [
        "46??.31'S 122?49.20'W", "46?2.31'S 122?49.20'W", "4??02.31'S 122?49.20'W",
        "4?02.31'S 122?49.20'W", "46?02.31'S 12??49.20'W", "46?02.3?'S 122?49.20'W",
        "46?0?.31'S 122?49.20'W", "46?02.31'S 122?4?.20'W",
    ],
)  # fmt: skip
def test_a_figure_lost_to_the_sign_holds_its_action(damaged: str) -> None:
    text = HEAD + ROWS.format(d="?", m="'") + f"Insert pile {damaged}\n"
    told = {one.feature.kind: one.usable for one in actions_of(parse(text))}
    assert told["wreck"]
    assert told["rock"]
    assert not told["pile"]


def test_minutes_beyond_59_are_refused_as_ever() -> None:
    text = ROWS.format(d="?", m="'") + "Insert pile 46?60.75'S 122?49.20'W\n"
    assert "position-minutes-out-of-range" in errors(parse(HEAD + text))


@pytest.mark.parametrize(
    "rows",
    [
        # A degree sign stands elsewhere, two signs are in its place, or it is one position only.
        ROWS.format(d="?", m="'") + "Insert pile 46°02.31'S 122°49.20'W\n",
        ROWS.format(d="?", m="'").replace("122?", "122#"),
        ROWS.splitlines(keepends=True)[0].format(d="?", m="'"),
    ],
)
def test_a_sign_that_is_not_in_all_their_places_is_none(rows: str) -> None:
    bulletin = parse(HEAD + rows)
    assert "text-degree-sign-lost" not in {one.code for one in bulletin.findings}
    for action in actions_of(bulletin):
        assert not (action.usable and "?" in action.text)
