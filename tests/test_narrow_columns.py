"""Sentences in narrow columns: positions that break over line ends, verbs behind them."""

from __future__ import annotations

from noticeparse import parse
from tests.short_notices import errors

HEAD = "62/26 Merrow Inlet\nChart 407. Previous notice 61/26.\n"


def test_places_and_verbs_of_a_narrow_column() -> None:
    bulletin = parse(
        f"{HEAD}Insert a submarine cable joining 46°\n35.10' S, 123° 08.44' W; 46° 35.31' S,\n"
        "123° 08.02' W; and 46° 35.60' S, 123°\n07.90' W. Move the mooring buoy from\n"
        "46° 34.90' S, 123° 08.90' W to 46°\n34.96' S, 123° 08.77' W. Replace the\n"
        "depth of 5.8 metres by a depth of 5.1\nmetres in 46° 35.05' S, 123° 09.12' W.\n"
    )
    cable, move, depth = bulletin.notices[0].charts[0].actions
    assert [one.verb for one in (cable, move, depth)] == ["insert", "move", "replace"]
    assert [len(one.geometry.positions) for one in (cable, move, depth)] == [3, 1, 1]
    assert [one.iso6709 for one in depth.geometry.positions] == ["-4635.05-12309.12/"]
    assert not errors(bulletin)


def test_place_at_the_line_start_before_a_comma_and_a_verb() -> None:
    bulletin = parse(
        f"{HEAD}substitute a depth of 10.4 m for the depth of 11.6 m\n"
        "in 47°08.15'S 124°00.20'W, shift the mooring buoy from 47°08.90'S 123°59.62'W to\n"
        "47°08.97'S 123°59.55'W, and delete the wreck in 47°08.40'S 123°58.10'W.\n"
    )
    replace, move, wreck = bulletin.notices[0].charts[0].actions
    assert [one.verb for one in (replace, move, wreck)] == ["replace", "move", "delete"]
    assert [one.iso6709 for one in replace.geometry.positions] == ["-4708.15-12400.20/"]
    assert not errors(bulletin)
