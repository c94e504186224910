"""Runs the function behind a command, which is imported only now."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import click


def run(command: Callable[..., int], *arguments: Any, **settings: Any) -> None:
    """End the command with the exit status of `command`."""
    from noticeparse.console.commands import run as run_to_status

    click.get_current_context().exit(run_to_status(lambda: command(*arguments, **settings)))
