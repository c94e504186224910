"""Work sheets as one HTML file: no script, nothing from elsewhere, made to be printed on A4.

Each panel is a table whose head, with the chart and the caution, comes again on every page; an
action is never cut by the end of a page.  Words of the notices are always escaped.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from html import escape

from noticeparse.caution import CAUTION
from noticeparse.packaged import packaged
from noticeparse.worksheet.feature_words import Fact
from noticeparse.worksheet.model import ChartSheet, Line, NoticeBlock, PanelSheet, Told
from noticeparse.worksheet.places import Place, Where
from noticeparse.writers.quoting import visible

STOP = "Must not be applied"
CANCELLED = "Cancelled: must not be applied"
UNLISTED = "No places on the sheet: the chart, or its panel, is not in the chart list."
PLACES = "Places on the sheet: millimetres right and up from the lower left corner of the frame."
TICKS = ("applied", "checked by colleague")


def write_html(sheets: Sequence[ChartSheet]) -> Iterator[str]:
    """The document, piece by piece."""
    style = packaged(__package__, "sheet.css").decode("utf-8")
    title = _text(f"Work sheet: {', '.join(sheet.name for sheet in sheets)}")
    yield (
        '<!doctype html>\n<html lang="en">\n<head>\n<meta charset="utf-8">\n'
        '<meta name="viewport" content="width=device-width, initial-scale=1">\n'
        f"<title>{title}</title>\n<style>\n{style}</style>\n</head>\n<body>\n<main>\n"
    )
    for sheet in sheets:
        yield from (f"{piece}\n" for piece in _chart(sheet))
    yield "</main>\n</body>\n</html>\n"


def _text(words: str) -> str:
    return escape(visible(words))


def _chart(sheet: ChartSheet) -> Iterator[str]:
    yield '<article class="chart">'
    yield f"<header>\n<h1>Work sheet, {_text(sheet.name)}</h1>"
    if sheet.title:
        yield f'<p class="title">{_text(sheet.title)}</p>'
    if sheet.is_listed is False:
        yield f'<p class="note">{UNLISTED}</p>'
    yield f'<p class="account">{_text(sheet.account())}</p>'
    if sheet.is_listed:
        yield f'<p class="note">{PLACES}</p>'
    for alarm in sheet.alarms:
        yield f'<p class="alarm">{_text(alarm)}</p>'
    for words in sheet.before:
        yield f'<p class="before">{_tick(words, "seen on the chart", words)}</p>'
    yield from (f'<p class="note">{_text(note)}</p>' for note in sheet.notes)
    yield "</header>"
    for panel in sheet.panels:
        yield from _panel(sheet, panel)
    yield from _outside(sheet.told)
    yield from _foot(sheet)
    yield "</article>"


def _tick(shown: str, done: str, what: str) -> str:
    name = escape(visible(f"{what}: {done}"), quote=True)
    return f'<label><input type="checkbox" aria-label="{name}"> {_text(shown)}</label>'


def _panel(sheet: ChartSheet, panel: PanelSheet) -> Iterator[str]:
    name = f"{sheet.name}, {panel.name}" if panel.name else sheet.name
    yield "<table>"
    if panel.name or len(sheet.panels) > 1:
        title = f": {panel.title}" if panel.title and panel.name else ""
        yield f"<caption>{_text(panel.name or 'The chart itself')}{_text(title)}</caption>"
    yield (
        f'<thead>\n<tr class="running"><td colspan="3"><b>{_text(name)}</b>{_text(CAUTION)}</td>'
        '</tr>\n<tr class="columns"><th scope="col">No.</th><th scope="col">Action</th>'
        '<th scope="col">Done</th></tr>\n</thead>'
    )
    for block in panel.blocks:
        yield "<tbody>"
        yield from _block(block)
        yield "</tbody>"
    yield "</table>"


def _block(block: NoticeBlock) -> Iterator[str]:
    yield '<tr class="notice"><th colspan="3" scope="rowgroup">'
    heading = f' <span class="heading">{_text(block.heading)}</span>' if block.heading else ""
    yield f"<h2>{_text(block.name)}</h2>{heading}"
    yield from (f'<p class="status">{_text(alarm)}</p>' for alarm in block.alarms)
    yield _definitions(block.facts, "facts")
    yield "</th></tr>"
    for line in block.lines:
        yield from _line(line)
    if block.remarks or block.told or not block.lines:
        yield '<tr class="after"><td colspan="3">'
        if not block.lines:
            yield "<p>No action for this chart.</p>"
        yield from (f"<p>{_text(remark)}</p>" for remark in block.remarks)
        yield _told(block.told)
        yield "</td></tr>"


def _definitions(facts: Iterable[Fact], kind: str) -> str:
    rows = "".join(
        f"<div><dt>{_text(fact.label)}</dt> <dd>{_text(fact.words)}</dd></div>" for fact in facts
    )
    return f'<dl class="{kind}">{rows}</dl>' if rows else ""


def _line(line: Line) -> Iterator[str]:
    kinds = ["action", *(["pencil"] if line.is_in_pencil else [])]
    if not line.is_usable:
        kinds.append("refused")
    yield f'<tr class="{" ".join(kinds)}" id="{line.key}">'
    yield f'<td class="number"><a href="#{line.key}">{line.number}</a></td>\n<td>'
    if line.is_usable:
        label = f"({line.label}) " if line.label else ""
        yield f'<p class="what"><b>{line.verb}</b> {_text(label + line.title)}</p>'
        yield from map(_where, line.where)
        yield _definitions(line.facts, "detail")
    else:
        yield f'<p class="stop">{CANCELLED if line.is_cancelled else STOP}</p>'
    yield (
        f'<p class="source">{"As written" if line.is_usable else "The notice says"}, '
        f"{_text(line.source)}: {_text(line.written)}</p>"
    )
    yield _told(line.told)
    yield f'</td>\n<td class="done">{_done(line)}</td></tr>'


def _done(line: Line) -> str:
    if not line.is_usable:
        return f"<p>No box: read the notice.</p>{_last(line)}"
    pencil = "<p>in pencil</p>" if line.is_in_pencil else ""
    boxes = "".join(f"<li>{_tick(one, one, f'action {line.number}')}</li>" for one in TICKS)
    return f"{pencil}<ul>{boxes}</ul>{_last(line)}"


def _last(line: Line) -> str:
    return f'<p class="last">notice <b>{_text(line.notice)}</b></p>'


def _where(where: Where) -> str:
    lead = " ".join(part for part in (where.lead, where.how) if part)
    head = f'<p class="lead">{_text(lead)}</p>' if lead else ""
    places = "".join(map(_place, where.places))
    notes = "".join(f'<p class="remark-of-place">{_text(note)}</p>' for note in where.notes)
    tag = "ol" if len(where.places) > 1 else "ul"
    listed = f"<{tag}>{places}</{tag}>" if places else ""
    kind = "where reference" if where.is_reference else "where"
    return f'<div class="{kind}">{head}{listed}{notes}</div>'


def _place(place: Place) -> str:
    parts = [f'<span class="exact">{_text(place.exact)}</span>']
    if place.notes:
        parts.append(f'<span class="remark-of-place">{_text(", ".join(place.notes))}</span>')
    sheet = f"<b>{_text(place.on_sheet)}</b> " if place.on_sheet else ""
    parts.append(
        f'<span class="on-sheet">{sheet}<span>written {_text(place.written)}</span></span>'
    )
    return f'<li class="place">{" ".join(parts)}</li>'


def _told(told: Iterable[Told]) -> str:
    rows = "".join(
        f'<li class="{one.severity}"><b>{one.severity}</b> {_text(one.words)}'
        + (f"; {_text(one.hint)}" if one.hint else "")
        + "</li>"
        for one in told
    )
    return f'<ul class="told">{rows}</ul>' if rows else ""


def _outside(told: list[Told]) -> Iterator[str]:
    if told:
        yield (
            '<section class="outside"><h2>Outside any notice: it may hold something for this '
            f"chart</h2>{_told(told)}</section>"
        )


def _foot(sheet: ChartSheet) -> Iterator[str]:
    yield (
        f'<footer class="foot"><p class="account">{_text(sheet.account())}. The records hold as '
        f"many for {_text(sheet.name)}: none is left out.</p>"
    )
    yield f"<p>{_text(CAUTION)}</p>"
    yield (
        '<p class="signed"><span>applied by, date</span><span>checked by, date</span></p></footer>'
    )
