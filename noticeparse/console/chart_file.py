"""Reads the chart list of a command, and says on standard error what is wrong with it."""

from __future__ import annotations

from typing import NamedTuple

from noticeparse.console.outlet import say
from noticeparse.console.settings import Settings
from noticeparse.console.statuses import NOT_READ, READ, WITH_ERRORS
from noticeparse.errors import NoticeParseError
from noticeparse.intake import NotReadable, as_text, read_bytes
from noticeparse.records.chart_list import ChartList
from noticeparse.writers.findings_out import headline, is_as_grave
from noticeparse.writers.quoting import visible


class ChartFile(NamedTuple):
    """The list, or None where none is wanted or it cannot be read, and the status of that."""

    charts: ChartList | None
    status: int


def read_chart_file(settings: Settings) -> ChartFile:
    """The chart list asked for; its findings go to standard error, in the form of `check`."""
    path = settings.chart_list
    if path is None:
        return ChartFile(None, READ)
    # Only a command that was given a list needs its readers.
    from noticeparse.chart_list import from_bytes

    label = visible(as_text(path))
    try:
        charts = from_bytes(read_bytes(path), as_text(path))
    except NotReadable as error:
        say(f"noticeparse: {label}: {error}")
        return ChartFile(None, NOT_READ)
    except NoticeParseError as error:
        say(headline(error.finding, label))
        return ChartFile(None, NOT_READ)
    for finding in charts.findings:
        say(headline(finding, label))
    is_grave = is_as_grave(charts.findings, settings.fail_on)
    return ChartFile(charts, WITH_ERRORS if is_grave else READ)
