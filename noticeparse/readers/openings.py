"""How a stretch of words begins: with a word of the trade, or with one that nobody knows."""

from __future__ import annotations

from functools import lru_cache

from noticeparse.readers.features import leads_feature
from noticeparse.readers.told import told_by


@lru_cache(maxsize=4096)
def unknown_first_word(text: str) -> str | None:
    """The first word of `Adjourn spoil ground buoy`: unknown, a feature behind it; else None."""
    head, _, rest = text.partition(" ")
    rest = rest.lstrip("-: ")
    # An article behind the word tells as much as a feature: `Ventilate the …`.
    leads = leads_feature(rest) or rest.lower().startswith(("the ", "a ", "an "))
    if not head.replace("-", "").isalpha() or len(head) < 3 or not rest or not leads:
        return None
    words = told_by(text).first_words
    return head if words and words[0].start == 0 and words[0].role == "unknown" else None
