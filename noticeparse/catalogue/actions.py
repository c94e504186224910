"""Finding codes about items, references and geometry."""

from noticeparse.faults import Entry

_COMMON = "common practice, no published source"

ENTRIES = (
    Entry(
        "action-duplicate",
        "warning",
        "the same action stands above: `{written}`",
        "one of the two may have been meant for another feature or chart",
        "compare both with the original notice",
        _COMMON,
        bad="Insert wreck 46-00.00S 122-00.00W\n‹Insert wreck 46-00.00S 122-00.00W›",
        good="Insert wreck 46-00.00S 122-00.00W\nInsert rock 46-00.00S 122-00.00W",
    ),
    Entry(
        "bracket-lost",
        "error",
        "a bracket of the letter in `{written}` is lost",
        "which positions the letter stands for is not certain",
        "read the letters in the original notice",
        _COMMON,
        bad=(
            "Insert (a) wreck 46-00.00S 122-00.00W\n"
            "(b) wreck 46-00.50S 122-00.00W\n"
            "Delete rock, between ‹(a› and (b) above"
        ),
        good=(
            "Insert (a) wreck 46-00.00S 122-00.00W\n"
            "(b) wreck 46-00.50S 122-00.00W\n"
            "Delete rock, between (a) and (b) above"
        ),
    ),
    Entry(
        "change-of-nothing",
        "warning",
        "the new {property} is the old one",
        "the change that the notice means is lost, or it has been made already",
        "look for what is changed in the original notice",
        _COMMON,
        bad="‹Amend light Fl.R.3s to Fl.R.3s 46-00.00S 122-00.00W›",
        good="Amend light Fl.R.3s to Fl.R.5s 46-00.00S 122-00.00W",
    ),
    Entry(
        "deletion-to-depth",
        "error",
        "`{written}`: what is cleared or removed to a depth is still there",
        "a danger that lies on the bottom would go from the chart",
        "change its depth by hand if the original notice says no more",
        _COMMON,
        bad="The wreck in 46-00.00S 122-00.00W has been cleared ‹to 12m›.",
        good="The wreck in 46-00.00S 122-00.00W has been cleared.",
    ),
    Entry(
        "insert-and-delete",
        "warning",
        "`{written}`: the notice inserts the same thing at this place",
        "one of the two commands is a slip; the sheet would be left with or without it",
        "see in the original notice which of the two is meant",
        _COMMON,
        bad="Insert wreck 46-00.00S 122-00.00W\n‹Delete wreck 46-00.00S 122-00.00W›",
        good="Insert wreck 46-00.00S 122-00.00W\nDelete wreck 46-00.50S 122-00.00W",
    ),
    Entry(
        "item-of-one-chart",
        "error",
        "`{written}` is said of one chart alone",
        "it stands under other charts too, or others alone, and may not belong to all",
        "read which chart is meant in the original notice",
        _COMMON,
        bad=(
            "506/26 Quill Sound.\n"
            "Charts 802 [5/26] and 803 [6/26] WGS84, depths in metres\n"
            "Insert rock 46-00.00S 122-00.00W ‹(chart 804 only)›"
        ),
        good=(
            "506/26 Quill Sound.\n"
            "Charts 802 [5/26] and 803 [6/26] WGS84, depths in metres\n"
            "Insert rock 46-00.00S 122-00.00W"
        ),
    ),
    Entry(
        "item-of-other-notice",
        "warning",
        "the item names notice `{written}`, not that under which it stands",
        "it may have been recorded under another number, or corrected already",
        "see in the original notice what the number is said of",
        _COMMON,
        bad=(
            "506/26 Quill Sound.\nChart 802 [5/26] WGS84\n"
            "Insert rock 46-00.00S 122-00.00W  ‹30/26›"
        ),
        good=(
            "506/26 Quill Sound.\nChart 802 [5/26] WGS84\nInsert rock 46-00.00S 122-00.00W  506/26"
        ),
    ),
    Entry(
        "item-without-chart",
        "error",
        "no chart of the notice takes `{written}`",
        "the heads of the charts name letters, and this one is not among them",
        "ask the issuer which chart it belongs to",
        _COMMON,
        bad=(
            "506/26 Quill Sound.\n"
            "Charts 802 (a) [5/26] and 803 (a) [6/26] WGS84\n"
            "Insert (a) wreck 46-00.00S 122-00.00W\n"
            "‹(b) rock 46-00.50S 122-00.00W›"
        ),
        good=(
            "506/26 Quill Sound.\n"
            "Charts 802 (a) [5/26] and 803 (b) [6/26] WGS84\n"
            "Insert (a) wreck 46-00.00S 122-00.00W\n"
            "(b) rock 46-00.50S 122-00.00W"
        ),
    ),
    Entry(
        "item-without-position",
        "error",
        "no position stands with `{written}`",
        "what cannot be placed cannot be applied",
        "look for the position in the original notice",
        _COMMON,
        bad="‹Insert wreck›",
        good="Insert wreck 46-00.00S 122-00.00W",
    ),
    Entry(
        "item-without-verb",
        "error",
        "nothing says what is to be done with `{written}`",
        "the item may be an insertion or a deletion; it is not guessed",
        "look for the verb in the original notice",
        _COMMON,
        bad="‹wreck 46-00.00S 122-00.00W›",
        good="Delete wreck 46-00.00S 122-00.00W",
    ),
    Entry(
        "letter-out-of-order",
        "warning",
        "the letter ({letter}) follows ({before})",
        "an item may be missing between the two",
        "count the items in the original notice",
        _COMMON,
        bad="Insert (a) wreck 46-00.00S 122-00.00W\n(b) rock 46-00.50S 122-00.00W\n"
        "‹(d) stump 46-00.10S 122-00.20W›",
        good="Insert (a) wreck 46-00.00S 122-00.00W\n(b) rock 46-00.50S 122-00.00W\n"
        "(c) stump 46-00.10S 122-00.20W",
    ),
    Entry(
        "letter-unknown",
        "error",
        "no item ({letter}) is found for `{written}`",
        "what refers to the letter has no position, or a chart misses an item",
        "ask the issuer which position is meant",
        _COMMON,
        bad="Insert (a) wreck 46-00.00S 122-00.00W\nInsert rock ‹(c) above›",
        good="Insert (a) wreck 46-00.00S 122-00.00W\nInsert rock (a) above",
    ),
    Entry(
        "letter-used-twice",
        "warning",
        "the letter ({letter}) stands for two positions",
        "a later reference to it may mean either; the last one above is taken",
        "compare the letters with the original notice",
        _COMMON,
        bad="Insert (a) wreck 46-00.00S 122-00.00W\n‹(a)› rock 46-00.50S 122-00.00W",
        good="Insert (a) wreck 46-00.00S 122-00.00W\n(b) rock 46-00.50S 122-00.00W",
    ),
    Entry(
        "new-value-empty",
        "error",
        "`{written}` has an old value but no new one",
        "it may be lost; a deletion is said in words or with a dash",
        "read the row in the original notice",
        _COMMON,
        bad=(
            "Object                 Old         New         Position\n"
            "Light, Quill Point     ‹Fl.R.3s›                 46-00.00S 122-00.00W"
        ),
        good=(
            "Object                 Old         New         Position\n"
            "Light, Quill Point     Fl.R.3s     Fl.R.5s     46-00.00S 122-00.00W"
        ),
    ),
    Entry(
        "place-before-verb",
        "error",
        "the place in `{written}` may belong to the verb behind it",
        "positions would slide from one item to the next",
        "read both items in the original notice",
        _COMMON,
        bad=(
            "Insert cable joining 46-00.00S 122-00.00W\n46-00.20S 122-00.00W\n"
            "‹46-00.50S 122-00.00W delete› rock\nInsert wreck 46-00.70S 122-00.00W"
        ),
        good="Insert wreck 46-00.00S 122-00.00W\nDelete rock 46-00.50S 122-00.00W",
    ),
    Entry(
        "sentence-told-twice",
        "error",
        "`{written}` tells of more than one change",
        "which words belong to which change is not certain",
        "read the sentence in the original notice",
        _COMMON,
        bad=(
            "‹The light in 46-00.00S 122-00.00W has been moved to 46-00.50S 122-00.00W and "
            "has been altered to Fl.R.3s.›"
        ),
        good="The light in 46-00.00S 122-00.00W has been moved to 46-00.50S 122-00.00W.",
    ),
    Entry(
        "sentence-under-verb",
        "error",
        "`{written}` is said in a sentence of its own: the verb above does not hold for it",
        "what is only told of, or has been done, would be done to the chart",
        "read the sentence in the original notice",
        _COMMON,
        bad="Delete wreck 46-00.00S 122-00.00W\nThe light in 46-00.50S 122-00.00W ‹is› unlit",
        good="Delete wreck 46-00.00S 122-00.00W\nDelete light in 46-00.50S 122-00.00W",
    ),
    Entry(
        "sentence-unread",
        "error",
        "`{written}` tells of a change that cannot be read as an action",
        "an action may be lost here",
        "read the sentence in the original notice",
        _COMMON,
        bad=(
            "The wreck in 46-00.50S 122-00.00W has been removed. ‹No 6, has been laid in "
            "46-00.00S 122-00.00W.›"
        ),
        good=(
            "The wreck in 46-00.50S 122-00.00W has been removed. A special buoy, No 6, has "
            "been laid in 46-00.00S 122-00.00W."
        ),
    ),
    Entry(
        "verb-conditional",
        "error",
        "`{written}`: the command holds only then",
        "done now it would be wrong for a part of the time",
        "read in the original notice when it holds, and apply it by hand",
        _COMMON,
        bad="Delete wreck 46-00.00S 122-00.00W ‹when the works are complete›",
        good="Delete wreck 46-00.00S 122-00.00W",
    ),
    Entry(
        "verb-dated",
        "warning",
        "`{written}`: the command is for that day",
        "a chart corrected before it, or after, shows what is not there",
        "apply it on the day that the original notice names",
        _COMMON,
        bad="Insert wreck 46-00.00S 122-00.00W ‹on 1 July› 2026",
        good="Insert wreck 46-00.00S 122-00.00W",
    ),
    Entry(
        "verb-unknown",
        "error",
        "`{written}` is no verb of chart correction",
        "whether to insert, delete or change is not known, and the verb above does not hold",
        "read the item in the original notice",
        _COMMON,
        bad="Insert rock 46-00.00S 122-00.00W\n‹Deelte dangerous wreck 46-00.50S 122-00.00W›",
        good="Insert rock 46-00.00S 122-00.00W\nDelete dangerous wreck 46-00.50S 122-00.00W",
    ),
    Entry(
        "verb-within-words",
        "error",
        "`{written}` is a command within the words of another",
        "two items may have run together",
        "read both in the original notice",
        _COMMON,
        bad="Insert wreck ‹remove› rock 46-00.00S 122-00.00W",
        good='Insert legend "To remove rock" 46-00.00S 122-00.00W',
    ),
    Entry(
        "verb-without-item",
        "warning",
        "nothing stands under `{written}`",
        "an item may be lost, or the command belongs to what stands elsewhere",
        "look under the command in the original notice",
        _COMMON,
        bad="Insert wreck 46-00.00S 122-00.00W\n‹Delete›",
        good="Insert wreck 46-00.00S 122-00.00W\nDelete\nrock 46-00.50S 122-00.00W",
    ),
    Entry(
        "verb-yet-to-come",
        "warning",
        "`{written}` speaks of works to come",
        "the chart would show what is not there yet",
        "see in the original notice from what day it holds",
        _COMMON,
        bad="A jetty ‹will be built› in 46-00.00S 122-00.00W.",
        good="A jetty has been built in 46-00.00S 122-00.00W.",
    ),
)
