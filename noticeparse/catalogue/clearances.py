"""Finding codes about clearances below what hangs or stands above the water."""

from noticeparse.faults import Entry

_PRACTICE = "common practice, no published source"
_P = "46-00.00S 122-00.00W"

ENTRIES = (
    Entry(
        "clearance-unit-not-stated",
        "info",
        "no unit is stated for `{written}`: read as metres",
        "read in feet, the clearance would be less than a third",
        "look at the chart's title for the unit of heights",
        _PRACTICE,
        bad="Insert chimney, height ‹22› 46-00.00S 122-00.00W",
        good="Insert chimney, height 22m 46-00.00S 122-00.00W",
    ),
    Entry(
        "clearance-unit-unclear",
        "error",
        "`{written}` has no unit, and the chart is not metric",
        "heights and depths of such a chart may be in different units",
        "take the unit from the chart's title and ask the issuer",
        _PRACTICE,
        bad=(
            "506/26 Quill Sound.\n"
            "Chart 811 [3/26] WGS84, depths in fathoms\n"
            "Insert bridge, vertical clearance ‹12› 46-00.00S 122-00.00W"
        ),
        good=(
            "506/26 Quill Sound.\n"
            "Chart 811 [3/26] WGS84, depths in fathoms\n"
            "Insert bridge, vertical clearance 12m 46-00.00S 122-00.00W"
        ),
    ),
    Entry(
        "clearance-zero",
        "warning",
        "a clearance of `{written}` leaves no way under",
        "a figure may be lost",
        "compare with the original notice",
        _PRACTICE,
        f"‹Insert bridge, vertical clearance 0m {_P}›",
        f"Insert bridge, vertical clearance 10m {_P}",
    ),
)
