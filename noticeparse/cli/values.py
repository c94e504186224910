"""Commands that read one value each: position, light, depth."""

from __future__ import annotations

from collections.abc import Sequence

import click

from noticeparse.cli.running import run
from noticeparse.console import options
from noticeparse.console.help_page import examples

# A drying height or a southern latitude may begin with a minus, which is no option.
_SETTINGS = {"ignore_unknown_options": True}


@click.command(
    context_settings=_SETTINGS,
    epilog=examples(
        "noticeparse position \"47°12'.34S., 123°45'.67W.\"",
        'noticeparse position --format json "47 12.34S 123 45.67W"',
        'noticeparse position --forms "47-12.34S 123-45.67W"',
    ),
)
@options.texts
@options.value_form
@click.option(
    "--forms",
    "has_forms",
    is_flag=True,
    help="Write each position in all forms; what a form cannot hold exactly is marked.",
)
def position(texts: Sequence[str], form: str, has_forms: bool) -> None:
    """Read each TEXT as one position.

    What cannot be read for certain is refused: a missing hemisphere, 60 minutes, a letter among
    the figures.
    """
    _values("position forms" if has_forms else "position", texts, form)


@click.command(
    context_settings=_SETTINGS,
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


@click.command(
    context_settings=_SETTINGS,
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

    run(commands.values, kind, texts, form=form)
