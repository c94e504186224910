"""Notice numbers among words, and the notices that a clause names as cancelled.

Several may share a year (`39 and 40/26`), and two may stand for all between (`39/26 to 41/26`).
"""

from __future__ import annotations

import re
from functools import cache, lru_cache
from itertools import pairwise

from noticeparse import grammar
from noticeparse.readers.references import read_number
from noticeparse.records.reference import NoticeRef

_LONGEST_RANGE = 60
_JOINT = r"(?:, ?and |, ?| and |,? & | to | [-–] |\s)(?:no\.? )?"
_BARE = r"[0-9]{1,5}(?: ?\([TP]\))?"
_BEFORE = re.compile(rf"(?:(?<![0-9/]){_BARE}{_JOINT})+$", re.IGNORECASE)
_BEHIND = re.compile(rf"(?:{_JOINT}{_BARE}(?![0-9A-Za-z/°\'(]))+", re.IGNORECASE)
_EACH = re.compile(_BARE, re.IGNORECASE)
_RANGE = re.compile(r"\s*(?:to|[-–])\s*(?:no\.? )?", re.IGNORECASE)
_MARKED = re.compile(r"\b(temporary|preliminary)\b", re.IGNORECASE)
_SENT_BY_RADIO = re.compile(
    r"\b(?:navarea|(?:coastal|local|radio|navigational|sub-?area) (?:[a-z]{1,12} )?warnings?)\b",
    re.IGNORECASE,
)


@cache
def _scanner() -> grammar.Scanner:
    return grammar.scanner("numbers", "numbers")


@lru_cache(maxsize=2048)
def _found(text: str) -> tuple[tuple[int, int], ...]:
    scanned = _scanner().scan(text, 0, len(text))
    return tuple((start, end) for kind, start, end in scanned if kind != "OTHER")


def read_numbers(text: str) -> tuple[str, ...]:
    """All notice numbers within a stretch of words."""
    return tuple(text[start:end] for start, end in _found(text))


def number_text(text: str) -> str:
    """The notice number within the words around it."""
    parts = read_numbers(text)
    return parts[0] if parts else text


def read_cancelled(text: str, near: int | None) -> list[NoticeRef]:
    """The notices named as cancelled in a clause, those in between and those of a shared year."""
    named = _named(text, near)
    made: list[NoticeRef] = [ref for ref, _ in named[:1]]
    for (first, place), (last, following) in pairwise(named):
        if _RANGE.fullmatch(text[place[1] : following[0]]):
            if "/" not in text[slice(*place)] and first.status == "permanent":
                # `598 to 601(T)/26`: year and mark are those of both.
                made[-1] = first = first.model_copy(update={"status": last.status})
            made += _between(first, last)
        made.append(last)
    return made


def _named(text: str, near: int | None) -> list[tuple[NoticeRef, tuple[int, int]]]:
    """Each notice named and where its number stands; the mark in words holds for all."""
    marked = _MARKED.search(text)
    status = marked[1].lower() if marked else "permanent"
    status = "radio_warning" if _SENT_BY_RADIO.search(text) else status
    named: list[tuple[NoticeRef, tuple[int, int]]] = []
    last_end = 0
    places = _found(text)
    for start, end in places:
        ref = read_number(text[start:end], near)
        if ref is None:
            continue
        before = _BEFORE.search(text, last_end, start)
        for bare in _EACH.finditer(text, before.start(), start) if before else ():
            named.append((_sharing(bare.group(), ref.year), bare.span()))
        named.append((ref, (start, end)))
        last_end = end
    behind = _BEHIND.match(text, last_end) if named else None
    for bare in _EACH.finditer(text, last_end, behind.end()) if behind else ():
        # In the wording of another year: which year it has is not said.
        named.append((_sharing(bare.group(), None), bare.span()))
    return [
        (ref.model_copy(update={"status": status}) if ref.status == "permanent" else ref, place)
        for ref, place in named
    ]


def _sharing(figures: str, year: int | None) -> NoticeRef:
    status = "temporary" if "t" in figures.lower() else "permanent"
    status = "preliminary" if "p" in figures.lower() else status
    number = int("".join(char for char in figures if char.isdigit()))
    return NoticeRef.model_validate({"number": number, "year": year, "status": status})


def _between(first: NoticeRef, last: NoticeRef) -> list[NoticeRef]:
    same = first.year == last.year and first.status == last.status
    if not same or not 0 < last.number - first.number <= _LONGEST_RANGE:
        return []
    numbers = range(first.number + 1, last.number)
    return [last.model_copy(update={"number": number}) for number in numbers]
