"""Signs whose meaning is told by what stands beside them; one stands for one, and offsets stay."""

from __future__ import annotations

import re

# The sign stands first, and then what is before it: the search leaps to the sign.
_DECIMAL_DOT = re.compile(r"·(?<=[0-9']·)(?=[0-9])")
"""A middle dot between figures or behind a minute mark: `12'·34`, `2·5s`."""

_BEARING_SIGN = re.compile(
    r"[*o](?<=[0-9]{3}[*o])(?=-[0-9]{3}[*o](?![A-Za-z0-9]))"
    r"|[*o](?<=[0-9]{3}[*o]-[0-9]{3}[*o])(?![A-Za-z0-9])"
)
"""A bearing of a sector whose sign became a letter or star: `215*-248*`, `248o-260o`."""

_SINGLE_QUOTES = re.compile(
    r"'(?<![\w°'\".]')(?<![0-9] ')(?=[A-Za-z(]|[0-9][^'\n]{0,40}[A-Za-z)]')"
    r"((?:[^'\"°;\n]|(?<=[a-z])'(?=[a-z])){1,120})(?<! )'(?![\w'])"
)
"""A wording in single quotes, behind a word for one: `legend 'Foul'`.

Behind a figure the first mark is a prime (`47 12 'S`), and what holds figures alone may be one
with its prime.
"""
_OPENING_QUOTE = re.compile(r"'(?<![\w°'\".]')(?<![0-9] ')")
"""Where such a wording may begin; most marks of a text are primes."""
_WORDED = re.compile(
    r"\b(?:legend|note|caution|wording|inscription|title|name)s?\b[^\n]{0,300}", re.IGNORECASE
)


def with_signs_told(text: str) -> str:
    """The text with such signs as those they stand for; wordings stand in double quotes."""
    text = _BEARING_SIGN.sub("°", _DECIMAL_DOT.sub(".", text))
    if _OPENING_QUOTE.search(text) is None:
        return text
    return _WORDED.sub(lambda found: _SINGLE_QUOTES.sub(r'"\1"', found.group()), text)
