"""Finding codes about the new state of an amendment, and about replacements."""

from noticeparse.faults import Entry

_PRACTICE = "common practice, no published source"

ENTRIES = (
    Entry(
        "change-colour-unclear",
        "warning",
        "`{written}` may be the paint of the mark or the colour of its light",
        "it is read as the paint",
        "compare with the original notice",
        _PRACTICE,
        bad="Amend port-hand light-buoy, Fl.R.10s: colour to ‹red› 46-00.00S 122-00.00W",
        good="Amend port-hand light-buoy, Fl.R.10s: period to 5s 46-00.00S 122-00.00W",
    ),
    Entry(
        "change-new-assumed",
        "warning",
        "`{written}` stands without `to`: taken as the new value",
        "it may be the value as it was before",
        "compare with the chart",
        _PRACTICE,
        bad="Amend light Fl.5s: range ‹9M› 46-00.00S 122-00.00W",
        good="Amend light Fl.5s: range to 9M 46-00.00S 122-00.00W",
    ),
    Entry(
        "change-of-two",
        "error",
        "light and fog signal both have a {property}: `{written}` is for one of them",
        "the other would be changed",
        "ask the issuer which is meant",
        _PRACTICE,
        bad="Amend light, Fl.R.10s, Horn(2)30s: period to ‹60s› 46-00.00S 122-00.00W",
        good="Amend fog signal, Horn(2)30s: period to 60s 46-00.00S 122-00.00W",
    ),
    Entry(
        "change-old-differs",
        "warning",
        "the old value `{written}` is not the one of the feature",
        "one of the two is a slip, or another feature is meant",
        "compare with the chart",
        _PRACTICE,
        bad="Amend light Fl.R.5s 9M, range from ‹8M› to 7M 46-00.00S 122-00.00W",
        good="Amend light Fl.R.5s 9M, range from 9M to 7M 46-00.00S 122-00.00W",
    ),
    Entry(
        "change-old-unread",
        "warning",
        "the old value `{written}` cannot be read",
        "it would show whether the right feature is meant",
        "compare with the chart",
        _PRACTICE,
        bad="Amend light Fl.5s: range from ‹zz› to 9M 46-00.00S 122-00.00W",
        good="Amend light Fl.5s: range from 8M to 9M 46-00.00S 122-00.00W",
    ),
    Entry(
        "change-planned",
        "error",
        "`{written}` is planned: it is not so yet",
        "a chart corrected now would show what is not there",
        "wait for the notice that says it is done",
        _PRACTICE,
        bad=("Wreck 46-00.00S 122-00.00W\n  Present depth 8.2m\n  Proposed depth ‹9.1m›"),
        good="Wreck 46-00.00S 122-00.00W\n  Former depth 8.2m\n  New depth 9.1m",
    ),
    Entry(
        "change-property-twice",
        "error",
        "`{written}` changes more than once: {property}",
        "which of the new values is to hold is not said",
        "read the item in the original notice and make two of it",
        _PRACTICE,
        bad="Amend ‹depth 8.6m to 8.1m, 9.1m to 8.8m› 46-00.00S 122-00.00W",
        good="Amend depth 8.6m to 8.1m 46-00.00S 122-00.00W",
    ),
    Entry(
        "change-summed-up",
        "info",
        "`{written}` is taken to sum up what the commands below it do",
        "a sentence above the commands may tell of one change more",
        "see that the commands below do all that it tells",
        _PRACTICE,
        bad="12/26 Quill Sound.\nChart 802 [3/26] WGS84\n‹The buoys have been laid anew.›\n"
        "Delete special buoy 46-00.00S 122-00.00W",
        good="12/26 Quill Sound.\nChart 802 [3/26] WGS84\nThe rock has been removed.\n"
        "Delete rock 46-00.00S 122-00.00W",
    ),
    Entry(
        "change-unit-missing",
        "warning",
        "`{written}` has no unit; only one is possible here",
        "a lost unit can hide a lost figure",
        "compare with the original notice",
        _PRACTICE,
        bad="Amend light Fl.5s: range to ‹11› 46-00.00S 122-00.00W",
        good="Amend light Fl.5s: range to 11M 46-00.00S 122-00.00W",
    ),
    Entry(
        "change-unread",
        "error",
        "`{written}` names no change that can be read",
        "the chart would keep what the notice alters",
        "read the item in the original notice",
        _PRACTICE,
        bad="Amend ‹light, Fl.R.3s› 46-00.00S 122-00.00W",
        good="Amend light, Fl.R.3s to Fl.R.5s 46-00.00S 122-00.00W",
    ),
    Entry(
        "change-value-unread",
        "error",
        "`{written}` cannot be read as the new {property}",
        "the chart would keep what the notice alters",
        "read the item in the original notice",
        _PRACTICE,
        bad="Amend light Fl.5s: range to ‹11m› 46-00.00S 122-00.00W",
        good="Amend light Fl.5s: range to 11M 46-00.00S 122-00.00W",
    ),
    Entry(
        "change-without-place",
        "error",
        "`{written}` tells of a change, but not where",
        "an action may be lost: what was removed stays on the chart",
        "read in the original notice which thing is meant",
        _PRACTICE,
        bad=(
            "A wreck has been found in 46-00.00S 122-00.00W. ‹The special buoy nearby has been "
            "removed.›"
        ),
        good=(
            "A wreck has been found in 46-00.00S 122-00.00W. The special buoy in 46-00.50S "
            "122-00.00W has been removed."
        ),
    ),
    Entry(
        "swap-not-divided",
        "error",
        "`{written}`: what goes and what comes cannot be told apart",
        "the wrong one of two features would be put on the chart",
        "read the item in the original notice",
        _PRACTICE,
        bad=(
            'Replace ‹legend "Foul" by "Works" and legend "Cable" by "Pipe"› in 46-00.00S '
            "122-00.00W"
        ),
        good='Replace legend "Foul" by legend "Works" in 46-00.00S 122-00.00W',
    ),
)
