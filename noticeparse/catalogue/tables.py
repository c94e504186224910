"""Finding codes about rows of tables."""

from noticeparse.faults import Entry

_COMMON = "common practice, no published source"

ENTRIES = (
    Entry(
        "cell-limits",
        "error",
        "`{written}` beside the row limits what it says",
        "a row that is planned, withdrawn or not yet in force is not to be carried out now",
        "see in the original table when and whether the row holds",
        _COMMON,
        bad=(
            "Action | Object | Position | Status\n"
            "Insert | wreck | 46-00.00S 122-00.00W | ‹Planned›\n"
            "Insert | rock | 46-01.00S 122-01.00W | New"
        ),
        good=(
            "Action | Object | Position | Status\n"
            "Insert | wreck | 46-00.00S 122-00.00W | New\n"
            "Insert | rock | 46-01.00S 122-01.00W | New"
        ),
    ),
    Entry(
        "cell-misplaced",
        "error",
        "`{written}` does not fit the title of its column",
        "a row that is shifted under its titles says something else in each of its columns",
        "see what stands under which title in the original table",
        _COMMON,
        bad=(
            "Notice | Chart | Datum | Prev | Object | Position | Verb\n"
            "13/26 | 802 | WGS84 | 3/26 | wreck | 46-00.00S 122-00.00W | insert\n"
            "14/26 | 803 | WGS84 | 4/26 | rock | 46-01.00S 122-01.00W ‹delete› |"
        ),
        good=(
            "Notice | Chart | Datum | Prev | Object | Position | Verb\n"
            "13/26 | 802 | WGS84 | 3/26 | wreck | 46-00.00S 122-00.00W | insert\n"
            "14/26 | 803 | WGS84 | 4/26 | rock | 46-01.00S 122-01.00W | delete"
        ),
    ),
    Entry(
        "cell-rest-doubtful",
        "error",
        "`{written}` below the row may be more of it, or something else",
        "words that a narrow column sets on a further line belong to the row, and change it",
        "see in the original table which row the words belong to",
        _COMMON,
        bad=(
            "ACTION   OBJECT                     POSITION\n"
            "Insert   Submarine cable, joining   46-00.00S 122-00.00W\n"
            "                                    46-01.00S 122-00.00W\n"
            "         ‹disused›"
        ),
        good=(
            "ACTION   OBJECT                     POSITION\n"
            "Insert   Submarine cable, joining   46-00.00S 122-00.00W\n"
            "         disused                    46-01.00S 122-00.00W"
        ),
    ),
    Entry(
        "cell-tells-more",
        "error",
        "`{written}` beside the row is said of its thing, and is not in it as read",
        "a rock that dries, a red light or a thing of one chart is another thing on the sheet",
        "see in the original table what the row says of the thing",
        _COMMON,
        bad=(
            "Action | Object | Depth | Remarks | Position\n"
            "Insert | rock | 0.4m | ‹drying› | 46-00.00S 122-00.00W\n"
            "Insert | wreck | 5m | | 46-01.00S 122-01.00W"
        ),
        good=(
            "Action | Object | Depth | Remarks | Position\n"
            "Insert | rock, dries 0.4m | | | 46-00.00S 122-00.00W\n"
            "Insert | wreck | 5m | | 46-01.00S 122-01.00W"
        ),
    ),
    Entry(
        "chart-marks-unread",
        "error",
        "`{written}` marks the charts of the row in columns of their own",
        "which charts the row is for is not read from such marks",
        "see in the original table which charts the row is marked for",
        _COMMON,
        bad=(
            "Action | Object | Position | Chart 802 | Chart 803\n"
            "Insert | wreck | 46-00.00S 122-00.00W | ‹X›"
        ),
        good=("Action | Object | Position | Chart\nInsert | wreck | 46-00.00S 122-00.00W | 802"),
    ),
    Entry(
        "datum-unknown",
        "warning",
        "`{written}` in the column of the datum is no datum that is known",
        "positions of one datum may lie hundreds of metres off on another",
        "look for a slip in its name, or shift the positions as the chart tells",
        _COMMON,
        bad=(
            "Notice | Chart | Datum | Action | Object | Position\n"
            "13/26 | 802 | ‹Old Island 1911› | Insert | wreck | 46-00.00S 122-00.00W"
        ),
        good=(
            "Notice | Chart | Datum | Action | Object | Position\n"
            "13/26 | 802 | WGS84 | Insert | wreck | 46-00.00S 122-00.00W"
        ),
    ),
    Entry(
        "notice-unread",
        "error",
        "`{written}` in the column of the notices is no notice number",
        "the row may not be given to the notice above it: which one it corrects is not known",
        "look for a slip in the number in the original table",
        _COMMON,
        bad=(
            "Notice | Chart | Datum | Action | Object | Position\n"
            "13/26 | 802 | WGS84 | Insert | wreck | 46-00.00S 122-00.00W\n"
            "‹l4/26› | 803 | WGS84 | Insert | rock | 46-01.00S 122-01.00W"
        ),
        good=(
            "Notice | Chart | Datum | Action | Object | Position\n"
            "13/26 | 802 | WGS84 | Insert | wreck | 46-00.00S 122-00.00W\n"
            "14/26 | 803 | WGS84 | Insert | rock | 46-01.00S 122-01.00W"
        ),
    ),
    Entry(
        "place-not-next",
        "error",
        "place {written} of the feature follows place {before}",
        "a line or area without one of its places is drawn where it is not",
        "look for the missing row in the original table",
        _COMMON,
        bad=(
            "Notice | Chart | Datum | Item | Verb | Object | Point | Position\n"
            "5/26 | 802 | WGS84 | 1 | Insert | cable | 1 | 46-00.00S 122-00.00W\n"
            "5/26 | 802 | WGS84 | 1 | Insert | cable | ‹3› | 46-00.50S 122-00.00W"
        ),
        good=(
            "Notice | Chart | Datum | Item | Verb | Object | Point | Position\n"
            "5/26 | 802 | WGS84 | 1 | Insert | cable | 1 | 46-00.00S 122-00.00W\n"
            "5/26 | 802 | WGS84 | 1 | Insert | cable | 2 | 46-00.50S 122-00.00W"
        ),
    ),
    Entry(
        "row-too-long",
        "error",
        "the row has more cells than there are titles: `{written}`",
        "a sign within a cell shifts all that stand behind it into the wrong columns",
        "look for the sign that parts a cell in the original table",
        _COMMON,
        bad=(
            "Notice | Chart | Datum | Item | Verb | Object | Position\n"
            "5/26 | 802 | WGS84 | 1 | Insert | wreck | 46-00.00S 122-00.00W | ‹pile›"
        ),
        good=(
            "Notice | Chart | Datum | Item | Verb | Object | Position\n"
            "5/26 | 802 | WGS84 | 1 | Insert | wreck | 46-00.00S 122-00.00W"
        ),
    ),
    Entry(
        "state-of-part",
        "error",
        "`{written}` is all that one state says, and in the other stands nothing",
        "the thing may be new or gone, or stay and only this of it be new or gone",
        "see in the original notice whether the thing itself is inserted or deleted",
        _COMMON,
        bad=(
            "Object and position              | Old           | New\n"
            "light, Fl.R.3s 46-00.00S 122-00.00W | ‹range 5M›    | -"
        ),
        good=(
            "Object and position              | Old           | New\n"
            "light, Fl.R.3s 46-00.00S 122-00.00W | range 5M      | range 7M"
        ),
    ),
)
