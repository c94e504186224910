"""Commands that tell of the program itself: schema, explain."""

from __future__ import annotations

from collections.abc import Sequence

import click

from noticeparse.cli.running import run
from noticeparse.console.help_page import EXPLAIN_STATUSES, examples


@click.command(epilog=examples("noticeparse schema > bulletin.schema.json", statuses=None))
@click.option(
    "--format",
    "form",
    type=click.Choice(["json", "jsonl"]),
    default="json",
    show_default=True,
    help="json: of a bulletin. jsonl: of a line of that format.",
)
def schema(form: str) -> None:
    """Write the JSON Schema of the output of parse.

    It describes (draft 2020-12) what parse writes for one input in the format json, or a line of
    the format jsonl.
    """
    from noticeparse.console import commands

    run(commands.schema, form=form)


@click.command(
    epilog=examples(
        "noticeparse explain position-minutes-out-of-range",
        "noticeparse explain --all",
        statuses=EXPLAIN_STATUSES,
    )
)
@click.argument("codes", nargs=-1, metavar="[CODE]...")
@click.option("--all", "is_all", is_flag=True, help="Show every code, in alphabetical order.")
def explain(codes: Sequence[str], is_all: bool) -> None:
    """Show what the CODE of a finding means.

    Also what to do about it, and where the rule comes from.
    """
    if bool(codes) == is_all:
        raise click.UsageError("give codes, or --all")
    from noticeparse.console import commands

    run(commands.explain, codes, is_all=is_all)
