"""Commands for those who test readers of notices: fuzz."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import click

from noticeparse.cli.running import run
from noticeparse.console.help_page import examples

_STATUSES = """\b
Exit status:
  0  every answer was right
  1  some answers were wrong
  2  wrong usage, the target does not answer, the report cannot be written"""

_REPORTS = (".json", ".xml")


def _report(_: click.Context, parameter: click.Parameter, name: str | None) -> str | None:
    if name is not None and Path(name).suffix.lower() not in _REPORTS:
        words = f"`{name}`: end it with .json, or .xml for JUnit"
        raise click.BadParameter(words, param=parameter)
    return name


@click.command(
    epilog=examples(
        "noticeparse fuzz positions",
        'noticeparse fuzz lights --target "./my_reader --lights" --report lights.xml',
        "noticeparse fuzz notices --target http://127.0.0.1:8000 --examples 20 --seed 7",
        "noticeparse fuzz depths --list",
        statuses=_STATUSES,
    )
)
@click.argument("kind", type=click.Choice(["positions", "lights", "depths", "notices"]))
@click.option(
    "--target",
    metavar="CMD|URL",
    help="The reader to test: a command, or an HTTP endpoint. Without it, this one.",
)
@click.option(
    "--examples",
    type=click.IntRange(min=1),
    default=100,
    show_default=True,
    help="Texts for each mutation.",
)
@click.option(
    "--seed",
    type=click.IntRange(min=0),
    default=0,
    show_default=True,
    help="The same seed gives the same texts.",
)
@click.option("--only", metavar="NAME", multiple=True, help="Only this mutation; may be repeated.")
@click.option("--list", "is_list", is_flag=True, help="Show the mutations and their outcomes.")
@click.option(
    "--report",
    metavar="FILE",
    callback=_report,
    type=click.Path(dir_okay=False),
    help="Write a report too: FILE.json, or FILE.xml for JUnit.",
)
@click.option(
    "--timeout",
    "seconds",
    type=click.FloatRange(min=0, min_open=True),
    default=10,
    show_default=True,
    help="Seconds that a target has for one answer.",
)
def fuzz(kind: str, **settings: Any) -> None:
    """Attack a reader with texts whose outcome is known.

    KIND is what it reads: positions, lights, depths, or notices. Texts are drawn with the values
    they state, and mutated: look-alike symbols, lost characters, slips of figures, exchanged
    pairs. The answer must be the same record, a finding, or a refusal, as --list tells. What fails
    is made as small as can be and shown with its code points.

    A command is started once and given one text a line, as a JSON string; it answers each at once
    with a line of JSON, as `noticeparse position|light|depth --format json` or `noticeparse parse`
    write it, null for a refusal. An endpoint is sent {"text": …} by POST.
    """
    from noticeparse.console.fuzz import fuzz as command

    run(command, kind, **settings)
