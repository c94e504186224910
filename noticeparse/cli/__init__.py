"""The command line: arguments in, exit status out; the work is done in `console`.

Only click is imported here and in the modules of the commands, so that help, version and
completion answer at once.  Adding a command: its module, and its name in `_COMMANDS`.
"""

from __future__ import annotations

import sys
from collections.abc import Sequence

import click

from noticeparse.cli import notices, qa, reference, serving, sheets, values
from noticeparse.console import process
from noticeparse.console.help_page import examples
from noticeparse.console.outlet import (
    STANDARD_OUTPUT,
    ReaderGone,
    cannot_be_written,
    say,
    silence,
)
from noticeparse.console.statuses import NOT_READ, READ
from noticeparse.version import VERSION

_SETTINGS = {"help_option_names": ["-h", "--help"], "max_content_width": 99}
_INTERRUPTED = 130

_COMMANDS = (
    notices.parse,
    notices.check,
    notices.charts,
    notices.tidy,
    sheets.sheet,
    values.position,
    values.light,
    values.depth,
    reference.schema,
    reference.explain,
    qa.fuzz,
    serving.serve,
)


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


for _command in _COMMANDS:
    cli.add_command(_command)


def main(arguments: Sequence[str] | None = None) -> None:
    """Run the command line and end the process with its status."""
    process.begin()
    status = _status(arguments)
    process.end()
    if status == _INTERRUPTED:
        process.leave(status)
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
