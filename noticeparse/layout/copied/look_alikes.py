"""Words in which letters stand for others that look like them: `lnsert`, `1ight-buoy`, `L1GHT`.

Reading a printed page by machine exchanges l, I, 1 and | with each other, and O with 0.  Where a
word that is none becomes just one word of the trade by exchanging them back, it is read so, which
is told; the text keeps its length.  Figures, quoted legends and names stay as they are written.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import lru_cache
from itertools import product
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.readers.verbs import canonical_verb
from noticeparse.vocabulary import is_known_word

_CONSONANT = "[bcdfghjkmnpqrstvwxz]"
_BEGINS = "(?<![A-Za-z0-9|.'°_])"
_ENDS = "(?![A-Za-z0-9|'°_])"
_WORD = (
    # Figures or a stroke among letters.
    r"(?=[A-Za-z]{0,23}[01|])(?=[01|]{0,9}[A-Za-z])[A-Za-z01|]{4,24}"
    # A small l where only a vowel can stand.
    rf"|l{_CONSONANT}[a-z]{{2,22}}|(?=[a-z]{{0,20}}{_CONSONANT}l{_CONSONANT})[a-z]{{4,24}}"
    # A small l among capitals, a capital I among small letters.
    r"|(?=[A-Z]{0,23}l)(?=[A-Zl]{0,22}[A-Z]{2})[A-Zl]{4,24}|(?=[a-z]{0,23}I)[a-zI]{4,24}"
)
_SUSPECT = re.compile(
    # A quote mark behind a figure is a mark of seconds.
    r"(?P<quoted>(?<![0-9'°])\"[^\"\n]{0,80}(?:\n[^\"\n]{0,80})?\")"
    r"|(?P<title>\b[l1I|]?(?:legend|egend|named?|reading)\b)"
    rf"|{_BEGINS}(?P<word>{_WORD}){_ENDS}"
)
_RUN = re.compile(r"[A-Za-z01|]{4,24}")
_SUSPECT_RUN = re.compile(_WORD)
_LOST_TITLE = re.compile(r"[1I|]egend")
_OF_NAME = re.compile(r"[^\n.,;(]{0,80}")
_MOST_EXCHANGED = 4
_PLAIN = frozenset(
    "last until should will also only small vessels mariners following edition list position"
    " positions notice notices correction corrections corrected printed prior preceding previous"
    " preliminary official further within while information publication publications article"
    " included replaced relocated longitude latitude decimals million metres light lights"
    " lighthouse local national title titles file files half full all".split()
)
"""Words of heads and sentences that the vocabulary of features does not have."""
_MEASURE = re.compile(
    r"[01|]+(?:ft|feet|m|fms?|fathoms?|met(?:re|er)s?|cables?|miles?|nm?|kn|km|cm|mm|s|sec|min|hrs?"
    r"|st|nd|rd|th)[a-z]?",
    re.IGNORECASE,
)
"""`11ft`, a measure or count without its blank, and no `lift`."""
_BEHIND_A_FIGURE = frozenset("and all in on at or of the an is ink".split())


class Mended(NamedTuple):
    """A text with such words as they are meant, and what was done to it."""

    text: str
    faults: tuple[Fault, ...] = ()

    def until(self, end: int) -> tuple[Fault, ...]:
        """The faults that begin before an offset of the text."""
        return tuple(fault for fault in self.faults if fault.start < end)


def with_words_mended(text: str) -> Mended:
    """The text with such words as they are meant; nothing of it is left out."""
    found = list(_mended(text)) if _may_hold_one(text) else []
    if not found:
        return Mended(text)
    parts: list[str] = []
    faults: list[Fault] = []
    at = 0
    for start, end, read in found:
        parts += (text[at:start], read)
        at = end
        faults.append(
            Fault("text-look-alike", start, end, {"written": text[start:end], "read": read})
        )
    parts.append(text[at:])
    return Mended("".join(parts), tuple(faults))


def _may_hold_one(text: str) -> bool:
    """Whether any letters in a row are such a word; the different ones are few, and soon asked."""
    return _LOST_TITLE.search(text) is not None or any(
        _SUSPECT_RUN.fullmatch(run) is not None and meant(run) is not None
        for run in set(_RUN.findall(text))
    )


def _mended(text: str) -> Iterator[tuple[int, int, str]]:
    """Start and end of each such word, and what is read instead."""
    of_name = 0
    for match in _SUSPECT.finditer(text):
        start, end = match.span()
        if start < of_name:
            continue
        read = meant(match.group()) if match["quoted"] is None else None
        if read is not None and not _may_be_name(text, start, read):
            yield start, end, read
        if match["title"] is not None or read == "legend":
            # What the words behind it say is written on the chart as it stands.
            behind = _OF_NAME.match(text, end)
            of_name = behind.end() if behind else end


def _may_be_name(text: str, start: int, read: str) -> bool:
    """Whether a word with one capital stands within a line or sentence, as names do."""
    is_titled = text[start].isupper() and text[start] != "I" and read[1:].islower()
    if not is_titled or canonical_verb(read) is not None:
        return False
    before = text[max(start - 2, 0) : start]
    # Behind a stop or a wider gap a sentence or cell begins.
    return before[-1:] in (" ", "-") and (before[:1].isalnum() or before[:1] == ",")


@lru_cache(maxsize=4096)
def meant(written: str) -> str | None:
    """The one word of the trade that a word which is none stands for, else None."""
    if _is_word(written):
        return None
    if written[0] in "1|" and _opens_with_a_word(written[1:]):
        # `1and 2`: the blank behind a figure is lost.
        return None
    if _MEASURE.fullmatch(written) is not None:
        return None
    small = sum(character.islower() and character != "l" for character in written)
    large = sum(character.isupper() and character != "I" for character in written)
    choices = [_choices(written, at, is_capital=large > small) for at in range(len(written))]
    if sum(len(one) > 1 for one in choices) > _MOST_EXCHANGED or small + large < 2:
        return None
    words = {"".join(one) for one in product(*choices)}
    found = {word for word in words if _is_word(word)}
    return found.pop() if len(found) == 1 else None


def _choices(written: str, at: int, *, is_capital: bool) -> str:
    """The letters that a character of a word may stand for."""
    character = written[at]
    if character == "0":
        return "O" if is_capital or (at == 0 and written[1:2].isupper()) else "o"
    if character not in "l1I|":
        return character
    if is_capital:
        # Only a small l looks like a capital I.
        return "I" if character in "lI" else "IL"
    return "lI" if at == 0 else "l" if character == "I" else "li"


def _opens_with_a_word(rest: str) -> bool:
    return rest.lower() in _BEHIND_A_FIGURE or _is_word(rest)


def _is_word(word: str) -> bool:
    """Whether this is a word of the trade, or of the heads and sentences of notices."""
    plain = word.lower()
    return plain in _PLAIN or canonical_verb(plain) is not None or is_known_word(plain)
