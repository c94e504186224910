"""Heads and places of short notices, and what is read of them."""

from __future__ import annotations

from noticeparse.records.action import Action
from noticeparse.records.bulletin import Bulletin

HEAD = "12/26 Quill Sound.\nChart 802 [3/26] WGS84, depths in metres\n"
HEAD_WITHOUT_UNIT = "2417/26\nQuill Sound - Wreck.\nChart 802 [12/26] WGS84\n"

P, Q, R = "46-00.00S 122-00.00W", "46-00.50S 122-00.00W", "46-00.10S 122-00.20W"


def actions_of(bulletin: Bulletin) -> list[Action]:
    return [a for notice in bulletin.notices for chart in notice.charts for a in chart.actions]


def usable_of(bulletin: Bulletin) -> list[tuple[str, str]]:
    """Verb and kind of every action that may be used."""
    return [(a.verb, a.feature.kind) for a in actions_of(bulletin) if a.usable]


AT_P, AT_Q, AT_R = "-4600.00-12200.00/", "-4600.50-12200.00/", "-4600.10-12200.20/"
WRECK_AND_ROCK = [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]


def told(bulletin: Bulletin) -> list[tuple[str, str, list[str]]]:
    return [
        (action.verb, action.feature.kind, [p.iso6709 for p in action.geometry.positions])
        for notice in bulletin.notices
        for chart in notice.charts
        for action in chart.actions
        if action.usable
    ]


def errors(bulletin: Bulletin) -> set[str]:
    return {finding.code for finding in bulletin.findings if finding.severity == "error"}


def places(bulletin: Bulletin) -> list[list[str]]:
    return [
        [position.iso6709 for position in action.geometry.positions]
        for action in actions_of(bulletin)
    ]


def kinds(bulletin: Bulletin) -> list[tuple[str, str]]:
    """Verb and kind of every action, also of one that may not be used."""
    return [(action.verb, action.feature.kind) for action in actions_of(bulletin)]


def codes(bulletin: Bulletin) -> set[str]:
    """What is told as a warning or an error."""
    return {one.code for one in bulletin.findings if one.severity != "info"}


def words_unread(bulletin: Bulletin) -> list[str]:
    """What is said of the words of features that are not understood."""
    return [one.message for one in bulletin.findings if one.code == "feature-words-unread"]
