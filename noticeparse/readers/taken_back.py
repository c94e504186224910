"""Words in a cell that take the whole row back: `cancelled by 24/26`, `do not insert`."""

from __future__ import annotations

import re

from noticeparse.rare import Rare, in_small

_TAKES_BACK = Rare(
    r"(?<!until )(?<!unless )(?<!till )\bcancel(?:led|ed)\b(?! [0-9])"
    r"|\b(?:void|superseded|rescinded|revoked|repealed|disregard|ignore|rejected)\b"
    r"|\bdo not (?:insert|delete|plot|apply|chart|use|enter|add|remove)\b"
    r"|\bbe (?:ignored|disregarded|left out|struck out)\b"
    r"|\bnot (?:yet )?(?:to be (?:inserted|deleted|charted|applied|used)|in force|valid)\b"
    r"|\b(?:notice|entry|row|correction|item) (?:is |was |has been )?withdrawn\b",
    "be cancel disregard do force has ignore is rejected repealed rescinded revoked "
    "superseded valid void was withdrawn",
    re.IGNORECASE,
)

_OWN_END = Rare(
    r"\bthis (?:notice|correction|circular) (?:is |was |has been )(?:now |hereby )?{0}\b"
    r"|[.:,;] ?(?:cancell?ed|superseded|rescinded|revoked|void) ?\.? ?$"
    r"|[.:,;-] ?notice (?:is )?(?:now |hereby )?(?:cancell?ed|withdrawn|superseded) ?\.? ?$"
    r"|(?:^|[(\[-]) ?(?:now |since )?{0}(?: by (?:notice |nm |no\.? )?[0-9]{{1,5}}[^()]{{0,20}}"
    r"| on [0-9][^()]{{0,20}})?[\])]?[ .]*$".format(
        r"(?:cancell?ed|withdrawn|superseded|rescinded|revoked|void)"
    ),
    "cancell now rescinded revoked since superseded this void withdrawn",
    re.IGNORECASE,
)


def tells_own_end(words: str) -> bool:
    """Whether the heading of a notice says that it no longer holds: `(cancelled by 613/26)`."""
    return _OWN_END.search(words) is not None


def takes_back(words: str) -> bool:
    """Whether words say that what they stand beside does not hold."""
    return _TAKES_BACK.search(words) is not None


_ENDS = (
    "canc", "canx", "cxl", "cnl", "ends", "annul", "revoke", "void", "rescind", "repeal",
    "supersed", "withdrawn", "replac", "place of",
)  # fmt: skip
"""Of these the terminal of a notice that another one cancels has one in any case."""


def tells_end(words: str) -> bool:
    """Whether words may tell the end of any notice; most need not be read for one."""
    plain = in_small(words)
    return any(word in plain for word in _ENDS)
