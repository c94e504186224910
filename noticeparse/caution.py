"""The sentence that every output says."""

CAUTION = (
    "An aid to a qualified officer only: the issuing authority's notice governs, "
    "and every position must be checked against it before use."
)
