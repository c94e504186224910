"""The options of `parse` for many files at once, and what goes together with them."""

from __future__ import annotations

import os
from collections.abc import Callable, Sequence
from typing import Any, TypeVar

import click

from noticeparse.cli.running import run
from noticeparse.console.options import is_pattern
from noticeparse.console.outputs import Target
from noticeparse.writers import Wishes

_NAMES = ("into", "jobs", "is_resumed", "shard", "cluster")
_MOST_JOBS = 256

Command = TypeVar("Command", bound=Callable[..., Any])


def _shard(
    ctx: click.Context, parameter: click.Parameter, words: str | None
) -> tuple[int, int] | None:
    if words is None:
        return None
    number, _, count = words.partition("/")
    if not (number.isdecimal() and count.isdecimal() and 1 <= int(number) <= int(count)):
        raise click.BadParameter("write 1/4 to 4/4, for the parts of four", ctx, parameter)
    return int(number), int(count)


def options(command: Command) -> Command:
    """Give a command the options of an archive."""
    for option in (
        click.option(
            "--cluster",
            metavar="ADDRESS",
            help="Read on a dask.distributed cluster; local: on --jobs workers of this machine.",
        ),
        click.option(
            "--shard",
            metavar="I/N",
            callback=_shard,
            help="Read only the I-th of N parts of the inputs, for a run of N under a scheduler.",
        ),
        click.option(
            "--resume",
            "is_resumed",
            is_flag=True,
            help="Leave out what the manifest in --into says is done, by the bytes of the input.",
        ),
        click.option(
            "--into",
            metavar="DIR",
            type=click.Path(file_okay=False),
            help="Write a file for each input, and manifest.jsonl, into the directory DIR.",
        ),
        click.option(
            "--jobs",
            metavar="N",
            type=click.IntRange(1, _MOST_JOBS),
            help="Read N inputs at a time, each in a process of its own; the output is the same.",
        ),
    ):
        command = option(command)
    return command


def take(settings: dict[str, Any]) -> dict[str, Any]:
    """Take the options of an archive out of those of a command."""
    return {name: settings.pop(name) for name in _NAMES}


def is_archive(files: Sequence[str], given: dict[str, Any]) -> bool:
    """Whether many files are meant: an option says so, or the name of a directory and the like."""
    return any(given.values()) or any(
        os.path.isdir(one) or one.lower().endswith(".zip") or is_pattern(one) for one in files
    )


def parse(
    files: Sequence[str],
    given: dict[str, Any],
    *,
    outs: Sequence[str],
    targets: Sequence[Target],
    wishes: Wishes,
    settings: dict[str, Any],
) -> None:
    """Run `parse` over an archive."""
    if not files or "-" in files:
        raise click.UsageError("name the files or directories; standard input goes by itself")
    if settings["chart_list"]:
        raise click.UsageError(
            "--charts goes with files named one by one, which are applied in that order"
        )
    if given["is_resumed"] and not given["into"]:
        raise click.UsageError("--resume goes with --into only, where the manifest is")
    if given["into"] and outs:
        raise click.UsageError("--into and --out do not go together")
    from noticeparse.archive.run import Plan, parse_archive
    from noticeparse.archive.work import Options

    forms = tuple(target.form for target in targets)
    options = Options(forms, wishes, settings["as_of"], settings["region"])
    plan = Plan(targets=targets, **given)
    run(parse_archive, files, options, plan)
