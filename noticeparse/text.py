"""Repairs what copying did to the characters of a text, and remembers where each one stood.

In comes the text as given; out come the repaired text, which the grammars read, and a map that
leads every offset back to the original.  Each repair is a line of a table.  Compatibility
normalisation is never used: it would turn `8₆` into `86`.  What a word means is not decided here.
"""

from __future__ import annotations

import re
from bisect import bisect_right
from collections.abc import Iterator
from typing import NamedTuple

from noticeparse.patterns import compiled
from noticeparse.signs import with_signs_told
from noticeparse.telegrams import marks_of_telegrams

_SAME_LENGTH = {
    "°": "º˚",
    "'": "′’‘´`ʹʼ‛",
    '"': "″“”„‟«»〃ˮ",
    "-": "‐‑‒–—―−﹣－" + "─━═╌╍┄┅┈┉╴╶╸╺╼╾",
    # The ruled lines of a table, and where they meet.
    "|": "│┃║╎╏┆┇┊┋¦｜",
    # A return that ends a line of its own is a line feed by then.
    " ": "\r\v\f\x1c\x1d\x1e\x1f\x85\xa0\u1680\u2028\u2029\u202f\u205f\u3000"
    + "".join(map(chr, range(0x2000, 0x200B))),
    ".": "․．",
    ",": "，",
    ":": "：",
    ";": "；",
    "(": "（",
    ")": "）",
    "/": "／⁄∕",
    "+": "＋" + "".join(map(chr, (*range(0x250C, 0x254C), *range(0x2552, 0x2571)))),
    "·": "•∙⋅‧・◦‣▪▫●○",
    "*": "★☆⭐✱✲✶✷✸⁎∗＊﹡",
    "�": "".join(map(chr, range(0xD800, 0xE000))),
    **{str(d): chr(0xFF10 + d) for d in range(10)},
    **{chr(65 + i): chr(0xFF21 + i) for i in range(26)},
    **{chr(97 + i): chr(0xFF41 + i) for i in range(26)},
}
"""What is read instead: the characters that stand for it, one for one."""

_READ_FOR = {seen: read for read, all_seen in _SAME_LENGTH.items() for seen in all_seen}
_TRANSLATION = str.maketrans(_READ_FOR)

_OTHER_LENGTH: dict[str, str] = {
    "ﬀ": "ff",
    "ﬁ": "fi",
    "ﬂ": "fl",
    "ﬃ": "ffi",
    "ﬄ": "ffl",
    "ﬅ": "st",
    "ﬆ": "st",
    "‴": "'''",
}
"""Ligatures and broken encodings: characters that become more or fewer of them."""

_DAMAGED = "°º˚·•½¼¾⅓⅔⅛⅜⅝⅞′″’‘“”„–—−´₀₁₂₃₄₅₆₇₈₉\u00a0"
"""What notices hold beyond ASCII; pasted text brings it as UTF-8 read as Windows-1252."""


def _windows_1252(byte: int) -> str:
    # Bytes that Windows-1252 leaves open come through as control characters.
    return bytes([byte]).decode("cp1252", "ignore") or chr(byte)


for _char in _DAMAGED:
    _seen = "".join(map(_windows_1252, _char.encode()))
    _OTHER_LENGTH[_seen.translate(_TRANSLATION)] = _char.translate(_TRANSLATION)

_INVISIBLE = (
    "\u00ad\u061c\u200b-\u200f\u202a-\u202e\u2060-\u2064\u2066-\u206f\ufeff"
    "\x00-\x08\x0e-\x1b\x7f-\x84\x86-\x9f"
)
"""Controls, marks of writing direction, and what takes no width: all are left out."""

_HIDDEN = re.compile(f"[{_INVISIBLE}]+")


def _through_invisible(seen: str) -> str:
    """The pattern of a sequence that invisible characters may split, as if they were not there."""
    return f"[{_INVISIBLE}]*".join(map(re.escape, seen))


