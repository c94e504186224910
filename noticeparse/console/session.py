"""Reads the inputs of one command, one after the other, and keeps its exit status.

What cannot be read is said on standard error and does not keep the others from being read.
"""

from __future__ import annotations

import sys
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from noticeparse.console.chart_file import ChartFile
from noticeparse.console.progress import Progress
from noticeparse.console.settings import Settings
from noticeparse.console.statuses import NOT_READ, WITH_ERRORS
from noticeparse.files import read_intake
from noticeparse.intake import STANDARD_INPUT, NotReadable, Place, as_text, read, read_bytes
from noticeparse.records.bulletin import Bulletin
from noticeparse.sheets import after_applying
from noticeparse.together import seen_together
from noticeparse.writers.findings_out import is_as_grave
from noticeparse.writers.quoting import visible


class Reading(NamedTuple):
    """One input: how it is named to a person, its text, and what was read in it."""

    label: str
    text: str
    bulletin: Bulletin
    places: Sequence[Place] = ()
    """Where its lines stand on pages, where it has any."""


class Session:
    """One run over `files`, or standard input; `status` holds the worst so far.

    `known` is the chart list, and what was said of it; what one input puts on a chart is on it
    for those that follow.
    """

    def __init__(
        self, files: Sequence[str], settings: Settings, known: ChartFile, *, is_watched: bool
    ) -> None:
        self._files = list(files) or [STANDARD_INPUT]
        self._progress = Progress(len(self._files), is_wanted=not is_watched)
        self._settings = settings
        self._charts = known.charts
        self.status = known.status

    def readings(self) -> Iterator[Reading]:
        """What could be read, in the order of the inputs."""
        try:
            for file in self._files:
                try:
                    reading = self._read(file)
                except NotReadable as error:
                    self.refuse(file, error)
                else:
                    yield reading
                self._progress.advance()
        finally:
            self._progress.end()

    def readings_together(self) -> Iterator[Reading]:
        """The same, with what only shows where all inputs are seen together; these are kept."""
        if len(self._files) == 1:
            yield from self.readings()
            return
        readings = list(self.readings())
        bulletins = seen_together([(one.text, one.bulletin) for one in readings])
        for reading, bulletin in zip(readings, bulletins, strict=True):
            self._judge(bulletin)
            yield reading._replace(bulletin=bulletin)

    def say(self, line: str) -> None:
        """One line to standard error, above the bar where there is one."""
        self._progress.say(line)

    def refuse(self, file: str, error: NotReadable) -> None:
        """Say why an input cannot be read."""
        self.status = NOT_READ
        self.say(f"noticeparse: {label_of(file)}: {error}")

    def ask(self, file: str) -> None:
        """Say to a person that the text is awaited at the terminal."""
        if file == STANDARD_INPUT and sys.stdin is not None and sys.stdin.isatty():
            self.say("Reading from the terminal; end with Ctrl-D (Windows: Ctrl-Z, Enter).")

    def _read(self, file: str) -> Reading:
        self.ask(file)
        return self.read_data(file, read_bytes(file))

    def read_data(self, file: str, data: bytes) -> Reading:
        """The reading of an input of these bytes.

        Raises NotReadable.
        """
        intake = read(data, file)
        self._progress.begin(len(data))
        bulletin = read_intake(
            intake,
            name=None if file == STANDARD_INPUT else as_text(file),
            charts=self._charts,
            as_of=self._settings.as_of,
            region=self._settings.region,
        )
        if self._charts is not None:
            self._charts = after_applying(self._charts, bulletin)
        self._judge(bulletin)
        return Reading(label_of(file), intake.text, bulletin, intake.places)

    def _judge(self, bulletin: Bulletin) -> None:
        if is_as_grave(bulletin.findings, self._settings.fail_on):
            self.status = max(self.status, WITH_ERRORS)


def label_of(file: str) -> str:
    """How an input is named to a person."""
    return "<stdin>" if file == STANDARD_INPUT else visible(as_text(file))
