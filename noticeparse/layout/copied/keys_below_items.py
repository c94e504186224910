"""Keys below the items of a list, as on a page of the web: `• Wreck` and below it `Position: P`.

    Insert                            Move
    • Wreck, least depth 14.8 m       • Port-hand light-buoy, Q.R
      Position: P                       From: P
    Replace                             To: Q
    • Old: West cardinal buoy         Amend
      New: West cardinal light-buoy   • Light Oc.R.5s6m4M
      Position: P                       New range: 3M
                                        Position: P

Under a verb alone on its line each thing has its keys further in.  They become blank, or the word
that joins them in a sentence (`from`, `to`, `with`), so that no offset moves.  A list with a key
that is not known, or with a thing that no place stands below, stays as it is.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from noticeparse.layout.drafts import Piece
from noticeparse.readers.verbs import canonical_verb

_HEADING = re.compile(r"^[ \t]{0,12}(?P<verb>[A-Za-z]{2,12})(?: the following)? ?:?[ \t]*$")
_MARK = re.compile(r"(?:[-*·•–>]|\(?(?:[0-9]{1,2}|[a-z])[.)])[ \t]{1,4}")
_KEY = re.compile(r"(?P<key>[A-Za-z][A-Za-z.]{0,24}(?: [A-Za-z0-9]{1,24}){0,4}) ?:(?=[ \t]|$)")
_PLACE = re.compile(r"(?:position|pos\.?|posn\.?|place|location|at)(?: (?:[a-z]|[0-9]{1,2}))?")
_VALUE = re.compile(
    r"new (?P<value>characteristic(?=s?)|character|range|height|period|colour|least depth|name)s?"
)
"""Values that no thing is called by: `depth to 5m` on a line of its own would be another item."""
_OF_THINGS = {
    "least depth": "least depth", "light": "", "character": "", "characteristic": "",
    "characteristics": "",
}  # fmt: skip
_WORDS = {
    "insert": _OF_THINGS,
    "delete": _OF_THINGS,
    "move": {
        "from": "from", "old position": "from", "present position": "from", "to": "to",
        "new position": "to",
    },
    "replace": {
        "old": "", "existing": "", "former": "", "was": "", "new": "with", "now": "with",
        "replaced by": "with",
    },
}  # fmt: skip
"""What keys of a verb become; those of its old thing stand in front of it."""
_DONE = {"move": ("from", "to"), "replace": ("with",)}
"""The words that each entry of a verb must have."""
_MOST_LINES = 200


class _Line(NamedTuple):
    """A line of a list: where it begins, how far in it is written, and its key."""

    start: int
    words: str
    indent: int
    is_marked: bool
    key: re.Match[str] | None

    @property
    def is_blank(self) -> bool:
        return not self.words.strip()


def with_keys_in_sentences(text: str) -> tuple[str, list[Piece]]:
    """The text with the keys of such lists blank or as words, and where it differs."""
    if ":" not in text:
        return text, []
    lines = list(_lines(text))
    letters, marks, at = list(text), [], 0
    while at < len(lines):
        verb = _verb(lines[at])
        at += 1
        if verb is None:
            continue
        entries = _entries(lines[at : at + _MOST_LINES])
        found = _exchanged(verb, entries)
        for start, old, new in found or ():
            letters[start : start + len(old)] = new
            marks += [(start + i, start + i + 1) for i, c in enumerate(old) if c != new[i]]
        at += sum(map(len, entries)) if found else 0
    return "".join(letters), marks


def _lines(text: str) -> Iterator[_Line]:
    start = 0
    for words in text.split("\n"):
        indent = len(words) - len(words.lstrip())
        mark = _MARK.match(words, indent)
        behind = mark.end() if mark is not None else indent
        yield _Line(start, words, indent, mark is not None, _KEY.match(words, behind))
        start += len(words) + 1


def _verb(line: _Line) -> str | None:
    """The verb that a line has, and nothing else."""
    found = _HEADING.match(line.words)
    return canonical_verb(found["verb"]) if found is not None else None


def _entries(lines: Sequence[_Line]) -> list[list[_Line]]:
    """The entries of a list: a thing, and the lines further in below it.

    They are all as far in as the first one; behind a blank line more of them need its mark.
    """
    found: list[list[_Line]] = []
    is_behind_blank = False
    for line in lines:
        if line.is_blank:
            is_behind_blank = True
            continue
        first = found[0][0] if found else line
        if line.indent > first.indent and not is_behind_blank:
            found[-1].append(line)
        elif line.indent == first.indent and (line.is_marked or not (found and is_behind_blank)):
            if _verb(line) is not None:
                break
            found.append([line])
        else:
            break
        is_behind_blank = False
    return found


def _exchanged(verb: str, entries: Sequence[Sequence[_Line]]) -> list[tuple[int, str, str]] | None:
    """Where each key of a list stands, with what it becomes; None where one is not known."""
    found: list[tuple[int, str, str]] = []
    for entry in entries:
        said: list[str] = []
        for at, line in enumerate(entry):
            if line.key is None:
                continue
            word = _word(verb, " ".join(line.key["key"].lower().split()))
            is_old = at == 0 and word == "" and verb == "replace"
            if word is None or (at == 0 and not is_old):
                if at == 0 and word is None:
                    continue  # `Legend: "Small craft"` is a thing
                return None
            old = line.key.group()
            found.append((line.start + line.key.start(), old, word.ljust(len(old))))
            said.append(word)
        if not _is_whole(verb, entry, said):
            return None
    return found


def _word(verb: str, key: str) -> str | None:
    """What a key becomes in a sentence of a verb; None where it is not known."""
    if _PLACE.fullmatch(key):
        return ""
    if verb == "amend" and (value := _VALUE.fullmatch(key)) is not None:
        return f"{value['value']} to"
    return _WORDS.get(verb, {}).get(key)


def _is_whole(verb: str, entry: Sequence[_Line], said: Sequence[str]) -> bool:
    """Whether an entry has its place, and each word of its verb once."""
    needed = _DONE.get(verb, ())
    placed = verb == "move" or any(
        one.key is not None and _PLACE.fullmatch(one.key["key"].lower()) for one in entry[1:]
    )
    words = [word for word in said if word in needed]
    return placed and sorted(words) == sorted(needed)
