"""Gathers what a phrase tells and settles which kind of feature it names.

In come the segments of a phrase; out comes `Told`: the items of the feature itself, its
companions, and the item that names its kind.  The first segment that names a kind decides, within
it the last noun (`breakwater light` is a light), and a whole thing goes before a part of one.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import lru_cache
from typing import NamedTuple

from noticeparse.readers.depths import stated_kind
from noticeparse.readers.lights_behind_places import light_behind_place
from noticeparse.readers.lights_of_companions import with_lights_settled
from noticeparse.readers.names_beside import with_names
from noticeparse.readers.phrases import CompanionRun, Phrase, Role, Segment, divide, place
from noticeparse.readers.what_stays import what_stays
from noticeparse.readers.wordings_of_companions import wording_end
from noticeparse.readers.words import Item, look_up, proper_name
from noticeparse.vocabulary import DANGERS, Sense, kinds

# What `with` may add without a companion: it is told of the feature itself.
_OWN = frozenset(("light", "light_sector_change", "sector_light", "sounding"))
_DEPTH_KINDS = {
    "drying": "drying_height",
    "dredged": "dredged_area",
    "swept": "swept_area",
    "no_bottom": "depth_no_bottom",
}


class Companion(NamedTuple):
    """Something that goes with the feature, as a stretch of the text."""

    role: Role
    start: int
    end: int


class Told(NamedTuple):
    """What a phrase tells of one feature."""

    items: tuple[Item, ...]
    companions: tuple[Companion, ...]
    head: Item | None
    """The item that names the kind, None where no word does."""
    first_words: tuple[Item, ...]
    """The items of the first segment's first run, in which a new item of a list begins."""
    lost: tuple[Item, ...]
    """Figures with a unit behind `over`, `near` and the like, where no thing is named."""
    after_head: Item | None
    """A word without meaning directly behind the kind: the real noun may be that one."""

    def roles(self, role: str) -> Iterator[Item]:
        """The items of one role."""
        return (item for item in self.items if item.role == role)


@lru_cache(maxsize=4096)
def told_by(text: str) -> Told:
    """What the segments of a phrase tell; a legend tells nothing of a feature."""
    return _gather(text, divide(text))


def _gather(text: str, phrase: Phrase) -> Told:
    runs: list[list[Item]] = []
    companions: list[Companion] = []
    lost: list[Item] = []
    opening: list[Sequence[Item]] = []
    for index, segment in enumerate(with_lights_settled(phrase.segments)):
        own = _own_runs(segment, companions, lost, opens=index == 0)
        if index and [item.value for item in own[0]] == ["radar_reflector"]:
            # `light-buoy, Fl.R.5s, radar reflector`
            companions.append(Companion("with", own[0][0].start, own[0][0].end))
            own[0] = []
        opening.append(own[0])
        runs += own
    for at, one in enumerate(companions):
        end = wording_end(text, one.start, one.end, phrase.segments)
        companions[at] = one._replace(end=end)
        runs = [[item for item in run if not one.end <= item.start < end] for run in runs]
    head, run = _head(runs)
    head = _without_place_name(run, head)
    head, run = light_behind_place(opening, head, run)
    if head is not None and run is not runs[0] and _is_trailing(runs[0], head):
        # `virtual AIS, topmark N cardinal`: the aid is the thing.
        head, run = None, ()
    return Told(
        items=with_names(text, [item for one in runs for item in one], head),
        companions=tuple(companions),
        head=head,
        first_words=tuple(runs[0]) if runs and phrase.segments[0].pieces else (),
        lost=tuple(lost),
        after_head=_word_behind(head, run),
    )


