"""Commands that read notices: parse, check, charts, tidy."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import click

from noticeparse.cli import archives
from noticeparse.cli.running import run
from noticeparse.cli.targets import fitting_targets
from noticeparse.console import options
from noticeparse.console.help_page import examples
from noticeparse.console.settings import Settings
from noticeparse.writers import Wishes


@click.command(
    epilog=examples(
        "noticeparse parse week12.txt > week12.json",
        "noticeparse parse --format jsonl --out year.jsonl week*.txt",
        "noticeparse parse --out week12.geojson --out week12.csv --bom week12.txt",
        "noticeparse parse --format text week12.txt | less",
        "noticeparse parse --indent - < notice.txt",
        "noticeparse parse --format text week12.pdf forwarded.eml",
        "noticeparse parse --jobs 4 --into records --resume archive 'years/**/*.txt' 2025.zip",
    )
)
@options.files
@options.chart_list
@options.as_of
@options.region
@options.parse_form
@options.outs
@options.indent
@options.mark
@options.unusable
@archives.options
@click.pass_context
def parse(
    ctx: click.Context,
    /,
    files: Sequence[str],
    form: str,
    outs: Sequence[str],
    is_indented: bool,
    has_mark: bool,
    with_unusable: bool,
    **settings: Any,
) -> None:
    """Read notices and write their records.

    json and jsonl hold all that was read, text all of it for a person; geojson and csv hold the
    actions. Several inputs make one map layer, one table or one text, and with --into one for
    each. What could not be read for certain stands in the findings of the record.

    FILE may be plain text, PDF, HTML, mail or .docx (all but text take noticeparse[intake]); also
    a directory, of which such files and zip files are read, a zip file, or a pattern in quotes.
    """
    wishes = Wishes(is_indented, has_mark, with_unusable)
    is_asked = ctx.get_parameter_source("form") is not click.core.ParameterSource.DEFAULT
    targets = fitting_targets(outs, form, wishes, is_asked=is_asked)
    given = archives.take(settings)
    if archives.is_archive(files, given):
        archives.parse(files, given, outs=outs, targets=targets, wishes=wishes, settings=settings)
    from noticeparse.console import parsing

    run(parsing.parse, files, Settings(**settings), targets=targets, wishes=wishes)


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


@click.command(
    epilog=examples(
        "noticeparse tidy week12.txt",
        "noticeparse tidy notice.txt > notice.tidy.txt",
    )
)
@options.files
def tidy(files: Sequence[str]) -> None:
    """Write notices anew, one action a line.

    Positions stand in one column, in the unit and with the digits in which they were given,
    depths with their unit. The output says what the notices say and no more; what could not be
    read or written stands in its place behind `#|`, with the reason, and is counted.
    """
    from noticeparse.console import tidying

    run(tidying.tidy, files)
