"""The typed records of the output contract: frozen pydantic models, one module for each thing.

Records hold values and the words they came from; they know no grammar and do no reading.  Their
modules do not put off the evaluation of annotations: the models need all of them at once.
"""

from noticeparse.records.action import Action, Amend, Change, Delete, Insert, Move, Replace
from noticeparse.records.bulletin import (
    Bulletin,
    Coverage,
    Edition,
    EditionList,
    Generator,
    ListEntry,
    Source,
)
from noticeparse.records.chart import ChartSection, Datum
from noticeparse.records.chart_list import ChartList, ListedChart
from noticeparse.records.depth import Clearance, Depth
from noticeparse.records.feature import Ais, Companion, Feature, Racon, Sound
from noticeparse.records.finding import Finding, Severity
from noticeparse.records.geometry import Arc, Geometry, Offset
from noticeparse.records.light import Light, Sector
from noticeparse.records.notice import Notice, NoticeRef, Remark, Validity
from noticeparse.records.position import Position
from noticeparse.records.sheet import Sheet, SheetPlace

__all__ = [
    "Action",
    "Ais",
    "Amend",
    "Arc",
    "Bulletin",
    "Change",
    "ChartList",
    "ChartSection",
    "Clearance",
    "Companion",
    "Coverage",
    "Datum",
    "Delete",
    "Depth",
    "Edition",
    "EditionList",
    "Feature",
    "Finding",
    "Generator",
    "Geometry",
    "Insert",
    "Light",
    "ListEntry",
    "ListedChart",
    "Move",
    "Notice",
    "NoticeRef",
    "Offset",
    "Position",
    "Racon",
    "Remark",
    "Replace",
    "Sector",
    "Severity",
    "Sheet",
    "SheetPlace",
    "Sound",
    "Source",
    "Validity",
]
