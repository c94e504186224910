"""Finding codes about figures beside an object that are not, or not quite, its depth."""

from noticeparse.faults import Entry

_PRACTICE = "common practice, no published source"

ENTRIES = (
    Entry(
        "depth-above-water",
        "error",
        "`{written}` stands above the water: it is no depth",
        "what is seen at low water is a height or dries; its sign is turned round as a depth",
        "ask the issuer for the drying height above chart datum",
        _PRACTICE,
        bad="Insert rock exposed ‹1.2m› at LW 46-00.00S 122-00.00W",
        good="Insert rock, dries 1.2m 46-00.00S 122-00.00W",
    ),
    Entry(
        "depth-approximate",
        "warning",
        "`{written}` is only about the depth",
        "the record holds the figure alone; the words that make it less sure stand in the text",
        "note with the depth that it is approximate",
        _PRACTICE,
        bad="Insert depth about ‹12m› 46-00.00S 122-00.00W",
        good="Insert depth 12m 46-00.00S 122-00.00W",
    ),
    Entry(
        "depth-figure-odd",
        "warning",
        "`{written}` is not written as charts write depths",
        "a nought in front, or decimetres in the deep, are the sign of a figure that slipped in",
        "compare each figure with the original notice",
        "IHO S-4, B-410 and B-412 (from memory)",
        bad="Insert depth ‹05m› 46-00.00S 122-00.00W",
        good="Insert depth 0.5m 46-00.00S 122-00.00W",
    ),
    Entry(
        "depth-not-stated",
        "error",
        "`{written}` is to be inserted, and no depth is read",
        "a depth without its figure cannot be drawn, and the figure may have been lost",
        "read the depth in the original notice",
        "common practice, no published source",
        bad=(
            "506/26 Quill Sound.\nChart 802 [3/26] WGS84, depths in metres\n"
            "‹Insert depth 46-00.00S 122-00.00W›"
        ),
        good=(
            "506/26 Quill Sound.\nChart 802 [3/26] WGS84, depths in metres\n"
            "Insert depth 8.6m 46-00.00S 122-00.00W"
        ),
    ),
    Entry(
        "depth-of-surroundings",
        "warning",
        "`{written}` is the depth of the water around, not over the object",
        "a wreck shows its least depth, and the water around it is deeper",
        "take the least depth from the original notice, where it has one",
        "S-57 VALSOU: the least depth over the object",
        bad="Insert wreck in ‹35m› of water 46-00.00S 122-00.00W",
        good="Insert wreck, 12m 46-00.00S 122-00.00W",
    ),
)
