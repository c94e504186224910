"""Finding codes about what a file shows and its text alone does not."""

from noticeparse.faults import Entry

ENTRIES = (
    Entry(
        "alternatives-differ", "error", "the other form of this mail says here: `{written}`",
        "a mail may hold its text twice, and only one of the two is right",
        "open the mail in both forms and ask which one holds", "RFC 2046, 5.1.4",
        bad="Insert wreck, least depth ‹4m› 46-00.00S 122-00.00W",
        good="Insert wreck, least depth 5m 46-00.00S 122-00.00W",
    ),
    Entry(
        "attachment-not-read", "warning", "the attachment `{name}` is not read: {why}",
        "it may hold notices, or sketches and tables that belong to them",
        "open the attachment and read it by itself", "common practice, no published source",
        bad=(
            "Insert wreck, least depth 4m 46-00.00S 122-00.00W\n"
            "\n"
            "‹›Insert wreck, least depth 5m 46-01.00S 122-00.00W"
        ),
        good="Insert wreck, least depth 5m 46-00.00S 122-00.00W",
    ),
    Entry(
        "cells-not-paired", "error",
        "which lines of these cells belong together cannot be told: `{written}`",
        "a feature may be taken to the place of another one",
        "give each feature a row of its own", "common practice, no published source",
        bad=(
            "Insert wreck, least depth 4m 46-00.00S 122-00.00W\n"
            "\n"
            "‹Insert\tchimney flagstaff\t46-00.00S 122-00.00W 46-01.00S 122-00.00W›"
        ),
        good="Insert wreck, least depth 5m 46-00.00S 122-00.00W",
    ),
    Entry(
        "figure-in-doubt", "error", "`{written}`: how large and low a figure is does not decide",
        "small low figures are tenths: 8.6 m is read as 86 m where they are taken for large ones",
        "read the figure in the original file", "IHO S-4, B-412, from memory",
        bad="Insert wreck, least depth ‹8\ufffdx› 46-00.00S 122-00.00W",
        good="Insert wreck, least depth 8₆ 46-00.00S 122-00.00W",
    ),
    Entry(
        "figure-underlined", "warning", "`{written}` is underlined, and read as if it were not",
        "an underlined figure may be a drying height, above the level of the soundings",
        "look whether a depth or a drying height is meant", "IHO S-4, B-413, from memory",
        bad="Insert wreck, least depth ‹4m› 46-00.00S 122-00.00W",
        good="Insert wreck, least depth 5m 46-00.00S 122-00.00W",
    ),
    Entry(
        "list-number-left-out", "warning",
        "the file counts the items of a list by itself, and the text has no such numbers",
        "a letter that a later item refers to may be one of them",
        "compare references such as `(a) above` with the original",
        "common practice, no published source",
        bad=(
            "Insert wreck, least depth 4m 46-00.00S 122-00.00W\n"
            "\n"
            "‹›Delete wreck, least depth 5m 46-01.00S 122-00.00W"
        ),
        good="Insert wreck, least depth 5m 46-00.00S 122-00.00W",
    ),
    Entry(
        "page-annotated", "warning",
        "page {page}: notes, marks or fields lie over the text, and are not read",
        "words may have been struck out or corrected by them", "look at the page",
        "ISO 32000-1, 12.5",
        bad=(
            "‹12/26 Quill Sound.\n"
            "Chart 802 [3/26] WGS84, depths in metres\n"
            "Insert wreck, least depth 4m 46-00.00S 122-00.00W›"
        ),
        good="Insert wreck, least depth 5m 46-00.00S 122-00.00W",
    ),
    Entry(
        "page-order-in-doubt", "error",
        "page {page}: whether columns or a table stand here cannot be told; it is read in rows",
        "words of one column may have been read with those of the one beside it",
        "compare these lines with the page", "common practice, no published source",
        bad=(
            "‹12/26 Quill Sound.\n"
            "Chart 802 [3/26] WGS84, depths in metres\n"
            "Insert submarine cable, joining\n"
            "46-00.00S 122-00.00W    46-00.00S 122-04.00W\n"
            "46-01.00S 122-01.00W    46-01.00S 122-05.00W\n"
            "46-01.00S 122-02.00W    46-01.00S 122-06.00W\n"
            "46-00.00S 122-03.00W    46-00.00S 122-07.00W›"
        ),
        good="Insert wreck, least depth 5m 46-00.00S 122-00.00W",
    ),
    Entry(
        "page-text-recognised", "warning",
        "page {page}: the text behind the picture was made by a scanner",
        "a figure that was recognised wrongly looks right", "compare every figure with the page",
        "common practice, no published source",
        bad=(
            "‹12/26 Quill Sound.\n"
            "Chart 802 [3/26] WGS84, depths in metres\n"
            "Insert wreck, least depth 4m 46-00.00S 122-00.00W›"
        ),
        good="Insert wreck, least depth 5m 46-00.00S 122-00.00W",
    ),
    Entry(
        "page-text-turned", "warning",
        "page {page}: this text stands in another direction, and behind the rest of its page",
        "it may belong to what it stands beside", "look at the page",
        "common practice, no published source",
        bad="Insert wreck, least depth 4m 46-00.00S 122-00.00W\n‹Seen by night›",
        good="Insert wreck, least depth 5m 46-00.00S 122-00.00W",
    ),
    Entry(
        "page-without-text", "error", "page {page} holds no text, only pictures: it is not read",
        "notices may stand on it", "read this page in the original, or have its text recognised",
        "common practice, no published source",
        bad=(
            "Insert wreck, least depth 4m 46-00.00S 122-00.00W\n"
            "‹›Insert wreck, least depth 5m 46-01.00S 122-00.00W"
        ),
        good="Insert wreck, least depth 5m 46-00.00S 122-00.00W",
    ),
    Entry(
        "part-not-read", "warning", "what is no text of the page is not read here: {written}",
        "a figure or a word may be drawn in it, or it may say that the text does not hold",
        "look at it in the original file", "common practice, no published source",
        bad="Insert wreck, ‹›least depth 4m 46-00.00S 122-00.00W",
        good="Insert wreck, least depth 5m 46-00.00S 122-00.00W",
    ),
    Entry(
        "text-character-lost", "error",
        "`{written}`: the file does not say which character is drawn here",
        "it may be a degree sign or a figure", "read these words in the original file",
        "The Unicode Standard, section 23.8",
        bad="Insert wreck, ‹le\ufffdst› depth 4m 46-00.00S 122-00.00W",
        good="Insert wreck, least depth 5m 46-00.00S 122-00.00W",
    ),
    Entry(
        "text-hidden", "warning", "the file hides these words, and they are left out: `{written}`",
        "nobody sees them who looks at the page", "look whether they belong to the notices",
        "common practice, no published source",
        bad="Insert wreck, ‹›least depth 4m 46-00.00S 122-00.00W",
        good="Insert wreck, least depth 5m 46-00.00S 122-00.00W",
    ),
    Entry(
        "text-inserted", "warning", "put in later, and not accepted yet: `{written}`",
        "the change may be a proposal that is not valid", "ask for the file without open changes",
        "common practice, no published source",
        bad="Insert wreck, ‹least depth 4m› 46-00.00S 122-00.00W",
        good="Insert wreck, least depth 5m 46-00.00S 122-00.00W",
    ),
    Entry(
        "text-not-shown", "error", "`{written}`: the file holds this, and the page shows it not",
        "it is covered, clipped or without colour, and may be no part of the notice",
        "look at the page, and correct the text by what it shows",
        "common practice, no published source",
        bad="Insert wreck, least depth ‹4m› 46-00.00S 122-00.00W",
        good="Insert wreck, least depth 5m 46-00.00S 122-00.00W",
    ),
    Entry(
        "text-struck-out", "warning", "struck out, and left out here: `{written}`",
        "what was struck out may still hold, or more of it", "compare it with the original",
        "common practice, no published source",
        bad="Insert wreck, ‹›least depth 4m 46-00.00S 122-00.00W",
        good="Insert wreck, least depth 5m 46-00.00S 122-00.00W",
    ),
    Entry(
        "text-struck-through", "error", "`{written}`: a line is drawn through these words",
        "what is struck through does not hold", "look at the page, and take out what is struck",
        "common practice, no published source",
        bad="Insert wreck, ‹least› depth 4m 46-00.00S 122-00.00W",
        good="Insert wreck, least depth 5m 46-00.00S 122-00.00W",
    ),
)  # fmt: skip
