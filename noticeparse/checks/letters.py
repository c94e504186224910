"""The letters and numbers of a list: an item may be missing where they do not run on."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import chain, groupby, pairwise

from noticeparse.checks.trouble import Placed, Trouble, actions_of, positions_of
from noticeparse.numbers import ROMAN
from noticeparse.records.notice import Notice
from noticeparse.spans import Span

_Labelled = tuple[str, Span, Placed]
"""A letter, where it stands, and the action that has it or a place with it."""
_LEAST = 3
"""Letters; two tell no order, unless they are the numbers of items."""
_LEFT_OUT = (("H", "J"), ("N", "P"))
"""Capitals around I and O, which lists leave out: common practice, no published source."""


def check_letters(notice: Notice) -> Iterator[Trouble]:
    """A letter that does not follow the one before it."""
    labelled = [one for placed in actions_of(notice) for one in _labels(placed)]
    known = {letter for letter, _, _ in labelled}
    # A letter of a list of places may belong to a place alone.
    known |= {
        one.label
        for placed in actions_of(notice)
        for one in positions_of(placed.action)
        if one.label is not None
    }
    sections = (list(group) for _, group in groupby(labelled, key=lambda one: one[2].section))
    for row in chain.from_iterable(map(_series, sections)):
        is_numbered = all(_is_numbered(one) for one in row)
        if len(row) < _LEAST and not is_numbered:
            continue
        for (before, _, _), (letter, span, placed) in pairwise(row):
            # A chart may take some of the items of a list, and another the rest.
            if not (_follows(letter, before) or _between(before, letter) <= known):
                values = {"letter": letter, "before": before}
                pointers = [placed.pointer]
                yield Trouble("letter-out-of-order", span, pointers, values, placed.chart)


def _is_numbered(one: _Labelled) -> bool:
    """Whether an item has a number of its own: `2)`, `30.1`."""
    letter, span, placed = one
    return span is placed.action.span and letter.replace(".", "").isdigit()


def _series(labelled: list[_Labelled]) -> list[list[_Labelled]]:
    """The labels of a section; apart where items and their places have each a series of their own.

    `(i) cable, joining: (a) P (b) Q` above `(ii) legend at: (c) R`.
    """
    own = [one for one in labelled if one[1] is one[2].action.span]
    of_places = [one for one in labelled if one[1] is not one[2].action.span]
    lettered = {one[2].pointer for one in own}
    has_both = any(one[2].pointer in lettered for one in of_places)
    return [own, of_places] if has_both else [labelled]


def _labels(placed: Placed) -> Iterator[_Labelled]:
    action = placed.action
    if action.label is not None:
        yield action.label, action.span, placed
    for position in positions_of(action):
        if position.label is not None and position.via == "stated":
            yield position.label, position.span, placed


def _follows(letter: str, before: str) -> bool:
    """Whether a letter may stand behind another: the next one, the same, or a list begun anew."""
    if letter.lower() in ("a", "i", "1") or letter == before or (before, letter) in _LEFT_OUT:
        return True
    first, second = _place(before), _place(letter)
    if not (first and second and _alike(letter, before)):
        return True
    return any((kind, at + 1) in second for kind, at in first)


def _between(before: str, letter: str) -> set[str]:
    """The numbers or small letters that should stand between two; itself where none can."""
    if before.isdigit() and letter.isdigit():
        between = {str(number) for number in range(int(before) + 1, int(letter))}
    elif len(before) == len(letter) == 1:
        between = {chr(code) for code in range(ord(before) + 1, ord(letter))}
    else:
        between = set()
    return between or {""}


def _place(letter: str) -> set[tuple[str, int]]:
    """The places that a letter may have in a list of letters, numbers or Roman numbers."""
    places = set()
    front, _, number = letter.rpartition(".")
    if number.isdigit():
        places.add((f"number {front}", int(number)))
    if len(letter) == 1 and letter.isalpha():
        places.add(("letter", ord(letter.lower())))
    if letter.lower() in ROMAN:
        places.add(("roman", ROMAN.index(letter.lower())))
    return places


def _alike(first: str, second: str) -> bool:
    """Whether both are of one kind: letters of one case, or numbers."""
    if first.replace(".", "").isdigit() and second.replace(".", "").isdigit():
        return first.rpartition(".")[0] == second.rpartition(".")[0]
    return (first.isdigit(), first.isupper(), len(first)) == (
        second.isdigit(), second.isupper(), len(second),
    )  # fmt: skip
