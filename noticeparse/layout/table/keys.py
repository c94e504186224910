"""Blocks of keys within a bulletin, `Key: value` on each line: a block is one row of a table."""

from __future__ import annotations

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.body.prose import paragraph
from noticeparse.layout.column.columns import key_role
from noticeparse.layout.column.titles import Cells
from noticeparse.layout.drafts import Prose
from noticeparse.layout.item.new_things import with_new_thing
from noticeparse.layout.item.states_below import with_state_key
from noticeparse.layout.line.elements import Element, Line, has_words
from noticeparse.layout.row.place_keys import (
    PLACED,
    UNKNOWN,
    is_below_a_feature,
    leads_commands,
    only_leads,
    role_of_places,
    settled,
    with_blank_key,
    with_known_key,
    with_place_key,
    with_source_key,
)
from noticeparse.layout.row.record_numbers import number_alone, with_number_apart
from noticeparse.layout.row.value_keys import with_value_key
from noticeparse.layout.table.beside_items import (
    Remark,
    counts_record,
    ends_value,
    give_information,
    give_source,
    goes_on_with_notice,
    opens_record,
    settled_role,
    stands_left_of_key,
    without_statements,
)
from noticeparse.layout.table.carried_verbs import CarriedVerb
from noticeparse.layout.table.tables import TableReader
from noticeparse.readers.verbs import canonical_verb

_NOTICE_KEYS = frozenset({"heading", "source", "cancels", "validity", "status"})
_LISTED = frozenset({"position", "numbered", "joining", "bounded"})
# Keys that other lines answer to as well; here they only tell that the line is no part of a block.
_OTHER_KEYS = frozenset({"notice", "chart", "previous", "heading", "source", "remark", "cancels"})


