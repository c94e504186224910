"""Families of faults within the character of one light: INT 1 section P, IALA rhythms."""

from __future__ import annotations

from random import Random

from tests.faults.planting import Family, of_phrases

_MARKS = ("light", "pier light")


def _in_light(rng: Random, faulty: str, clean: str) -> tuple[str, str]:
    mark = rng.choice(_MARKS)
    return f"{mark}, {faulty}", f"{mark}, {clean}"


def _flash_too_quick(rng: Random) -> tuple[str, str]:
    period = rng.choice(("0.5", "0.8", "1", "1.1"))
    letter = rng.choice("RGW")
    return _in_light(rng, f"Fl.{letter}.{period}s", f"Fl.{letter}.{rng.choice((2, 3, 5))}s")


def _group_too_quick(rng: Random) -> tuple[str, str]:
    group = rng.randint(3, 6)
    letter = rng.choice("RGW")
    quick = rng.randint(1, group)
    return _in_light(rng, f"Fl({group}){letter}.{quick}s", f"Fl({group}){letter}.{3 * group + 2}s")


def _group_too_large(rng: Random) -> tuple[str, str]:
    group = rng.randint(7, 30)
    return _in_light(rng, f"Fl({group})60s", f"Fl({rng.randint(2, 5)})20s")


def _period_short(rng: Random) -> tuple[str, str]:
    rhythm = rng.choice(("Iso", "Oc", "IQ"))
    return _in_light(rng, f"{rhythm}.{rng.choice(('0.5', '1', '1.5'))}s", f"{rhythm}.8s")


def _long_flash(rng: Random) -> tuple[str, str]:
    return _in_light(rng, f"LFl.{rng.choice(('1', '1.5', '2'))}s", "LFl.10s")


def _quick_period(rng: Random) -> tuple[str, str]:
    rhythm = rng.choice(("Q", "VQ", "UQ"))
    return _in_light(rng, f"{rhythm}.R.{rng.randint(2, 15)}s", f"{rhythm}.R")


def _fixed_period(rng: Random) -> tuple[str, str]:
    return _in_light(rng, f"F.R.{rng.randint(2, 15)}s4m3M", "F.R.4m3M")


def _fixed_group(rng: Random) -> tuple[str, str]:
    rhythm = rng.choice(("F", "Iso"))
    behind = "" if rhythm == "F" else "4s"
    return _in_light(
        rng, f"{rhythm}({rng.randint(2, 5)})R.{behind}4m3M", f"{rhythm}.R.{behind}4m3M"
    )


def _sectors(rng: Random) -> tuple[int, int, int]:
    first = rng.randint(10, 80)
    second = first + rng.randint(20, 80)
    return first, second, second + rng.randint(20, 80)


def _written(a: int, b: int, c: int, d: int, e: int, f: int) -> str:
    arcs = f"W {a:03d}°-{b:03d}°, R {c:03d}°-{d:03d}°, G {e:03d}°-{f:03d}°"
    return f"Fl.WRG.5s20m15-11M, {arcs}"


def _overlap(rng: Random) -> tuple[str, str]:
    a, b, c = _sectors(rng)
    into = rng.randint(1, 15)
    return _in_light(
        rng, _written(0, a, a - into if a > into else 0, b, b, c), _written(0, a, a, b, b, c)
    )


def _gap(rng: Random) -> tuple[str, str]:
    a, b, c = _sectors(rng)
    return _in_light(
        rng, _written(0, a, a, b, b + rng.randint(1, 2), c), _written(0, a, a, b, b, c)
    )


def _beyond_circle(rng: Random) -> tuple[str, str]:
    a, b, _ = _sectors(rng)
    beyond = rng.randint(361, 399)
    return _in_light(rng, _written(0, a, a, b, b, beyond), _written(0, a, a, b, b, 355))


def _colour_without_sector(rng: Random) -> tuple[str, str]:
    a, b, c = _sectors(rng)
    clean = _written(0, a, a, b, b, c)
    return _in_light(rng, clean.partition(", G")[0], clean)


def _strange_sector(rng: Random) -> tuple[str, str]:
    a, b, c = _sectors(rng)
    clean = _written(0, a, a, b, b, c)
    return _in_light(
        rng, clean.replace("G 0", "Y 0").replace("G 1", "Y 1").replace("G 2", "Y 2"), clean
    )


def _range_count(rng: Random) -> tuple[str, str]:
    return _in_light(rng, "Fl.WR.5s20m15/12/9M", "Fl.WR.5s20m15/12M")


def _range_order(rng: Random) -> tuple[str, str]:
    least, most = rng.randint(5, 10), rng.randint(11, 18)
    return _in_light(rng, f"Fl.WRG.5s20m{least}-{most}M", f"Fl.WRG.5s20m{most}-{least}M")


def _white_less(rng: Random) -> tuple[str, str]:
    least, most = rng.randint(5, 10), rng.randint(11, 18)
    letter = rng.choice("RG")
    return _in_light(
        rng, f"Fl.W{letter}.5s20m{least}/{most}M", f"Fl.W{letter}.5s20m{most}/{least}M"
    )


def _signal(rng: Random) -> tuple[str, str]:
    period = rng.choice((30, 60))
    horn = f"Horn({rng.randint(1, 3)}){period}s"
    return _in_light(rng, f"Fl.R.{period}s, {horn}", f"Fl.R.5s, {horn}")


FAMILIES: tuple[Family, ...] = (
    of_phrases("flash too quick", "light-flash-too-quick", _flash_too_quick),
    of_phrases("group too quick", "light-group-too-quick", _group_too_quick),
    of_phrases("group too large", "light-group-large", _group_too_large),
    of_phrases("period too short", "light-period-short", _period_short),
    of_phrases("long flash too quick", "light-long-flash-too-quick", _long_flash),
    of_phrases("quick light with a period", "light-quick-period", _quick_period),
    of_phrases("fixed light with a period", "light-fixed-with-period", _fixed_period),
    of_phrases("fixed light with a group", "light-group-impossible", _fixed_group),
    of_phrases("sectors overlap", "sector-overlap", _overlap),
    of_phrases("gap between sectors", "sector-gap-narrow", _gap),
    of_phrases("sector beyond the circle", "sector-bearing-too-great", _beyond_circle),
    of_phrases("colour without sector", "light-colour-without-sector", _colour_without_sector),
    of_phrases("sector of another colour", "sector-colour-not-of-light", _strange_sector),
    of_phrases("ranges for more colours", "light-range-count", _range_count),
    of_phrases("ranges exchanged", "light-range-order", _range_order),
    of_phrases("white shows less far", "light-range-white-less", _white_less),
    of_phrases("period of the fog signal", "light-period-of-signal", _signal),
)
"""Lights whose figures, colours and sectors disagree."""
