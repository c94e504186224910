"""The command line among pipes, full disks, closed streams and terminals."""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
from collections.abc import Sequence
from pathlib import Path

import pytest

from tests.command import GOOD


@pytest.mark.skipif(sys.platform == "win32", reason="pipes of the shell")
class TestStreams:
    """Pipes and disks that end early."""

    def shell(self, line: str, *files: str) -> subprocess.CompletedProcess[str]:
        """Run a line of bash in which `np` is the program."""
        head = f'np() {{ "{sys.executable}" -m noticeparse "$@"; }}; set -o pipefail; '
        return subprocess.run(
            ["bash", "-c", head + line, "bash", *files],
            capture_output=True,
            text=True,
            check=False,
            timeout=60,
        )

    @pytest.mark.parametrize(
        "line",
        [
            "np explain --all | head -1",
            "np schema | head -1",
            'np parse "$@" | head -1',
            'np parse --indent "$@" | head -1',
            'np check "$@" "$@" | head -1',
            'np check "$@" 2>&1 | true',
            'np position "47 12 S 123 45 W" 2>&1 | true',
            "np --help | true",
            'np parse "$@" 2>&1 >/dev/null | true',
        ],
    )
    def test_closed_pipe_ends_quietly(self, line: str, good: str) -> None:
        ran = self.shell(line, good, good, good)
        assert "Traceback" not in ran.stderr
        assert "Exception" not in ran.stderr
        assert "Broken" not in ran.stderr
        assert ran.returncode in (0, 1)

    def test_status_behind_a_closed_pipe_is_that_of_the_text(self, bad: str) -> None:
        ran = self.shell(
            'np parse --indent "$1" 2>/dev/null | head -1; echo ${PIPESTATUS[0]}', bad
        )
        assert ran.stdout == "{\n1\n"

    @pytest.mark.skipif(not Path("/dev/full").exists(), reason="no full device")
    def test_full_disk(self, good: str) -> None:
        ran = self.shell('np parse "$1" > /dev/full', good)
        assert ran.returncode == 2
        assert ran.stderr.count("\n") == 1
        assert "cannot be written" in ran.stderr

    @pytest.mark.skipif(not Path("/dev/full").exists(), reason="no full device")
    @pytest.mark.parametrize("line", ["np --help", "np parse --help", "np --version"])
    def test_full_disk_for_help(self, line: str) -> None:
        ran = self.shell(f"{line} > /dev/full")
        assert ran.returncode == 2
        assert ran.stderr == (
            "noticeparse: standard output: cannot be written: No space left on device\n"
        )
        assert self.shell("np parse --no-such-option 2> /dev/full").returncode == 2

    def test_closed_streams(self, good: str) -> None:
        out = self.shell('np parse "$1" >&-', good)
        assert out.returncode == 2
        assert out.stderr == "noticeparse: standard output is closed\n"
        assert self.shell('np parse "$1" 2>&-', good).returncode == 0
        closed = self.shell("np parse <&-")
        assert closed.returncode == 2
        assert closed.stderr == "noticeparse: <stdin>: standard input is closed\n"

    def test_interrupt(self) -> None:
        started = subprocess.Popen(
            [sys.executable, "-m", "noticeparse", "parse"],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
            # A job in the background of a shell hands down that interrupts are ignored.
            preexec_fn=lambda: signal.signal(signal.SIGINT, signal.SIG_DFL),
        )
        assert started.stdin is not None
        # Wait until it reads: then the pipe has been emptied.
        started.stdin.write(b" " * 200_000)
        started.stdin.flush()
        started.send_signal(2)
        _, said = started.communicate(timeout=60)
        assert started.returncode == 130
        assert said.strip() == b"noticeparse: interrupted"


def on_terminal(
    arguments: Sequence[str], *, out: int | None, typed: str | None = None
) -> tuple[int, str]:
    """The status, and what a terminal shows: standard error, and the data where `out` is None.

    What is `typed` comes from the terminal, else standard input holds nothing.
    """
    import pty

    ours, theirs = pty.openpty()
    started = subprocess.Popen(
        [sys.executable, "-m", "noticeparse", *arguments],
        stdin=subprocess.DEVNULL if typed is None else theirs,
        stdout=theirs if out is None else out,
        stderr=theirs,
        env={**os.environ, "TERM": "xterm"},
    )
    os.close(theirs)
    if typed is not None:
        os.write(ours, typed.encode() + b"\x04")
    shown = b""
    try:
        while piece := os.read(ours, 65536):
            shown += piece
    except OSError:
        pass  # The other side has gone.
    os.close(ours)
    return started.wait(60), shown.decode()


@pytest.mark.skipif(sys.platform == "win32", reason="no such terminal")
class TestTerminal:
    """The bar is there for a person who waits, and for nobody else."""

    def test_bar_for_several_files(self, good: str) -> None:
        pytest.importorskip("rich")
        status, shown = on_terminal(["parse", good, good, good], out=subprocess.DEVNULL)
        assert status == 0
        assert "reading" in shown

    def test_bar_for_a_long_file(self, tmp_path: Path) -> None:
        pytest.importorskip("rich")
        path = tmp_path / "long.txt"
        path.write_text(" " * 1_000_001 + "\n" + GOOD, "utf-8")
        assert "reading" in on_terminal(["parse", str(path)], out=subprocess.DEVNULL)[1]

    def test_none_for_a_short_file(self, good: str) -> None:
        assert on_terminal(["parse", good], out=subprocess.DEVNULL) == (0, "")

    def test_none_where_the_data_is_seen(self, good: str) -> None:
        status, shown = on_terminal(["parse", good, good], out=None)
        assert status == 0
        assert "reading" not in shown
        assert [json.loads(line)["schema_version"] for line in shown.splitlines()] == ["1", "1"]

    def test_reading_from_the_terminal_is_told(self) -> None:
        status, shown = on_terminal(["parse"], out=subprocess.DEVNULL, typed=GOOD)
        assert status == 0
        assert "Reading from the terminal; end with Ctrl-D" in shown

    def test_it_is_told_only_when_reading_begins(self) -> None:
        wrong = ["parse", "--format", "jsonl", "--indent"]
        status, shown = on_terminal(wrong, out=subprocess.DEVNULL, typed="")
        assert status == 2
        assert "Reading" not in shown

    def test_messages_pass_the_bar(self, good: str, tmp_path: Path) -> None:
        pytest.importorskip("rich")
        status, shown = on_terminal(
            ["parse", good, str(tmp_path / "none[red]"), good], out=subprocess.DEVNULL
        )
        assert status == 2
        assert "none[red]: no file matches" in shown
