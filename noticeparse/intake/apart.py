"""Reads a file in a process of its own, so that a bad one costs bounded time and memory.

A library that loops, crashes or asks for more memory takes that process with it and nothing else;
the file is refused in one line.  The bounds stand here.  Where a system has no limits for a
process (Windows), that of time holds alone.
"""

from __future__ import annotations

import json
import os
import subprocess
import sys
from importlib.util import find_spec

from noticeparse.faults import Fault
from noticeparse.intake.composing import Composed
from noticeparse.intake.kinds import Kind
from noticeparse.intake.records import NotReadable, Place

MOST_BYTES = 64 << 20
SECONDS = 150
"""Of processor time; on a busy machine that takes longer by the clock."""
_WAITING = 2
MEMORY = 2 << 30

_LIBRARIES: dict[Kind, str] = {"pdf": "pypdfium2", "html": "selectolax"}
_WORDS: dict[Kind, str] = {"pdf": "a PDF file", "html": "an HTML file"}

_RUN = (
    "import sys; path = sys.argv[1].split(sys.argv[2]); sys.path[:] = path;"
    "from noticeparse.intake.child import main; main(sys.argv[3:])"
)
_SEPARATOR = "\x1f"


def read_apart(data: bytes, kind: Kind) -> Composed:
    """The text of a file of this kind.

    Raises NotReadable.
    """
    if len(data) > MOST_BYTES:
        raise NotReadable(f"is longer than {MOST_BYTES >> 20} MiB; take it apart first")
    require(kind)
    path = _SEPARATOR.join(os.path.abspath(one) for one in sys.path)
    terms = [path, _SEPARATOR, kind, str(SECONDS), str(MEMORY), str(os.getpid())]
    try:
        done = subprocess.run(
            [sys.executable, "-I", "-c", _RUN, *terms],
            input=data,
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
            timeout=_WAITING * SECONDS,
            check=False,
        )
    except subprocess.TimeoutExpired:
        raise _took_too_long() from None
    except OSError as error:
        raise NotReadable(f"no process could be started to read it: {error.strerror}") from error
    return _answer(done)


def require(kind: Kind) -> None:
    """Raise NotReadable where the library for a kind is not installed."""
    library = _LIBRARIES.get(kind)
    if library is not None and find_spec(library) is None:
        raise NotReadable(
            f"is {_WORDS[kind]}; to read it install {library}: pip install 'noticeparse[intake]'"
        )


def _answer(done: subprocess.CompletedProcess[bytes]) -> Composed:
    try:
        found = json.loads(done.stdout)
    except ValueError:
        # SIGXCPU, and SIGKILL for a process that passes over it.
        if done.returncode in (-24, -9):
            raise _took_too_long() from None
        words = f"damaged, or needs more than {MEMORY >> 30} GiB of memory"
        raise NotReadable(f"cannot be read: the file is {words}") from None
    if "refused" in found:
        raise NotReadable(found["refused"])
    return Composed(
        found["text"],
        tuple(Fault(code, start, end, values) for code, start, end, values in found["doubts"]),
        tuple((start, end) for start, end in found["furniture"]),
        tuple(Place(*one) for one in found["places"]),
    )


def _took_too_long() -> NotReadable:
    return NotReadable(f"takes more than {SECONDS} seconds to read; take it apart first")
