"""The processes that read, and who waits for them.

All reading is done there, also that of a single value: one way, one limit of time.  Large bodies
have one worker less than there are, so that small ones never wait for them.  A worker that takes
too long, or whose large body nobody waits for any more, is ended and made anew.
"""

from __future__ import annotations

from contextlib import AsyncExitStack

from anyio import (
    BrokenWorkerProcess,
    CancelScope,
    CapacityLimiter,
    create_task_group,
    move_on_after,
    to_process,
)
from starlette.types import Receive

from noticeparse.web import work
from noticeparse.web.problems import Problem, try_again
from noticeparse.web.settings import LARGE, ServiceSettings


class Workers:
    """The worker processes of one service."""

    def __init__(self, settings: ServiceSettings) -> None:
        self._settings = settings
        self._processes = CapacityLimiter(settings.workers)
        self._free = CapacityLimiter(settings.workers)
        self._free_for_large = CapacityLimiter(max(1, settings.workers - 1))

    async def start(self) -> None:
        """Make all workers ready, at once."""
        async with create_task_group() as group:
            for _ in range(self._settings.workers):
                group.start_soon(self._warm_up)

    async def _warm_up(self) -> None:
        await to_process.run_sync(work.warm_up, cancellable=True, limiter=self._processes)

    async def perform(self, job: work.Job, receive: Receive) -> work.Answer | Problem | None:
        """The answer to a job; None where the client is gone before it is there.

        `receive` is that of the request, whose body has been read.
        """
        found: work.Answer | Problem | None = None
        async with create_task_group() as group:
            group.start_soon(_cancel_when_gone, receive, group.cancel_scope)
            found = await self._in_turn(job)
            group.cancel_scope.cancel()
        return found

    async def _in_turn(self, job: work.Job) -> work.Answer | Problem:
        is_large = len(job.body) > LARGE
        lanes = [self._free_for_large, self._free] if is_large else [self._free]
        async with AsyncExitStack() as stack:
            with move_on_after(self._settings.wait_seconds) as waiting:
                for lane in lanes:
                    await stack.enter_async_context(lane)
            if waiting.cancelled_caught:
                return try_again("busy", "no worker is free; try again").problem
            # A shield never swallows the cancelling; it is let through behind it.
            with CancelScope(shield=not is_large):
                found = await self._run(job)
        return found

    async def _run(self, job: work.Job) -> work.Answer | Problem:
        seconds = self._settings.read_seconds
        try:
            with move_on_after(seconds):
                return await to_process.run_sync(
                    work.perform_in_worker, job, cancellable=True, limiter=self._processes
                )
        except BrokenWorkerProcess:
            words = "it may have been short of memory; send the notices in parts"
            return Problem("reader-lost", words)
        words = f"more than {seconds:g} seconds; send the notices in parts"
        return Problem("took-too-long", words)


async def _cancel_when_gone(receive: Receive, scope: CancelScope) -> None:
    while (await receive())["type"] != "http.disconnect":
        pass
    scope.cancel()
