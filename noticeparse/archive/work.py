"""What is done with one text of a run, wherever: bytes in, the bytes of its records out.

A worker knows no files.  It never raises for a text, so that a bad one does not stop the rest.
"""

from __future__ import annotations

import io
from collections import Counter
from collections.abc import Iterable, Iterator
from datetime import date
from typing import NamedTuple

from noticeparse.checks.regions import Region
from noticeparse.console.long_input import pieces, survey
from noticeparse.intake import MEDIA_TYPE, NotReadable, decode
from noticeparse.parts import WHOLE, Terms, read_parts
from noticeparse.pipeline import read_bulletin
from noticeparse.records.bulletin import Bulletin, Source
from noticeparse.version import VERSION
from noticeparse.writers import find_writer
from noticeparse.writers.json_out import write_indented
from noticeparse.writers.parts_out import write_parts


class Options(NamedTuple):
    """How the texts of a run are read and written."""

    form: str
    is_indented: bool = False
    as_of: date | None = None
    region: Region | None = None


class Done(NamedTuple):
    """The records of one text, and what is counted of them; or why it is not read."""

    output: bytes = b""
    refusal: str | None = None
    notices: int = 0
    actions: int = 0
    severities: dict[str, int] = {}
    codes: dict[str, int] = {}
    version: str = VERSION


def work(data: bytes, name: str, options: Options) -> Done:
    """Read one text and write its records in memory."""
    tally = _Tally()
    try:
        written = _written(data, name, options, tally)
        output = "".join(written).encode("utf-8", "backslashreplace")
    except NotReadable as error:
        return Done(refusal=str(error))
    except Exception as error:
        # A fault of the program must not cost the other files of the run.
        return Done(refusal=f"a fault of this program: {type(error).__name__}: {error}")
    return tally.done(output)


def _written(data: bytes, name: str, options: Options, tally: _Tally) -> Iterator[str]:
    if options.form == "jsonl" and len(data) > WHOLE:
        file = io.BytesIO(data)
        known = survey(file, name)
        if known.characters > WHOLE:
            source = Source(
                name=name,
                media_type=MEDIA_TYPE,
                sha256=known.sha256,
                characters=known.characters,
            )
            terms = Terms(
                source=source, faults=known.faults, as_of=options.as_of, region=options.region
            )
            return write_parts(tally.counted(read_parts(pieces(file, known), terms)))
    intake = decode(data, name)
    bulletin = read_bulletin(
        intake.text,
        name=name,
        media_type=intake.media_type,
        sha256=intake.sha256,
        faults=intake.faults,
        as_of=options.as_of,
        region=options.region,
    )
    writer = write_indented if options.is_indented else find_writer(options.form)
    return writer(tally.counted([bulletin]))


class _Tally:
    """Counts what goes by."""

    def __init__(self) -> None:
        self._notices = self._actions = 0
        self._severities: Counter[str] = Counter()
        self._codes: Counter[str] = Counter()

    def counted(self, bulletins: Iterable[Bulletin]) -> Iterator[Bulletin]:
        for one in bulletins:
            self._notices += len(one.notices)
            self._actions += sum(len(c.actions) for n in one.notices for c in n.charts)
            self._severities.update(finding.severity for finding in one.findings)
            self._codes.update(finding.code for finding in one.findings)
            yield one

    def done(self, output: bytes) -> Done:
        return Done(
            output=output,
            notices=self._notices,
            actions=self._actions,
            severities=dict(self._severities),
            codes=dict(sorted(self._codes.items())),
        )
