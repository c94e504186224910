"""Finding codes about verbs that an item lacks beside others that state theirs."""

from noticeparse.faults import Entry

ENTRIES = (
    Entry(
        "verb-left-out", "warning", "`{written}` states no verb, and all beside it state theirs",
        "it may be lost; the verb above is taken, and may not hold",
        "read the verb of the item in the original notice",
        "common practice, no published source",
        bad=(
            "1. Delete wreck 46-00.00S 122-00.00W\n‹2. rock 46-00.50S 122-00.00W›\n"
            "3. Delete stump 46-00.10S 122-00.20W"
        ),
        good=(
            "1. Delete wreck 46-00.00S 122-00.00W\n2. Delete rock 46-00.50S 122-00.00W\n"
            "3. Delete stump 46-00.10S 122-00.20W"
        ),
    ),
)  # fmt: skip
