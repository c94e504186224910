"""Word files (.docx, ISO/IEC 29500): paragraphs, tables, notes, heads and feet, as they are read.

What was deleted with its change kept is left out with a finding; what was inserted so is read with
one.  The parts are read as a stream of events, without entities, and no more is unpacked than the
bounds below allow.
"""

from __future__ import annotations

import io
import re
import zipfile
import zlib
from collections.abc import Callable

from noticeparse.intake.composing import Composed, Composer
from noticeparse.intake.records import NotReadable
from noticeparse.intake.walking import Walker
from noticeparse.intake.word_events import (
    MOST_UNPACKED,
    Run,
    Styles,
    Taker,
    comments_of,
    events,
    local,
    styles_of,
    values_of,
)

_MOST_TIMES, _SMALL = 200, 4 << 20
_MAIN = "word/document.xml"
_HEADS = re.compile(r"word/(?:header|footer)[0-9]{0,4}\.xml")
_NOTES = re.compile(r"word/(?:footnotes|endnotes)\.xml")
_ENCRYPTED = 0x1
_PROPERTIES = frozenset(("rPr", "pPr", "trPr"))
_FAULTS = (zipfile.BadZipFile, zlib.error, EOFError, NotImplementedError, RuntimeError, OSError)
_MOST_LINES = 6
_NOT_READ = {
    "drawing": "a drawing or picture", "pict": "a drawing or picture", "object": "a file put in",
    "?oMath": "a formula", "altChunk": "a file put in", "control": "a field to fill in",
}  # fmt: skip
_NO_TEXT = frozenset(("Fallback", "instrText", "fldData"))


def read_docx(data: bytes) -> Composed:
    """The text of a Word file.

    Raises NotReadable.
    """
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as file:
            names = _checked(file)
            if _MAIN not in names:
                raise NotReadable("an office file that is no .docx: save it as .docx or as text")
            styles, comments = styles_of(file, names), comments_of(file, names)

            def part(name: str) -> Composed:
                return _part(file, name, styles, comments)

            body = part(_MAIN)
            notes = [part(name) for name in sorted(filter(_NOTES.fullmatch, names))]
            heads = [part(name) for name in sorted(filter(_HEADS.fullmatch, names))]
    except _FAULTS as error:
        raise NotReadable(f"cannot be read: the .docx file is damaged ({error})") from None
    composer = Composer()
    for one in (body, *notes):
        if one.text.strip():
            composer.end_line()
            composer.take(one)
    for one in dict.fromkeys(heads):
        # A head stands on every page, and where the pages end is not in the file.
        if one.text.strip():
            composer.end_paragraph()
            start = composer.length
            composer.take(one)
            composer.mark_furniture(start)
    return composer.made()


def _checked(file: zipfile.ZipFile) -> set[str]:
    entries = file.infolist()
    if sum(one.file_size for one in entries) > MOST_UNPACKED:
        raise NotReadable(f"unpacks to more than {MOST_UNPACKED >> 20} MiB; save it as text first")
    for one in entries:
        if one.flag_bits & _ENCRYPTED:
            raise NotReadable("is encrypted; save it without a password first")
        if one.file_size > max(_SMALL, _MOST_TIMES * one.compress_size):
            raise NotReadable(
                f"unpacks to more than {_MOST_TIMES} times its size, as no file does"
            )
    return {one.filename for one in entries}


def _part(file: zipfile.ZipFile, name: str, styles: Styles, comments: dict[str, str]) -> Composed:
    cells = _CellCounter()
    events(file, name, cells)
    reader = _Reader(cells.lines, styles, comments)
    events(file, name, reader)
    return reader.walker.made()


class _CellCounter(Taker):
    """Which cells are no cells of a table but parts of the page, in the order of the file."""

    def __init__(self) -> None:
        self.lines: list[int] = []
        self._open: list[int] = []

    def start(self, name: str, attributes: dict[str, str]) -> None:
        """An element begins."""
        del attributes
        own = local(name)
        if own == "tc":
            self._open.append(len(self.lines))
            self.lines.append(0)
        elif self._open and own in ("p", "tbl"):
            self.lines[self._open[-1]] += 1 if own == "p" else _MOST_LINES + 1

    def end(self, name: str) -> None:
        """An element ends."""
        if local(name) == "tc":
            self._open.pop()


