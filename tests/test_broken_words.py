"""Words of features in pieces, or with signs in the place of letters: no other kind is read."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, codes, errors, told, usable_of

BROKEN = [
    "light-bu**, Q.R",
    "light-bu??, Q.R",
    "obstructi- on, least depth 3.2 m",
    "overhe- ad power cable, vertical clearance 26 m",
    "PO- RT HAND LT BUOY FL R 4S",
    "dang erous wreck",
    "wreck, lea st depth 12.6 m",
    "vinnal AIS, port-hand",
]


@pytest.mark.parametrize("phrase", BROKEN)
def test_what_is_left_of_a_word_is_not_passed_over(phrase: str) -> None:
    bulletin = parse(f"{HEAD}Insert {phrase} {P}\n")
    assert told(bulletin) == []
    assert "text-garbled" in errors(bulletin)


@pytest.mark.parametrize(
    "phrase",
    [
        "wr..., least depth 13.4 m",
        "obstructi- on, depth unknown",
        "dedged area with a depth of 9.5 metres",
        "special beacon buoy",
        "port-hand buoy beacon",
    ],
)
def test_the_depth_or_form_of_another_thing(phrase: str) -> None:
    bulletin = parse(f"{HEAD}Insert {phrase} {P}\n")
    assert told(bulletin) == []
    assert "feature-kinds-several" in errors(bulletin)


def test_a_phrase_that_ends_in_an_article() -> None:
    bulletin = parse(f"{HEAD}Insert rock a____ {P}\n")
    assert codes(bulletin) == {"feature-words-unread"}


@pytest.mark.parametrize(
    ("phrase", "kind"),
    [
        ("port-hand light-buoy, Q.R", "light_buoy_port"),
        ("wreck, least depth 12.6 m", "wreck_least_depth"),
        ("dangerous wreck", "wreck_dangerous"),
        ('legend "Works ** see note"', "legend"),
        ("dredged area with a depth of 9.5 metres", "dredged_area"),
        ("virtual AIS, port-hand", "ais_virtual"),
        ("overhead power cable, vertical clearance 26 m", "cable_overhead_power"),
    ],
)
def test_whole_words_stay_as_they_are(phrase: str, kind: str) -> None:
    bulletin = parse(f"{HEAD}Insert {phrase} {P}\n")
    (read,) = usable_of(bulletin)
    assert (read[0], read[1].partition("_")[0]) == ("insert", kind.partition("_")[0])
    assert errors(bulletin) == set()
