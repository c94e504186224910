"""Words of the original text, brought onto one line, and as the readers will see them."""

from __future__ import annotations

import re

from noticeparse.text import repair
from noticeparse.vocabulary import is_known_word

# Marks of a quotation or a list that a reader left before a phrase.
_MARKS = "> "
_CUT = re.compile(r"([A-Za-z]+)[-‐‑­] ([a-z]+)")


def on_one_line(words: str) -> str:
    """Words as written, with those that a line end had cut joined again: `dan- gerous`."""
    return _CUT.sub(_joined, " ".join(words.split()).lstrip(_MARKS))


def _joined(cut: re.Match[str]) -> str:
    whole = cut[1] + cut[2]
    return whole if is_known_word(whole) else f"{cut[1]}-{cut[2]}"


def read_as(words: str) -> str:
    """The words after the repair of look-alikes, as the readers are given them."""
    return repair(words).text
