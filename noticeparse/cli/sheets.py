"""The command that makes work sheets."""

from __future__ import annotations

import os
from collections.abc import Sequence
from typing import Any

import click

from noticeparse.cli.running import run
from noticeparse.console import options
from noticeparse.console.help_page import examples
from noticeparse.console.settings import Settings

_SHEETS = (".html", ".htm", ".pdf")
_PLOTS = (".svg", ".pdf")


def _sheet_name(ctx: click.Context, parameter: click.Parameter, out: str | None) -> str | None:
    return None if out in (None, "-") else _fitting(ctx, parameter, out, _SHEETS)


def _plot_name(ctx: click.Context, parameter: click.Parameter, out: str | None) -> str | None:
    return None if out is None else _fitting(ctx, parameter, out, _PLOTS)


def _fitting(
    ctx: click.Context, parameter: click.Parameter, out: str | None, endings: Sequence[str]
) -> str:
    (name,) = options.each_once(ctx, parameter, (out or "",))
    if os.path.splitext(name)[1].lower() not in endings:
        words = f"`{name}` must end with {' or '.join(endings)}, which tells the format"
        raise click.BadParameter(words, param=parameter)
    return name


@click.command(
    epilog=examples(
        "noticeparse sheet --chart 802 week12.txt > 802.html",
        "noticeparse sheet --chart 802 --charts on_board.csv --out 802.pdf week*.txt",
        "noticeparse sheet --chart 802 --charts on_board.csv --plot 802.svg week12.txt",
        "noticeparse sheet --charts on_board.csv --out all.pdf --plot plots.pdf week12.txt",
    )
)
@options.files
@click.option(
    "--chart",
    "wanted",
    metavar="NUMBER",
    multiple=True,
    help="The chart to make a sheet of, by its own or its international number. May be repeated; "
    "without it all charts touched have one.",
)
@options.chart_list
@options.as_of
@options.region
@click.option(
    "--out",
    metavar="OUT",
    callback=_sheet_name,
    type=click.Path(dir_okay=False, allow_dash=True),
    help="Write the sheets to the file OUT, .html or .pdf, instead of standard output.",
)
@click.option(
    "--plot",
    metavar="OUT",
    callback=_plot_name,
    type=click.Path(dir_okay=False),
    help="Write a plot at the scale of the chart, .svg or .pdf, to lay over it; needs --charts. "
    "Without --out nothing else is written.",
)
@click.option(
    "--tile",
    "paper",
    type=click.Choice(["A4", "A3"]),
    help="Divide a plot in PDF into tiles on this paper, in place of pages of the chart's size.",
)
def sheet(
    files: Sequence[str],
    *,
    wanted: Sequence[str],
    out: str | None,
    plot: str | None,
    paper: str | None,
    **settings: Any,
) -> None:
    """Make work sheets for the correction of charts by hand.

    All actions for a chart stand on its sheet in the order of their application, with their
    places in words, boxes to tick and whatever was found amiss; those that must not be applied
    are marked. The HTML is one file without script, to be printed on A4. PDF needs the extra
    `sheet`.
    """
    if out is not None and plot is not None and os.path.realpath(out) == os.path.realpath(plot):
        raise click.UsageError(f"{out} is named for the sheet and for the plot")
    is_plotted_alone = plot is not None and not _is_given("out")
    if plot is not None and settings["chart_list"] is None:
        raise click.UsageError("--plot needs --charts LIST, which tells scale and limits")
    if paper is not None and (plot is None or not plot.lower().endswith(".pdf")):
        raise click.UsageError("--tile goes with --plot OUT.pdf only")
    from noticeparse.console import sheeting

    run(
        sheeting.sheet,
        files,
        Settings(**settings),
        wanted=wanted,
        out=out,
        plot=plot,
        paper=paper,
        is_sheet_wanted=not is_plotted_alone,
    )


def _is_given(name: str) -> bool:
    source = click.get_current_context().get_parameter_source(name)
    return source is not click.core.ParameterSource.DEFAULT
