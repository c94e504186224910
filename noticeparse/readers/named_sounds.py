"""A fog signal named by a noun among the words of what carries it: `bell buoy`, `and fog signal`.

In come the items of a phrase; out come the nouns, and the sound that each of them tells.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.faults import Fault
from noticeparse.readers.amounts import shown
from noticeparse.readers.light_values import sound_of
from noticeparse.readers.told import Told
from noticeparse.readers.words import Item
from noticeparse.records.feature import Sound

_KINDS = frozenset(("bell", "gong", "horn", "siren", "whistle"))
_ON_MARK = re.compile(
    r"(?:bell|gong|horn|siren|whistle)[ -](?:light-?|lighted )?(?:buoy|beacon|mark)s?\b",
    re.IGNORECASE,
)


def named_sounds(items: Sequence[Item], head_end: int) -> tuple[Item, ...]:
    """The nouns of fog signals; `no fog signal` and what the phrase itself is about are none."""
    return tuple(
        item
        for at, item in enumerate(items)
        if item.role == "kind" and item.value == "fog_signal" and item.end != head_end
        if at == 0 or items[at - 1].text.lower() not in ("no", "not", "without")
    )


def sounds_of(named: Sequence[Item], told: Sequence[Sound], faults: list[Fault]) -> list[Sound]:
    """The sounds told, or those of the nouns; a noun of another sound than the first is told."""
    made = list(told)
    for item in named:
        kind = sound_of(item.text.lower().split()[-1].removeprefix("fog"))
        if kind not in _KINDS:
            continue
        if made and made[0].kind != kind:
            faults.append(_fault("sound-twice", item.start, item.end, item.text))
        made.append(Sound(kind=kind, group=[], period_s=None))
    return made


def torn_marks(text: str, told: Told) -> Iterator[Fault]:
    """`bell and whistle buoy`: a mark with two sounds, read as a bell beside a buoy."""
    if told.head is None or told.head.value != "fog_signal":
        return
    for companion in told.companions:
        if _ON_MARK.match(text, companion.start):
            words = text[companion.start : companion.end]
            yield _fault("feature-kinds-several", companion.start, companion.end, words)


def _fault(code: str, start: int, end: int, words: str) -> Fault:
    return Fault(code, start, end, {"written": shown(words)})
