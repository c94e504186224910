"""Finding codes about sectors, and about the aids on the structure of a light."""

from noticeparse.faults import Entry

_INT1_P = "INT 1 section P"
_S57 = "IHO S-57 Appendix A, chapter 2"
_PRACTICE = "common practice, no published source"

ENTRIES = (
    Entry(
        "aid-remark-not-kept", "info", "the remark `{written}` behind the aid is not kept",
        "the record of a fog signal, racon or AIS has no place for remarks",
        "read the remark in the text", _PRACTICE,
        bad="Fl.5s Horn(2)30s ‹(occas)›",
        good="Fl.5s Horn(2)30s",
    ),
    Entry(
        "aid-unreadable", "error", "`{written}` is no fog signal, racon or AIS",
        "the aid cannot be charted", "look for a slip in the abbreviation",
        "INT 1 sections R and S",
        bad="‹hoarn›",
        good="Horn(2)30s",
    ),
    Entry(
        "ais-twice", "warning", "AIS stands a second time: `{written}`",
        "one structure carries one AIS aid; the first is read", "check the original notice",
        _PRACTICE,
        bad="Insert light, Fl.5s AIS ‹V-AIS› 46-00.00S 122-00.00W",
        good="Insert light, Fl.5s AIS 46-00.00S 122-00.00W",
    ),
    Entry(
        "racon-band-not-kept", "info", "the band `{written}` of the racon is not kept",
        "the record of a racon has no place for it", "read the band in the text",
        "INT 1 section S 3",
        bad="Insert light, Fl.5s Racon(K) ‹(3 & 10cm)› 46-00.00S 122-00.00W",
        good="Insert light, Fl.5s Racon(K) 46-00.00S 122-00.00W",
    ),
    Entry(
        "racon-letter-unreadable", "error", "the racon's letter `{written}` is unreadable",
        "the racon is known by its letter", "ask the issuer for the letter", "INT 1 section S 3",
        bad="Insert light, Fl.5s Racon‹(KK K› 46-00.00S 122-00.00W",
        good="Insert light, Fl.5s Racon(K) 46-00.00S 122-00.00W",
    ),
    Entry(
        "racon-twice", "warning", "a second racon stands at `{written}`",
        "one structure carries one racon; the first is read", "check the original notice",
        _PRACTICE,
        bad="Insert light, Fl.5s Racon(K) ‹Racon(M)› 46-00.00S 122-00.00W",
        good="Insert light, Fl.5s Racon(K) 46-00.00S 122-00.00W",
    ),
    Entry(
        "sector-bearing-too-great", "error", "`{written}`: a bearing ends at 360 degrees",
        "the sector is left out", "look for a digit slip and ask the issuer", _S57 + ", SECTR1",
        bad="Insert light, Fl.WR.4s W 171°-195°, R 195°-‹390°› 46-00.00S 122-00.00W",
        good="Insert light, Fl.WR.4s W 171°-195°, R 195°-171° 46-00.00S 122-00.00W",
    ),
    Entry(
        "sector-colour-not-of-light", "warning",
        "a sector is `{written}`, but the light shows {colours}",
        "the colour of the sector or of the light is wrong", "check the original notice",
        _INT1_P + " 40",
        bad="Insert light, Fl.WR.4s W 000°-090°, R 090°-180°, ‹G› 180°-360° 46-00.00S 122-00.00W",
        good="Insert light, Fl.WRG.4s W 000°-090°, R 090°-180°, G 180°-360° 46-00.00S 122-00.00W",
    ),
    Entry(
        "sector-empty", "error", "both limits of `{written}` are the same",
        "it may be the whole circle or nothing; the sector is left out", "ask the issuer",
        _S57 + ", SECTR1",
        bad="Insert light, Fl.R.4s R ‹090°-090°› 46-00.00S 122-00.00W",
        good="Insert light, Fl.R.4s R 090°-180° 46-00.00S 122-00.00W",
    ),
    Entry(
        "sector-gap", "info", "{degrees} degrees between two sectors have no colour: `{written}`",
        "the light is dark or obscured there", "no action unless the list of lights differs",
        _S57 + ", SECTR1",
        bad="Insert light, Fl.WR.4s W 000°-‹045°, R 090°›-000° 46-00.00S 122-00.00W",
        good="Insert light, Fl.WR.4s W 000°-045°, R 045°-000° 46-00.00S 122-00.00W",
    ),
    Entry(
        "sector-gap-narrow", "warning",
        "{degrees} degrees are left out between sectors `{written}`",
        "neighbouring sectors share their limit; a figure is wrong", "check the original notice",
        _S57 + ", SECTR1",
        bad="Insert light, Fl.WR.4s W 171°-‹195°, R 196°›-171° 46-00.00S 122-00.00W",
        good="Insert light, Fl.WR.4s W 171°-195°, R 195°-171° 46-00.00S 122-00.00W",
    ),
    Entry(
        "sector-limit-open", "warning", "the sector `{written}` has no second limit",
        "a light seen to the shore ends at the land; no figure is made up for it",
        "read the sector in the text", _S57 + ", SECTR2",
        bad="Insert light, Fl.R.5s R ‹045° to the shore› 46-00.00S 122-00.00W",
        good="Insert light, Fl.R.5s R 045°-090° 46-00.00S 122-00.00W",
    ),
    Entry(
        "sector-magnetic", "error", "`{written}`: the sectors are given by the compass",
        "bearings of sectors are true; without the variation these cannot be made so",
        "work them out with the variation of the chart", _INT1_P + " 40",
        bad="Insert light, Fl.WR.4s W 171°-195°, R 195°-171° ‹(mag)› 46-00.00S 122-00.00W",
        good="Insert light, Fl.WR.4s W 171°-195°, R 195°-171° 46-00.00S 122-00.00W",
    ),
    Entry(
        "sector-not-read", "warning", "the bearing `{written}` went into no sector",
        "the sectors are not, or not all, in the record", "read the sectors in the text",
        _INT1_P + " 40",
        bad="Insert light, Fl.5s10m8M, ‹190°-200°› 46-00.00S 122-00.00W",
        good="Insert light, Fl.5s10m8M, obscd 190°-200° 46-00.00S 122-00.00W",
    ),
    Entry(
        "sector-others-unsaid", "warning",
        "`{written}`: of the other sectors of the light nothing is said",
        "taken for all sectors, it would take the others off the chart",
        "change the sector named alone, and leave the others", _PRACTICE,
        bad="Amend white sector of light to ‹045°-060°› 46-00.00S 122-00.00W",
        good="Amend sectors of light to W 000°-180°, R 180°-000° 46-00.00S 122-00.00W",
    ),
    Entry(
        "sector-overlap", "warning", "two sectors overlap by {degrees} degrees: `{written}`",
        "two colours cannot show over the same water; a limit is wrong",
        "check the limits against the list of lights", _S57 + ", SECTR1",
        bad="Insert light, Fl.WR.4s W 171°-‹195°, R 190°›-171° 46-00.00S 122-00.00W",
        good="Insert light, Fl.WR.4s W 171°-195°, R 195°-171° 46-00.00S 122-00.00W",
    ),
    Entry(
        "sector-unreadable", "error", "the sectors `{written}` cannot be read",
        "the sectors are left out", "check the original notice", _INT1_P + " 40",
        bad="Fl.WR.4s W 171°-195°, R ‹195°75'›-171°",
        good="Fl.WR.4s W 171°-195°15', R 195°15'-171°",
    ),
    Entry(
        "sector-width-differs", "warning",
        "the width `{written}` is not the {width} of the limits",
        "one of the limits or the width is wrong",
        "check the limits against the original notice",
        _PRACTICE,
        bad="Insert light, Fl.R.4s R 000°-090°‹(80°)› 46-00.00S 122-00.00W",
        good="Insert light, Fl.R.4s R 000°-090°(90°) 46-00.00S 122-00.00W",
    ),
    Entry(
        "sound-morse-not-kept", "info", "the Morse letters `{written}` of the signal are not kept",
        "the record of a fog signal has no place for them", "read the letters in the text",
        "INT 1 section R",
        bad="Insert light, Fl.5s Siren ‹Mo(N)› 30s 46-00.00S 122-00.00W",
        good="Insert light, Fl.5s Siren 30s 46-00.00S 122-00.00W",
    ),
    Entry(
        "sound-range-not-kept", "info", "the range `{written}` of the fog signal is not kept",
        "the record of a fog signal has no place for it", "read the range in the text",
        "INT 1 section R",
        bad="Fl.5s Horn 30s ‹3M›",
        good="Fl.5s Horn 30s",
    ),
    Entry(
        "sound-twice", "warning", "a second fog signal stands at `{written}`",
        "the first is read", "read the second in the text", _PRACTICE,
        bad="Insert light, Fl.5s Horn 30s ‹Bell› 46-00.00S 122-00.00W",
        good="Insert light, Fl.5s Horn 30s 46-00.00S 122-00.00W",
    ),
)  # fmt: skip
