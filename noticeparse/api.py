"""The front door: text in, records out.

`parse` reads a whole text and never refuses; what it could not read stands in the findings.  The
single readers refuse what cannot be read for certain.
"""

from __future__ import annotations

import os
from bisect import bisect_left
from collections.abc import Iterable, Iterator
from datetime import date
from pathlib import Path

from noticeparse.build.positions import stated
from noticeparse.catalogue import ENTRIES
from noticeparse.characters import hidden_characters
from noticeparse.chart_list import from_bytes
from noticeparse.checks.regions import Region
from noticeparse.context import Context
from noticeparse.errors import NoticeParseError
from noticeparse.faults import Fault, shifted
from noticeparse.files import read_given
from noticeparse.findings import Located, to_finding
from noticeparse.layout.line.elements import Element
from noticeparse.layout.line.halves import join_points
from noticeparse.layout.line.lines import read_lines
from noticeparse.parts import Terms, read_parts, with_all_findings
from noticeparse.pipeline import read_bulletin
from noticeparse.readers.depths import read_depth
from noticeparse.readers.lights import read_light
from noticeparse.readers.positions import PointReading, faults_of_form, is_doubtful_in
from noticeparse.readers.whole_positions import read_whole_position
from noticeparse.records.bulletin import Bulletin
from noticeparse.records.chart_list import ChartList
from noticeparse.records.depth import Depth
from noticeparse.records.light import Light
from noticeparse.records.notice import Notice
from noticeparse.records.position import Position
from noticeparse.text import hidden_in, repair, without_surrogates

# A difference in precision may be the writer's habit; everything else in doubt is refused.
_MAY_STAND = frozenset({"position-precision-differs"})
_LINE_ENDS = tuple("\n\r\v\f\x1c\x1d\x1e\x85\u2028\u2029")


def parse(
    text: str,
    *,
    name: str | None = None,
    charts: ChartList | None = None,
    as_of: date | None = None,
    region: Region | None = None,
) -> Bulletin:
    """Read one bulletin; `name` is kept as that of its source.

    Gives a `Bulletin`: notices with their charts and actions, findings, and the account of every
    character, all in text order, spans in code points of `text`.  Positions are degrees with south
    and west negative (ISO 6709), lights seconds, metres and nautical miles (INT 1), depths metres.

    With `charts`, from `read_chart_list`, positions are put on the sheets of the list and held
    against them.  Temporary notices that ended before the day `as_of` have a finding that says so,
    beside those that ended before the edition appeared; without it no day is assumed.  `region`
    is the region of the IALA buoyage system, "A" or "B", that lateral marks must follow; without
    it they must only follow the same one within a notice.

    Never raises on any text; raises TypeError for what is no text or no chart list, ValueError for
    what is no region.
    """
    _require_text(text)
    _require_terms(charts, region)
    return read_bulletin(text, name=name, charts=charts, as_of=as_of, region=region)


def read_file(
    file: str | os.PathLike[str] | bytes,
    *,
    name: str | None = None,
    charts: ChartList | None = None,
    as_of: date | None = None,
    region: Region | None = None,
) -> Bulletin:
    """Read a file of any kind, a path or its bytes: plain text, PDF, HTML, mail or .docx.

    Gives a `Bulletin`; spans count in the text that the file is turned into.  The other arguments
    are those of `parse`; `name` may tell the kind of bytes.  All but plain text takes the extra
    `intake`, and a process of its own, bounded in time and memory.

    Raises OSError where the file cannot be opened, NotReadable (a ValueError) where it is no text:
    a scan, a damaged or encrypted file, a kind or library that is not there.
    """
    _require_terms(charts, region)
    return read_given(file, name=name, charts=charts, as_of=as_of, region=region)


def _require_terms(charts: ChartList | None, region: Region | None) -> None:
    if charts is not None and not isinstance(charts, ChartList):
        raise TypeError(f"charts must be a ChartList, not {type(charts).__name__}")
    if region not in (None, "A", "B"):
        raise ValueError(f'region must be "A" or "B", not {region!r}')