# Those that hold controls of their own come last: a control may be what splits another.
_SEQUENCES = sorted(_OTHER_LENGTH, key=lambda seen: bool(_HIDDEN.search(seen)))
# Without groups, so that the search leaps from one possible first character to the next.
_OTHER = compiled(
    "|".join([*map(_through_invisible, _SEQUENCES), _HIDDEN.pattern]), "text.pattern"
)
# What a match of `_OTHER` may begin with; looked for first, for most texts hold none of it.
_OTHER_BEGINS = re.compile(f"[{''.join(seen[0] for seen in _SEQUENCES)}{_INVISIBLE}]")
# Also sequences that are split; no two are alike when the controls are taken out of both.
_READ_INSTEAD = {_HIDDEN.sub("", seen): read for seen, read in _OTHER_LENGTH.items()}
_UNSPLIT = re.compile("|".join(map(re.escape, _OTHER_LENGTH)))

_MOST_TURNS = 8

# The line end of old machines; before a line feed a return is part of that line's end.
_LONE_RETURN = re.compile(r"\r(?!\r?\n)")

SURROGATE = re.compile("[\ud800-\udfff]")
"""Half of a character that stands alone; read as U+FFFD."""


def without_surrogates(text: str) -> str:
    """The text with every half character that stands alone as U+FFFD; offsets stay."""
    return SURROGATE.sub("\ufffd", text)


# `danger-` / `ous`: a word cut at the line end; a hyphen after a figure or capital is kept.
_CUT_WORD = re.compile(r"-(?<=[a-z]-)[ \t]{0,80}\n(?:[ \t]{0,80}>){0,5}[ \t]{0,80}(?=[a-z])")

# Compounds of the trade keep their hyphen when the line breaks at it.
_KEEPS_HYPHEN = re.compile(
    r"\b(?:light|hand|port|starboard|safe|preferred|non|super|fog|day|top|sub|two|deep|ship|to)$",
    re.I,
)


# Marks round words in the type of a machine: "`47° 12.3' S`"; behind a figure one is a prime.
_MACHINE_TYPE = re.compile(
    r"(?:(?<=[\s(*|>])|^)`(?=[^`\s])[^`\n]{1,120}(?<=\S)`(?=[\s,.;:)*|]|\Z)", re.MULTILINE
)


class Repair(NamedTuple):
    """A stretch of the original text and what is read instead, where the lengths differ."""

    start: int
    end: int
    read: str


class RepairedText:
    """The text as the grammars read it; `original(offset)` leads back."""

    def __init__(self, given: str, text: str, repairs: list[Repair]) -> None:
        self.given = given
        self.text = text
        self.repairs = repairs
        self._here: list[int] = []
        self._there: list[int] = []
        shift = 0
        for repair in repairs:
            at = repair.start - shift
            self._here.append(at + len(repair.read))
            self._there.append(repair.end)
            shift += repair.end - repair.start - len(repair.read)

    def until(self, offset: int) -> RepairedText:
        """What was read in front of an offset of the repaired text, by itself."""
        end = self.original(offset)
        kept = [one for one in self.repairs if one.end <= end]
        return RepairedText(self.given[:end], self.text[:offset], kept)

    def original(self, offset: int) -> int:
        """The offset into the original text of the character read at `offset`."""
        if not self.repairs:
            return offset
        row = bisect_right(self._here, offset) - 1
        if row < 0:
            return self._clamped(offset, 0)
        return self._clamped(self._there[row] + offset - self._here[row], row + 1)

    def _clamped(self, offset: int, following: int) -> int:
        # Inside a replacement of another length no character stands for itself.
        if following < len(self.repairs):
            return min(offset, self.repairs[following].start)
        return offset

    def original_end(self, offset: int) -> int:
        """The original offset behind the character read just before `offset`."""
        if offset <= 0 or not self.repairs:
            return max(offset, 0)
        row = bisect_right(self._here, offset - 1) - 1
        following = row + 1
        at = self.original(offset - 1)
        if following < len(self.repairs) and at >= self.repairs[following].start:
            return self.repairs[following].end
        return at + 1


