"""Commands that read notices: parse, check, charts."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import click

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
    actions. Several inputs make one map layer, one table or one text. What could not be read for
    certain stands in the findings of the record.
    """
    wishes = Wishes(is_indented, has_mark, with_unusable)
    is_asked = ctx.get_parameter_source("form") is not click.core.ParameterSource.DEFAULT
    targets = fitting_targets(outs, form, wishes, is_asked=is_asked)
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
