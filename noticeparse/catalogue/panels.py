"""Finding codes about the plans and panels of a chart."""

from noticeparse.faults import Entry

_COMMON = "common practice, no published source"

ENTRIES = (
    Entry(
        "item-of-one-panel",
        "error",
        "`{written}` names a plan or panel that this section is not for",
        "the item may belong to that panel alone, and would be put on the wrong part of the sheet",
        "read in the original notice which part of the chart is meant",
        _COMMON,
        bad=(
            "506/26 Quill Sound.\n"
            "Chart 802 [5/26] WGS84, depths in metres\n"
            "Insert rock ‹(plan B)› 46-00.00S 122-00.00W"
        ),
        good=(
            "506/26 Quill Sound.\n"
            "Chart 802, plan B [5/26] WGS84, depths in metres\n"
            "Insert rock 46-00.00S 122-00.00W"
        ),
    ),
)
