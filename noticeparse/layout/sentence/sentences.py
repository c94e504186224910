"""The sentences of a paragraph, and the statements in one that tells of two features."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence

from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, words_of
from noticeparse.layout.sentence.line_leads import is_key
from noticeparse.readers.features import leads_feature
from noticeparse.readers.verbs import canonical_verb

_JOINTS = ("and ", "and\n", "while ", "whilst ", "but ")
"""What may stand between two statements in one sentence."""
_STAYS = (
    "remains", "remain", "stays", "stay", "remains unchanged", "remain unchanged",
    "is unchanged", "are unchanged", "is not affected", "is unaffected", "are unaffected",
    "remains charted", "remains in place", "is still there",
)  # fmt: skip
_SHORT_FORMS = frozenset("no nos approx st capt fl oc iso pos".split())
"""Words behind which a full stop ends no sentence."""
_TELLS = re.compile(r"\b(?:is|are|was|were|remains?|has|have|had)\b")


def statements(text: str, elements: Sequence[Element]) -> Iterator[list[Element]]:
    """Sentences, those that tell of two features parted: `… removed and a beacon has been …`."""
    for sentence in sentences(text, elements):
        yield from statements_within(text, sentence)


def statements_within(text: str, sentence: Sequence[Element]) -> Iterator[list[Element]]:
    """The statements of one sentence."""
    statement: list[Element] = []
    last_told = max((i for i, e in enumerate(sentence) if e.kind == "passive"), default=-1)
    for index, element in enumerate(sentence):
        told = last_told >= 0 and any(e.kind == "passive" for e in statement)
        more = index <= last_told
        cut = _next_subject(text, element) if told and more else None
        if told and not more and _is_kept(text, sentence, index):
            cut = element.end
        if more and not told and _opens_statement(text, statement, sentence, index):
            cut = element.end
        if told and not more and (end := _participle(text, element)) is not None:
            start = _next_subject(text, element) or element.start
            statement.append(element._replace(end=start))
            yield statement
            of_it = element._replace(start=start, end=end)
            statement = [of_it, element._replace(kind="passive", start=end + 1)]
            continue
        if cut is None:
            statement.append(element)
            continue
        if cut > element.start:
            statement.append(element._replace(end=cut))
        yield statement
        statement = [element._replace(start=cut)] if cut < element.end else []
    if statement:
        yield statement


def _participle(text: str, element: Element) -> int | None:
    """Where the subject of a second change ends whose auxiliary is that of the first.

    `… is established and the light discontinued`.
    """
    if _next_subject(text, element) is None or element.kind != "words":
        return None
    words = text[element.start : element.end].rstrip(" .")
    before, _, last = words.rpartition(" ")
    is_told = last.endswith(("ed", "laid", "drawn")) and canonical_verb(last) is not None
    return element.start + len(before) if is_told and before else None


def _is_kept(text: str, sentence: Sequence[Element], index: int) -> bool:
    """Whether a semicolon is followed by a thing of which no change is told: `; the rock … stays`.

    What is told of it has its verb behind it, and is not that of the thing before.
    """
    subject = _behind_semicolon(sentence, index)
    if subject is None or not leads_feature(without_article(text[subject.start : subject.end])):
        return False
    said = words_of(text, (e for e in sentence[index + 1 :] if e.kind == "words")).rstrip(" .")
    return said.endswith(_STAYS)


def _opens_statement(
    text: str, statement: Sequence[Element], sentence: Sequence[Element], index: int
) -> bool:
    """Whether a semicolon ends a clause with a verb of its own: `The pier is kept; a light …`.

    In `a wreck in P; a rock in Q have been inserted` it parts what one verb is told of.
    """
    subject = _behind_semicolon(sentence, index)
    if subject is None or not leads_feature(text[subject.start : subject.end]):
        return False
    said = words_of(text, (e for e in statement if e.kind == "words"))
    return _TELLS.search(said) is not None


def _behind_semicolon(sentence: Sequence[Element], index: int) -> Element | None:
    """The words behind an element, if that is a semicolon and words follow it."""
    following = sentence[index + 1 : index + 2]
    is_led = sentence[index].kind == "semicolon" and following and following[0].kind == "words"
    return following[0] if is_led else None


def _next_subject(text: str, element: Element) -> int | None:
    """Where another statement begins within a sentence: behind a semicolon or `and a beacon`."""
    if element.kind == "semicolon":
        return element.end
    if element.kind != "words":
        return None
    words = text[element.start : element.end].lstrip(" ,\n")
    joint = next((one for one in _JOINTS if words.startswith(one)), None)
    if joint is None:
        return None
    words = words.removeprefix(joint).lstrip()
    if words.rstrip() == "there":
        # `… is deleted, and there is inserted a wreck`
        return element.end - len(words)
    return element.end - len(words) if leads_feature(without_article(words)) else None


def without_article(words: str) -> str:
    """Words without the article that opens them."""
    return words.removeprefix("the ").removeprefix("a ").removeprefix("an ")


def sentences(text: str, elements: Sequence[Element]) -> Iterator[list[Element]]:
    """The sentences of a paragraph, parted at full stops."""
    sentence: list[Element] = []
    for element in elements:
        if element.kind != "words":
            sentence.append(element)
            continue
        if sentence and _ends_sentence(text, sentence, element):
            yield sentence
            sentence = []
        at = element.start
        for stop in _stops(text, element):
            if stop > at:
                sentence.append(element._replace(start=at, end=stop))
            at = stop
            while at < element.end and text[at] in " \n":
                at += 1
            if sentence:
                yield sentence
            sentence = []
        if at < element.end:
            sentence.append(element._replace(start=at))
    if sentence:
        yield sentence


def _ends_sentence(text: str, sentence: Sequence[Element], following: Element) -> bool:
    """Whether the full stop behind a hemisphere letter ends the sentence: `W.` and a capital."""
    # The comma between the halves of a position that a line end has parted stands behind it.
    solid = (e for e in reversed(sentence) if text[e.start : e.end].strip(" ,"))
    last = next(solid, sentence[-1])
    return last.kind == "point" and text[last.end - 1] == "." and text[following.start].isupper()


def _stops(text: str, element: Element) -> Iterator[int]:
    """Offsets behind the full stops that end a sentence within these words."""
    at = text.find(".", element.start, element.end)
    while at >= 0:
        rest = text[at + 1 : at + 40].lstrip(" \n")
        spaced = at + 1 >= element.end or text[at + 1] in " \n"
        word = text[element.start : at].rpartition(" ")[2]
        ends = not rest or rest[0].isupper() or rest[0] == "\n"
        if spaced and ends and word.lower() not in _SHORT_FORMS:
            yield at + 1
        at = text.find(".", at + 1, element.end)


def with_places_behind(text: str, told: Iterable[list[Element]]) -> Iterator[list[Element]]:
    """Sentences; places alone go with the change above: `The rock is deleted. Position. - P`."""
    waiting: list[Element] = []
    for sentence in told:
        if waiting and _only_places(text, sentence):
            waiting += sentence
            continue
        if waiting:
            yield waiting
            waiting = []
        placed = any(e.kind in PLACES for e in sentence)
        if not placed and any(e.kind == "passive" for e in sentence):
            waiting = sentence
        else:
            yield sentence
    if waiting:
        yield waiting


def _only_places(text: str, sentence: Sequence[Element]) -> bool:
    """Whether a sentence gives places and nothing else, behind the key for them."""
    others = [e for e in sentence if e.kind not in PLACES and text[e.start : e.end].strip(" .,")]
    keys = all(e.kind == "bar" or is_key(text[e.start : e.end]) for e in others)
    return len(others) < len(sentence) and keys
