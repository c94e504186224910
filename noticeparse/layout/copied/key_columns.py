"""Keys whose values stand in a column, each with a colon behind it as `Key: value` has.

    OBJECT ...... wreck          Object  | wreck
    OBJECT        wreck          Object  : wreck
    OBJECT ...: wreck      POSITION .: P

Leaders, bars, blanks, or a colon in a column of its own part key and value.  They are read as a
colon only where the text shows it several times, with the keys of a record among them.  The key of
the notice before stays as it is where it can: the record quotes what stands there.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Sequence

from noticeparse.layout.column.columns import key_role
from noticeparse.layout.copied.blanking import blanked
from noticeparse.layout.copied.keys_side_by_side import head_role, with_keys_below_each_other
from noticeparse.layout.drafts import Piece
from noticeparse.readers.heads import head_kinds
from noticeparse.readers.verbs import canonical_verb

_FEWEST = 6
"""Lines with a key before a text is taken for one of keys."""
_NEARLY_ALL = 0.9
_PLACED = frozenset({"position", "latitude", "from", "joining", "bounded"})
_BESIDE = frozenset({"chart", "charts", "datum", "horizontal datum"})
"""Keys that heads of charts are read with."""


def with_colons_behind_keys(text: str) -> tuple[str, list[Piece]]:
    """The text with such a colon behind each key, and where it differs from what was given."""
    marks: list[Piece] = []
    for step in (with_keys_below_each_other, _colons_apart, _leaders, _leaders_of_heads, _blanks):
        text, found = step(text)
        marks += found
    return text, marks


_COLON_APART = re.compile(
    r"^([ \t]{0,20}[A-Za-z][A-Za-z /-]{0,26}[A-Za-z.])( {2,20}):(?=[ \t]+[^\s:])", re.MULTILINE
)


def _colons_apart(text: str) -> tuple[str, list[Piece]]:
    """`Chart       : 3104`: the colon stands with its key; nothing is left out by that."""
    if "  :" not in text or len(_COLON_APART.findall(text)) < _FEWEST:
        return text, []
    return _COLON_APART.sub(
        lambda m: m.group() if _role(m[1]) == "previous" else f"{m[1]}:{m[2]}", text
    ), []


_SIGNS = ("...", " ..", "|")
_LED_KEY = re.compile(
    r"^([ \t]*(?:[\[(]?[0-9]{1,2}[\]).][ \t]{1,8})?)([A-Za-z][A-Za-z ,./-]{1,28}?)([ \t]*)"
    r"(\.{3,60}:?| \.\.|(?<=[ \t])\.{1,2} ?:|\|)(?=[ \t]+[^\s|][^|\n]*$)",
    re.MULTILINE,
)


def _leaders(text: str) -> tuple[str, list[Piece]]:
    """`Object ...... wreck`, `Object | wreck`: what stands before the leader is a key."""
    if not any(sign in text for sign in _SIGNS):
        return text, []
    roles = [_role(match[2]) for match in _LED_KEY.finditer(text)]
    if "feature" not in roles or not _are_of_records(roles):
        return text, []
    return blanked(
        text,
        _LED_KEY,
        lambda m: m.group() if _is_read(m) else f"{m[1]}{m[2]}:".ljust(len(m.group())),
    )


def _is_read(key: re.Match[str]) -> bool:
    """Whether a head names the notice before behind a key with its leader: `Last ...: 2150/26`."""
    return _role(key[2]) == "previous" and "PREVIOUS" in head_kinds(f"{key.group()} 1/26")


_LED_HEAD = re.compile(
    r"^([ \t]*)((?:charts?|notice)(?: no\.?| number)?)[ \t]*\.{3,60}:?(?=[ \t]+[A-Z]{0,3} ?[0-9])",
    re.MULTILINE | re.IGNORECASE,
)


def _leaders_of_heads(text: str) -> tuple[str, list[Piece]]:
    """`Chart ...... 41`, `Notice ...... 12/26`: the leaders behind the keys of heads.

    Beside these the other keys of the head have theirs: `Datum ...... WGS 84`.
    """
    if "..." not in text or len(_LED_HEAD.findall(text)) < 2:
        return text, []
    text, marks = blanked(text, _LED_HEAD, lambda m: f"{m[1]}{m[2]}:".ljust(len(m.group())))
    text, more = blanked(
        text,
        _LED_KEY,
        lambda m: m.group() if _stays(m) else f"{m[1]}{m[2]}:".ljust(len(m.group())),
    )
    return text, marks + more


def _stays(key: re.Match[str]) -> bool:
    """Whether a leader follows no key of a head, or one that is read with it."""
    return ".." not in key[4] or head_role(key[2]) is None or _is_read(key)


_PADDED_KEY = re.compile(
    r"^( {0,12})([A-Za-z][A-Za-z]{1,14}(?: [A-Za-z]{1,12})?)( {2,14})(?=(\S{1,20}))", re.MULTILINE
)


def _blanks(text: str) -> tuple[str, list[Piece]]:
    """`OBJECT  wreck` above `POSN    P`: keys that blanks alone part from values in one column.

    Those of a head and those of its records may be indented differently; each have their column.
    """
    found = list(_PADDED_KEY.finditer(text))
    if len(found) < 2 * _FEWEST:
        return text, []
    counts = Counter((len(match[1]), len(match.group())) for match in found)
    columns: dict[int, int] = {}
    for (indent, column), _ in counts.most_common():
        columns.setdefault(indent, column)
    in_column = [match for match in found if columns[len(match[1])] == len(match.group())]
    roles = [_role(match[2]) for match in in_column]
    verbs = [
        match for match in in_column if _role(match[2]) == "verb" and canonical_verb(match[4])
    ]
    is_record = "feature" in roles and len(verbs) > 1
    if not is_record or not _are_of_records(roles) or len(roles) < _NEARLY_ALL * len(found):
        return text, []
    starts = {match.start() for match in in_column if not _needs_no_colon(match[2])}
    return blanked(
        text,
        _PADDED_KEY,
        lambda m: f"{m[1]}{m[2]}:".ljust(len(m.group())) if m.start() in starts else m.group(),
    )


def _needs_no_colon(key: str) -> bool:
    """Whether a head names the notice before behind a key as it stands: `LAST     2150/26`."""
    return _role(key) == "previous" and "PREVIOUS" in head_kinds(f"{key} 1/26")


def _role(key: str) -> str | None:
    """The role of a key of a record; that of heads of charts is `chart`."""
    plain = " ".join(key.lower().split())
    return "chart" if plain in _BESIDE else key_role(plain, has_places=True)


def _are_of_records(roles: Sequence[str | None]) -> bool:
    """Whether nearly all keys are known, and they tell where something is."""
    known = sum(role is not None for role in roles)
    is_enough = known >= _FEWEST and known >= _NEARLY_ALL * len(roles)
    return is_enough and not _PLACED.isdisjoint(roles)
