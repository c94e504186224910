"""Lets the garbage collector look less often while a text is read.

Reading makes very many small records and frees hardly any before its end, so that the collector,
as it is set at the start of a program, spends half of the time looking through records that are
all still wanted.  Nothing is switched off, and the program's own setting comes back at the end.
"""

from __future__ import annotations

import gc
import threading
from collections.abc import Iterator
from contextlib import contextmanager

PATIENCE = 100_000
"""New objects between two looks while a text is read; Python's own figure is 700 or 2,000."""

_lock = threading.Lock()
_readers = 0
_before = (0, 0, 0)


@contextmanager
def patient_collector() -> Iterator[None]:
    """Raise the first threshold of the collector until the last of all readers has left.

    A collector that the program has switched off, or made more patient than this, is left alone.
    """
    global _readers, _before
    with _lock:
        _readers += 1
        if _readers == 1:
            _before = gc.get_threshold()
            if 0 < _before[0] < PATIENCE:
                gc.set_threshold(PATIENCE, *_before[1:])
    try:
        yield
    finally:
        with _lock:
            _readers -= 1
            if _readers == 0:
                gc.set_threshold(*_before)
