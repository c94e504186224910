"""Laws of the light reader: it never raises, and no figure is passed over."""

from __future__ import annotations

from typing import Any

from hypothesis import given
from hypothesis import strategies as st

from noticeparse.readers.light_sectors import read_sectors
from noticeparse.readers.lights import LightReading, read_aids, read_light
from tests.light_records import CATALOGUE


@given(st.text(alphabet=" .,()+-/&°'0123456789FlQVOcIsoMoALWRGBuYsmMfthorne\n", max_size=40))
def test_no_text_raises_and_faults_lie_within(text: str) -> None:
    for reading in (read_light(text), read_aids(text), read_sectors(text)):
        for fault in reading.faults:
            assert 0 <= fault.start <= fault.end <= len(text)
            assert fault.code in CATALOGUE


@given(st.text(max_size=30))
def test_no_characters_raise(text: str) -> None:
    # `SIREN` is a sound and no light: something is read, or a fault tells that nothing is.
    assert any(read_light(text))


PIECES = [
    *(
        "Fl",
        "Q",
        "VQ",
        "F",
        "LFl",
        "Oc",
        "Mo(A)",
        "Al",
        "FL",
        "(3)",
        "(2+1)",
        "(2W+1R)",
        "W",
        "WRG",
    ),
    *("5s", "l5s", "12m", "5M", "15-11M", "16/13/11M", "15,13M", "2F", "3", "7,5", "100", "269°"),
    *(".", " ", ",", "&", "W 171°-195°", "G 330°-010° (40°)", "(vis 180°-270°)", "W 100°-120° 9M"),
    *("R 045° to the shore", "(vert)", "(TE 2020)", "Horn", "30s", "(2)", "Racon(K)", "AIS"),
]


@given(
    st.lists(st.sampled_from(PIECES), min_size=1, max_size=7),
    st.sampled_from(["", " ", "."]),
    st.data(),
)
def test_no_figure_is_passed_over(pieces: list[str], between: str, data: st.DataObject) -> None:
    """Another figure in the same place gives another reading, or a fault stands there."""
    text = between.join(pieces)
    figures = [at for at, letter in enumerate(text) if letter.isdigit()]
    if not figures:
        return
    at = data.draw(st.sampled_from(figures))
    reading = read_light(text)
    if any(fault.start <= at < fault.end for fault in reading.faults):
        return
    other = read_light(f"{text[:at]}{(int(text[at]) + 1) % 10}{text[at + 1 :]}")
    assert _values(reading) != _values(other)


def _values(reading: LightReading) -> list[Any]:
    lights = [one.model_dump(exclude={"written"}) for one in reading.lights]
    stretches = [(fault.code, fault.start, fault.end) for fault in reading.faults]
    return [lights, reading.sound, reading.racon, reading.ais, stretches]
