"""Lists of things with what was done to each, and where, on the line below it.

    1   Quill Head light                    2   Marram light-buoy
        altered     P                           moved from        P
        formerly    Fl.10s22m15M                to                Q
        now         Fl(3)15s22m18M              light unchanged   Fl.R.2.5s

The verb is put before its thing, and the place behind what is told of it; the records are read
from the text in this order, and their spans led back.  There the verb and the keys are read as
the words of a command, `Amend`, `from`, `to`.  A list with an entry that is written otherwise, or
with a key that its verb cannot have, stays as it is.
"""

from __future__ import annotations

import re
from bisect import bisect_left
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from noticeparse.layout.copied.page_columns import ReadingOrder
from noticeparse.readers.verbs import canonical_verb
from noticeparse.text import RepairedText

_THING = re.compile(
    r"(?P<front>[ \t]{0,12}\(?(?P<number>[0-9]{1,3})[.)]?[ \t]{1,8})"
    r"(?P<name>[A-Za-z][^\n:;]{2,80})"
)
_DONE = re.compile(
    r"(?P<indent>[ \t]{1,40})(?P<verb>[A-Za-z]{4,15})(?P<place>(?: (?:from|at|in))?:?[ \t]{1,40}"
    r"[0-9][^\n]{6,60}[EW](?:\([^\n()]{1,20}\))?[.,;]?[ \t]{0,20})"
)
_KEYED = re.compile(
    r"(?P<indent>[ \t]{1,40})(?P<key>formerly|previously|now|to|unlit"
    r"|(?:(?:light|character|characteristics?) )?unchanged)(?P<sign>:?)"
    r"(?:(?P<gap>[ \t]{1,40})(?P<value>[^\n]{1,120}))?"
)
_PLACE = re.compile(r"[0-9]['’′\"]?(?:[.,][0-9]{1,4})?['’′\"]? ?[NSEW](?![A-Za-z])")
_LIT = re.compile(r"\b(?:lit|lights?|lighted)\b", re.IGNORECASE)
"""Of a thing with a light, `discontinued` and `unlit` may say that it stays without."""
_AID = re.compile(r"\b(?:buoys?|beacons?|lights?|marks?|perch|pile|racon)\b", re.IGNORECASE)
"""What is replaced is said by `formerly`: a second word for it may be another."""
_LETTERS = r"(?:[^a-z\n]|(?<![a-z])[a-z](?![a-z])|\((?:vert|hor)\))"
_CHARACTER = re.compile(
    rf"[0-9]{{0,2}}(?:Dir|Al|L?Fl|F|Oc|Iso|V?Q|UQ|Mo)(?![a-z]){_LETTERS}{{0,80}}"
    r"|(?:Horn|Siren|Bell|Whis|Whistle|Gong|Dia|Racon) ?\([0-9A-Z]{1,3}\)(?: ?[0-9]{1,3}s)?"
    r"|(?:least )?depth [0-9]{1,3}(?:[.,][0-9])? ?m(?:etres)?"
)
"""What a thing has, and no second word for a thing."""
_FURTHER = re.compile(rf"{_LETTERS}{{1,120}}")
_NOUN = re.compile(r"(?<![\w-])[a-z][a-z-]{2,20}(?: [Nn]os?\.? ?[0-9]{1,3}[A-Z]?)?[ \t]{0,9}$")
"""`Quill light`, and not the name of a place alone, `Quill Bank`."""
_LAST_WORD = re.compile(r"(?<= )[A-Za-z]{3,15}$")
_MOST_LINES = 400
_LINES_OF_FOOT = 5
"""Lines behind a list in which its page may end, and the list go on."""
_PAST = re.compile(r"[a-z]{3,13}(?:ed|wn)")
_OLD, _NEW, _SAME, _TO, _BARE = "old", "new", "same", "to", "bare"
_ROLES = {"formerly": _OLD, "previously": _OLD, "now": _NEW, "to": _TO, "unlit": _BARE}
_COMMANDS = {
    "insert": "Insert", "delete": "Delete", "amend": "Amend", "move": "Move", "replace": "Replace",
}  # fmt: skip
_KEYS: dict[str, tuple[tuple[str, ...], ...]] = {
    "insert": ((_NEW,), ()),
    "delete": ((_OLD,), (_BARE,), ()),
    "amend": ((_OLD, _NEW),),
    "move": ((_TO,), (_TO, _SAME)),
    "replace": ((_OLD, _NEW),),
}
"""The keys that an entry of a verb may have, in their order."""
_WORDS = {
    ("insert", _NEW): ",", ("delete", _OLD): ",", ("amend", _OLD): "from", ("amend", _NEW): "to",
    ("replace", _NEW): "by", ("move", _TO): "to", ("move", _SAME): ",",
}  # fmt: skip
_ONE_PHRASE = ("insert", "delete", "move")
"""Verbs below which the value is of the phrase of the thing: `wreck, depth 5.2m`."""
_ANY = re.compile(r"\n[ \t]{1,40}[a-z]{3,13}(?:ed|wn)(?: (?:from|at|in))?:?[ \t]{1,40}[0-9]")


