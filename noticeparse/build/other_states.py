"""Two states of one thing in the words of an item, of which only one is that of the chart.

`Fl.R.4s (was Q.R)`, `No 4 (ex No 2)`, `Fl.5s (charted as Oc.8s)` and `light-buoy, now unlit buoy`
would be read as two lights, two names, or as the thing that is not meant.  `Amend light (now
Fl.5s) to Fl.10s` and `Insert wreck (now dangerous)` tell what they should.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import lru_cache

from noticeparse.build.extents import within
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.rare import Rare
from noticeparse.readers.features import has_kind, leads_feature, read_feature, value_property
from noticeparse.readers.verbs import Verb
from noticeparse.records.feature import Feature
from noticeparse.stretch import Stretch, unquoted

_CODE = "feature-states-several"
CLAUSE = re.compile(r"[^()\[\],;:]+")
BRACKET = re.compile(r"[(\[](?P<words>[^()\[\]]+)[)\]]")
_STATE = re.compile(
    r"(?P<now>now|presently|currently|at present)? ?(?P<then>was|were|ex|formerly|previously"
    r"|prev\.?|(?:wrongly |incorrectly )?(?:charted|shown|listed) as)?[ :-]{1,3}"
    r"(?:(?:charted|shown|listed) )?(?:as )?(?:(?:the|an?) )?(?P<value>.+)",
    re.IGNORECASE,
)
"""A bracket or clause that opens with another time: `(now Q.R)`, `(was Q.R)`, `, ex No 2`."""
_NOW = re.compile(r"(?:[a-z]+ ){1,3}now (?P<value>.+)", re.IGNORECASE)
_OTHER_LIGHT = Rare(
    r"\b(?:before|amended|changed|altered|corrected|old|existing|present|former|on (?:the )?chart"
    r"|charted|(?:shown|listed) (?:as|on)|not|instead|was|were|previous(?:ly)?|original(?:ly)?"
    r"|erroneous(?:ly)?|wrong(?:ly)?)\b",
    "altered amended before chart corrected erroneous existing former instead "
    "listed not old on original present shown was were wrong",
    re.IGNORECASE,
)
"""Words beside a second light that say it is no second one."""
_AS = re.compile(
    r"(?P<before>[^,;()]*?)(?<!well)(?<!such)(?<!far),? (?:now |henceforth |hereafter )?as "
    r"(?!well|such|far|shown|charted|above|below|follows|per\b|in\b|on\b|for\b|if\b)"
    r"(?:an? |the )?(?P<value>[^,;()]+)",
    re.IGNORECASE,
)
_LIE_THERE = frozenset({"WRECKS", "UWTROC", "OBSTRN", "SBDARE", "SOUNDG", "PILPNT", "LNDARE"})
"""Classes of what is one thing or another, and never one as the other: `rock as wreck`."""
_VALUES = frozenset(
    "kind light light_words sectors sound racon ais depth measure number numbered category colour"
    " shape topmark lit".split()
)


def other_states(
    context: Context, item: Item, words: Stretch, verb: Verb, feature: Feature
) -> Iterator[Fault]:
    """The first words of an item that tell another state of its feature."""
    text = unquoted(words.text)
    if verb == "amend" or (feature.legend is not None and text == words.text):
        # The words of the chart are not told from those of the command.
        return
    span = _state(text, verb, is_twice_lit=bool(feature.more_lights))
    if span is None and verb == "insert":
        span = _shown_as(text, is_shown=(item.verb or "").lower() == "show")
    if span is not None:
        yield within(context, _CODE, words, span)


def clauses(text: str) -> Iterator[tuple[str, tuple[int, int]]]:
    """The stretches between commas and brackets, but for the first, and where they stand."""
    for found in CLAUSE.finditer(text):
        words = found[0].strip()
        if found.start() and words:
            start = found.start() + found[0].index(words)
            yield words, (start, start + len(words))


@lru_cache(maxsize=4096)
def _state(text: str, verb: Verb, *, is_twice_lit: bool) -> tuple[int, int] | None:
    """Where a bracket or a clause tells of another time."""
    brackets = [(found["words"].strip(), found.span("words")) for found in BRACKET.finditer(text)]
    for words, span in (*clauses(text), *brackets):
        state = _STATE.fullmatch(words)
        is_timed = state is not None and (state["then"] or (state["now"] and verb != "insert"))
        if state is not None and is_timed and has_value(state["value"]):
            return span
        now = _NOW.fullmatch(words) if verb in ("delete", "move") else None
        if now is not None and has_value(now["value"]):
            return span
        if is_twice_lit and _denies_light(words):
            return span
    return None


def _denies_light(words: str) -> bool:
    """Whether words beside a light say that it is not that of the thing: `amended from Q.R`."""
    found = _OTHER_LIGHT.search(words)
    if found is None:
        return False
    sides = words[: found.start()], words[found.end() :]
    return any("light" in value_property(one.strip(" :")) for one in sides)


def _shown_as(text: str, *, is_shown: bool) -> tuple[int, int] | None:
    """Where an insertion tells that one thing is to be shown as another: `rock as wreck`."""
    found = _AS.match(text)
    if found is None:
        return None
    if is_shown:
        return found.span("value") if has_value(found["value"]) else None
    if not (has_kind(found["before"]) and leads_feature(found["value"])):
        return None
    one, other = (read_feature(found[name]).feature.s57[:1] for name in ("before", "value"))
    lie_there = bool(one and other) and _LIE_THERE.issuperset([*one, *other])
    return found.span("value") if lie_there and one != other else None


def has_value(words: str) -> bool:
    """Whether words name a thing, or a value of one that a chart shows."""
    return has_kind(words) or not _VALUES.isdisjoint(value_property(words))
