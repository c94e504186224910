"""Verbs that the words behind them turn into others.

The forms of an erratum, `Read A for B`, `For B read A` and `For B substitute A`; an amendment of
a position, which is a move; an amendment of one thing into another and an insertion in place of
another thing, which are replacements.
"""

from __future__ import annotations

import re

from noticeparse.build.replaced_behind import is_in_place
from noticeparse.context import Context
from noticeparse.layout.drafts import Item
from noticeparse.rare import Rare
from noticeparse.readers.features import has_kind, leads_feature, value_property
from noticeparse.readers.one_for_other import puts_one_for_other
from noticeparse.readers.places import split_phrase
from noticeparse.readers.swaps import (
    is_bare,
    names_both,
    read_swap,
    things_stand_alone,
)
from noticeparse.readers.verbs import Verb, canonical_verb
from noticeparse.stretch import Stretch, gather

_REPLACES = Rare(
    r"(?P<joint>,? (?P<open>\()?(?:(?:which )?replaces|replacing|to replace|in place of|in lieu of"
    r"|instead of) (?:(?:the|an?) )?)(?P<old>[^()\[\],;:]+)(?P<close>\)?)[ ,]*",
    "lieu of replace",
    re.IGNORECASE,
)
_IN_PLACE_OF = Rare(r" (?:in place of|instead of|in lieu of|vice) ", "lieu of vice", re.IGNORECASE)
_ERRATA = ("read", "for")
_READS = (" read: ", " read ", ", substitute ", " substitute ")
_POSITION_OF = re.compile(r"(?:the )?(?:charted )?positions? of (?:the )?", re.IGNORECASE)


def settled(context: Context, item: Item, words: Stretch) -> tuple[Verb | None, Stretch]:
    """The verb that an item means, and its words; no verb where nobody can read it."""
    written = item.verb or ""
    verb = canonical_verb(written) if written else None
    if verb is None:
        return None, words
    if written.lower() in _ERRATA:
        verb, words = _of_erratum(verb, written.lower(), words)
    elif verb == "amend":
        verb, words = _of_conversion(words)
    elif is_in_place(context, item, verb):
        return "replace", words
    elif written.lower() == "show":
        verb, words = _shown_as(item, verb, words)
    verb, words = _of_position(context, item, verb, words)
    return _of_exchange(verb, words)


def _of_exchange(verb: Verb, words: Stretch) -> tuple[Verb, Stretch]:
    """A replacement, where a thing is put in the place of another: `Put A in place of B`.

    So does `Insert A for B`, where both are of one sort.

    `A (replaces B)` becomes `A for B` of the same length, so that offsets stay.
    """
    if verb != "insert":
        return verb, words
    if puts_one_for_other(words.text):
        return "replace", words
    joint = _IN_PLACE_OF.search(words.text)
    if joint is not None and "(" not in words.text[joint.start() - 1 : joint.start() + 2]:
        sides = words.text[: joint.start()], words.text[joint.end() :]
        is_swap = any(map(has_kind, sides)) and all(has_kind(one) or is_bare(one) for one in sides)
        return ("replace" if is_swap else verb), words
    told = next((t for t in _REPLACES.finditer(words.text) if t.end() == len(words.text)), None)
    if told is None or bool(told["open"]) != bool(told["close"]):
        return verb, words
    before, old = words.text[: told.start()], told["old"]
    if not (has_kind(before) and (leads_feature(old) or is_bare(old))):
        return verb, words
    text = before + " for ".ljust(len(told["joint"])) + old
    return "replace", words._replace(text=text.ljust(len(words.text)))


