"""Finding codes about marks whose parts disagree."""

from noticeparse.faults import Entry

_IALA = "IALA Maritime Buoyage System, from memory"

ENTRIES = (
    Entry(
        "mark-cardinal-colours", "warning",
        "`{written}` are not the colours of the {quarter} cardinal mark",
        "the mark would send a ship to the wrong side of a danger",
        "ask the issuer which of the two is meant", _IALA,
        bad="‹Insert north cardinal buoy, red 46-00.00S 122-00.00W›",
        good="Insert north cardinal buoy, black and yellow 46-00.00S 122-00.00W",
    ),
    Entry(
        "mark-cardinal-light", "warning",
        "`{written}` is not the light of the {quarter} cardinal mark",
        "the light would send a ship to the wrong side of a danger",
        "ask the issuer which of the two is meant", _IALA,
        bad="‹Insert north cardinal light-buoy, Q(3)10s 46-00.00S 122-00.00W›",
        good="Insert east cardinal light-buoy, Q(3)10s 46-00.00S 122-00.00W",
    ),
    Entry(
        "mark-cardinal-topmark", "warning",
        "`{written}` is not the topmark of the {quarter} cardinal mark",
        "the topmark would send a ship to the wrong side of a danger",
        "ask the issuer which of the two is meant", _IALA,
        bad="‹Insert north cardinal buoy, topmark 2 cones points down 46-00.00S 122-00.00W›",
        good="Insert south cardinal buoy, topmark 2 cones points down 46-00.00S 122-00.00W",
    ),
    Entry(
        "mark-light", "warning", "`{written}` is not a light that {mark} marks show",
        "by night the mark would be taken for another", "ask the issuer which of the two is meant",
        _IALA,
        bad="‹Insert isolated danger light-buoy, Fl(3)5s 46-00.00S 122-00.00W›",
        good="Insert isolated danger light-buoy, Fl(2)5s 46-00.00S 122-00.00W",
    ),
)  # fmt: skip
