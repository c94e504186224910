// The text pane. It stands in a shadow root, where the editor's styles are sheets of their own and
// need no leave of the security policy. Places are UTF-16 units of the text.

import * as cm from "/static/vendor/codemirror/codemirror.js";
import { look } from "./editor_look.js";
import { marks } from "./marks.js";

const SHOWN = "select.shown"; // selections that the page makes, and not a person
const NARROW = matchMedia("(max-width: 700px)");

// A paste over all, or the undoing of an open: the text is no longer that of the file.
function isOtherText(transaction) {
  if (!transaction.docChanged || transaction.isUserEvent("input.open")) return false;
  let isAll = false;
  transaction.changes.iterChangedRanges((from, to) => {
    isAll ||= from === 0 && to === transaction.startState.doc.length;
  });
  return isAll;
}

// `onEdit()` after a change, `onOther()` before it where nothing of the text before is left, `onPlace(place)` when a person moves the cursor, `onSign(place)` when
// a sign beside the text is picked, `onLeave()` for the key that leads to the action.
export function createTextPane(host, { onEdit, onOther, onPlace, onSign, onLeave }) {
  const root = host.attachShadow({ mode: "open" });
  const wrapping = new cm.Compartment();
  const marked = marks(onSign);
  let since = null; // changes since the records on show were read
  let all = null; // changes since the file was opened, or another text pasted
  let chosen = null; // what the page selected while the focus was elsewhere

  const view = new cm.EditorView({
    root,
    parent: root,
    state: cm.EditorState.create({
      extensions: [
        cm.keymap.of([{ key: "Mod-Enter", run: () => (onLeave(), true) }]),
        marked.extension,
        cm.lineNumbers(),
        cm.history(),
        cm.drawSelection(),
        cm.highlightActiveLine(),
        cm.highlightSpecialChars(),
        cm.search({ top: true }),
        cm.keymap.of([...cm.searchKeymap, ...cm.historyKeymap, ...cm.defaultKeymap]),
        cm.placeholder("Paste a bulletin here, or drop a file anywhere on the page."),
        wrapping.of(NARROW.matches ? cm.EditorView.lineWrapping : []),
        cm.EditorView.contentAttributes.of({
          "aria-label": "Text of the bulletin",
          spellcheck: "false",
          tabindex: "0",
        }),
        cm.EditorView.domEventHandlers({
          mousedown: () => void (chosen = null),
          focus: () => void setTimeout(chooseAgain),
          keydown: () => void chooseAgain(),
        }),
        cm.EditorView.updateListener.of(updated),
        look,
      ],
    }),
  });
  NARROW.addEventListener("change", () => {
    const wanted = NARROW.matches ? cm.EditorView.lineWrapping : [];
    view.dispatch({ effects: wrapping.reconfigure(wanted) });
  });
  host.addEventListener("focus", () => view.focus());

  // A browser that comes to the text by a key puts the cursor where it was last seen.  A key may be
  // faster than the timer, which must not select again what has been typed.
  function chooseAgain() {
    if (chosen) view.dispatch({ selection: chosen, userEvent: SHOWN });
    chosen = null;
  }

  function updated(update) {
    if (update.docChanged) {
      chosen = null;
      since = since ? since.compose(update.changes) : update.changes;
      all = all ? all.compose(update.changes) : update.changes;
      if (update.transactions.some(isOtherText)) {
        all = null;
        onOther();
      }
      onEdit();
    }
    const isShown = update.transactions.some((one) => one.isUserEvent(SHOWN));
    if (update.selectionSet && !isShown) onPlace(update.state.selection.main.head);
  }

  const isWrapped = () => view.lineWrapping;
  const now = (place) => Math.min(since ? since.mapPos(place) : place, view.state.doc.length);

  return {
    view,
    text: () => view.state.doc.toString(),
    selected: () => view.state.sliceDoc(view.state.selection.main.from, view.state.selection.main.to),
    place: () => view.state.selection.main.head,
    focus: () => view.focus(),
    now,
    lineOf: (place) => view.state.doc.lineAt(Math.min(place, view.state.doc.length)),
    isEdited: () => all !== null,
    sinceOpened: (place, side) => (all ? all.mapPos(place, side) : place),
    whenOpened: (place) => (all ? all.invertedDesc.mapPos(place) : place),

    // Puts a text in place of all that stands there, as one step that can be undone.
    replace(text) {
      const changes = { from: 0, to: view.state.doc.length, insert: text };
      const annotations = [cm.isolateHistory.of("full"), cm.Transaction.userEvent.of("input.open")];
      view.dispatch({ changes, selection: { anchor: 0 }, annotations, scrollIntoView: true });
      all = null;
    },

    // Selects a stretch of the text that was read, and brings it into view.
    select(from, to) {
      const range = cm.EditorSelection.range(now(from), now(to));
      const effects = [cm.EditorView.scrollIntoView(range, { y: "center", x: "nearest" })];
      // Verbs stand at the head of a line: it is shown from there, where the stretch still fits.
      const line = view.state.doc.lineAt(range.from);
      const isFit = (Math.min(range.to, line.to) - line.from + 2) * view.defaultCharacterWidth < view.scrollDOM.clientWidth - 60;
      if (isFit) view.scrollDOM.scrollLeft = 0;
      else if (!isWrapped()) effects.push(wrapping.reconfigure(cm.EditorView.lineWrapping));
      chosen = view.hasFocus ? null : range;
      view.dispatch({ selection: range, effects, userEvent: SHOWN });
    },

    // Marks what was read of the text as it stands.
    showRead(model) {
      since = null;
      view.dispatch({ effects: marked.read(view.state, model) });
    },

    // Marks the stretches of the actions that are current.
    showCurrent(actions) {
      const stretches = actions.map(({ from, to }) => [now(from), now(to)]);
      view.dispatch({ effects: marked.current(stretches) });
    },
  };
}