def _own_runs(
    segment: Segment, companions: list[Companion], lost: list[Item], *, opens: bool
) -> list[list[Item]]:
    own = _with_lit_structure(look_up(segment.pieces, opens=opens))
    stays = what_stays(own, opens=opens)
    if stays is not None:
        # What goes with a thing that is retained goes with it too.
        return [_joined(own[:stays])[0] + _denials(own[stays:])]
    before, joined = _joined(own)
    if joined is not None:
        companions.append(joined)
    runs = [before]
    for companion in segment.companions:
        items = _with_lit_structure(look_up(companion.pieces))
        if _is_own(companion, items):
            runs.append(items)
        elif named := _named(companion, items):
            companions.append(named)
        else:
            lost += [item for item in items if item.role == "measure"]
            # `W over 200°`: how wide a sector is, not where it lies.
            is_beside = companion.role == "beside"
            lost += [item for item in items if item.role == "bearing" and is_beside]
    return runs


def _denials(items: Sequence[Item]) -> list[Item]:
    return [item for item in items if item.role == "negation"]


def _is_own(companion: CompanionRun, items: Sequence[Item]) -> bool:
    if companion.role != "with":
        return False
    named = [item for item in items if item.role == "kind" and not item.bracketed]
    described = any(item.role == "topmark" for item in items)
    # `and associated 10m contour` is drawn besides; its depth is not that of the feature.
    if any(item.role == "depth" and stated_kind(item.text)[0] == "contour" for item in items):
        return False
    return all(item.value in _OWN or (described and item.value == "topmark") for item in named)


def _named(companion: CompanionRun, items: Sequence[Item]) -> Companion | None:
    """The companion where its words name a kind; `on Brannoch Rock` is a place, not a rock."""
    tokens = companion.pieces
    if proper_name(tokens, whole=True):
        return None
    if not any(item.role in ("kind", "depth", "racon", "sound", "ais") for item in items):
        return None
    return Companion(companion.role, place(tokens[0])[0], place(tokens[-1])[1])


def _joined(items: list[Item]) -> tuple[list[Item], Companion | None]:
    """Parts `wreck and contour` at the `and` between two kinds; the second goes with the first."""
    named = [at for at, item in enumerate(items) if _is_named(item)]
    if len(named) < 2:
        return items, None
    for at in range(named[0] + 1, named[-1]):
        one = items[at]
        if one.role == "plain" and one.text.lower() == "and" and not one.bracketed:
            return items[:at], Companion("with", items[at + 1].start, items[-1].end)
    return items, None


def _is_named(item: Item) -> bool:
    return item.role in ("kind", "depth") and not item.bracketed


def _with_lit_structure(items: list[Item]) -> list[Item]:
    """Reads `By` beside its category or behind a colour as a buoy, else as no word of the trade.

    In front it is one where nothing else is named: `BY PORT HAND`, not the paint of `BY buoy`.
    """
    for at, item in enumerate(items):
        if item.role == "structure":
            ahead = items[at - 1] if at else None
            lit = ahead is not None and ahead.value == "light"
            described = ahead is not None and ahead.role in ("category", "shape", "colour", "lit")
            if lit or described or (at == 0 and _opens_with_buoy(items)):
                sense = Sense("kind", item.value, {}, lit=lit)
                items[at] = item._replace(role="kind", sense=sense)
            else:
                items[at] = item._replace(role="unknown", sense=None)
    return items


def _opens_with_buoy(items: Sequence[Item]) -> bool:
    """Whether a short word in capitals is the thing that its category behind it describes."""
    short, *behind = items
    named = any(_is_named(item) for item in behind)
    return short.text[0] == "B" and bool(behind) and behind[0].role == "category" and not named


def _head(runs: Sequence[list[Item]]) -> tuple[Item | None, Sequence[Item]]:
    for at, run in enumerate(runs):
        named = [_as_kind(item) for item in run if not item.bracketed]
        found = [item for item in named if item is not None]
        if not found:
            continue
        whole = [item for item in _before_of(run, found) if not kinds()[item.value].part]
        head = (whole or found)[-1]
        light = any(item.value == "light" for item in whole[:-1])
        if light and kinds()[head.value].form and head.sense is not None:
            # `port light can buoy`: the word light belongs to the mark.
            head = head._replace(sense=head.sense._replace(lit=True))
        return (_danger_behind(runs[at + 1 :]) if head.role == "depth" else None) or (head, run)
    return None, ()


