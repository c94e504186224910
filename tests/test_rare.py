"""Patterns that are looked for only where one of their words may stand."""

import re
import string
from importlib import import_module
from pathlib import Path
from pkgutil import walk_packages

import pytest

import noticeparse
from noticeparse.build.stated_units import may_state_unit
from noticeparse.rare import Rare, openings
from noticeparse.readers.heads import head_kinds
from noticeparse.readers.taken_back import tells_end
from tests.needed_words import needed


def _all() -> list[Rare]:
    """All such patterns of the readers, the builders and the layout."""
    folder = Path(noticeparse.__file__).parent
    found: list[Rare] = []
    for package in ("readers", "build", "layout"):
        for module in walk_packages([str(folder / package)], f"noticeparse.{package}."):
            for value in vars(import_module(module.name)).values():
                held = value.values() if isinstance(value, dict) else (value,)
                found += [one for one in held if isinstance(one, Rare)]
    return found


def _lacking(one: Rare) -> list[str]:
    """The openings of words that stand in a match which has none of the words told."""
    words = needed(one.compiled, lambda found: len(found - one.openings))
    return ["no word is in all of them"] if words is None else sorted(words - one.openings)


def test_no_pattern_matches_without_one_of_its_words() -> None:
    patterns = _all()
    lacking = {one.compiled.pattern: words for one in patterns if (words := _lacking(one))}
    assert len(patterns) > 50
    assert lacking == {}, "words that no match can do without are missing"


@pytest.mark.parametrize(
    ("pattern", "words"),
    [
        (r"\b(?:if|once) charted", {"cha"}),
        (r"\b(?:insert|add)(?:ed)?\b", {"ins", "add"}),
        (r"\((?:T|P)\)", {"t", "p"}),
        (r"\b(?:un|not )known", {"unk", "not"}),
        (r"(?<![a-z-])(?:un|del)(?![a-z])[ .]*[0-9]", {"un", "del"}),
        (r"(?<![a-z-])(?:un|del)[ .]*", None),
        (r"insert", None),
        (r"\b[a-z]*most\b", None),
        (r"\bno[a-z]*\b", None),
        (r"\b(?:to )?(?=be)", None),
    ],
)
def test_words_of_a_pattern(pattern: str, words: set[str] | None) -> None:
    """Those that each match holds, not those that it may hold, nor the ends of longer words."""
    found = needed(re.compile(pattern, re.IGNORECASE), len)
    assert found == words


def test_a_match_is_found_in_any_letters() -> None:
    rare = Rare(r"\bwas killing\b", "killing", re.IGNORECASE)
    assert rare.search("it WAS KILLING") is not None
    assert [one[0] for one in rare.finditer("was KıLLİNG, waſ \u212ailling")] == [
        "was KıLLİNG",
        "waſ \u212ailling",
    ]
    assert rare.search("was skilling") is None


@pytest.mark.parametrize(
    "words",
    [
        "Notice 12/26 is cancelled.",
        "NM 12/26 canx",
        "Notices 12/26 and 13/26 have been withdrawn",
        "Circular 12/26 stands annulled",
        "Notice 12/26 is hereby revoked",
        "Notice 12/26 is superseded",
        "Notice 12/26 refers. It is now withdrawn",
        "This notice replaces notice 12/26",
        "This notice is in replacement of 12/26",
        "This message in place of 12/26",
        "(replaces notice 12/26)",
        "Cancels 12/26",
        "Cancelling notice 12/26",
        "CNL 12/26",
        "Canc NM 12/26",
        "Voids notice 12/26",
        "Rescinds 12/26",
        "Repeals 12/26",
        "CXL 12/26",
        "Ends 12/26",
        "Annuls notice 12/26",
        "This notice supersedes 12/26",
    ],
)
def test_what_cancels_a_notice_tells_an_end(words: str) -> None:
    """Text without the words of such an end is not read for one."""
    assert "CANCELS" in head_kinds(words)
    assert tells_end(words)


def test_letters_that_python_takes_for_others() -> None:
    """Each sign that matches a letter opens the same word as the letter."""
    for letter in string.ascii_lowercase:
        same = re.compile(letter, re.IGNORECASE)
        for sign in filter(same.fullmatch, map(chr, range(0x110000))):
            assert openings(f"x {sign}bc") == {"x", f"{letter}bc"}


@pytest.mark.parametrize(
    "words",
    [
        "All soundings on this chart are given in fathoms and feet.",
        "depths: metres",
        "(fms)",
        "metric charts",
        "Depths in FEET",
    ],
)
def test_what_states_a_unit_holds_one_of_its_words(words: str) -> None:
    """Sentences without these words are not read for a unit."""
    assert "DEPTH_UNIT" in head_kinds(words)
    assert may_state_unit(words)
