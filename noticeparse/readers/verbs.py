"""Verbs of the trade and the five actions they stand for."""

from __future__ import annotations

import re
from functools import lru_cache
from typing import Literal

Verb = Literal["insert", "amend", "replace", "move", "delete"]

_CHANGES: frozenset[Verb | None] = frozenset(("amend", "replace"))


def are_contrary(first: Verb | None, second: Verb | None) -> bool:
    """Whether two verbs command different things; a replacement is a change as well."""
    told = {first, second} - {None}
    return len(told) > 1 and not told <= _CHANGES


_STEMS: dict[str, Verb] = {
    **dict.fromkeys(
        (
            "insert",
            "inscribe",
            "add",
            "establish",
            "estab",
            "place",
            "put in",
            "put on",
            "mark in",
            "lay",
            "laid",
            "lay out",
            "laid out",
            "lay down",
            "laid down",
            "enter",
            "ins",
            "install",
            "chart",
            "exhibit",
            "erect",
            "found",
            "locate",
            "discover",
            "draw",
            "drawn",
            "drawn in",
            "addition",
            "insertion",
            "establishment",
            "installation",
            "introduction",
            "incorporation",
            "put",
            "incorporate",
            "include",
            "show",
            "plot",
            "built",
            "construct",
            "deploy",
            "commission",
            "write",
            "write in",
            "written in",
            "ink in",
            "inked in",
            "pencil in",
            "print",
            "introduce",
            "carry",
            "carry in",
            "bring in",
        ),
        "insert",
    ),
    **dict.fromkeys(
        "reestablish re-establish reinsert re-insert reinstate".split()
        + "relay re-lay relaid re-laid".split(),
        "insert",
    ),
    **dict.fromkeys(
        (
            "delete",
            "remove",
            "expunge",
            "cancel",
            "discontinue",
            "disestablish",
            "withdraw",
            "withdrawn",
            "erase",
            "efface",
            "demolish",
            "dismantle",
            "destroy",
            "strike",
            "strike out",
            "struck out",
            "struck off",
            "take out",
            "taken out",
            "taken up",
            "taken away",
            "taken down",
            "taken off",
            "take down",
            "take up",
            "take away",
            "take in",
            "taken in",
            "take off",
            "rub out",
            "rubbed out",
            "cut out",
            "strike off",
            "decommission",
            "recover",
            "clear",
            "pulled down",
            "lift",
            "gone",
            "eliminate",
            "suppress",
            "omit",
            "abolish",
            "obliterate",
            "cross out",
            "crossed out",
            "del",
            "rmv",
            "disc",
            "discont",
            "disestab",
            "removal",
            "deletion",
            "withdrawal",
            "discontinuance",
            "discontinuation",
            "disestablishment",
            "erasure",
            "expunction",
            "elimination",
        ),
        "delete",
    ),
    **dict.fromkeys(
        (
            "replace",
            "substitute",
            "exchange",
            "swap",
            "overwrite",
            "repl",
            "rpl",
            "subst",
            "sub",
            "replacement",
            "substitution",
        ),
        "replace",
    ),
    **dict.fromkeys(
        (
            "amend",
            "change",
            "alter",
            "correct",
            "modify",
            "adjust",
            "rectify",
            "update",
            "upgrade",
            "revise",
            "amd",
            "amnd",
            "chg",
            "rename",
            "renumber",
            "vary",
            "increase",
            "reduce",
            "reduced",
            "varied",
            "alteration",
            "amendment",
            "modification",
            "reduction",
            "read",
            "for",
        ),
        "amend",
    ),
    **dict.fromkeys(
        "move relocate reposition re-position re-site resite shift displace transfer mv mov shft"
        " reposn reloc relocation displacement".split(),
        "move",
    ),
}


