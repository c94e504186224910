"""How words command: what joins two commands within a sentence, and what heads a list."""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import lru_cache

from noticeparse.layout.line.elements import Element
from noticeparse.layout.line.told_elsewhere import tells_where_more_is
from noticeparse.readers.features import has_kind, leads_feature
from noticeparse.readers.verbs import LIST_ENDINGS, canonical_verb

BULLETS = frozenset("-*·+>")
"""Marks that may stand before the entries of a list."""

_LONGEST_HEADING = 80
_TOLD = ("insert", "delete", "move")


def joins_commands(text: str, before_end: int, end: int) -> bool:
    """Whether `and`, or a comma with a feature behind the verb, joins two commands."""
    before = text[max(before_end - 9, 0) : before_end].replace("\n", " ")
    if before.endswith((" and", "and then", ", then")) or before == "and":
        return True
    return before.endswith(",") and leads_feature(text[end : end + 80].lstrip(" \n"))


FOR_A_TIME = r"(?:for|during) (?:the )?(?:coming |ice )?(?:winter|summer|season|time being|works?)"
"""Words for a time that ends, as an expression: `for the winter`, `during works`."""
_DONE_FOR_A_TIME = re.compile(
    rf"(?P<told>[A-Z][a-z]+(?: [a-z]+)?),? (?:temporarily|{FOR_A_TIME}"
    r"|(?:for|during) (?:the )?duration of (?:the )?[a-z ]{3,20})[ :.]*"
)
"""`Withdrawn for the winter`"""


def told_heading(text: str, elements: Sequence[Element]) -> Element | None:
    """The participle that heads a list on a line of its own, as its verb."""
    if is_told_heading(text, elements):
        return Element("verb", elements[0].start, elements[-1].end, True)
    if not elements or any(one.kind not in ("verb", "words", "passive") for one in elements):
        return None
    start, end = elements[0].start, elements[-1].end
    told = _DONE_FOR_A_TIME.fullmatch(text, start, min(end, start + _LONGEST_HEADING))
    verb = canonical_verb(told["told"]) if told is not None and told.end() == end else None
    stop = start + len(text[start:end].rstrip(" :."))
    return Element("verb", start, stop, True, verb) if verb is not None else None


def is_told_heading(text: str, elements: Sequence[Element]) -> bool:
    """Whether a line heads a list by a participle: `The following are to be inserted:`.

    A figure or a second verb makes it a sentence.
    """
    others = [element.kind for element in elements if element.kind != "words"]
    if not elements or others not in ([], ["passive"]):
        return False
    # A passive may be broken over two lines: `To be` above `taken out`.
    words = " ".join(text[elements[0].start : elements[-1].end].split())
    is_order = len(elements) == 1 and words.lower().startswith("to be ")
    if not (words.endswith(":") or is_order) or any(c.isdigit() for c in words):
        return False
    if len(words) > _LONGEST_HEADING or " that " in words:
        # `Mariners are advised that the following buoys have been removed:` is a sentence.
        return False
    told = words.rstrip(" :")
    for ending in LIST_ENDINGS:
        told = told.removesuffix(ending)
    verb = canonical_verb(told)
    if not others and (verb not in _TOLD or told.lower().endswith("cancelled")):
        return False
    ends = (
        "ed",
        "laid",
        "drawn",
        "taken out",
        "taken up",
        "taken off",
        "taken away",
        "struck out",
        "put in",
        "written in",
        "withdrawn",
    )
    return verb is not None and told.lower().endswith(ends)


_NOTES = (
    "note to", "note:", "notes:", "note. ", "notes. ", "note -", "n.b.", "nb:",
    "remark:", "remarks:", "remark. ", "remarks. ", "remark -", "remarks -",
    "(file ", "(file:", "file no", "(ref ", "(ref.", "(ref:", "(source:", "(authority:",
)  # fmt: skip


_OF_SHEETS = re.compile(
    r"[a-z]{3,10} (?:all |the |any |your |these |those ){0,2}"
    r"(?:(?:earlier|previous|preceding|former) "
    r"(?:sheets?|lists?|notices?|editions?|issues?|bulletins?|corrections?)"
    r"|charts? (?:(?:that |which )?(?:you |are )?(?:hold|held|carry|carried|have)|on board|aboard"
    r"|in (?:your|the ship's) (?:folio|outfit|charge)|in (?:ink|pencil)|by hand|accordingly))\b"
)
"""What is to be done with sheets of notices, or all charts: `Correct the charts you hold`."""


