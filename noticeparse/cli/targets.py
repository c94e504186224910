"""Which outputs `parse` writes, and whether the options given fit them."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import PurePath

import click

from noticeparse.console.outputs import Target, targets_of
from noticeparse.writers import ENDINGS, Wishes, form_of


def fitting_targets(
    outs: Sequence[str], form: str, wishes: Wishes, *, is_asked: bool
) -> list[Target]:
    """The targets; `is_asked` where the format was given and not assumed.

    Raises click.UsageError for an option that none of them has a use for.
    """
    targets = targets_of(outs, form)
    forms = {target.form for target in targets}
    for is_wanted, option, needed in (
        (wishes.is_indented, "--indent", "json"),
        (wishes.has_mark, "--bom", "csv"),
        (wishes.with_unusable, "--unusable", "geojson"),
    ):
        if is_wanted and needed not in forms:
            raise click.UsageError(f"{option} goes with --format {needed} only")
    if is_asked and form not in forms:
        first = targets[0]
        raise click.UsageError(
            f"--format {form} has no output: {first.path} is written as {first.form}, "
            "as its name ends"
        )
    if not is_asked:
        _refuse_unknown_endings(outs)
    return targets


def _refuse_unknown_endings(outs: Sequence[str]) -> None:
    """A name like `week12.xls` promises a format; JSON in it would surprise its reader."""
    for out in outs:
        ending = PurePath(out).suffix
        if ending and form_of(out) is None and ending[1:].isalnum() and not ending[1:].isdigit():
            raise click.UsageError(
                f"no format is known for {out}: the endings are {', '.join(ENDINGS)}; "
                "--format names another"
            )
