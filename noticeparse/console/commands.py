"""What the commands do, `parse` apart: inputs in, writers out, an exit status back.

The options are told in `cli`; this module is imported only when a command runs, so that help and
version answer without the parser.
"""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Callable, Iterable, Iterator, Sequence
from typing import TYPE_CHECKING

from noticeparse.caution import CAUTION
from noticeparse.console.outlet import NotWritable, Outlet, ReaderGone, say
from noticeparse.console.statuses import NOT_READ, READ, WITH_ERRORS
from noticeparse.console.telling import WHAT_TO_DO
from noticeparse.patterns import kept_together

if TYPE_CHECKING:
    from noticeparse.console.session import Reading
    from noticeparse.console.settings import Settings
    from noticeparse.records.bulletin import Bulletin
    from noticeparse.records.depth import Depth
    from noticeparse.records.light import Light
    from noticeparse.records.position import Position
    from noticeparse.writers.position_forms import PositionForms


def check(files: Sequence[str], settings: Settings, *, form: str, is_brief: bool) -> int:
    """Write the findings of `files`, seen together, and their counts to standard error."""
    from noticeparse.console.chart_file import read_chart_file

    with kept_together("parse.patterns"):
        from noticeparse.console.session import Session
    from noticeparse.writers.findings_out import Tally

    known = read_chart_file(settings)
    if known.status == NOT_READ:
        return NOT_READ
    outlet = Outlet()
    session = Session(files, settings, known, is_watched=outlet.is_terminal())
    tally = Tally()
    write = _findings_writer(form, is_brief=is_brief, is_terminal=outlet.is_terminal())

    def pieces() -> Iterator[str]:
        is_any_read = False
        for reading in session.readings_together():
            is_any_read = True
            tally.add(reading.bulletin)
            yield from write(reading)
        # Also where there is no finding, since that is no proof that the notice is right.
        if is_any_read and form == "text":
            yield _caution(is_first=tally.is_without_findings or not is_brief)

    if write_pieces(outlet, pieces()):
        say(tally.line())
    return session.status


def _findings_writer(
    form: str, *, is_brief: bool, is_terminal: bool
) -> Callable[[Reading], Iterator[str]]:
    """What writes the findings of one reading: for a program, or for a person."""
    from noticeparse.console import colour
    from noticeparse.writers.findings_json import WRITERS
    from noticeparse.writers.findings_out import write_findings, write_headlines

    if form in WRITERS:
        return lambda reading: WRITERS[form](reading.bulletin)
    if is_brief:
        return lambda one: write_headlines(one.bulletin, one.label, one.places)
    is_coloured = colour.is_wanted(is_terminal=is_terminal)
    paint = colour.coloured if is_coloured else lambda words, _: words
    return lambda one: write_findings(one.bulletin, one.text, one.label, paint, places=one.places)


def _caution(*, is_first: bool = False) -> str:
    """The last line of every output for a person, which may be carried away from its messages."""
    return f"{CAUTION}\n" if is_first else f"\n{CAUTION}\n"


def charts(files: Sequence[str], settings: Settings) -> int:
    """Write the charts that `files` touch, with the notices for each in order of application."""
    from noticeparse.chart_order import is_settled, order_by_chart
    from noticeparse.console.chart_file import read_chart_file

    with kept_together("parse.patterns"):
        from noticeparse.console.session import Session
    from noticeparse.findings import is_outside
    from noticeparse.sheets import Sheets
    from noticeparse.writers.charts_out import write_charts
    from noticeparse.writers.findings_out import counted

    known = read_chart_file(settings)
    if known.status == NOT_READ:
        return NOT_READ
    outlet = Outlet()
    session = Session(files, settings, known, is_watched=outlet.is_terminal())
    elsewhere: Counter[str] = Counter()

    def labelled() -> Iterator[tuple[str, Bulletin]]:
        for reading in session.readings_together():
            found = reading.bulletin.findings
            elsewhere.update(one.severity for one in found if is_outside(one))
            yield reading.label, reading.bulletin

    sheets = Sheets(known.charts) if known.charts is not None else None
    panels = order_by_chart(labelled())
    status = session.status if is_settled(panels) else max(session.status, WITH_ERRORS)
    if not write_pieces(outlet, [*write_charts(panels, sheets), _caution()] if panels else []):
        return status
    if not panels and status != NOT_READ:
        say("no chart is named")
    if not is_settled(panels):
        say("a notice stands twice or the order runs in a circle; settle it by hand")
    words = [counted(elsewhere[one], one) for one in ("error", "warning") if elsewhere[one]]
    if words:
        say(f"{', '.join(words)} outside any notice; {WHAT_TO_DO}")
    return status


