"""Finding codes about the years and marks of the numbers of notices."""

from noticeparse.faults import Entry

_COMMON = "common practice, no published source"

ENTRIES = (
    Entry(
        "notice-mark-unclear",
        "warning",
        "`{written}` may tell that the notice is temporary or preliminary",
        "it is read as permanent, and would be charted in ink",
        "see in the original notice whether its number is marked (T) or (P)",
        _COMMON,
        bad=(
            "2417/26 ‹T QUILL SOUND - Wreck›\nChart 802 [12/26] WGS84, depths in metres\n"
            "Insert wreck 46-00.00S 122-00.00W"
        ),
        good=(
            "2417(T)/26 QUILL SOUND - Wreck\nChart 802 [12/26] WGS84, depths in metres\n"
            "Insert wreck 46-00.00S 122-00.00W"
        ),
    ),
    Entry(
        "notice-year-doubtful",
        "warning",
        "in `{written}` number and year may stand the other way round",
        "another notice would be looked for, or recorded",
        "see in the original notices how the office writes its numbers",
        _COMMON,
        bad=(
            "Weekly Edition 12/2026\n\n‹26/31› Quill Sound.\n"
            "Chart 802 [12/26] WGS84, depths in metres\n"
            "Insert wreck 46-00.00S 122-00.00W"
        ),
        good=(
            "Weekly Edition 12/2026\n\n506/26 Quill Sound.\n"
            "Chart 802 [31/26] WGS84, depths in metres\n"
            "Insert wreck 46-00.00S 122-00.00W"
        ),
    ),
    Entry(
        "notice-year-in-front",
        "info",
        "`{written}` is read as notice {number} of the year {year}",
        "the figures could be number and year the other way round",
        "see in the original notices how the office writes its numbers",
        _COMMON,
        bad=(
            "‹2026/71› Quill Sound.\nChart 802 [2026/44] WGS84, depths in metres\n"
            "Insert wreck 46-00.00S 122-00.00W"
        ),
        good=(
            "71/2026 Quill Sound.\nChart 802 [44/2026] WGS84, depths in metres\n"
            "Insert wreck 46-00.00S 122-00.00W"
        ),
    ),
    Entry(
        "notice-year-not-written",
        "info",
        "the year of `{written}` is not written; that of the edition: {year}",
        "numbers start anew each year; another year is another notice",
        "check the year of the bulletin",
        _COMMON,
        bad=(
            "‹Notice 506›\n"
            "Chart 802 [3/26] WGS84, depths in metres\n"
            "Insert wreck 46-00.00S 122-00.00W"
        ),
        good=(
            "506/26 Quill Sound.\n"
            "Chart 802 [3/26] WGS84, depths in metres\n"
            "Insert wreck 46-00.00S 122-00.00W"
        ),
    ),
)
