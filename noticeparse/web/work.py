"""What a worker process does: the bytes of one body in, the bytes of its answer or a problem out.

Decoding, JSON and reading all happen here, where a body that takes long or fails takes nothing
else with it.  The server framework is not imported.
"""

from __future__ import annotations

import json
import signal
import traceback
from collections.abc import Callable
from typing import Any, Literal, NamedTuple

from noticeparse import api
from noticeparse.caution import CAUTION
from noticeparse.chart_list import from_bytes
from noticeparse.checks.regions import Region
from noticeparse.errors import NoticeParseError
from noticeparse.files import read_intake
from noticeparse.intake import Intake, as_text
from noticeparse.pipeline import read_bulletin
from noticeparse.records.chart_list import ChartList
from noticeparse.records.depth import Depth
from noticeparse.records.finding import Finding
from noticeparse.records.light import Light
from noticeparse.records.position import Position
from noticeparse.web.charsets import text_of
from noticeparse.web.file_findings import with_file_findings
from noticeparse.web.files import file_answer, intake_of
from noticeparse.web.problems import Detail, Problem, Refused
from noticeparse.web.requests import (
    LONGEST_VALUE,
    MOST_TEXTS,
    FileOptions,
    ParseOptions,
    ParseRequest,
    SheetRequest,
    ValuesRequest,
    read_json,
    validated,
)
from noticeparse.worksheet.collecting import NotTouched, chart_sheets
from noticeparse.worksheet.documents import ExtraMissing, plot_document, sheet_document
from noticeparse.worksheet.plotting import NoPlot
from noticeparse.writers import new_writer, write
from noticeparse.writers.position_forms import PositionForms, forms_of

Kind = Literal[
    "notices", "file", "positions", "position-forms", "lights", "depths", "charts", "sheet"
]  # fmt: skip
Value = Position | PositionForms | Light | Depth

MEDIA_TYPES = {
    "json": "application/json",
    "jsonl": "application/x-ndjson",
    "geojson": "application/geo+json",
    "csv": "text/csv; charset=utf-8",
    "text": "text/plain; charset=utf-8",
}
"""The media type of an answer, by the name of its format."""

SHEET_MEDIA_TYPES = {
    "html": "text/html; charset=utf-8",
    "pdf": "application/pdf",
    "svg": "image/svg+xml",
}
"""That of a work sheet or a plot."""

_READERS: dict[Kind, Callable[[str], Value]] = {
    "positions": api.parse_position,
    "position-forms": lambda text: forms_of(api.parse_position(text)),
    "lights": api.parse_light,
    "depths": api.parse_depth,
}

EDITED = (
    "The text was changed on the page: compare every action with the original notice. What stands "
    "here as written is the text of the page."
)

_SPECIMEN = """\
1/26 TAVRENNE ISLANDS - Quill Sound - Wreck.
Chart 802 [2310/25] WGS84
Insert dangerous wreck, least depth 8.6m 47°13'.05S., 123°44'.20W.
"""


class Job(NamedTuple):
    """A body, what it is to be read as, and the options of its query."""

    kind: Kind
    body: bytes
    is_json: bool
    charset: str | None
    options: dict[str, Any]
    is_file: bool = False
    """Whether the body is a file of another kind than text."""


class Answer(NamedTuple):
    """A body that is a success."""

    media_type: str
    body: bytes


def warm_up() -> None:
    """Make a worker ready: what is built at the first reading is built now."""
    _leave_interrupts_to_server()
    read_bulletin(_SPECIMEN)


def _leave_interrupts_to_server() -> None:
    # Ctrl-C reaches every process of a terminal; the server is the one that ends its workers.
    signal.signal(signal.SIGINT, signal.SIG_IGN)


def perform_in_worker(job: Job) -> Answer | Problem:
    """The same as `perform`, also in a worker that was made without `warm_up`."""
    _leave_interrupts_to_server()
    return perform(job)


def perform(job: Job) -> Answer | Problem:
    """The answer to one body; never raises."""
    try:
        way = _WAYS.get(job.kind)
        return _values(job, _READERS[job.kind]) if way is None else way(job)
    except Refused as refused:
        return refused.problem
    except Exception as error:
        # The words of an exception may quote the text, which is not to be logged: only its place.
        last = traceback.extract_tb(error.__traceback__)[-1]
        place = f"{type(error).__name__} in {last.name}, line {last.lineno}"
        return Problem("internal", f"{place}; please report it with a text that shows it")


def _notices(job: Job) -> Answer:
    intake, options, charts, of_file = _request(job)
    region: Region | None = options.region
    bulletin = read_intake(
        intake, name=options.name, charts=charts, as_of=options.as_of, region=region
    )
    bulletin = with_file_findings(bulletin, of_file)
    pieces = write(new_writer(options.format), [bulletin])
    return Answer(MEDIA_TYPES[options.format], "".join(pieces).encode("utf-8"))


