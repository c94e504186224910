"""Signs that the words of an item are not whole: a command within, a lost bracket, odd letters."""

from __future__ import annotations

import re
from itertools import pairwise

from noticeparse.build.extents import quoting, within
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.rare import Rare
from noticeparse.readers.broken_verbs import broken_verb_end
from noticeparse.readers.misspelt_verbs import misspelt_verb
from noticeparse.readers.places import read_phrase
from noticeparse.readers.verbs import Verb, are_contrary, canonical_verb
from noticeparse.stretch import Stretch, blanked, gather, unquoted

# A command among the words of another: its item was not told apart.  Quotations are no commands.
_COMMAND_WITHIN = Rare(
    r"(?<=[a-z0-9,;] )"
    r"(?:insert|add|delete|remove|expunge|replace|amend|relocate|withdraw|substitute)"
    r'(?= [a-z])(?=[^"]*(?:"[^"]*"[^"]*)*$)',
    "add amend delete expunge insert relocate remove replace substitute withdraw",
    re.IGNORECASE,
)
# Words that tell of a second change: `delete the wreck in P, substituting a depth of 4 m`.
_TELLS_MORE = Rare(
    r"\b(?:substituting|inserting|being (?:inserted|established|added|substituted|moved)"
    r"|in (?:its|their) (?:place|stead)|instead)\b(?! of)"
    r'(?=[^"]*(?:"[^"]*"[^"]*)*$)',
    "being instead its substituted their",
    re.IGNORECASE,
)
_SECOND = re.compile(
    r"[:.,/ -]{0,3}(?:or |and |then |to )?(?P<verb>insert|add|delete|remove|expunge|replace"
    r"|amend|move|relocate|withdraw|substitute|cancel|erase|alter|change|correct|modify"
    r"|establish)"
    r"(?=[:.,/]{0,2} \S)",
    re.IGNORECASE,
)
_IN_ITS_PLACE = re.compile(r"in (?:its|their) (?:place|stead),? ", re.IGNORECASE)
# A noun that opens an item of its own: `Increase in the range of the light`.
_NOUN_WITHIN = Rare(
    r"(?:(?<![\s\S])|(?<=[.;:] ))(?:(?!(?:obstruction|exten|sec|por|posi|eleva|direc|founda|loca"
    r"|sta|junc|jetty|moor|build|land|forma|cross|depress|mark|sound|shoal)\w*)"
    r"[A-Za-z-]{2,14}(?:tion|ment|ance|sure|sion|ease|ing)"
    r"|removal|withdrawal|change|transfer|shift|move|disposal|renewal|survey) (?:of|in|to) ",
    "in of to",
    re.IGNORECASE,
)
PROPERTY_AHEAD = re.compile(
    r"^(?:the )?(?:(?:charted|new) )?(?:designation of |bearing of |orientation of "
    r"|clearance of (?=(?:the |an? )?(?:overhead |(?:[a-z-]{2,20} ){0,2}(?:(?:foot)?bridge|viaduct"
    r"|aqueduct|power (?:line|cable)|aerial cable|transmission line)s?\b)))",
    re.IGNORECASE,
)
"""What is amended of a thing: `clearance of bridge from 24m to 22m` takes nothing away.

The clearance of a wreck may be the depth over it, or that it is taken away.
"""
# A statement of its own, for which the verb carried down from above does not hold.
_STATES = Rare(
    r"\bthere (?:is|are|was|were)\b|\b(?:is|are|lies|lie|stands|stand) now\b"
    r"|\bnow (?:is|are|lies|lie|stands|stand)\b|\b(?:does|do) not\b|\bno longer\b",
    "do does no now there",
    re.IGNORECASE,
)
_ODD_SIGNS = frozenset("#%&~^_@{}\\$!?*")


_TO_FILL_IN = re.compile(r"_{4,200}")
"""Where a form is to be filled in: `Signed: ________`."""


def is_garbled(words: str) -> bool:
    """Whether signs that no notice uses stand among the letters: `wr#ck, l&ast d~pth`."""
    if _ODD_SIGNS.isdisjoint(words):
        return False
    words = _TO_FILL_IN.sub("", words)
    odd = sum(map(words.count, _ODD_SIGNS))
    return odd >= 3 and odd * 20 >= len(words)


def command_within(context: Context, words: Stretch, verb: Verb) -> list[Fault]:
    """A command among the words of another, or a noun of one in front of them."""
    amended = blanked(words.text, PROPERTY_AHEAD) if verb == "amend" else words.text
    second = (
        _COMMAND_WITHIN.search(words.text)
        or _NOUN_WITHIN.search(amended)
        or _contrary(words.text, verb)
    )
    if second is None:
        return []
    return [within(context, "verb-within-words", words, second.span())]


