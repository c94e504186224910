"""Puts the cases of a mutation to a target, and shrinks what fails.

The same seed, examples and versions give the same cases.
"""

from __future__ import annotations

from dataclasses import dataclass

from hypothesis import HealthCheck, Phase, Verbosity, given, seed, settings
from hypothesis.errors import Flaky

from noticeparse.testing.cases import Case, Mutation
from noticeparse.testing.judging import judge
from noticeparse.testing.targets import NoAnswer, Target


@dataclass(frozen=True, slots=True)
class Failure:
    """A case that a target answers wrongly: the smallest one found, what is wrong, the answer."""

    case: Case
    wrong: str
    answer: str | None


@dataclass(frozen=True, slots=True)
class Result:
    """What came of one mutation: how many texts were tried, and the smallest failure or None."""

    mutation: Mutation
    examples: int
    failure: Failure | None


class _Wrong(Exception):
    """Tells Hypothesis that an example fails."""


def fuzz(mutation: Mutation, target: Target, *, examples: int, seed_number: int) -> Result:
    """Put so many cases to a target; the first that fails is made as small as can be."""
    asked = 0
    smallest: Failure | None = None

    @seed(seed_number)
    @settings(
        max_examples=examples, database=None, deadline=None, derandomize=False,
        phases=(Phase.generate, Phase.shrink), suppress_health_check=list(HealthCheck),
        report_multiple_bugs=False, print_blob=False, verbosity=Verbosity.quiet,
    )  # fmt: skip
    @given(mutation.cases())
    def put(case: Case) -> None:
        nonlocal asked, smallest
        asked += smallest is None
        failure = _failure(case, target)
        if failure is not None:
            smallest = failure
            raise _Wrong

    try:
        put()
    except (_Wrong, Flaky):
        # A target that answers the same text in two ways has failed as well.
        return Result(mutation, asked, smallest)
    return Result(mutation, asked, None)


def _failure(case: Case, target: Target) -> Failure | None:
    try:
        answer = target.ask(case.text)
    except NoAnswer as error:
        return Failure(case, f"no answer: {error}", None)
    wrong = judge(case, answer)
    return None if wrong is None else Failure(case, wrong, answer.rstrip("\n"))
