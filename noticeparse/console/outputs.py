"""Where the bulletins of a run go: standard output, or files, each in its format.

All outputs are written while the bulletins come.  A file is whole or not there at all.  A reader
that goes away takes only its own output with it; the others are written to the end.
"""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import ExitStack
from types import TracebackType
from typing import TYPE_CHECKING, NamedTuple

from noticeparse.console.outlet import Outlet, ReaderGone
from noticeparse.writers import Part, Wishes, form_of, new_writer

if TYPE_CHECKING:
    from noticeparse.records.bulletin import Bulletin

STANDARD_OUTPUT_NAME = "-"


class Target(NamedTuple):
    """A place, the name of a file or None for standard output, and the format there."""

    path: str | None
    form: str


def targets_of(outs: Sequence[str], form: str) -> list[Target]:
    """What is to be written where: the ending of a name tells the format, else it is `form`."""
    if not outs:
        return [Target(None, form)]
    return [
        Target(None, form) if out == STANDARD_OUTPUT_NAME else Target(out, form_of(out) or form)
        for out in outs
    ]


class Outputs:
    """The open outputs of a run; use it in a `with` block.

    A bulletin is given as its parts, one for each output.  `parts` makes them; another process can
    do that with `parts_of` and the same formats.
    """

    def __init__(self, targets: Sequence[Target], wishes: Wishes) -> None:
        self._writers = [new_writer(target.form, wishes) for target in targets]
        self._outlets = [Outlet(target.path) for target in targets]
        self._gone: set[int] = set()
        self._is_empty = True
        self._stack = ExitStack()

    def __enter__(self) -> Outputs:
        for outlet in self._outlets:
            self._stack.enter_context(outlet)
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        at: TracebackType | None,
    ) -> None:
        """Put the files in their places, or leave what stood there.

        Raises NotWritable.
        """
        self._stack.__exit__(kind, error, at)

    def is_terminal(self) -> bool:
        """Whether a person sees data appear."""
        return any(outlet.is_terminal() for outlet in self._outlets)

    def parts(self, bulletin: Bulletin) -> list[Part]:
        """What a bulletin gives to each output."""
        return [writer.part(bulletin) for writer in self._writers]

    def add(self, parts: Sequence[Part]) -> bool:
        """Write the parts of the next bulletin; False where nobody reads any more.

        Raises NotWritable.
        """
        self._is_empty = False
        pieces = [writer.add(part) for writer, part in zip(self._writers, parts, strict=True)]
        return self._write(pieces)

    def end(self) -> None:
        """Write what stands behind the last bulletin; nothing where there was none.

        Raises NotWritable.
        """
        if not self._is_empty:
            self._write([writer.end() for writer in self._writers])

    def _write(self, pieces: Sequence[str]) -> bool:
        for number, (outlet, piece) in enumerate(zip(self._outlets, pieces, strict=True)):
            if number in self._gone or not piece:
                continue
            try:
                outlet.write(piece)
            except ReaderGone:
                self._gone.add(number)
        return len(self._gone) < len(self._outlets)


def parts_of(bulletin: Bulletin, forms: Sequence[str], wishes: Wishes) -> list[Part]:
    """What a bulletin gives to outputs in these formats; depends on nothing else."""
    return [new_writer(form, wishes).part(bulletin) for form in forms]
