"""The beginning and the end of a process that runs one command: what makes a short run shorter."""

from __future__ import annotations

import gc
import os
import sys
from typing import NoReturn

from noticeparse.collector import PATIENCE
from noticeparse.console.outlet import silence


def begin() -> None:
    """To be called before anything large is imported."""
    gc.set_threshold(PATIENCE, *gc.get_threshold()[1:])
    # To look for plugins that watch records takes longer than to read a notice.
    os.environ.setdefault("PYDANTIC_DISABLE_PLUGINS", "__all__")


def end() -> None:
    """Nothing may be written afterwards."""
    for stream in (sys.stdout, sys.stderr):
        try:
            if stream is not None:
                stream.flush()
        except OSError:
            silence(stream)
    # Spares the collector a last look through everything: all of it goes with the process.
    gc.freeze()


def leave(status: int) -> NoReturn:
    """End at once, where work was cut off: an orderly end may wait for it for ever.

    Where a process ends while a text is on its way to it, the thread that sends it waits on.
    """
    os._exit(status)
