"""The parts of a Word file as events, its styles and comments (ISO/IEC 29500-1, 17.7, 17.13.4)."""

from __future__ import annotations

import zipfile
from xml.parsers import expat

from noticeparse.intake.records import NotReadable
from noticeparse.intake.small_figures import Level

MOST_UNPACKED = 128 << 20
_STYLES, _COMMENTS = "word/styles.xml", "word/comments.xml"
_OF_RUNS = frozenset("vertAlign position sz strike dstrike vanish webHidden u".split())
_DEEPEST = 20
_MOST_WORDS = 400

_HALF_POINTS_LOWERED, _USUAL_SIZE = 2, 20.0
_OFF = frozenset(("0", "false", "none", "off"))
_LEVELS: dict[str, Level] = {"subscript": "low", "superscript": "high"}

Properties = dict[str, str]


class Taker:
    """Takes the events of a part."""

    def start(self, name: str, attributes: dict[str, str]) -> None:
        """An element begins."""

    def end(self, name: str) -> None:
        """An element ends."""

    def characters(self, text: str) -> None:
        """Text within an element."""


def events(file: zipfile.ZipFile, name: str, taker: Taker) -> None:
    """Give the events of a part to a taker.

    Raises NotReadable.
    """
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


def local(name: str) -> str:
    """The name of an element of the word processing part without its space."""
    space, _, own = name.rpartition(" ")
    return own if not space or "wordprocessing" in space or own == "Fallback" else f"?{own}"


def values_of(attributes: dict[str, str]) -> dict[str, str]:
    """Attributes by their names without spaces."""
    return {local(key): value for key, value in attributes.items()}


class Run:
    """A run of words and its properties."""

    def __init__(self, own: Properties) -> None:
        self.own = own

    @property
    def level(self) -> Level:
        """Whether its words are set low or high."""
        said = _LEVELS.get(self.own.get("vertAlign", ""))
        halves = self.own.get("position", "")
        if said is not None or not halves.lstrip("-").isdecimal():
            return said or "plain"
        if abs(int(halves)) < _HALF_POINTS_LOWERED:
            return "plain"
        return "low" if int(halves) < 0 else "high"

    @property
    def size(self) -> float:
        """Its size in half points; 10 points where none is said (17.3.2.38)."""
        said = self.own.get("sz", "")
        return float(said) if said.isdecimal() and said.isascii() else _USUAL_SIZE

    def has(self, *names: str) -> bool:
        """Whether one of these properties is on."""
        return any(name in self.own and self.own[name] not in _OFF for name in names)


class Styles(Taker):
    """What the styles of a file say of runs; the default ones hold where none is named."""

    def __init__(self) -> None:
        self._styles: dict[str, Properties] = {}
        self._base: dict[str, str] = {}
        self._general: Properties = {}
        self._default = ""
        self._open: Properties | None = None
        self._id = ""
        self._in_run = False

    def start(self, name: str, attributes: dict[str, str]) -> None:
        """An element begins."""
        own, values = local(name), values_of(attributes)
        if own == "rPrDefault":
            self._open = self._general
        elif own == "style":
            self._id = values.get("styleId", "")
            self._open = self._styles.setdefault(self._id, {})
            if values.get("type") == "paragraph" and values.get("default") in ("1", "true", "on"):
                self._default = self._id
        elif own == "basedOn":
            self._base[self._id] = values.get("val", "")
        elif own == "rPr":
            self._in_run = True
        elif self._in_run and self._open is not None and own in _OF_RUNS:
            self._open[own] = values.get("val", "")

    def end(self, name: str) -> None:
        """An element ends."""
        own = local(name)
        if own == "rPr":
            self._in_run = False
        elif own in ("rPrDefault", "style"):
            self._open = None

    def of(self, paragraph: str, run: str) -> Properties:
        """What the styles of a paragraph and of a run in it say of the run."""
        return {**self._general, **self._whole(paragraph or self._default), **self._whole(run)}

    def _whole(self, name: str) -> Properties:
        chain: list[str] = []
        while name and name not in chain and len(chain) < _DEEPEST:
            chain.append(name)
            name = self._base.get(name, "")
        whole: Properties = {}
        for one in reversed(chain):
            whole.update(self._styles.get(one, {}))
        return whole


class _Comments(Taker):
    def __init__(self) -> None:
        self.words: dict[str, str] = {}
        self._id: str | None = None

    def start(self, name: str, attributes: dict[str, str]) -> None:
        if local(name) == "comment":
            self._id = values_of(attributes).get("id", "")
            self.words[self._id] = ""

    def end(self, name: str) -> None:
        if self._id is not None and local(name) == "p":
            self.words[self._id] += " "

    def characters(self, text: str) -> None:
        if self._id is not None:
            self.words[self._id] = (self.words[self._id] + text)[:_MOST_WORDS]


def styles_of(file: zipfile.ZipFile, names: set[str]) -> Styles:
    """The styles of a file; none where it has no such part."""
    styles = Styles()
    if _STYLES in names:
        events(file, _STYLES, styles)
    return styles


def comments_of(file: zipfile.ZipFile, names: set[str]) -> dict[str, str]:
    """The words of the comments of a file by their ids."""
    comments = _Comments()
    if _COMMENTS in names:
        events(file, _COMMENTS, comments)
    return comments.words
