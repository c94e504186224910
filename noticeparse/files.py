"""From the intake of a file to its bulletin, or to the findings of the intake alone."""

from __future__ import annotations

import os
from datetime import date
from pathlib import Path

from noticeparse.build.doubtful_places import doubts_in_place
from noticeparse.checks.regions import Region
from noticeparse.collector import patient_collector
from noticeparse.context import Context
from noticeparse.findings import Located, in_text_order, merged, to_finding
from noticeparse.intake import Intake, as_text, read
from noticeparse.pipeline import laid_out, read_laid, source_of
from noticeparse.records.bulletin import Bulletin
from noticeparse.records.chart_list import ChartList
from noticeparse.records.finding import Finding
from noticeparse.text import repair, without_surrogates


def read_intake(
    intake: Intake,
    *,
    name: str | None = None,
    charts: ChartList | None = None,
    as_of: date | None = None,
    region: Region | None = None,
) -> Bulletin:
    """Read the text of a file; the other arguments are those of `parse`."""
    with patient_collector():
        return read_laid(
            laid_out(intake.text, furniture=intake.furniture),
            source=source_of(intake.text, name, intake.media_type, intake.sha256 or None),
            faults=intake.faults,
            doubts=intake.doubts,
            charts=charts,
            as_of=as_of,
            region=region,
        )


def read_given(
    file: str | os.PathLike[str] | bytes,
    *,
    name: str | None = None,
    charts: ChartList | None = None,
    as_of: date | None = None,
    region: Region | None = None,
) -> Bulletin:
    """Read a file, by its path or its bytes.

    Raises OSError and NotReadable.
    """
    if isinstance(file, bytes):
        data = file
    else:
        data = Path(file).read_bytes()
        name = as_text(os.fspath(file)) if name is None else name
    return read_intake(read(data, name), name=name, charts=charts, as_of=as_of, region=region)


def intake_findings(intake: Intake) -> list[Finding]:
    """What is to be said of the text of a file by itself, before anything is read in it."""
    repaired = repair(without_surrogates(intake.text))
    context = Context(repaired, repaired.text, [])
    located = [Located(fault) for fault in intake.faults]
    located += doubts_in_place(context, intake.doubts, ())
    return sorted((to_finding(context, one) for one in merged(located)), key=in_text_order)
