"""Sentences that say of a whole notice that it does not hold, or not yet: `Draft.`, `Postponed.`.

They stand behind its heading or above its charts.  What is told of the waters or of works, `Works
will be completed by June.`, is none; nor is a proposal that the heading names as its subject.
"""

from __future__ import annotations

import re

from noticeparse.readers.dates import MONTH
from noticeparse.readers.limiting_lines import limits_items, plain_sentence

_DONE = r"(?:corrected|applied|inserted|made|done|amended|charted|included|carried out)"
_DAY = (
    rf"(?:[0-9]{{1,2}}(?:st|nd|rd|th)? {MONTH}\b\.?|{MONTH} [0-9]{{1,4}}|[0-9]{{4}}-[0-9]{{2}}-"
    r"|[0-9]{1,2}[./][0-9]{1,2}[./])"
)
_SUBJECT = r"(?:(?:this|the) (?:notice|correction|message) is )?"
_ONLY_PLANNED = re.compile(
    rf"{_SUBJECT}(?:an? |for |as |by way of )?"
    r"(?:draft|proposal|proposed|provisional|tentative|unconfirmed|information|advance information"
    r"|advance notice)(?: (?:notice|message|correction|only|purposes?)){0,3}",
    re.IGNORECASE,
)
"""What every preliminary notice may say of itself."""
_HOLDS_NOT = re.compile(
    rf"{_SUBJECT}(?:an? |for |as |by way of )?(?:"
    r"(?:specimen|sample|example|exercise|test)"
    r"(?: (?:notice|message|correction|only|purposes?)){0,3}"
    r"(?: ?[-,;:] ?(?:(?:only|not) )?for (?:navigation|exercise|test|information|charting))?"
    r"|(?:deferred|postponed|suspended|held over|withdrawn|cancelled|superseded|void|on hold)"
    r"(?: (?:to|until|till|on|from|as from|by|since|pending|indefinitely)\b[^.;]{0,60})?"
    r"|not (?:for|to be used for) (?:(?:chart )?corrections?|(?:correction of )?charts?|charting)"
    r"(?: purposes?)?"
    rf"|(?:the |this |these )?(?:(?:charts?|copies|corrections?) )?(?:(?:is|are|has|have) )?"
    rf"(?:been )?already (?:been )?{_DONE}[^.;]{{0,40}}"
    r"|(?:to (?:be )?)?appl(?:y|ies|ied) (?:only )?(?:to|on|for|if|when|once|after|upon)\b"
    r"[^.;]{0,60}"
    r"|(?:upon|on|after|pending) (?:completion|publication|confirmation|approval)[^.;]{0,40}"
    r"|(?:do not|not to be|not yet|not) (?:be )?(?:appl(?:y|ied)|correct(?:ed)?|in force|valid"
    r"|effective|before|insert(?:ed)?|chart(?:ed)?|plot(?:ted)?|use(?:d)? until)\b[^.;]{0,60})",
    re.IGNORECASE,
)
_NOT_FORBIDDING = re.compile(r"not (?:valid )?for navigation", re.IGNORECASE)
_FROM_DAY = re.compile(
    r"(?:(?:to (?:be )?)?appl(?:y|ies|ied) (?:only )?|(?:with )?effect(?:ive)? |valid |in force )?"
    r"(?:from|as from|as of|(?<=[a-z] )on|after|commencing|starting|effective|w\.?e\.?f\.?)"
    rf"(?: on| from)? (?:about )?{_DAY}[^.;]{{0,12}}",
    re.IGNORECASE,
)


_ENDED = re.compile(
    r"(?:[^.;]{3,80}[.;:] ?)?(?:(?:this|the) )?(?:(?:temporary |preliminary )?notice )?"
    r"(?:is |has been |has )?(?:now |hereby )?"
    r"(?:cancell?ed|withdrawn|expired|lapsed|superseded|void|no longer (?:valid|in force))"
    r"(?: (?:on|since|from|by|as from) [^.;]{2,40})?",
    re.IGNORECASE,
)


def tells_end_of_itself(words: str) -> bool:
    """Whether a sentence, alone or behind a heading, says that its own notice has ended."""
    return _ENDED.fullmatch(plain_sentence(words)) is not None


def limits_notice(words: str, *, is_permanent: bool) -> bool:
    """Whether a sentence above all commands of a notice says that they do not hold."""
    plain = plain_sentence(words)
    if _NOT_FORBIDDING.fullmatch(plain):
        return False
    if is_permanent and _ONLY_PLANNED.fullmatch(plain):
        return True
    return _HOLDS_NOT.fullmatch(plain) is not None or limits_items(words) is not None


def starts_on_day(words: str) -> bool:
    """Whether a sentence says nothing but the day from which a notice holds."""
    return _FROM_DAY.fullmatch(plain_sentence(words)) is not None
