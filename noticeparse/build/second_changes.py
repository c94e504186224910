"""A second change in the words of an item, told in brackets or behind it.

`Delete rock P (insert wreck)`, `Delete buoy P, replaced by a light-buoy`, `Insert wreck P
(replaces rock)` and `Delete obstruction P; foul ground inserted` are two changes, of which the
record of one action holds one.  `Delete light-buoy P (buoy remains)` takes back a part of it.
What was done to the thing itself, `established 2019`, is no change.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import lru_cache

from noticeparse.build.extents import within
from noticeparse.build.other_states import BRACKET, clauses, has_value
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.rare import Rare
from noticeparse.readers.features import has_kind, leads_feature, read_feature
from noticeparse.readers.verbs import Verb, canonical_verb
from noticeparse.records.feature import Feature
from noticeparse.stretch import Stretch, unquoted
from noticeparse.vocabulary import kinds

_BEFORE = r"(?:(?:and|but|also|then|now|please|instead|is|are|to|be) ){0,3}"
_COMMAND = re.compile(
    rf"{_BEFORE}(?:insert|add|enter|delete|remove|expunge|erase|withdraw|replac|substitut|amend"
    r"|alter|chang|mov|relocat|shift|renam|renumber)(?:e|ing)? (?!of |only\b)(?=[a-z0-9\"])",
    re.IGNORECASE,
)
_PUT = re.compile(
    rf"{_BEFORE}(?:chart|show|place|plot|put|draw|print|mark|establish) (?P<thing>.+)",
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
_DONE = Rare(
    r"(?P<thing>[^,;()]*?) ?\b(?:(?:is|are|was|were|be|been|being|has|have|to|now|also) ){0,3}"
    r"(?P<done>inserted|added|established|erected|laid|installed|substituted|moved|shifted"
    r"|relocated|deleted|removed|expunged|withdrawn|discontinued|amended|altered|changed|replaced)"
    r"(?![a-z-])(?! (?:from|in) [0-9]{4})",
    "added altered amended changed deleted discontinued erected established "
    "expunged inserted laid moved relocated removed replaced shifted substituted "
    "withdrawn",
    re.IGNORECASE,
)
_INSTEAD = Rare(
    r"\b(?:(?:is|are|was|to be|being|now|in turn) )?(?:replac(?:es|ing|ed (?:by|with))"
    r"|substitut(?:es|ing|ed (?:by|with|for))|supersed(?:es|ing)|converted (?:in)?to|in favour of"
    r"|becom(?:es|ing))(?: (?:the|an?|former|old|existing|new))? (?P<other>[^,;()\[\]]+)",
    "becom converted favour replac substitut supersed",
    re.IGNORECASE,
)
_FOR_LIGHT = re.compile(
    r" (?:for|vice) (?P<other>(?:the )?(?:light )?(?:old |existing )?(?:V?Q|UQ|IQ|L?Fl|FFl|Oc|Iso"
    r"|Mo|F|Al|Dir)(?:[.(+][^,;\[\]]*|(?= |$)))"
)
"""`Insert Q.R for Fl.R.3s`: the one of two characters goes."""
_WHICH = Rare(
    r"\b(?:which|that) (?P<when>is|are|was|were|has been|have been|will be)"
    r"(?: (?:now|also|to be))* (?P<done>[a-z]+(?:ed|wn|laid))(?![a-z])",
    "that which",
    re.IGNORECASE,
)
_AMENDED = Rare(
    r"\b(?:amend|alter|chang|correct|increas|reduc)(?:ed|ing)\b[^,;()]{0,40}? to\b",
    "to",
    re.IGNORECASE,
)
_PARTS = frozenset({"TOPMAR", "LIGHTS", "FOGSIG", "RTPBCN", "RADSTA", "RETRFL", "RADRFL"})
"""Classes of what stands on a thing: an amendment may tell that it was removed."""
_ABOVE_WELLS = frozenset({"OFSPLF"})


def second_changes(
    context: Context, words: Stretch, verb: Verb, feature: Feature
) -> Iterator[Fault]:
    """The first second change that the words of an item tell."""
    text = unquoted(words.text)
    if feature.legend is not None and text == words.text:
        # The words of the chart are not told from those of the command.
        return
    found = _found(text, verb, is_mark=_is_mark(feature))
    if found is not None:
        code, span = found
        yield within(context, code, words, span)


@lru_cache(maxsize=4096)
def _found(text: str, verb: Verb, *, is_mark: bool) -> tuple[str, tuple[int, int]] | None:
    """The code of a second change, and where it stands."""
    for bracket in BRACKET.finditer(text):
        if (code := _in_bracket(bracket["words"].strip(), verb)) is not None:
            return code, bracket.span("words")
    if verb == "replace":
        return None
    for words, span in clauses(text):
        if _is_done(words, verb):
            return "verb-within-words", span
        if verb == "delete" and is_mark and _remains(words):
            # `Delete light P (beacon remains)`: the light alone is read, and goes.
            return "item-limited", span
    if verb == "amend":
        return None
    for other in _INSTEAD.finditer(text):
        if has_value(other["other"]):
            return "feature-instead", other.span()
    if (old := _FOR_LIGHT.search(text)) is not None:
        return "feature-instead", old.span("other")
    for told in _WHICH.finditer(text):
        is_past = told["when"].lower() in ("was", "were")
        if canonical_verb(told["done"]) not in (None, verb) and not (is_past and verb != "insert"):
            return "verb-within-words", told.span()
    amended = _AMENDED.search(text)
    return ("verb-within-words", amended.span()) if amended is not None else None


def _is_mark(feature: Feature) -> bool:
    """Whether a thing is more than the light on it, which may go alone."""
    known = kinds().get(feature.kind)
    return feature.s57[:1] != ["LIGHTS"] or (known is not None and bool(known.form))


def _in_bracket(inner: str, verb: Verb) -> str | None:
    """The code of a bracket that holds a command, or names what stays."""
    if _COMMAND.match(inner) or ((put := _PUT.match(inner)) and leads_feature(put["thing"])):
        return "verb-within-words"
    other = _INSTEAD.match(inner) if verb in ("amend", "replace") else None
    if other is not None and has_value(other["other"]):
        return "feature-instead"
    if verb not in ("delete", "replace", "move"):
        return None
    return "item-limited" if _KEEP.match(inner) else None


def _remains(clause: str) -> bool:
    """Whether a clause says that a part of what is deleted stays."""
    told = _REMAINS.fullmatch(clause)
    return told is not None and has_value(told["thing"])


def _is_done(clause: str, verb: Verb) -> bool:
    """Whether a clause says of another thing what was done with it: `rock inserted`."""
    told = _DONE.match(clause)
    if told is None or canonical_verb(told["done"]) in (None, verb):
        return False
    # `well-head, production platform removed` is what the chart calls it.
    spared = _PARTS if verb == "amend" else _ABOVE_WELLS if verb == "insert" else frozenset()
    return has_kind(told["thing"]) and spared.isdisjoint(read_feature(told["thing"]).feature.s57)
