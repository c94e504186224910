"""What came of a run: for a person, as JUnit XML and as JSON."""

from __future__ import annotations

import json
import shlex
import unicodedata
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from typing import Any
from xml.etree import ElementTree

from noticeparse.caution import CAUTION
from noticeparse.testing.cases import Kind
from noticeparse.testing.fuzzing import Failure, Result
from noticeparse.testing.targets import Target
from noticeparse.version import VERSION

_LONGEST = 400


@dataclass(frozen=True, slots=True)
class Run:
    """What was asked for, and of whom."""

    kind: Kind
    target: Target
    examples: int
    seed: int

    def again(self, result: Result) -> str:
        """The command that runs one mutation anew."""
        only = f"--only {result.mutation.name} --examples {self.examples} --seed {self.seed}"
        words = self.target.address
        target = "" if words is None else f" --target {shlex.quote(words)}"
        return f"noticeparse fuzz {self.kind} {only}{target}"


def code_points(text: str) -> list[str]:
    """The characters of a text that are no plain ASCII, each with its name and places."""
    places: dict[str, list[int]] = {}
    for at, char in enumerate(text):
        if not (char.isascii() and (char.isprintable() or char == "\n")):
            places.setdefault(char, []).append(at)
    return [
        f"U+{ord(char):04X} {unicodedata.name(char, 'without a name')} at {_listed(found)}"
        for char, found in places.items()
    ]


def _listed(places: Sequence[int]) -> str:
    shown = ", ".join(map(str, places[:8]))
    return shown if len(places) <= 8 else f"{shown} and {len(places) - 8} more"


def headline(result: Result) -> str:
    """One mutation on one line."""
    state = "ok    " if result.failure is None else "FAILED"
    return f"{state}  {result.mutation.name:34}{result.examples:6}  {result.mutation.outcome}"


def details(run: Run, result: Result, failure: Failure) -> Iterator[str]:
    """A failure for a person, line by line; every character that cannot be told apart is named."""
    mutation = result.mutation
    yield f"{mutation.name}: {mutation.what}; must be: {mutation.outcome}"
    yield f"  wrong:  {_visible(failure.wrong)}"
    for at, line in enumerate(failure.case.text.split("\n")):
        yield f"  {'text: ' if at == 0 else '      '}  {_visible(line)}"
    yield f"  exact:  {failure.case.text!a}"
    for words in code_points(failure.case.text):
        yield f"          {words}"
    if failure.answer is not None:
        yield f"  answer: {_shortened(_visible(failure.answer))}"
    yield f"  again:  {run.target.reproduction(failure.case.text)}"
    yield f"  rerun:  {run.again(result)}"


def _visible(text: str) -> str:
    return "".join(char if char.isprintable() else "\N{REPLACEMENT CHARACTER}" for char in text)


def _shortened(text: str) -> str:
    return text if len(text) <= _LONGEST else text[:_LONGEST] + "…"


def write_json(run: Run, results: Sequence[Result]) -> str:
    """The report as one JSON document."""
    document = {
        "generator": {"name": "noticeparse", "version": VERSION},
        "caution": CAUTION,
        "kind": run.kind,
        "target": run.target.name,
        "examples": run.examples,
        "seed": run.seed,
        "failed": sum(result.failure is not None for result in results),
        "mutations": [_as_json(run, result) for result in results],
    }
    return json.dumps(document, indent=1) + "\n"


def _as_json(run: Run, result: Result) -> dict[str, Any]:
    mutation, failure = result.mutation, result.failure
    return {
        "name": mutation.name, "what": mutation.what, "outcome": mutation.outcome,
        "codes": sorted(mutation.codes), "examples": result.examples,
        "failure": failure and {
            "wrong": failure.wrong, "text": failure.case.text,
            "code_points": code_points(failure.case.text), "answer": failure.answer,
            "again": run.target.reproduction(failure.case.text), "rerun": run.again(result),
        },
    }  # fmt: skip


def write_junit(run: Run, results: Sequence[Result]) -> str:
    """The report as JUnit XML: a test case for each mutation."""
    failed = sum(result.failure is not None for result in results)
    suite = ElementTree.Element(
        "testsuite", name=f"noticeparse fuzz {run.kind}", tests=str(len(results)),
        failures=str(failed), errors="0", skipped="0",
    )  # fmt: skip
    facts = ElementTree.SubElement(suite, "properties")
    for name, value in (
        ("target", run.target.name), ("seed", str(run.seed)), ("examples", str(run.examples)),
        ("version", VERSION), ("caution", CAUTION),
    ):  # fmt: skip
        ElementTree.SubElement(facts, "property", name=name, value=_in_xml(value))
    for result in results:
        case = ElementTree.SubElement(
            suite, "testcase", classname=f"noticeparse.fuzz.{run.kind}", name=result.mutation.name
        )
        if result.failure is not None:
            told = ElementTree.SubElement(case, "failure", message=_in_xml(result.failure.wrong))
            told.text = _in_xml("\n".join(details(run, result, result.failure)))
    ElementTree.indent(suite)
    head = '<?xml version="1.0" encoding="UTF-8"?>\n'
    return head + ElementTree.tostring(suite, encoding="unicode") + "\n"


def _in_xml(text: str) -> str:
    """The text without the characters that no XML may hold."""
    return "".join(char if char == "\n" or char.isprintable() else "\ufffd" for char in text)


WRITERS: dict[str, Callable[[Run, Sequence[Result]], str]] = {
    ".json": write_json,
    ".xml": write_junit,
}
"""What writes a report, by the ending of its file."""
