"""The head of a notice and the heads of its chart sections."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from noticeparse.canonical.words import on_one_line, read_as
from noticeparse.readers.dates import full_year
from noticeparse.readers.headings import read_heading
from noticeparse.records.chart import ChartSection
from noticeparse.records.notice import Notice, Validity
from noticeparse.records.reference import NoticeRef, NoticeStatus

_MARKS: dict[NoticeStatus, str] = {"temporary": "(T)", "preliminary": "(P)"}
_UNITS = {"m": "metres", "fm_ft": "fathoms and feet", "ft": "feet"}
_PANELS = ("plan", "panel", "inset")


def number(ref: NoticeRef) -> str:
    """`2417(T)/26`; the whole year where its last two figures would be read as another."""
    figures = f"{ref.number}{_MARKS.get(ref.status, '')}"
    if ref.year is None:
        return figures
    short = f"{ref.year % 100:02d}"
    return f"{figures}/{short if full_year(short, None) == ref.year else ref.year}"


def opening(notice: Notice) -> str:
    """The first line: series, star, number and heading."""
    if notice.number is None:
        return heading(notice)
    status = notice.status if notice.status != "radio_warning" else "permanent"
    ref = NoticeRef(number=notice.number, year=notice.year, status=status)
    star = "*" if notice.original_information else ""
    series = f"{notice.series} " if notice.series else ""
    words = f"{series}{star}{number(ref)}"
    if notice.status == "radio_warning":
        return words
    return "  ".join(part for part in (words, heading(notice)) if part)


def heading(notice: Notice) -> str:
    """`TAVRENNE ISLANDS - Quill Sound - Wreck. Light.`: regions, then subjects."""
    made = " - ".join(notice.regions)
    if notice.subjects:
        made += " - " * bool(made) + ". ".join(notice.subjects) + "."
    read = read_heading(read_as(made))
    wanted = ([read_as(one) for one in notice.regions], [read_as(one) for one in notice.subjects])
    if (read.regions, read.subjects) == wanted or notice.heading is None:
        return made
    return on_one_line(notice.heading)


def clauses(notice: Notice, told: Sequence[NoticeRef], *, is_valid_told: bool) -> Iterator[str]:
    """Source, cancelled notices and validity, as far as the remarks do not tell them."""
    if notice.authority:
        yield f"Source: {on_one_line(notice.authority)}"
    cancelled = _untold(notice.cancels, told)
    if len(cancelled) == 1:
        yield f"Notice {number(cancelled[0])} is cancelled."
    elif cancelled:
        numbers = [number(ref) for ref in cancelled]
        yield f"Notices {', '.join(numbers[:-1])} and {numbers[-1]} are cancelled."
    if notice.valid is not None and not is_valid_told:
        yield _validity(notice.valid)


def _untold(cancels: Sequence[NoticeRef], told: Sequence[NoticeRef]) -> Sequence[NoticeRef]:
    """The fewest of the cancelled notices that bring the others into their order."""
    for count in range(len(cancels) + 1):
        if list(dict.fromkeys([*cancels[:count], *told])) == list(cancels):
            return cancels[:count]
    return cancels


def _validity(valid: Validity) -> str:
    if valid.from_ is None:
        return f"Valid: until {valid.until}"
    if valid.until is None:
        return f"Valid: from {valid.from_}"
    return f"Valid: from {valid.from_} to {valid.until}"


def chart_head(section: ChartSection) -> str:
    """`Chart 802 (INT 9871), WGS84, depths in metres, after notice 2310/26`."""
    words = "Chart"
    if section.chart is not None:
        words += f" {section.chart}"
    if section.international is not None:
        words += f" ({section.international})" if section.chart else f" {section.international}"
    if section.panel is not None:
        is_nameless = section.panel.lower() in _PANELS
        words += f" ({section.panel})" if is_nameless else f", {_panel(section.panel)}"
    if section.edition is not None:
        words += f", edition {section.edition}"
    if section.edition_date is not None:
        words += f" of {section.edition_date}" if section.edition else f", {section.edition_date}"
    if section.datum is not None:
        words += f", {_datum(section)}"
    if section.depth_unit is not None:
        words += f", depths in {_UNITS[section.depth_unit]}"
    if section.previous is not None:
        is_whole = section.previous.year is not None
        # A number without its year is told from other figures by its bracket.
        words += ", after notice " if is_whole else " [previous notice "
        words += number(section.previous) + "]" * (not is_whole)
    elif section.previous_written:
        words += f" [{on_one_line(section.previous_written)}]"
    return words


def _datum(section: ChartSection) -> str:
    assert section.datum is not None
    name = on_one_line(section.datum.name)
    return name if section.datum.epsg is not None or "datum" in name.lower() else f"datum: {name}"


def _panel(words: str) -> str:
    kind, _, name = on_one_line(words).partition(" ")
    return f'{kind} "{name}"' if kind.lower() in _PANELS and name else words
