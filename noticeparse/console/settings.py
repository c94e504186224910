"""What a person asks of a run, beside its inputs and the form of its output."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

if TYPE_CHECKING:
    from datetime import date

    from noticeparse.checks.regions import Region
    from noticeparse.records.finding import Severity


class Settings(NamedTuple):
    """How the inputs of a command are to be read and judged."""

    chart_list: str | None = None
    """The name of the file of the charts on board."""
    as_of: date | None = None
    """The day on which temporary notices must still be in force."""
    region: Region | None = None
    """The region of buoyage of the lateral marks."""
    fail_on: Severity = "error"
    """The least severity of a finding for which a run ends with status 1."""
