"""What the process of `apart` does: the bytes of a file in, its text or a refusal out, as JSON."""

from __future__ import annotations

import json
import os
import sys
import threading
from collections.abc import Callable, Sequence

from noticeparse.intake.composing import Composed
from noticeparse.intake.records import NotReadable


def main(terms: Sequence[str]) -> None:
    """Read standard input as a file of the kind named first, within the bounds that follow."""
    kind, seconds, memory, parent = terms
    _bound(int(seconds), int(memory))
    threading.Thread(target=_end_with, args=(int(parent),), daemon=True).start()
    out = sys.stdout
    sys.stdout = sys.stderr
    data = sys.stdin.buffer.read()
    try:
        found = reader_of(kind)(data)
        answer: dict[str, object] = found._asdict()
    except NotReadable as error:
        answer = {"refused": str(error)}
    except (MemoryError, RecursionError):
        answer = {"refused": "cannot be read: it takes more memory than is allowed for a file"}
    except Exception as error:
        answer = {"refused": f"cannot be read: the file is damaged ({type(error).__name__})"}
    out.write(json.dumps(answer))
    out.flush()
    # Libraries may fail when they take leave of a file that is damaged; the answer is there.
    os._exit(0)


def reader_of(kind: str) -> Callable[[bytes], Composed]:
    """What reads files of a kind."""
    if kind == "pdf":
        from noticeparse.intake.pdf import read_pdf

        return read_pdf
    if kind == "html":
        from noticeparse.intake.html import read_html

        return read_html
    if kind == "mail":
        from noticeparse.intake.mail import read_mail

        return read_mail
    from noticeparse.intake.docx import read_docx

    return read_docx


def _bound(seconds: int, memory: int) -> None:
    try:
        import resource
    except ImportError:  # no such limits on Windows
        return
    resource.setrlimit(resource.RLIMIT_CPU, (seconds, seconds + 2))
    resource.setrlimit(resource.RLIMIT_CORE, (0, 0))
    resource.setrlimit(resource.RLIMIT_AS, (memory, memory))


def _end_with(parent: int) -> None:
    """A process that nobody waits for any more must not go on."""
    is_over = threading.Event()
    while os.getppid() == parent:
        is_over.wait(0.5)
    os._exit(1)
