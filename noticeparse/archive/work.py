"""What is done with one text of a run, wherever: bytes in, what it gives to each output out.

A worker knows no files.  It never raises for a text, so that a bad one does not stop the rest.
"""

from __future__ import annotations

import io
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from datetime import date
from typing import NamedTuple

from noticeparse.checks.regions import Region
from noticeparse.console.long_input import pieces, survey
from noticeparse.console.outputs import parts_of
from noticeparse.console.telling import Counts, count
from noticeparse.files import read_intake
from noticeparse.intake import MEDIA_TYPE, NotReadable, kind_of, read
from noticeparse.intake.kinds import HEAD
from noticeparse.parts import WHOLE, Terms, read_parts
from noticeparse.records.bulletin import Bulletin, Source
from noticeparse.version import VERSION
from noticeparse.writers import AS_USUAL, Part, Wishes, may_stream
from noticeparse.writers.parts_out import write_parts


class Options(NamedTuple):
    """How the texts of a run are read and written."""

    forms: tuple[str, ...]
    """The format of each output."""
    wishes: Wishes = AS_USUAL
    as_of: date | None = None
    region: Region | None = None


class Done(NamedTuple):
    """What one text gives to each output, and what is counted of it; or why it is not read."""

    parts: Sequence[Part] = ()
    refusal: str | None = None
    counts: Counts = Counts()
    severities: dict[str, int] = {}
    codes: dict[str, int] = {}
    version: str = VERSION


def work(data: bytes, name: str, options: Options) -> Done:
    """Read one text and write its records in memory."""
    tally = _Tally()
    try:
        parts = _parts(data, name, options, tally)
    except NotReadable as error:
        return Done(refusal=str(error))
    except Exception as error:
        # A fault of the program must not cost the other files of the run.
        return Done(refusal=f"a fault of this program: {type(error).__name__}: {error}")
    return tally.done(parts)


def _parts(data: bytes, name: str, options: Options, tally: _Tally) -> Sequence[Part]:
    is_plain = kind_of(data[:HEAD], name) is None
    if is_plain and may_stream(options.forms) and len(data) > WHOLE:
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
            lines = "".join(write_parts(tally.counted(read_parts(pieces(file, known), terms))))
            return [Part(lines)] * len(options.forms)
    intake = read(data, name)
    bulletin = read_intake(intake, name=name, as_of=options.as_of, region=options.region)
    (bulletin,) = tally.counted([bulletin])
    return parts_of(bulletin, options.forms, options.wishes)


class _Tally:
    """Counts what goes by."""

    def __init__(self) -> None:
        self._counts = Counts()
        self._severities: Counter[str] = Counter()
        self._codes: Counter[str] = Counter()

    def counted(self, bulletins: Iterable[Bulletin]) -> Iterator[Bulletin]:
        for one in bulletins:
            self._counts = self._counts.plus(count(one))
            self._severities.update(finding.severity for finding in one.findings)
            self._codes.update(finding.code for finding in one.findings)
            yield one

    def done(self, parts: Sequence[Part]) -> Done:
        return Done(
            parts=parts,
            counts=self._counts,
            severities=dict(self._severities),
            codes=dict(sorted(self._codes.items())),
        )