Words = tuple[int, str]
"""Where words stand in the text, and they themselves."""


class _Row(NamedTuple):
    """A line of the text: where it begins, and its words without the line end."""

    start: int
    words: str

    @property
    def indent(self) -> int:
        return len(self.words) - len(self.words.lstrip())


class _Told(NamedTuple):
    """A line with a key, what the key says, and the lines further in that go on with it."""

    row: _Row
    match: re.Match[str]
    role: str
    more: list[_Row]


class _Entry(NamedTuple):
    """A thing with what was done to it."""

    thing: _Row
    named: re.Match[str]
    line: _Row
    done: re.Match[str]
    verb: str
    told: list[_Told]
    length: int
    """How many lines it has."""


def in_order_of_commands(text: str) -> ReadingOrder | None:
    """The text with the verbs of such lists before their things; None without such lists."""
    if _ANY.search(text) is None:
        return None
    rows = list(_rows(text))
    pieces: list[Words] = []
    exchanged: list[tuple[int, str, str]] = []
    at = 0
    while at < len(rows):
        end = _end_of_list(rows, at)
        entries = _list_of(rows, at, end)
        for entry in entries:
            pieces += _in_order(entry)
            exchanged += _exchanged(entry)
        if not entries:
            pieces += [(row.start, row.words + "\n") for row in rows[at:end]]
        at = end
    if not exchanged:
        return None
    last, words = pieces[-1]
    if not text.endswith("\n") and len(text) < last + len(words):
        pieces[-1] = (last, words[:-1])
    return ReadingOrder(text, pieces, (), exchanged)


def as_commands(repaired: RepairedText, order: ReadingOrder | None) -> str:
    """The repaired text with the words of lists that are read as those of commands."""
    letters = list(repaired.text)
    for at, old, new in order.read_as if order else ():
        start = bisect_left(range(len(letters)), at, key=repaired.original)
        letters[start : start + len(old)] = new.ljust(len(old))
    return "".join(letters)


def _rows(text: str) -> Iterator[_Row]:
    start = 0
    for words in text.removesuffix("\n").split("\n"):
        yield _Row(start, words.removesuffix("\r"))
        start += len(words) + 1


def _end_of_list(rows: Sequence[_Row], at: int) -> int:
    """The row behind the list that begins at a row, or behind that row where none does.

    A list ends at a blank line, or at one as far out that is no thing.
    """
    is_thing = _THING.fullmatch(rows[at].words) is not None
    if not is_thing or at + 1 == len(rows) or not _DONE.fullmatch(rows[at + 1].words):
        return at + 1
    last = min(at + _MOST_LINES, len(rows))
    for index in range(at + 1, last):
        row = rows[index]
        if row.indent <= rows[at].indent and _THING.fullmatch(row.words) is None:
            return index
    return last


def _list_of(rows: Sequence[_Row], at: int, end: int) -> list[_Entry]:
    """The entries of a list; none where one is written otherwise, or a key stands behind it."""
    first, found = rows[at], list[_Entry]()
    if end == at + 1:
        return []
    for row in rows[end : end + _LINES_OF_FOOT]:
        if _THING.fullmatch(row.words):
            break
        if _KEYED.fullmatch(row.words):
            return []
    while at < end:
        entry = _entry(rows[at:end])
        if entry is None or entry.thing.indent != first.indent:
            return []
        if found and int(entry.named["number"]) != int(found[-1].named["number"]) + 1:
            return []
        found.append(entry)
        at += entry.length
    return found


