"""Families of faults of marks and lights, drawn as INT 1 sections P and Q write them."""

from __future__ import annotations

from random import Random

from tests.faults.planting import Family, Phrases, of_phrases

_SIDES = ("port-hand", "starboard-hand")
_HUES = {"R": "red", "G": "green"}
_PERIODS = (2, 3, 4, 5, 6, 10)
_QUARTERS = {
    "north": ("BY", "2 cones points up", ("Q", "VQ")),
    "east": ("BYB", "2 cones base to base", ("Q(3)10s", "VQ(3)5s")),
    "south": ("YB", "2 cones points down", ("Q(6)+LFl.15s", "VQ(6)+LFl.10s")),
    "west": ("YBY", "2 cones point to point", ("Q(9)15s", "VQ(9)10s")),
}
_TOPMARKS = {
    "isolated danger": "2 spheres", "safe water": "sphere", "special": "X-shape",
    "port-hand": "can", "starboard-hand": "cone point up",
}  # fmt: skip
_PAINT = {"isolated danger": "BRB", "safe water": "RW", "special": "yellow"}
_LIGHTS = {
    "isolated danger": ("Fl(2)5s", "Fl(2)10s"),
    "safe water": ("Iso.4s", "Oc.6s", "LFl.10s", "Mo(A)6s"),
    "special": ("Fl.Y.3s", "Fl(4)Y.20s", "Fl.Y.5s"),
}


def _light(rng: Random, letter: str) -> str:
    """A plain rhythm of a lateral mark."""
    group = rng.choice(("", "", "(2)", "(3)"))
    period = 10 if group else rng.choice(_PERIODS)
    return f"Fl{group}{letter}.{period}s" if group else f"Fl.{letter}.{period}s"


def _other(rng: Random, among: tuple[str, ...], one: str) -> str:
    return rng.choice([each for each in among if each != one])


# Lateral marks


def _paint_against_light(rng: Random) -> tuple[str, str]:
    letter = rng.choice("RG")
    head = rng.choice(("{} light-buoy", "{} pillar light-buoy", "{} light-beacon"))
    mark = head.format(_HUES[letter])
    return f"{mark}, {_light(rng, 'RG'.replace(letter, ''))}", f"{mark}, {_light(rng, letter)}"


def _named_paint_against_light(rng: Random) -> tuple[str, str]:
    letter = rng.choice("RG")
    # Of region A, as the marks around it are.
    side = "port" if letter == "R" else "starboard"
    mark = f"{side}-hand light-buoy, {_HUES[letter]}"
    return f"{mark}, {_light(rng, 'RG'.replace(letter, ''))}", f"{mark}, {_light(rng, letter)}"


def _strange_paint(rng: Random) -> tuple[str, str]:
    side = rng.choice(_SIDES)
    right = "red" if side == "port-hand" else "green"
    wrong = rng.choice(("yellow", "black", "white", "blue", "YBY"))
    return f"{side} buoy, {wrong}", f"{side} buoy, {right}"


def _strange_light(rng: Random) -> tuple[str, str]:
    side = rng.choice(_SIDES)
    right = "R" if side == "port-hand" else "G"
    return f"{side} light-buoy, {_light(rng, rng.choice('WY'))}", (
        f"{side} light-buoy, {_light(rng, right)}"
    )


def _lateral_topmark(rng: Random) -> tuple[str, str]:
    side = rng.choice(_SIDES)
    right = _TOPMARKS[side]
    wrong = _other(rng, tuple(_TOPMARKS.values()), right)
    return f"{side} buoy, topmark {wrong}", f"{side} buoy, topmark {right}"


def _lateral_shape(rng: Random) -> tuple[str, str]:
    side = rng.choice(_SIDES)
    right, wrong = ("can", "conical") if side == "port-hand" else ("conical", "can")
    return f"{side} {wrong} buoy", f"{side} {right} buoy"


def _composite(rng: Random) -> tuple[str, str]:
    side = rng.choice(_SIDES)
    letter = "R" if side == "port-hand" else "G"
    period = rng.choice((10, 12, 15))
    return f"{side} light-buoy, Fl(2+1){letter}.{period}s", (
        f"{side} light-buoy, {_light(rng, letter)}"
    )


def _preferred_rhythm(rng: Random) -> tuple[str, str]:
    way = rng.choice(("port", "starboard"))
    letter = "G" if way == "port" else "R"
    mark = f"preferred channel to {way} light-buoy"
    return f"{mark}, {_light(rng, letter)}", f"{mark}, Fl(2+1){letter}.10s"


def _preferred_paint(rng: Random) -> tuple[str, str]:
    way = rng.choice(("port", "starboard"))
    bands = "GRG" if way == "port" else "RGR"
    wrong = rng.choice(("BRB", "BYB", "black and red", "RG"))
    return f"preferred channel to {way} buoy, {wrong}", f"preferred channel to {way} buoy, {bands}"


