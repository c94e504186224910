"""Finding codes about items below a line that turns to another chart, or to a book."""

from noticeparse.faults import Entry

_COMMON = "common practice, no published source"
_ABOVE = "Insert wreck 46-00.00S 122-00.00W\n"
_BELOW = "Insert rock 46-00.50S 122-00.00W"

ENTRIES = (
    Entry(
        "chart-left-out", "warning", "`{written}` names chart {chart}, which gets nothing here",
        "what is to be done on that chart is lost, as read",
        "see in the original notice what is to be done on it", _COMMON,
        bad=(
            "506/26 Quill Sound.\n"
            "Chart 802 [5/26] WGS84\n"
            "Insert rock 46-00.00S 122-00.00W\n"
            "This correction ‹also applies to chart 803›."
        ),
        good=(
            "506/26 Quill Sound.\n"
            "Chart 802 [5/26] WGS84\n"
            "Insert rock 46-00.00S 122-00.00W\n"
            "The same on chart 803 [6/26] WGS84."
        ),
    ),
    Entry(
        "item-below-figure", "warning", "`{written}` above the item may be the chart it is for",
        "a figure alone between items can be a chart, a page or part of an item",
        "read in the original notice which chart is meant", _COMMON,
        f"{_ABOVE}‹(803)›\n{_BELOW}", f"{_ABOVE}{_BELOW}",
    ),
    Entry(
        "item-of-book", "error", "the item stands below `{written}`",
        "it may correct a book, and nothing on the chart above",
        "read in the original notice what is to be corrected", _COMMON,
        f"{_ABOVE}‹List of Lights›\n{_BELOW}", f"{_ABOVE}{_BELOW}",
    ),
    Entry(
        "item-of-other-sheet", "error", "the item stands below `{written}`",
        "it may be for another chart than the one above, and which is not read",
        "read in the original notice which chart is meant", _COMMON,
        f"{_ABOVE}‹On the adjoining sheet:›\n{_BELOW}", f"{_ABOVE}{_BELOW}",
    ),
)  # fmt: skip
