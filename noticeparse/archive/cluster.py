"""Has the texts of a run read by the workers of a `dask.distributed` cluster.

The texts are sent to the workers and their records come back, so that no worker needs the files;
it needs this version of the program.
"""

from __future__ import annotations

import logging
import warnings
from collections.abc import Iterator
from contextlib import ExitStack
from importlib import import_module
from typing import Any

from noticeparse.archive.runners import Asked, Of, Order, in_order
from noticeparse.archive.work import Done, work
from noticeparse.version import VERSION

LOCAL = "local"
_AHEAD = 3
_WAIT_S = 30
_DEFAULT_JOBS = 2


class NoCluster(Exception):
    """There is no cluster to work on, or it went away; its words say why."""


def on_cluster(
    address: str, jobs: int | None, asked: Iterator[Asked[Of]]
) -> Iterator[tuple[Of, Done]]:
    """Read on the cluster at `address`, or with `local` on so many workers of this machine.

    Raises NoCluster.
    """
    distributed = _library()
    _silence()
    with ExitStack() as stack:
        # That large texts are sent is meant so.
        stack.enter_context(warnings.catch_warnings())
        warnings.simplefilter("ignore")
        try:
            if address == LOCAL:
                address = stack.enter_context(
                    distributed.LocalCluster(
                        n_workers=jobs or _DEFAULT_JOBS,
                        threads_per_worker=1,
                        processes=True,
                        dashboard_address=None,
                        silence_logs=logging.CRITICAL,
                    )
                )
            client = stack.enter_context(distributed.Client(address, timeout=_WAIT_S))
            workers = max(1, sum(client.nthreads().values()))
        except (OSError, ValueError, RuntimeError) as error:
            raise NoCluster(f"no cluster answers: {error}") from error
        yield from in_order(_Workers(client), _AHEAD * workers, asked)


class _Workers:
    """The workers of a cluster."""

    def __init__(self, client: Any) -> None:
        self._client = client

    def send(self, order: Order) -> Any:
        """Have a text read by one of them."""
        return self._client.submit(work, *order, pure=False)

    def result(self, order: Order, future: Any) -> Done:
        """What came of a text."""
        distributed = _library()
        try:
            done: Done = future.result()
        except distributed.KilledWorker:
            return Done(refusal="the workers that read it ended, one after the other")
        except (OSError, distributed.CancelledError, TimeoutError) as error:
            raise NoCluster(f"the cluster went away: {error}") from error
        except Exception as error:
            raise NoCluster(f"a worker cannot read: {type(error).__name__}: {error}") from error
        if done.version != VERSION:
            raise NoCluster(f"a worker has version {done.version} of the program, not {VERSION}")
        return done


def _silence() -> None:
    """Let the library tell nobody of lost workers and connections; what matters is raised."""
    # Some of its loggers have levels of their own.
    for name in list(logging.root.manager.loggerDict):
        if name.split(".")[0] in ("distributed", "tornado"):
            logging.getLogger(name).setLevel(logging.CRITICAL + 1)


def _library() -> Any:
    try:
        return import_module("distributed")
    except ImportError:
        words = "needs the extra `cluster`: pip install 'noticeparse[cluster]'"
        raise NoCluster(words) from None
