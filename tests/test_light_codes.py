"""LITCHR and CATFOG against the code lists of S-57, as GDAL ships them."""

from __future__ import annotations

import typing

from noticeparse.readers.light_values import litchr_of, sound_of
from noticeparse.records.light import Rhythm
from tests.s57_tables import s57_table

LABELS = {
    "F": "fixed",
    "Fl": "flashing",
    "LFl": "long-flashing",
    "Q": "quick-flashing",
    "VQ": "very quick-flashing",
    "UQ": "ultra quick-flashing",
    "Iso": "isophased",
    "Oc": "occulting",
    "IQ": "interrupted quick-flashing",
    "IVQ": "interrupted very quick-flashing",
    "IUQ": "interrupted ultra quick-flashing",
    "Mo": "morse",
    "FFl": "fixed / flash",
    "Fl+LFl": "flash / long-flash",
    "OcFl": "occulting / flash",
    "FLFl": "fixed / long-flash",
    "Q+LFl": "quick-flash plus long-flash",
    "VQ+LFl": "very quick-flash plus long-flash",
    "UQ+LFl": "ultra quick-flash plus long-flash",
}
ALTERNATING_LABELS = {
    "Oc": "occulting alternating",
    "LFl": "long-flash alternating",
    "Fl": "flash alternating",
    "Al": "alternating",
    "F": "alternating",
    "FFl": "fixed and alternating flashing",
}


def s57_values(acronym: str) -> dict[int, str]:
    attributes, meanings = s57_table("s57attributes.csv"), s57_table("s57expectedinput.csv")
    code = next(row["Code"] for row in attributes if row["Acronym"] == acronym)
    return {int(row["ID"]): row["Meaning"] for row in meanings if row["Code"] == code}


def test_litchr_codes_are_those_of_s57() -> None:
    values = s57_values("LITCHR")
    for labels, is_alternating in ((LABELS, False), (ALTERNATING_LABELS, True)):
        for rhythm in typing.get_args(Rhythm):
            code = litchr_of(rhythm, alternating=is_alternating, plain_group=False)
            assert (values[code] if code is not None else None) == labels.get(rhythm)
    group = litchr_of("Fl", alternating=True, plain_group=True)
    assert group is not None
    assert values[group] == "group alternating"


def test_sounds_are_categories_of_s57() -> None:
    known = set(s57_values("CATFOG").values())
    words = ["Horn", "Siren", "Whis", "Whistle", "Bell", "Gong", "Dia", "Explos", "Reed", "Naut"]
    assert {sound_of(word) for word in (*words, "Nautophone", "Tyfon", "Foghorn")} <= known
