"""What a request may say: the options of `parse`, the texts of values, the charset of a body.

A name that is not known, an option given twice and a value of the wrong kind are refused: an
option that is passed over in silence would leave a check out.
"""

from __future__ import annotations

import json
import re
from datetime import date
from typing import Annotated, Any, Literal, NoReturn, TypeVar
from urllib.parse import parse_qsl

from pydantic import (
    AfterValidator,
    BaseModel,
    BeforeValidator,
    ConfigDict,
    Field,
    PlainValidator,
    ValidationError,
    WithJsonSchema,
    model_validator,
)

from noticeparse.records.finding import Finding
from noticeparse.web.problems import Detail, Refused
from noticeparse.writers import FORMATS

MOST_TEXTS = 1000
LONGEST_VALUE = 2000
LONGEST_NAME = 200
MOST_FINDINGS = 20_000
_MOST_OPTIONS = 20
_MOST_UNKNOWN = 20

_DAY = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}")

Model = TypeVar("Model", bound=BaseModel)


def _day(value: object) -> date:
    # The library's own way also takes a bare number, for seconds since 1970.
    if isinstance(value, date):
        return value
    if isinstance(value, str) and _DAY.fullmatch(value):
        return date.fromisoformat(value)
    raise ValueError("a day is written as 2026-03-31")


def _form(value: str) -> str:
    if value not in FORMATS:
        raise ValueError(f"the formats are {', '.join(FORMATS)}")
    return value


def _words(value: object) -> str:
    # Half a surrogate pair is a finding of the reader, which pydantic's own strings refuse.
    if not isinstance(value, str):
        raise ValueError("must be a string")
    return value


def _text(value: object) -> str:
    words = _words(value)
    if not words or words.isspace():
        raise ValueError("the text is empty")
    return words


def _value(value: object) -> str:
    words = _words(value)
    if len(words) > LONGEST_VALUE:
        raise ValueError(f"longer than {LONGEST_VALUE} characters, so it is no single value")
    return words


Day = Annotated[date, BeforeValidator(_day), WithJsonSchema({"type": "string", "format": "date"})]
Form = Annotated[
    str, AfterValidator(_form), WithJsonSchema({"type": "string", "enum": [*FORMATS]})
]
Text = Annotated[str, PlainValidator(_text), WithJsonSchema({"type": "string", "pattern": r"\S"})]
Value = Annotated[
    str, PlainValidator(_value), WithJsonSchema({"type": "string", "maxLength": LONGEST_VALUE})
]


class FileOptions(BaseModel):
    """What may be said of a file that is turned into text."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    name: str | None = Field(
        default=None,
        max_length=LONGEST_NAME,
        description="the name of the file; its ending tells the kind where the bytes do not",
        examples=["week12.pdf"],
    )


class ParseOptions(BaseModel):
    """The options of `parse`; the output depends on the text and on these alone."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    name: str | None = Field(
        default=None,
        max_length=LONGEST_NAME,
        description="kept as the name of the source",
        examples=["week12.txt"],
    )
    as_of: Day | None = Field(
        default=None,
        description="tell of temporary notices that ended before this day",
        examples=["2026-03-31"],
    )
    region: Literal["A", "B"] | None = Field(
        default=None, description="the region of buoyage that lateral marks must follow"
    )
    format: Form = Field(default="json", description="what the answer is to be written in")


class ParseRequest(ParseOptions):
    """A text to read, with its options."""

    text: Text = Field(description="the notices, as plain text")
    charts: str | None = Field(
        default=None,
        description=(
            "the charts on board, as the text of a CSV or GeoJSON chart list: positions are put "
            "on their sheets and held against them. A row without scale_latitude takes the middle "
            "of its limits; a list with an error or a warning is refused"
        ),
    )
    file_findings: list[Finding] = Field(
        default=[],
        max_length=MOST_FINDINGS,
        description="the findings of `/v1/intake` for the text, with spans in it as it is now",
    )


