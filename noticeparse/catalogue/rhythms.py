"""Finding codes about the rhythm of a light: groups, flashes and periods."""

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
        "light-alternating-one-colour", "error", "`{written}` alternates without two colours",
        "an alternating light shows its colours in turn; one of them is lost",
        "ask the issuer for the colours", _S12,
        bad="Insert light, ‹Al.W.5s› 46-00.00S 122-00.00W",
        good="Insert light, Al.WR.5s 46-00.00S 122-00.00W",
    ),
    Entry(
        "light-character-unknown", "error", "no light has the character `{written}`",
        "two classes stand together that no light combines", "ask the issuer for the character",
        _S57 + ", LITCHR",
        bad="Insert light, ‹Q.Oc.R.5s› 46-00.00S 122-00.00W",
        good="Insert light, Oc.R.5s 46-00.00S 122-00.00W",
    ),
    Entry(
        "light-colour-without-sector", "warning", "colour {colour} has no sector in `{written}`",
        "each colour of a sector light shows over a sector of its own",
        "check the sectors against the original notice", _INT1_P + " 40",
        bad="Insert light, Fl.WRG.5s ‹W 045°-090°, G 090°-045°› 46-00.00S 122-00.00W",
        good="Insert light, Fl.WRG.5s W 045°-090°, G 090°-180°, R 180°-045° 46-00.00S 122-00.00W",
    ),
    Entry(
        "light-figure-zero", "error", "`{written}`: nought can be no value of a light",
        "a figure is lost", "check the original notice", _PRACTICE,
        bad="Insert light, Fl.R.‹0s› 46-00.00S 122-00.00W",
        good="Insert light, Fl.R.10s 46-00.00S 122-00.00W",
    ),
    Entry(
        "light-fixed-with-period", "error", "a fixed light has no period `{written}`",
        "the class or the period is wrong; the period is left out",
        "ask the issuer whether another class is meant", _S12,
        bad="Insert light, F.R.‹5s›4m3M 46-00.00S 122-00.00W",
        good="Insert light, F.R.4m3M 46-00.00S 122-00.00W",
    ),
    Entry(
        "light-flash-too-quick", "warning", "a flash every `{written}` is quick-flashing, not Fl",
        "fifty flashes a minute or more are Q; a figure may be wrong",
        "check the period against the original notice", _S12,
        bad="Insert light, Fl.R.‹0.3s› 46-00.00S 122-00.00W",
        good="Insert light, Fl.R.3s 46-00.00S 122-00.00W",
    ),
    Entry(
        "light-group-impossible", "error", "a fixed or isophase light has no group `{written}`",
        "the class or the group is wrong; the group is left out", "ask the issuer", _S12,
        bad="Insert light, Iso‹(2)›R.4s 46-00.00S 122-00.00W",
        good="Insert light, Iso.R.4s 46-00.00S 122-00.00W",
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
        bad="Insert light, ‹Gp Fl 10s› 46-00.00S 122-00.00W",
        good="Insert light, Gp Fl(2) 10s 46-00.00S 122-00.00W",
    ),
    Entry(
        "light-group-odd", "warning", "this class has no group `{written}` today",
        "it is an old way of writing, or the class is wrong", "check the list of lights", _MEMORY,
        bad="Insert light, IQ‹(3)›10s 46-00.00S 122-00.00W",
        good="Insert light, IQ.10s 46-00.00S 122-00.00W",
    ),
    Entry(
        "light-group-out-of-place", "warning", "the group `{written}` stands away from its class",
        "it may be the number of an item", "check the original notice", _INT1_P,
        bad="Fl.R‹(2)›10s",
        good="Fl(2)R.10s",
    ),
    Entry(
        "light-group-too-quick", "warning", "`{written}`: the group does not fit into the period",
        "each flash needs about a second; the group or the period is wrong",
        "check both against the original notice", _S12,
        bad="Insert light, Fl‹(3)1s› 46-00.00S 122-00.00W",
        good="Insert light, Fl(3)10s 46-00.00S 122-00.00W",
    ),
    Entry(
        "light-group-unreadable", "error", "the brackets `{written}` cannot be read",
        "the group is left out", "check the original notice", _S57 + ", SIGGRP",
        bad="Insert light, Fl‹(2+)›R.10s 46-00.00S 122-00.00W",
        good="Insert light, Fl(2+1)R.10s 46-00.00S 122-00.00W",
    ),
    Entry(
        "light-group-zero", "error", "`{written}`: a group of nought flashes",
        "a figure is wrong; the group is left out", "check the original notice", _S57 + ", SIGGRP",
        bad="Insert light, Fl‹(0)›R.5s 46-00.00S 122-00.00W",
        good="Insert light, Fl(2)R.5s 46-00.00S 122-00.00W",
    ),
    Entry(
        "light-long-flash-too-quick", "warning", "`{written}` leaves a long flash no dark",
        "a long flash lasts two seconds or more; the period must be longer",
        "check the period against the original notice", _S12,
        bad="Insert light, LFl.‹2s› 46-00.00S 122-00.00W",
        good="Insert light, LFl.10s 46-00.00S 122-00.00W",
    ),
    Entry(
        "light-morse-missing", "error", "`{written}` names no Morse letter",
        "a Morse light is known by its letter", "ask the issuer for the letter", _INT1_P + " 10.9",
        bad="Insert light, ‹Mo 8s› 46-00.00S 122-00.00W",
        good="Insert light, Mo(A)8s 46-00.00S 122-00.00W",
    ),
    Entry(
        "light-morse-odd", "warning", "`{written}` mixes letters and figures",
        "a period may have slipped into the brackets", "check the original notice", _PRACTICE,
        bad="Insert light, Mo‹(A8)›8s 46-00.00S 122-00.00W",
        good="Insert light, Mo(A)8s 46-00.00S 122-00.00W",
    ),
    Entry(
        "light-period-long", "warning", "a period of `{written}` is long",
        "a decimal point may be lost", "check the period against the list of lights", _PRACTICE,
        bad="Insert light, Fl.R.‹150s› 46-00.00S 122-00.00W",
        good="Insert light, Fl.R.15s 46-00.00S 122-00.00W",
    ),
    Entry(
        "light-period-missing", "info", "`{written}` states no period",
        "small-scale charts leave it out; the large-scale chart has it",
        "take the period from the list of lights where it is needed", _INT1_P + " 12",
        bad="Insert light, ‹Fl.R› 46-00.00S 122-00.00W",
        good="Insert light, Fl.R.5s 46-00.00S 122-00.00W",
    ),
    Entry(
        "light-period-missing-unit", "error", "`{written}` stands for the period without its unit",
        "it may be the period or another figure, and is left out", "ask the issuer for the unit",
        _INT1_P + " 12",
        bad="Insert light, VQ(6)+LFl.‹10› 46-00.00S 122-00.00W",
        good="Insert light, VQ(6)+LFl.10s 46-00.00S 122-00.00W",
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
        bad="Insert light, Fl.R.‹5s10s› 46-00.00S 122-00.00W",
        good="Insert light, Fl.R.5s 46-00.00S 122-00.00W",
    ),
    Entry(
        "light-plus-missing", "warning", "`{written}` is read as one character without its plus",
        "two lights may be meant", "check the original notice", _INT1_P + " 10",
        bad="Insert light, ‹Q(6) LFl›.15s 46-00.00S 122-00.00W",
        good="Insert light, Q(6)+LFl.15s 46-00.00S 122-00.00W",
    ),
    Entry(
        "light-quick-period", "warning", "`{written}` from flash to flash does not fit the class",
        "a group in brackets may be lost, or the class is wrong", "check the original notice",
        _S12,
        bad="Insert light, Q.R.‹5s› 46-00.00S 122-00.00W",
        good="Insert light, Q.R.1s 46-00.00S 122-00.00W",
    ),
)  # fmt: skip
