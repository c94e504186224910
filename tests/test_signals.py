"""Corrections sent as signals: parts between double strokes, counted sheets, words for the end."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import AT_P, AT_Q, P, Q, actions_of, codes, errors, told


def _ends(end: str) -> Bulletin:
    return parse(
        "NR 12/26 // QUILL SOUND // CHART 802 // PREVIOUS 3/26\n"
        f'ADD // LEGEND "FOUL" // {P}\n{end}\n'
        "\nNR 13/26 // QUILL SOUND // CHART 803 // PREVIOUS 4/26\n"
        f"DELETE // SLIPWAY // {Q}\n{end}\n"
    )


@pytest.mark.parametrize(
    "end",
    [
        "END",
        "ENDS",
        "END OF SIGNAL NR 17",
        "= END OF MESSAGE =",
        "MESSAGE ENDS",
        "END OF TELEGRAM",
        "End of notice",
        "*** END OF BULLETIN 17/26 ***",
        "END\n                                  SHEET 2 OF 3, SIGNAL NR 17",
        "END\nPAGE 2 OF 3 BULLETIN 17/26",
    ],
)
def test_words_for_the_end_and_counted_sheets_are_of_no_action(end: str) -> None:
    bulletin = _ends(end)
    legend, slipway = actions_of(bulletin)
    assert (legend.feature.legend, legend.feature.name) == ("FOUL", None)
    assert (slipway.feature.kind, slipway.feature.name) == ("slipway", None)
    assert not codes(bulletin)
    assert bulletin.coverage.ignored > 0


@pytest.mark.parametrize("said", ["END OF BREAKWATER", "ENDS AT THE QUAY", "SHEET 2 OF 3, EAST"])
def test_other_words_below_a_place_are_not_left_out(said: str) -> None:
    bulletin = _ends(said)
    assert bulletin.coverage.ignored == 0


def test_a_sheet_of_a_chart_is_no_sheet_of_the_signal() -> None:
    text = f"12/26 Quill Sound\nChart 802, Sheet 2 of 3 [3/26]\nInsert wreck {P}\n"
    (notice,) = parse(text).notices
    assert [(one.chart, one.previous and one.previous.number) for one in notice.charts] == [
        ("802", 3)
    ]


@pytest.mark.parametrize("mark", ["//", " // ", "/", "--"])
@pytest.mark.parametrize(
    ("words", "change"),
    [
        ("RANGE OF LIGHT ISO.W.6S TO 11 MILES", "light.ranges_nm"),
        ("PERIOD OF LIGHT FL.G.3S TO 5S", "light.period_s"),
        ("ELEVATION OF LIGHT FL.R.5S TO 12 METRES", "light.elevation_m"),
        ('NAME OF BUOY "A" TO "B"', "name"),
        ("CHARACTER OF LIGHT TO FL.R.5S", "light"),
        ("LIGHT FL.R.3S TO FL.R.5S", "light"),
    ],
)
def test_a_property_between_strokes_is_that_of_its_feature(
    words: str, change: str, mark: str
) -> None:
    bulletin = parse(f"NR 12/26\nCHART 802 [3/26]\nCORRECT {mark} {words} {mark} {P}\n")
    (action,) = actions_of(bulletin)
    assert action.usable
    assert action.feature.kind in ("light", "buoy_generic")
    assert [one.property for one in action.changes] == [change]
    assert not codes(bulletin)


def test_strokes_between_the_halves_of_a_move_and_a_replacement() -> None:
    bulletin = parse(
        f"NR 12/26\nCHART 802 [3/26]\nSHIFT // WRECK // FROM {P} TO {Q}\n"
        f"EXCHANGE // ROCK BY WRECK // {P}\n"
    )
    assert told(bulletin) == [("move", "wreck", [AT_P]), ("replace", "rock", [AT_P])]
    assert [p.iso6709 for p in actions_of(bulletin)[0].destination.positions] == [AT_Q]
    assert not errors(bulletin)
