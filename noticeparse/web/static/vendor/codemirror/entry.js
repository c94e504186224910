// The parts of CodeMirror that the page uses, as one file: `npm ci && npm run build` in this folder.

export { defaultKeymap, history, historyKeymap, isolateHistory } from "@codemirror/commands";
export { search, searchKeymap, openSearchPanel } from "@codemirror/search";
export {
  Compartment,
  EditorSelection,
  EditorState,
  RangeSet,
  StateEffect,
  StateField,
  Transaction,
} from "@codemirror/state";
export {
  Decoration,
  EditorView,
  GutterMarker,
  drawSelection,
  gutter,
  highlightActiveLine,
  highlightSpecialChars,
  hoverTooltip,
  keymap,
  lineNumbers,
  placeholder,
} from "@codemirror/view";