def iter_notices(
    lines: Iterable[str],
    *,
    charts: ChartList | None = None,
    as_of: date | None = None,
    region: Region | None = None,
) -> Iterator[Notice]:
    """The notices of a stream of lines, such as an open text file, in bounded memory.

    Gives each `Notice` as it is read.  A line may come with its line end or without.  Spans and
    paths count in the whole stream.  Each finding outside any notice goes to the next notice, or
    to the last; a stream without a notice gives nothing, and its findings are shown by `parse`
    only.  Up to 1 000 000 characters the notices are those of `parse`.  A longer text is read in
    parts, cut where notices begin: the finding `text-in-parts` says so, numbers, lists and
    previous notices are not compared over the whole, a notice whose charts stand far apart comes
    as two, a position is held against its neighbours in its own part, and a datum or depth unit
    that a later section states for all charts holds from its part on.  Where no notice begins for
    1 000 000 characters the text is cut all the same, with the error finding `text-cut`.

    The other arguments are those of `parse`.

    Raises TypeError for one text in place of its lines, for a line that is no text and for what is
    no chart list, ValueError for what is no region.
    """
    if isinstance(lines, str):
        raise TypeError("lines must be an iterable of lines, not one text; split it, or use parse")
    _require_terms(charts, region)
    return with_all_findings(
        read_parts(_ended(lines), Terms(charts=charts, as_of=as_of, region=region))
    )


def _ended(lines: Iterable[str]) -> Iterator[str]:
    """The lines, each with an end before the next one comes."""
    end = ""
    for line in lines:
        _require_text(line)
        yield end + line
        # Whatever `splitlines` takes for an end is one, so that nothing is put into the text.
        end = "" if line.endswith(_LINE_ENDS) else "\n"


def read_chart_list(path: str | os.PathLike[str]) -> ChartList:
    """Read the list of the charts on board, a CSV or GeoJSON file (RFC 7946).

    Gives a `ChartList`: charts and panels in the order of the file, limits in degrees.  What
    cannot be used is left out and stands in the findings of the list.  Raises OSError where the
    file cannot be opened, and NoticeParseError where it is no chart list at all.
    """
    return from_bytes(Path(path).read_bytes(), os.fspath(path))


def render(notice: Notice) -> str:
    """Write a notice in the canonical layout, a `str`: one action a line, positions in one column.

    Positions stand in the unit and with the digits of their `iso6709`, depths with their unit.
    The text reads back, by `parse`, as the same record but for `text`, `heading`, `via`, spans,
    findings and words as written; it is read so before it is handed out.

    Raises TypeError for what is no notice, and ValueError where an action is not `usable` or
    where no wording reads back as the record says; the message names the action.
    """
    if not isinstance(notice, Notice):
        raise TypeError(f"notice must be a Notice, not {type(notice).__name__}")
    from noticeparse.canonical import written_notice  # not for those who only read

    written = written_notice(notice)
    name = f"notice {notice.id}" if notice.id is not None else "the notice"
    for at, row, reason in written.refused:
        raise ValueError(f"/charts/{at}/actions/{row} of {name} cannot be written: {reason}")
    if written.differs is not None:
        raise ValueError(f"{name} cannot be written: {written.differs}")
    return written.text


def parse_position(text: str) -> Position:
    """Read one position, degrees with south and west negative (ISO 6709).

    Gives a `Position`: `exact()` is the pair of fractions that the figures state, `lat` and `lon`
    the numbers nearest to it, `iso6709` the same in the unit and with the digits written.

    Raises TypeError for what is no text, and NoticeParseError where it cannot be read for certain:
    a missing hemisphere, 60 minutes, a letter among the figures, an exchanged pair.
    """
    context = _context_of_value(text)
    reading = read_whole_position(context.text)
    _refuse(context, reading.faults)
    if reading.point is None:
        raise _error(context, _whole(context, "position-unreadable"))
    element = Element("point", reading.start, reading.end, True, reading)
    position = stated(context, reading.point, element, None)
    _refuse(context, faults_of_form(position.written, position.iso6709, reading.start))
    return position


