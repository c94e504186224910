"""Where the next clause of a sentence begins: `The light in P is amended to X, and a beacon is …`.

Of several verbs in one sentence each has its own subject, which stands somewhere between the verb
before it and itself.  The number of the verb tells which of several things that is: behind `a
beacon is inserted in P and a pile in Q, and the rock in R` the verb `is deleted` is that of the
rock alone.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import NamedTuple

from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element
from noticeparse.readers.features import leads_feature

_JOINT = re.compile(
    r"(?:[,;]\s{1,80}(?:(?P<first>and|while|whilst|but)\s{1,80}(?:that\s{1,80})?)?"
    r"|(?:^|(?<=\s))(?P<second>and|while|whilst|but)\s{1,80}(?:that\s{1,80})?)"
    r"(?=(?:an?|the|another)\s)",
    re.IGNORECASE,
)
_ARTICLE = re.compile(
    r"(?:an? (?:further|second|third|additional)|an?|the|another) ", re.IGNORECASE
)
_QUOTED = re.compile(r"\"[^\"]{0,200}\"")
_OF_ANOTHER = re.compile(
    r"\b(?:which|who|whose|that|it|its|they|them|their|this|these|those)\b"
    r"|\b(?:and|but|then|also|there)\s{0,80}\Z",
    re.IGNORECASE,
)
"""Words by which the verb behind them may have another subject: that before, or one behind it."""
_LONGEST = 200
"""Characters of a thing by which it is told."""
_ONE = re.compile(r"(?:is|was|has)\b", re.IGNORECASE)
_MANY = re.compile(r"(?:are|were|have)\b", re.IGNORECASE)
_PLURAL = re.compile(r"[a-z]{2}s\b", re.IGNORECASE)


class Clauses(NamedTuple):
    """The clauses of a sentence, and whether it is open which verb some thing has."""

    parts: list[list[Element]]
    is_open: bool


class _Subject(NamedTuple):
    joint: int
    """Where the joint before it begins."""
    start: int
    is_bare: bool
    """Whether a comma alone is the joint."""
    is_known: bool
    """Whether it names a feature."""


def clauses(text: str, sentence: Sequence[Element]) -> Clauses:
    """The sentence, parted before the subject of each further verb where that is told."""
    verbs = [index for index, one in enumerate(sentence) if one.kind == "passive"]
    parts: list[list[Element]] = [[*sentence[: verbs[0] + 1 if verbs else None]]]
    is_open = False
    for first, second in pairwise(verbs):
        between = sentence[first + 1 : second]
        subject: _Subject | None = None
        if not any(one.kind == "semicolon" for one in between):
            subjects = list(_subjects(text, between))
            subject = _own(text, between, subjects, sentence[second])
            is_lost = subject is None and len(subjects) > 1
            is_open |= is_lost and not _leads_on(text, between, ("there",))
        if subject is None:
            parts[-1] += between
        else:
            before, behind = _parted(between, subject)
            parts[-1] += before
            parts.append(behind)
        parts[-1].append(sentence[second])
    parts[-1] += sentence[verbs[-1] + 1 :] if verbs else []
    return Clauses(parts, is_open)


def _own(
    text: str, between: Sequence[Element], subjects: Sequence[_Subject], verb: Element
) -> _Subject | None:
    """Which of the things between two verbs begins the subject of the second."""
    if not subjects or not subjects[-1].is_known:
        return None
    last = subjects[-1]
    told = text[verb.start : verb.end]
    said = _QUOTED.sub("", text[last.start : verb.start])
    if _OF_ANOTHER.search(said) or (last.is_bare and said.rstrip().endswith(",")):
        return None
    if len(subjects) == 1 or _ONE.match(told):
        return last
    own = [e for e in between if e.end > last.start]
    is_many = sum(e.kind in PLACES for e in own) > 1 or any(
        _PLURAL.search(text, max(e.start, last.start), e.end) for e in own if e.kind == "words"
    )
    if _MANY.match(told) is None or is_many or len(subjects) != len(("one", "other")):
        return None
    return subjects[0] if subjects[0].is_known else None


def _leads_on(text: str, between: Sequence[Element], words: tuple[str, ...]) -> bool:
    return bool(between) and text[between[0].start : between[-1].end].lower().endswith(words)


def _subjects(text: str, between: Sequence[Element]) -> Iterator[_Subject]:
    """The things that a joint leads to, in order."""
    for start, end in _runs(between):
        said = _QUOTED.sub(lambda one: '"' * len(one[0]), text[start:end])
        for joint in _JOINT.finditer(said):
            words = " ".join(said[joint.end() : joint.end() + _LONGEST].split())
            is_known = leads_feature(_ARTICLE.sub("", words, count=1))
            is_bare = joint["first"] is None and joint["second"] is None
            yield _Subject(start + joint.start(), start + joint.end(), is_bare, is_known)


def _runs(elements: Sequence[Element]) -> Iterator[tuple[int, int]]:
    """The stretches of words, also of those that a line end parts."""
    start: int | None = None
    end = 0
    for element in elements:
        if element.kind == "words":
            start, end = element.start if start is None else start, element.end
        elif start is not None:
            yield start, end
            start = None
    if start is not None:
        yield start, end


def _parted(elements: Sequence[Element], subject: _Subject) -> tuple[list[Element], list[Element]]:
    """The elements before a joint, with it as a mark, and those from the subject behind it on."""
    before: list[Element] = []
    behind: list[Element] = []
    for one in elements:
        if one.start < subject.joint:
            before.append(one._replace(end=min(one.end, subject.joint)))
        if one.start < subject.start and one.end > subject.joint:
            start, end = max(one.start, subject.joint), min(one.end, subject.start)
            before.append(one._replace(kind="bar", start=start, end=end))
        if one.end > subject.start:
            behind.append(one._replace(start=max(one.start, subject.start)))
    return before, behind
