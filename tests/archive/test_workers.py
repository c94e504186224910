"""Several processes, a cluster, signals: nothing half done, and the same bytes."""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
import threading
import time
from pathlib import Path
from typing import Any

import pytest

from noticeparse.archive import run as archive_run
from noticeparse.archive import runners
from noticeparse.archive.runners import Asked, Order, Pool, in_order
from noticeparse.archive.work import Done, Options, work
from noticeparse.console.outputs import Target
from noticeparse.writers import Part
from tests.archive.folder import entries, files_in
from tests.command import GOOD, invoke


def dies(data: bytes, name: str, options: Options) -> Done:
    """A worker that falls over one text, in a process of its own."""
    if name == "bad":
        os.kill(os.getpid(), signal.SIGKILL)
    return Done(parts=[Part(name)])


class TestWorkers:
    """A text that brings down its process costs itself alone."""

    def test_process_that_dies(self, monkeypatch: pytest.MonkeyPatch) -> None:
        monkeypatch.setattr(runners, "work", dies)
        names = ["a", "b", "bad", *"cdefghij"]
        asked = (Asked(one, Order(b"", one, Options(("json",)))) for one in names)
        pool = Pool(2)
        found = dict(in_order(pool, 3, asked))
        pool.close()
        assert list(found) == names
        assert {name: done.parts[0].body for name, done in found.items() if name != "bad"} == {
            one: one for one in names if one != "bad"
        }
        assert "the process that read it ended" in (found["bad"].refusal or "")

    def test_fault_of_the_program(self, folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        def fails(*_: Any, **__: Any) -> None:
            raise RecursionError("too deep")

        monkeypatch.setattr("noticeparse.archive.work.read_intake", fails)
        done = work(GOOD.encode(), "a.txt", Options(("json",)))
        assert done.refusal == "a fault of this program: RecursionError: too deep"


def started(*arguments: str) -> subprocess.Popen[bytes]:
    """The program under test, run in the directory that is the current one."""
    return subprocess.Popen(
        [sys.executable, "-m", "noticeparse", "parse", *arguments],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        start_new_session=True,
        # Where the tests run in the background, Ctrl-C would be ignored in what they begin.
        preexec_fn=lambda: signal.signal(signal.SIGINT, signal.SIG_DFL),
        env={**os.environ, "PYTHONPATH": str(Path(archive_run.__file__).parents[2])},
    )


@pytest.mark.skipif(sys.platform == "win32", reason="signals as POSIX has them")
@pytest.mark.parametrize("jobs", ["1", "2"])
def test_interrupted(folder: Path, jobs: str) -> None:
    """Ctrl-C leaves whole files, and a manifest from which the run goes on."""
    for number in range(60):
        (folder / f"n{number}.txt").write_text(GOOD * 160, "utf-8")
    manifest = Path("out/manifest.jsonl")
    run = started("archive", "--into", "out", "--jobs", jobs)
    # Large files, so that the run does not end while this waits for its turn.
    while b'"output":"n' not in (manifest.read_bytes() if manifest.exists() else b""):
        assert run.poll() is None
        time.sleep(0.02)
    os.killpg(run.pid, signal.SIGINT)
    # Time enough to end what was begun, also on a machine that has much else to do.
    _, told = run.communicate(timeout=300)
    assert run.returncode == 130
    assert b"--resume goes on from it" in told
    assert b"Traceback" not in told
    done = [one for one in entries(Path("out")) if one["output"]]
    assert 0 < len(done) < 60
    for name in files_in(Path("out")) - {"manifest.jsonl"}:
        json.loads((Path("out") / name).read_text("utf-8"))
    result = invoke("parse", "archive", "--into", "out", "--resume")
    assert f"{len(done)} kept from before" in result.stderr
    assert len(entries(Path("out"))) == 64


def test_reader_that_goes_away(folder: Path) -> None:
    run = started("archive", "--jobs", "2")
    assert run.stdout is not None
    assert run.stderr is not None
    run.stdout.close()
    told = run.stderr.read()
    run.stderr.close()
    assert run.wait(timeout=60) in (0, 1, 2)
    assert b"Traceback" not in told


class TestCluster:
    """The same job on dask.distributed."""

    def test_two_workers(self, folder: Path) -> None:
        distributed = pytest.importorskip("distributed", reason="needs the extra `cluster`")
        with distributed.LocalCluster(
            n_workers=2, threads_per_worker=1, dashboard_address=None, silence_logs=50
        ) as cluster:
            address = cluster.scheduler_address
            far = invoke("parse", "archive", "--cluster", address)
            invoke("parse", "archive", "--into", "far", "--cluster", address)
        near = invoke("parse", "archive")
        assert (far.stdout, far.stderr, far.exit_code) == (near.stdout, near.stderr, 2)
        invoke("parse", "archive", "--into", "near")
        for name in files_in(Path("near")):
            assert (Path("near") / name).read_bytes() == (Path("far") / name).read_bytes()

    def test_nobody_answers(self, folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        pytest.importorskip("distributed", reason="needs the extra `cluster`")
        monkeypatch.setattr("noticeparse.archive.cluster._WAIT_S", 1)
        result = invoke("parse", "archive", "--cluster", "tcp://127.0.0.1:9")
        assert (result.exit_code, result.stdout) == (2, "")
        assert "--cluster: no cluster answers" in result.stderr

    def test_without_the_extra(self, folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        monkeypatch.setitem(sys.modules, "distributed", None)
        result = invoke("parse", "archive", "--cluster", "local")
        assert result.exit_code == 2
        assert "needs the extra `cluster`" in result.stderr


def test_not_in_the_main_thread(folder: Path) -> None:
    """Signals are for the main thread alone; a run elsewhere goes without."""
    statuses: list[int] = []

    def go() -> None:
        plan = archive_run.Plan(targets=[Target("all.json", "json")])
        statuses.append(archive_run.parse_archive(["archive/b.txt"], Options(("json",)), plan))

    thread = threading.Thread(target=go)
    thread.start()
    thread.join()
    assert statuses == [1]
