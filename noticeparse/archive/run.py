"""One run over many files: `parse` with a directory, a pattern, a zip file, or several jobs.

With an output directory each input has a file of its own there, whole or not at all, and the
manifest says what came of it; without one all records go to the same outputs in the order of the
inputs, as if all files had been named.
"""

from __future__ import annotations

import errno
import hashlib
import os
import signal
from collections import Counter
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from functools import partial
from typing import NamedTuple

from noticeparse.archive.cluster import NoCluster, on_cluster
from noticeparse.archive.inputs import (
    Input,
    Listing,
    list_inputs,
    of_shard,
    without_clashes,
)
from noticeparse.archive.manifest import Entry, Manifest, entry_of, name_of
from noticeparse.archive.runners import Asked, Order, Run, in_processes, in_this_process
from noticeparse.archive.work import Done, Options
from noticeparse.archive.zips import ZipReader
from noticeparse.console.outlet import NotWritable, Outlet, say
from noticeparse.console.outputs import Outputs, Target
from noticeparse.console.parsing import spares_inputs, write_parts
from noticeparse.console.progress import Progress
from noticeparse.console.statuses import NOT_READ, READ, WITH_ERRORS
from noticeparse.console.telling import told_of
from noticeparse.intake import NotReadable, readable
from noticeparse.writers import Part, ending_of, new_writer
from noticeparse.writers.findings_out import counted
from noticeparse.writers.quoting import visible

_MOST_BYTES = 256 << 20
# These stop a run, for no other output could be written either.
_NOWHERE = {errno.ENOSPC, errno.EROFS, errno.EIO, getattr(errno, "EDQUOT", errno.ENOSPC)}


class Plan(NamedTuple):
    """How a run over an archive is to go."""

    into: str | None = None
    """The directory for one output file for each input, in the first format of the options."""
    targets: Sequence[Target] = ()
    """Where all records go in order, where there is no such directory."""
    jobs: int | None = None
    is_resumed: bool = False
    shard: tuple[int, int] | None = None
    cluster: str | None = None


class _Sent(NamedTuple):
    """An input under way, the hash of its bytes, and what an earlier run says of it."""

    input: Input
    sha256: str | None
    before: Entry | None = None


def parse_archive(arguments: Sequence[str], options: Options, plan: Plan) -> int:
    """Read all that the arguments name; the exit status is that of `parse`."""
    listing = list_inputs(arguments, apart_from=plan.into)
    if plan.shard is not None:
        listing.inputs[:] = of_shard(listing.inputs, plan.shard)
    if plan.into is not None:
        without_clashes(listing, plan.into, ending_of(options.forms[0]), name_of(plan.shard))
    elif not spares_inputs(plan.targets, [*dict.fromkeys(one.path for one in listing.inputs)]):
        return NOT_READ
    for note in listing.notes:
        say(f"noticeparse: {visible(note)}")
    for name, why in listing.refused:
        say(f"noticeparse: {visible(name)}: {why}")
    run = _Archive(listing, options, plan)
    try:
        with _ended_like_interrupted():
            run.go()
    except NoCluster as error:
        say(f"noticeparse: --cluster: {error}")
        return NOT_READ
    except KeyboardInterrupt:
        if plan.into is not None:
            say("noticeparse: what is done is whole and in the manifest; --resume goes on from it")
        raise
    return run.status


@contextmanager
def _ended_like_interrupted() -> Iterator[None]:
    """A scheduler's request to end is taken like Ctrl-C, so that nothing is left half done."""

    def interrupt(*_: object) -> None:
        raise KeyboardInterrupt

    try:
        before = signal.signal(signal.SIGTERM, interrupt)
    except ValueError:  # not in the main thread, which alone gets signals
        yield
        return
    try:
        yield
    finally:
        signal.signal(signal.SIGTERM, before)


