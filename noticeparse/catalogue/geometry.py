"""Finding codes about the places of an action: lines, areas, circles, offsets."""

from noticeparse.faults import Entry

_COMMON = "common practice, no published source"

ENTRIES = (
    Entry(
        "area-crosses-itself",
        "warning",
        "the side from `{second}` crosses the side from `{first}`",
        "two corners are exchanged or a figure has slipped; the area drawn would be another",
        "compare the order and the figures of the corners with the original notice",
        _COMMON,
        bad="Insert foul area bounded by 46-00.00S 122-00.00W, 46-01.00S 122-01.00W, "
        "‹46-00.00S 122-01.00W› and 46-01.00S 122-00.00W",
        good="Insert foul area bounded by 46-00.00S 122-00.00W, 46-00.00S 122-01.00W, "
        "46-01.00S 122-01.00W and 46-01.00S 122-00.00W",
    ),
    Entry(
        "area-of-points",
        "warning",
        "one area stands at {count} positions, and no word tells how",
        "they may be its corners, or as many small areas: what is drawn would be another",
        "see in the original notice whether they bound one area",
        _COMMON,
        bad="‹Insert anchorage area 46-00.00S 122-00.00W, 46-00.50S 122-00.00W and "
        "46-00.10S 122-00.20W›",
        good="Insert anchorage area bounded by 46-00.00S 122-00.00W, 46-00.50S 122-00.00W and "
        "46-00.10S 122-00.20W",
    ),
    Entry(
        "circle-without-radius",
        "error",
        "no radius is told for the circle",
        "a circle of unknown size cannot be drawn",
        "look for the radius in the original notice",
        _COMMON,
        bad="‹Insert safety zone, circle centred on 46-00.00S 122-00.00W›",
        good="Insert safety zone, circle of radius 0.5 miles centred on 46-00.00S 122-00.00W",
    ),
    Entry(
        "corner-far-away",
        "warning",
        "the corner `{written}` lies {miles} miles from all the others",
        "the line drawn would run far off: a figure may have slipped",
        "compare each figure with the original notice",
        _COMMON,
        bad="Insert submarine cable joining 46.9410S 124.1000W, 46.9410S 124.0500W, "
        "46.9500S 124.0300W and ‹46.5967S 126.0477W›",
        good="Insert submarine cable joining 46.9410S 124.1000W, 46.9410S 124.0500W, "
        "46.9500S 124.0300W and 46.9667S 124.0477W",
    ),
    Entry(
        "geometry-along-coast",
        "warning",
        "`{written}` runs on without a position",
        "part of the line or limit follows a coast or leads where no position says",
        "draw that part from the original notice and the chart",
        _COMMON,
        bad=(
            "‹Insert submarine cable joining 46-00.00S 122-00.00W and 46-00.50S 122-00.00W "
            "thence to the shore›"
        ),
        good="Insert submarine cable joining 46-00.00S 122-00.00W and 46-00.50S 122-00.00W",
    ),
    Entry(
        "geometry-not-as-counted",
        "error",
        "`{written}` counts {count} positions, and {found} are read",
        "a corner is missing or belongs to another item; what is drawn would be another",
        "count the positions in the original notice",
        _COMMON,
        bad=(
            "‹Insert fish farm bounded by these four positions 46-00.00S 122-00.00W, "
            "46-01.00S 122-00.00W, 46-01.00S 122-01.00W›"
        ),
        good=(
            "Insert fish farm bounded by these three positions 46-00.00S 122-00.00W, "
            "46-01.00S 122-00.00W, 46-01.00S 122-01.00W"
        ),
    ),
    Entry(
        "geometry-too-few-positions",
        "error",
        "the {shape} of `{written}` has too few positions",
        "a line needs two positions and an area three; one may be lost",
        "look for the others in the original notice",
        _COMMON,
        bad="‹Insert submarine pipeline joining 46-00.00S 122-00.00W›",
        good="Insert submarine pipeline joining 46-00.00S 122-00.00W and 46-00.50S 122-00.00W",
    ),
    Entry(
        "item-torn",
        "error",
        "`{written}` lacks a piece that stands apart behind it",
        "a part of the line or limit, or an exception to it, is read apart from it",
        "draw the whole from the original notice",
        _COMMON,
        bad=(
            "‹Insert submarine cable between 46-00.00S 122-00.00W and 46-01.00S 122-00.00W› "
            "(passing 46-00.50S 122-01.00W)"
        ),
        good=(
            "Insert submarine cable from 46-00.00S 122-00.00W via 46-00.50S 122-01.00W "
            "to 46-01.00S 122-00.00W"
        ),
    ),
    Entry(
        "line-bearing-differs",
        "warning",
        "the bearing `{written}` is not the {degrees} degrees of the positions",
        "a figure of the bearing or of a position is wrong",
        "compare both with the original notice",
        _COMMON,
        bad="Insert leading line, ‹137°›, joining 46-00.00S 122-00.00W and 46-01.00S 122-00.00W",
        good="Insert leading line, 180°, joining 46-00.00S 122-00.00W and 46-01.00S 122-00.00W",
    ),
    Entry(
        "line-of-points",
        "warning",
        "it stands at {count} positions, and no word tells whether one line runs through them",
        "they may be the ends of one line, or as many things: what is drawn would be another",
        "see in the original notice whether one line joins them",
        _COMMON,
        bad="‹Insert pipeline 46-00.00S 122-00.00W, 46-00.50S 122-00.00W›",
        good="Insert pipeline joining 46-00.00S 122-00.00W, 46-00.50S 122-00.00W",
    ),
    Entry(
        "lines-in-one",
        "error",
        "the positions of `{written}` may be those of several lines or areas",
        "joined as one they make a line from the end of the first to the start of the second",
        "see in the original notice where each begins and ends",
        _COMMON,
        bad="‹Insert two submarine cables joining 46-00.00S 122-00.00W 46-01.00S 122-00.00W and "
        "46-00.00S 122-01.00W 46-01.00S 122-01.00W›",
        good="Insert submarine cable joining 46-00.00S 122-00.00W, 46-01.00S 122-00.00W, "
        "46-01.50S 122-00.50W and 46-01.50S 122-01.00W",
    ),
    Entry(
        "offset-disagrees",
        "warning",
        "the position lies {metres} m from where its bearing and distance put it",
        "one of the two is wrong",
        "plot both and ask the issuer",
        _COMMON,
        bad=(
            "‹Insert wreck 5 miles 090° from the light in 46-00.00S 122-00.00W, in 46-00.50S "
            "122-00.00W›"
        ),
        good=(
            "Insert wreck 0.5 miles 180° from the light in 46-00.00S 122-00.00W, in "
            "46-00.50S 122-00.00W"
        ),
    ),
    Entry(
        "offset-magnetic",
        "error",
        "`{written}` gives a magnetic bearing",
        "without the variation it cannot be made true",
        "work it out with the variation of the chart",
        _COMMON,
        bad="‹Insert wreck 090°M 5 miles from 46-00.00S 122-00.00W›",
        good="Insert wreck 090° 5 miles from 46-00.00S 122-00.00W",
    ),
    Entry(
        "offset-not-worked-out",
        "error",
        "the position of `{written}` cannot be worked out from its bearing and distance",
        "the reference has no position in the text",
        "plot it from the charted reference",
        _COMMON,
        bad="‹Insert special buoy, bearing 045° from 46-00.00S 122-00.00W›",
        good="Insert special buoy 045° 0.2 miles from 46-00.00S 122-00.00W",
    ),
    Entry(
        "place-of-another",
        "error",
        "`{written}`: this place may be that of another thing",
        "the feature would be charted there as well, or deleted where another one stays",
        "read in the original notice what is said of the second place",
        _COMMON,
        bad=("A wreck has been found in 46-00.00S 122-00.00W, ‹not› in 46-00.50S 122-00.00W."),
        good="A wreck has been found in 46-00.00S 122-00.00W, and in 46-00.50S 122-00.00W.",
    ),
    Entry(
        "place-of-neighbour",
        "error",
        "`{written}` may have the place of the item beside it",
        "a place above has nothing to it and a command below has none: all between may have slid",
        "read in the original notice which place belongs to which item",
        _COMMON,
        bad=(
            "Spot: 46-00.00S 122-00.00W\n‹Insert wreck\nSpot: 46-00.50S 122-00.00W›\nDelete rock"
        ),
        good="46-00.00S 122-00.00W\nInsert wreck\n46-00.50S 122-00.00W\nDelete rock",
    ),
    Entry(
        "reference-unknown",
        "error",
        "`{written}` refers to a position, but none stands before it",
        "the item has no position",
        "ask the issuer which position is meant",
        _COMMON,
        bad="Insert wreck ‹in the same position›",
        good="Delete rock 46-00.00S 122-00.00W\nInsert wreck in the same position",
    ),
    Entry(
        "relation-unclear",
        "error",
        "how `{written}` lies to the position is not clear",
        "a distance in two parts, two directions, or words that lead to no place",
        "take the place from the original notice; the position may be that of the reference",
        _COMMON,
        bad="‹Insert wreck close N and NE of 46-00.00S 122-00.00W›",
        good="Insert wreck close NE of 46-00.00S 122-00.00W",
    ),
    Entry(
        "replace-at-several-places",
        "warning",
        "a replacement has one place, and this is a second",
        "the second position may belong to another item, or the item is a move",
        "see in the original notice what stands at each position",
        _COMMON,
        bad="Replace depth 5m by depth 4m in 46-00.00S 122-00.00W and ‹46-00.50S 122-00.00W›",
        good="Replace depth 5m by depth 4m in 46-00.00S 122-00.00W",
    ),
    Entry(
        "replace-by-depth-alone",
        "warning",
        "`{written}` may be a sounding, or the depth of what it replaces",
        "a danger that only changes its depth must not vanish from the chart",
        "look on the chart for the danger, and ask the office where it is not plain",
        _COMMON,
        bad="Replace wreck, depth 5m, with ‹depth 4m› in 46-00.00S 122-00.00W",
        good="Replace wreck, depth 5m, with wreck, depth 4m in 46-00.00S 122-00.00W",
    ),
    Entry(
        "ring-not-closed",
        "warning",
        "the last corner `{written}` lies just beside the first",
        "the ring was meant to close: one of the two has a slip",
        "compare the first and the last corner with the original notice",
        _COMMON,
        bad="Insert foul area bounded by 46-00.00S 122-00.00W, 46-00.00S 122-01.00W, "
        "46-01.00S 122-01.00W, 46-01.00S 122-00.00W and ‹46-00.01S 122-00.00W›",
        good="Insert foul area bounded by 46-00.00S 122-00.00W, 46-00.00S 122-01.00W, "
        "46-01.00S 122-01.00W, 46-01.00S 122-00.00W and 46-00.00S 122-00.00W",
    ),
    Entry(
        "shape-not-as-told",
        "error",
        "`{written}` tells another shape than the one that its positions make",
        "a part of a circle, an arc, a strip along a line or the length of a thing is not read",
        "draw it from the original notice",
        _COMMON,
        bad="‹Insert semi-circular safety zone, radius 500m, centred on 46-00.00S 122-00.00W›",
        good="Insert circular safety zone, radius 500m, centred on 46-00.00S 122-00.00W",
    ),
)