class SheetRequest(BaseModel):
    """A text, and the chart to make a work sheet or a plot of."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    text: Text = Field(description="the notices, as plain text")
    name: str | None = Field(
        default=None, max_length=LONGEST_NAME, description="the name of the text on the sheet"
    )
    charts: str | None = Field(
        default=None, description="the charts on board, as of `/v1/parse`; a plot needs them"
    )
    chart: Annotated[str, Field(max_length=LONGEST_NAME)] | None = Field(
        default=None,
        description="the number of the chart; null makes a sheet of each chart touched",
    )
    format: Literal["html", "pdf", "svg"] = Field(
        default="html", description="svg, and pdf with `plot`, is the plot; else the work sheet"
    )
    plot: bool = Field(default=False, description="with `pdf`: the plot at chart scale")
    as_of: Day | None = Field(default=None, description="as of `/v1/parse`")
    region: Literal["A", "B"] | None = Field(default=None, description="as of `/v1/parse`")
    edited: bool = Field(
        default=False, description="whether the text was changed since its file was opened"
    )
    file_findings: list[Finding] = Field(
        default=[],
        max_length=MOST_FINDINGS,
        description="as of `/v1/parse`",
    )

    @property
    def is_plot(self) -> bool:
        """Whether the plot is asked for."""
        return self.format == "svg" or (self.plot and self.format == "pdf")


class ValuesRequest(BaseModel):
    """Texts to read as one value each: `texts`, or `text` for one alone."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    text: Value = Field(default="", description="one text")
    texts: list[Value] = Field(
        default=[], min_length=1, max_length=MOST_TEXTS, description="the texts, in order"
    )

    @model_validator(mode="after")
    def _either(self) -> ValuesRequest:
        if len(self.model_fields_set) != 1:
            raise ValueError("give `text` or `texts`, and not both")
        return self

    def all(self) -> list[str]:
        """The texts, in the order in which they are answered."""
        return [self.text] if "text" in self.model_fields_set else self.texts


def query_options(query: bytes, model: type[BaseModel]) -> dict[str, Any]:
    """The options of a query, as far as they are given, which must be those of `model`.

    Raises Refused.
    """
    try:
        pairs = parse_qsl(
            query.decode("ascii"),
            keep_blank_values=True,
            errors="strict",
            max_num_fields=_MOST_OPTIONS,
        )
    except UnicodeDecodeError:
        raise Refused("request-invalid", "the query is not UTF-8") from None
    except ValueError:
        raise Refused("request-invalid", "the query has too many options") from None
    names = [name for name, _ in pairs]
    twice = sorted({name for name in names if names.count(name) > 1})
    if twice:
        errors = tuple(Detail(name, "given more than once") for name in twice)
        raise Refused("request-invalid", "an option is given more than once", errors)
    options = validated(model, dict(pairs), is_query=True)
    return options.model_dump(exclude_unset=True)


def validated(model: type[Model], given: object, *, is_query: bool = False) -> Model:
    """What is given, as a record of `model`.

    Raises Refused, with the place of everything that is wrong in it.
    """
    if not isinstance(given, dict):
        raise Refused("request-invalid", "the body must be a JSON object")
    if len(given) > len(model.model_fields) + _MOST_UNKNOWN:
        raise Refused("request-invalid", "it has very many names that are not known here")
    try:
        return model.model_validate(given)
    except ValidationError as error:
        found = error.errors(include_url=False, include_input=False)
    mark = "" if is_query else "/"
    errors = tuple(
        Detail(mark + "/".join(map(_step, one["loc"])) if one["loc"] else "", _told(one["msg"]))
        for one in found
    )
    raise Refused("request-invalid", "; ".join(map(_line, errors[:3])), errors)


def _step(step: int | str) -> str:
    return str(step).replace("~", "~0").replace("/", "~1")[:LONGEST_NAME]


def _told(message: str) -> str:
    if message.startswith("Extra inputs"):
        return "not known here"
    return message.removeprefix("Value error, ")


def _line(error: Detail) -> str:
    return f"{error.pointer}: {error.detail}" if error.pointer else error.detail


def read_json(body: bytes) -> object:
    """The value of a JSON body (RFC 8259), which is UTF-8.

    Raises Refused; also for a name that stands twice, of which a reader would take either.
    """
    try:
        text = body.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise Refused("malformed-json", f"not UTF-8, from byte {error.start} on") from None
    try:
        return json.loads(text, object_pairs_hook=_once, parse_constant=_no_number)
    except json.JSONDecodeError as error:
        where = f"line {error.lineno}, column {error.colno}"
        raise Refused("malformed-json", f"{error.msg} at {where}") from None
    except RecursionError:
        raise Refused("malformed-json", "nested too deep") from None
    except ValueError as error:
        if isinstance(error, _Doubtful):
            raise Refused("malformed-json", str(error)) from None
        raise Refused("malformed-json", "a number has too many figures") from None


class _Doubtful(ValueError):
    """JSON that one reader takes in one way and another in another."""


def _once(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    found = dict(pairs)
    if len(found) < len(pairs):
        raise _Doubtful("a name stands twice in one object")
    return found


def _no_number(word: str) -> NoReturn:
    raise _Doubtful(f"{word} is no JSON number")
