"""Hypothesis profiles, `--update-golden`, and what many tests read.

The laws take few draws, many with `NOTICEPARSE_LAWS=full`.  What is kept between runs is kept in a
folder of this run alone, so that every run also begins without it.
"""

from __future__ import annotations

import os
import shutil
import tempfile
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING

import pytest
from hypothesis import HealthCheck, settings

from noticeparse import parse
from noticeparse.store import VARIABLE, folder
from tests.command import BAD, GOOD
from tests.week import WEEK

if TYPE_CHECKING:
    import httpx2
    from playwright.sync_api import Browser

    from noticeparse.intake.composing import Composed
    from noticeparse.intake.kinds import Kind
    from noticeparse.records.bulletin import Bulletin

os.environ[VARIABLE] = tempfile.mkdtemp()

# What these assert is shown as fully as what a test does.
pytest.register_assert_rewrite(
    "tests.browser.waiting", "tests.comes_back", "tests.geojson_rules", "tests.stream_parts"
)

_SLOW = (HealthCheck.too_slow, HealthCheck.data_too_large, HealthCheck.filter_too_much)

# The same draws every time, so that a change is to blame for a failure and not the dice.
settings.register_profile(
    "few", max_examples=40, deadline=None, derandomize=True, suppress_health_check=_SLOW
)
settings.register_profile(
    "full", max_examples=3000, deadline=None, print_blob=True, suppress_health_check=_SLOW
)
settings.load_profile("full" if os.environ.get("NOTICEPARSE_LAWS") == "full" else "few")


def pytest_addoption(parser: pytest.Parser) -> None:
    parser.addoption(
        "--update-golden",
        action="store_true",
        help="write the expected JSON of the corpus anew; read the change before it is committed",
    )


def pytest_unconfigure() -> None:
    shutil.rmtree(os.environ[VARIABLE], ignore_errors=True)


@pytest.fixture
def in_this_process(monkeypatch: pytest.MonkeyPatch) -> None:
    """Files are read without a process for each; those of `test_intake_hostile` have theirs."""
    from noticeparse.intake import apart, child

    def read_here(data: bytes, kind: Kind) -> Composed:
        apart.require(kind)
        return child.reader_of(kind)(data)

    monkeypatch.setattr(apart, "read_apart", read_here)


@pytest.fixture
def cache_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """An empty cache folder."""
    monkeypatch.setenv(VARIABLE, str(tmp_path / "cache"))
    path = folder()
    assert path is not None
    return Path(path)


@pytest.fixture
def good(tmp_path: Path) -> str:
    """The name of a file with a notice that reads without an error."""
    path = tmp_path / "good.txt"
    path.write_text(GOOD, "utf-8")
    return str(path)


@pytest.fixture
def bad(tmp_path: Path) -> str:
    """The name of a file whose notice has 72 minutes."""
    path = tmp_path / "bad.txt"
    path.write_text(BAD, "utf-8")
    return str(path)


@pytest.fixture(scope="session")
def week() -> Bulletin:
    """What is read of a week of notices; records are frozen, so that all tests share it."""
    return parse(WEEK, name="w.txt")


@pytest.fixture(scope="session")
def client() -> Iterator[httpx2.Client]:
    """A client of an HTTP service with the usual limits; one service serves all tests."""
    from tests.service import client_of

    with client_of() as client:
        yield client


@pytest.fixture(scope="module")
def narrow() -> Iterator[httpx2.Client]:
    """A client of a service with limits that are soon met."""
    from tests.service import SMALL, client_of

    with client_of(SMALL) as client:
        yield client


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    """The one browser of all tests: playwright runs once in a process.

    Without playwright or a browser the tests that ask for it are skipped, and say why.
    """
    pytest.importorskip("playwright", reason="playwright is not installed")
    from tests.browser.chromium import chromium_path, launched

    if chromium_path() is None:
        pytest.skip("there is no Chromium on this machine: apt-get install chromium")
    with launched() as browser:
        yield browser
