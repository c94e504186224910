"""Finding codes about marks whose parts disagree."""

from noticeparse.faults import Entry

_IALA = "IALA Maritime Buoyage System, from memory"

ENTRIES = (
    Entry(
        "mark-cardinal-colours", "warning",
        "{written} are not the bands of a {quarter} cardinal mark",
        "the mark would send a ship to the wrong side of a danger",
        "ask the issuer which of the two is meant", _IALA,
    ),
    Entry(
        "mark-cardinal-light", "warning",
        "`{written}` is not the light of a {quarter} cardinal mark",
        "the light would send a ship to the wrong side of a danger",
        "ask the issuer which of the two is meant", _IALA,
    ),
    Entry(
        "mark-cardinal-topmark", "warning",
        "{written} is not the topmark of a {quarter} cardinal mark",
        "the topmark would send a ship to the wrong side of a danger",
        "ask the issuer which of the two is meant", _IALA,
    ),
    Entry(
        "mark-light", "warning", "`{written}` is not a light that marks of the kind {mark} show",
        "by night the mark would be taken for another", "ask the issuer which of the two is meant",
        _IALA,
    ),
)  # fmt: skip
