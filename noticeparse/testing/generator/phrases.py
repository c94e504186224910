"""The words for each kind of feature: kind, S-57 class, phrases.

`{buoy}` and `{beacon}` are the words of the office for a lit mark.
Classes from the IHO S-57 object catalogue; a lit mark has `LIGHTS` besides.
"""

from __future__ import annotations

from collections.abc import Callable
from random import Random
from typing import NamedTuple

from noticeparse.testing.generator import lights
from noticeparse.testing.generator.truth import Light


class Sort(NamedTuple):
    """A kind of feature and its phrases; `light` draws the light of a lit one."""

    kind: str
    s57: str
    phrases: tuple[str, ...]
    light: Callable[[Random], Light] | None = None


def _table(rows: str) -> tuple[Sort, ...]:
    sorts = []
    for row in rows.strip().splitlines():
        kind, s57, words = row.split(maxsplit=2)
        sorts.append(Sort(kind, s57, tuple(words.split("|"))))
    return tuple(sorts)


POINTS = _table("""
buoy_lateral_port BOYLAT port-hand buoy|port hand buoy|port lateral buoy
buoy_lateral_starboard BOYLAT starboard-hand buoy|starboard hand buoy|starboard lateral buoy
buoy_preferred_channel BOYLAT preferred-channel buoy
buoy_cardinal_north BOYCAR north cardinal buoy
buoy_cardinal_east BOYCAR east cardinal buoy
buoy_cardinal_south BOYCAR south cardinal buoy
buoy_cardinal_west BOYCAR west cardinal buoy
buoy_isolated_danger BOYISD isolated danger buoy
buoy_safe_water BOYSAW safe-water buoy|safe water buoy|fairway buoy
buoy_special BOYSPP special buoy|special purpose buoy
buoy_mooring MORFAC mooring buoy
buoy_odas BOYSPP ODAS buoy|ocean data buoy
beacon_lateral_port BCNLAT port-hand beacon
beacon_lateral_starboard BCNLAT starboard-hand beacon
beacon_special BCNSPP special beacon
beacon_isolated_danger BCNISD isolated danger beacon
wreck WRECKS wreck|stranded wreck
wreck_dangerous WRECKS dangerous wreck
wreck_nondangerous WRECKS non-dangerous wreck
wreck_masts WRECKS wreck, masts visible|wreck showing masts
wreck_hull_visible WRECKS wreck, hull visible
rock UWTROC rock
rock_awash UWTROC rock awash
rock_underwater UWTROC underwater rock|submerged rock
rock_covers UWTROC rock which covers and uncovers
obstruction OBSTRN obstruction
foul_ground OBSTRN foul ground
foul_area OBSTRN foul area
stump OBSTRN stump
wellhead OBSTRN wellhead
fish_haven OBSTRN fish haven
overfalls WATTUR overfalls
tide_rips WATTUR tide rips
eddies WATTUR eddies
breakers WATTUR breakers
kelp WEDKLP kelp
platform OFSPLF platform|offshore platform|production platform
wind_turbine LNDMRK wind turbine
radio_reporting_point RDOCAL reporting point|radio reporting point
pilot_boarding_place PILBOP pilot boarding place
signal_station SISTAT signal station
chimney LNDMRK chimney
radio_mast LNDMRK radio mast
flagstaff LNDMRK flagstaff
monument LNDMRK monument
crane CRANES crane
dolphin MORFAC mooring dolphin|dolphin
pile PILPNT pile
anchor_berth ACHBRT anchor berth
""")
"""Point features without a light."""

MOVABLE = frozenset(
    {
        "buoy_lateral_port", "buoy_lateral_starboard", "buoy_preferred_channel",
        "buoy_cardinal_north", "buoy_cardinal_east", "buoy_cardinal_south",
        "buoy_cardinal_west", "buoy_isolated_danger", "buoy_safe_water", "buoy_special",
        "buoy_mooring", "buoy_odas", "beacon_special", "pilot_boarding_place",
        "radio_reporting_point", "light_buoy_port", "light_buoy_starboard", "light_vessel",
        "light_float",
    }
)  # fmt: skip
"""What can be laid somewhere else."""

LIT = (
    Sort("light_buoy_port", "BOYLAT", ("port-hand {buoy}",), lights.port),
    Sort("light_buoy_starboard", "BOYLAT", ("starboard-hand {buoy}",), lights.starboard),
    Sort("buoy_preferred_channel", "BOYLAT", ("preferred-channel {buoy}",), lights.preferred),
    Sort("buoy_cardinal_north", "BOYCAR", ("north cardinal {buoy}",), lights.cardinal("north")),
    Sort("buoy_cardinal_east", "BOYCAR", ("east cardinal {buoy}",), lights.cardinal("east")),
    Sort("buoy_cardinal_south", "BOYCAR", ("south cardinal {buoy}",), lights.cardinal("south")),
    Sort("buoy_cardinal_west", "BOYCAR", ("west cardinal {buoy}",), lights.cardinal("west")),
    Sort("buoy_isolated_danger", "BOYISD", ("isolated danger {buoy}",), lights.isolated_danger),
    Sort(
        "buoy_safe_water", "BOYSAW", ("safe-water {buoy}", "safe water {buoy}"), lights.safe_water
    ),
    Sort("buoy_special", "BOYSPP", ("special {buoy}",), lights.special),
    Sort("buoy_mooring", "MORFAC", ("mooring {buoy}",), lights.special),
    Sort("beacon_lateral_port", "BCNLAT", ("port-hand {beacon}",), lights.port),
    Sort("beacon_lateral_starboard", "BCNLAT", ("starboard-hand {beacon}",), lights.starboard),
    Sort("light", "LIGHTS", ("light",), lights.minor),
    Sort("light", "LIGHTS", ("light",), lights.major),
    Sort("sector_light", "LIGHTS", ("sector light",), lights.sectored),
    Sort("lighthouse", "LNDMRK", ("lighthouse",), lights.major),
    Sort("light_vessel", "LITVES", ("light vessel", "lightvessel"), lights.major),
    Sort("light_float", "LITFLT", ("light float",), lights.safe_water),
)
"""Marks and structures with a light."""

LINES = _table("""
cable_submarine CBLSUB submarine cable
cable_power CBLSUB submarine power cable
cable_disused CBLSUB disused cable
pipeline PIPSOL submarine pipeline|gas pipeline
pipeline_disused PIPSOL disused pipeline
outfall PIPSOL outfall
recommended_track RECTRC recommended track
leading_line NAVLNE leading line
clearing_line NAVLNE clearing line
ferry_route FERYRT ferry route
cable_overhead CBLOHD overhead cable|overhead power cable
breakwater SLCONS breakwater
tss_line TSELNE separation line
""")
"""Features drawn as a line."""

AREAS = _table("""
restricted_area RESARE restricted area
entry_prohibited RESARE entry prohibited area|prohibited area
anchorage_area ACHARE anchorage area|anchorage
spoil_ground DMPGRD spoil ground
cable_area CBLARE cable area|submarine cable area
pipeline_area PIPARE pipeline area
marine_farm MARCUL marine farm|fish farm
military_area MIPARE military practice area|firing practice area
submarine_exercise MIPARE submarine exercise area
safety_zone RESARE safety zone
precautionary_area PRCARE precautionary area
area_to_be_avoided RESARE area to be avoided
caution_area CTNARE caution area
tss_lane TSSLPT traffic lane
wind_farm OSPARE wind farm|offshore wind farm
foul_area OBSTRN foul area
""")
"""Features that have an extent."""
