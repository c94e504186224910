"""A case to put to a reader, and the mutation that it comes from."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, Literal, NamedTuple

from hypothesis import strategies as st

from noticeparse.testing.written import Written

Kind = Literal["positions", "lights", "depths", "notices"]
"""What is read: one position, one light, one depth, or a whole text of notices."""

Outcome = Literal["same", "as-written", "finding", "refused"]
"""What must become of a text.

- `same`: the record of the text before it was mutated; the mutation changes no meaning.
- `as-written`: the record of the text as it now stands, and never that of the text before.
- `finding`: it is told.  One value by itself is refused; in a notice a finding of severity warning
  or error says so, and what is read all the same is what stands in the text.
- `refused`: nothing is read.  In a notice an error finding says so, and no action is usable.
"""


class Refused(NamedTuple):
    """The answer of a reader that reads nothing, with the code of its finding where it has one."""

    code: str | None


@dataclass(frozen=True, slots=True)
class Case:
    """A text, what must become of it, and what it states.

    `truth` is what must be read where anything is read.  `codes` are the codes of this project's
    catalogue of which one must be told, none where any will do.
    """

    kind: Kind
    mutation: str
    outcome: Outcome
    truth: Written
    codes: frozenset[str] = frozenset()

    @property
    def text(self) -> str:
        """The text to be read."""
        return self.truth.text


@dataclass(frozen=True, slots=True)
class Mutation:
    """A named way to change a clean text, and the outcome that every text so changed must have.

    `what` says in words what it does.  `drawn` draws from the clean text with Hypothesis' `draw`
    and gives the mutated text with its truth.
    """

    name: str
    kind: Kind
    outcome: Outcome
    what: str
    clean: Callable[[], st.SearchStrategy[Any]]
    drawn: Callable[[st.DrawFn, Any], Written]
    codes: frozenset[str] = frozenset()

    def cases(self) -> st.SearchStrategy[Case]:
        """A strategy for the cases of this mutation."""
        return _cases(self)


@st.composite
def _cases(draw: st.DrawFn, mutation: Mutation) -> Case:
    written = mutation.drawn(draw, draw(mutation.clean()))
    return Case(mutation.kind, mutation.name, mutation.outcome, written, mutation.codes)