def values(kind: str, texts: Sequence[str], *, form: str) -> int:
    """Write each text of `texts`, read as a position, with its forms or not, a light, a depth."""
    from noticeparse.errors import NoticeParseError
    from noticeparse.intake import as_text
    from noticeparse.writers.values_out import write_refusal, write_value

    read = _reader(kind)
    outlet = Outlet()
    status = READ
    blank = ""
    for text in map(as_text, texts):
        try:
            value = read(text)
            piece = value.model_dump_json() + "\n" if form == "json" else write_value(value)
        except NoticeParseError as error:
            status = WITH_ERRORS
            if form == "text":
                say(write_refusal(error.finding, text))
                continue
            piece = _line({"error": error.finding.model_dump(mode="json"), "text": text})
        if not write_pieces(outlet, [blank + piece]):
            return status
        blank = "\n" if form == "text" else ""
    if blank:
        write_pieces(outlet, [_caution()])
    return status


def _reader(kind: str) -> Callable[[str], Position | PositionForms | Light | Depth]:
    from noticeparse import api
    from noticeparse.writers.position_forms import forms_of

    readers: dict[str, Callable[[str], Position | PositionForms | Light | Depth]] = {
        "position": api.parse_position,
        "position forms": lambda text: forms_of(api.parse_position(text)),
        "light": api.parse_light,
        "depth": api.parse_depth,
    }
    return readers[kind]


def _line(record: object) -> str:
    return json.dumps(record, ensure_ascii=False, separators=(",", ":")) + "\n"


def schema(*, form: str) -> int:
    """Write the JSON Schema of a bulletin, or of a line of JSON Lines."""
    from noticeparse.schema import bulletin_schema, line_schema

    made = line_schema() if form == "jsonl" else bulletin_schema()
    write_pieces(Outlet(), [json.dumps(made, ensure_ascii=False, indent=2) + "\n"])
    return READ


def explain(codes: Sequence[str], *, is_all: bool) -> int:
    """Write the catalogue entries of `codes`, or of all; say which codes are near a wrong one."""
    import difflib

    from noticeparse.catalogue import ENTRIES
    from noticeparse.writers.catalogue_out import write_entries
    from noticeparse.writers.quoting import visible

    status = READ
    wanted = sorted(ENTRIES) if is_all else [code.strip().lower() for code in codes]
    for code in wanted:
        if code not in ENTRIES:
            status = NOT_READ
            near = difflib.get_close_matches(code, ENTRIES, n=3)
            like = f"; is it {_either(near)}?" if near else ""
            say(f"noticeparse: no finding has the code `{visible(code)}`{like}")
    known = [ENTRIES[code] for code in wanted if code in ENTRIES]
    write_pieces(Outlet(), [*write_entries(known), _caution()] if known else [])
    return status


def _either(words: Sequence[str]) -> str:
    """`A`, `A or B`, `A, B or C`."""
    *most, last = words
    return f"{', '.join(most)} or {last}" if most else last


def write_pieces(outlet: Outlet, pieces: Iterable[str]) -> bool:
    """Write until all is written, or nobody reads any more; False then.

    Raises NotWritable.
    """
    try:
        for piece in pieces:
            outlet.write(piece)
    except ReaderGone:
        return False
    return True


def run(command: Callable[[], int]) -> int:
    """The exit status of a command whose output may fail."""
    try:
        return command()
    except NotWritable as error:
        say(f"noticeparse: {error}")
        return NOT_READ
