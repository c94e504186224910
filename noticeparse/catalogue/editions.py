"""Finding codes about editions as a whole: numbers, lists, chains, validity, datum."""

from noticeparse.faults import Entry

_COMMON = "common practice, no published source"
_MEMORY = "from memory"

_EDITION = "Weekly edition 12/2026, 20 March 2026\n"
_ONE = "Chart 802 [3/26] WGS84\nInsert wreck 46-00.00S 122-00.00W\n"
_MORE = "Insert rock 46-00.50S 122-00.00W\n"
_INDEX = "INDEX OF CHARTS\n"

ENTRIES = (
    Entry(
        "cancelled-by-none", "info",
        "`{written}` is listed as cancelled, but no notice here says so",
        "it may have ended by its date, or the notice that cancels it is missing",
        "look for the notice that cancels it", _COMMON,
        f"{_EDITION}NOTICES CANCELLED\n‹8(T)/26›\n\n12/26 Quill Sound.\n{_ONE}",
        f"{_EDITION}NOTICES CANCELLED\n8(T)/26\n\n12/26 Quill Sound.\n{_ONE}"
        "Notice 8(T)/26 is cancelled.\n",
    ),
    Entry(
        "cancelled-not-listed", "warning",
        "`{written}` is cancelled here, but is not among the cancelled notices listed",
        "a wrong notice would be rubbed out, and the right one left on the chart",
        "compare the number in both places", _COMMON,
        f"{_EDITION}NOTICES CANCELLED\n8(T)/26\n\n12/26 Quill Sound.\n{_ONE}"
        "Notice 8(T)/26 is cancelled.\nNotice ‹9(T)/26› is cancelled.\n",
        f"{_EDITION}NOTICES CANCELLED\n8(T)/26\n\n12/26 Quill Sound.\n{_ONE}"
        "Notice 8(T)/26 is cancelled.\n",
    ),
    Entry(
        "cancels-permanent", "warning",
        "`{written}` is cancelled, but {other} is a permanent notice",
        "a permanent correction is not cancelled; another number may be meant",
        "compare the number and its mark with the original notice", _COMMON,
        f"12/26 Quill Sound.\n{_ONE}\n13/26 Quill Sound.\nChart 803 [4/26] WGS84\n{_MORE}"
        "Notice ‹12(T)/26› is cancelled.\n",
        f"12/26 Quill Sound.\n{_ONE}\n13/26 Quill Sound.\nChart 803 [4/26] WGS84\n{_MORE}"
        "Notice 11(T)/26 is cancelled.\n",
    ),
    Entry(
        "datum-differs", "warning",
        "chart {written} is on {datum}, another of the notice on {other}",
        "positions of one datum may lie hundreds of metres off on the other",
        "see that the positions under each chart are of its own datum", _COMMON,
        "Insert wreck 46-00.00S 122-00.00W\nChart ‹803› [4/26] WGS72\n"
        "Insert wreck 46-00.00S 122-00.00W",
        "Insert wreck 46-00.00S 122-00.00W\nChart 803 [4/26] WGS84\n"
        "Insert wreck 46-00.00S 122-00.00W",
    ),
    Entry(
        "datum-not-stated", "info", "no datum is stated for any chart",
        "positions can be plotted only on a chart of their own datum",
        "see that the datum of each chart is that of the positions", _COMMON,
        "12/26 Quill Sound.\nChart ‹802› [3/26]\nInsert wreck 46-00.00S 122-00.00W",
        f"12/26 Quill Sound.\n{_ONE}",
    ),
    Entry(
        "datum-of-some-charts", "warning",
        "no datum is stated for chart {written}; another of the notice is on {datum}",
        "the positions may be of the same datum or of that of the sheet",
        "look for the datum of this chart in the original notice", _COMMON,
        "Insert wreck 46-00.00S 122-00.00W\nChart ‹803› [4/26]\n"
        "Insert wreck 46-00.00S 122-00.00W",
        "Insert wreck 46-00.00S 122-00.00W\nChart 803 [4/26] WGS84\n"
        "Insert wreck 46-00.00S 122-00.00W",
    ),
    Entry(
        "in-force-missing", "warning", "`{written}` is not in the list of notices in force",
        "who goes by the list would not put it on the chart",
        "see whether the notice or the list has a wrong number", _COMMON,
        f"{_EDITION}TEMPORARY AND PRELIMINARY NOTICES IN FORCE\n8(T)/26\n\n"
        "‹12(T)/26› Quill Sound. The light is out.\nChart 802\n",
        f"{_EDITION}TEMPORARY AND PRELIMINARY NOTICES IN FORCE\n8(T)/26, 12(T)/26\n\n"
        "12(T)/26 Quill Sound. The light is out.\nChart 802\n",
    ),
    Entry(
        "index-chart-not-in-notice", "warning",
        "the index has `{written}` under chart {chart}, which that notice does not name",
        "a chart of the notice may be missing, or a figure of the index is wrong",
        "compare the index with the charts of the notice", _COMMON,
        f"{_EDITION}{_INDEX}802 ..... 12\n‹803 ..... 12›\n\n12/26 Quill Sound.\n{_ONE}",
        f"{_EDITION}{_INDEX}802 ..... 12\n\n12/26 Quill Sound.\n{_ONE}",
    ),
    Entry(
        "index-notice-not-here", "warning",
        "the index has `{written}` under chart {chart}, but no such notice is here",
        "a notice may be missing, or a figure of the index is wrong",
        "look for the notice in the original edition", _COMMON,
        f"{_EDITION}{_INDEX}802 ..... 12\n‹803 ..... 14›\n\n12/26 Quill Sound.\n{_ONE}",
        f"{_EDITION}{_INDEX}802 ..... 12\n\n12/26 Quill Sound.\n{_ONE}",
    ),
    Entry(
        "index-without-chart", "warning",
        "the index of charts does not have `{written}` under chart {chart}",
        "the number of the chart may be wrong in the notice, or missing from the index",
        "compare the index with the charts of the notice", _COMMON,
        f"{_EDITION}{_INDEX}802 ..... 12\n\n12/26 Quill Sound.\n{_ONE}"
        f"Chart ‹803› [4/26] WGS84\n{_MORE}",
        f"{_EDITION}{_INDEX}802 ..... 12\n803 ..... 12\n\n12/26 Quill Sound.\n{_ONE}"
        f"Chart 803 [4/26] WGS84\n{_MORE}",
    ),
    Entry(
        "notice-missing", "warning",
        "`{written}` of the notices {first} to {last} stated is not here",
        "a notice may be lost, and with it its corrections",
        "look for it in the original edition", _COMMON,
        "Weekly edition 12/2026, 20 March 2026\nNotices ‹12 to 14/26›\n\n"
        f"12/26 Quill Sound.\n{_ONE}\n14/26 Quill Sound.\nChart 802 [12/26] WGS84\n{_MORE}",
        "Weekly edition 12/2026, 20 March 2026\nNotices 12 to 13/26\n\n"
        f"12/26 Quill Sound.\n{_ONE}\n13/26 Quill Sound.\nChart 802 [12/26] WGS84\n{_MORE}",
    ),
    Entry(
        "notice-number-twice", "warning",
        "`{written}` is the number of another notice too: {place}",
        "a figure of one of the numbers is wrong, or a notice stands here twice",
        "compare both with the original edition", _COMMON,
        f"12/26 Quill Sound.\n{_ONE}\n‹12/26› Quill Sound.\nChart 803 [4/26] WGS84\n{_MORE}",
        f"12/26 Quill Sound.\n{_ONE}\n13/26 Quill Sound.\nChart 803 [4/26] WGS84\n{_MORE}",
    ),
    Entry(
        "notice-out-of-order", "warning", "`{written}` stands below {other}",
        "notices stand in the order of their numbers; a figure of one of the two may be wrong",
        "compare both numbers with the original edition", _COMMON,
        f"12/26 Quill Sound.\n{_ONE}\n‹11/26› Quill Sound.\nChart 803 [4/26] WGS84\n{_MORE}",
        f"12/26 Quill Sound.\n{_ONE}\n13/26 Quill Sound.\nChart 803 [4/26] WGS84\n{_MORE}",
    ),
    Entry(
        "notice-outside-range", "warning",
        "`{written}` is not of the notices {first} to {last} stated",
        "a figure of its number is wrong, or it is of another edition",
        "compare the number with the original edition", _COMMON,
        "Weekly edition 12/2026, 20 March 2026\nNotices 12 to 13/26\n\n"
        f"12/26 Quill Sound.\n{_ONE}\n13/26 Quill Sound.\nChart 802 [12/26] WGS84\n{_MORE}"
        "\n‹31/26› Quill Sound.\nChart 803 [4/26] WGS84\n"
        "Insert stump 46-00.10S 122-00.20W\n",
        "Weekly edition 12/2026, 20 March 2026\nNotices 12 to 13/26\n\n"
        f"12/26 Quill Sound.\n{_ONE}\n13/26 Quill Sound.\nChart 802 [12/26] WGS84\n{_MORE}",
    ),
    Entry(
        "preliminary-with-actions", "warning",
        "commands stand in the preliminary notice `{written}`",
        "it tells early of a change that is still to come; in ink it would be wrong on the chart",
        "read in the notice whether the change is made; use pencil", _COMMON,
        f"‹12(P)/26› Quill Sound.\n{_ONE}",
        "12(P)/26 Quill Sound. A light will be put up in 46-00.00S 122-00.00W.\nChart 802\n",
    ),
    Entry(
        "previous-fork", "warning", "`{written}` is named as the one before by {other} too",
        "a chart has one row of notices: one of the two numbers is wrong, or one is missing",
        "compare both with the record on the chart", _COMMON,
        f"12/26 Quill Sound.\n{_ONE}\n13/26 Quill Sound.\nChart 802 [‹3/26›] WGS84\n{_MORE}",
        f"12/26 Quill Sound.\n{_ONE}\n13/26 Quill Sound.\nChart 802 [12/26] WGS84\n{_MORE}",
    ),
    Entry(
        "previous-gap", "warning",
        "`{written}` must be on chart {chart} first, but does not stand here for it",
        "a correction was missed, or the number is wrong",
        "put the missing notice on the chart first", _COMMON,
        f"12/26 Quill Sound.\n{_ONE}\n15/26 Quill Sound.\nChart 802 [‹14/26›] WGS84\n{_MORE}",
        f"12/26 Quill Sound.\n{_ONE}\n15/26 Quill Sound.\nChart 802 [12/26] WGS84\n{_MORE}",
    ),
    Entry(
        "previous-goes-back", "warning",
        "`{written}` passes over {other}, which is for chart {chart}",
        "the later of two notices names the earlier one; a number is wrong, or a chart is",
        "compare both with the record on the chart", _COMMON,
        f"12/26 Quill Sound.\n{_ONE}\n13/26 Quill Sound.\nChart 802 [‹2/26›] WGS84\n{_MORE}",
        f"12/26 Quill Sound.\n{_ONE}\n13/26 Quill Sound.\nChart 802 [12/26] WGS84\n{_MORE}",
    ),
    Entry(
        "previous-later", "warning", "`{written}` is not before {notice}, which names it as such",
        "what must be on the chart before a notice cannot be later than it",
        "look for a slip in the number and the year", _COMMON,
        "12/26 Quill Sound.\nChart 802 [‹21/26›] WGS84\nInsert wreck 46-00.00S 122-00.00W\n",
        f"12/26 Quill Sound.\n{_ONE}",
    ),
    Entry(
        "previous-long-ago", "warning", "`{written}` is more than twenty years before {notice}",
        "a chart is corrected or printed anew far more often; a figure of the year may be wrong",
        "look for a slip in the year", _COMMON,
        "12/26 Quill Sound.\nChart 802 [‹21/99›] WGS84\nInsert wreck 46-00.00S 122-00.00W\n",
        f"12/26 Quill Sound.\n{_ONE}",
    ),
    Entry(
        "temporary-with-actions", "info", "the commands of `{written}` are temporary",
        "they go on the chart in pencil, and off it when the notice ends or is cancelled",
        "use pencil, and note when the notice ends", _MEMORY,
        f"‹12(T)/26› Quill Sound.\n{_ONE}",
        f"12/26 Quill Sound.\n{_ONE}",
    ),
    Entry(
        "validity-ended", "warning", "the notice ended on {until}, before {day}",
        "what is no longer so would be put on the chart, or left there",
        "compare the date with the original notice; if it is right, rub the notice out", _COMMON,
        f"{_EDITION}\n12(T)/26 Quill Sound.\nThe light is out ‹until 2 March 2026›.\nChart 802\n",
        f"{_EDITION}\n12(T)/26 Quill Sound.\nThe light is out until 2 May 2026.\nChart 802\n",
    ),
)  # fmt: skip
