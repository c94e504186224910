"""What the styles of HTML do to words: hidden, struck out, lowered, small, underlined.

The rules of style elements are matched by the library that reads the page; a later one wins over
an earlier one, and what an element says itself over both (CSS 2.2, 6.4, without specificity).
"""

from __future__ import annotations

import re

from selectolax.lexbor import LexborHTMLParser, LexborNode, SelectolaxError

from noticeparse.intake.small_figures import Level

Style = dict[str, str]
USUAL_SIZE = 16.0
_STRUCK = frozenset("s del strike".split())
_COMMENT = re.compile(r"/\*.*?\*/", re.S)
_RULE = re.compile(r"([^{};]{1,2000})\{([^{}]{0,20000})\}")
_MATTERS = re.compile(
    r"display|visibility|text-decoration|vertical-align|font|position|top|bottom|left|indent"
    r"|opacity|transform"
)
_OF_A_STATE = re.compile(r":(?:hover|active|focus|visited|before|after|checked)|::")
_MOST_RULES = 1000
_AWAY = -300.0
_NUMBER = re.compile(r"-?(?:\d+\.?\d*|\.\d+)")
_SIZE = re.compile(r"(?<![\w.-])(\d+\.?\d*|\.\d+)\s*(px|pt|em|rem|%)?")
_UNITS = {"px": 1.0, "pt": 4 / 3, "rem": USUAL_SIZE, "": 1.0}
_NAMED = {
    "xx-small": 9.0, "x-small": 10.0, "small": 13.0, "medium": 16.0, "large": 18.0,
    "x-large": 24.0, "xx-large": 32.0,
}  # fmt: skip
_OF_FONT = {"1": 10.0, "2": 13.0, "3": 16.0, "4": 18.0, "5": 24.0, "6": 32.0, "7": 48.0}
_SMALLER, _SHIFTED = 0.83, 0.8


def rules_of(parser: LexborHTMLParser) -> dict[int, Style]:
    """The declarations of the style elements for each element that they hold for, by its id."""
    found: dict[int, Style] = {}
    sheet = "".join(one.text(deep=True) or "" for one in parser.css("style"))
    for count, match in enumerate(_RULE.finditer(_COMMENT.sub("", sheet))):
        if count >= _MOST_RULES or not _MATTERS.search(match[2]):
            continue
        for selector in match[1].split(","):
            if _OF_A_STATE.search(selector) or not selector.strip():
                continue
            try:
                nodes = parser.css(selector.strip())
            except (SelectolaxError, ValueError):
                continue
            for node in nodes:
                found.setdefault(node.mem_id, {}).update(_declared(match[2]))
    return found


def style_of(node: LexborNode, rules: dict[int, Style]) -> Style:
    """What holds for an element."""
    own = node.attributes.get("style")
    given = rules.get(node.mem_id, {})
    return {**given, **_declared(own)} if own else given


def left_out(node: LexborNode, tag: str, style: Style) -> str | None:
    """The code of what is told where an element is not read."""
    attributes = node.attributes
    decoration = style.get("text-decoration", "") + style.get("text-decoration-line", "")
    if tag in _STRUCK or "line-through" in decoration:
        return "text-struck-out"
    is_shut = tag == "dialog" and "open" not in attributes
    if "hidden" in attributes or is_shut or style.get("display") == "none":
        return "text-hidden"
    if style.get("visibility") in ("hidden", "collapse"):
        return "text-hidden"
    if _is_nought(style.get("font-size")) or _is_nought(style.get("opacity")):
        return "text-hidden"
    is_placed = style.get("position") in ("absolute", "fixed")
    names = ("left", "top", "right", "bottom", "text-indent") if is_placed else ("text-indent",)
    return "text-hidden" if any(_first(style.get(one)) <= _AWAY for one in names) else None


def level_of(tag: str, style: Style, level: Level) -> Level:
    """The level of the words of an element within words of `level`."""
    align = style.get("vertical-align", "")
    raised = _first(align)
    if tag in ("td", "th", "tr"):
        return level
    if tag == "sub" or align in ("sub", "text-bottom") or raised < 0:
        return "low" if level == "plain" else "doubt"
    if tag == "sup" or align in ("super", "text-top") or raised > 0:
        return "high" if level == "plain" else "doubt"
    return level


def size_of(node: LexborNode, tag: str, style: Style, size: float) -> float:
    """The size of the words of an element in pixels; less for what is moved from its line."""
    if tag == "small":
        size *= _SMALLER
    elif tag == "big":
        size /= _SMALLER
    elif tag == "font":
        given = (node.attributes.get("size") or "").strip()
        size = _OF_FONT.get(given, size * (_SMALLER if given.startswith("-") else 1))
    said = style.get("font-size") or style.get("font", "")
    if said:
        size = _sized(said, size)
    is_moved = style.get("position") == "relative" and any(
        _first(style.get(one)) for one in ("top", "bottom")
    )
    return size * _SHIFTED if is_moved or "translate" in style.get("transform", "") else size


def is_underlined(tag: str, style: Style) -> bool:
    """Whether the words of an element are underlined by it."""
    said = style.get("text-decoration", "") + style.get("text-decoration-line", "")
    return "underline" in said or (tag == "u" and "none" not in said)


def _declared(words: str) -> Style:
    pairs = (one.partition(":") for one in words.lower().split(";"))
    return {
        name.strip(): value.replace("!important", "").strip() for name, _, value in pairs if value
    }


def _first(words: str | None) -> float:
    match = _NUMBER.match(words or "")
    return float(match[0]) if match else 0.0


def _is_nought(words: str | None) -> bool:
    return bool(words) and bool(_NUMBER.match(words or "")) and _first(words) == 0


def _sized(said: str, size: float) -> float:
    if "smaller" in said:
        return size * _SMALLER
    for name in said.split():
        if name in _NAMED:
            return _NAMED[name]
    match = _SIZE.search(said)
    if match is None:
        return size
    number, unit = float(match[1]), match[2] or ""
    if unit in ("em", "%"):
        return size * number / (100 if unit == "%" else 1)
    return number * _UNITS[unit]
