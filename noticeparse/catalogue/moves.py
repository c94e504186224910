"""Finding codes about moves: where a thing was, and where it goes."""

from noticeparse.faults import Entry

_COMMON = "common practice, no published source"

ENTRIES = (
    Entry(
        "move-distance-unclear",
        "error",
        "`{written}` may tell how far the thing is moved, or lay, from there",
        "the old position is either the one stated, or lies that far from it",
        "see in the original notice or on the chart where the thing lies",
        _COMMON,
        bad="‹Move wreck 120m SW from 46-00.00S 122-00.00W to 46-00.05S 122-00.10W›",
        good="Move wreck from 46-00.00S 122-00.00W to 46-00.05S 122-00.10W",
    ),
    Entry(
        "move-to-same-place",
        "warning",
        "the new position is the old one",
        "the place it is moved to is lost, or the move has been made already",
        "look for the new position in the original notice",
        _COMMON,
        bad="Move mooring buoy from 46-00.00S 122-00.00W to ‹46-00.00S 122-00.00W›",
        good="Move mooring buoy from 46-00.00S 122-00.00W to 46-00.10S 122-00.00W",
    ),
    Entry(
        "move-too-far",
        "warning",
        "the new position lies {miles} miles from the old one",
        "a move is used for a small shift on the sheet; a figure may have slipped",
        "compare both positions with the original notice",
        _COMMON,
        bad="Move special buoy from 46-00.00S 122-00.00W to ‹46-20.00S 122-00.00W›",
        good="Move special buoy from 46-00.00S 122-00.00W to 46-00.50S 122-00.00W",
    ),
    Entry(
        "move-unpaired",
        "error",
        "`{written}` has not as many new positions as old ones",
        "which goes where is not said",
        "take each move from the original notice",
        _COMMON,
        bad=(
            "‹Move special buoys from 46-00.00S 122-00.00W and 46-00.50S 122-00.00W to "
            "46-00.70S 122-00.00W›"
        ),
        good=(
            "Move special buoys from 46-00.00S 122-00.00W and 46-00.50S 122-00.00W to "
            "46-00.70S 122-00.00W and 46-00.80S 122-00.00W"
        ),
    ),
    Entry(
        "move-without-destination",
        "error",
        "`{written}` does not say where to",
        "a move needs the old and the new position",
        "look for the second position in the original notice",
        _COMMON,
        bad="Move special buoy from ‹46-00.00S 122-00.00W›",
        good="Move special buoy from 46-00.00S 122-00.00W to 46-00.50S 122-00.00W",
    ),
    Entry(
        "places-of-a-move",
        "error",
        "`{written}` leads from one place to another under a verb that moves nothing",
        "the verb of a move may be lost, and the feature would stand at both places",
        "read the item in the original notice",
        _COMMON,
        bad="‹Delete wreck, from 46-00.00S 122-00.00W to 46-00.50S 122-00.00W›",
        good="Move wreck, from 46-00.00S 122-00.00W to 46-00.50S 122-00.00W",
    ),
    Entry(
        "states-at-two-places",
        "error",
        "the new state stands at another position, `{written}`, and with other words",
        "it may be a move, a change or another feature; the item is not used",
        "see in the original notice which of the two positions is meant",
        _COMMON,
        bad=(
            "Existing: depth 6.4 m, 46-00.00S 122-00.00W\n"
            "Amended to read: depth 5.9 m, ‹46-00.50S 122-00.00W›"
        ),
        good=(
            "Existing: depth 6.4 m, 46-00.00S 122-00.00W\n"
            "Amended to read: depth 5.9 m, 46-00.00S 122-00.00W"
        ),
    ),
)
