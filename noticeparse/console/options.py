"""The arguments and options that several commands share.

Only click is imported here, as in `cli`.
"""

from __future__ import annotations

import os

import click

from noticeparse.writers import ENDINGS, FORMATS


def _once(_: click.Context, parameter: click.Parameter, files: tuple[str, ...]) -> tuple[str, ...]:
    if files.count("-") > 1:
        raise click.BadParameter("standard input can be read only once", param=parameter)
    return files


def each_once(
    _: click.Context, parameter: click.Parameter, outs: tuple[str, ...]
) -> tuple[str, ...]:
    """Names of outputs, each of a file in a folder that is there, and named once."""
    places = [out if out == "-" else os.path.realpath(out) for out in outs]
    for out, place in zip(outs, places, strict=True):
        if not out or out.endswith(os.sep):
            raise click.BadParameter(f"`{out}` is no name of a file", param=parameter)
        folder = os.path.dirname(out)
        if folder and not os.path.isdir(folder):
            words = f"{out} cannot be written: there is no folder {folder}; make it first"
            raise click.BadParameter(words, param=parameter)
        if places.count(place) > 1:
            raise click.BadParameter(f"{out} is named twice", param=parameter)
    return outs


def _named(_: click.Context, parameter: click.Parameter, name: str | None) -> str | None:
    if name == "-":
        words = "standard input is for notices; give the name of a file"
        raise click.BadParameter(words, param=parameter)
    return name


def _no_option(ctx: click.Context, _: click.Parameter, texts: tuple[str, ...]) -> tuple[str, ...]:
    for text in texts:
        if text.startswith("-") and text[1:2] in ("-", *map(chr, range(97, 123))):
            raise click.NoSuchOption(text.partition("=")[0], ctx=ctx)
    return texts


def is_pattern(name: str) -> bool:
    """Whether a name stands for all files that match it; a file of just that name comes first."""
    return any(sign in name for sign in "*?[") and not os.path.lexists(name)


files = click.argument(
    "files", nargs=-1, metavar="[FILE]...", callback=_once, type=click.Path(allow_dash=True)
)
chart_list = click.option(
    "--charts",
    "chart_list",
    metavar="LIST",
    callback=_named,
    type=click.Path(dir_okay=False),
    help="The charts on board, CSV or GeoJSON: hold the notices against their sheets.",
)
as_of = click.option(
    "--as-of",
    metavar="DATE",
    type=click.DateTime(["%Y-%m-%d"]),
    callback=lambda _, __, given: given and given.date(),
    help="Tell of temporary notices that ended before DATE (2026-03-31).",
)
region = click.option(
    "--region", type=click.Choice(["A", "B"]), help="The region of buoyage of the lateral marks."
)
parse_form = click.option(
    "--format",
    "form",
    type=click.Choice([*FORMATS]),
    default="json",
    show_default=True,
    help="json: one bulletin a line. jsonl: one notice a line, then the rest of the bulletin. "
    "geojson: a map layer. csv: one action a row. text: a reading copy for the corrector.",
)
outs = click.option(
    "--out",
    "outs",
    metavar="OUT",
    multiple=True,
    callback=each_once,
    type=click.Path(dir_okay=False, allow_dash=True),
    help="Write to the file OUT, whole or not at all, instead of standard output (`-`). May be "
    f"repeated; an ending {', '.join(ENDINGS)} tells the format, --format that of the others.",
)
indent = click.option("--indent", "is_indented", is_flag=True, help="Indent the JSON for the eye.")
mark = click.option(
    "--bom",
    "has_mark",
    is_flag=True,
    help="A byte order mark before the CSV, for spreadsheets.",
)
unusable = click.option(
    "--unusable",
    "with_unusable",
    is_flag=True,
    help="Put actions that must not be used into the GeoJSON too, without a geometry.",
)
texts = click.argument("texts", nargs=-1, required=True, metavar="TEXT...", callback=_no_option)
value_form = click.option(
    "--format",
    "form",
    type=click.Choice(["text", "json"]),
    default="text",
    show_default=True,
    help="json: one record a line, in the order of the arguments.",
)
brief = click.option(
    "--brief",
    "is_brief",
    is_flag=True,
    help="One line each: file:line:column: severity code: message.",
)
findings_form = click.option(
    "--format",
    "form",
    type=click.Choice(["text", "json", "jsonl"]),
    default="text",
    show_default=True,
    help="json: an object a text, with its findings. jsonl: one finding a line.",
)
fail_on = click.option(
    "--fail-on",
    type=click.Choice(["error", "warning"]),
    default="error",
    show_default=True,
    help="The least severity for which the exit status is 1.",
)
