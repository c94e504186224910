"""Names of the publications that a notice may correct beside charts."""

BOOKS = (
    r"(?:lists? of (?:lights?|(?:radio|fog) signals?|beacons|buoys)(?: and fog signals)?"
    r"|(?:lights?|radio|buoy) lists?|sailing (?:directions|guides?)|book of (?:the )?lights"
    r"|(?:[a-z'-]{2,20} )?pilots?(?: books?)?|(?:tide|tidal|distance) tables|radio signals"
    r"|(?:tidal (?:stream )?|routeing )atlas|(?:nautical )?almanacs?|handbooks?(?: [a-z]+){0,3}"
    r"|(?:nautical )?publications?|books?|(?:electronic|digital) (?:nautical )?charts?|encs?)"
)
"""A pattern, for small letters and capitals: books, and charts that are no sheet of paper."""
