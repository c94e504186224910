"""What a sheet must not send a person to: cancelled actions, places on no paper, half a move."""

from __future__ import annotations

from noticeparse.worksheet.html_out import CANCELLED, write_html
from noticeparse.worksheet.model import ChartSheet
from noticeparse.worksheet.places import worked_out
from noticeparse.worksheet.plotting import plots_of, whole_page
from noticeparse.worksheet.strip import account, left_out_words
from noticeparse.worksheet.svg_out import write_svg
from tests.worksheet.week import chart_list, sheets_of

EDITION = """\
2430/26  TAVRENNE ISLANDS - Quill Sound - Wreck.
Chart 802 [last correction 2429/26] WGS84
Insert wreck 47°18'.05S., 123°44'.20W.
Move light-buoy, Fl.Y.5s, from 47°18'.34S., 123°45'.67W. to 49°12'.41S., 123°45'.58W.
Insert obstruction 137°T, 2.4 miles from 47°18'.34S., 123°45'.67W.
Insert wreck 46°13'.05S., 123°44'.20W.

2420(T)/26  TAVRENNE ISLANDS - Quill Sound - Buoy.
Chart 802 [last correction 2310/26] WGS84
Insert buoy 47°18'.05S., 123°44'.20W.

2428/26  TAVRENNE ISLANDS - Quill Sound - Cancelled.
Chart 802 [last correction 2310/26] WGS84
Notice 2420(T)/26 is hereby cancelled.
Delete wreck 47°19'.05S., 123°44'.20W.

2431/26  TAVRENNE ISLANDS - Quill Sound - Buoy.
Chart 802 [last correction 2430/26] NAD27
Insert special light-buoy, Fl.Y.5s 47°18'.05S., 123°44'.20W.
"""


def the_sheet() -> ChartSheet:
    (sheet,) = sheets_of(EDITION, "802", charts=chart_list())
    return sheet


def test_cancelled_notice_has_no_box_and_is_not_plotted() -> None:
    sheet = the_sheet()
    (line,) = [one for one in sheet.lines() if one.notice.startswith("2420")]
    assert line.is_cancelled
    assert not line.is_usable
    assert not line.where
    page = "".join(write_html([sheet]))
    row = page[page.index(f'id="{line.key}"') :].partition("</tr>")[0]
    assert CANCELLED in row
    assert "checkbox" not in row
    (plot,) = plots_of(sheet)
    assert line.number not in {one.line.number for one in plot.drawn}
    assert (line.number, "cancelled") in plot.found.left_out
    assert "(cancelled by another notice)" in left_out_words(plot.found)


def test_other_datum_has_no_millimetres() -> None:
    (line,) = [one for one in the_sheet().lines() if one.notice == "2431/26"]
    (place,) = line.where[0].places
    assert place.on_sheet == "not placed: on another datum than the chart"
    assert "mm" not in place.on_sheet


def test_outside_the_frame_has_no_millimetres() -> None:
    outside = [
        place.on_sheet
        for line in the_sheet().lines()
        for where in line.where
        for place in where.places
        if place.is_outside
    ]
    assert outside
    assert set(outside) == {"outside the frame"}


def test_half_a_move_is_not_drawn_and_the_counts_add_up() -> None:
    sheet = the_sheet()
    (plot,) = plots_of(sheet)
    (move,) = [one for one in sheet.lines() if one.verb == "Move"]
    assert move.is_usable
    assert move.number not in {one.line.number for one in plot.drawn}
    assert (move.number, "new_end") in plot.found.left_out
    left = {number for number, _ in plot.found.left_out}
    total = sum(1 for _ in sheet.lines())
    assert plot.many + len(left) == total
    assert account(plot.found, plot.many) == f"{plot.many} of {total} actions drawn here."


def test_worked_out_position_in_minutes_as_good_as_it_is() -> None:
    (line,) = [one for one in the_sheet().lines() if "obstruction" in one.title]
    positions = line.action.geometry.positions
    (place,) = [p for p, one in zip(line.where[0].places, positions, strict=True)
                if one.via == "offset"]  # fmt: skip
    degrees, minutes = place.exact.split("'")[0].split("°")
    assert degrees == "47"
    exact = abs(positions[0].lat)
    assert abs(47 + float(minutes) / 60 - exact) * 60 * 1852 <= positions[0].resolution_m
    carried = positions[0].model_copy(update={"lat": -47.99999, "resolution_m": 2000})
    assert worked_out(carried).startswith("48°00'S ")


def test_plot_has_no_magenta() -> None:
    (plot,) = plots_of(the_sheet())
    svg = "".join(write_svg([whole_page(plot)]))
    assert "#a0005a" not in svg
    assert "#0b4f3a" in svg
