"""Colour for a person at a terminal, and nowhere else."""

from __future__ import annotations

import os
import sys

import click

_COLOURS = {"error": "red", "warning": "yellow", "info": "cyan"}


def is_wanted(*, is_terminal: bool) -> bool:
    """A terminal that shows colour, and nobody who says no (https://no-color.org)."""
    if not is_terminal or os.environ.get("NO_COLOR") or os.environ.get("TERM") == "dumb":
        return False
    # The old console of Windows prints the signs for colour as they are.
    return sys.platform != "win32" or "WT_SESSION" in os.environ


def coloured(words: str, severity: str) -> str:
    """Words in the colour of a severity."""
    return click.style(words, fg=_COLOURS[severity], bold=True)
