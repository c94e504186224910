"""Finding codes about positions."""

from noticeparse.faults import Entry

_MANUAL = "IMO MSC.1/Circ.1310, message element 6"
_ISO = "ISO 6709:2008"

ENTRIES = (
    Entry(
        "position-cut-off", "error", "the text breaks off within the position `{written}`",
        "the rest of the figures is lost; the item cannot be plotted",
        "get the notice again from its issuer", "common practice, no published source",
        bad="Insert wreck 47°12.34'S ‹123°›",
        good="Insert wreck 47°12.34'S 123°45.67'W",
    ),
    Entry(
        "position-datum-differs", "error",
        "`{written}` stands with a position, but others of the chart are on {datum}",
        "a position of one datum may lie hundreds of metres off on the other",
        "shift the position as the chart tells, or ask the issuer",
        "common practice, no published source",
        bad="Insert wreck 46-00.00S 122-00.00W on ‹ED50›",
        good="Insert wreck 46-00.00S 122-00.00W",
    ),
    Entry(
        "position-datum-not-kept", "warning",
        "`{written}` stands with a position, and the chart states no datum",
        "the record holds the datum of a chart, and none of a single position",
        "see that the position is plotted on a chart of its own datum",
        "common practice, no published source",
        bad="12/26 Quill Sound.\nChart 802 [3/26]\nInsert wreck 46-00.00S 122-00.00W on ‹ED50›",
        good="12/26 Quill Sound.\nChart 802 [3/26] ED50\nInsert wreck 46-00.00S 122-00.00W",
    ),
    Entry(
        "position-degrees-from-above", "info", "`{written}` leaves out its degrees",
        "those of the row above it are read, as far as the figures allow",
        "compare with the original notice", "common practice, no published source",
        bad="ACTION\tFEATURE\tLAT (S)\tLONG (W)\nInsert\twreck\t47 12.34\t123 45.67\n"
        "Insert\trock\t‹12.50\t45.80›",
        good="ACTION\tFEATURE\tLAT (S)\tLONG (W)\nInsert\twreck\t47 12.34\t123 45.67\n"
        "Insert\trock\t47 12.50\t123 45.80",
    ),
    Entry(
        "position-degrees-lent", "error",
        "`{written}` may be a place, or only the degrees of the positions below it",
        "a place of whole degrees is rare, and what takes its degrees stands below it",
        "compare with the original notice",
        "common practice, no published source",
        bad=(
            "506/26 Quill Sound.\nChart 802 [3/26] WGS84\nInsert wreck ‹47°S 123°W›\n"
            "Insert rock 12'.90S 46'.20W"
        ),
        good=(
            "506/26 Quill Sound.\nChart 802 [3/26] WGS84\nAll positions 47°S 123°W\n"
            "Insert rock 12'.90S 46'.20W"
        ),
    ),
    Entry(
        "position-degrees-out-of-range", "error", "`{written}`: {axis} has {figure} degrees",
        "latitude ends at 90 and longitude at 180 degrees",
        "look for a digit slip and ask the issuer", _ISO,
        bad="Insert wreck ‹91°12.34'S› 123°45.67'W",
        good="Insert wreck 47°12.34'S 123°45.67'W",
    ),
    Entry(
        "position-differs-by-chart", "warning",
        "`{written}` here and `{other}` on another chart of the notice are the same feature",
        "one of the two sheets would get it in a wrong place",
        "compare both positions with the original notice",
        "common practice, no published source",
        bad="Insert port-hand light-buoy, Fl.R.3s No 4 46-00.00S 122-00.00W\n"
        "Chart 803 [4/26] WGS84\nInsert port-hand light-buoy, Fl.R.3s No 4 ‹46-00.30S 122-00.00W›",
        good="Insert port-hand light-buoy, Fl.R.3s No 4 46-00.00S 122-00.00W\n"
        "Chart 803 [4/26] WGS84\nInsert port-hand light-buoy, Fl.R.3s No 4 46-00.0S 122-00.0W",
    ),
    Entry(
        "position-exchanged", "warning", "longitude stands before latitude in `{written}`",
        "an exchanged pair is the sign of a slip in the columns",
        "check both against the original notice", _MANUAL,
        bad="Insert wreck ‹123-45.67W 47-12.34S›",
        good="Insert wreck 47-12.34S 123-45.67W",
    ),
    Entry(
        "position-far-away", "warning",
        "`{written}` lies {miles} miles from all others of its notice",
        "a changed or lost figure would bring it back, or no other place is within reason",
        "compare each figure with the original notice", "common practice, no published source",
        bad=(
            "Insert wreck 46-00.00S 122-00.00W\n"
            "Insert rock 46-00.50S 122-00.00W\n"
            "Insert stump 46-00.10S 122-00.20W\n"
            "Insert pile ‹46-00.10S 129-00.20W›"
        ),
        good=(
            "Insert wreck 46-00.00S 122-00.00W\n"
            "Insert rock 46-00.50S 122-00.00W\n"
            "Insert stump 46-00.10S 122-00.20W\n"
            "Insert pile 46-00.10S 122-00.40W"
        ),
    ),
    Entry(
        "position-figure-missing", "warning",
        "`{written}` has minutes or seconds of one figure; the others have two",
        "where 04' is written with its nought, 4' may be what is left of 14'",
        "compare with the original notice", "common practice, no published source",
        bad="Insert wreck 46-00.10S 122-01.20W\nInsert rock 46-00.50S 122-02.20W\n"
        "Insert pile ‹46-00.10S 122-4.20W›",
        good="Insert wreck 46-00.10S 122-01.20W\nInsert rock 46-00.50S 122-02.20W\n"
        "Insert pile 46-00.10S 122-04.20W",
    ),
    Entry(
        "position-form-unclear", "warning",
        "`{written}`: decimals of a degree and minutes cannot be told apart without their marks",
        "47.12S may be 47 degrees 12 minutes, and 47 12 34S may be 12.34 minutes",
        "compare with the original notice, and write the marks",
        "common practice, no published source",
        bad="Insert wreck ‹47 12 34S 123 45 40W›",
        good="Insert wreck 47°12'34\"S 123°45'40\"W",
    ),
    Entry(
        "position-half-missing", "error", "`{written}` has no {axis} beside it",
        "half a position cannot be plotted", "look for the other half in the original notice",
        _ISO,
        bad="Insert wreck ‹46-00.00S›",
        good="Insert wreck 46-00.00S 122-00.00W",
    ),
    Entry(
        "position-hemisphere-conflict", "error", "`{written}` gives the {axis} twice",
        "one of the two letters is wrong and nobody can say which", "ask the issuer", _ISO,
        bad="Insert wreck ‹47-12.34S 45-45.67S›",
        good="Insert wreck 47-12.34S 123-45.67W",
    ),
    Entry(
        "position-hemisphere-differs", "warning",
        "`{written}` is {side}; the positions around it are {usual}",
        "a wrong letter puts it on the other side of the globe",
        "compare the hemisphere with the original notice", "common practice, no published source",
        bad="Insert wreck 46-00.00S 122-00.00W\nInsert rock 46-00.50S 122-00.00W\n"
        "Insert stump 46-00.10S 122-00.20W\nDelete dolphin ‹46-00.20N 122-00.10W›",
        good="Insert wreck 46-00.00S 122-00.00W\nInsert rock 46-00.50S 122-00.00W\n"
        "Insert stump 46-00.10S 122-00.20W\nDelete dolphin 46-00.20S 122-00.10W",
    ),
    Entry(
        "position-hemisphere-missing", "error", "no hemisphere stands with `{written}`",
        "the position may lie on the other side of the equator or of the prime meridian",
        "take the letter from the original notice; it is never assumed", _MANUAL,
        bad="Insert wreck ‹47°12.34'› 123°45.67'W",
        good="Insert wreck 47°12.34'S 123°45.67'W",
    ),
    Entry(
        "position-latitude-digits", "warning", "`{written}`: degrees of latitude have two figures",
        "a third figure may be a slip, or the longitude of another position",
        "compare with the original notice", _MANUAL,
        bad="Insert wreck ‹046-00.00S› 122-00.00W",
        good="Insert wreck 46-00.00S 122-00.00W",
    ),
    Entry(
        "position-latitude-shared", "warning",
        "`{written}` stands alone: the latitude of the position before it is read",
        "in a list a latitude may be left out, or it may be lost",
        "compare with the original notice", "common practice, no published source",
        bad="Insert cable joining 47°12'.34S 123°45'.67W, 13'.10S 46'.20W and ‹47'.30W›",
        good="Insert cable joining 47°12'.34S 123°45'.67W, 13'.10S 46'.20W and 13'.10S 47'.30W",
    ),
    Entry(
        "position-letter-for-figure", "warning",
        "`{written}` has the letter `{letter}` for a figure",
        "a figure read from a letter may be another figure",
        "compare each figure with the original notice", "common practice, no published source",
        bad="Insert wreck ‹47-O2.34S› 123-45.67W",
        good="Insert wreck 47-02.34S 123-45.67W",
    ),
    Entry(
        "position-longitude-digits", "warning",
        "`{written}`: degrees of longitude have three figures",
        "a figure may be lost: 23-45W can be 123-45W, if it is not written without noughts",
        "compare with the original notice", _MANUAL,
        bad="Insert wreck 47-12.34S ‹23-45.67W›",
        good="Insert wreck 47-12.34S 123-45.67W",
    ),
    Entry(
        "position-minutes-out-of-range", "error", "`{written}`: {figure} minutes; 59 is the last",
        "the figure is impossible and is never carried over into the degrees",
        "look for a digit slip and ask the issuer", _MANUAL,
        bad="Insert wreck ‹47-72.34S› 123-45.67W",
        good="Insert wreck 47-12.34S 123-45.67W",
    ),
    Entry(
        "position-not-the-same", "error",
        "`{written}` is said to be the position above, and is another",
        "the words or the figures are wrong, and nobody can say which", "ask the issuer",
        "common practice, no published source",
        bad="Insert wreck 46-00.10S 122-00.20W\n"
        "Insert dolphin ‹in the same position, 46-00.70S 122-00.20W›",
        good="Insert wreck 46-00.10S 122-00.20W\n"
        "Insert dolphin in the same position, 46-00.10S 122-00.20W",
    ),
    Entry(
        "position-of-other-item", "error",
        "the position of the letter ({letter}) may be that of item ({letter}), which has none",
        "two items would be plotted in wrong places",
        "compare the letters with the original notice", "common practice, no published source",
        bad="Insert (a) wreck\n(b) submarine cable, joining\n(a) ‹46-00.00S 122-00.00W›\n"
        "(c) 46-00.50S 122-00.00W",
        good="Insert (a) wreck 46-00.00S 122-00.00W\n(b) submarine cable, joining\n"
        "46-00.50S 122-00.00W\n46-00.60S 122-00.10W",
    ),
    Entry(
        "position-precision-differs", "warning",
        "latitude and longitude of `{written}` have unlike numbers of decimals",
        "a figure may be lost from one of the two", "compare with the original notice", _MANUAL,
        bad="Insert wreck ‹47-12.3S 123-45.67W›",
        good="Insert wreck 47-12.34S 123-45.67W",
    ),
    Entry(
        "position-seconds-out-of-range", "error", "`{written}`: {figure} seconds; 59 is the last",
        "the figure is impossible and is never carried over into the minutes",
        "look for a digit slip and ask the issuer", _ISO,
        bad="Insert wreck 47-12-20S ‹123-45-75W›",
        good="Insert wreck 47-12-20S 123-45-40W",
    ),
    Entry(
        "position-seconds-unclear", "error",
        "`{written}`: the last figures may be seconds or decimals of a minute",
        "the two readings differ by up to half a mile",
        "take the position from the original notice", "common practice, no published source",
        bad='Insert wreck ‹47° 12\' 34S› 123° 45\' 40"W',
        good='Insert wreck 47° 12\' 34"S 123° 45\' 40"W',
    ),
    Entry(
        "position-shared-degrees-doubtful", "warning",
        "`{written}` may belong to the next degree",
        "its minutes lie more than half a degree from those of the position before it, whose "
        "degrees it shares", "compare with the original notice",
        "common practice, no published source",
        bad="Insert wrecks in 47° 59'.34S 123° 45'.67W and ‹00'.90S 46'.20W›",
        good="Insert wrecks in 47° 59'.34S 123° 45'.67W and 58'.90S 46'.20W",
    ),
    Entry(
        "position-shared-degrees-unknown", "error",
        "`{written}` leaves out the degrees, which no position before it in its notice tells",
        "the degrees are never assumed", "take the degrees from the original notice", _MANUAL,
        bad="Insert wreck in ‹12'.90S 46'.20W›",
        good="Insert wreck in 47° 12'.90S 123° 46'.20W",
    ),
    Entry(
        "position-sign-and-hemisphere", "error", "`{written}` has a sign and a hemisphere letter",
        "the two may cancel each other or say the same twice", "ask the issuer", _ISO,
        bad="Insert wreck ‹-47.20567°S› 123.76117°W",
        good="Insert wreck 47.20567°S 123.76117°W",
    ),
    Entry(
        "position-symbol-lost", "warning", "the degree sign of `{written}` was lost in copying",
        "what was lost with it cannot be seen", "compare with the original notice",
        "common practice, no published source",
        bad="Insert wreck ‹47*12.34'S› 123°45.67'W",
        good="Insert wreck 47°12.34'S 123°45.67'W",
    ),
    Entry(
        "position-twice", "warning", "`{written}` stands twice in a row",
        "a figure of one of the two may be wrong, and a corner or end be missing",
        "compare both with the original notice", "common practice, no published source",
        bad="Insert cable joining 46-00.00S 122-00.00W, 46-00.50S 122-00.00W and "
        "‹46-00.50S 122-00.00W›",
        good="Insert cable joining 46-00.00S 122-00.00W, 46-00.50S 122-00.00W and "
        "46-00.60S 122-00.00W",
    ),
    Entry(
        "position-unreadable", "error", "`{written}` cannot be read as a position",
        "the item cannot be plotted", "take the position from the original notice", _ISO,
        bad="Insert wreck ‹47-1Z.34S› 123-45.67W",
        good="Insert wreck 47-12.34S 123-45.67W",
    ),
)  # fmt: skip
