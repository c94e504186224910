"""Commands that read notices: parse, check, charts."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import click

from noticeparse.cli import archives
from noticeparse.cli.running import run
from noticeparse.console import options
from noticeparse.console.help_page import examples
from noticeparse.console.settings import Settings
from noticeparse.writers import FORMATS


@click.command(
    epilog=examples(
        "noticeparse parse week12.txt > week12.json",
        "noticeparse parse --format jsonl --out year.jsonl week*.txt",
        "noticeparse parse --indent - < notice.txt",
        "noticeparse parse --jobs 4 --into records --resume archive 'years/**/*.txt' 2025.zip",
    )
)
@options.files
@options.chart_list
@options.as_of
@options.region
@click.option(
    "--format",
    "form",
    type=click.Choice([*FORMATS]),
    default="json",
    show_default=True,
    help="json: one bulletin a line. jsonl: one notice a line, then the rest of the bulletin.",
)
@click.option("--indent", "is_indented", is_flag=True, help="Indent the JSON for the eye.")
@click.option(
    "--out",
    metavar="OUT",
    type=click.Path(dir_okay=False, allow_dash=True),
    help="Write to the file OUT, whole or not at all, instead of standard output (`-`).",
)
@archives.options
def parse(
    files: Sequence[str], form: str, is_indented: bool, out: str | None, **settings: Any
) -> None:
    """Read notices and write their records.

    The output is one line for each input, on a terminal as in a file, unless --indent is given.
    What could not be read for certain stands in the findings of the record.

    FILE may also be a directory, of which the .txt and .zip files are read, a zip file, or a
    pattern in quotes. Without --into the records follow each other in the order of the inputs.
    """
    if is_indented and form != "json":
        raise click.UsageError("--indent goes with --format json only")
    given = archives.take(settings)
    if archives.is_archive(files, given):
        archives.parse(
            files, given, form=form, is_indented=is_indented, out=out, settings=settings
        )
    from noticeparse.console import commands

    run(commands.parse, files, Settings(**settings), form=form, out=out, is_indented=is_indented)


@click.command(
    epilog=examples(
        "noticeparse check week12.txt",
        "noticeparse check --charts on_board.csv --as-of 2026-03-31 week12.txt",
        "noticeparse check --brief week*.txt | grep ' error '",
        "noticeparse check --format jsonl --fail-on warning week12.txt",
    )
)
@options.files
@options.chart_list
@options.as_of
@options.region
@options.brief
@options.findings_form
@options.fail_on
def check(files: Sequence[str], form: str, is_brief: bool, **settings: Any) -> None:
    """Read notices and show the findings.

    Each names its place, shows the line with marks below the words in question, and says what is
    wrong, why it matters and what to do. The counts go to standard error. Several inputs are also
    seen together.
    """
    if is_brief and form != "text":
        raise click.UsageError("--brief goes with --format text only")
    from noticeparse.console import commands

    run(commands.check, files, Settings(**settings), form=form, is_brief=is_brief)


@click.command(
    epilog=examples("noticeparse charts week12.txt", "noticeparse charts week10.txt week11.txt")
)
@options.files
@options.chart_list
def charts(files: Sequence[str], **settings: Any) -> None:
    """Show the charts touched and the order of the notices on each.

    The notices for a chart stand in the order of their application: a notice behind the one that
    must be on the chart before it, else the lower number first, temporary and preliminary last.
    The exit status is 1 also where a number stands twice, or notices wait for each other in a
    circle.
    """
    from noticeparse.console import commands

    run(commands.charts, files, Settings(**settings))
