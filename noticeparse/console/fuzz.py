"""The command `fuzz`: the mutations of one kind, put to a target; a report; an exit status."""

from __future__ import annotations

import os
import tempfile
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from importlib.util import find_spec
from pathlib import Path
from typing import TYPE_CHECKING

from noticeparse.caution import CAUTION
from noticeparse.console.outlet import Outlet, ReaderGone, say
from noticeparse.console.statuses import NOT_READ, READ, WITH_ERRORS

if TYPE_CHECKING:
    from noticeparse.testing.cases import Kind, Mutation
    from noticeparse.testing.fuzzing import Result
    from noticeparse.testing.reports import Run

_STORAGE = "HYPOTHESIS_STORAGE_DIRECTORY"


def fuzz(
    kind: Kind,
    *,
    target: str | None,
    examples: int,
    seed: int,
    only: Sequence[str],
    is_list: bool,
    report: str | None,
    seconds: float,
) -> int:
    """Put mutated texts of a kind to a target and tell what it answers wrongly."""
    if find_spec("hypothesis") is None:
        say("noticeparse: fuzz needs Hypothesis: pip install 'noticeparse[qa]'")
        return NOT_READ
    with _own_storage():
        from noticeparse.testing.mutations import mutations_of
        from noticeparse.testing.reports import Run
        from noticeparse.testing.targets import NoAnswer, open_target

        known = mutations_of(kind)
        names = {mutation.name for mutation in known}
        if unknown := [name for name in only if name not in names]:
            say(f"noticeparse: no mutation of {kind} is named `{unknown[0]}`; --list shows them")
            return NOT_READ
        chosen = [mutation for mutation in known if not only or mutation.name in only]
        if is_list:
            return _list(chosen)
        try:
            opened = open_target(kind, target, seconds)
        except NoAnswer as error:
            say(f"noticeparse: the target does not answer: {error}")
            return NOT_READ
        try:
            return _run(Run(kind, opened, examples, seed), chosen, report)
        finally:
            opened.close()


def _list(mutations: Sequence[Mutation]) -> int:
    lines = [f"{one.name:34}{one.outcome:12}{one.what}\n" for one in mutations]
    Outlet().write("".join(lines))
    return READ


def _run(run: Run, mutations: Sequence[Mutation], report: str | None) -> int:
    """Raises NotWritable where the report cannot be written, if possible before the work."""
    from noticeparse.testing.reports import WRITERS

    if report is None:
        results = _results(run, mutations)
    else:
        with Outlet(report) as file:
            file.write("")
            results = _results(run, mutations)
            file.write(WRITERS[Path(report).suffix.lower()](run, results))
    failed = sum(result.failure is not None for result in results)
    asked = sum(result.examples for result in results)
    say(f"{run.target.name}: {len(results)} mutations, {asked} texts; {failed} failed")
    return WITH_ERRORS if failed else READ


def _results(run: Run, mutations: Sequence[Mutation]) -> list[Result]:
    """What came of each mutation, told as it comes."""
    from noticeparse.testing.fuzzing import fuzz as put
    from noticeparse.testing.reports import headline

    outlet = Outlet()
    results: list[Result] = []
    is_heard = True
    for mutation in mutations:
        result = put(mutation, run.target, examples=run.examples, seed_number=run.seed)
        results.append(result)
        is_heard = is_heard and _tell(outlet, f"{headline(result)}\n")
    if is_heard:
        _tell(outlet, "".join(_failures(run, results)) + f"\n{CAUTION}\n")
    return results


def _failures(run: Run, results: Sequence[Result]) -> Iterator[str]:
    from noticeparse.testing.reports import details

    for result in results:
        if result.failure is not None:
            yield "\n" + "".join(f"{line}\n" for line in details(run, result, result.failure))


def _tell(outlet: Outlet, text: str) -> bool:
    """Write to a reader that may have gone; the report is written all the same."""
    try:
        outlet.write(text)
    except ReaderGone:
        return False
    return True


@contextmanager
def _own_storage() -> Iterator[None]:
    """Keeps Hypothesis from leaving a folder where the command runs."""
    if _STORAGE in os.environ:
        yield
        return
    with tempfile.TemporaryDirectory() as folder:
        os.environ[_STORAGE] = folder
        try:
            yield
        finally:
            del os.environ[_STORAGE]
