"""Fog signals, racons and AIS beside a light or alone."""

from __future__ import annotations

from typing import Any

import pytest

from noticeparse.readers.lights import read_aids, read_light
from tests.light_records import told

WITH_AIDS = [
    (
        "Fl(4)Y.20s5M Horn(2)30s Racon(K)",
        {"kind": "horn", "group": [2], "period_s": 30},
        {"morse": "K"},
        None,
    ),
    ("Q.G.1s (sync) V-AIS", None, None, {"virtual": True}),
    (
        "Fl.R.5s Whis AIS",
        {"kind": "whistle", "group": [], "period_s": None},
        None,
        {"virtual": False},
    ),
    ("Horn(2)30s", {"kind": "horn", "group": [2], "period_s": 30}, None, None),
    ("Siren 60s", {"kind": "siren", "group": [], "period_s": 60}, None, None),
    ("Bell (1) 20 s", {"kind": "bell", "group": [1], "period_s": 20}, None, None),
    ("Whis", {"kind": "whistle", "group": [], "period_s": None}, None, None),
    ("Racon(K)", None, {"morse": "K"}, None),
    ("racon (K)", None, {"morse": "K"}, None),
    ("Racon K", None, {"morse": "K"}, None),
    ("Racon", None, {"morse": None}, None),
    ("V-AIS", None, None, {"virtual": True}),
    ("AIS", None, None, {"virtual": False}),
    ("S-AIS", None, None, {"virtual": False}),
]


@pytest.mark.parametrize(
    ("text", "sound", "racon", "ais"), WITH_AIDS, ids=[r[0] for r in WITH_AIDS]
)
def test_aids_beside_a_light_or_alone(
    text: str,
    sound: dict[str, Any] | None,
    racon: dict[str, Any] | None,
    ais: dict[str, Any] | None,
) -> None:
    alone = text[:2] not in ("Fl", "Q.")
    reading = read_aids(text) if alone else read_light(text)
    dumped = [
        one and one.model_dump(mode="json") for one in (reading.sound, reading.racon, reading.ais)
    ]
    assert dumped == [sound, racon, ais]
    assert bool(reading.lights) is not alone
    assert reading.faults == ()


@pytest.mark.parametrize(
    ("text", "code", "stretch"),
    [
        ("Racon(KK K", "racon-letter-unreadable", "(KK K"),
        ("racon (a)", "racon-letter-unreadable", "(a)"),
        ("hello", "aid-unreadable", "hello"),
    ],
)
def test_unreadable_aids(text: str, code: str, stretch: str) -> None:
    reading = read_aids(text)
    assert told(text, reading.faults) == [(code, stretch)]
    assert reading.racon is None or reading.racon.morse is None
