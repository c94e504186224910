"""The command that serves over HTTP."""

from __future__ import annotations

import click

from noticeparse.cli.running import run
from noticeparse.console.help_page import SERVE_STATUSES, examples


@click.command(
    epilog=examples(
        "noticeparse serve",
        "noticeparse serve --port 9000 --no-open",
        "NOTICEPARSE_TOKEN=… noticeparse serve --host 0.0.0.0",
        "curl -H 'Content-Type: text/plain' --data-binary @week12.txt localhost:8417/v1/parse",
        statuses=SERVE_STATUSES,
    )
)
@click.option("--host", default="127.0.0.1", show_default=True, help="The address to listen on.")
@click.option(
    "--port",
    type=click.IntRange(0, 65535),
    default=8417,
    show_default=True,
    help="The port to listen on; 0 takes a free one.",
)
@click.option("--no-open", is_flag=True, help="Do not open the start page in a browser.")
@click.option(
    "--max-body",
    "max_body_mib",
    metavar="MIB",
    type=click.IntRange(1, 256),
    default=8,
    show_default=True,
    help="The largest body, in MiB.",
)
@click.option(
    "--max-seconds",
    "seconds",
    metavar="SECONDS",
    type=click.IntRange(1, 3600),
    default=180,
    show_default=True,
    help="The longest time for the reading of one text.",
)
@click.option(
    "--workers",
    type=click.IntRange(1, 256),
    help="Processes that read.  [default: one for each processor, at least 2]",
)
def serve(
    host: str, port: int, no_open: bool, max_body_mib: int, seconds: int, workers: int | None
) -> None:
    """Serve the reader over HTTP, with a start page and documentation.

    It needs the extra `web`. Only this machine reaches it, unless --host says otherwise; set
    NOTICEPARSE_TOKEN to have requests carry that token. No text is logged or kept. Ctrl-C ends it.
    """
    from noticeparse.console import serving

    run(
        serving.serve,
        host,
        port,
        is_to_open=not no_open,
        max_body_mib=max_body_mib,
        seconds=seconds,
        workers=workers,
    )
