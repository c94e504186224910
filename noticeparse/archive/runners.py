"""Has the texts of a run read: in this process, in several, or on a cluster; always in order.

Only so many texts are under way at a time, so that a long run does not fill the memory.  A process
that dies costs the one text that it was reading.
"""

from __future__ import annotations

import multiprocessing
import signal
from collections import deque
from collections.abc import Callable, Iterator
from concurrent.futures import Future, ProcessPoolExecutor
from concurrent.futures.process import BrokenProcessPool
from typing import Generic, NamedTuple, Protocol, TypeVar

from noticeparse.archive.work import Done, Options, work

_AHEAD = 3
"""Texts under way for each process: enough that none waits for the next one to be read."""
_DIED = "the process that read it ended; perhaps it wanted more memory than there is"

Of = TypeVar("Of")


class Order(NamedTuple):
    """A text to be read."""

    data: bytes
    name: str
    options: Options


class Asked(NamedTuple, Generic[Of]):
    """What is to be handed back with a result, and the result, or the text to be read for it."""

    of: Of
    order: Order | Done


Run = Callable[[Iterator[Asked[Of]]], Iterator[tuple[Of, Done]]]


def in_this_process(asked: Iterator[Asked[Of]]) -> Iterator[tuple[Of, Done]]:
    """Read one text after the other."""
    for of, order in asked:
        yield of, order if isinstance(order, Done) else work(*order)


def in_processes(jobs: int, asked: Iterator[Asked[Of]]) -> Iterator[tuple[Of, Done]]:
    """Read as many texts at a time as there are jobs."""
    others = {child.pid for child in multiprocessing.active_children()}
    pool = Pool(jobs)
    is_finished = False
    try:
        yield from in_order(pool, _AHEAD * jobs, asked)
        is_finished = True
    finally:
        pool.close()
        if not is_finished:
            # What is under way is of no use any more.
            for child in multiprocessing.active_children():
                if child.pid not in others:
                    child.terminate()


class Crew(Protocol):
    """What reads texts somewhere else."""

    def send(self, order: Order) -> Future[Done]:
        """Have a text read."""

    def result(self, order: Order, future: Future[Done]) -> Done:
        """What came of it, or why nothing did."""


def in_order(crew: Crew, ahead: int, asked: Iterator[Asked[Of]]) -> Iterator[tuple[Of, Done]]:
    """Send texts to a crew, a few ahead of the one whose result is due."""
    under_way: deque[tuple[Of, Order | Done, Future[Done] | None]] = deque()

    def due() -> tuple[Of, Done]:
        of, order, future = under_way.popleft()
        if isinstance(order, Done) or future is None:
            assert isinstance(order, Done)
            return of, order
        return of, crew.result(order, future)

    for of, order in asked:
        under_way.append((of, order, None if isinstance(order, Done) else crew.send(order)))
        if len(under_way) > ahead:
            yield due()
    while under_way:
        yield due()


class Pool:
    """Processes of this machine."""

    def __init__(self, jobs: int) -> None:
        self._jobs = jobs
        self._pool = self._new(jobs)

    def _new(self, jobs: int) -> ProcessPoolExecutor:
        # The same on every system; a copy of this process would bring along its open files.
        context = multiprocessing.get_context("spawn")
        return ProcessPoolExecutor(jobs, mp_context=context, initializer=_begin)

    def send(self, order: Order) -> Future[Done]:
        """Have a text read by one of the processes."""
        try:
            return self._pool.submit(work, *order)
        except BrokenProcessPool:
            self._pool = self._new(self._jobs)
            return self._pool.submit(work, *order)

    def result(self, order: Order, future: Future[Done]) -> Done:
        """What came of a text; where a process died, it is read again alone to see whose fault."""
        try:
            return future.result()
        except BrokenProcessPool:
            pass  # all that was under way there is lost, and one of them at fault
        with self._new(1) as alone:
            try:
                return alone.submit(work, *order).result()
            except BrokenProcessPool:
                return Done(refusal=_DIED)

    def close(self) -> None:
        """Begin nothing more."""
        self._pool.shutdown(wait=False, cancel_futures=True)


def _begin() -> None:
    """In a new process: an interruption is for the one that sent it the texts."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)
