"""The words of the trade as data: kinds of feature, S-57 classes, and what words tell of them.

`features.csv` lists the kinds, `phrases.csv` the phrases that name them, `words.csv` the words
that say something about a feature, `categories.csv` what a category makes of a buoy or beacon, and
`refinements.csv` which word makes one kind a narrower one.  Adding a phrase is a line of data.
Nothing here reads a text; `find` looks up one run of words.
"""

from __future__ import annotations

import csv
import hashlib
from collections.abc import Iterator, Mapping, Sequence
from functools import cache, lru_cache
from typing import NamedTuple

from noticeparse.packaged import packaged
from noticeparse.version import VERSION
from noticeparse.vocabulary.codes import Attributes, read_attributes
from noticeparse.vocabulary.kept import Kept, from_table, keep, read_kept

__all__ = [
    "ARTICLES",
    "DANGERS",
    "LONGEST",
    "Category",
    "Kind",
    "Sense",
    "categories",
    "find",
    "is_known_word",
    "is_place",
    "key_of",
    "kinds",
    "phrases",
    "primitives",
    "refined",
    "spelled",
    "word_key",
]

LONGEST = 9
"""Most words of one phrase; a longer run is never looked up."""


class Kind(NamedTuple):
    """One kind of feature."""

    name: str
    form: str
    """`buoy`, `beacon`, `float` or `daymark` for a mark, else empty."""
    lit: bool
    """The words of the kind themselves name a light."""
    part: bool
    """Said of another feature more often than standing alone (`topmark`, `sounding`)."""
    s57: str
    primitives: frozenset[str]
    attributes: Attributes


class Category(NamedTuple):
    """What a category of mark makes of a buoy, a lit buoy and a beacon."""

    buoy: str
    light_buoy: str
    beacon: str
    buoy_s57: str
    beacon_s57: str


class Sense(NamedTuple):
    """What one phrase means; `role` is `kind` or a role of `words.csv`."""

    role: str
    value: str
    attributes: Attributes
    alone: str = ""
    """The kind meant where nothing else in the phrase names one."""
    lit: bool = False


_DROPPED = str.maketrans("", "", " \t\n-'.\"/()&+")


@cache
def _data(name: str) -> bytes:
    """A data file.

    Raises FileNotFoundError.
    """
    return packaged(__name__, f"{name}.csv")


def _rows(name: str) -> Iterator[list[str]]:
    rows = csv.reader(_data(name).decode("utf-8").splitlines())
    next(rows)
    return rows


@lru_cache(maxsize=8192)
def key_of(words: str) -> str:
    """The words without blanks, hyphens and capitals: `Light-buoy` and `light buoy` agree."""
    return words.lower().translate(_DROPPED)


@cache
def kinds() -> Mapping[str, Kind]:
    """All kinds by their id."""
    return {
        name: Kind(
            name, form, bool(lit), bool(part), s57, frozenset(shapes), read_attributes(codes)
        )
        for name, form, lit, part, s57, shapes, codes in _rows("features")
    }


def primitives(kind: str) -> frozenset[str]:
    """Which of point `P`, line `L` and area `A` a kind may be; empty where it is no object."""
    found = kinds().get(kind)
    return found.primitives if found else frozenset()


@cache
def categories() -> Mapping[str, Category]:
    """All categories of mark by their id."""
    return {name: Category(*rest) for name, *rest in _rows("categories")}


@cache
def _refinements() -> Mapping[str, Sequence[tuple[str, str]]]:
    table: dict[str, list[tuple[str, str]]] = {}
    for kind, word, narrower in _rows("refinements"):
        table.setdefault(kind, []).append((word, narrower))
    return table


def refined(kind: str, words: set[str]) -> str:
    """The narrower kind that the words told make of a kind, the first of the list, else itself."""
    return next(
        (narrower for word, narrower in _refinements().get(kind, ()) if word in words), kind
    )


def phrases() -> Iterator[tuple[str, str, Attributes]]:
    """All phrases as listed: phrase, kind, attributes that its own words state."""
    for phrase, kind, codes in _rows("phrases"):
        yield phrase, kind, read_attributes(codes)


@cache
def _words() -> Sequence[tuple[str, str, str, str, str]]:
    return [
        (words, role, value, codes, alone) for words, role, value, codes, alone in _rows("words")
    ]


@cache
def _spellings() -> Mapping[str, str]:
    return {words: value for words, role, value, *_ in _words() if role == "spelling"}


def spelled(word: str) -> str:
    """A word in lower case, abbreviations written out (`Bn` is `beacon`)."""
    plain = word.lower().rstrip(".")
    return _spellings().get(plain, plain)


