"""The word tables: every phrase leads to its kind, every code stands in the S-57 tables."""

from collections import Counter, defaultdict

import pytest

from noticeparse.readers.features import read_feature
from noticeparse.vocabulary import _normal as normal
from noticeparse.vocabulary import _rows as rows
from noticeparse.vocabulary import categories, key_of, kinds, phrases, primitives
from noticeparse.vocabulary.codes import (
    BEACON_SHAPES,
    BUOY_SHAPES,
    COLOURS,
    LISTS,
    PATTERNS,
    QUALITIES,
    read_attributes,
)
from tests.s57_tables import s57_table

_ATTRIBUTES = {row["Code"]: row for row in s57_table("s57attributes.csv")}
_CLASSES = {row["Acronym"]: row for row in s57_table("s57objectclasses.csv")}
_CODES = defaultdict(dict)
for _row in s57_table("s57expectedinput.csv"):
    _CODES[_ATTRIBUTES[_row["Code"]]["Acronym"]][int(_row["ID"])] = _row["Meaning"]
_TYPES = {row["Acronym"]: row["Attributetype"] for row in _ATTRIBUTES.values()}
_ALL_CODES = sorted(
    {row[6] for row in rows("features")}
    | {row[2] for row in rows("phrases")}
    | {row[3] for row in rows("words")} - {""}
)


def test_there_are_all_kinds():
    assert len(kinds()) == 282
    assert len(list(phrases())) > 800


@pytest.mark.parametrize("kind", [kind for kind in kinds().values() if kind.s57])
def test_class_is_in_the_s57_tables(kind):
    assert kind.s57 in _CLASSES
    named = {"P": "Point", "L": "Line", "A": "Area"}
    allowed = _CLASSES[kind.s57]["Primitives"].split(";")
    assert all(named[letter] in allowed for letter in kind.primitives)
    assert kind.primitives == primitives(kind.name)


@pytest.mark.parametrize("codes", _ALL_CODES)
def test_codes_are_in_the_s57_tables(codes):
    for acronym, value in read_attributes(codes).items():
        assert _TYPES[acronym] == ("L" if isinstance(value, list) else "E")
        for code in value if isinstance(value, list) else [value]:
            assert code in _CODES[acronym], (acronym, code)


def test_no_phrase_stands_twice():
    # The row above holds already, so that the one below would only seem to say something.
    keys = [key_of(normal(row[0])) for row in rows("phrases")]
    roles = [(row[1] if row[1] in ("spelling", "place") else "", row[0]) for row in rows("words")]
    keys += [role + key_of(words if role else normal(words)) for role, words in roles]
    assert [key for key, times in Counter(keys).items() if times > 1] == []


def test_lists_are_those_of_type_l():
    assert all(_TYPES[acronym] == "L" for acronym in LISTS)


def test_words_of_codes_are_those_of_s57():
    for word, code in COLOURS.items():
        assert _CODES["COLOUR"][code] == word
    for word, code in PATTERNS.items():
        assert _CODES["COLPAT"][code].startswith(word.replace("_", " "))
    for word, code in QUALITIES.items():
        assert _CODES["QUASOU"][code] == word
    assert set(BUOY_SHAPES) == set(_CODES["BOYSHP"])
    assert set(BEACON_SHAPES) == set(_CODES["BCNSHP"])


def test_categories_name_kinds_and_classes():
    for row in categories().values():
        assert {row.buoy, row.light_buoy, row.beacon} <= set(kinds())
        assert {row.buoy_s57, row.beacon_s57} <= set(_CLASSES)


def test_refinements_and_lone_words_name_kinds():
    known = set(kinds())
    assert all({kind, narrower} <= known for kind, _, narrower in rows("refinements"))
    assert all(row[4] in known for row in rows("words") if row[4])


# The hyphen tells nothing elsewhere, but `V AIS` is two words to the light grammar.
_APART = ("V-AIS",)


@pytest.mark.parametrize(("phrase", "kind"), [(phrase, kind) for phrase, kind, _ in phrases()])
def test_phrase_leads_to_its_kind(phrase, kind):
    spellings = {phrase, phrase.upper(), f"the {phrase}", phrase[0].upper() + phrase[1:]}
    if not phrase.startswith(_APART):
        spellings.add(phrase.replace("-", " "))
    for spelling in spellings:
        feature = read_feature(spelling, "m").feature
        assert feature.kind == kind, spelling
        main = kinds()[kind].s57
        assert feature.s57[: bool(main)] == ([main] if main else []), spelling


@pytest.mark.parametrize(
    ("written", "kind"),
    [
        ("limit", "maritime_limit"),
        ("limit of", "maritime_limit"),
        ("Rep", "reported_depth"),
        ("dr", "drying_height"),
        ("dries", "drying_height"),
    ],
)
def test_word_that_stands_alone(written, kind):
    assert read_feature(written, "m").feature.kind == kind


@pytest.mark.parametrize(
    ("written", "kind"),
    [
        ("lightbuoy", "light_buoy_generic"),
        ("light buoys", "light_buoy_generic"),
        ("PORT-HAND LIGHTBUOY", "light_buoy_port"),
        ("wrecks", "wreck"),
        ("leading light", "leading_lights"),
        ("overfall", "overfalls"),
        ("jetties", "pier"),
        ("rocks awash", "rock_awash"),
        ("harbor limit", "harbour_limit"),
    ],
)
def test_spellings(written, kind):
    assert read_feature(written, "m").feature.kind == kind
