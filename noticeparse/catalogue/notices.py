"""Finding codes about notices, their heads and the text around them."""

from noticeparse.faults import Entry

_COMMON = "common practice, no published source"

ENTRIES = (
    Entry(
        "cancellation-unread", "warning",
        "`{written}` may end a notice, which is not read as cancelled",
        "a notice kept in force too long misleads",
        "see in the original notice which notices it cancels", _COMMON,
        bad=(
            "506/26 Quill Sound.\n"
            "Chart 802 [5/26] WGS84\n"
            "Insert rock 46-00.00S 122-00.00W\n"
            "‹Notice 402(T)/24 has expired›."
        ),
        good=(
            "506/26 Quill Sound.\n"
            "Chart 802 [5/26] WGS84\n"
            "Insert rock 46-00.00S 122-00.00W\n"
            "Notice 402(T)/24 is cancelled."
        ),
    ),
    Entry(
        "chart-above-or-below", "error", "`{written}` may be for what stands above it, or below",
        "the head of a notice was not seen, and each item would go on the chart of another",
        "read in the original notice which chart each item is for",
        _COMMON,
        bad=(
            "506/26 Quill Sound.\n"
            "Insert wreck 46-00.00S 122-00.00W\n‹Chart 802 [5/26] WGS84›\n"
            "Delete rock 46-00.50S 122-00.00W"
        ),
        good=(
            "506/26 Quill Sound.\n"
            "Chart 802 [5/26] WGS84\nInsert wreck 46-00.00S 122-00.00W\n"
            "Delete rock 46-00.50S 122-00.00W"
        ),
    ),
    Entry(
        "chart-head-bracket", "error", "a bracket of `{written}` is lost",
        "which items belong to which chart, or which notice stands before, is not certain",
        "read the head in the original notice", _COMMON,
        bad=(
            "506/26 Quill Sound.\n"
            "‹Charts 802 (a [499/26] WGS84›\n"
            "Insert (a) rock 46-00.00S 122-00.00W"
        ),
        good=(
            "506/26 Quill Sound.\n"
            "Charts 802 (a) [499/26] WGS84\n"
            "Insert (a) rock 46-00.00S 122-00.00W"
        ),
    ),
    Entry(
        "chart-head-unread", "warning", "`{written}` in the head of a chart is not kept",
        "it is a second value where one has a place, or nobody can say what it is of",
        "read the head in the original notice", _COMMON,
        bad=(
            "506/26 Quill Sound.\n"
            "Chart 802 [499/26] ‹[500/26]› WGS84\n"
            "Insert rock 46-00.00S 122-00.00W"
        ),
        good=(
            "506/26 Quill Sound.\n"
            "Chart 802 [499/26] WGS84\n"
            "Insert rock 46-00.00S 122-00.00W"
        ),
    ),
    Entry(
        "chart-in-passing", "warning", "`{written}` names another chart, and items follow",
        "the items below may belong to that chart",
        "see in the original notice which chart the items below are for", _COMMON,
        bad=(
            "Insert rock 46-00.00S 122-00.00W\n"
            "\n"
            "‹Please also correct chart 803 as follows›\n"
            "\n"
            "Insert wreck 46-00.50S 122-00.00W"
        ),
        good=(
            "Insert rock 46-00.00S 122-00.00W\n"
            "\n"
            "Chart 803 [4/26] WGS84, depths in metres\n"
            "Insert wreck 46-00.50S 122-00.00W"
        ),
    ),
    Entry(
        "chart-not-named", "info", "no chart is named for these actions",
        "they cannot be put on a sheet until the chart is known",
        "look for the chart in the original notice", _COMMON,
        bad=(
            "506/26 Quill Sound.\n"
            "‹Insert rock 46-00.00S 122-00.00W›"
        ),
        good=(
            "506/26 Quill Sound.\n"
            "Chart 802 [5/26]\n"
            "Insert rock 46-00.00S 122-00.00W"
        ),
    ),
    Entry(
        "chart-of-other-notice", "error", "`{written}` names another notice than the one it is in",
        "the items below it may belong to that notice",
        "look for its number in the original bulletin", _COMMON,
        bad=(
            "506/26 Quill Sound.\n"
            "‹Chart 827   WGS84   last 490/26   Notice 507/26›\n"
            "Insert rock 46-00.00S 122-00.00W"
        ),
        good=(
            "506/26 Quill Sound.\n"
            "Chart 827   WGS84   last 490/26\n"
            "Insert rock 46-00.00S 122-00.00W"
        ),
    ),
    Entry(
        "chart-range", "error", "`{written}`: only the charts at both ends are read",
        "a correction is missing on every chart between them",
        "look in the original notice, or in a chart list, for the charts between", _COMMON,
        bad=(
            "506/26 Quill Sound.\n"
            "Charts 802 ‹to› 804 WGS84\n"
            "Insert rock 46-00.00S 122-00.00W"
        ),
        good=(
            "506/26 Quill Sound.\n"
            "Charts 802 and 804 WGS84\n"
            "Insert rock 46-00.00S 122-00.00W"
        ),
    ),
    Entry(
        "chart-unread", "error", "no chart number can be read in `{written}`",
        "the items below it belong to a chart, and nobody can say which",
        "read the number in the original notice", "common practice, no published source",
        bad=(
            "506/26 Quill Sound.\n"
            "‹Chart No: ?? [3/26] WGS84›\n"
            "Insert wreck 46-00.00S 122-00.00W"
        ),
        good=(
            "506/26 Quill Sound.\n"
            "Chart No: 802 [3/26] WGS84\n"
            "Insert wreck 46-00.00S 122-00.00W"
        ),
    ),
    Entry(
        "chart-without-actions", "warning", "nothing is to be done on chart {chart}, as read",
        "what stands below its head may not have been read as an action",
        "read this chart of the notice in the original", _COMMON,
        bad="12/26 Quill Sound.\nChart 802 [3/26] WGS84\nInsert rock 46-00.00S 122-00.00W\n"
        "‹Chart 803 [4/26] WGS84›\nSee overleaf",
        good="12/26 Quill Sound.\nChart 802 [3/26] WGS84\nInsert rock 46-00.00S 122-00.00W\n"
        "Chart 803 [4/26] WGS84\nInsert rock 46-00.0S 122-00.0W",
    ),
    Entry(
        "date-impossible", "warning", "there is no day `{written}`",
        "a period of validity or an edition cannot be told", "look for a slip in the date",
        "ISO 8601",
        bad="Works are valid until ‹31 June 2026›.",
        good="Works are valid until 30 June 2026.",
    ),
    Entry(
        "item-charts-unread",
        "error",
        "for which charts `{written}` is cannot be told for certain: {reason}",
        "the correction would be made on a chart that it is not for, or missing on its own",
        "read which charts are meant in the original notice",
        _COMMON,
        bad=(
            "506/26 Quill Sound.\n"
            "Charts 802 [5/26] and 803 [6/26] WGS84, depths in metres\n"
            "Insert rock 46-00.00S 122-00.00W ‹[chart 804]›"
        ),
        good=(
            "506/26 Quill Sound.\n"
            "Charts 802 [5/26] and 803 [6/26] WGS84, depths in metres\n"
            "Insert rock 46-00.00S 122-00.00W [charts 802 and 803]"
        ),
    ),
    Entry(
        "notice-head-missing", "info", "these lines stand under no notice number",
        "without its number a correction cannot be recorded on the chart",
        "add the head of the notice", _COMMON,
        bad=(
            "‹Chart 802 [3/26] WGS84, depths in metres\n"
            "Insert wreck 46-00.00S 122-00.00W›"
        ),
        good=(
            "506/26 Quill Sound.\n"
            "Chart 802 [3/26] WGS84, depths in metres\n"
            "Insert wreck 46-00.00S 122-00.00W"
        ),
    ),
    Entry(
        "previous-of-some", "warning",
        "a notice before is told for other charts here, and none for chart {chart}",
        "whether an earlier correction is missing on it cannot be told",
        "see in the original notice whether the number holds for all the charts", _COMMON,
        bad=(
            "13/26 Quill Sound.\n"
            "‹Charts 802 and 803 [4/26] WGS84›\n"
            "Insert wreck 46-00.00S 122-00.00W"
        ),
        good=(
            "13/26 Quill Sound.\n"
            "Charts 802 [3/26] WGS84 and 803 [4/26] WGS84\n"
            "Insert wreck 46-00.00S 122-00.00W"
        ),
    ),
    Entry(
        "previous-unread", "warning", "no number of the notice before can be read in `{written}`",
        "whether an earlier correction is missing cannot be told",
        "read the number in the original notice", _COMMON,
        bad=(
            "506/26 Quill Sound.\n"
            "‹Chart 844. WGS84. Previous notice:›\n"
            "Insert rock 46-00.00S 122-00.00W"
        ),
        good=(
            "506/26 Quill Sound.\n"
            "Chart 844. WGS84. Previous notice: 499/26\n"
            "Insert rock 46-00.00S 122-00.00W"
        ),
    ),
    Entry(
        "text-action-lost", "error", "an action may be lost here: `{written}`",
        "a missing correction is as dangerous as a wrong one",
        "read these words in the original notice", _COMMON,
        bad=(
            "Insert\n"
            "   wreck 46-00.00S 122-00.00W\n"
            "Delee\n"
            "   ‹rock 46-00.50S 122-00.00W›"
        ),
        good=(
            "Insert\n"
            "   wreck 46-00.00S 122-00.00W\n"
            "Delete\n"
            "   rock 46-00.50S 122-00.00W"
        ),
    ),
    Entry(
        "text-left-over", "info", "not read, belongs to no notice: `{written}`",
        "nothing in it bears on a chart as far as can be told", "see that nothing is missed",
        _COMMON,
        bad=(
            "‹Fair winds to all.›\n"
            "\n"
            "12/26 Quill Sound.\n"
            "Chart 802 WGS84\n"
            "Insert wreck 46-00.00S 122-00.00W"
        ),
        good=(
            "12/26 Quill Sound.\n"
            "Chart 802 WGS84\n"
            "Insert wreck 46-00.00S 122-00.00W"
        ),
    ),
    Entry(
        "text-unread", "warning", "not read, but it may bear on a chart: `{written}`",
        "it holds a position, a verb, a chart number or a figure with a unit",
        "read these words in the original notice", _COMMON,
        bad=(
            "‹Chart 999 is withdrawn.›\n"
            "\n"
            "12/26 Quill Sound.\n"
            "Chart 802 WGS84\n"
            "Insert wreck 46-00.00S 122-00.00W"
        ),
        good=(
            "12/26 Quill Sound.\n"
            "Chart 802 WGS84\n"
            "Insert wreck 46-00.00S 122-00.00W"
        ),
    ),
    Entry(
        "validity-month-only", "info", "`{written}` tells no day",
        "the notice may end with the first day of the month or with the last",
        "ask the issuer where the day matters", _COMMON,
        bad="Works are valid ‹until August 2026›.",
        good="Works are valid until 1 August 2026.",
    ),
    Entry(
        "validity-reversed", "warning", "the period `{written}` ends before it begins",
        "one of its dates is wrong; no period of validity is given",
        "look for a slip in the dates", _COMMON,
        bad="Works ‹from 8 June 2026 to 3 June 2026›.",
        good="Works from 3 June 2026 to 8 June 2026.",
    ),
    Entry(
        "validity-unread", "warning", "the time told by `{written}` is not read",
        "a notice taken to be in force too long or too short misleads",
        "read the dates in the original notice", _COMMON,
        bad="Works ‹until 3/4/26›.",
        good="Works until 3 April 2026.",
    ),
)  # fmt: skip