@lru_cache(maxsize=8192)
def word_key(word: str) -> str:
    """The key of one word, its abbreviation written out; keys of a phrase join without more."""
    return key_of(spelled(word))


@cache
def _places() -> frozenset[str]:
    return frozenset(words for words, role, *_ in _words() if role == "place")


def is_place(word: str) -> bool:
    """Whether a word ends place names (`Rock`, `Point`): a capital makes it part of one."""
    return word.lower() in _places()


ARTICLES = frozenset(("a", "an", "the"))
DANGERS = frozenset(("WRECKS", "UWTROC", "OBSTRN"))
"""S-57 classes of single dangers on the bottom."""
"""Words that no phrase is told by."""


def _normal(phrase: str) -> str:
    words = phrase.replace("-", " ").replace(",", " , ").split()
    return " ".join(spelled(word) for word in words if word.lower() not in ARTICLES)


def _plural(word: str) -> str:
    if word.endswith("y") and word[-2:-1] not in "aeou":
        return word[:-1] + "ies"
    return word + ("es" if word.endswith(("s", "x", "ch", "sh")) else "s")


def _numbers(normal: str) -> Iterator[str]:
    """Singular and plural spellings of a phrase; a spelling that is no word does no harm."""
    first, _, rest = normal.partition(" ")
    ahead, _, last = normal.rpartition(" ")
    ahead = f"{ahead} " if ahead else ""
    yield ahead + _plural(last)
    if last.endswith("s"):
        yield ahead + last[:-1]
    if rest:
        yield f"{_plural(first)} {rest}"


def _lit_forms(normal: str) -> Iterator[str]:
    """A buoy or beacon as a lit one, before its last word."""
    ahead, _, last = normal.rpartition(" ")
    for word in ("light", "lighted", "lit"):
        yield f"{ahead} {word} {last}".strip()


@cache
def _kept() -> Kept:
    """What phrases mean, from an earlier run or worked out."""
    files = [_data(name) for name in ("features", "phrases", "words")]
    key = f"{VERSION} " + " ".join(hashlib.blake2b(data).hexdigest() for data in files)
    kept = read_kept(key)
    if kept is None:
        kept = from_table(_worked_out(), _known_words())
        keep(key, kept)
    return kept


@cache
def _sense(row: int) -> Sense:
    return Sense(*_kept().meanings[row])


def _worked_out() -> Mapping[str, Sense]:
    table: dict[str, Sense] = {}
    listed: list[tuple[str, Sense]] = []
    for phrase, kind, attributes in phrases():
        normal = _normal(phrase)
        known = kinds()[kind]
        words = normal.split()
        lit = known.lit or (
            known.form in ("buoy", "beacon")
            and any(w in words for w in ("light", "lit", "lighted"))
        )
        sense = Sense("kind", kind, {**known.attributes, **attributes}, lit=lit)
        listed.append((normal, sense))
        table.setdefault(key_of(normal), sense)
    for words_, role, value, codes, alone in _words():
        if role not in ("spelling", "place"):
            table.setdefault(
                key_of(_normal(words_)), Sense(role, value, read_attributes(codes), alone)
            )
    for normal, sense in listed:
        for spelling, varied in _varied(normal, sense):
            table.setdefault(key_of(spelling), varied)
            table.setdefault(key_of(spelling).replace(",", ""), varied)
    return table


def _varied(normal: str, sense: Sense) -> Iterator[tuple[str, Sense]]:
    yield normal, sense
    yield from ((spelling, sense) for spelling in _numbers(normal))
    last = normal.rpartition(" ")[2]
    lit_forms = [normal]
    if last in ("buoy", "beacon") and not sense.lit and "unlit" not in normal:
        lit_forms += _lit_forms(normal)
    for spelling in lit_forms:
        # The plain light buoy is listed as a kind of its own.
        varied = sense._replace(lit=sense.lit or spelling is not normal)
        yield spelling, varied
        yield spelling + "s", varied
        if last == "buoy" and spelling != "buoy":
            # On charts a buoy is `By`; alone it would be the preposition.
            yield spelling[:-4] + "by", varied
            yield spelling[:-4] + "bys", varied


def _known_words() -> frozenset[str]:
    listed = [phrase for phrase, _, _ in phrases()] + [row[0] for row in _words()]
    return frozenset(word for phrase in listed for word in _normal(phrase).split())


def is_known_word(word: str) -> bool:
    """Whether a word stands in any phrase of the vocabulary, so that it is no part of a name."""
    plain = spelled(word)
    known = _kept().words
    return plain in known or plain.removesuffix("s") in known


def find(key: str) -> Sense | None:
    """The meaning of a phrase by its key, None where it has none."""
    row = _kept().rows.get(key)
    return None if row is None else _sense(row)