def parse_light(text: str) -> Light:
    """Read one light character: seconds, metres, nautical miles, degrees true from seaward.

    Gives a `Light` with exact figures; abbreviations are those of INT 1, section P, codes those of
    S-57.

    Raises TypeError for what is no text, and NoticeParseError where it cannot be read for certain
    or names more than one light.
    """
    context = _context_of_value(text)
    reading = read_light(context.text.strip())
    _refuse(context, _of_whole(context, reading.faults))
    if len(reading.lights) != 1:
        code = "light-several" if reading.lights else "light-unreadable"
        raise _error(context, _whole(context, code))
    return reading.lights[0]


def parse_depth(text: str) -> Depth:
    """Read one depth: the value in metres, a drying height negative, without a unit as metres.

    Gives a `Depth` with the exact value: a foot is 0.3048 m, a fathom six feet (1.8288 m); forms
    are those of INT 1, section I.

    Raises TypeError for what is no text, and NoticeParseError where it cannot be read for certain.
    """
    context = _context_of_value(text)
    reading = read_depth(context.text.strip(), None)
    _refuse(context, _of_whole(context, reading.faults))
    if reading.depth is None:
        raise _error(context, _whole(context, "depth-unread"))
    return reading.depth


def find_positions(text: str) -> list[Position]:
    """The positions in running text that can be read for certain, in text order.

    Gives a list of `Position`, degrees with south and west negative (ISO 6709), empty where there
    is none; what is in doubt is left out.  Raises TypeError for what is no text.
    """
    _require_text(text)
    context = _context(text)
    split = [one.start for one in hidden_in(context.repaired) if one.splits_figures]
    found: list[Position] = []
    elements = [element for line in read_lines(context.text) for element in line.elements]
    for element in (one for one in join_points(context.text, elements) if one.kind == "point"):
        reading: PointReading = element.value
        doubtful = [fault for fault in reading.faults if fault.code not in _MAY_STAND]
        if reading.point is None or doubtful:
            continue
        position = stated(context, reading.point, element, None)
        row = bisect_left(split, position.span.start)
        if is_doubtful_in(context.text, element.start, position.written, position.iso6709):
            continue
        if row == len(split) or split[row] >= position.span.end:
            found.append(position)
    return found


def _require_text(text: object) -> None:
    if not isinstance(text, str):
        raise TypeError(f"text must be str, not {type(text).__name__}")


def _context(text: str) -> Context:
    repaired = repair(without_surrogates(text))
    return Context(repaired, repaired.text, [])


def _context_of_value(text: str) -> Context:
    """The context of a text that is one value; a figure in two halves is none."""
    _require_text(text)
    context = _context(text)
    for located in hidden_characters(context):
        if located.severity == "warning":
            raise NoticeParseError(to_finding(context, located))
    return context


def _whole(context: Context, code: str) -> Fault:
    return Fault(code, 0, len(context.text), {"written": context.text.strip()})


def _error(context: Context, fault: Fault) -> NoticeParseError:
    return NoticeParseError(to_finding(context, Located(fault)))


def _of_whole(context: Context, faults: Iterable[Fault]) -> list[Fault]:
    """Faults of the text without its leading blanks, as faults of the text."""
    return shifted(faults, len(context.text) - len(context.text.lstrip()))


def _refuse(context: Context, faults: Iterable[Fault]) -> None:
    """Raise for the first fault that is an error or a doubt about what was written."""
    for fault in _in_doubt(faults):
        raise _error(context, fault)


def _in_doubt(faults: Iterable[Fault]) -> Iterator[Fault]:
    for fault in faults:
        if fault.code in _MAY_STAND or ENTRIES[fault.code].severity == "info":
            continue
        yield fault
