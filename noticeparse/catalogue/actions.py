"""Finding codes about items, references and geometry."""

from noticeparse.faults import Entry

_COMMON = "common practice, no published source"

ENTRIES = (
    Entry(
        "action-duplicate", "warning", "the same action stands above: `{written}`",
        "one of the two may have been meant for another feature or chart",
        "compare both with the original notice", _COMMON,
    ),
    Entry(
        "geometry-along-coast", "warning", "`{written}` runs on without a position",
        "part of the line or limit follows a coast or leads where no position says",
        "draw that part from the original notice and the chart", _COMMON,
    ),
    Entry(
        "geometry-too-few-positions", "error", "the {shape} of `{written}` has too few positions",
        "a line needs two positions and an area three; one may be lost",
        "look for the others in the original notice", _COMMON,
    ),
    Entry(
        "item-without-chart", "error", "no chart of the notice takes `{written}`",
        "the heads of the charts name letters, and this one is not among them",
        "ask the issuer which chart it belongs to", _COMMON,
    ),
    Entry(
        "item-without-position", "error", "no position stands with `{written}`",
        "what cannot be placed cannot be applied",
        "look for the position in the original notice", _COMMON,
    ),
    Entry(
        "item-without-verb", "error", "nothing says what is to be done with `{written}`",
        "the item may be an insertion or a deletion; it is not guessed",
        "look for the verb in the original notice", _COMMON,
    ),
    Entry(
        "letter-unknown", "error", "no item ({letter}) stands before `{written}`",
        "the reference leads nowhere, so the item has no position",
        "ask the issuer which position is meant", _COMMON,
    ),
    Entry(
        "letter-used-twice", "warning", "the letter ({letter}) stands for two positions",
        "a later reference to it may mean either; the last one above is taken",
        "compare the letters with the original notice", _COMMON,
    ),
    Entry(
        "move-too-far", "warning", "the new position lies {miles} miles from the old one",
        "a move is used for a small shift on the sheet; a figure may have slipped",
        "compare both positions with the original notice", _COMMON,
    ),
    Entry(
        "move-unpaired", "error", "`{written}` has not as many new positions as old ones",
        "which goes where is not said", "take each move from the original notice", _COMMON,
    ),
    Entry(
        "move-without-destination", "error", "`{written}` does not say where to",
        "a move needs the old and the new position",
        "look for the second position in the original notice", _COMMON,
    ),
    Entry(
        "offset-disagrees", "warning",
        "the position lies {metres} m from where its bearing and distance put it",
        "one of the two is wrong", "plot both and ask the issuer", _COMMON,
    ),
    Entry(
        "offset-magnetic", "error", "`{written}` gives a magnetic bearing",
        "without the variation it cannot be made true",
        "work it out with the variation of the chart", _COMMON,
    ),
    Entry(
        "offset-not-worked-out", "error",
        "the position of `{written}` cannot be worked out from its bearing and distance",
        "the reference has no position in the text", "plot it from the charted reference", _COMMON,
    ),
    Entry(
        "reference-unknown", "error", "`{written}` refers to a position, but none stands before it",
        "the item has no position", "ask the issuer which position is meant", _COMMON,
    ),
    Entry(
        "sentence-told-twice", "error", "`{written}` tells of more than one change",
        "which words belong to which change is not certain",
        "read the sentence in the original notice", _COMMON,
    ),
    Entry(
        "sentence-unread", "error", "`{written}` tells of a change but names no known feature",
        "an action may be lost here", "read the sentence in the original notice", _COMMON,
    ),
    Entry(
        "verb-unknown", "error", "`{written}` is no verb of chart correction",
        "whether to insert, delete or change is not known, and the verb above does not hold",
        "read the item in the original notice", _COMMON,
    ),
    Entry(
        "verb-within-words", "error", "`{written}` is a command within the words of another",
        "two items may have run together", "read both in the original notice", _COMMON,
    ),
)