_OF_BOOKS = re.compile(
    r"(?:no charts? (?:is |are )?affected[.;:] ?)?"
    r"(?:chapter [0-9]{1,3}[,:] "
    r"|(?:at |on )?(?:page|p\.) ?[0-9]{1,4}[a-z]?(?:[,:;]| (?:lines?|no|para(?:graph)?)\b)"
    r"|(?:the )?(?:lists? of (?:lights|radio signals)|lights? lists?|book of (?:the )?lights"
    r"|sailing (?:directions|guides?)|tide tables?|(?:nautical )?publications?"
    r"|(?:coast )?pilot(?: books?)?(?=:|, | page| vol))"
    r"(?:\b[^:\n]{0,60}:|[,.]| vol| page| no\b| number| chapter| [0-9]))"
)
"""`List of Lights: No. 88.4 to be amended`, `page 44, line 3: add …`: to be done in a book."""


_OF_NO_CHART = re.compile(
    r"no (?:chart|cht|sheet)s? (?:corrn?s?|corrections?|changes?|is|are|to be|affected|concerned"
    r"|corrected|needs?|requires?)\b"
)
"""`NO CHT CORRN CHT AGENTS TO RETURN STOCK OF CHT 802`: what follows is for no chart."""


_OF_BLOCKS = re.compile(
    r"(?:the |an? )?(?:accompanying |coloured |chart )?(?:blocks?|reproductions?|cut-?outs?)\b"
    r"[^.:;\n]{0,60}? (?:is|are|will be|can be|may be) (?:printed|reproduced|found|attached"
    r"|enclosed|appended|bound in|given|issued|supplied|included|obtainable|available) "
    r"(?:on|in|at|with|from|overleaf|below|separately|free|here|to this)\b"
    r"|(?:please )?(?:see|refer to|consult)(?: also)? (?:the |an? )?"
    r"(?:(?:accompanying|attached|enclosed|appended|coloured|chart|above|following) ){0,2}"
    r"(?:blocks?|chartlets?|sketch(?:es)?|diagrams?|plates?|insets?|reproductions?)\b"
)
"""Where the block of a chart is printed: `The block is given at the end of this list.`"""


_OF_ITEMS = frozenset({"point", "half", "reference", "bar"})


def is_note(text: str, elements: Sequence[Element]) -> bool:
    """Whether a line is a remark on the items: `Note to item 2) b.: surveyed in 2025`.

    A note that goes on the chart has its words in quotes, or a position.
    """
    # A plain loop: this is asked for every line.
    for element in elements:
        if element.kind in _OF_ITEMS:
            return False
    return bool(elements) and opens_note(text[elements[0].start : elements[-1].end])


_OF_THE_SAME = frozenset("it this that which these they both all".split())


def says_of_the_same(words: str) -> bool:
    """Whether the subject of a verb is what was told just before: `…; it is to be inserted`."""
    plain = words.lower().strip(" ,;.").removeprefix("and ")
    return plain in _OF_THE_SAME


@lru_cache(maxsize=4096)
def opens_note(words: str) -> bool:
    """Whether words are a remark that goes on no chart."""
    said = words.lower()
    if any(one.match(said) is not None for one in (_OF_BOOKS, _OF_NO_CHART)):
        return True
    if tells_where_more_is(words):
        return True
    is_of_paper = _OF_SHEETS.match(said) is not None or _OF_BLOCKS.match(said) is not None
    return (said.startswith(_NOTES) or is_of_paper) and '"' not in words


def speaks_of_sheets(text: str, start: int) -> bool:
    """Whether a verb says what is to be done with sheets or all charts."""
    return _OF_SHEETS.match(text[start : start + 80].lower()) is not None


def tells_only(words: str) -> bool:
    """Whether the heading of a list tells what has been done: `Since established:`."""
    return words.endswith(":") and " " in words and " be " not in f" {words.lower()}"


_NO_CHANGE = ("no ", "neither ", "not ", "none ", "if ", "when ", "unless ", "should ")


_NOT_SURE = re.compile(
    r"\b(?:believed|thought|understood|presumed|assumed|supposed|alleged|said|reported|reputed"
    r"|expected|likely|intended|due|planned|proposed|(?:was|were)(?: also| once)?) to "
    r"(?:have (?:now |since )?been|be)\b"
    r"|\b(?:should|could|might|may|would|ought to) (?:now |also )?have (?:now )?been\b"
)


