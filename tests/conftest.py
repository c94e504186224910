"""Hypothesis profiles (few draws, many with `NOTICEPARSE_LAWS=full`) and `--update-golden`."""

from __future__ import annotations

import os

import pytest
from hypothesis import HealthCheck, settings

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
