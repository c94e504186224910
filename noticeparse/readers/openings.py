"""How a stretch of words begins: with a word of the trade, or with one that nobody knows."""

from __future__ import annotations

import re
from functools import lru_cache

from noticeparse.readers.features import has_kind, leads_feature, value_property
from noticeparse.readers.told import told_by

_PARTICLES = frozenset("up out off away down in over".split())


@lru_cache(maxsize=4096)
def unknown_first_word(text: str) -> str | None:
    """The first word of `Adjourn spoil ground buoy`: unknown, a feature behind it; else None."""
    head, _, rest = text.partition(" ")
    rest = rest.lstrip("-: ")
    particle, _, behind = rest.partition(" ")
    if particle.lower() in _PARTICLES:
        # `Fished up wreck`
        rest = behind.lstrip("-: ")
    # An article behind the word tells as much as a feature: `Ventilate the …`.
    leads = leads_feature(rest) or rest.lower().startswith(("the ", "a ", "an "))
    if not head.replace("-", "").isalpha() or len(head) < 3 or not rest or not leads:
        return None
    words = told_by(text).first_words
    return head if words and words[0].start == 0 and words[0].role == "unknown" else None


_INFINITIVE = re.compile(r"(?:To (?P<verb>[a-z]{3,20})|TO (?:PUT|BEAR|TRACE)):? {1,12}(?=\S)")


@lru_cache(maxsize=4096)
def unknown_infinitive(text: str) -> str | None:
    """`To bear` of `To bear wreck`: no verb that is known, a feature behind it; else None."""
    told = _INFINITIVE.match(text)
    if told is None or not leads_feature(text[told.end() :]):
        return None
    verb = told["verb"]
    is_known = verb is not None and verb != "mark" and value_property(verb) != {"unknown"}
    return None if is_known else told[0].rstrip(" :")


_QUALIFYING = frozenset({"category", "colour", "shape", "lit", "condition", "virtual"})
_LINKS = (" by ", " with ", " for ")


@lru_cache(maxsize=4096)
def only_qualifies(words: str) -> bool:
    """Whether words name no kind and say only what may stand before one: `port-hand`."""
    roles = value_property(words)
    return bool(roles) and roles <= _QUALIFYING and not has_kind(words)


@lru_cache(maxsize=4096)
def is_parted(above: str, below: str) -> bool:
    """Whether a line end parts one name: `west cardinal light` and `buoy, Q(9)15s`."""
    last = min((above.rpartition(link)[2] for link in _LINKS), key=len).strip()
    if not last or last[-1] in ",;:.":
        return False
    if only_qualifies(last):
        return has_kind(below)
    joint = len(last)
    items = told_by(f"{last} {below}").items
    return any(item.start < joint < item.end and item.role == "kind" for item in items)
