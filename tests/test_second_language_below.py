"""Lines of a second language below those in English: left out, and told.

Common practice, no published source; the language is invented.
"""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Move
from tests.short_notices import HEAD, P, Q, R, actions_of, codes, errors, places, usable_of

BOTH = [("insert", "wreck"), ("delete", "rock_awash"), ("insert", "pile")]
PAIRS = (
    f"Insert   wreck        {P}\nAlvend   vrakka\nDelete   rock awash   {Q}\nTorvend  klettur\n"
)


def left_out(text: str) -> list[str]:
    told = ("text-second-language", "text-said-again")
    return [text[f.span.start : f.span.end] for f in parse(text).findings if f.code in told]


@pytest.mark.parametrize(
    "body",
    [
        f"{PAIRS}Insert   pile         {R}\nAlvend   pal\n",
        f"{PAIRS}Insert   pile   {R}\nAlvend   pal\n         stump   {R}\n         stubba\n",
        f"INSERT\nALVEND\n  wreck   {P}\n  vrakka\nDELETE\nTORVEND\n  rock awash   {Q}\n"
        f"  klettur\nINSERT\nALVEND\n  pile   {R}\n  pal\n",
        f"Insert: wreck   {P}\nInnsetjið: flak\nDelete: rock awash   {Q}\nEyðið: sker\n"
        f"Insert: pile   {R}\nInnsetjið: staur\n",
        f"(a) Insert wreck   {P}\n    Alvend vrakka\n(b) Delete rock awash   {Q}\n"
        f"    Torvend klettur\n(c) Insert pile   {R}\n    Alvend pal\n",
        f"Insert   wreck\nAlvend   vrakka    {P}\nDelete   rock awash\nTorvend  klettur   {Q}\n"
        f"Insert   pile\nAlvend   pal       {R}\n",
        f"Insert   wreck   {P}\nAlvend   vrakka   {P}\nDelete   rock awash   {Q}\n"
        f"Torvend  klettur   {Q}\nInsert   pile   {R}\nAlvend   pal   {R}\n",
    ],
)
def test_what_is_said_again_is_left_out(body: str) -> None:
    bulletin = parse(HEAD + body)
    assert usable_of(bulletin)[:3] == BOTH
    assert [len(one) for one in places(bulletin)[:3]] == [1, 1, 1]
    assert codes(bulletin) == set()
    assert parse(HEAD + body).coverage.unread == 0
    assert left_out(HEAD + body)


def test_lists_of_places_go_on_beside_it() -> None:
    body = (
        f"{PAIRS}Insert   pipeline, joining   {P}\nAlvend   rorra, frana        {Q}\n"
        f"{' ' * 29}{R}\nMove     special buoy, from   {P}\nDrivend  bolla, fra\n"
        f"         to / til             {Q}\n"
    )
    *_, line, moved = actions_of(parse(HEAD + body))
    assert (line.geometry.shape, len(line.geometry.positions)) == ("line", 3)
    assert isinstance(moved, Move)
    assert (moved.usable, len(moved.destination.positions)) == (True, 1)
    assert codes(parse(HEAD + body)) == set()


def test_figures_are_left_out_only_where_they_stand_above() -> None:
    same = f"{PAIRS}Insert   depth 7.2 m   {R}\nAlvend   dyvna 7.2 m\n"
    assert codes(parse(HEAD + same)) == set()
    other = f"{PAIRS}Insert   depth 7.2 m   {R}\nAlvend   dyvna 7.3 m\n"
    assert "text-languages-differ" in codes(parse(HEAD + other))


def test_places_of_its_own_are_not_lost() -> None:
    body = f"{PAIRS}Insert   pile   {R}\nAlvend   gizmo   {P}\n"
    assert errors(parse(HEAD + body))


def test_words_of_the_trade_and_names_below_a_thing_stay() -> None:
    body = f"{PAIRS}Insert   pile   {R}\nAlvend   pal\n         beacon   {P}\n         Sorley\n"
    assert "Sorley" not in " ".join(left_out(HEAD + body))
    body = f"{PAIRS}Insert   pile   {R}\nAlvend   pal\n         beacon\n         conical   {P}\n"
    assert "conical" not in " ".join(left_out(HEAD + body))


@pytest.mark.parametrize(
    "body",
    [
        # One verb alone, and another word each time, show no other language.
        f"Insert wreck   {P}\nAlvend vrakka\nInsert rock   {Q}\nAlvend klettur\n",
        f"Insert wreck   {P}\nFished up pile {Q}\nDelete rock   {Q}\nTrawled pile {P}\n"
        f"Insert rock   {R}\nFished up stump {R}\n",
        f"{PAIRS}Insert pile   {R}\nStored pal\n",
    ],
)
def test_strange_words_below_verbs_are_told_without_a_second_language(body: str) -> None:
    assert left_out(HEAD + body) == []
    assert codes(parse(HEAD + body))
