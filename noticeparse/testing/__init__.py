"""The QA kit: texts with their truth, mutations with their outcome, and what judges an answer.

For whoever tests a reader of notices, this one or another.  `positions`, `lights`, `depths`,
`notices` and `bulletins` are Hypothesis strategies; each draws a text together with the exact
values that it states.  `MUTATIONS` damages such texts in named ways, and says of each what must
become of it.  `judge` holds the answer of a reader against that.  `noticeparse fuzz` runs it all.

The strategies need Hypothesis (`pip install 'noticeparse[qa]'`), and ImportError says so where it
is not there; `noticeparse.testing.generator` works without.  All texts are of the invented
Tavrenne Islands or of no place at all, and never for navigation.
"""

from __future__ import annotations

from importlib import import_module
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from noticeparse.testing.cases import Case, Kind, Mutation, Outcome, Refused
    from noticeparse.testing.judging import View, judge, read_reply
    from noticeparse.testing.mutations import MUTATIONS, mutations_of
    from noticeparse.testing.strategies import bulletins, depths, lights, notices, positions
    from noticeparse.testing.written import (
        WrittenBulletin,
        WrittenDepth,
        WrittenLight,
        WrittenPosition,
    )

_MODULES = {
    "cases": ("Case", "Kind", "Mutation", "Outcome", "Refused"),
    "judging": ("View", "judge", "read_reply"),
    "mutations": ("MUTATIONS", "mutations_of"),
    "strategies": ("bulletins", "depths", "lights", "notices", "positions"),
    "written": ("WrittenBulletin", "WrittenDepth", "WrittenLight", "WrittenPosition"),
}
_MODULE_OF = {name: module for module, names in _MODULES.items() for name in names}

__all__ = [
    "MUTATIONS",
    "Case",
    "Kind",
    "Mutation",
    "Outcome",
    "Refused",
    "View",
    "WrittenBulletin",
    "WrittenDepth",
    "WrittenLight",
    "WrittenPosition",
    "bulletins",
    "depths",
    "judge",
    "lights",
    "mutations_of",
    "notices",
    "positions",
    "read_reply",
]


def __getattr__(name: str) -> Any:
    """Import on first use, so that the generator works without Hypothesis."""
    if name not in _MODULE_OF:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    try:
        module = import_module(f"{__name__}.{_MODULE_OF[name]}")
    except ModuleNotFoundError as error:
        if error.name != "hypothesis":
            raise
        words = "the QA kit needs Hypothesis: pip install 'noticeparse[qa]'"
        raise ImportError(words, name="hypothesis") from error
    return getattr(module, name)
