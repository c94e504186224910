"""Finding codes about charts, positions and moves held against a chart list.

The specimens are read with `SPECIMEN_LIST`.
"""

from noticeparse.faults import Entry

_COMMON = "common practice, no published source"

_TITLE = "12/26 Quill Sound.\n"
_WRECK = "Delete wreck 46-30.00S 122-30.00W"

SPECIMEN_LIST = """\
# Tavrenne Islands, invented, not for navigation
number,panel,title,scale,scale_latitude,south,west,north,east,depth_unit,datum,edition,last_notice
802,,Quill Sound,150000,-46.5,-47,-123,-46,-121.5,m,WGS84,3,3/26
802,Panel B,Port Ellory,25000,-46.35,-46.4,-122.4,-46.3,-122.25,m,,,
"""

ENTRIES = (
    Entry(
        "chart-datum-differs", "warning",
        "positions on `{written}`; the chart list has {listed}",
        "plotted as they stand, the positions would lie beside their true places",
        "see which datum the positions are on and shift them, or correct the list",
        "IHO S-4, horizontal datum of charts and their corrections, from memory",
        f"{_TITLE}‹Chart 802 [3/26] NAD27\n{_WRECK}›\n",
        _WRECK,
    ),
    Entry(
        "chart-edition-differs", "warning", "edition `{written}`; the chart list has {listed}",
        "a correction for another edition may be on the chart already, or not fit it",
        "look which edition is on board", _COMMON,
        f"{_TITLE}‹Chart 802 Edition 4 [3/26] WGS84\n{_WRECK}›\n",
        f"{_TITLE}Chart 802 Edition 3 [3/26] WGS84\n{_WRECK}\n",
    ),
    Entry(
        "chart-not-in-list", "info", "chart {chart} is not in the chart list",
        "its positions are held against no sheet",
        "add the chart to the list if it is on board", _COMMON,
        f"{_TITLE}‹Chart 95 [3/26] WGS84\n{_WRECK}›\n",
        _WRECK,
    ),
    Entry(
        "chart-panel-not-in-list", "info",
        "the chart list has no panel `{written}` of chart {chart}",
        "its positions are held against no sheet", "add the panel to the list", _COMMON,
        f"{_TITLE}‹Chart 802, panel C [3/26] WGS84\n{_WRECK}›\n",
        f"{_TITLE}Chart 802, panel B [3/26] WGS84\nDelete wreck 46-21.000S 122-21.000W\n",
    ),
    Entry(
        "depth-unit-not-of-chart", "warning",
        "`{written}` is not in {listed}, the unit of the chart list",
        "six metres taken for six fathoms is almost twice the water",
        "see in which unit the chart has its depths, and ask the issuer",
        "IHO S-4, units of depths, from memory",
        f"{_TITLE}Chart 802 [3/26] WGS84\n‹Insert depth 6¼ fm 46-30.00S 122-30.00W›\n",
        f"{_TITLE}Chart 802 [3/26] WGS84\nInsert depth 11.4m 46-30.00S 122-30.00W\n",
    ),
    Entry(
        "move-too-long-on-sheet", "warning",
        "`{written}` is {millimetres} mm away on the sheet; a move ends at 30 mm",
        "what goes so far is deleted and inserted anew; a figure may have slipped",
        "compare both positions with the original notice", _COMMON,
        "Move special buoy from 46-30.00S 122-30.00W to ‹46-33.00S 122-30.00W›",
        "Move special buoy from 46-30.00S 122-30.00W to 46-31.00S 122-30.00W",
    ),
    Entry(
        "notice-applied-already", "info",
        "notice {written} is on the chart already; the chart list has {last}",
        "an amendment made twice may undo a later one", "see the chart's own list of corrections",
        _COMMON,
        f"3/26 Quill Sound.\n‹Chart 802 [2/26] WGS84\n{_WRECK}›\n",
        _WRECK,
    ),
    Entry(
        "position-outside-chart", "warning", "`{written}` lies outside the limits of {sheet}",
        "it cannot be plotted there; a figure may have slipped, or another chart is meant",
        "compare each figure with the original notice, and the limits with the chart", _COMMON,
        "Insert wreck ‹47-30.00S 122-30.00W›", "Insert wreck 46-30.00S 122-30.00W",
    ),
    Entry(
        "position-too-coarse", "warning",
        "the last figure of `{written}` leaves {millimetres} mm open on the sheet",
        "a figure may be lost, or the place is less sure than the chart will show it",
        "compare with the original notice; more than 0.3 mm shows on paper", _COMMON,
        "Insert wreck ‹46-30.0S 122-30.0W›", "Insert wreck 46-30.00S 122-30.00W",
    ),
    Entry(
        "previous-not-last-applied", "warning",
        "the notice before is `{written}`; the last one applied is {last}",
        "a correction is missing on the chart, or the number is a slip",
        "apply what is missing first, or correct the chart list", _COMMON,
        f"{_TITLE}‹Chart 802 [8/26] WGS84\n{_WRECK}›\n",
        f"{_TITLE}Chart 802 [3/26] WGS84\n{_WRECK}\n",
    ),
)  # fmt: skip
