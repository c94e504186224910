"""Whole notices written by hand for the round trip, one for every head; `@I` is an item."""

from __future__ import annotations

HEADS = {
    "plain": ("2417/26  TAVRENNE ISLANDS - Quill Sound - Wreck.\nChart 802 [2310/26] WGS84\n@I\n"),
    "star": ("*2417/26  TAVRENNE ISLANDS - Quill Sound - Wreck.\nChart 802 [2310/26] WGS84\n@I\n"),
    "star behind": (
        "2417*/26  TAVRENNE ISLANDS - Quill Sound - Wreck.\nChart 802 [2310/26] WGS84\n@I\n"
    ),
    "old year": (
        "2417/78  TAVRENNE ISLANDS - Quill Sound - Wreck.\nChart 802 [2310/78] WGS84\n@I\n"
    ),
    "four figures": (
        "2417/1949  TAVRENNE ISLANDS - Quill Sound - Wreck.\nChart 802 [2310/2051] WGS84\n@I\n"
    ),
    "series": ("Port Notice No 12/26\nPort Ellory - Inner Channel\nChart 803\n@I\n"),
    "no heading": ("2417/26\nChart 802 [2310/26] WGS84\n@I\n"),
    "region only": ("2417/26 QUILL SOUND\nChart 802 [2310/26] WGS84\n@I\n"),
    "subjects only": ("2417/26 Wreck. Light.\nChart 802 [2310/26] WGS84\n@I\n"),
    "heading semicolons": (
        "2417/26 SKARVANE ROADSTEAD. Yacht basin; power cable; soundings.\n"
        "Chart 802 [2310/26] WGS84\n"
        "@I\n"
    ),
    "heading with chart word": (
        "2417/26 QUILL SOUND - Charted wreck - Amendment to chart.\n"
        "Chart 802 [2310/26] WGS84\n"
        "@I\n"
    ),
    "heading brackets": (
        "2417/26 QUILL SOUND (northern part) - Wreck (dangerous).\nChart 802 [2310/26] WGS84\n@I\n"
    ),
    "source": (
        "2417/26 QUILL SOUND - Wreck.\n"
        "Source: Port Ellory Harbour Master, 3 May 2026\n"
        "Chart 802 [2310/26] WGS84\n"
        "@I\n"
    ),
    "cancels": (
        "2417/26 QUILL SOUND - Wreck.\n"
        "Notices 2310(T)/26 and 2311(P)/25 are cancelled.\n"
        "Chart 802 [2310/26] WGS84\n"
        "@I\n"
    ),
    "cancels foot": (
        "2417/26 QUILL SOUND - Wreck.\nChart 802 [2310/26] WGS84\n@I\nCancel Notice 2300(T)/26.\n"
    ),
    "international": ("2417/26 QUILL SOUND - Wreck.\nChart 802 (INT 9871) [2310/26] WGS84\n@I\n"),
    "int only": ("2417/26 QUILL SOUND - Wreck.\nChart INT 9871 [2310/26] WGS84\n@I\n"),
    "panel": (
        "2417/26 QUILL SOUND - Wreck.\n"
        "Chart 802 (plan A, Quill Quay) [2310/26] WGS84\n"
        "@I\n"
        'Chart 802, inset "Grain Quay" [2310/26] WGS84\n'
        "@I\n"
    ),
    "panel B": ("2417/26 QUILL SOUND - Wreck.\nChart 802, panel B [2310/26] WGS84\n@I\n"),
    "edition": (
        "2417/26 QUILL SOUND - Wreck.\nChart 802, edition 3 of 16 May 2024 [2310/26] WGS84\n@I\n"
    ),
    "edition no date": ("2417/26 QUILL SOUND - Wreck.\nChart 802, Ed. 7 [2310/26] WGS84\n@I\n"),
    "new edition": (
        "2417/26 QUILL SOUND - Wreck.\nChart 802 [New Edition, 3 April 2026] WGS84\n@I\n"
    ),
    "new chart": ("2417/26 QUILL SOUND - Wreck.\nChart 802 [new chart] WGS84\n@I\n"),
    "previous T": ("2417/26 QUILL SOUND - Wreck.\nChart 802 [2310(T)/26]\n@I\n"),
    "datums": (
        "2417/26 QUILL SOUND - Wreck.\n"
        "Chart 802 [2310/26] ED50\n"
        "@I\n"
        "Chart 803 [2310/26]. Datum: undetermined\n"
        "@I\n"
        "Chart 804 Pulkovo 1942\n"
        "@I\n"
        "Chart 805 OSGB36\n"
        "@I\n"
    ),
    "local datum": (
        "2417/26 QUILL SOUND - Wreck.\n"
        "Chart 802 [2310/26], local datum\n"
        "@I\n"
        "Chart 803, PZ-90\n"
        "@I\n"
        "Chart 804, SIRGAS 2000\n"
        "@I\n"
    ),
    "units": (
        "2417/26 QUILL SOUND - Wreck.\n"
        "Chart 802 [2310/26]. Depths in feet\n"
        "@I\n"
        "Chart 803 (fathoms and feet)\n"
        "@I\n"
        "Chart 804, soundings in metres\n"
        "@I\n"
        "Chart 805, depths in fathoms\n"
        "@I\n"
    ),
    "several": (
        "2417/26 QUILL SOUND - Wreck.\nCharts 802 [2310/26] and 803 [2311/26] WGS84\n@I\n"
    ),
    "chart without actions": (
        "2417/26 QUILL SOUND - Wreck.\n"
        "Chart 802 [2310/26] WGS84\n"
        "@I\n"
        "\n"
        "Chart 811 [2300/26] WGS84\n"
    ),
    "no chart": ("2417/26 QUILL SOUND - Wreck.\n@I\n"),
    "fragment": ("Chart 802 [2310/26] WGS84\n@I\n"),
    "fragment no chart": ("@I\n"),
    "temporary": (
        "2417(T)/26 QUILL SOUND - Works.\n"
        "\n"
        "Works are in progress in @P until 20 August 2026. Notice 2300(T)/26 is cancelled.\n"
        "\n"
        "Mariners should keep clear.\n"
        "\n"
        "Chart 802\n"
    ),
    "temporary no year": (
        "Edition 26/2026, 1 July 2026\n"
        "\n"
        "2417(T)/26 QUILL SOUND - Works.\n"
        "\n"
        "Works are in progress in @P from 3 July until 20 August.\n"
        "\n"
        "Chart 802\n"
    ),
    "temporary period": (
        "2417(T)/26 QUILL SOUND - Works.\n"
        "\n"
        "Works are in progress from 15 June to 10 July 2026 in @P\n"
        "\n"
        "Chart 802\n"
    ),
    "temporary lettered": (
        "2417(T)/26 QUILL SOUND - Works.\n"
        "\n"
        "1. Works are in progress in:\n"
        "(a) @P\n"
        "(b) 47°13'.06S., 123°44'.20W.\n"
        "2. Keep clear.\n"
        "\n"
        "Chart 802\n"
    ),
    "preliminary": (
        "2417(P)/26 QUILL SOUND - Wind farm.\n"
        "\n"
        "1. A wind farm will be built in 2027 within @P, @Q and @R\n"
        "\n"
        "2. Charts will be updated.\n"
        "\n"
        "Chart 802\n"
    ),
    "temporary with actions": ("2417(T)/26 QUILL SOUND - Buoy.\nChart 802 [2310/26] WGS84\n@I\n"),
    "radio": (
        "TAVRENNE COASTAL WARNING 41/26\n"
        "QUILL SOUND. CHART 802.\n"
        "1. DANGEROUS WRECK IN 47-13.05S 123-44.20W.\n"
        "2. CANCEL TAVRENNE COASTAL WARNING 39/26.\n"
        "3. CANCEL THIS WARNING 150001Z JUL 26.\n"
    ),
    "radio plain": ("TAVRENNE COASTAL WARNING 41/26\nDANGEROUS WRECK IN 47-13.05S 123-44.20W.\n"),
    "radio one": (
        "TAVRENNE COASTAL WARNING 41/26\n"
        "QUILL SOUND.\n"
        "VIRTUAL AIS AID SET IN 47-28.00S 124-00.50W UNTIL 5 JUL 2026. CANCEL 133/26 AND 138/26.\n"
    ),
    "radio paragraphs": (
        "TAVRENNE COASTAL WARNING 41/26\n"
        "QUILL SOUND.\n"
        "\n"
        "A. UNLIT BUOY ADRIFT.\n"
        "\n"
        "B. LAST SEEN IN 47-28.00S 124-00.50W.\n"
    ),
    "valid key": (
        "Notice: 2417(T)/26\n"
        "Area: QUILL SOUND\n"
        "Valid: until 20 August 2026\n"
        "Chart: 802\n"
        "Action: Insert\n"
        "Feature: wreck\n"
        "Position: @P\n"
    ),
    "valid key 2": (
        "Notice: 2417(T)/26\n"
        "Area: QUILL SOUND\n"
        "Valid: 2026-07-01 to 2026-08-20\n"
        "Chart: 802\n"
        "Action: Insert\n"
        "Feature: wreck\n"
        "Position: @P\n"
    ),
    "remark between": (
        "2417/26 QUILL SOUND - Wreck.\n"
        "Chart 802 [2310/26] WGS84\n"
        "@I\n"
        "Note: the position is approximate and lies in the fairway.\n"
        "\n"
        "Chart 803 [2311/26] WGS84\n"
        "@I\n"
    ),
    "letters": (
        "2417/26 QUILL SOUND - Wreck.\n"
        "Chart 802 [2310/26] WGS84\n"
        "(a) @I\n"
        "(b) Delete depth 12m, close E of (a) above\n"
        "(c) Insert buoy 0.5 miles 090° from (a) above\n"
        "(d) Insert light at (c) above\n"
        "Chart 803\n"
        "(a) Insert rock @P\n"
    ),
    "letters one item": (
        "2417/26 QUILL SOUND - Wreck.\n"
        "Chart 802 [2310/26] WGS84\n"
        "Insert buoys (a) @P (b) 47°13'.06S., 123°44'.20W. (c) 47°13'.07S., 123°44'.20W.\n"
        'Delete legend, "Works", within (a)-(c) above\n'
        "Insert wreck in the same position\n"
        "Insert foul ground, between (a) and (b) above\n"
    ),
    "old and new": (
        "2417/26 QUILL SOUND - Light.\n"
        "Chart 802 [2310/26] WGS84\n"
        "Position | Feature | Action | Old | New\n"
        "47°13'.05S., 123°44'.20W. | depth | Delete | 8.6m | -\n"
        "47°13'.06S., 123°44'.20W. | light | Amend | Fl.R.5s | Fl.R.10s\n"
        "47°13'.07S., 123°44'.20W. | fog signal | Amend | Horn 30s | Siren 60s\n"
        "47°13'.08S., 123°44'.20W. | light-buoy | Delete | Q.R “Teal 2” | -\n"
        "47°13'.09S., 123°44'.20W. | wreck | Delete | least depth 5m | nil\n"
    ),
    "states": (
        "2417/26 QUILL SOUND - Light.\n"
        "Chart 802 [2310/26] WGS84\n"
        "Amend light\n"
        "from Fl.3s12m8M\n"
        "to Fl.5s12m10M\n"
        "47°13'.05S., 123°44'.20W.\n"
        "Existing: light-buoy, Fl.R.5s, “Teal” 47°13'.06S., 123°44'.20W.\n"
        "Amended to read: light-buoy, Fl.R.10s, “Teal” 47°13'.06S., 123°44'.20W.\n"
    ),
    "curly quotes": (
        "2417/26 QUILL SOUND - Buoy.\n"
        "Chart 802 [2310/26] WGS84\n"
        "Insert legend, “O’Hara’s Rock – foul” 47°13′.05S., 123°44′.20W.\n"
        "Insert special buoy “D 1” 47°13′.05S., 123°44′.30W.\n"
    ),
    "dates of a remark": (
        "Weekly Edition 12/2031, 3 May 2031\n"
        "2417(T)/31 QUILL SOUND - Works.\n"
        "Divers work on 5 and 6 June, and on 7 July.\n"
        "Chart 802\n"
    ),
}
