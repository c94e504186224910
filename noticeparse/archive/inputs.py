"""Which files a run is for: what stands in directories and zip files, and what patterns match.

In come the arguments; out come the inputs in order, sorted within each argument, with what is
refused and what is passed over.  No file is read here, and links to directories are not followed,
so that a directory cannot hold itself.
"""

from __future__ import annotations

import hashlib
import os
from collections.abc import Iterable, Iterator, Sequence
from contextlib import suppress
from dataclasses import dataclass, field
from pathlib import Path
from typing import NamedTuple

from noticeparse.archive import zips
from noticeparse.console.options import is_pattern
from noticeparse.intake import NotReadable, as_text, readable
from noticeparse.intake.kinds import ENDINGS


class Input(NamedTuple):
    """One text of a run."""

    path: str
    member: str | None
    """The name within a zip file."""
    output: str
    """Where its records go: a path below the output directory, without the ending."""

    @property
    def name(self) -> str:
        """How it is named in its records and to a person."""
        return as_text(self.path if self.member is None else f"{self.path}/{self.member}")


class Refusal(NamedTuple):
    """What cannot be read, and why."""

    name: str
    why: str


@dataclass
class Listing:
    """The inputs of a run, and what is said of the rest."""

    inputs: list[Input] = field(default_factory=list)
    refused: list[Refusal] = field(default_factory=list)
    notes: list[str] = field(default_factory=list)

    def refuse(self, path: str, why: object) -> None:
        """Say of a path why it cannot be read."""
        self.refused.append(Refusal(as_text(path), str(why)))


def list_inputs(arguments: Sequence[str], *, apart_from: str | None = None) -> Listing:
    """The inputs that the arguments name; nothing in the directory `apart_from` is one of them."""
    listing = Listing()
    apart = os.path.realpath(apart_from) if apart_from else None
    for argument in arguments:
        if os.path.isdir(argument):
            _add_directory(listing, argument, apart)
        elif is_pattern(argument):
            _add_pattern(listing, argument, apart)
        else:
            _add_file(listing, argument, os.path.basename(argument))
    return listing


def _add_directory(listing: Listing, directory: str, apart: str | None) -> None:
    found: list[str] = []
    passed = links = 0

    def refuse(error: OSError) -> None:
        try:
            with readable(str(error.filename)):
                raise error
        except NotReadable as refusal:
            listing.refuse(str(error.filename), refusal)

    for folder, folders, files in os.walk(directory, onerror=refuse):
        links += sum(os.path.islink(os.path.join(folder, one)) for one in folders)
        folders[:] = [one for one in folders if not _is_apart(os.path.join(folder, one), apart)]
        for name in files:
            path = os.path.join(folder, name)
            if _is_wanted(name) and (os.path.isfile(path) or not os.path.exists(path)):
                found.append(path)
            else:
                passed += 1
    for path in _sorted(found):
        _add_file(listing, path, os.path.relpath(path, directory))
    if passed:
        words = "1 file is" if passed == 1 else f"{passed} files are"
        pattern = os.path.join(as_text(directory), "**", "*")
        listing.notes.append(
            f"{as_text(directory)}: {words} of no kind that is read and passed over;"
            f" the pattern '{pattern}' takes all"
        )
    if links:
        words = "1 link" if links == 1 else f"{links} links"
        listing.notes.append(f"{as_text(directory)}: {words} to directories not followed")


def _is_wanted(name: str) -> bool:
    return name.lower().endswith(tuple(ENDINGS)) or zips.is_zip_name(name)


def _is_apart(path: str, apart: str | None) -> bool:
    return apart is not None and os.path.realpath(path) == apart


def _add_pattern(listing: Listing, pattern: str, apart: str | None) -> None:
    base = pattern
    while is_pattern(base):
        base = os.path.dirname(base)
    rest = pattern[len(base) :].lstrip(os.sep)
    # `**` by itself stands for directories only.
    rest = os.path.join(rest, "*") if rest.endswith("**") else rest
    try:
        # Unlike `glob.glob`, this follows no links for `**`, which may lead round in a circle.
        matches = [str(path) for path in Path(base).glob(rest)]
    except (ValueError, NotImplementedError) as error:
        listing.refuse(pattern, f"no pattern: {error}")
        return
    found = [
        path
        for path in dict.fromkeys(matches)
        if os.path.isfile(path)
        and not (apart and os.path.realpath(path).startswith(apart + os.sep))
    ]
    if not found:
        listing.refuse(pattern, "no file matches")
    for path in _sorted(found):
        _add_file(listing, path, os.path.relpath(path, base or os.curdir))


def _sorted(paths: Iterable[str]) -> list[str]:
    return sorted(paths, key=lambda path: path.split(os.sep))


def _add_file(listing: Listing, path: str, output: str) -> None:
    if not zips.is_zip_name(path):
        listing.inputs.append(Input(path, None, output))
        return
    try:
        members = zips.members_of(path)
    except NotReadable as error:
        listing.refuse(path, error)
        return
    for member in members.texts:
        listing.inputs.append(Input(path, member, os.path.join(output, *member.split("/"))))
    for name, why in members.refused:
        listing.refuse(f"{path}/{name}", why)
    if members.passed:
        words = "1 file is" if members.passed == 1 else f"{members.passed} files are"
        listing.notes.append(f"{as_text(path)}: {words} of no kind that is read and passed over")


def of_shard(inputs: Iterable[Input], shard: tuple[int, int]) -> Iterator[Input]:
    """The inputs of the first, second … of several shards.

    By the hash of where an input stands and not by its place in the row: a file that comes or goes
    while the shards start moves no other one into another shard.
    """
    number, count = shard
    for one in inputs:
        words = one.output.replace(os.sep, "/").encode("utf-8", "surrogateescape")
        if int.from_bytes(hashlib.sha256(words).digest()[:8], "big") % count == number - 1:
            yield one


def _files(paths: Iterable[str]) -> set[tuple[int, int]]:
    """What tells files apart, whatever the names they have; those that are not there are none."""
    found: set[tuple[int, int]] = set()
    for path in paths:
        with suppress(OSError):
            status = os.stat(path)
            found.add((status.st_dev, status.st_ino))
    return found


def without_clashes(listing: Listing, directory: str, ending: str, taken: str) -> None:
    """Refuse inputs whose records would go to one place, or to that of an input.

    `taken` is the name of the manifest.
    """
    read = _files(one.path for one in listing.inputs)
    seen: dict[str, Input] = {}
    kept: list[Input] = []
    for one in listing.inputs:
        # Some file systems take no notice of capitals.
        place = f"{one.output}{ending}".casefold()
        first = seen.setdefault(place, one)
        if place == taken.casefold():
            listing.refuse(one.name, "its output would take the place of the manifest")
        elif _files([os.path.join(directory, f"{one.output}{ending}")]) & read:
            listing.refuse(one.name, "its output would take the place of an input")
        elif first is one:
            kept.append(one)
        elif first[:2] == one[:2]:
            listing.notes.append(f"{one.name}: is named twice and read once")
        else:
            listing.refuse(one.name, f"its output would take the place of that of {first.name}")
    listing.inputs[:] = kept