def _request(job: Job) -> tuple[Intake, ParseOptions, ChartList | None, list[Finding]]:
    if not job.is_json:
        options = validated(ParseOptions, job.options)
        if job.is_file:
            return intake_of(job.body, options.name), options, None, []
        return text_of(job.body, job.charset), options, None, []
    given = read_json(job.body)
    if isinstance(given, dict):
        given = {**job.options, **given}
    request = validated(ParseRequest, given)
    # The sum of a text without a file is worked out by the pipeline.
    intake = Intake(request.text, "", "text/plain", ())
    return intake, request, _chart_list(request.charts), request.file_findings


def _file(job: Job) -> Answer:
    name = validated(FileOptions, job.options).name
    return Answer(MEDIA_TYPES["json"], file_answer(job.body, name))


def _charts(job: Job) -> Answer:
    if job.is_json:
        raise Refused("media-type-unsupported", "send the list itself, as `text/plain`")
    charts = _chart_list(text_of(job.body, job.charset).text)
    assert charts is not None
    return Answer(MEDIA_TYPES["json"], charts.model_dump_json().encode("utf-8"))


def _chart_list(text: str | None) -> ChartList | None:
    if text is None:
        return None
    try:
        charts = from_bytes(text.encode("utf-8", "replace"))
    except NoticeParseError as error:
        findings = [error.finding]
    else:
        findings = [one for one in charts.findings if one.severity != "info"]
        if not findings:
            return charts
    errors = []
    for one in findings:
        where = f"line {one.span.line}, column {one.span.column}: " if one.span else ""
        errors.append(Detail("/charts", f"{where}{one.code}: {one.message}"))
    words = "correct the chart list; none of the notices was held against it"
    raise Refused("chart-list-unusable", words, tuple(errors))


def _sheet(job: Job) -> Answer:
    if not job.is_json:
        raise Refused("media-type-unsupported", "say `Content-Type: application/json`")
    request = validated(SheetRequest, read_json(job.body))
    charts = _chart_list(request.charts)
    bulletin = read_bulletin(
        request.text,
        name=request.name,
        charts=charts,
        as_of=request.as_of,
        region=request.region,
    )
    bulletin = with_file_findings(bulletin, request.file_findings)
    label = request.name or "text"
    try:
        wanted = [request.chart] if request.chart is not None else []
        sheets = chart_sheets([(label, bulletin)], charts, wanted)
        if request.edited:
            sheets = [one._replace(alarms=[EDITED, *one.alarms]) for one in sheets]
        write_it = plot_document if request.is_plot else sheet_document
        document = write_it(sheets, request.format)
    except NotTouched as error:
        raise Refused("chart-not-touched", str(error.args[0])) from None
    except NoPlot as error:
        raise Refused("chart-not-plotted", str(error.args[0])) from None
    except ExtraMissing as error:
        raise Refused("package-missing", str(error)) from None
    return Answer(SHEET_MEDIA_TYPES[request.format], document)


def _values(job: Job, read: Callable[[str], Value]) -> Answer:
    texts = _texts(job)
    results = ",".join(_result(text, read) for text in texts)
    body = f'{{"caution":{json.dumps(CAUTION)},"results":[{results}]}}\n'
    return Answer(MEDIA_TYPES["json"], body.encode("utf-8"))


def _texts(job: Job) -> list[str]:
    if job.is_json:
        return validated(ValuesRequest, read_json(job.body)).all()
    intake = text_of(job.body, job.charset)
    if any(fault.code == "text-not-utf8" for fault in intake.faults):
        raise Refused("text-unreadable", "characters are lost: the body is not UTF-8")
    texts = [line for line in intake.text.split("\n") if line and not line.isspace()]
    if len(texts) > MOST_TEXTS:
        raise Refused("request-invalid", f"more than {MOST_TEXTS} lines; send them in parts")
    if any(len(text) > LONGEST_VALUE for text in texts):
        words = f"a line is longer than {LONGEST_VALUE} characters, so it is no single value"
        raise Refused("request-invalid", words)
    return texts


def _result(text: str, read: Callable[[str], Value]) -> str:
    """The record, or the finding that says why there is none, as the command line writes them."""
    try:
        return read(text).model_dump_json()
    except NoticeParseError as error:
        refusal = {"error": error.finding.model_dump(mode="json"), "text": as_text(text)}
        return json.dumps(refusal, ensure_ascii=False, separators=(",", ":"))


_WAYS: dict[Kind, Callable[[Job], Answer]] = {
    "notices": _notices, "file": _file, "charts": _charts, "sheet": _sheet,
}  # fmt: skip
"""What is done with a body that holds no single values."""
