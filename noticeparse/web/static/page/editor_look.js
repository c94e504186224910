// How the text pane looks; colours and sizes are those of the page.

import * as cm from "/static/vendor/codemirror/codemirror.js";

const underline = (kind, colour, thickness) => ({
  textDecorationLine: "underline",
  textDecorationStyle: kind,
  textDecorationColor: colour,
  textDecorationThickness: thickness,
  textUnderlineOffset: "3px",
  textDecorationSkipInk: "none",
});

export const look = cm.EditorView.theme({
  "&": { height: "100%", color: "var(--ink)", backgroundColor: "var(--sheet)" },
  "&.cm-focused": { outline: "2px solid var(--sea)", outlineOffset: "-2px" },
  ".cm-scroller": { fontFamily: "var(--mono)", fontSize: "var(--text-size)", lineHeight: "1.6" },
  ".cm-content": { caretColor: "var(--ink)", padding: "8px 0 40px" },
  ".cm-line": { padding: "0 12px 0 8px" },
  ".cm-cursor": { borderLeftColor: "var(--ink)", borderLeftWidth: "2px" },
  ".cm-gutters": { backgroundColor: "var(--margin)", color: "var(--soft)", borderRight: "1px solid var(--line)" },
  ".cm-lineNumbers .cm-gutterElement": { padding: "0 6px 0 10px", minWidth: "2.2em" },
  ".cm-activeLine": { backgroundColor: "var(--active)" },
  ".cm-activeLineGutter": { backgroundColor: "transparent" },
  ".cm-selectionBackground": { backgroundColor: "var(--chosen)" },
  "&.cm-focused > .cm-scroller > .cm-selectionLayer .cm-selectionBackground": {
    backgroundColor: "var(--chosen)",
  },
  ".cm-placeholder": { color: "var(--soft)" },
  ".cm-specialChar": { color: "var(--error)", fontWeight: "bold" },
  ".np-signs": { width: "22px", cursor: "pointer" },
  ".np-sign": { display: "block", width: "14px", height: "14px", margin: "3px 4px", color: "var(--sea)" },
  ".np-sign svg": { display: "block", width: "14px", height: "14px" },
  ".np-sign path": { fill: "none", stroke: "currentColor", strokeWidth: "1.8", strokeLinecap: "round", strokeLinejoin: "round" },
  ".np-bad": { color: "var(--sheet)", backgroundColor: "var(--error)", borderRadius: "3px", outline: "2px solid var(--error)" },
  ".np-current": { backgroundColor: "var(--current-tint)" },
  ".np-error": { ...underline("wavy", "var(--error)", "2px"), backgroundColor: "var(--error-tint)" },
  ".np-warning": underline("dashed", "var(--warning)", "2px"),
  ".np-info": underline("dotted", "var(--info)", "2px"),
  ".cm-tooltip": { backgroundColor: "var(--sheet)", color: "var(--ink)", border: "1px solid var(--ink)", borderRadius: "2px" },
  ".np-tip": { maxWidth: "30rem", padding: "6px 10px", fontFamily: "var(--serif)", fontSize: "14px", lineHeight: "1.4" },
  ".np-tip p": { margin: "2px 0" },
  ".cm-panels": { backgroundColor: "var(--margin)", color: "var(--ink)", borderColor: "var(--line)" },
  ".cm-panel.cm-search": { fontFamily: "var(--serif)", fontSize: "14px" },
  ".cm-panel.cm-search label": { fontSize: "14px" },
  ".cm-textfield": { backgroundColor: "var(--sheet)", color: "var(--ink)", border: "1px solid var(--soft)", fontSize: "14px" },
  ".cm-button": { backgroundImage: "none", backgroundColor: "var(--sheet)", color: "var(--ink)", border: "1px solid var(--soft)", fontSize: "14px" },
  ".cm-panel.cm-search [name=close]": { color: "var(--ink)", fontSize: "18px" },
  ".cm-searchMatch": { backgroundColor: "var(--chosen)" },
  ".cm-searchMatch-selected": { backgroundColor: "var(--current)" },
});
