"""How much of the whole way, text to JSON bytes, the checks take: it must stay under 20 %.

    python -m tests.bench.bench_checks [--size 300kB] [--runs 5]

Each run reads a text of its own in drawn layouts, then runs all checks over its notices once more
by themselves; besides the share, it tells the time of each check.
"""

from __future__ import annotations

import argparse
import sys
from functools import partial

from noticeparse import parse
from noticeparse.checks import BULLETIN_CHECKS, CHECKS
from noticeparse.checks.given import Given
from noticeparse.checks.running import check_bulletin, check_notice
from noticeparse.records.bulletin import Bulletin
from noticeparse.testing.generator import generate
from noticeparse.testing.generator.__main__ import read_size
from tests.bench.measure import forget, machine, middle, seconds, table

_MOST = 0.20
_BESIDE = 4


def check(bulletin: Bulletin, given: Given) -> None:
    """All checks over the notices and the whole, as the pipeline runs them without a list."""
    notices = bulletin.notices
    for index, notice in enumerate(notices):
        check_notice(notice, "", notices[max(0, index - _BESIDE) : index + _BESIDE + 1])
    check_bulletin(bulletin, given)


def _one(number: int, bulletin: Bulletin, given: Given) -> None:
    if number < len(CHECKS):
        for notice in bulletin.notices:
            list(CHECKS[number](notice))
    else:
        list(BULLETIN_CHECKS[number - len(CHECKS)](bulletin, given))


def main() -> None:
    """Measure, print, and end with status 1 where the checks take too much."""
    options = argparse.ArgumentParser(prog="python -m tests.bench.bench_checks")
    options.add_argument("--size", type=read_size, default=300_000)
    options.add_argument("--runs", type=int, default=5)
    given = options.parse_args()
    whole: list[float] = []
    checks: list[float] = []
    each: list[list[float]] = [[] for _ in (*CHECKS, *BULLETIN_CHECKS)]
    for seed in range(given.runs):
        text = generate(seed, size_bytes=given.size).text
        forget()
        whole.append(seconds(lambda text=text: parse(text).model_dump_json().encode()))
        bulletin, asked = parse(text), Given(text)
        checks.append(seconds(partial(check, bulletin, asked)))
        for number, times in enumerate(each):
            times.append(seconds(partial(_one, number, bulletin, asked)))
    share = middle(checks) / middle(whole)
    print(f"{machine()}; the checks take {share:.1%} of the whole way, {_MOST:.0%} at most")
    rows = [("the whole way", f"{middle(whole) * 1000:.0f}", "")]
    rows += [("all checks", f"{middle(checks) * 1000:.1f}", f"{share:.2%}")]
    for found, times in zip((*CHECKS, *BULLETIN_CHECKS), each, strict=True):
        taken = middle(times)
        rows.append((found.__name__, f"{taken * 1000:.1f}", f"{taken / middle(whole):.2%}"))
    print(table(("what", "ms", "share"), rows))
    sys.exit(share > _MOST)


if __name__ == "__main__":
    main()
