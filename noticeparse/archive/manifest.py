"""The manifest of a run: a line of JSON for each input, with all that tells whether it is done.

A line is added when the output of its input is in its place, so that a run that is broken off can
go on; at the end the file is written anew in the order of the inputs.  The same inputs give the
same bytes.
"""

from __future__ import annotations

import json
import os
from collections.abc import Iterable
from typing import IO, Any

from noticeparse.archive.work import Done, Options
from noticeparse.console.outlet import NotWritable, Outlet, cannot_be_written
from noticeparse.version import VERSION

Entry = dict[str, Any]

_SEVERITIES = ("error", "warning", "info")


def name_of(shard: tuple[int, int] | None) -> str:
    """The name of the manifest, one for each shard."""
    return "manifest.jsonl" if shard is None else f"manifest-{shard[0]}-of-{shard[1]}.jsonl"


def entry_of(
    name: str, output: str, size: int | None, sha256: str | None, done: Done, options: Options
) -> Entry:
    """What is said of one input; `size` is that of its output in bytes."""
    counts = done.counts
    return {
        "record": "file",
        "name": name,
        "output": None if done.refusal else output.replace(os.sep, "/"),
        "bytes": None if done.refusal else size,
        "sha256": sha256,
        "refusal": done.refusal,
        "notices": counts.notices,
        "notices_without_action": counts.without_action,
        "actions": counts.actions,
        "unusable": counts.unusable,
        **{one: done.severities.get(one, 0) for one in _SEVERITIES},
        "findings": done.codes,
        "version": VERSION,
        "options": _options(options),
    }


def _options(options: Options) -> Entry:
    return {
        "format": ",".join(options.forms),
        "indent": options.wishes.is_indented,
        "bom": options.wishes.has_mark,
        "unusable": options.wishes.with_unusable,
        "as_of": options.as_of.isoformat() if options.as_of else None,
        "region": options.region,
    }


class Manifest:
    """The manifest in an output directory.

    Raises NotWritable from every method that writes.
    """

    def __init__(self, directory: str, name: str, options: Options) -> None:
        self._directory = directory
        self._path = os.path.join(directory, name)
        self._options = _options(options)
        self._file: IO[bytes] | None = None
        self._done: dict[str, Entry] = {}

    def take_up(self) -> None:
        """Read what the manifests of earlier runs say is done; a line cut off says nothing."""
        for name in sorted(os.listdir(self._directory)):
            if not (name.startswith("manifest") and name.endswith(".jsonl")):
                continue
            with open(
                os.path.join(self._directory, name), encoding="utf-8", errors="replace"
            ) as lines:
                for line in lines:
                    self._take(line)

    def _take(self, line: str) -> None:
        try:
            entry = json.loads(line)
        except ValueError:
            return
        if isinstance(entry, dict) and isinstance(entry.get("output"), str):
            self._done[entry["output"]] = entry

    def done_before(self, output: str, sha256: str) -> Entry | None:
        """What is said of an input that need not be read again, since nothing is changed."""
        entry = self._done.get(output.replace(os.sep, "/"))
        wanted = {"sha256": sha256, "version": VERSION, "options": self._options}
        if entry is None or any(entry.get(key) != value for key, value in wanted.items()):
            return None
        try:
            size = os.path.getsize(os.path.join(self._directory, output))
        except OSError:
            return None
        return entry if size == entry.get("bytes") else None

    def begin(self) -> None:
        """Begin anew, with what is done before."""
        self._write(self._done.values())
        try:
            self._file = open(self._path, "ab")  # noqa: SIM115 - by `finish`
        except OSError as error:
            raise NotWritable(f"{self._path}: {cannot_be_written(error)}") from error

    def add(self, entry: Entry) -> None:
        """Say of one more input what came of it."""
        assert self._file is not None
        try:
            self._file.write(_line(entry))
            self._file.flush()
        except OSError as error:
            raise NotWritable(f"{self._path}: {cannot_be_written(error)}") from error

    def finish(self, entries: Iterable[Entry]) -> None:
        """Write the entries of this run, in their order, in place of what was added."""
        self.close()
        self._write(entries)

    def close(self) -> None:
        """Add nothing more."""
        if self._file is not None:
            self._file.close()
            self._file = None

    def _write(self, entries: Iterable[Entry]) -> None:
        with Outlet(self._path) as outlet:
            outlet.write_bytes(b"")
            for entry in entries:
                outlet.write_bytes(_line(entry))


def _line(entry: Entry) -> bytes:
    return (json.dumps(entry, ensure_ascii=False, separators=(",", ":")) + "\n").encode()
