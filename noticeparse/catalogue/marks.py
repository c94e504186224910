"""Finding codes about marks whose parts disagree."""

from noticeparse.faults import Entry

_IALA = "IALA Maritime Buoyage System, from memory"
_ASK = "ask the issuer which of the two is meant"
_P = "46-00.00S 122-00.00W"
_Q = "46-00.50S 122-00.00W"

ENTRIES = (
    Entry(
        "mark-cardinal-colours", "warning",
        "{written} are not the bands of {quarter} cardinal marks",
        "the mark would send a ship to the wrong side of a danger", _ASK, _IALA,
        f"‹Insert north cardinal buoy, YB {_P}›",
        f"Insert north cardinal buoy, BY {_P}",
    ),
    Entry(
        "mark-cardinal-light", "warning",
        "`{written}` is not the light of {quarter} cardinal marks",
        "the light would send a ship to the wrong side of a danger", _ASK, _IALA,
        f"‹Insert north cardinal light-buoy, Q(3)10s {_P}›",
        f"Insert east cardinal light-buoy, Q(3)10s {_P}",
    ),
    Entry(
        "mark-cardinal-topmark", "warning",
        "{written} is not the topmark of {quarter} cardinal marks",
        "the topmark would send a ship to the wrong side of a danger", _ASK, _IALA,
        f"‹Insert north cardinal buoy, topmark 2 cones points down {_P}›",
        f"Insert south cardinal buoy, topmark 2 cones points down {_P}",
    ),
    Entry(
        "mark-colour-light", "warning", "`{written}` on a {colour} mark: paint and light disagree",
        "by day and by night the mark would be left on different hands", _ASK, _IALA,
        f"‹Insert port-hand light-buoy, red, Fl.G.5s {_P}›",
        f"Insert port-hand light-buoy, red, Fl.R.5s {_P}",
    ),
    Entry(
        "mark-colours", "warning", "{written}: not the paint of marks of the kind {mark}",
        "by day the mark would be taken for another", _ASK, _IALA,
        f"‹Insert isolated danger buoy, BYB {_P}›",
        f"Insert isolated danger buoy, BRB {_P}",
    ),
    Entry(
        "mark-lateral-colours", "warning", "{written} is not the paint of a {mark} mark",
        "lateral marks are red or green in both regions of buoyage", _ASK, _IALA,
        f"‹Insert port-hand buoy, yellow {_P}›",
        f"Insert port-hand buoy, red {_P}",
    ),
    Entry(
        "mark-lateral-composite", "warning",
        "`{written}` on a {mark} mark: the rhythm of a preferred channel",
        "where a channel divides, the mark would be taken for the point of division", _ASK, _IALA,
        f"‹Insert port-hand light-buoy, Fl(2+1)R.10s {_P}›",
        f"Insert preferred channel to starboard light-buoy, Fl(2+1)R.10s {_P}",
    ),
    Entry(
        "mark-lateral-light", "warning", "`{written}` is not the light of a {mark} mark",
        "lateral marks show red or green in both regions of buoyage", _ASK, _IALA,
        f"‹Insert port-hand light-buoy, Fl.Y.5s {_P}›",
        f"Insert port-hand light-buoy, Fl.R.5s {_P}",
    ),
    Entry(
        "mark-lateral-shape", "warning", "{written} is not the shape of a {mark} mark",
        "cans are left to port and cones to starboard when coming from seaward", _ASK, _IALA,
        f"‹Insert starboard-hand can buoy {_P}›",
        f"Insert starboard-hand conical buoy {_P}",
    ),
    Entry(
        "mark-lateral-topmark", "warning", "{written} is not the topmark of a {mark} mark",
        "the topmark would send a ship to the wrong side of the mark", _ASK, _IALA,
        f"‹Insert port-hand buoy, topmark cone point up {_P}›",
        f"Insert port-hand buoy, topmark can {_P}",
    ),
    Entry(
        "mark-light", "warning", "`{written}` is not a light that marks of the kind {mark} show",
        "by night the mark would be taken for another", _ASK, _IALA,
        f"‹Insert isolated danger light-buoy, Fl(3)10s {_P}›",
        f"Insert isolated danger light-buoy, Fl(2)10s {_P}",
    ),
    Entry(
        "mark-preferred-colours", "warning",
        "{written} are not the bands of a preferred-channel mark",
        "the broad band tells on which side the other channel lies", _ASK, _IALA,
        f"‹Insert preferred channel to port buoy, black and red {_P}›",
        f"Insert preferred channel to port buoy, GRG {_P}",
    ),
    Entry(
        "mark-preferred-rhythm", "warning",
        "`{written}` is not the rhythm of a preferred-channel mark",
        "by night it is told from plain lateral marks by its composite group alone", _ASK, _IALA,
        f"‹Insert preferred channel to port light-buoy, Fl.G.3s {_P}›",
        f"Insert preferred channel to port light-buoy, Fl(2+1)G.10s {_P}",
    ),
    Entry(
        "mark-region", "warning", "{written} on a {mark} mark is region {region}, not {other}",
        "region A has red to port, region B green; a notice lies in one of them",
        "ask the issuer whether the colour or the hand is meant", _IALA,
        f"Insert port-hand light-buoy, Fl.R.5s {_P}\n"
        f"‹Insert starboard-hand light-buoy, Fl.R.3s {_Q}›",
        f"Insert port-hand light-buoy, Fl.R.5s {_P}\n"
        f"Insert starboard-hand light-buoy, Fl.G.3s {_Q}",
    ),
    Entry(
        "mark-topmark", "warning", "{written} is not the topmark of marks of the kind {mark}",
        "by day the mark would be taken for another", _ASK, _IALA,
        f"‹Insert isolated danger buoy, topmark sphere {_P}›",
        f"Insert isolated danger buoy, topmark 2 spheres {_P}",
    ),
)  # fmt: skip
