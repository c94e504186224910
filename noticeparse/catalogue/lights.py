"""Finding codes about lights, their sectors, and the aids on the same structure."""

from noticeparse.faults import Entry

_INT1_P = "INT 1 section P"
_S57 = "IHO S-57 Appendix A, chapter 2"
_S12 = "IHO S-12, Standardization of List of Lights"
_PRACTICE = "common practice, no published source"
_MEMORY = "from memory"
_E110 = "IALA recommendation E-110, Rhythmic characters of lights, from memory"
_P = "46-00.00S 122-00.00W"

ENTRIES = (
    Entry(
        "aid-remark-not-kept", "info", "the remark `{written}` behind the aid is not kept",
        "the record of a fog signal, racon or AIS has no place for remarks",
        "read the remark in the text", _PRACTICE,
    ),
    Entry(
        "aid-unreadable", "error", "`{written}` is no fog signal, racon or AIS",
        "the aid cannot be charted", "look for a slip in the abbreviation",
        "INT 1 sections R and S",
    ),
    Entry(
        "ais-twice", "warning", "AIS stands a second time: `{written}`",
        "one structure carries one AIS aid; the first is read", "check the original notice",
        _PRACTICE,
    ),
    Entry(
        "light-alternating-one-colour", "error", "`{written}` alternates without two colours",
        "an alternating light shows its colours in turn; one of them is lost",
        "ask the issuer for the colours", _S12,
    ),
    Entry(
        "light-axis-not-kept", "info", "the bearing `{written}` of the light's axis is not kept",
        "the record of a light has no place for the axis of a directional or leading light",
        "read the bearing in the text", _PRACTICE,
    ),
    Entry(
        "light-bracket-open", "warning", "the bracket `{written}` has no partner",
        "what the bracket was to hold may be cut off", "check the original notice", _PRACTICE,
    ),
    Entry(
        "light-character-unknown", "error", "no light has the character `{written}`",
        "two classes stand together that no light combines", "ask the issuer for the character",
        _S57 + ", LITCHR",
    ),
    Entry(
        "light-colour-ambiguous", "error", "`{written}` is no colour of a light",
        "B is black on a mark, and a light's blue is Bu; the colour is left out",
        "ask the issuer which colour is meant", _INT1_P + " 11",
    ),
    Entry(
        "light-colour-twice", "warning", "the colour `{written}` stands twice",
        "another colour may be meant by the second letter", "check the original notice", _PRACTICE,
    ),
    Entry(
        "light-colour-unknown", "error", "`{written}` is no colour of a light",
        "the colours cannot be read and are left out", "ask the issuer for the colours",
        _INT1_P + " 11",
    ),
    Entry(
        "light-colour-without-sector", "warning", "colour {colour} has no sector in `{written}`",
        "each colour of a sector light shows over a sector of its own",
        "check the sectors against the original notice", _INT1_P + " 40",
    ),
    Entry(
        "light-elevation-great", "warning", "`{written}`: high for a light of so short a range",
        "a decimal point may be lost, or metres and feet exchanged",
        "check the elevation against the list of lights", _PRACTICE,
    ),
    Entry(
        "light-elevation-twice", "error", "two elevations stand in `{written}`",
        "nobody can say which holds; the elevation is left out", "check the original notice",
        _INT1_P + " 13",
    ),
    Entry(
        "light-figure-missing-unit", "error", "`{written}` has no unit",
        "it may be seconds, metres or miles, and is left out", "ask the issuer for the unit",
        _INT1_P,
    ),
    Entry(
        "light-figure-zero", "error", "`{written}`: nought can be no value of a light",
        "a figure is lost", "check the original notice", _PRACTICE,
    ),
    Entry(
        "light-figures-out-of-order", "error", "`{written}`: the order is period, height, range",
        "another order is the sign of exchanged unit letters; the values are left out",
        "check the units against the original notice", _INT1_P,
    ),
    Entry(
        "light-figures-unclear", "error", "`{written}` is no figure of the kind wanted here",
        "only ranges stand in lists, and `visible` has its own unit; it is left out",
        "check the original notice",
        _INT1_P,
    ),
    Entry(
        "light-fixed-with-period", "error", "a fixed light has no period `{written}`",
        "the class or the period is wrong; the period is left out",
        "ask the issuer whether another class is meant", _S12,
    ),
    Entry(
        "light-flash-too-quick", "warning", "a flash every `{written}` is quick-flashing, not Fl",
        "fifty flashes a minute or more are Q; a figure may be wrong",
        "check the period against the original notice", _S12,
    ),
    Entry(
        "light-group-impossible", "error", "a fixed or isophase light has no group `{written}`",
        "the class or the group is wrong; the group is left out", "ask the issuer", _S12,
    ),
    Entry(
        "light-group-large", "warning", "`{written}`: so large a group cannot be counted at sea",
        "five flashes or six are the most that a group has; a figure may be wrong",
        "check the group against the list of lights", _E110,
        f"Insert light, Fl‹(12)›60s {_P}", f"Insert light, Fl(2)60s {_P}",
    ),
    Entry(
        "light-group-missing", "warning", "`{written}` tells of a group without its figures",
        "the number of flashes is lost", "check the original notice", _MEMORY,
    ),
    Entry(
        "light-group-odd", "warning", "this class has no group `{written}` today",
        "it is an old way of writing, or the class is wrong", "check the list of lights", _MEMORY,
    ),
    Entry(
        "light-group-out-of-place", "warning", "the group `{written}` stands away from its class",
        "it may be the number of an item", "check the original notice", _INT1_P,
    ),
    Entry(
        "light-group-too-quick", "warning", "`{written}`: the group does not fit into the period",
        "each flash needs about a second; the group or the period is wrong",
        "check both against the original notice", _S12,
    ),
    Entry(
        "light-group-unreadable", "error", "the brackets `{written}` cannot be read",
        "the group is left out", "check the original notice", _S57 + ", SIGGRP",
    ),
    Entry(
        "light-group-zero", "error", "`{written}`: a group of nought flashes",
        "a figure is wrong; the group is left out", "check the original notice", _S57 + ", SIGGRP",
    ),
    Entry(
        "light-join-missing", "warning", "a second light begins at `{written}` without a sign",
        "`&` joins two lights; part of the text may be lost", "check the original notice",
        _PRACTICE,
    ),
    Entry(
        "light-leftover-figure", "error", "`{written}` belongs to no part of the light",
        "a value of the light may be lost", "check the original notice", _PRACTICE,
    ),
    Entry(
        "light-leftover-words", "warning", "`{written}` belongs to no part of the light",
        "a part of the light may be miswritten", "check the original notice", _PRACTICE,
    ),
    Entry(
        "light-long-flash-too-quick", "warning", "`{written}` leaves a long flash no dark",
        "a long flash lasts two seconds or more; the period must be longer",
        "check the period against the original notice", _S12,
    ),
    Entry(
        "light-look-alike", "warning", "`{written}` has `{letter}`, read as `{read}`",
        "characters that look alike are exchanged in copying; the value may be another",
        "check it against the original notice", _PRACTICE,
    ),
    Entry(
        "light-morse-missing", "error", "`{written}` names no Morse letter",
        "a Morse light is known by its letter", "ask the issuer for the letter", _INT1_P + " 10.9",
    ),
    Entry(
        "light-morse-odd", "warning", "`{written}` mixes letters and figures",
        "a period may have slipped into the brackets", "check the original notice", _PRACTICE,
    ),
    Entry(
        "light-period-long", "warning", "a period of `{written}` is long",
        "a decimal point may be lost", "check the period against the list of lights", _PRACTICE,
    ),
    Entry(
        "light-period-missing", "info", "`{written}` states no period",
        "small-scale charts leave it out; the large-scale chart has it",
        "take the period from the list of lights where it is needed", _INT1_P + " 12",
    ),
    Entry(
        "light-period-missing-unit", "error", "`{written}` stands for the period without its unit",
        "it may be the period or another figure, and is left out", "ask the issuer for the unit",
        _INT1_P + " 12",
    ),
    Entry(
        "light-period-of-signal", "warning", "`{written}` has the period of the fog signal",
        "the period of one aid may have been taken for that of the other",
        "check both against the list of lights", _PRACTICE,
        f"‹Insert light, Fl.R.30s, Horn(2)30s {_P}›", f"Insert light, Fl.R.5s, Horn(2)30s {_P}",
    ),
    Entry(
        "light-period-short", "warning", "`{written}` is too short for a light of this class",
        "no eye tells light and dark apart so quickly; a figure may be wrong",
        "check the period against the list of lights", _E110,
        f"Insert light, Iso.‹0.5s› {_P}", f"Insert light, Iso.5s {_P}",
    ),
    Entry(
        "light-period-twice", "error", "two periods stand in `{written}`",
        "nobody can say which holds; the period is left out", "check the original notice",
        _INT1_P + " 12",
    ),
    Entry(
        "light-plus-missing", "warning", "`{written}` is read as one character without its plus",
        "two lights may be meant", "check the original notice", _INT1_P + " 10",
    ),
    Entry(
        "light-quick-period", "warning", "`{written}` from flash to flash does not fit the class",
        "a group in brackets may be lost, or the class is wrong", "check the original notice",
        _S12,
    ),
    Entry(
        "light-range-comma-unclear", "error",
        "`{written}`: the comma may be a point or part two ranges",
        "the ranges are left out", "ask the issuer", _INT1_P + " 14",
    ),
    Entry(
        "light-range-count", "error", "{ranges} ranges `{written}` stand for {colours} colours",
        "which range belongs to which colour cannot be told", "ask the issuer for the ranges",
        _INT1_P + " 14",
    ),
    Entry(
        "light-range-great", "warning", "a range of `{written}` is great",
        "a decimal point may be lost, or metres are meant", "check the list of lights", _PRACTICE,
    ),
    Entry(
        "light-range-hyphen", "info", "a hyphen in `{written}`, where a stroke parts the ranges",
        "a hyphen stands between the greatest and the least of three ranges or more",
        "no action unless the list of lights differs", _INT1_P + " 14",
    ),
    Entry(
        "light-range-in-metres", "error", "`{written}`: metres stand where the range is wanted",
        "small m is metres, capital M is miles; the range is left out",
        "ask the issuer for the range", _INT1_P + " 14",
    ),
    Entry(
        "light-range-order", "warning", "`{written}`: the greatest range stands first",
        "the figures are exchanged or one is wrong; no colour is given its range",
        "check the ranges against the list of lights", _INT1_P + " 14",
    ),
    Entry(
        "light-range-twice", "error", "two ranges `{written}` stand without a stroke",
        "nobody can say which holds; the ranges are left out", "check the original notice",
        _INT1_P + " 14",
    ),
    Entry(
        "light-range-white-less", "warning", "`{written}`: white shows less far than a colour",
        "coloured glass takes light away; the ranges may be exchanged",
        "check the ranges against the list of lights", _PRACTICE,
        f"Insert light, Fl.WR.5s20m‹9/12M› {_P}", f"Insert light, Fl.WR.5s20m12/9M {_P}",
    ),
    Entry(
        "light-several", "error", "`{written}` holds more than one light",
        "each light has a character of its own", "give one light at a time", _PRACTICE,
    ),
    Entry(
        "light-unit-by-order", "info", "`{written}` in capitals is read as {read}",
        "metres and miles look alike in capitals; elevation stands before range",
        "no action unless the list of lights differs", _INT1_P,
    ),
    Entry(
        "light-unit-unclear", "warning", "`{written}` in capitals may be metres or miles",
        "elevation and range look alike; the value is left out", "take it from the list of lights",
        _INT1_P,
    ),
    Entry(
        "light-unit-without-figure", "warning", "the unit `{written}` has no figure",
        "a value of the light is lost", "check the original notice", _INT1_P,
    ),
    Entry(
        "light-unreadable", "error", "`{written}` is no light",
        "the character cannot be charted", "look for a slip in the abbreviation", _INT1_P + " 10",
    ),
    Entry(
        "racon-band-not-kept", "info", "the band `{written}` of the racon is not kept",
        "the record of a racon has no place for it", "read the band in the text",
        "INT 1 section S 3",
    ),
    Entry(
        "racon-letter-unreadable", "error", "the racon's letter `{written}` is unreadable",
        "the racon is known by its letter", "ask the issuer for the letter", "INT 1 section S 3",
    ),
    Entry(
        "racon-twice", "warning", "a second racon stands at `{written}`",
        "one structure carries one racon; the first is read", "check the original notice",
        _PRACTICE,
    ),
    Entry(
        "sector-bearing-too-great", "error", "`{written}`: a bearing ends at 360 degrees",
        "the sector is left out", "look for a digit slip and ask the issuer", _S57 + ", SECTR1",
    ),
    Entry(
        "sector-colour-not-of-light", "warning",
        "a sector of `{written}`, the light shows {colours}",
        "the colour of the sector or of the light is wrong", "check the original notice",
        _INT1_P + " 40",
    ),
    Entry(
        "sector-empty", "error", "both limits of `{written}` are the same",
        "it may be the whole circle or nothing; the sector is left out", "ask the issuer",
        _S57 + ", SECTR1",
    ),
    Entry(
        "sector-gap", "info", "{degrees} degrees between two sectors have no colour: `{written}`",
        "the light is dark or obscured there", "no action unless the list of lights differs",
        _S57 + ", SECTR1",
    ),
    Entry(
        "sector-gap-narrow", "warning",
        "{degrees} degrees are left out between sectors `{written}`",
        "neighbouring sectors share their limit; a figure is wrong", "check the original notice",
        _S57 + ", SECTR1",
    ),
    Entry(
        "sector-limit-open", "warning", "the sector `{written}` has no second limit",
        "a light seen to the shore ends at the land; no figure is made up for it",
        "read the sector in the text", _S57 + ", SECTR2",
    ),
    Entry(
        "sector-overlap", "warning", "two sectors overlap by {degrees} degrees: `{written}`",
        "two colours cannot show over the same water; a limit is wrong",
        "check the limits against the list of lights", _S57 + ", SECTR1",
    ),
    Entry(
        "sector-unreadable", "error", "the sectors `{written}` cannot be read",
        "the sectors are left out", "check the original notice", _INT1_P + " 40",
    ),
    Entry(
        "sector-width-differs", "warning",
        "the width `{written}` is not the {width} of the limits",
        "one of the limits or the width is wrong",
        "check the limits against the original notice",
        _PRACTICE,
    ),
    Entry(
        "sound-morse-not-kept", "info", "the Morse letters `{written}` of the signal are not kept",
        "the record of a fog signal has no place for them", "read the letters in the text",
        "INT 1 section R",
    ),
    Entry(
        "sound-range-not-kept", "info", "the range `{written}` of the fog signal is not kept",
        "the record of a fog signal has no place for it", "read the range in the text",
        "INT 1 section R",
    ),
    Entry(
        "sound-twice", "warning", "a second fog signal stands at `{written}`",
        "the first is read", "read the second in the text", _PRACTICE,
    ),
)  # fmt: skip
