"""Hypothesis profiles: few draws by default, many with `NOTICEPARSE_LAWS=full`."""

from __future__ import annotations

import os

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
