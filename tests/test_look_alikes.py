"""Words in which letters and figures that look alike were exchanged, and where they stay."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.layout.copied.look_alikes import with_words_mended
from tests.short_notices import HEAD, Q, actions_of

WORDS = [
    ("lnsert", "Insert"), ("1nsert", "Insert"), ("|nsert", "Insert"), ("lNSERT", "INSERT"),
    ("de1ete", "delete"), ("DE1ETE", "DELETE"), ("1ight-buoy", "light-buoy"),
    ("Iight-buoy", "light-buoy"), ("L1GHT", "LIGHT"), ("soundlngs", "soundings"),
    ("ye1low", "yellow"), ("bIack", "black"), ("whlte", "white"), ("p1le", "pile"),
    ("0bstruction", "obstruction"), ("l0wer", "lower"), ("1ast entry", "last entry"),
    ("CORRECTlONS", "CORRECTIONS"), ("unti1", "until"), ("f1agstaff", "flagstaff"),
]  # fmt: skip
KEPT = [
    "Insert", "Island", "llama", "tail", "tall", "Iron", "Fl(3)W.10s", "LFl.10s", "Oc.5s",
    "1and 2", "10.5 m", "1O.5 m", "lO m", "123° I6'.02 W", "48° 09'.5B S", "N0. 12", "I2/26",
    "light-buoy, Smal1 Rock", 'buoy "Fou1 P1le"', "legend Fou1 ground", "name Rocky p1le",
    "a|light|buoy", "p1a1t1o1l1l",
]  # fmt: skip


@pytest.mark.parametrize(("written", "read"), WORDS)
def test_a_word_that_is_none_is_read_as_the_one_it_can_be(written: str, read: str) -> None:
    mended = with_words_mended(f"{written} here")
    assert mended.text == f"{read} here"
    assert [one.code for one in mended.faults] == ["text-look-alike"]


@pytest.mark.parametrize("words", KEPT)
def test_words_figures_names_and_legends_stay_as_written(words: str) -> None:
    assert with_words_mended(words) == (words, ())


def test_the_records_point_at_the_words_as_written() -> None:
    text = f"{HEAD}1. lnsert 1ight-buoy, Fl.R.5s {Q}\n2. De1ete the p1le {Q}\n"
    bulletin = parse(text)
    assert [(a.verb, a.feature.kind) for a in actions_of(bulletin)] == [
        ("insert", "light_buoy_generic"), ("delete", "pile"),
    ]  # fmt: skip
    told = [one for one in bulletin.findings if one.code == "text-look-alike"]
    written = [text[one.span.start : one.span.end] for one in told]
    assert written == ["lnsert", "1ight", "De1ete", "p1le"]
    assert actions_of(bulletin)[0].text.startswith("1. lnsert 1ight-buoy")


def test_a_letter_among_the_figures_of_a_place_is_not_guessed() -> None:
    text = f"{HEAD}lnsert wreck 46° 09'.5B S 122° 00'.00 W\nlnsert rock {Q}\n"
    wreck, rock = actions_of(parse(text))
    assert (wreck.usable, wreck.geometry.positions, rock.usable) == (False, [], True)