def tells_no_change(said: str, told: str) -> bool:
    """Whether a sentence says what is not, may be, or was to be: `No wreck was found in P`.

    `told` is its verb; what will be done on a day that is named is to be charted.
    """
    words = said.lower().lstrip(" -*0123456789.()")
    is_unsure = _NOT_SURE.search(words) is not None
    return told.lower().startswith("may") or is_unsure or words.startswith(_NO_CHANGE)


def verb_of_key(text: str, start: int, end: int) -> tuple[int, str | None] | None:
    """Where a key that is a verb begins, and what it stands for where it is none as written.

    `Change:` before a whole item, and `New:` before a bullet; None for other keys.
    """
    words = text[start:end]
    plain = words.strip(" \t.:").lower()
    if plain == "new" and text[end : end + 80].lstrip()[:2] == "· ":
        return end - len(words.lstrip()), "insert"
    return (end - len(words.lstrip()), None) if plain in ("change", "changes") else None


def is_bullet(text: str, start: int) -> bool:
    """Whether a mark at the start of a line opens an entry; a star may belong to a number."""
    if text[start] not in BULLETS or text[start + 1 : start + 2] != " ":
        return False
    return text[start] != "*" or not text[start + 1 : start + 8].strip()[:1].isdigit()


# The number of a chart, and in a bracket behind it the notice that must be on it already.
_WITH_PREVIOUS = re.compile(
    r"[A-Z]{0,3} ?[0-9]{1,6}[A-Z]?,? ?\s?[(\[](?:last|prev|corrected|after|former|amended)", re.I
)


def heads_a_section(text: str, end: int) -> bool:
    """Whether a chart word is followed by a number and the notice before: a head, wherever."""
    return _WITH_PREVIOUS.match(text, end) is not None


def is_number(text: str, words: Sequence[int]) -> bool:
    """Whether a stretch is the number of a chart and nothing else: `On chart 802 delete …`."""
    number = text[words[0] : words[1]].strip(" :,") if words else ""
    return number.isalnum() and any(char.isdigit() for char in number)


_LETTERED_CHART = re.compile(r"[NSEW][0-9]{2,5}[A-Z]?")
_WITH_DETAILS = re.compile(r" {0,3}(?:\[[0-9a-z]|\(INT)")
_LISTED = frozenset({"chart", "words", "bar", "semicolon", "number"})


def is_lettered_chart(text: str, start: int, end: int, before: Sequence[Element]) -> bool:
    """Whether a letter and figures are the number of a chart, and no coordinate: `Chart W1086`.

    They stand in the list of charts, or before what is said of a chart.
    """
    if _LETTERED_CHART.fullmatch(text, start, end) is None:
        return False
    kinds = {element.kind for element in before}
    words = " ".join(text[e.start : e.end] for e in before if e.kind == "words")
    listed = "chart" in kinds and kinds <= _LISTED and not has_kind(words)
    return listed or (not kinds - {"bar", "words"} and _WITH_DETAILS.match(text, end) is not None)


def is_row_chart(words: str) -> bool:
    """Whether words are the chart in front of a row, which holds below: `Chart 802`."""
    is_plain = "only" not in words.lower() and words[:1] not in "(["
    return is_plain and any(char.isdigit() for char in words)


def is_letter(words: str) -> bool:
    """Whether words are one capital, as stands before the positions of a list."""
    return len(words) == 1 and words.isupper()


def runs_on(text: str, end: int) -> bool:
    """Whether a single blank and another word follow."""
    return text[end : end + 1] == " " and text[end + 1 : end + 2].isalpha()


def leads_on(text: str, end: int) -> bool:
    """Whether a word follows that leads to a new place or state: `moved to`."""
    return text[end : end + 12].split()[0].lower() in ("to", "into", "by", "from")


_TO_A_PLACE = re.compile(
    r" (?:in|at|from|between)(?: (?:po|positions? )|\s{1,4}(?:\(?[0-9]{1,3}[° -]|\([a-z]\)))",
    re.IGNORECASE,
)


def leads_to_place(text: str, end: int) -> bool:
    """Whether words follow that lead to a place: `in pos. 2`, `at 46-00.00S 122-00.00W`."""
    return _TO_A_PLACE.match(text, end, end + 24) is not None


def is_aside(text: str, start: int, before_end: int) -> bool:
    """Whether a bracket goes on with its sentence: `rock in P (chart 56 only)`."""
    return text[start] == "(" and text[before_end - 1] not in ".:;"