class _Reader(Taker):
    """Takes the events of one part; `lines` says how many each cell holds."""

    def __init__(self, lines: list[int], styles: Styles, comments: dict[str, str]) -> None:
        self.walker = Walker()
        self._lines = iter(lines)
        self._styles, self._comments = styles, comments
        self._run = Run({})
        self._paragraph = ""
        """The style of the paragraph under way."""
        self._rows: list[bool] = []
        """The rows that are open, and whether each is deleted."""
        self._in_row = 0
        self._drawn: list[bool] = []
        """What is open that is no text, and whether words were found in it."""
        self._in_text = False
        self._properties = 0
        self._deleted = 0
        self._skipped = 0
        """Depth within what is no text, or a second copy of it."""
        self._left_out: tuple[str, str] | None = None
        """What is left out at this place so far: code and words."""
        self._starts: dict[str, Callable[[dict[str, str]], None]] = {
            "t": self._begin_text,
            "delText": self._begin_text,
            "tab": lambda _: self.walker.words("\t", keeps_lines=True),
            "br": lambda _: self.walker.end_line(),
            "cr": lambda _: self.walker.end_line(),
            "noBreakHyphen": lambda _: self._put("-"),
            "sym": self._symbol,
        }

    def start(self, name: str, attributes: dict[str, str]) -> None:
        """An element begins."""
        own = local(name)
        if own == "tc":
            count = next(self._lines, 0)
        if self._skipped or own in _NO_TEXT or own.endswith("PrChange"):
            self._skipped += 1
            return
        values = values_of(attributes)
        if own == "r":
            self._run = Run(self._styles.of(self._paragraph, ""))
        elif own in _PROPERTIES:
            self._properties += 1
            self._in_row += own == "trPr"
        elif self._properties:
            self._property(own, values)
        elif own in ("del", "moveFrom"):
            self._deleted += 1
        elif own in ("ins", "moveTo"):
            self.walker.is_inserted = True
        elif own == "p":
            self._paragraph = ""
        elif own == "tr":
            self._flush()
            self._rows.append(False)
            self.walker.begin_row()
        elif own == "tc":
            self.walker.begin_cell(has_lines=count > _MOST_LINES)
        elif own == "txbxContent":
            self._drawn = [True for _ in self._drawn]
            self.walker.end_line()
        elif own in _NOT_READ:
            self._drawn.append(False)
        elif own == "commentReference":
            said = self._comments.get(values.get("id", ""), "")
            self.walker.remark("part-not-read", f"a comment: `{said.strip()}`")
        elif own in self._starts:
            self._starts[own](values)

    def end(self, name: str) -> None:
        """An element ends."""
        own = local(name)
        if self._skipped:
            self._skipped -= 1
        elif own in _PROPERTIES:
            self._properties -= 1
            self._in_row -= own == "trPr"
        elif self._properties:
            return
        elif own in ("t", "delText"):
            self._in_text = False
        elif own in ("del", "moveFrom"):
            self._deleted -= 1
        elif own in ("ins", "moveTo"):
            self._flush()
            self.walker.is_inserted = False
        elif own == "tc":
            self._flush()
            self.walker.end_cell()
        elif own == "tr":
            self._flush()
            self.walker.end_row()
            self._deleted -= self._rows.pop()
        elif own in ("p", "txbxContent"):
            self._flush()
            self.walker.end_line()
        elif own in _NOT_READ:
            self._flush()
            if not self._drawn.pop():
                self.walker.no_text(_NOT_READ[own])
        elif own == "tbl":
            self.walker.end_paragraph()

    def characters(self, text: str) -> None:
        """Text within an element."""
        if self._in_text and not self._skipped:
            self._put(text)

    def _put(self, text: str) -> None:
        run = self._run
        is_hidden = run.has("vanish", "webHidden")
        if self._deleted or is_hidden or run.has("strike", "dstrike"):
            code = "text-hidden" if is_hidden and not self._deleted else "text-struck-out"
            known = self._left_out
            if known is not None and known[0] != code:
                self._flush()
                known = None
            self._left_out = code, (known[1] if known else "") + text
            return
        self._flush()
        self.walker.size = run.size
        self.walker.is_underlined = run.has("u")
        self.walker.words(text, run.level)

    def _flush(self) -> None:
        if self._left_out is not None:
            self.walker.leave_out(*self._left_out)
            self._left_out = None

    def _begin_text(self, _: dict[str, str]) -> None:
        self._in_text = True

    def _symbol(self, values: dict[str, str]) -> None:
        """A character of a symbol font, which has no meaning by itself."""
        known = {"F0B0": "°", "F0A2": "′", "F0B2": "″", "F0B7": "•"}
        self._put(known.get(values.get("char", "").upper(), "\ufffd"))

    def _property(self, own: str, values: dict[str, str]) -> None:
        value = values.get("val", "")
        if own == "numId" and value != "0":
            self.walker.count_item()
        elif own == "pStyle":
            self._paragraph = value
        elif own == "rStyle":
            # The style of a run stands before all that the run says itself (17.3.2.28).
            self._run.own.update(self._styles.of(self._paragraph, value))
        elif own == "del" and self._in_row and self._rows and not self._rows[-1]:
            self._rows[-1] = True
            self._deleted += 1
        else:
            self._run.own[own] = value
