"""Examples for the document, from the invented Tavrenne Islands; not for navigation."""

NOTICE = """\
2417/26  TAVRENNE ISLANDS - Quill Sound - Wreck.
Chart 802 [last correction 2310/26] WGS84
Insert dangerous wreck, least depth 8.6m   47°13'.05S., 123°44'.20W.
"""

CHART_LIST = """\
number,title,scale,south,west,north,east
802,Quill Sound and Approaches,75000,-47.5,-124,-47,-123.25
"""

PARSE = {
    "text": NOTICE,
    "name": "week12.txt (invented, not for navigation)",
    "as_of": "2026-03-31",
    "region": "A",
    "format": "json",
}

CHARTS = """\
number,title,scale,scale_latitude,south,west,north,east,datum,last_notice
802,Quill Sound and Approaches,75000,-47.25,-47.5,-124,-47,-123.25,WGS84,2310/26
"""

SHEET = {
    "text": NOTICE,
    "name": "week12.txt (invented, not for navigation)",
    "charts": CHARTS,
    "chart": "802",
    "format": "html",
    "plot": False,
}

VALUES = {
    "Position": ("47°12'.34S., 123°45'.67W.\n", ["47°12'.34S., 123°45'.67W.", "47°12'.34"]),
    "PositionForms": ("47-12.34S 123-45.67W\n", ["47-12.34S 123-45.67W", "47-12.34S"]),
    "Light": ("Fl(3)WRG.15s21m15-11M\n", ["Fl(3)WRG.15s21m15-11M", "Q(6)+LFl.15s"]),
    "Depth": ("8.6m\ndries 1.2m\n", ["8.6m", "dries 1.2m", "3fm 2ft"]),
}
"""By the record: a body of lines, and a list of texts."""
