"""A second change in the words of an item, told in brackets or behind it.

`Delete rock P (insert wreck)`, `Delete buoy P, replaced by a light-buoy`, `Insert wreck P
(replaces rock)` and `Delete obstruction P; foul ground inserted` are two changes, of which the
record of one action holds one.  `Fl.R.4s (was Q.R)` tells two states of one thing, and only one of
them is that of the chart.  What was done to the thing itself, `established 2019`, is no change.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import lru_cache

from noticeparse.build.extents import within
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.readers.features import has_kind, value_property
from noticeparse.readers.verbs import Verb, canonical_verb
from noticeparse.records.feature import Feature
from noticeparse.stretch import QUOTED, Stretch, blanked

_CLAUSE = re.compile(r"[^()\[\],;:]+")
_BRACKET = re.compile(r"[(\[](?P<words>[^()\[\]]+)[)\]]")
_BEFORE = r"(?:(?:and|but|also|then|now|please|instead|is|are|to|be) ){0,3}"
_COMMAND = re.compile(
    rf"{_BEFORE}(?:insert|add|enter|delete|remove|expunge|erase|withdraw|replac|substitut|amend"
    r"|alter|chang|mov|relocat|shift|renam|renumber)(?:e|ing)? (?!of |only\b)(?=[a-z0-9\"])",
    re.IGNORECASE,
)
_KEEP = re.compile(
    rf"{_BEFORE}(?:leav|keep|retain|preserv)(?:e|ing)? (?!to |clear|away|out|the area)"
    r"(?=[a-z0-9\"])",
    re.IGNORECASE,
)
"""A command that opens a bracket: `(insert wreck)`, `(leave depth)`."""
_REMAINS = re.compile(
    r"(?P<thing>[^,;()]*?) (?:(?:will|shall|is|are|to be|to|being|still|now) ){0,2}"
    r"(?:remain(?:s|ing)?|stays?|left|kept|retained|unchanged|not affected)(?: in place)?",
    re.IGNORECASE,
)
_DONE = re.compile(
    r"(?P<thing>[^,;()]*?) ?\b(?:(?:is|are|was|were|be|been|being|has|have|to|now|also) ){0,3}"
    r"(?P<done>inserted|added|established|erected|laid|installed|substituted|moved|shifted"
    r"|relocated|deleted|removed|expunged|withdrawn|discontinued|amended|altered|changed|replaced)"
    r"(?![a-z-])(?! (?:from|in) [0-9]{4})",
    re.IGNORECASE,
)
_INSTEAD = re.compile(
    r"\b(?:(?:is|are|was|to be|being|now|in turn) )?(?:replac(?:es|ing|ed (?:by|with))"
    r"|substitut(?:es|ing|ed (?:by|with|for))|supersed(?:es|ing)|converted (?:in)?to"
    r"|becom(?:es|ing))(?: (?:the|an?|former|old|existing|new))? (?P<other>[^,;()\[\]]+)",
    re.IGNORECASE,
)
_WHICH = re.compile(
    r"\b(?:which|that) (?P<when>is|are|was|were|has been|have been|will be)"
    r"(?: (?:now|also|to be))* (?P<done>[a-z]+(?:ed|wn|laid))(?![a-z])",
    re.IGNORECASE,
)
_AMENDED = re.compile(
    r"\b(?:amended|altered|changed|increased|reduced|corrected)(?: from [^,;]{1,30})? to\b",
    re.IGNORECASE,
)
_STATE = re.compile(
    r"(?P<now>now|presently|currently|at present)? ?(?P<then>was|were|ex|formerly|previously"
    r"|prev\.?|(?:wrongly |incorrectly )?(?:charted|shown|listed) as)?[ :-]{1,3}"
    r"(?:(?:charted|shown|listed) )?(?:as )?(?:(?:the|an?) )?(?P<value>.+)",
    re.IGNORECASE,
)
"""The state of another time: `(now Q.R)`, `(was Q.R)`, `(charted as Q.R)`, `, ex No 2`."""
_SHOWN_AS = re.compile(r"(?<=, )as (?:an? |the )?(?P<value>[^,;()]+)", re.IGNORECASE)
_VALUES = frozenset(
    "kind light light_words sectors sound racon ais depth measure number numbered category colour"
    " shape topmark lit".split()
)


def second_changes(
    context: Context, item: Item, words: Stretch, verb: Verb, feature: Feature
) -> Iterator[Fault]:
    """The first second change that the words of an item tell."""
    text = blanked(words.text, QUOTED)
    if feature.legend is not None and text == words.text:
        # The words of the chart are not told from those of the command.
        return
    found = _found(text, verb)
    if found is None and verb == "insert" and (item.verb or "").lower() == "show":
        # `Show wreck P as rock`: what stands there is to be shown otherwise.
        shown = _SHOWN_AS.search(text)
        if shown is not None and _has_value(shown["value"]):
            found = "feature-states-several", shown.span()
    if found is not None:
        code, span = found
        yield within(context, code, words, span)


@lru_cache(maxsize=4096)
def _found(text: str, verb: Verb) -> tuple[str, tuple[int, int]] | None:
    """The code of a second change, and where it stands."""
    for bracket in _BRACKET.finditer(text):
        if (code := _in_bracket(bracket["words"].strip(), verb)) is not None:
            return code, bracket.span("words")
    if verb not in ("insert", "delete", "move"):
        return None
    for other in _INSTEAD.finditer(text):
        if _has_value(other["other"]):
            return "feature-instead", other.span()
    for told in _WHICH.finditer(text):
        is_past = told["when"].lower() in ("was", "were")
        if canonical_verb(told["done"]) not in (None, verb) and not (is_past and verb != "insert"):
            return "verb-within-words", told.span()
    for clause in _CLAUSE.finditer(text):
        words = clause[0].strip()
        start = clause.start() + clause[0].index(words)
        if clause.start() and _is_done(words, verb):
            return "verb-within-words", (start, start + len(words))
        if clause.start() and _is_other_state(words, verb):
            return "feature-states-several", (start, start + len(words))
    amended = _AMENDED.search(text)
    return ("verb-within-words", amended.span()) if amended is not None else None


def _in_bracket(inner: str, verb: Verb) -> str | None:
    """The code of a bracket that tells a second change, or another state."""
    if _COMMAND.match(inner):
        return "verb-within-words"
    is_taken = verb in ("delete", "replace", "move")
    if is_taken and _KEEP.match(inner):
        return "item-limited"
    remains = _REMAINS.fullmatch(inner) if is_taken else None
    if remains is not None and _has_value(remains["thing"]):
        return "item-limited"
    return "feature-states-several" if _is_other_state(inner, verb) else None


def _is_other_state(words: str, verb: Verb) -> bool:
    """Whether words tell a value of the thing at another time than that of the command.

    `Amend light (now Fl.5s) to Fl.10s` and `Insert wreck (now dangerous)` tell what they should.
    """
    state = _STATE.fullmatch(words)
    if state is None or not (state["now"] or state["then"]) or not _has_value(state["value"]):
        return False
    return verb != "amend" and (verb != "insert" or bool(state["then"]))


def _is_done(clause: str, verb: Verb) -> bool:
    """Whether a clause says of another thing what was done with it: `rock inserted`."""
    told = _DONE.match(clause)
    if told is None or canonical_verb(told["done"]) in (None, verb):
        return False
    return has_kind(told["thing"])


def _has_value(words: str) -> bool:
    return has_kind(words) or not _VALUES.isdisjoint(value_property(words))