def _side_words(rng: Random, region: str) -> tuple[str, str]:
    """A mark of the other region, and one of this."""
    side = rng.choice(_SIDES)
    right = "R" if (side == "port-hand") == (region == "A") else "G"
    wrong = "RG".replace(right, "")
    if rng.random() < 0.5:
        return (
            f"{side} light-buoy, {_light(rng, wrong)}",
            f"{side} light-buoy, {_light(rng, right)}",
        )
    return f"{side} buoy, {_HUES[wrong]}", f"{side} buoy, {_HUES[right]}"


def _of_region_b(rng: Random) -> tuple[str, str]:
    return _side_words(rng, "A")


def _two_regions(rng: Random) -> tuple[Phrases, Phrases]:
    # The other marks that the generator draws are of region A.
    first = _side_words(rng, "A")[1]
    wrong, right = _side_words(rng, "A")
    return (first, wrong), (first, right)


# Other marks


def _cardinal_light(rng: Random) -> tuple[str, str]:
    quarter = rng.choice(list(_QUARTERS))
    right = rng.choice(_QUARTERS[quarter][2])
    wrong = rng.choice(_QUARTERS[_other(rng, tuple(_QUARTERS), quarter)][2])
    mark = f"{quarter} cardinal light-buoy"
    return f"{mark}, {rng.choice((wrong, 'Q.R', 'Fl.5s', 'Q(4)10s'))}", f"{mark}, {right}"


def _cardinal_bands(rng: Random) -> tuple[str, str]:
    quarter = rng.choice(list(_QUARTERS))
    wrong = _QUARTERS[_other(rng, tuple(_QUARTERS), quarter)][0]
    mark = f"{quarter} cardinal buoy"
    return f"{mark}, {rng.choice((wrong, 'red', 'BRB'))}", f"{mark}, {_QUARTERS[quarter][0]}"


def _cardinal_topmark(rng: Random) -> tuple[str, str]:
    quarter = rng.choice(list(_QUARTERS))
    wrong = _QUARTERS[_other(rng, tuple(_QUARTERS), quarter)][1]
    mark = f"{quarter} cardinal buoy, topmark"
    return f"{mark} {wrong}", f"{mark} {_QUARTERS[quarter][1]}"


def _other_light(rng: Random) -> tuple[str, str]:
    name = rng.choice(list(_LIGHTS))
    right = rng.choice(_LIGHTS[name])
    wrong = rng.choice(("Q(3)10s", "Fl(3)W.15s", "Fl.R.5s", "VQ(9)W.10s", "Oc(2)G.8s"))
    if name == "special":
        wrong = rng.choice(("Fl.W.5s", "Fl.R.5s", "Fl(4)W.20s"))
    mark = f"{name} light-buoy"
    return f"{mark}, {wrong}", f"{mark}, {right}"


def _other_paint(rng: Random) -> tuple[str, str]:
    name = rng.choice(list(_PAINT))
    wrong = rng.choice(("BYB", "green", "RGR", "blue"))
    return f"{name} buoy, {wrong}", f"{name} buoy, {_PAINT[name]}"


def _other_topmark(rng: Random) -> tuple[str, str]:
    name = rng.choice(list(_PAINT))
    wrong = _other(rng, tuple(_TOPMARKS.values()), _TOPMARKS[name])
    return f"{name} buoy, topmark {wrong}", f"{name} buoy, topmark {_TOPMARKS[name]}"


def _wreck_light(rng: Random) -> tuple[str, str]:
    mark = "emergency wreck-marking light-buoy, blue and yellow vertical stripes"
    return f"{mark}, {rng.choice(('Fl.Y.3s', 'Al.BuY.10s', 'Fl.R.3s', 'Q'))}", f"{mark}, Al.BuY.3s"


MARKS = (
    of_phrases("paint against light", "mark-colour-light", _paint_against_light),
    of_phrases("lateral paint against light", "mark-colour-light", _named_paint_against_light),
    of_phrases("lateral paint of neither region", "mark-lateral-colours", _strange_paint),
    of_phrases("lateral light of neither region", "mark-lateral-light", _strange_light),
    of_phrases("lateral topmark", "mark-lateral-topmark", _lateral_topmark),
    of_phrases("lateral shape", "mark-lateral-shape", _lateral_shape),
    of_phrases("composite group on a lateral mark", "mark-lateral-composite", _composite),
    of_phrases("rhythm of a preferred channel", "mark-preferred-rhythm", _preferred_rhythm),
    of_phrases("paint of a preferred channel", "mark-preferred-colours", _preferred_paint),
    of_phrases("marks of two regions", "mark-region", _two_regions),
    of_phrases("mark of region B in region A", "mark-region", _of_region_b, region="A"),
    of_phrases("cardinal light", "mark-cardinal-light", _cardinal_light),
    of_phrases("cardinal bands", "mark-cardinal-colours", _cardinal_bands),
    of_phrases("cardinal topmark", "mark-cardinal-topmark", _cardinal_topmark),
    of_phrases("light of another mark", "mark-light", _other_light),
    of_phrases("paint of another mark", "mark-colours", _other_paint),
    of_phrases("topmark of another mark", "mark-topmark", _other_topmark),
    of_phrases("light of a wreck mark", "mark-light", _wreck_light),
)
"""Marks whose parts disagree."""

FAMILIES: tuple[Family, ...] = MARKS
