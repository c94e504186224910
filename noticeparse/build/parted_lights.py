"""Lights whose letters stand apart, so that only a part of them is read as the character.

`V Q (3) 5 s` may be a very quick light, or a quick one behind a name of one letter; `Q. W. R.`
shows two colours, and `F.R.(2 vert)` is two lights.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator

from noticeparse.build.extents import within
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.rare import Rare
from noticeparse.records.action import Change
from noticeparse.records.feature import Feature
from noticeparse.records.light import Light
from noticeparse.stretch import Stretch, unquoted

_CLASS = Rare(
    r"(?<![A-Za-z0-9])(?<!No )(?<!No\. )(?:[VUI]|I[. ]{0,2}[VU])(?:\. ?| )Q(?![A-Za-z])",
    "i iu iv u v",
)
_COLOURS = Rare(
    r"(?<![A-Za-z])(?:[FQ]|[VUI]Q|L?Fl|Oc|Iso)(?: ?\([0-9+]{1,5}\))?[. ]{1,2}"
    r"(?P<colours>[WRG](?:\.? [WRG]){1,2})(?![A-Za-z0-9])(?! ?[0-9]{1,3}°)",
    "f fl iq iso lfl oc q uq vq",
)
_COUNT = Rare(r"\( ?[2-9] ?(?:vert|hor)[a-z]{0,8}\.? ?\)", "hor vert", re.IGNORECASE)


def parted_lights(
    context: Context, words: Stretch, features: Iterable[Feature], changes: Iterable[Change]
) -> Iterator[Fault]:
    """The faults of a phrase out of which these were read."""
    found_in = [light for one in features for light in (one.light, *one.more_lights) if light]
    lights = [*found_in, *(one.new for one in changes if isinstance(one.new, Light))]
    text = unquoted(words.text)
    for found in _CLASS.finditer(text):
        yield within(context, "light-letters-apart", words, found.span())
    for found in _COLOURS.finditer(text):
        letters = {char for char in found["colours"] if char.isalpha()}
        if not any(letters <= set(light.colours) for light in lights):
            yield within(context, "light-letters-apart", words, found.span())
    for found in _COUNT.finditer(text):
        yield within(context, "light-group-unreadable", words, found.span())
