"""Finding codes about the characters of the text."""

from noticeparse.faults import Entry

ENTRIES = (
    Entry(
        "text-control-character", "info", "control characters stand in the text and are left out",
        "what they hid cannot be seen", "compare these words with the original",
        "common practice, no published source",
    ),
    Entry(
        "text-garbled", "error", "garbled: `{written}`",
        "an action may stand here that nobody can read", "read these words in the original notice",
        "common practice, no published source",
    ),
    Entry(
        "text-not-utf8", "warning",
        "the file is not {encoding}: characters are lost, the first at byte {offset}",
        "a lost character may have been a degree sign or a figure",
        "save the file as UTF-8 and read it again", "common practice, no published source",
    ),
    Entry(
        "text-other-encoding", "info", "the file was read as {encoding}",
        "a wrong guess of the encoding damages symbols", "look at the degree signs",
        "common practice, no published source",
    ),
    Entry(
        "text-surrogate", "warning", "half a character stands alone and was read as U+FFFD",
        "a symbol is lost", "copy the text again from its source",
        "The Unicode Standard, section 3.9",
    ),
)  # fmt: skip