class _Archive:
    """One run: sends the inputs to be read, puts the records where they belong, keeps count."""

    def __init__(self, listing: Listing, options: Options, plan: Plan) -> None:
        self._inputs = listing.inputs
        self._refused_before = listing.refused
        self._options = options
        self._plan = plan
        self._zips = ZipReader()
        self._counts: Counter[str] = Counter(refused=len(listing.refused))
        self._entries: list[Entry] = []
        self._outputs = Outputs(plan.targets if plan.into is None else (), options.wishes)
        is_seen = self._outputs.is_terminal()
        self._progress = Progress(len(self._inputs), is_wanted=not is_seen)
        self.status = NOT_READ if listing.refused else READ

    def go(self) -> None:
        """Read and write everything.

        Raises NotWritable and NoCluster.
        """
        self._progress.begin(0)
        try:
            if self._plan.into is None:
                with self._outputs:
                    write_parts(self._outputs, self._all_parts())
            else:
                self._fill(self._plan.into)
        finally:
            self._progress.end()
            self._zips.close()

    def _all_parts(self) -> Iterator[Sequence[Part]]:
        """What each input gives to the outputs, in order."""
        for sent, done in self._results(None):
            if self._told(sent, done):
                yield done.parts

    def _fill(self, directory: str) -> None:
        try:
            os.makedirs(directory, exist_ok=True)
        except OSError as error:
            raise NotWritable(f"{directory}: cannot be made: {error.strerror}") from error
        manifest = Manifest(directory, name_of(self._plan.shard), self._options)
        if self._plan.is_resumed:
            try:
                manifest.take_up()
            except OSError as error:
                words = f"the manifest cannot be read: {error.strerror}"
                raise NotWritable(f"{directory}: {words}") from error
        manifest.begin()
        try:
            for sent, done in self._results(manifest):
                self._keep(manifest, directory, sent, done)
        finally:
            manifest.close()
        refused = [
            entry_of(name, "", None, None, Done(refusal=why), self._options)
            for name, why in self._refused_before
        ]
        manifest.finish([*self._entries, *refused])
        self._progress.end()
        say(self._summary(directory))

    def _keep(self, manifest: Manifest, directory: str, sent: _Sent, done: Done) -> None:
        """Put the output of an input in its place, then say so in the manifest."""
        if sent.before is not None:
            self._counts["kept"] += 1
            self._judge(sent.before["error"])
            self._entries.append(sent.before)
            self._progress.advance()
            return
        output = self._output(sent.input)
        place = os.path.join(directory, output)
        size = None
        if done.refusal is None:
            data = self._whole(done)
            size = len(data)
            done = _written(place, data, done)
        if done.refusal is not None and os.path.isfile(place):
            # Records of what the input was once would pass for those of what it is now.
            os.remove(place)
        self._told(sent, done)
        entry = entry_of(sent.input.name, output, size, sent.sha256, done, self._options)
        self._entries.append(entry)
        manifest.add(entry)

    def _whole(self, done: Done) -> bytes:
        """A whole output with nothing but what one input gives to it."""
        writer = new_writer(self._options.forms[0], self._options.wishes)
        text = writer.add(done.parts[0]) + writer.end()
        return text.encode("utf-8", "backslashreplace")

    def _results(self, manifest: Manifest | None) -> Iterator[tuple[_Sent, Done]]:
        plan = self._plan
        run: Run[_Sent] = in_this_process
        if plan.cluster is not None:
            run = partial(on_cluster, plan.cluster, plan.jobs)
        elif plan.jobs is not None and plan.jobs > 1:
            run = partial(in_processes, plan.jobs)
        return run(self._asked(one, manifest) for one in self._inputs)

    def _asked(self, one: Input, manifest: Manifest | None) -> Asked[_Sent]:
        try:
            data = self._bytes_of(one)
        except NotReadable as error:
            return Asked(_Sent(one, None), Done(refusal=str(error)))
        sha256 = hashlib.sha256(data).hexdigest()
        before = manifest.done_before(self._output(one), sha256) if manifest else None
        if before is not None:
            return Asked(_Sent(one, sha256, before), Done())
        return Asked(_Sent(one, sha256), Order(data, one.name, self._options))

    def _bytes_of(self, one: Input) -> bytes:
        if one.member is not None:
            return self._zips.read(one.path, one.member)
        with readable(one.path), open(one.path, "rb") as file:
            data = file.read(_MOST_BYTES + 1)
        if len(data) > _MOST_BYTES:
            raise NotReadable(f"longer than {_MOST_BYTES >> 20} MiB; read it by itself as jsonl")
        return data

    def _output(self, one: Input) -> str:
        return one.output + ending_of(self._options.forms[0])

    def _told(self, sent: _Sent, done: Done) -> bool:
        """Count a result and say what is wrong with it; whether there are records."""
        self._progress.advance()
        label = visible(sent.input.name)
        if done.refusal is not None:
            self._counts["refused"] += 1
            self.status = NOT_READ
            self._progress.say(f"noticeparse: {label}: {done.refusal}")
            return False
        self._counts["read"] += 1
        self._judge(done.counts.errors)
        if self._plan.into is None:  # else the manifest says so
            for line in told_of(done.counts, label, self._options.forms, self._options.wishes):
                self._progress.say(line)
        return True

    def _judge(self, errors: int) -> None:
        self._counts["with errors"] += bool(errors)
        if errors:
            self.status = max(self.status, WITH_ERRORS)

    def _summary(self, directory: str) -> str:
        """`12 files read, 1 of them with errors; 1 refused; 3 kept from before; see …`."""
        counts = self._counts
        words = [f"{counted(counts['read'], 'file')} read"]
        words += [f"{counts['kept']} kept from before"] if counts["kept"] else []
        words += [f"{counts['with errors']} with errors"] if counts["with errors"] else []
        words += [f"{counts['refused']} refused"] if counts["refused"] else []
        place = os.path.join(directory, name_of(self._plan.shard))
        return f"{', '.join(words)}; each is in {visible(place)}"


def _written(place: str, data: bytes, done: Done) -> Done:
    """The result, or a refusal where just this output cannot be written.

    Raises NotWritable where no other could be written either.
    """
    try:
        os.makedirs(os.path.dirname(place), exist_ok=True)
        with Outlet(place) as outlet:
            outlet.write_bytes(data)
    except OSError as error:
        if error.errno in _NOWHERE:
            raise NotWritable(f"{place}: cannot be written: {error.strerror}") from error
        return Done(refusal=f"its output cannot be written: {error.strerror}")
    except NotWritable as error:
        if not isinstance(error.__cause__, OSError) or error.__cause__.errno in _NOWHERE:
            raise
        return Done(refusal=f"its output cannot be written: {error.__cause__.strerror}")
    return done
