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
from xml.parsers import expat

from noticeparse.intake.composing import Composed, Composer
from noticeparse.intake.records import NotReadable
from noticeparse.intake.small_figures import Level
from noticeparse.intake.walking import Walker

MOST_UNPACKED = 128 << 20
_MOST_TIMES, _SMALL = 200, 4 << 20
_MAIN = "word/document.xml"
_HEADS = re.compile(r"word/(?:header|footer)[0-9]{0,4}\.xml")
_NOTES = re.compile(r"word/(?:footnotes|endnotes)\.xml")
_ENCRYPTED = 0x1
_OFF = frozenset(("0", "false", "none", "off"))
_FAULTS = (zipfile.BadZipFile, zlib.error, EOFError, NotImplementedError, RuntimeError, OSError)
_HALF_POINTS_LOWERED = 2
_MOST_LINES = 6
_LEVELS: dict[str, Level] = {"subscript": "low", "superscript": "high"}
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
            body = _part(file, _MAIN)
            notes = [_part(file, name) for name in sorted(filter(_NOTES.fullmatch, names))]
            heads = [_part(file, name) for name in sorted(filter(_HEADS.fullmatch, names))]
    except _FAULTS as error:
        raise NotReadable(f"cannot be read: the .docx file is damaged ({error})") from None
    composer = Composer()
    for part in (body, *notes):
        if part.text.strip():
            composer.end_line()
            composer.take(part)
    for part in dict.fromkeys(heads):
        # A head stands on every page, and where the pages end is not in the file.
        if part.text.strip():
            composer.end_paragraph()
            start = composer.length
            composer.take(part)
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


def _part(file: zipfile.ZipFile, name: str) -> Composed:
    cells = _CellCounter()
    _events(file, name, cells)
    reader = _Reader(cells.lines)
    _events(file, name, reader)
    return reader.walker.made()


class _Taker:
    """Takes the events of a part."""

    def start(self, name: str, attributes: dict[str, str]) -> None:
        """An element begins."""

    def end(self, name: str) -> None:
        """An element ends."""

    def characters(self, text: str) -> None:
        """Text within an element."""


def _events(file: zipfile.ZipFile, name: str, taker: _Taker) -> None:
    parser = expat.ParserCreate(namespace_separator=" ")
    parser.buffer_text = True
    parser.StartElementHandler = taker.start
    parser.EndElementHandler = taker.end
    parser.CharacterDataHandler = taker.characters
    parser.StartDoctypeDeclHandler = _refuse
    try:
        with file.open(name) as stream:
            unpacked = 0
            while block := stream.read(1 << 16):
                unpacked += len(block)
                if unpacked > MOST_UNPACKED:
                    raise NotReadable("unpacks to more than it says; save it as text first")
                parser.Parse(block, False)
            parser.Parse(b"", True)
    except expat.ExpatError as error:
        raise NotReadable(f"cannot be read: the .docx file is damaged ({error})") from None


def _refuse(*_: object) -> None:
    raise NotReadable("cannot be read: it declares entities, as no .docx file does")


class _Run:
    """The properties of the run under way."""

    def __init__(self) -> None:
        self.level: Level = "plain"
        self.is_struck = self.is_hidden = False


class _CellCounter(_Taker):
    """Which cells are no cells of a table but parts of the page, in the order of the file."""

    def __init__(self) -> None:
        self.lines: list[int] = []
        self._open: list[int] = []

    def start(self, name: str, attributes: dict[str, str]) -> None:
        """An element begins."""
        del attributes
        own = _local(name)
        if own == "tc":
            self._open.append(len(self.lines))
            self.lines.append(0)
        elif self._open and own in ("p", "tbl"):
            self.lines[self._open[-1]] += 1 if own == "p" else _MOST_LINES + 1

    def end(self, name: str) -> None:
        """An element ends."""
        if _local(name) == "tc":
            self._open.pop()


class _Reader(_Taker):
    """Takes the events of one part; `lines` says how many each cell holds."""

    def __init__(self, lines: list[int]) -> None:
        self.walker = Walker()
        self._lines = iter(lines)
        self._run = _Run()
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
        own = _local(name)
        if own == "tc":
            count = next(self._lines, 0)
        if self._skipped or own in _NO_TEXT or own.endswith("PrChange"):
            self._skipped += 1
            return
        values = {_local(key): value for key, value in attributes.items()}
        if own == "r":
            self._run = _Run()
        elif own in ("rPr", "pPr"):
            self._properties += 1
        elif self._properties:
            self._property(own, values)
        elif own in ("del", "moveFrom"):
            self._deleted += 1
        elif own in ("ins", "moveTo"):
            self.walker.is_inserted = True
        elif own == "tc":
            self.walker.begin_cell(has_lines=count > _MOST_LINES)
        elif own == "txbxContent":
            self.walker.end_line()
        elif own in self._starts:
            self._starts[own](values)

    def end(self, name: str) -> None:
        """An element ends."""
        own = _local(name)
        if self._skipped:
            self._skipped -= 1
        elif own in ("rPr", "pPr"):
            self._properties -= 1
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
        elif own in ("p", "tr", "txbxContent"):
            self._flush()
            self.walker.end_line()
        elif own == "tbl":
            self.walker.end_paragraph()

    def characters(self, text: str) -> None:
        """Text within an element."""
        if self._in_text and not self._skipped:
            self._put(text)

    def _put(self, text: str) -> None:
        run = self._run
        if self._deleted or run.is_struck or run.is_hidden:
            code = "text-hidden" if run.is_hidden and not self._deleted else "text-struck-out"
            known = self._left_out
            if known is not None and known[0] != code:
                self._flush()
                known = None
            self._left_out = code, (known[1] if known else "") + text
            return
        self._flush()
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
        run = self._run
        if own == "numId" and value != "0":
            self.walker.count_item()
        elif own == "vertAlign":
            run.level = _LEVELS.get(value, "plain")
        elif own == "position" and value.lstrip("-").isdecimal():
            halves = int(value)
            if abs(halves) >= _HALF_POINTS_LOWERED and run.level == "plain":
                run.level = "low" if halves < 0 else "high"
        elif own in ("strike", "dstrike"):
            run.is_struck = run.is_struck or value not in _OFF
        elif own in ("vanish", "webHidden"):
            run.is_hidden = run.is_hidden or value not in _OFF


def _local(name: str) -> str:
    """The name of an element of the word processing part without its space."""
    space, _, own = name.rpartition(" ")
    return own if not space or "wordprocessing" in space or own == "Fallback" else f"?{own}"
