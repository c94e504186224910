"""The command line: arguments in, exit status out; the work is done in `commands`.

Only click is imported here, so that help, version and completion answer at once.
"""

from __future__ import annotations

import sys
from collections.abc import Callable, Sequence
from typing import Any

import click

from noticeparse.console import options, process
from noticeparse.console.help_page import EXPLAIN_STATUSES, examples
from noticeparse.console.outlet import (
    STANDARD_OUTPUT,
    ReaderGone,
    cannot_be_written,
    say,
    silence,
)
from noticeparse.console.settings import Settings
from noticeparse.console.statuses import NOT_READ, READ
from noticeparse.version import VERSION
from noticeparse.writers import FORMATS

_SETTINGS = {"help_option_names": ["-h", "--help"], "max_content_width": 99}
# A drying height or a southern latitude may begin with a minus, which is no option.
_VALUE_SETTINGS = {**_SETTINGS, "ignore_unknown_options": True}
_INTERRUPTED = 130


def _run(command: Callable[..., int], *arguments: Any, **settings: Any) -> None:
    from noticeparse.console.commands import run

    click.get_current_context().exit(run(lambda: command(*arguments, **settings)))


@click.group(
    context_settings=_SETTINGS,
    epilog=examples(
        "noticeparse parse week12.txt > week12.json",
        "noticeparse check week12.txt",
        "noticeparse position \"47°12'.34S., 123°45'.67W.\"",
        caution=None,  # it stands at the top of the page
    ),
)
@click.version_option(VERSION, message="%(prog)s %(version)s", prog_name="noticeparse")
def cli() -> None:
    """Read the plain text of notices to mariners into chart-correction records.

    An aid to a qualified officer only: the issuing authority's notice governs, and every position
    must be checked against it before use.

    FILE is a text file; none, or `-`, is standard input. Data goes to standard output, everything
    else to standard error.
    """


@cli.command(
    epilog=examples(
        "noticeparse parse week12.txt > week12.json",
        "noticeparse parse --format jsonl --out year.jsonl week*.txt",
        "noticeparse parse --indent - < notice.txt",
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
def parse(
    files: Sequence[str], form: str, is_indented: bool, out: str | None, **settings: Any
) -> None:
    """Read notices and write their records.

    The output is one line for each input, on a terminal as in a file, unless --indent is given.
    What could not be read for certain stands in the findings of the record.
    """
    if is_indented and form != "json":
        raise click.UsageError("--indent goes with --format json only")
    from noticeparse.console import commands

    _run(commands.parse, files, Settings(**settings), form=form, out=out, is_indented=is_indented)


@cli.command(
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

    _run(commands.check, files, Settings(**settings), form=form, is_brief=is_brief)


@cli.command(
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

    _run(commands.charts, files, Settings(**settings))


@cli.command(
    context_settings=_VALUE_SETTINGS,
    epilog=examples(
        "noticeparse position \"47°12'.34S., 123°45'.67W.\"",
        'noticeparse position --format json "47 12.34S 123 45.67W"',
    ),
)
@options.texts
@options.value_form
def position(texts: Sequence[str], form: str) -> None:
    """Read each TEXT as one position.

    What cannot be read for certain is refused: a missing hemisphere, 60 minutes, a letter among
    the figures.
    """
    _values("position", texts, form)


@cli.command(
    context_settings=_VALUE_SETTINGS,
    epilog=examples(
        'noticeparse light "Fl(2)WRG.10s12m15-11M"',
        'noticeparse light --format json "Q(6)+LFl.15s"',
    ),
)
@options.texts
@options.value_form
def light(texts: Sequence[str], form: str) -> None:
    """Read each TEXT as the character of one light."""
    _values("light", texts, form)


@cli.command(
    context_settings=_VALUE_SETTINGS,
    epilog=examples(
        'noticeparse depth "8₂m" "dries 1.2m"', "noticeparse depth --format json 3fm4ft"
    ),
)
@options.texts
@options.value_form
def depth(texts: Sequence[str], form: str) -> None:
    """Read each TEXT as one depth or drying height."""
    _values("depth", texts, form)


def _values(kind: str, texts: Sequence[str], form: str) -> None:
    from noticeparse.console import commands

    _run(commands.values, kind, texts, form=form)


@cli.command(epilog=examples("noticeparse schema > bulletin.schema.json", statuses=None))
def schema() -> None:
    """Write the JSON Schema of the output of parse.

    It describes (draft 2020-12) what parse writes for one input in the format json.
    """
    from noticeparse.console import commands

    _run(commands.schema)


@cli.command(
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

    _run(commands.explain, codes, is_all=is_all)


def main(arguments: Sequence[str] | None = None) -> None:
    """Run the command line and end the process with its status."""
    process.begin()
    status = _status(arguments)
    process.end()
    sys.exit(status)


def _status(arguments: Sequence[str] | None) -> int:
    try:
        result = cli.main(arguments, prog_name="noticeparse", standalone_mode=False)
    except click.ClickException as error:
        _show(error)
        return NOT_READ
    except (click.Abort, KeyboardInterrupt):
        say("noticeparse: interrupted")
        return _INTERRUPTED
    except (BrokenPipeError, ReaderGone):
        return READ
    except OSError as error:
        # Commands say themselves what cannot be written; a stream without a name is that of the
        # help and the version.
        if error.errno is None or error.filename is not None:
            raise
        silence(sys.stdout)
        say(f"noticeparse: {STANDARD_OUTPUT}: {cannot_be_written(error)}")
        return NOT_READ
    return result if isinstance(result, int) else READ


def _show(error: click.ClickException) -> None:
    try:
        error.show()
    except OSError:
        silence(sys.stderr)
