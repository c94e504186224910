"""Finding codes about the characters of the text."""

from noticeparse.faults import Entry

ENTRIES = (
    Entry(
        "text-control-character", "info", "control characters stand in the text and are left out",
        "what they hid cannot be seen", "compare these words with the original",
        "common practice, no published source",
        bad="Insert wreck‹\x01› 46-00.00S 122-00.00W",
        good="Insert wreck 46-00.00S 122-00.00W",
    ),
    Entry(
        "text-cut", "error", "no notice begins in {length} characters, and the text is cut here",
        "what belongs together may have been read as two, and the second without its head",
        "part the text where its notices begin, and read the parts", "none",
        bad=(
            "Insert wreck, least depth 4m 46-00.00S 122-00.00W\n"
            "‹Insert› wreck, least depth 5m 46-01.00S 122-00.00W"
        ),
        good="Insert wreck, least depth 4m 46-00.00S 122-00.00W",
    ),
    Entry(
        "text-degree-sign-lost", "warning",
        "`{sign}` stands where `{written}` has its degree sign, and is read so in all the text",
        "a sign that a copy has lost may stand for a lost figure too",
        "compare every position with the original notice",
        "common practice, no published source",
        bad="Insert wreck ‹46?00.00'S› 122?00.00'W\nInsert rock 46?00.50'S 122?00.00'W",
        good="Insert wreck 46°00.00'S 122°00.00'W\nInsert rock 46°00.50'S 122°00.00'W",
    ),
    Entry(
        "text-garbled", "error", "garbled: `{written}`",
        "an action may stand here that nobody can read", "read these words in the original notice",
        "common practice, no published source",
        bad="‹Insert w#eck, l&ast d~pth 46-00.00S 122-00.00W›",
        good="Insert wreck, least depth 4m 46-00.00S 122-00.00W",
    ),
    Entry(
        "text-in-columns", "info", "the page stands in two columns: the left one is read first",
        "a line of the page holds a line of each column; read across, both would be mixed",
        "see in the original notice which column goes on with which",
        "common practice, no published source",
        bad="".join(
            f"{left:<40}{right}\n"
            for left, right in (
                ("12/26 Quill Sound.", "‹1›3/26 Port Ellory."),
                ("Chart 802 [3/26] WGS84", "Chart 803 [4/26] WGS84"),
                ("Insert rock", "Insert dolphin"),
                ("   46-00.00S 122-00.00W", "   46-10.00S 122-10.00W"),
                ("Delete stump", "Delete crane"),
                ("   46-00.20S 122-00.10W", "   46-10.20S 122-10.10W"),
            )
        ),
        good="12/26 Quill Sound.\nChart 802 [3/26] WGS84\nInsert rock 46-00.00S 122-00.00W",
    ),
    Entry(
        "text-in-parts", "warning",
        "the text is longer than {most} characters and is read in parts",
        "numbers, lists and charts are not compared; a notice that goes on elsewhere stands twice",
        "read each edition by itself", "none",
        bad=(
            "‹›12/26 Quill Sound.\n"
            "Chart 802 [3/26] WGS84, depths in metres\n"
            "Insert wreck, least depth 4m 46-00.00S 122-00.00W"
        ),
        good="Insert wreck, least depth 4m 46-00.00S 122-00.00W",
    ),
    Entry(
        "text-languages-differ", "warning",
        "`{written}` does not say again in another language what stands above",
        "one of both says something else of the chart", "see in the original notice which holds",
        "common practice, no published source",
        bad=(
            "Insert  wreck  46-00.00S 122-00.00W\nAlvend  vrakka\n"
            "Delete  rock   46-00.20S 122-00.00W\nTorvend  klettur\n"
            "Insert  stump  46-00.30S 122-00.00W\n‹Alvend  stubba 7›\n"
            "Delete  pile   46-00.50S 122-00.00W\nTorvend  pal"
        ),
        good="Insert wreck 46-00.00S 122-00.00W",
    ),
    Entry(
        "text-look-alike", "info", "`{written}` is no word and is read as `{read}`",
        "characters that look alike are exchanged when a page is read by machine",
        "compare the word, and the figures near it, with the original",
        "common practice, no published source",
        bad="‹lnsert› wreck 46-00.00S 122-00.00W",
        good="Insert wreck 46-00.00S 122-00.00W",
    ),
    Entry(
        "text-not-utf8", "warning",
        "the file is not {encoding}: characters are lost, the first at byte {offset}",
        "a lost character may have been a degree sign or a figure",
        "save the file as UTF-8 and read it again", "common practice, no published source",
        bad='Insert special buoy, "L‹\\xe9›one" 46-00.00S 122-00.00W',
        good='Insert special buoy, "Léone" 46-00.00S 122-00.00W',
    ),
    Entry(
        "text-other-encoding", "info", "the file was read as {encoding}",
        "a wrong guess of the encoding damages symbols", "look at the degree signs",
        "common practice, no published source",
        bad=(
            "‹›Content-Type: text/plain; charset=windows-1252\n"
            "\n"
            "12/26 Quill Sound.\n"
            "Chart 802 [3/26] WGS84, depths in metres\n"
            'Insert special buoy, "L\\xe9one" 46-00.00S 122-00.00W'
        ),
        good=(
            "Content-Type: text/plain; charset=utf-8\n"
            "\n"
            "12/26 Quill Sound.\n"
            "Chart 802 [3/26] WGS84, depths in metres\n"
            'Insert special buoy, "Léone" 46-00.00S 122-00.00W'
        ),
    ),
    Entry(
        "text-said-again", "info", "left out as said again in another language: `{written}`",
        "words that stand there and say something else would be lost",
        "compare these words with those above them",
        "common practice, no published source",
        bad=(
            "Insert  wreck  46-00.00S 122-00.00W\nAlvend  vrakka\n"
            "        rock   46-00.20S 122-00.00W\n        ‹klettur›\n"
            "Insert  stump  46-00.30S 122-00.00W\nAlvend  stubba\n"
            "Delete  pile   46-00.50S 122-00.00W\nTorvend  pal"
        ),
        good="Insert wreck 46-00.00S 122-00.00W",
    ),
    Entry(
        "text-second-language", "info",
        "commands are said again in another language, and left out there: `{written}`",
        "words that stand there and say something else would be lost",
        "compare the words of the other language with those above them",
        "common practice, no published source",
        bad=(
            "Insert  wreck  46-00.00S 122-00.00W\n‹Alvend  vrakka›\n"
            "Insert  stump  46-00.20S 122-00.00W\nAlvend  stubba\n"
            "Delete  rock   46-00.50S 122-00.00W\nTorvend  klettur"
        ),
        good="Insert wreck 46-00.00S 122-00.00W",
    ),
    Entry(
        "text-surrogate", "warning", "half a character stands alone and was read as U+FFFD",
        "a symbol is lost", "copy the text again from its source",
        "The Unicode Standard, section 3.9",
        bad="Insert wreck ‹\ud800› 46-00.00S 122-00.00W",
        good="Insert wreck 46-00.00S 122-00.00W",
    ),
)  # fmt: skip
