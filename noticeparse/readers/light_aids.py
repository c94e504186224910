"""Other aids on a light's structure: fog signal, racon, AIS.

In come the parts in the order written; out come the records.  What the contract has no place for
(Morse letters of a horn, the band of a racon) is told by a fault.  Source: INT 1 sections R and S.
"""

from __future__ import annotations

from noticeparse.readers.light_notes import Notes
from noticeparse.readers.light_parts import Compound, Measure, Part, like_character
from noticeparse.readers.light_values import sound_of, split_group
from noticeparse.records.feature import Ais, Racon, Sound


class Aids:
    """The aids of one description; `is_open` while the last part belonged to one."""

    def __init__(self, notes: Notes) -> None:
        self.notes = notes
        self.sound: Sound | None = None
        self.racon: Racon | None = None
        self.ais: Ais | None = None
        self.is_open = False
        self._takes_period = False

    @property
    def is_empty(self) -> bool:
        """No aid has been read."""
        return self.sound is None and self.racon is None and self.ais is None

    def take_sound(self, part: Part) -> None:
        """`Horn`, `Siren Mo(N)`."""
        assert isinstance(part, Compound)
        self.is_open, self._takes_period = True, self.sound is None
        if self.sound is not None:
            self.notes.add_at("sound-twice", part)
            return
        self.sound = Sound(kind=sound_of(part.tokens[0]), group=[], period_s=None)
        letters = part.token("SOUND_LETTERS")
        if letters is not None:
            self.notes.add_at("sound-morse-not-kept", letters)

    def take_racon(self, part: Part) -> None:
        """`Racon(K)`."""
        assert isinstance(part, Compound)
        self.is_open, self._takes_period = True, False
        letters = part.token("LETTERS", "SPARE_LETTER")
        if self.racon is not None:
            self.notes.add_at("racon-twice", part)
        else:
            self.racon = Racon(morse=letters.strip("( )") if letters is not None else None)
        for type_, code in (
            ("BROKEN_LETTERS", "racon-letter-unreadable"),
            ("BAND", "racon-band-not-kept"),
        ):
            token = part.token(type_)
            if token is not None:
                self.notes.add_at(code, token)

    def take_ais(self, part: Part) -> None:
        """`AIS`, `V-AIS`."""
        self.is_open, self._takes_period = True, False
        if self.ais is None:
            self.ais = Ais(virtual=str(part)[0] in "Vv")
        else:
            self.notes.add_at("ais-twice", part)

    def take_detail(self, part: Part) -> None:
        """A group, figure or remark behind an aid."""
        if isinstance(part, Measure):
            self._measure(part)
        elif part.type == "GROUP":
            self._group(part)
        else:
            self.notes.add_at("aid-remark-not-kept", part)

    def _group(self, part: Part) -> None:
        if self.sound is None or not self._takes_period or self.sound.group:
            self.notes.leave_figure(part)
        else:
            figures, colours = split_group(str(part))
            self.sound = self.sound.model_copy(update={"group": list(figures)})
            if colours:
                self.notes.leave_figure(part)

    def _measure(self, part: Measure) -> None:
        sound = self.sound
        if sound is None or not self._takes_period or part.unit in ("m", "ft", ""):
            self.notes.leave_figure(part)
        elif part.unit == "M":
            self.notes.add_at("sound-range-not-kept", part)
        elif sound.period_s is not None or len(part.figures) > 1 or 0 in part.figures:
            self.notes.leave_figure(part)
        else:
            self.sound = sound.model_copy(update={"period_s": part.figures[0]})
            if part.like is not None:
                letter, read = like_character(part.like)
                self.notes.add_at("light-look-alike", part, letter=letter, read=read)
