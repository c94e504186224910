"""Lines above commands that say how far they hold: `When the works are complete:`.

Such a line goes into no command.  It holds for the one right below it, and perhaps for those
that follow under the same chart; all of them are held back, or told to be for a day or a time.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.build.extents import item_extent, quoting
from noticeparse.build.pointers import pointed
from noticeparse.build.sections import Section
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item, NoticeDraft, Piece
from noticeparse.layout.line.joints import FOR_A_TIME
from noticeparse.readers.dates import MONTH
from noticeparse.readers.for_a_time import command_for_a_time
from noticeparse.readers.verbs import canonical_verb
from noticeparse.records.chart import ChartSection
from noticeparse.stretch import unquoted

_LONGEST = 120
"""Characters of such a line."""
_LIMITS = re.compile(
    r"(?:not (?!for navigation|to be used|to scale)|do not |never |ignore |disregard |omit "
    r"|(?:only )?(?:if|when|once|unless|until|upon|whenever|on completion|pending|subject to"
    r"|provided)\b|(?:before|after) (?!(?:the |an? )?(?:light|buoy|wreck|depth))"
    r"|provisional(?:ly)?\b|tentative(?:ly)?\b|(?:for )?examples?\b|for instance\b|specimens?\b"
    r"|samples?\b|for information\b|(?:only )?in pencil\b|draft\b|exercise\b|proposed\b"
    r"|planned\b)",
    re.IGNORECASE,
)
_DATED = re.compile(
    r"(?:(?:with )?effect(?:ive)?(?: from| on)?|from|as (?:from|of)|on|after|until|before|by|till)"
    r" (?:and including |about |or about |the )?"
    rf"(?:[0-9]{{1,2}}(?:st|nd|rd|th)? {MONTH}\b|{MONTH} [0-9]{{1,4}}|[0-9]{{4}}-[0-9]{{2}}-)",
    re.IGNORECASE,
)
_TEMPORARY = re.compile(
    r"(?:(?:for|as|by way of|the|these|a|following|make|please) ){0,4}"
    r"(?:temporar(?:y|ily)|preliminary)"
    r"(?: (?:notices?|corrections?|insertions?|changes?|items?|actions?|amendments?|alterations?"
    r"|measures?|information|use))?"
    r"(?: (?:to|on|of) (?:the |these |all )?charts?)?"
    r"(?: (?:only|apply|applies|until further notice|(?:(?:are|is|have been|has been|to be) )?"
    r"(?:made|established|shown|effected|in force|in place)))?"
    r"|for (?:the )?(?:duration|period) of (?:the )?(?:[a-z]{3,16} ){0,2}works?",
    re.IGNORECASE,
)
_PANEL = re.compile(r"(?:(?:on|in) (?:the |its )?)?(?:plan|panel|inset)s?", re.IGNORECASE)
_IN_HEADING = re.compile(
    r"\b(?:temporar(?:y|ily)|preliminary|until further notice)\b|\b(?:temp|prelim)(?:\.|\b) ",
    re.IGNORECASE,
)
_FOR_A_TIME = re.compile(rf" {FOR_A_TIME}$", re.IGNORECASE)
_ENDS_FOR_A_TIME = frozenset("winter summer season being work works".split())
"""The last word of each, which most lines have not."""
_BLANK = re.compile(r"\s*")
_MARK = re.compile(r"(?<![0-9°])(?<![0-9°] )\((?:T|P)\)(?! ?[/-] ?[0-9])")
_MORSE = re.compile(r"(?:racon|\bmo|morse(?: code)?|letter)\W*$", re.IGNORECASE)


def limits_above(
    context: Context,
    draft: NoticeDraft,
    path: str,
    sections: Sequence[Section],
    charts: Sequence[ChartSection],
    *,
    is_permanent: bool,
) -> Iterator[tuple[Fault, list[str]]]:
    """A fault for each such line of a notice, with the actions below it."""
    items = [item for section in sections for item in section.items]
    if not items:
        return
    heads = [section.extent[0] for section in sections]
    starts = {item_extent(item)[0] for item in items} | set(heads)
    if is_permanent:
        yield from _marked(context, path, items, charts)
        for piece in draft.heading:
            if _IN_HEADING.search(context.text[slice(*piece)]) is not None:
                # `Quill Sound - Temporary buoys`: the notice itself may be temporary.
                own = [one.pointer for one in pointed(path, charts)]
                yield quoting(context, "item-temporary", piece), own
    panels = {one.panel[0] for one in draft.charts if one.panel is not None}
    first = draft.number.end if draft.number is not None else draft.start
    for piece in _lines(context.text, min(first, *starts), max(starts)):
        code = _code(context.text[slice(*piece)])
        if code is None or piece[0] in panels or not _is_above(context.text, piece[1], starts):
            continue
        if not is_permanent and _is_for_a_time(context.text, piece[0]):
            # Whatever such a notice commands holds for a time.
            continue
        around = [item for item in items if _overlaps(item, piece)]
        if any(item_extent(item)[1] > piece[0] for item in around):
            continue
        below = _below(context, piece[1], path, charts)
        if below and (code != "item-temporary" or is_permanent):
            # Read as the end of the item above, it may as well limit that one.
            ended = [context.span(*item_extent(item)).start for item in around]
            yield quoting(context, code, piece), [*_of(path, charts, ended), *below]


def _is_for_a_time(text: str, start: int) -> bool:
    """Whether the line on which a limit begins is a command that says for how long it holds."""
    return command_for_a_time(text[start : start + _LONGEST].partition("\n")[0]) is not None


def _lines(text: str, start: int, end: int) -> Iterator[Piece]:
    """What is written on the lines that begin between two offsets, one of a few words each."""
    at = start if text[start - 1 : start] in ("", "\n") else text.find("\n", start, end) + 1
    while start <= at < end:
        below = text.find("\n", at, end)
        below = below if below >= 0 else end
        said = text[at:below].strip(" \t")
        if 1 < len(said) <= _LONGEST:
            left = text.index(said, at)
            yield left, left + len(said)
        at = below + 1


def _overlaps(item: Item, piece: Piece) -> bool:
    own = [item.verb_piece] if item.verb_piece is not None else []
    return any(start < piece[1] and piece[0] < end for start, end in (*item.pieces, *own))


def _of(path: str, charts: Sequence[ChartSection], starts: Sequence[int]) -> list[str]:
    """The actions whose spans start at these places of the original text."""
    return [one.pointer for one in pointed(path, charts) if one.action.span.start in starts]


def _code(said: str) -> str | None:
    """What a line says of the commands below it, None for all others."""
    is_bracketed = said[:1] + said[-1:] in ("()", "[]")
    words = said.strip("()[]:- .")
    if _PANEL.fullmatch(words):
        return "item-of-one-panel"
    if _TEMPORARY.fullmatch(words):
        return "item-temporary"
    if said.endswith(".") or (said.endswith(",") and not is_bracketed):
        return None
    words = said.strip("()[]:- ")
    is_for_a_time = words.rpartition(" ")[2].casefold() in _ENDS_FOR_A_TIME
    if is_for_a_time and _FOR_A_TIME.search(words):
        return "item-temporary"
    if _DATED.match(words):
        return "verb-dated"
    return "verb-limited-above" if _LIMITS.match(f"{words} ") else None


def _is_above(text: str, end: int, starts: set[int]) -> bool:
    """Whether the next line opens an item or a chart, or is a verb alone."""
    gap = _BLANK.match(text, end)
    start = gap.end() if gap is not None else end
    line = text[start : text.find("\n", start)].strip(" \t:.")
    return start in starts or (line.isalpha() and canonical_verb(line) is not None)


def _below(context: Context, end: int, path: str, charts: Sequence[ChartSection]) -> list[str]:
    """The actions behind a place, of the charts that the first of them is for."""
    at = context.repaired.original(end)
    behind = [one for one in pointed(path, charts) if one.action.span.start >= at]
    first = min((one.action.span.start for one in behind), default=None)
    return [
        one.pointer
        for one in behind
        if any(action.span.start == first for action in one.section.actions)
    ]


def _marked(
    context: Context, path: str, items: Sequence[Item], charts: Sequence[ChartSection]
) -> Iterator[tuple[Fault, list[str]]]:
    """Items of a permanent notice with the mark of a temporary one: `port-hand buoy (T)`."""
    labels = {item.label for item in items}
    for item in {id(item): item for item in items}.values():
        piece = item.label_piece if item.label in ("T", "P") else None
        if piece is not None and labels & {"O", "Q", "S", "U"}:
            # One of the letters of a long list.
            continue
        for start, end in () if piece is not None else item.pieces:
            words = context.text[start:end]
            if "(T)" not in words and "(P)" not in words:
                continue
            found = _MARK.search(unquoted(words))
            if found is not None and not _MORSE.search(_before(context, start + found.start())):
                piece = start + found.start(), start + found.end()
                break
        if piece is None:
            continue
        own = context.span(*item_extent(item)).start
        yield quoting(context, "item-temporary", piece), _of(path, charts, [own])


def _before(context: Context, at: int) -> str:
    return context.text[max(at - 24, 0) : at]