_OF_THE_CHART: dict[str, Verb] = {
    "new on the chart": "insert", "new on this chart": "insert",
    "off the chart": "delete", "off this chart": "delete",
    "is to go in": "insert", "are to go in": "insert",
    "is to go on": "insert", "are to go on": "insert",
    "is to come out": "delete", "are to come out": "delete",
    "is to come off": "delete", "are to come off": "delete",
}  # fmt: skip

LIST_ENDINGS = (
    " on the chart", " from the chart", " in the chart", " on this chart", " as follows",
    " the chart", " from", " to",
)  # fmt: skip
"""What may stand behind the verb that heads a list."""


_ON_THE_CHARTS = re.compile(
    r"(?:(?:(?<=off)| (?:on|in|to|into|from)) (?:the|this|these|both|all|each|your) charts?"
    r"| in place| (?:(?:at|on|in|from|to) )?\(?(?:th(?:is|at|ese|ose)|the (?:same|said))"
    r" (?:places?|positions?))$"
)
_EITHER = re.compile(r"/| (?:and/or|or|and|-) |, ", re.IGNORECASE)
_NEGATED = re.compile(r"(?:^| )(?:not|never|no|neither|nor|cannot|dis|un)(?= |$)")
_AUXILIARIES = ("been ", " be ", " is ", " are ", "to ")
_AGENTS = ("we ", "i ", "the ", "this ", "our ")


_OF_MEASURES = ("increase in", "reduction in", "change in")
_NEW_NAME = ("renamed", "renumbered")


def tells_new_state(written: str) -> bool:
    """Whether a verb leads to what a feature becomes: `The light in P now shows Fl.R.5s`."""
    told = written.lower()
    return told.startswith(("now ", "hereafter ", "henceforth ")) or told.endswith(_NEW_NAME)


def is_told_by_agent(written: str) -> bool:
    """Whether a verb says who has done it: `We have laid`, `The harbour master has removed`."""
    told = written.lower()
    is_active = told.startswith(("has ", "have ")) and " been " not in f"{told} "
    return is_active or told.startswith(_AGENTS)


@lru_cache(maxsize=512)
def canonical_verb(written: str) -> Verb | None:
    """The action a written verb stands for, in any mood or tense; None for other words."""
    if _EITHER.search(written) is not None:
        # `insert/add` says one thing twice; `insert/delete` and `insert or delete` say neither.
        told = {canonical_verb(part) for part in _EITHER.split(written)} - {None}
        return told.pop() if len(told) == 1 else None
    if written in ("Am.", "AM."):
        return "amend"
    words = " ".join(written.lower().strip(" .:()[]<>{}").split()).removeprefix("also ")
    if _NEGATED.search(words):
        return None
    if words in _OF_THE_CHART:
        return _OF_THE_CHART[words]
    words = _ON_THE_CHARTS.sub("", words)
    for ending in (*LIST_ENDINGS, " of"):
        words = words.removesuffix(ending)
    if words.endswith(_OF_MEASURES):
        # `Increase in the range`; in `to be written in` the particle is the verb's own.
        words = words.removesuffix(" in")
    if tells_new_state(words):
        return "amend"
    if is_told_by_agent(words):
        # `We have taken up`: the particle belongs to the verb.
        last = words.split()
        ends = (" ".join(last[at:]) for at in (-2, -1))
        words = next((one for one in ends if _by_stem(one)), words)
    for candidate in (words, *(words.rpartition(one)[2] for one in _AUXILIARIES)):
        found = _by_stem(candidate) or _by_stem(candidate.rpartition(" ")[2])
        if found:
            return found
    return None


def _by_stem(word: str) -> Verb | None:
    for ending, stem_ending in (
        ("", ""), ("ed", ""), ("d", ""), ("s", ""), ("es", ""), ("ied", "y"), ("ted", "t"),
        ("red", ""), ("ing", ""), ("ing", "e"), ("ies", "y"),
    ):  # fmt: skip
        if ending and not word.endswith(ending):
            continue
        stem = (word[: -len(ending)] if ending else word) + stem_ending
        if stem in _STEMS:
            return _STEMS[stem]
    return None
