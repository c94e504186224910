"""Finding codes about a file that is to be a chart list.

The specimens are such files, each with its row of columns.
"""

from noticeparse.faults import Entry

_OWN = "the format of a chart list, our own"
_COMMON = "common practice, no published source"

_HEAD = "number,scale,scale_latitude,south,west,north,east,edition_date\n"
_GOOD = f"{_HEAD}802,150000,-46.5,-47,-123,-46,-121.5,2025-03-01\n"

ENTRIES = (
    Entry(
        "chart-list-chart-twice", "warning", "`{written}` stands above; this row is left out",
        "which of the two rows holds for the chart on board is not certain",
        "take one of the rows out", _OWN,
        f"{_GOOD}‹802,75000,-46.5,-47,-123,-46.5,-122.5,2025-03-01›\n", _GOOD,
    ),
    Entry(
        "chart-list-column-missing", "error", "the chart list has no column {columns}",
        "without number, scale and limits no position can be put on a sheet",
        "add the column; no chart of the list is used", _OWN,
        "‹number,scale,south,west,north›\n802,150000,-47,-123,-46\n", _GOOD,
    ),
    Entry(
        "chart-list-column-twice", "warning", "the column `{written}` stands twice",
        "the first of the two is used, and the other may be the right one",
        "take one of the columns out", _OWN,
        "‹number,scale,scale,scale_latitude,south,west,north,east›\n"
        "802,150000,75000,-46.5,-47,-123,-46,-121.5\n",
        _GOOD,
    ),
    Entry(
        "chart-list-column-unknown", "warning", "`{written}` is no column of a chart list",
        "what stands in it is left out; a misspelt name hides its values",
        "look for a slip in the name", _OWN,
        "‹number,scale,scale_latitude,south,west,north,east,editoin›\n"
        "802,150000,-46.5,-47,-123,-46,-121.5,3\n",
        _GOOD,
    ),
    Entry(
        "chart-list-detail-unread", "warning", "`{written}` cannot be read as {column}",
        "the check that needs it is left out for this chart",
        "write it as the format of a chart list says", _OWN,
        f"{_HEAD}‹802,150000,-46.5,-47,-123,-46,-121.5,31 June›\n", _GOOD,
    ),
    Entry(
        "chart-list-latitude-assumed", "info",
        "no scale_latitude is given: {degrees}, the middle, is taken",
        "a scale that is true elsewhere makes every millimetre a little wrong",
        "take it from the title of the chart", _COMMON,
        "number,scale,south,west,north,east\n‹802,150000,-47,-123,-46,-121.5›\n", _GOOD,
    ),
    Entry(
        "chart-list-limits-impossible", "error",
        "limits `{written}` are impossible: {reason}",
        "no position can be put on such a sheet; the row is left out",
        "look for a slip in the row", "ISO 216 for the largest sheet of paper, else geometry",
        f"{_HEAD}‹802,150000,-46.5,-46,-123,-47,-121.5,2025-03-01›\n", _GOOD,
    ),
    Entry(
        "chart-list-row-length", "error",
        "the row has {values} values for {columns} columns and is left out",
        "which value belongs to which column is not certain",
        "look for a lost or added comma; put text with a comma between quotes", _OWN,
        f"{_HEAD}‹802,150000,-46.5,-47,-123,-46,-121.5›\n", _GOOD,
    ),
    Entry(
        "chart-list-unreadable", "error", "the file is no chart list: {reason}",
        "nothing can be held against it", "give a CSV or GeoJSON file as the format says", _OWN,
        "‹Insert wreck 46-30.00S 122-30.00W›\n", _GOOD,
    ),
    Entry(
        "chart-list-value-missing", "error", "the row has no {columns} and is left out",
        "without number, scale and limits no position can be put on a sheet",
        "add what is missing", _OWN,
        f"{_HEAD}‹802,,-46.5,-47,-123,-46,-121.5,2025-03-01›\n", _GOOD,
    ),
    Entry(
        "chart-list-value-unread", "error",
        "`{written}` cannot be read as {column}; the row is left out",
        "without number, scale and limits no position can be put on a sheet",
        "write degrees as decimals, south and west with a minus, the scale as a number", _OWN,
        f"{_HEAD}‹802,150000,-46.5,-47,123W,-46,-121.5,2025-03-01›\n", _GOOD,
    ),
)  # fmt: skip
