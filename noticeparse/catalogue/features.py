"""Finding codes about features, and about the changes and replacements of features."""

from noticeparse.faults import Entry

_PRACTICE = "common practice, no published source"

ENTRIES = (
    Entry(
        "change-new-assumed", "warning", "`{written}` stands without `to`: taken as the new value",
        "it may be the value as it was before", "compare with the chart", _PRACTICE,
    ),
    Entry(
        "change-old-differs", "warning", "the old value `{written}` is not the one of the feature",
        "one of the two is a slip, or another feature is meant", "compare with the chart",
        _PRACTICE,
    ),
    Entry(
        "change-unit-missing", "warning", "`{written}` has no unit; only one is possible here",
        "a lost unit can hide a lost figure", "compare with the original notice", _PRACTICE,
    ),
    Entry(
        "change-unread", "error", "`{written}` names no change that can be read",
        "the chart would keep what the notice alters", "read the item in the original notice",
        _PRACTICE,
    ),
    Entry(
        "change-value-unread", "error", "`{written}` cannot be read as the new {property}",
        "the chart would keep what the notice alters", "read the item in the original notice",
        _PRACTICE,
    ),
    Entry(
        "feature-category-conflict", "error", "`{written}` does not go with {other}",
        "a mark of the wrong category sends a ship to the wrong side", "ask the issuer",
        "IALA maritime buoyage system (from memory)",
    ),
    Entry(
        "feature-class-unknown", "info", "what category of mark `{written}` is does not follow",
        "colour and shape alone mean one thing in region A and another in region B",
        "take the category from the list of marks or the chart",
        "IALA maritime buoyage system (from memory)",
    ),
    Entry(
        "feature-clearances-several", "info", "`{written}` stays in the text of the feature",
        "the record holds one clearance, the first that is stated",
        "take the other from the text", _PRACTICE,
    ),
    Entry(
        "feature-dries-with-depth", "warning", "`{written}` dries and has a depth",
        "above or below chart datum is the difference between a rock and water",
        "compare with the original notice", _PRACTICE,
    ),
    Entry(
        "feature-figure-in-brackets", "info", "the figure ({written}) stays in the text",
        "in brackets it may be a height, a number of things or a year",
        "read the item in the original notice", _PRACTICE,
    ),
    Entry(
        "feature-figure-unclear", "error", "the figure `{written}` can be a depth or a number",
        "a depth without its word or unit cannot be told from a number",
        "read the item in the original notice", _PRACTICE,
    ),
    Entry(
        "feature-figure-unread", "warning", "the figure `{written}` is not understood",
        "a figure of a notice is seldom without weight", "read the item in the original notice",
        _PRACTICE,
    ),
    Entry(
        "feature-legends-several", "error", "`{written}` gives more than one wording",
        "which of them is to be written on the chart is not said",
        "read the item in the original notice", _PRACTICE,
    ),
    Entry(
        "feature-negated", "warning", "`{written}`: the phrase may speak of what is not there",
        "a feature that was, or is not, must not be put on the chart",
        "read the item in the original notice", _PRACTICE,
    ),
    Entry(
        "feature-quote-open", "warning", "the quotation `{written}` is not closed",
        "words behind it may belong to the name or legend", "compare with the original notice",
        _PRACTICE,
    ),
    Entry(
        "feature-support-not-stated", "info", "support of the light not stated: `{written}`",
        "a light alone says nothing of buoy, beacon or structure",
        "look at the chart for what carries the light", "S-57: LIGHTS is an object of its own",
    ),
    Entry(
        "feature-unknown", "warning", "`{written}` names no kind of feature that is known",
        "what goes on the chart is not understood", "read the item in the original notice",
        _PRACTICE,
    ),
    Entry(
        "feature-virtual-with-mark", "warning", "`{written}` is said of a mark that is there",
        "a virtual aid has no buoy beneath it", "ask whether both are meant",
        "IHO S-101 feature catalogue, virtual AIS aid to navigation",
    ),
    Entry(
        "feature-words-behind-kind", "warning", "`{written}` behind the feature is not understood",
        "it may be the real noun: a `ferry terminal` is no ferry",
        "read the item in the original notice", _PRACTICE,
    ),
    Entry(
        "swap-not-divided", "error", "`{written}`: what goes and what comes cannot be told apart",
        "the wrong one of two features would be put on the chart",
        "read the item in the original notice", _PRACTICE,
    ),
    Entry(
        "swap-order-unclear", "error", "`{written}`: which of the two is new does not follow",
        "the wrong one of two features would be put on the chart",
        "read the item in the original notice", _PRACTICE,
    ),
)
