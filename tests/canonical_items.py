"""Items written by hand for the round trip: every key of a record, every verb.

`ITEMS` are items of a chart section, with `@P` to `@U` for positions, and `@I` for an item.
"""

from __future__ import annotations

POSITIONS = {
    "@P": "47°13'.05S., 123°44'.20W.",
    "@Q": "47°13'.06S., 123°44'.21W.",
    "@R": "47°13'.06S., 123°44'.51W.",
    "@T": "47°13'.07S., 123°44'.20W.",
    "@U": "47°13'.08S., 123°44'.21W.",
    "@I": "Insert wreck 47°13'.05S., 123°44'.20W.",
}

_HEAD = "2417/26  TAVRENNE ISLANDS - Quill Sound - Wreck. Light.\nChart 802 [2310/26] WGS84"


def placed(words: str) -> str:
    """The words with their positions."""
    for mark, position in POSITIONS.items():
        words = words.replace(mark, position)
    return words


def notice_of(item: str, unit: str = "") -> str:
    """A notice with one item, on a chart whose head ends with `unit`."""
    return placed(f"{_HEAD}{unit}\n{item}\n")


ITEMS = """\
Insert port-hand light-buoy, Fl(2)R.5s, "Teal 2" @P
Insert light, Oc.3s12m10M & F.R.7m4M @P
Insert light-beacon, Fl.5s40ft9M, Horn(2)30s, Racon(K), AIS @P
Insert light, Al.Fl(2W+1R)20s20m14M @P
Insert light, Al.WR.6s20m14M @P
Insert light, Mo(U)15s @P
Insert light, F.Fl.10s @P
Insert light, Dir Iso.WRG.4s5m12-9M, W 171°-195°, R 195°-268° @P
Insert light, Ldg Oc.R.4s @P
Insert light, Aero Al.WG.10s @P
Insert leading lights, F.R, joining @P and @Q
Insert light, 2F.R(vert)5m2M(occas) @P
Insert light, 3F.G(hor) @P
Insert light, VQ(6)+LFl.10s8m6M @P
Insert light, Q @P
Insert light, Fl(2+1)G.10s @P
Insert light, Fl.WR.6s12m15/11M, obscd 120°-140°, W 140°-200° 15M, R 200°-120° 11M @P
Insert light, flashing red every 5 seconds, elevation 12 metres, visible 8 miles @P
Insert racon (D) @P
Insert fog signal, Siren 60s @P
Insert virtual AIS, safe water @P
Insert AIS aid @P
Insert special buoy, yellow, conical, topmark X-shape, "D1" @P
Insert north cardinal buoy, black over yellow, topmark 2 cones, points up @P
Insert safe water buoy, red and white vertical stripes, sphere topmark, "Dunmarrow" @P
Insert isolated danger beacon, BRB, topmark 2 spheres @P
Insert preferred-channel light-buoy, GRG, Fl(2+1)G.10s, "K" @P
Insert spar buoy @P
Insert rock awash @P
Insert rock which covers and uncovers, dries 1.3m @P
Insert dries 1.3m @P
Insert obstruction, swept to 12.5m @P
Insert wreck, depth unknown @P
Insert wreck, safe clearance 22m @P
Insert depth 126, no bottom @P
Insert depth 8₆ @P
Insert depth 8m (rep 2024) @P
Insert depth 6¼ fm @P
Insert depth 3fm 2ft @P
Insert depth 11 feet @P
Insert 10m contour, joining @P and @Q
Insert dredged area, dredged to 7.5m (2025), bounded by @P, @Q and @R
Insert overhead power cable, vertical clearance 26.5m, joining @P and @Q
Insert bridge, vertical clearance 18m, horizontal clearance 40m @P
Insert chimney, height 45m, conspicuous @P
Insert mast (40m) @P
Insert wreck with 10m contour @P
Insert depth 8.2m enclosed by 10m contour @P
Insert light, Fl.5s, on the breakwater @P
Insert beacon with topmark @P
Insert depth 4.2m and associated 5m contour @P
Insert wreck (PA) @P
Insert wreck, ED @P
Insert wreck, PD @P
Insert light-buoy, Fl.Y.5s (priv) @P
Insert disused cable, joining @P and @Q
Insert beacon, destroyed @P
Insert wreck, reported 2024 @P
Insert legend, "Foul ground (see Note) by day" @P
Insert legend "Rep (2019)", close E of @P
Insert legend, "Works to 2027, from pier", centred on @P
Insert note, "See Caution" @P
Insert note, "Harbour"
Insert restricted area, entry prohibited, bounded by @P, @Q and @R
Insert fish haven, centred on @P, radius 0.2M
Insert safety zone, circle of radius 500m, centred on @P
Insert safety zone, radius 2.5 cables, centred on @P
Insert limit, arc of a circle of radius 2 miles, between the bearings 5° and 280°, centred on @P
Insert limit, arc of a circle between the bearings 5° and 80° clockwise from seaward, centred on @P
Insert kelp, 0.25 miles SSE of @P
Insert kelp, 137°T, 2.4 miles from @P
Insert kelp, 2.5 cables 202° from the light-beacon in @P
Insert kelp, 500 metres 090° from @P
Insert buoy, 0.6 miles 240° from the light, in @P
Insert wreck, between @P and @Q
Insert wreck, in the vicinity of @P
Insert wreck, close NE of @P
Insert wreck, close to @P
Insert legend, "No entry", within @P
Insert submarine cable from @P to @Q
Insert limit of harbour, joining @P, @Q, @R and @P
Insert submarine cable, joining @P, @Q, @R and @P
Insert special buoys @P, @Q and @R
Insert wreck 47°13'05.2"S 123°44'20.0"W
Insert wreck 47.68500°S 124.58417°W
Insert wreck 47°13'S 123°44'W
Insert wreck @P (PD)
Insert wreck 47°13'.05N., 123°44'.20E.
Amend light to Fl(3)WRG.15s21m15-11M @P
Amend range of light to 11M @P
Amend light Fl.5s12m9M, period to 6s and range to 11M @P
Amend elevation of light F.R to 11m @P
Amend light Iso.WR.4s10m8/6M, sectors to W 010°-096°, R 096°-140° @P
Amend depth of dredged area to 10.2m, centred on @P
Amend depth 5.2m to 4.8m @P
Amend depth 5₂ to 4₈ @P
Amend least depth of wreck from 7.1m to 6.4m @P
Amend legend "Measured Mile" to "Measured Distance" @P
Amend name of buoy to "Teal 4" @P
Amend special buoy "A" to "B" @P
Amend buoy from red to green @P
Amend buoy, colour to red and white vertical stripes @P
Amend buoy, topmark to sphere @P
Amend buoy, shape to spar @P
Amend overhead power cable, vertical clearance to 26.5m, joining @P and @Q
Amend bridge, vertical clearance from 20m to 18m @P
Amend chimney, height to 45m @P
Amend fog signal Horn 30s, period to 60s @P
Amend wreck to disused @P
Amend light Fl.5s, to extinguished @P
Amend port-hand light-buoy, Fl.R.5s, light to Fl(2)R.10s @P
Amend light-buoy, Fl.R.5s, colour of light to green @P
Amend drying height 1.2m to 0.8m @P
Amend rock, dries 1.2m, to dries 0.8m @P
Amend fog signal Horn 30s to Siren 60s @P
Amend light Fl.5s, Horn 30s, to Fl.10s, Siren 60s @P
Amend racon (D) to racon (K) @P
Amend light-buoy Q, Racon(K) to Q(3)10s, Racon(B), AIS @P
Replace wreck by dangerous wreck @P
Replace legend "Works" by legend "Marina" @P
Replace port-hand buoy, "3", by port-hand light-buoy, Q.R, "3A" @P
Substitute depth 12₈ for depth 14₃ @P
Replace depth 6.2m with 10m contour by depth 5.6m @P
Replace obstruction, least depth 8₃, with obstruction, least depth 7₇ @P
Move port-hand light-buoy, Q.R, from @P to @Q
Move mooring buoys from @P and @T to @Q and @U
Move (a) buoy from (b) @P to (c) @Q
Delete depth 12.4m @P
Delete depths 6.1m and 7.4m @P
Delete pipeline, disused, joining @P and @Q
Insert light, Fl.5s12m9M, W 171°-195.5°, R 195.5°-268° @P
Insert light, UQ+LFl.10s @P
Insert light, IQ.G.10s @P
Insert light, Oc.Fl.R.10s @P
Insert light, Fl+LFl.W.20s @P
Insert light, LFl.Y.10s(temp) @P
Insert light, Iso.BuY.3s @P
Insert port-hand light-buoy, Fl(2)R.6s, "2" and racon (Q) @P
Insert whistle buoy, Whis @P
Insert bell buoy, Bell @P
Insert wind turbine, height 110m, F.R, "T 7" @P
Insert foul ground, (PD) @P
Insert depth 21.5m, doubtful @P
Insert rock, awash, with topmark @P
Insert beacon, on rock @P
Insert pile, with light Q.R on it @P
Insert anchorage, No 3, centred on @P
Insert berth A4 @P
Insert buoy in @P, @Q and @R
Insert special light-buoys, Fl.Y.3s, "A" to "C", joining @P, @Q and @R
Insert wreck, least depth 12.0m @P
Insert obstruction, depth 3.05m @P
Insert spoil ground (disused), bounded by @P, @Q and @R
Insert recommended track, 090°-270°, joining @P and @Q
Insert magenta legend, "Reported (2024)" @P
Insert nature reserve, limits joining @P, @Q, @R and @P
Amend light Al.WR.6s20m14M to Al.WR.10s20m14M @P
Amend north cardinal light-buoy, VQ, "Wyke", to VQ(9)10s @P
Amend wreck, least depth 12m, to 11.4m, and name to "Teal" @P
Amend sectors of light Fl.WR.5s to W 010°-050°, R 050°-090° 8M @P
Amend special light-buoy, Fl.Y.5s: light to Fl(4)Y.12s, name to "K2" @P
Amend period of fog signal, Horn(2)30s, to 60s @P
Replace buoy, red and white, by buoy, yellow, "Y" @P
Replace rock with wreck, dangerous, depth unknown @P
Replace light Fl.R.5s by light Fl.R.10s @P
Move pilot boarding place from @P to @Q
Move wreck (PA) from @P to @Q
Move depth 12m from @P to @Q
Delete all legends "Foul" @P
Delete line of buoys, joining @P and @Q
Delete buoy, close SW of @P
Delete wreck, 2 cables 045° from @P
Delete block, "Panel"
Read depth 8.6m for depth 9.2m @P
For wreck read dangerous wreck @P
For Fl.R.5s read Fl.R.10s @P
For "Teal" read "Teal 2" @P
Amend inner light to Fl.R.5s @P
Amend light on the old pier to Fl.R.5s @P
Amend depth 8.6m, inside the dock, to 9.6m @P
Insert AIS aid, MMSI 993672001 @P
Insert fog signal, Horn Mo(U)30s 2M @P
Replace white light, 7 panels by light, Fl.R.5s, 9 panels @P
""".splitlines()

UNITS = (
    ". Depths in metres",
    ". Depths in fathoms and feet",
    ". Depths in fathoms",
    ". Depths in feet",
)

DEPTHS = """\
Insert depth 4 @P
Insert depth 4½ @P
Insert depth 4.5 @P
Insert depth 12 @P
Insert rock, depth 2fm 1ft @P
Insert wreck, least depth 5 @P
Insert rock, dries 2ft @P
Delete depth 6¼ fathoms @P
Amend depth 5 to 4 @P
Amend light Fl.5s40ft9M, elevation to 45ft @P
Replace depth 5 by depth 4 @P
""".splitlines()