def _danger_behind(runs: Sequence[list[Item]]) -> tuple[Item, Sequence[Item]] | None:
    """The danger of `depth 5m, wreck`, whose depth stands first; none behind other nouns."""
    for run in runs:
        kinds_named = [item for item in run if item.role == "kind" and not item.bracketed]
        if not kinds_named:
            continue
        head, ahead = kinds_named[0], run[: run.index(kinds_named[0])]
        is_danger = kinds()[head.value].s57 in DANGERS or head.value == "shoal"
        is_led = any(item.role in ("plain", "unknown") for item in ahead)
        return (head, run) if is_danger and len(kinds_named) == 1 and not is_led else None
    return None


_TRAILING = frozenset(("topmark", "retroreflector", "radar_reflector"))
_VALUES = frozenset(("light", "light_words", "sound", "racon", "ais"))


def _is_trailing(first: Sequence[Item], head: Item) -> bool:
    """Whether a noun behind a value is only a part of what the value names."""
    return head.value in _TRAILING and any(item.role in _VALUES for item in first)


# What lies there by nature; an aid named close behind stands on it.
_NATURAL = frozenset(("UWTROC", "LNDARE", "LNDRGN", "LNDELV", "SEAARE", "SBDARE", "OBSTRN"))
# What is built in a port gives its name to an aid as well; a light behind it may be its own.
_WORKS = frozenset(("SLCONS", "BRIDGE", "CAUSWY", "GATCON", "DAMCON"))
_AIDS = frozenset(("racon", "sound", "light"))


def _without_place_name(run: Sequence[Item], head: Item | None) -> Item | None:
    """The aid in `BRANNOCH ROCK FOG SIGNAL`, none where values name it: `BRANNOCH ROCK RACON`."""
    if head is None or kinds()[head.value].s57 not in _NATURAL | _WORKS:
        return head
    behind = next((item for item in run if item.start >= head.end), None)
    if behind is None or behind.start - head.end > 1:
        return head
    if behind.role in _AIDS:
        is_works = kinds()[head.value].s57 in _WORKS
        return head if is_works and behind.role == "light" else None
    return behind if behind.value == "fog_signal" else head


RELATIONS = frozenset(
    "round around about at by in over under above below behind before beside past through along"
    " near from against inside outside upon towards beyond within amid among opposite".split()
)
"""Words that tell where a thing lies: the noun before them is the thing."""


def _before_of(run: Sequence[Item], found: list[Item]) -> list[Item]:
    """In `limit of X`, `rock in channel` and `berth for ferries` the first noun is the thing."""
    for item in run:
        if item.role in ("plain", "unknown") and item.text.lower() in RELATIONS | {"of", "for"}:
            before = [one for one in found if one.end <= item.start]
            if any(not kinds()[one.value].part for one in before):
                return before
    return found


def _as_kind(item: Item) -> Item | None:
    """The item as the name of a kind; a stated depth or contour names one too."""
    if item.role == "kind":
        return item
    if item.role == "depth":
        kind = depth_kind(item.text, alone=False)
        return item._replace(sense=Sense("kind", kind, {})) if kind else None
    return None


def depth_kind(text: str, *, alone: bool) -> str | None:
    """The kind of feature that a stated depth is, None where it only describes one.

    `least depth 7₇` is a sounding where nothing else names the feature (`alone`).
    """
    kind, quality = stated_kind(text)
    plain = text.lower()
    if kind == "contour":
        return "depth_contour"
    if plain.startswith("drying height"):
        return "drying_height"
    if not alone:
        is_stated = kind == "sounding" and quality != "depth unknown"
        return "sounding" if is_stated and plain.startswith(("depth", "sounding")) else None
    if (quality or "").startswith("value reported"):
        return "reported_depth"
    return _DEPTH_KINDS.get(kind, "sounding")


def _word_behind(head: Item | None, run: Sequence[Item]) -> Item | None:
    if head is None:
        return None
    behind = [item for item in run if item.start >= head.end and not item.bracketed]
    return behind[0] if behind and behind[0].role == "unknown" else None
