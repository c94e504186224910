"""Finding codes about words beside a command that say how far, or how long, it holds."""

from noticeparse.faults import Entry

_PRACTICE = "common practice, no published source"
_P = "46-00.00S 122-00.00W"

ENTRIES = (
    Entry(
        "item-limited",
        "error",
        "`{written}` limits the command, or takes it back",
        "done as it stands it may be done too early, on the wrong paper, or not to be done at all",
        "read in the original notice how far it holds, and apply it by hand",
        _PRACTICE,
        bad=f"Delete rock {_P} (‹if charted›)",
        good=f"Delete rock {_P}",
    ),
    Entry(
        "item-temporary",
        "warning",
        "`{written}`: the command may be temporary",
        "a chart is corrected in ink for a permanent notice; what soon ends goes on it in pencil",
        "read in the original notice how long it holds",
        _PRACTICE,
        bad=f"Insert port-hand buoy ‹(T)› {_P}",
        good=f"Insert port-hand buoy {_P}",
    ),
    Entry(
        "item-with-note",
        "warning",
        "`{written}` leads to a note, which may limit the command",
        "what stands at the foot of a list holds for the items with its mark",
        "read the note in the original notice",
        _PRACTICE,
        bad=f"Insert wreck {_P} ‹(see note B)›",
        good=f"Insert wreck {_P}",
    ),
    Entry(
        "verb-limited-above",
        "error",
        "`{written}` stands above the command and limits it",
        "done as it stands it may be done too early, or where it is only told of",
        "read in the original notice how far it holds, and apply it by hand",
        _PRACTICE,
        bad=f"‹Not to be carried out:›\nInsert wreck {_P}",
        good=f"Insert wreck {_P}",
    ),
    Entry(
        "verb-limited-beside",
        "error",
        "`{written}` is said of commands above or below, and limits them",
        "what does not hold, or not yet, or for another chart, would be done to this one",
        "read in the original notice how far they hold, and apply them by hand",
        _PRACTICE,
        bad=f"Insert wreck {_P}\n‹Disregard the above.›",
        good=f"Insert wreck {_P}",
    ),
)
