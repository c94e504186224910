"""Puts the parts of lights together into drafts, one light after another.

One method for each kind of part; a part that belongs to no light is left with a fault.  Whether a
light makes sense is judged later.
"""

from __future__ import annotations

from lark import Token

from noticeparse.readers.light_draft import Draft, Figure
from noticeparse.readers.light_notes import Notes
from noticeparse.readers.light_parts import Compound, Measure, Part, end_of, start_of
from noticeparse.readers.light_values import (
    LOOK_ALIKES,
    NEEDS_PLUS,
    classes_of,
    colour_of,
    rhythm_of,
    split_colours,
    split_group,
)

_SAME_IN_TELEX = frozenset({"F", "Q", "VQ", "UQ", "IQ", "IVQ", "IUQ"})
"""Classes that a chart writes in capitals too."""


class Assembly:
    """The lights of one description so far; `before` is the part taken last."""

    def __init__(self, notes: Notes) -> None:
        self.notes = notes
        self.drafts: list[Draft] = []
        self.before: Part | None = None
        self._draft: Draft | None = None
        self._label = ""
        self._range_colour: Token | None = None

    def before_is(self, *kinds: str) -> bool:
        """The part taken last is of one of these kinds."""
        return self.before is not None and self.before.type in kinds

    def close_light(self) -> None:
        """No figure or colour that follows belongs to the light before."""
        self._drop_range_colour()
        if self._draft is not None:
            self._draft.is_closed = True

    def _drop_range_colour(self) -> None:
        if self._range_colour is not None:
            self.notes.leave(self._range_colour)
            self._range_colour = None

    def _light_for(self, part: Part, *, is_class: bool = False) -> Draft:
        """The light that a class or a prefix belongs to: the one at hand, or a new one."""
        draft = self._draft
        goes_on = is_class and not self.before_is("JOIN")
        if draft is not None and draft.takes_class and (goes_on or not draft.classes):
            return draft
        if self.drafts and not self.before_is("JOIN"):
            self.notes.add_at("light-join-missing", part)
        self.close_light()
        draft = self._draft = Draft(start_of(part), end_of(part))
        self.drafts.append(draft)
        return draft

    def _class(self, part: Part, names: tuple[str, ...]) -> Draft:
        draft = self._draft
        if draft is not None and self.before_is("JOIN") and draft.is_cut_before(names):
            self.notes.add("light-plus-missing", draft.start, end_of(part))
        elif draft is not None and draft.is_broken and draft.takes_class:
            draft.end = end_of(part)
            return draft
        else:
            draft = self._light_for(part, is_class=True)
            together = (*draft.classes, *names)
            if not draft.classes:
                pass
            elif rhythm_of(together) is None:
                draft.is_broken = True
            elif together in NEEDS_PLUS and not self.before_is("PLUS"):
                self.notes.add("light-plus-missing", draft.start, end_of(part))
        draft.classes.extend(names)
        draft.end = end_of(part)
        return draft

    def take_class(self, part: Part) -> None:
        """`Fl`, `Int Qk Fl`, `group flashing`."""
        word = str(part)
        draft = self._class(part, classes_of(word))
        draft.is_telex |= word.isupper() and word not in _SAME_IN_TELEX
        draft.asks_group |= word.casefold().startswith(("group", "composite"))

    def take_look_alike(self, part: Part) -> None:
        """`LF1` for LFl."""
        name, letter, read = LOOK_ALIKES[str(part).upper()]
        self.notes.add_at("light-look-alike", part, letter=letter, read=read)
        self._class(part, (name,))

    def take_morse(self, part: Part) -> None:
        """`Mo(A)`."""
        assert isinstance(part, Compound)
        draft = self._class(part, ("Mo",))
        draft.is_telex |= part.tokens[0].isupper()
        letters = part.token("LETTERS", "SPARE_LETTER")
        broken = part.token("BROKEN_LETTERS")
        if letters is not None:
            draft.morse = letters.strip("( )")
            draft.group_stretch = (start_of(letters), end_of(letters))
        elif broken is not None:
            draft.has_broken_group = True
            self.notes.add_at("light-group-unreadable", broken)

    def take_alternating(self, part: Part) -> None:
        """`Al`."""
        draft = self._light_for(part, is_class=True)
        draft.is_alternating = True
        draft.is_telex |= str(part).isupper()
        draft.end = end_of(part)

    def take_prefix(self, part: Part) -> None:
        """`Dir`, the `2` of `2F`, `Gp`: what stands before the class of a light."""
        draft = self._light_for(part)
        if part.type == "COUNT":
            draft.count = int(str(part))
        elif part.type == "GROUPED":
            draft.asks_group = True
        else:
            draft.functions.append(str(part).casefold()[:3])

    def take_group(self, part: Part) -> None:
        """`(3)`, `(2+1)`."""
        draft = self._draft
        if draft is None or not draft.takes_group:
            self.notes.leave_figure(part)
            return
        if draft.colours:
            self.notes.add_at("light-group-out-of-place", part)
        figures, colours = split_group(str(part))
        draft.add_group(figures, start_of(part), end_of(part))
        draft.has_group_colours |= bool(colours)
        for word in colours:
            self._add_colour(draft, word, start_of(part), end_of(part), may_repeat=True)

    def take_broken_group(self, part: Part) -> None:
        """`(2+)`."""
        draft = self._draft
        if draft is None or not draft.takes_group:
            self.notes.leave_figure(part)
            return
        draft.has_broken_group = True
        draft.end = end_of(part)
        self.notes.add_at("light-group-unreadable", part)

    def take_colours(self, part: Part) -> None:
        """`WRG`, `white`."""
        assert isinstance(part, Token)
        draft = self._draft
        self._drop_range_colour()
        words = split_colours(part) if part.type == "COLOURS" else (str(part),)
        if draft is None or not draft.has_character or draft.is_closed:
            self.notes.leave(part)
        elif not (draft.figures and draft.colours):
            at = start_of(part)
            for word in words:
                self._add_colour(draft, word, at, at + len(word))
                at += len(word)
            draft.end = end_of(part)
        elif len(words) == 1 and colour_of(part) in draft.colours:
            self._range_colour = part
        else:
            self.notes.leave(part)

    def _add_colour(
        self, draft: Draft, word: str, start: int, end: int, *, may_repeat: bool = False
    ) -> None:
        colour = colour_of(word)
        if colour is None:
            draft.has_lost_colour = True
            self.notes.add("light-colour-ambiguous", start, end)
        elif colour not in draft.colours:
            draft.colours.append(colour)
        elif not may_repeat:
            self.notes.add("light-colour-twice", start, end)

    def take_word(self, part: Part) -> None:
        """A word that is no part of a light; capitals where colours stand are a wrong colour."""
        word, draft = str(part), self._draft
        is_like_colours = word.isalpha() and word.isupper() and len(word) <= 4
        if draft is None or not draft.takes_colour or not is_like_colours:
            self.notes.leave(part)
            return
        start = start_of(part)
        for letter in split_colours(word):
            if colour_of(letter) is None:
                self.notes.add("light-colour-unknown", start, start + len(letter))
            start += len(letter)
        draft.has_lost_colour = True
        draft.end = end_of(part)

    def take_measure(self, part: Part) -> None:
        """`15s`, `21m`, `15-11M`."""
        assert isinstance(part, Measure)
        draft = self._draft
        if draft is None or not draft.has_character or draft.is_closed:
            self.notes.leave_figure(part)
            return
        colour: str | None = None
        if self._range_colour is not None and part.unit == "M":
            colour = colour_of(self._range_colour)
            self._range_colour = None
        draft.figures.append(Figure(part, self._label, colour))
        self._label = ""
        draft.is_telex |= part.is_in_capitals
        draft.end = part.end_pos

    def take_label(self, part: Part) -> None:
        """`elevation`, `range`."""
        self._label = "m" if str(part)[0] in "EeHh" else "M"

    def take_mark(self, part: Part) -> None:
        """`(vert)`, or a remark such as `(occas)`."""
        draft = self._draft
        if draft is None or not draft.has_character or draft.is_closed:
            self.notes.leave(part)
            return
        words = str(part).strip("( )").rstrip(".")
        if part.type == "REMARK":
            draft.remarks.append(words)
        elif words.casefold().startswith("vert"):
            draft.is_vertical = True
        else:
            draft.is_horizontal = True
        draft.end = end_of(part)

    def take_sectors(self, part: Part) -> None:
        """A list of sectors."""
        if self._draft is None or not self._draft.has_character:
            self.notes.leave_figure(part)
        else:
            self._draft.sectors.append((start_of(part), end_of(part)))

    def take_joint(self, part: Part) -> None:
        """`+`, `&`: what it means shows when the next part is taken."""
        if self._draft is None:
            self.notes.leave(part)

    def take_bearing(self, part: Part) -> None:
        """A bearing alone; the record has no place for a directional light's axis."""
        draft = self._draft
        if draft is not None and {"dir", "ldg", "lea"} & set(draft.functions):
            self.notes.add_at("light-axis-not-kept", part)
        else:
            self.notes.leave_figure(part)

    def take_unit(self, part: Part) -> None:
        """A unit without its figure: the `m` of `Q(3)10sm`."""
        self.notes.add_at("light-unit-without-figure", part)

    def take_figure(self, part: Part) -> None:
        """A figure that can be no value of a light."""
        self.notes.leave_figure(part)