def _of_erratum(verb: Verb, written: str, words: Stretch) -> tuple[Verb, Stretch]:
    """The verb and the words of an item whose verb is `read` or `for`.

    Without a joint they stay as given.  Two features give way to each other, anything else is an
    amendment.  The joint is written in the words of other items, in as many characters, so that
    offsets stay.
    """
    if written == "read" and " for " in words.text:
        return "replace", words
    plain = words.text.lower()
    joint = next((one for one in _READS if one in plain), None)
    if written != "for" or joint is None:
        return verb, words
    at = plain.index(joint)
    before, after = words.text[:at], words.text[at + len(joint) :]
    is_swap = has_kind(before.lstrip(": ")) and has_kind(after)
    lead = before.replace(":", " ", 1) if before.startswith(":") else before
    link = (" by " if is_swap else " to ").ljust(len(joint))
    return "replace" if is_swap else "amend", words._replace(text=lead + link + after)


_AS = re.compile(
    r"(?<!such)(?<!well)(?<!far) as (?!well|such|far|shown|charted|above|below|follows|per\b|in\b)"
    r"(?:an? |the )?(?=\S)",
    re.IGNORECASE,
)
_STATES = frozenset(("lit", "light", "status", "colour", "measure", "depth", "negation", "plain"))


def _shown_as(item: Item, verb: Verb, words: Stretch) -> tuple[Verb, Stretch]:
    """What stands on the chart and is to be shown otherwise: `Show rock as wreck`.

    Another thing replaces it; another state of it, `light as extinguished`, is an amendment.
    """
    joints = list(_AS.finditer(words.text))
    if len(joints) != 1 or '"' in words.text:
        return verb, words
    end = split_phrase(words.text).description_end if item.groups else len(words.text)
    before = words.text[: joints[0].start()]
    whole = words.text[joints[0].end() :]
    after = words.text[joints[0].end() : end].strip(" ,;:") or whole
    if not has_kind(before):
        return verb, words
    roles = value_property(after)
    is_thing = leads_feature(after)
    if not is_thing and not (roles and roles <= _STATES):
        return verb, words
    link = (" by " if is_thing else " to ").ljust(len(joints[0][0]))
    return "replace" if is_thing else "amend", words._replace(text=before + link + whole)


_INTO = re.compile(r",? into (?=\S)", re.IGNORECASE)
_TO_READ = re.compile(r" to read (?=[a-z])", re.IGNORECASE)
_MARKS = ("buoy", "light_buoy", "beacon", "light_beacon", "light_float", "light_vessel")
# What words of a change may name without naming a thing that becomes another.
_NO_THINGS = frozenset(("unknown", "sounding", "legend", "note", "topmark"))


def _of_conversion(words: Stretch) -> tuple[Verb, Stretch]:
    """A replacement, where one thing becomes another: `Change spar buoy into light-buoy Fl.G.4s`.

    A new state of the same thing, `light into Fl.G.4s`, stays an amendment.
    """
    plain, count = _INTO.subn(lambda found: " to ".rjust(len(found.group())), words.text)
    plain = _TO_READ.sub(lambda found: " to ".rjust(len(found.group())), plain)
    if count > 1 or " to " not in plain.lower() or not names_both(plain):
        return "amend", words  # `light to Fl.G.4s`: no mark becomes another
    swap = read_swap(plain)
    if swap.is_by_for or any(fault.code == "swap-not-divided" for fault in swap.faults):
        return "amend", words  # `light for buoy No 4 to Fl.R.5s`
    old, new = swap.feature, swap.replacement
    are_marks = all(one.kind.startswith(_MARKS) for one in (old, new))
    differ = old.kind != new.kind and _NO_THINGS.isdisjoint((old.kind, new.kind))
    differ = differ and (count == 1 or things_stand_alone(plain))
    return ("replace", words._replace(text=plain)) if are_marks or differ else ("amend", words)


def _of_position(context: Context, item: Item, verb: Verb, words: Stretch) -> tuple[Verb, Stretch]:
    """A move, where `position of the buoy` is amended from one place to another."""
    opening = _POSITION_OF.match(words.text)
    leads = [gather(context.text, group.lead).text.strip(" ,") for group in item.groups]
    if verb != "amend" or opening is None or "to" not in (lead.lower() for lead in leads[1:]):
        return verb, words
    return "move", words.part(opening.end(), len(words.text))
