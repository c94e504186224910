"""`parse` to JSON Lines alone: written while it is read, so that a long input is never held."""

from __future__ import annotations

import os
from collections.abc import Iterator
from typing import IO

from noticeparse.console.long_input import Survey, opened, pieces, survey
from noticeparse.console.outlet import NotWritable
from noticeparse.console.session import Session, label_of
from noticeparse.console.telling import Counts, count, told_of
from noticeparse.intake import MEDIA_TYPE, STANDARD_INPUT, NotReadable, as_text, kind_of
from noticeparse.intake.kinds import HEAD
from noticeparse.parts import WHOLE, Terms, read_parts
from noticeparse.records.bulletin import Bulletin, Source
from noticeparse.sheets import after_applying
from noticeparse.writers import AS_USUAL
from noticeparse.writers.lines_out import write_lines
from noticeparse.writers.parts_out import write_parts


class Stream(Session):
    """A session whose inputs may be of any length."""

    def lines(self) -> Iterator[str]:
        """The lines of all inputs that can be read, in pieces.

        Raises NotWritable where an input fails when lines of it are written: those of the next
        one must not seem to go on with them.
        """
        try:
            for file in self._files:
                has_begun = False
                try:
                    for piece in self._lines_of(file):
                        has_begun = True
                        yield piece
                except NotReadable as error:
                    if has_begun:
                        words = f"{label_of(file)}: {error}; the output is broken off"
                        raise NotWritable(words) from error
                    self.refuse(file, error)
                self._progress.advance()
        finally:
            self._progress.end()

    def _lines_of(self, file: str) -> Iterator[str]:
        self.ask(file)
        with opened(file, WHOLE) as data:
            size = data.seek(0, os.SEEK_END)
            data.seek(0)
            if size > WHOLE and kind_of(data.read(HEAD), file) is None:
                known = survey(data, file)
                if known.characters > WHOLE:
                    yield from self._parts_of(file, data, known)
                    return
            data.seek(0)
            reading = self.read_data(file, data.read())
        yield from write_lines(reading.bulletin)
        self._tell(reading.label, count(reading.bulletin))

    def _parts_of(self, file: str, data: IO[bytes], known: Survey) -> Iterator[str]:
        self._progress.begin(data.seek(0, os.SEEK_END))
        source = Source(
            name=None if file == STANDARD_INPUT else as_text(file),
            media_type=MEDIA_TYPE,
            sha256=known.sha256,
            characters=known.characters,
        )
        terms = Terms(
            source=source,
            faults=known.faults,
            charts=self._charts,
            as_of=self._settings.as_of,
            region=self._settings.region,
        )
        counts = Counts()

        def judged() -> Iterator[Bulletin]:
            nonlocal counts
            for part in read_parts(pieces(data, known), terms):
                if self._charts is not None:
                    self._charts = after_applying(self._charts, part)
                self._judge(part)
                counts = counts.plus(count(part))
                yield part

        yield from write_parts(judged())
        self._tell(label_of(file), counts)

    def _tell(self, label: str, counts: Counts) -> None:
        for line in told_of(counts, label, ["jsonl"], AS_USUAL):
            self.say(line)
