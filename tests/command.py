"""Running the command line: by click's runner, and as a process of its own."""

from __future__ import annotations

import os
import subprocess
import sys

from click.testing import CliRunner, Result

from noticeparse.cli import cli

GOOD = """\
2417/26 TAVRENNE ISLANDS - Quill Sound - Depths.
Chart 802 [last correction 2310/26] WGS84
Insert depth 8m 47°12'.34S., 123°45'.67W.
"""
BAD = GOOD.replace("47°12'", "47°72'")

POSITION = "47°12'.34S., 123°45'.67W."


def invoke(*arguments: str, given: str | bytes | None = None) -> Result:
    """What a command answers, through click's runner; the data must be UTF-8."""
    result = CliRunner().invoke(cli, arguments, input=given)
    if result.exception is not None and not isinstance(result.exception, SystemExit):
        raise result.exception
    return result


def process(
    *arguments: str | bytes, given: bytes = b"", environment: dict[str, str] | None = None
) -> subprocess.CompletedProcess[bytes]:
    """What a command answers as a process."""
    return subprocess.run(
        [sys.executable, "-m", "noticeparse", *arguments],
        input=given,
        capture_output=True,
        env={**os.environ, **(environment or {})},
        check=False,
        timeout=60,
    )