def _entry(rows: Sequence[_Row]) -> _Entry | None:
    """The entry with which rows begin; None where any line of it is not known."""
    named = _THING.fullmatch(rows[0].words)
    done = _DONE.fullmatch(rows[1].words) if len(rows) > 1 else None
    if named is None or done is None or _PLACE.search(named["name"]):
        return None
    verb = canonical_verb(done["verb"]) if _PAST.fullmatch(done["verb"]) else None
    if verb not in _COMMANDS or len(done["verb"]) < len(_COMMANDS[verb]):
        return None
    told: list[_Told] = []
    length = 2
    for row in rows[2:]:
        if row.indent <= rows[0].indent:
            break
        match = _KEYED.fullmatch(row.words)
        if match is not None and row.indent == rows[1].indent:
            told.append(_Told(row, match, _ROLES.get(match["key"], _SAME), []))
        elif told and row.indent > rows[1].indent and told[-1].role not in (_BARE, _TO):
            told[-1].more.append(row)
        else:
            return None
        length += 1
    if tuple(one.role for one in told) not in _KEYS[verb] or not all(map(_is_whole, told)):
        return None
    if told and told[-1].role == _BARE and _LIT.search(named["name"]):
        return None
    if (_NOUN.search(named["name"]) is None) != (verb == "replace"):
        return None
    if verb in _ONE_PHRASE and not all(map(_is_character, told)):
        return None
    if verb == "replace" and not _replaces(named["name"], told):
        return None
    if verb == "move" and not done["place"].lstrip(" :").startswith("from"):
        return None
    return _Entry(rows[0], named, rows[1], done, verb, told, length)


def _replaces(name: str, told: Sequence[_Told]) -> bool:
    """Whether both values name aids, and the name none that may be another."""
    values = (one.match["value"] or "" for one in told)
    return _AID.search(name) is None and all(map(_AID.search, values))


def _is_character(told: _Told) -> bool:
    """Whether a key tells nothing but what its thing shows or sounds, or its place."""
    value = told.match["value"]
    is_known = value is None or told.role == _TO or _CHARACTER.fullmatch(value.strip(" \t."))
    return bool(is_known) and all(_FURTHER.fullmatch(row.words) for row in told.more)


def _is_whole(told: _Told) -> bool:
    """Whether a key has its value, which is a place behind `to` alone."""
    value = told.match["value"]
    if told.role == _BARE or value is None:
        return told.role == _BARE and value is None
    rest = [value, *(row.words for row in told.more)]
    return any(map(_PLACE.search, rest)) == (told.role == _TO)


def _in_order(entry: _Entry) -> Iterator[Words]:
    """The words of an entry in the order of a command: verb, thing, values, place."""
    thing, named, line, done = entry.thing, entry.named, entry.line, entry.done
    yield thing.start, named["front"]
    yield line.start + done.start("verb"), done["verb"]
    yield line.start + done.end("verb"), " "
    is_joined = entry.verb in _ONE_PHRASE and any(
        told.role in (_OLD, _NEW, _SAME) for told in entry.told
    )
    name = (thing.start + named.start("name"), named["name"] + ("" if is_joined else "\n"))
    rows = [row for told in entry.told for row in (told.row, *told.more) if told.role != _TO]
    if entry.verb == "replace":
        old = entry.told[0]
        yield old.row.start + old.match.start("value"), old.match["value"] + "\n"
        yield from ((row.start, row.words + "\n") for row in old.more)
        yield old.row.start, old.row.words[: old.match.start("value")]
        rows = [row for told in entry.told[1:] for row in (told.row, *told.more)]
    yield name
    yield from ((row.start, row.words + "\n") for row in rows)
    yield line.start, done["indent"]
    yield line.start + done.start("place"), done["place"] + "\n"
    yield from ((told.row.start, told.row.words + "\n") for told in entry.told if told.role == _TO)


def _exchanged(entry: _Entry) -> Iterator[tuple[int, str, str]]:
    """Where the verb and the keys of an entry stand, with what they are read as."""
    verb = entry.done["verb"]
    yield entry.line.start + entry.done.start("verb"), verb, _COMMANDS[entry.verb]
    last = _LAST_WORD.search(entry.named["name"].rstrip())
    for told in entry.told:
        value = told.match["value"] or ""
        if last and entry.verb == "insert" and value.lower().startswith(f"{last[0].lower()}("):
            # `Quill racon`, and `Racon(K)` below it, name one thing.
            yield entry.thing.start + entry.named.start("name") + last.start(), last[0], ""
        key = told.match["key"] + told.match["sign"]
        word = _WORDS.get((entry.verb, told.role), "")
        yield told.row.start + told.match.start("key"), key, word
