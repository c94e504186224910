"""Finding codes about depths, drying heights, clearances and heights."""

from noticeparse.faults import Entry

_PRACTICE = "common practice, no published source"
_MEMORY = "from memory"
_INT1 = "INT 1, section I (soundings and their abbreviations)"
_S4_CONTOURS = "IHO S-4, B-411 (from memory)"
_P = "46-00.00S 122-00.00W"
_NEXT = "Insert depth 8₆ 46-00.10S 122-00.00W\nInsert depth 7₂ 46-00.20S 122-00.00W\n"

ENTRIES = (
    Entry(
        "depth-and-drying",
        "error",
        "`{written}` dries and has a depth",
        "above or below chart datum is the difference between a rock and water",
        "ask the issuer to write `dries` or `depth`",
        _PRACTICE,
        bad="Insert rock, drying, depth ‹1.2m› 46-00.00S 122-00.00W",
        good="Insert rock, drying 1.2m 46-00.00S 122-00.00W",
    ),
    Entry(
        "depth-bound-only",
        "error",
        "`{written}` is a bound, not a depth",
        "a chart shows the depth itself; how much more or less it is, is not said",
        "take the depth from the original notice, or plot what the issuer confirms",
        _PRACTICE,
        bad="Insert wreck, over ‹5.2m› 46-00.00S 122-00.00W",
        good="Insert wreck, 5.2m 46-00.00S 122-00.00W",
    ),
    Entry(
        "depth-capital-m",
        "warning",
        "`{written}`: a capital M stands for metres or for miles",
        "print in capitals makes a depth look like a distance",
        "compare with the original notice",
        "INT 1, section B: m metres, M sea miles",
        bad="Insert depth ‹4 M› 46-00.00S 122-00.00W",
        good="Insert depth 4 m 46-00.00S 122-00.00W",
    ),
    Entry(
        "depth-decimals",
        "warning",
        "`{written}` has more than one decimal of a metre",
        "charts show decimetres at most; a figure may have slipped in",
        "compare each figure with the original notice",
        "IHO S-4, B-410 (from memory)",
        bad="Insert depth ‹8.65m› 46-00.00S 122-00.00W",
        good="Insert depth 8.6m 46-00.00S 122-00.00W",
    ),
    Entry(
        "depth-deeper-than-contour",
        "warning",
        "`{written}` is deeper than the contour `{contour}` around it",
        "a contour encloses a shoal; a point or a small figure may be lost",
        "compare both figures with the original notice",
        _S4_CONTOURS,
        f"‹Insert depth 86m, enclosed by 10m contour {_P}›",
        f"Insert depth 8.6m, enclosed by 10m contour {_P}",
    ),
    Entry(
        "depth-drying-high",
        "warning",
        "a drying height of `{written}` is more than 15 m",
        "no tide uncovers that much; the figure may be a height or have lost its point",
        "compare with the original notice",
        _PRACTICE,
        bad="Insert rock, dries ‹18m› 46-00.00S 122-00.00W",
        good="Insert rock, dries 1.8m 46-00.00S 122-00.00W",
    ),
    Entry(
        "depth-feet-over-five",
        "error",
        "`{written}`: a fathom holds six feet, so 5 is the last",
        "the small figure on a fathom chart counts feet; this one cannot",
        "ask whether the depth is in metres and decimetres",
        _INT1,
        bad=(
            "506/26 Quill Sound.\n"
            "Chart 811 [3/26] WGS84, depths in fathoms\n"
            "Insert depth ‹8₇› 46-00.00S 122-00.00W"
        ),
        good=(
            "506/26 Quill Sound.\n"
            "Chart 811 [3/26] WGS84, depths in fathoms\n"
            "Insert depth 8₅ 46-00.00S 122-00.00W"
        ),
    ),
    Entry(
        "depth-figure-raised",
        "error",
        "`{written}`: a raised figure is no part of a depth",
        "it may be a small figure lost from its place, or a footnote mark",
        "take the depth from the original notice",
        _PRACTICE,
        bad="Insert depth ‹8⁶› 46-00.00S 122-00.00W",
        good="Insert depth 8₆ 46-00.00S 122-00.00W",
    ),
    Entry(
        "depth-figures-apart",
        "error",
        "the figures of `{written}` stand apart",
        "`8 6` can be 8 and 6 decimetres, or 86: the small figure is lost",
        "take the depth from the original notice",
        _PRACTICE,
        bad="Insert depth ‹8 6› 46-00.00S 122-00.00W",
        good="Insert depth 8.6m 46-00.00S 122-00.00W",
    ),
    Entry(
        "depth-general-not-kept",
        "info",
        "the depth `{written}` beside the least depth is not kept",
        "the record holds one depth, the least",
        "read the general depth in the text",
        _PRACTICE,
        f"Insert wreck, least depth 9.5m, ‹depth 12m› {_P}",
        f"Insert wreck, least depth 9.5m {_P}",
    ),
    Entry(
        "depth-impossible",
        "error",
        "`{written}` is deeper than any sea",
        "a point or a small figure is lost",
        "take the depth from the original notice",
        "the deepest sounding of all is about 10 900 m",
        bad="Insert depth ‹12000m› 46-00.00S 122-00.00W",
        good="Insert depth 120m 46-00.00S 122-00.00W",
    ),
    Entry(
        "depth-least-deeper",
        "warning",
        "`{written}` is deeper than the depth `{other}` beside it",
        "the least depth over a danger is the smaller of the two; a figure may be wrong",
        "compare both figures with the original notice",
        _PRACTICE,
        f"Insert wreck, ‹least depth 9.5m›, depth 8m {_P}",
        f"Insert wreck, least depth 9.5m {_P}",
    ),
    Entry(
        "depth-letter-in-figure",
        "warning",
        "`{written}` has a letter for a figure",
        "a figure read from a letter may be another figure",
        "compare each figure with the original notice",
        _PRACTICE,
        bad="Insert depth ‹1O.5m› 46-00.00S 122-00.00W",
        good="Insert depth 10.5m 46-00.00S 122-00.00W",
    ),
    Entry(
        "depth-like-a-year",
        "warning",
        "`{written}` can be a year as well as a depth",
        "a year of survey taken for a depth is a deep hole on the chart",
        "compare with the original notice",
        _PRACTICE,
        bad="Insert depth ‹2024› 46-00.00S 122-00.00W",
        good="Insert depth 20.4m 46-00.00S 122-00.00W",
    ),
    Entry(
        "depth-minus",
        "error",
        "`{written}`: a minus can be a dash, a depth or a drying height",
        "above or below chart datum is the difference between a rock and water",
        "ask the issuer to write `dries` or `depth`",
        _PRACTICE,
        bad="Insert depth ‹-4m› 46-00.00S 122-00.00W",
        good="Insert depth 4m 46-00.00S 122-00.00W",
    ),
    Entry(
        "depth-of-overhead",
        "warning",
        "`{written}`: a depth is stated of what crosses above the water",
        "a clearance taken for a depth would put a danger on the bottom",
        "ask the issuer whether a clearance is meant",
        _PRACTICE,
        f"‹Insert overhead cable, depth 12m {_P}›",
        f"Insert overhead cable, vertical clearance 12m {_P}",
    ),
    Entry(
        "depth-place-unclear",
        "error",
        "`{written}`: several depths stand before several positions",
        "which depth belongs to which position is not said",
        "take depth and position together from the original notice, or ask the issuer",
        _PRACTICE,
        bad="Insert ‹depths 12.4m and 11m› 46-00.00S 122-00.00W and 46-00.50S 122-00.00W",
        good="Insert depth 12.4m 46-00.00S 122-00.00W\ndepth 11m 46-00.50S 122-00.00W",
    ),
    Entry(
        "depth-several",
        "error",
        "`{written}` gives more than one depth",
        "one sounding has one figure; which one is meant is not said",
        "ask the issuer which is the least",
        _PRACTICE,
        bad="Insert depth ‹4 to 6m› 46-00.00S 122-00.00W",
        good="Insert depth 4m 46-00.00S 122-00.00W",
    ),
    Entry(
        "depth-small-figure-of-feet",
        "error",
        "`{written}`: feet have no small figure",
        "the chart's unit or the figure is wrong",
        "look at the chart's title for its unit",
        _INT1,
        bad=(
            "506/26 Quill Sound.\n"
            "Chart 811 [3/26] WGS84, depths in feet\n"
            "Insert depth ‹8₆› 46-00.00S 122-00.00W"
        ),
        good=(
            "506/26 Quill Sound.\n"
            "Chart 811 [3/26] WGS84, depths in feet\n"
            "Insert depth 8 46-00.00S 122-00.00W"
        ),
    ),
    Entry(
        "depth-subscript-lost",
        "error",
        "`{written}` among depths like `{other}`: a small figure may be lost",
        "copied without its small figure, 8₆ becomes 86; the depth is left out",
        "take the depth from the original notice",
        _PRACTICE,
        f"{_NEXT}Insert depth ‹86› {_P}",
        f"{_NEXT}Insert depth 8₄ {_P}",
    ),
    Entry(
        "depth-thousands",
        "error",
        "`{written}`: three decimals, or thousands",
        "the depth may be a thousand times greater",
        "take the depth from the original notice",
        _PRACTICE,
        bad="Insert depth ‹1,234m› 46-00.00S 122-00.00W",
        good="Insert depth 1234m 46-00.00S 122-00.00W",
    ),
    Entry(
        "depth-unit-differs",
        "warning",
        "`{written}` is not in the unit of the chart",
        "the notice may be written for another chart, or the unit slipped",
        "look at the chart's title for its unit",
        _MEMORY,
        bad="Insert depth ‹4 fm› 46-00.00S 122-00.00W",
        good="Insert depth 7.3m 46-00.00S 122-00.00W",
    ),
    Entry(
        "depth-unit-not-stated",
        "info",
        "no unit is stated for `{written}`: read as metres",
        "on a chart in fathoms or feet the same figure is another depth",
        "look at the chart's title for its unit",
        "IHO S-4, B-410 (from memory)",
        bad=(
            "506/26 Quill Sound.\nChart 802 [3/26] WGS84\nInsert depth ‹8₆› 46-00.00S 122-00.00W"
        ),
        good=(
            "506/26 Quill Sound.\nChart 802 [3/26] WGS84\nInsert depth 8.6m 46-00.00S 122-00.00W"
        ),
    ),
    Entry(
        "depth-unit-unread",
        "error",
        "`{written}` names a unit of depths and is not read",
        "a figure in fathoms or feet, read as metres, is another depth",
        "look at the chart's title for its unit, and take the depths by hand",
        _PRACTICE,
        bad=(
            "506/26 Quill Sound.\nChart 802 [3/26] WGS84\nInsert depth 8 46-00.00S 122-00.00W\n"
            "‹The figures on the older print of the chart are fathoms›."
        ),
        good=(
            "506/26 Quill Sound.\nChart 802 [3/26] WGS84\nInsert depth 8m 46-00.00S 122-00.00W\n"
            "The figures on the older print of the chart are fathoms."
        ),
    ),
    Entry(
        "depth-unread",
        "error",
        "`{written}` cannot be read as a depth",
        "a depth that is not read is not on the chart",
        "take the depth from the original notice",
        _PRACTICE,
        bad="Insert ‹depth zz› m 46-00.00S 122-00.00W",
        good="Insert depth 8m 46-00.00S 122-00.00W",
    ),
    Entry(
        "depth-word-missing",
        "info",
        "`{written}` stands alone: read as a depth",
        "a figure by itself is a sounding on a chart, but may be what is left of another phrase",
        "compare with the original notice",
        _PRACTICE,
        bad="Insert ‹8.6m› 46-00.00S 122-00.00W",
        good="Insert depth 8.6m 46-00.00S 122-00.00W",
    ),
)