class KeyReader:
    """Holds the open block of keys, which goes where the row of a table would go."""

    def __init__(self, assembly: Assembly, tables: TableReader) -> None:
        self.assembly = assembly
        self.text = assembly.text
        self._tables = tables
        self.following: Line | None = None
        """The line below the one that is read."""
        self._block: Cells = {}
        self._carried = CarriedVerb()
        self._last_role = ""
        self._remark: Remark | None = None
        """The remark that was read last."""
        self._counted: Cells = {}
        """The number of the record that opens next."""
        self._verb_keys: set[str] = set()
        self._opening = ""
        """The key that opened a notice last."""

    @property
    def block_is_open(self) -> bool:
        """Whether a record of keys is under way."""
        return bool(self._block)

    def before(self, following: Line | None, line: Line) -> Line:
        """The line as it reads above the one that follows: `New:` before an item is its verb."""
        self.following = following
        if self._last_role:
            key, value = self._block["key"][-1], self._block[self._last_role]
            if stands_left_of_key(self.text, key, value, line):
                self.end_block()
        if self._block or self._tables.table is not None:
            return line
        return with_new_thing(self.text, line, self.assembly.body, following)

    def takes_key(self, line: Line) -> bool:
        """Read a `Key: value` line, if its key is known here."""
        if self._takes_number(line):
            return True
        line = self._with_key(line)
        if line.elements and line.elements[0].kind == "verb":
            return self._takes_verb_key(line)
        if not line.elements or line.elements[0].kind != "key":
            return False
        notice = self.assembly.notice
        if notice is not None and notice.is_radio:
            # `FROM:`, `SUBJECT:`, `POSITION:` are words of the message.
            return False
        key = line.elements[0]
        values = [e for e in line.elements[1:] if has_words(self.text, e)]
        has_places = any(e.kind in ("point", "half", "reference") for e in values)
        role = key.value or key_role(self.assembly.words(key), has_places=has_places)
        if self._block and has_places and role not in PLACED:
            role = role_of_places(self.assembly.words(key), values)
            values = [key, *values] if role == UNKNOWN else values
        if role is None or self._ends_record(role, key):
            return False
        if notice is not None and counts_record(self.text, role, values, self.following):
            self.end_block()
            self._counted = {"key": [key], "label": values}
            return True
        if role in ("from", "to") and not self._block and not has_places:
            # `To: Masters and pilots`: the head of a letter.
            self.assembly.add_prose(Prose([(line.elements[0].start, line.end)], values))
            return True
        if not self._block and leads_commands(role, line):
            self.assembly.body.append(line)
            return True
        if not self._block and only_leads(self.text, role, line, self.assembly.body):
            self.assembly.body.append(
                line._replace(elements=(key._replace(kind="words"), *line.elements[1:]))
            )
            return True
        if self._block and role in ("notice", "previous", "source", "aside"):
            self._of_block(role, key, values)
            return True
        if role == "notice" and (number := self._number(key, values)) is not None:
            if self.assembly.is_by_chart or not self.assembly.cut.falls_before(line):
                self.end_block()
                self.assembly.open_notice(number, line.start)
            return True
        if role in _NOTICE_KEYS and self.assembly.notice is not None:
            self._of_notice(role, line)
            return True
        role = settled_role(self.assembly, self._block, role, values)
        if role == "remark" and values:
            self.end_block()
            self._remark = Remark(self.text, line, values)
            self.assembly.add_prose(self._remark.prose)
            return True
        if role in _OTHER_KEYS:
            return False
        self._of_block(role, key, values)
        return True

    def _takes_number(self, line: Line) -> bool:
        """Take the number of the record that opens on the line below."""
        number = number_alone(self.text, line, self.following)
        if number is not None:
            self.end_block()
            self._counted = {"label": [number]}
        return number is not None

    def _with_key(self, line: Line) -> Line:
        """The line; words that are a key within a record, or a key without a value, are one."""
        if numbered := with_number_apart(self.text, line, self.following):
            self.end_block()
            self._counted, line = {"label": [numbered[0]]}, numbered[1]
        if self._block:
            line = with_value_key(self.text, line)
            line = with_source_key(self.text, with_place_key(self.text, line))
        else:
            line = with_state_key(self.text, line, self.assembly.body)
        line = with_known_key(self.text, line, self.following)
        return with_blank_key(self.text, line, self.following, self._verb_keys)

    def _ends_record(self, role: str, key: Element) -> bool:
        """Whether a key opens the next record; the one above it then ends."""
        ends = opens_record(self.assembly, self._block, role, key, self._carried)
        if ends:
            self.end_block()
        # The line of a notice or chart is read anew; that of a verb is the first of its record.
        return ends and role != "verb"

    def _number(self, key: Element, values: list[Element]) -> Element | None:
        """The number of the notice that a key opens, behind the letters of its office if any."""
        at = next((i for i, one in enumerate(values[:2]) if one.kind == "number"), None)
        letters = "".join(self.assembly.words(one) for one in values[:at])
        if at is None or not (letters.isupper() or not letters):
            return None
        word = self.assembly.words(key).strip(" .:").lower()
        is_open = self.assembly.notice is not None and self._opening != word
        if word.startswith("ref") and is_open:
            # Within a notice that was opened otherwise a reference names another one.
            return None
        self._opening = word
        return values[at]

    def _takes_verb_key(self, line: Line) -> bool:
        """`Insert: rock` above `Position: …`: the verb is the key of what it concerns."""
        verb, *values = line.elements
        is_key = self.text[verb.end : verb.end + 4].lstrip()[:1] == ":"
        if not values or any(e.kind not in ("words", "label") for e in values):
            return False
        if not is_below_a_feature(self.text, self.following, is_key=is_key):
            return False
        told = [self.assembly.words(e).lstrip(": ") for e in values]
        values = [e._replace(start=e.end - len(t)) for e, t in zip(values, told, strict=True)]
        values = [e for e in values if has_words(self.text, e)]
        if not values:
            return False
        self.end_block()
        if is_key:
            # The colon behind it belongs to the verb.
            verb = verb._replace(end=self.text.index(":", verb.end) + 1)
        self._of_block("verb", verb, [verb])
        self._of_block("feature", verb, values)
        return True

    def goes_on_with_notice(self, line: Line, number: Element) -> bool:
        """Whether a line that names a notice, and ends the open record, names the same anew."""
        self.end_block()
        return goes_on_with_notice(self.assembly, line, number)

    def goes_on_with_value(self, line: Line) -> bool:
        """Take a line without a key as more of the remark or the value above it."""
        if self._remark is not None and self._remark.goes_on(line):
            return True
        if not self._block or not self._last_role or line.has("chart", "rule", "number"):
            return False
        if ends_value(self.text, self._block[self._last_role], line) or (
            self._last_role in ("source", "aside") and line.has("point", "half")
        ):
            self.end_block()
            return False
        self._block[self._last_role] += [e for e in line.elements if has_words(self.text, e)]
        return True

    def _of_notice(self, role: str, line: Line) -> None:
        notice = self.assembly.notice
        assert notice is not None
        values, rest = without_statements(self.text, role, list(line.elements[1:]))
        values = [e for e in values if has_words(self.text, e)]
        pieces = [(e.start, e.end) for e in values]
        if role == "heading":
            # As one piece: `works ended; notice 21(T)/26 is cancelled` is a sentence.
            notice.heading += [(pieces[0][0], pieces[-1][1])] if pieces else []
            if any(e.kind in ("point", "half") for e in values):
                self.assembly.add_prose(paragraph(self.text, values))
        elif role == "source":
            notice.sources += pieces
        elif values:
            notice.clauses.append((line.elements[0].start, values[-1].end))
        if rest:
            self.end_block()
            self.assembly.body.append(line._replace(elements=tuple(rest)))

    def _of_block(self, role: str, key: Element, values: list[Element]) -> None:
        if role == "verb" and {"verb", "feature"} <= self._block.keys():
            is_verb = canonical_verb(" ".join(self.assembly.words(e) for e in values)) is not None
            if is_verb or self.assembly.words(key) in map(self.assembly.words, self._block["key"]):
                self.end_block()
            else:
                role = "change"
        if role in self._block and not (role == self._last_role and role in _LISTED):
            self.end_block()
        if not self._block:
            self._block, self._counted = self._counted, {}
        self._block.setdefault("key", []).append(key)
        self._verb_keys |= {self.assembly.words(key)} if role == "verb" and values else set()
        if role in ("radius", "source", "aside"):
            values = [key, *values]
        self._block.setdefault(role, []).extend(values)
        self._last_role = role

    def takes_chart(self, line: Line, *, behind_blank: bool) -> bool:
        """Whether a chart line stands within an open record, as one of its keys."""
        if not self._block or line.elements[0].kind != "chart":
            return False
        if behind_blank and "chart" not in self._block and "verb" in self._block:
            # The record above is whole and names no chart of its own: this is a head.
            return False
        if opens_record(self.assembly, self._block, "chart", line.elements[0], self._carried):
            return False
        values = [e for e in line.elements[1:] if has_words(self.text, e)]
        if len(values) != 1 or not self.assembly.words(line.elements[0]).rstrip().endswith(":"):
            return False
        self._of_block("chart", line.elements[0], values)
        return True

    def end_block(self) -> None:
        """End the open block of keys: it is one row."""
        block, self._block = self._block, {}
        keys = block.pop("key", [])
        self._carried.note(self.assembly.notice, block)
        block = settled(self.text, block)
        self._last_role = ""
        if any(block.values()):
            if block.get("verb") == []:  # `Action: -`: no verb above holds for this record.
                block["verb"] = keys[:1]
            self._tables.heads.take(block)
            self._tables.heads.take_previous(block)
            give_source(self.assembly, block)
            if not give_information(self.assembly, block):
                self.assembly.add_row(block)