def _contrary(words: str, verb: Verb) -> re.Match[str] | None:
    """A second command close behind the first, that is another: `Delete Insert silo`."""
    told = _SECOND.match(words)
    other = canonical_verb(told["verb"]) if told is not None else None
    # `Amend: replace depth 5 m by 4 m` says one thing.
    return told if are_contrary(other, verb) else None


_DONE_BEHIND = re.compile(
    r"[ ,;]{0,3}(?P<done>(?:is|are|was|were|(?:has|have) been|(?:will|shall|(?:is|are) to) be)"
    r" (?:now |also |hereby )?[a-z]{4,14}(?: (?:out|up|away|down|off))?)(?![a-z-])",
    re.IGNORECASE,
)
"""What is done with a thing, in a sentence behind its place: `The pile in P is inserted`."""


def change_within(context: Context, item: Item, words: Stretch, verb: Verb) -> list[Fault]:
    """Words before or behind the place that tell of another change, or of one that is misspelt."""
    tail = gather(context.text, item.tail)
    told = _DONE_BEHIND.match(tail.text)
    if told is not None and are_contrary(canonical_verb(told["done"]), verb):
        return [within(context, "verb-within-words", tail, told.span("done"))]
    for stretch in (words, tail):
        plain = unquoted(stretch.text)
        if (slip := misspelt_verb(plain)) is not None:
            return [within(context, "verb-unknown", stretch, slip)]
        broken = broken_verb_end(plain) if item.verb_piece is None else None
        if broken is not None:
            return [within(context, "verb-unknown", stretch, (0, broken))]
        # `Delete buoy in P. Insert in its stead a beacon in Q`: there the verb is its own.
        own = _IN_ITS_PLACE.match(stretch.text) if verb == "insert" else None
        found = _TELLS_MORE.search(stretch.text)
        if found is not None and own is not None:
            found = _TELLS_MORE.compiled.search(stretch.text, own.end())
        if found is None and item.verb_piece is None:
            found = _STATES.search(stretch.text)
        if found is not None:
            return [within(context, "verb-within-words", stretch, found.span())]
    return []


_ENDS_IN_DEPTH = re.compile(
    r"\b(?:depth|sounding|dries|drying|height|clearance)[^0-9]{0,20}[0-9]{1,4}[.,]?$",
    re.IGNORECASE,
)


def parted_figures(context: Context, item: Item) -> list[Fault]:
    """Figures that end a line and begin the next one of an item: `least depth 1 / 2.5m`."""
    for (start, end), (below, last) in pairwise(item.words):
        is_figure = context.text[below : below + 1].isdigit()
        if is_figure and _ENDS_IN_DEPTH.search(context.text[start:end]):
            return [quoting(context, "depth-figures-apart", (start, last))]
    return []


_DOUBT = re.compile(
    r"[\[(](?:illegible|unreadable|not legible|illeg\.?|unclear|\?{1,3})[\])]", re.IGNORECASE
)
_ASKED = re.compile(r" ?\(?\?")


def marks_of_doubt(context: Context, item: Item) -> list[Fault]:
    """What whoever copied an item could not read, or doubts: `Insert? buoy`, `[illegible]`."""
    if item.verb_piece is not None and _ASKED.match(context.text, item.verb_piece[1]) is not None:
        start, end = item.verb_piece
        return [quoting(context, "text-garbled", (start, end + 1))]
    for pieces in (item.words, item.tail):
        own = gather(context.text, pieces)
        if (found := _DOUBT.search(own.text)) is not None:
            return [within(context, "text-garbled", own, found.span())]
    return []


_LOST_BRACKET = re.compile(r"\([a-z](?=[\s,-]|$)|(?<![\w(])[a-z]\)(?=\s*$)")


def lost_brackets(context: Context, item: Item, words: Stretch) -> list[Fault]:
    """A bracket missing at a letter before a place: `(a-(c) above`, `bounded by a)`."""
    if not item.groups:
        return []
    leads = [gather(context.text, group.lead) for group in item.groups if group.lead]
    for stretch in (words, *leads):
        has_bracket = "(" in stretch.text or ")" in stretch.text
        found = _LOST_BRACKET.search(stretch.text) if has_bracket else None
        if found is not None:
            extent = stretch.extent(found.span())
            return [Fault("bracket-lost", *extent, {"written": stretch.text})]
    return []


_LEADS = frozenset({"at", "from_", "between", "vicinity", "bounded", "joining", "within"})


def leads_to_place(words: str) -> bool:
    """Whether words hold a relation whose place is missing: `legend, "Rep", close E of (b`.

    In front of the feature, too: `at B: legend "Cable"`, where B is told nowhere.
    """
    parts = read_phrase(words.lstrip(" ,:"))
    opens = (
        bool(parts) and parts[0].kind in _LEADS and not words.lstrip().lower().startswith("in ")
    )
    return opens or any(part.kind in ("close", "offset", "centred") for part in parts)
