"""What `parse` does: bulletins in, their records out, an exit status back.

`write_bulletins` takes bulletins from wherever they come; `write_parts` does, where their parts
were made elsewhere.
"""

from __future__ import annotations

import os
import sys
from collections.abc import Iterable, Iterator, Sequence
from typing import TYPE_CHECKING

from noticeparse.console.outlet import say
from noticeparse.console.outputs import Outputs, Target
from noticeparse.console.statuses import NOT_READ
from noticeparse.console.telling import count, told_of
from noticeparse.patterns import kept_together
from noticeparse.writers import Part, Wishes, may_stream

if TYPE_CHECKING:
    from noticeparse.console.session import Session
    from noticeparse.console.settings import Settings
    from noticeparse.records.bulletin import Bulletin


def parse(
    files: Sequence[str], settings: Settings, *, targets: Sequence[Target], wishes: Wishes
) -> int:
    """Write the bulletins of `files` to all targets."""
    with kept_together("parse.patterns"):
        from noticeparse.console.chart_file import read_chart_file
        from noticeparse.console.session import Session
        from noticeparse.intake import STANDARD_INPUT

    inputs = [
        *(files or [STANDARD_INPUT]),
        *([settings.chart_list] if settings.chart_list else []),
    ]
    if not spares_inputs(targets, inputs):
        return NOT_READ
    known = read_chart_file(settings)
    if known.status == NOT_READ:
        return NOT_READ
    forms = [target.form for target in targets]
    with Outputs(targets, wishes) as outputs:
        if may_stream(forms):
            from noticeparse.console.streaming import Stream

            stream = Stream(files, settings, known, is_watched=outputs.is_terminal())
            write_parts(outputs, ([Part(piece)] * len(forms) for piece in stream.lines()))
            return stream.status
        session = Session(files, settings, known, is_watched=outputs.is_terminal())
        write_bulletins(outputs, _bulletins(session, forms, wishes))
    return session.status


def write_bulletins(outputs: Outputs, bulletins: Iterable[Bulletin]) -> None:
    """Write bulletins to all outputs while they come.

    Raises NotWritable.
    """
    write_parts(outputs, map(outputs.parts, bulletins))


def write_parts(outputs: Outputs, parts: Iterable[Sequence[Part]]) -> None:
    """Write what was made of the bulletins; ends early where nobody reads any more.

    Raises NotWritable.
    """
    for one in parts:
        if not outputs.add(one):
            return
    outputs.end()


def spares_inputs(targets: Sequence[Target], inputs: Sequence[str]) -> bool:
    """Whether no output is an input too; one that is, is said."""
    for target in targets:
        if target.path is not None and any(_is_input(target.path, file) for file in inputs):
            say(f"noticeparse: {target.path}: is an input too; give the output another name")
            return False
    return True


def _bulletins(session: Session, forms: Sequence[str], wishes: Wishes) -> Iterator[Bulletin]:
    """The bulletins, with what is to be said of each."""
    for reading in session.readings():
        yield reading.bulletin
        for line in told_of(count(reading.bulletin), reading.label, forms, wishes):
            session.say(line)


def _is_input(out: str, file: str) -> bool:
    """Whether an output is an input, which may come in by `<` as well."""
    from noticeparse.intake import STANDARD_INPUT

    try:
        status = os.fstat(sys.stdin.fileno()) if file == STANDARD_INPUT else os.stat(file)
        return os.path.isfile(out) and os.path.samestat(os.stat(out), status)
    except (AttributeError, OSError, ValueError):
        return False