def repair(given: str) -> RepairedText:
    """The repaired text of `given` and the map back to it; takes linear time on any text."""
    same_length = _LONE_RETURN.sub("\n", given)
    for seen in _READ_FOR.keys() & set(same_length):
        same_length = same_length.replace(seen, _READ_FOR[seen])
    telegraphed = (Repair(*mark) for mark in marks_of_telegrams(same_length))
    repairs = sorted([*_broken(same_length), *_marks_of_type(given), *telegraphed])
    text = _replaced(same_length, repairs)
    # What a repair brings together may be broken in its turn: `ÂÂ·`.
    for _ in range(_MOST_TURNS if repairs else 0):
        more = _broken(text)
        if not more:
            break
        repairs = _with_more(same_length, text, repairs, more)
        text = _replaced(same_length, repairs)
    cuts = [_joined(text, match) for match in _CUT_WORD.finditer(text)]
    if cuts:
        repairs = _with_more(same_length, text, repairs, cuts)
        text = _replaced(same_length, repairs)
    return RepairedText(given, with_signs_told(text), repairs)


def _broken(text: str) -> list[Repair]:
    first = _OTHER_BEGINS.search(text)
    if first is None:
        return []
    return [
        Repair(match.start(), match.end(), _READ_INSTEAD.get(_HIDDEN.sub("", match.group()), ""))
        for match in _OTHER.finditer(text, first.start())
    ]


def _marks_of_type(given: str) -> list[Repair]:
    """Both marks round each stretch in the type of a machine, left out."""
    found = _MACHINE_TYPE.finditer(given) if "`" in given else ()
    return [Repair(at, at + 1, "") for one in found for at in (one.start(), one.end() - 1)]


def _with_more(
    same_length: str, text: str, repairs: list[Repair], more: list[Repair]
) -> list[Repair]:
    """The repairs that made `text`, and others of that text, as repairs of the original."""
    inner = RepairedText(same_length, text, repairs)
    moved = [
        Repair(inner.original(one.start), inner.original_end(one.end), one.read) for one in more
    ]
    return sorted(_without_overlap(repairs, moved))


def _joined(text: str, match: re.Match[str]) -> Repair:
    before = text[max(0, match.start() - 12) : match.start()]
    keeps = _KEEPS_HYPHEN.search(before)
    return Repair(match.start(), match.end(), "-" if keeps else "")


def without_cut(words: str) -> str:
    """Words that end with the hyphen of a cut word, as the rest of it goes on with them."""
    is_cut = words[-2:-1].islower() and not _KEEPS_HYPHEN.search(words[-13:-1])
    return words[:-1] if is_cut else words


class Hidden(NamedTuple):
    """A stretch of the original text that holds invisible characters, which were left out."""

    start: int
    end: int
    splits_figures: bool
    """Whether a figure stands right before and right behind: a person may see another number."""


def hidden_in(repaired: RepairedText) -> Iterator[Hidden]:
    """Where invisible characters were left out, in text order, but for a mark at the start."""
    given = repaired.given
    for start, end, _ in repaired.repairs:
        # The sequences of broken encodings hold controls of their own.
        rest = _UNSPLIT.sub("", given[start:end].translate(_TRANSLATION))
        if _HIDDEN.search(rest) and (start or rest != "\ufeff"):
            around = given[start - 1 : start], given[end : end + 1]
            yield Hidden(start, end, all(one.isnumeric() for one in around))


def _without_overlap(repairs: list[Repair], moved: list[Repair]) -> list[Repair]:
    spans = sorted(moved)
    starts = [cut.start for cut in spans]
    kept = list(spans)
    for one in repairs:
        row = bisect_right(starts, one.start) - 1
        if row < 0 or one.start >= spans[row].end:
            kept.append(one)
    return kept


def _replaced(text: str, repairs: list[Repair]) -> str:
    if not repairs:
        return text
    parts: list[str] = []
    at = 0
    for one in repairs:
        parts += (text[at : one.start], one.read)
        at = one.end
    parts.append(text[at:])
    return "".join(parts)
