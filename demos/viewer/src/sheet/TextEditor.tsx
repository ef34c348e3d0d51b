import { defaultKeymap, indentWithTab } from '@codemirror/commands';
import { yaml } from '@codemirror/lang-yaml';
import { bracketMatching, HighlightStyle, syntaxHighlighting } from '@codemirror/language';
import { type Diagnostic, lintGutter, setDiagnostics } from '@codemirror/lint';
import { Annotation, EditorState } from '@codemirror/state';
import { drawSelection, EditorView, highlightActiveLine, keymap, lineNumbers } from '@codemirror/view';
import { tags } from '@lezer/highlight';
import { createEffect, onCleanup, onMount } from 'solid-js';
import type { Garment } from '../job/garment.js';
import { stepAtLine } from '../job/written.js';
import { pageWords } from '../words.js';

/** A change that came from the sentences: it is not written back. */
const fromSheet = Annotation.define<true>();

const colours = HighlightStyle.define([
  { tag: [tags.propertyName, tags.definition(tags.propertyName)], color: 'var(--answer)' },
  { tag: tags.comment, color: 'var(--soft)', fontStyle: 'italic' },
  { tag: [tags.number, tags.string, tags.content], color: 'var(--ink)' },
  { tag: [tags.separator, tags.squareBracket, tags.brace, tags.punctuation], color: 'var(--soft)' },
]);

const look = EditorView.theme({
  '&': { height: '100%', fontSize: '13.5px', color: 'var(--ink)', backgroundColor: 'var(--paper)' },
  '.cm-content': { fontFamily: 'ui-monospace, monospace', padding: '0.6rem 0', caretColor: 'var(--ink)' },
  '.cm-gutters': { backgroundColor: 'var(--paper)', color: 'var(--soft)', border: '0' },
  '.cm-activeLine, .cm-activeLineGutter': { backgroundColor: 'var(--held)' },
  '&.cm-focused': { outline: '2px solid var(--answer)', outlineOffset: '-2px' },
  '&.cm-focused .cm-selectionBackground, .cm-selectionBackground': {
    backgroundColor: 'var(--rule) !important',
  },
  '.cm-cursor': { borderLeftColor: 'var(--ink)' },
  '.cm-tooltip, .cm-diagnostic': {
    backgroundColor: 'var(--paper)',
    color: 'var(--ink)',
    font: '14.5px/1.5 var(--sans)',
  },
});

/** The sheet as its text, in step with the sentences both ways; every fault at its line, with its remedy. */
export function TextEditor(props: { readonly garment: Garment }) {
  const { garment } = props;
  let place: HTMLDivElement | undefined;
  onMount(() => {
    const view = new EditorView({
      parent: place!,
      state: EditorState.create({
        doc: garment.history.now(),
        extensions: [
          lineNumbers(),
          lintGutter(),
          drawSelection(),
          highlightActiveLine(),
          bracketMatching(),
          yaml(),
          syntaxHighlighting(colours),
          look,
          EditorView.lineWrapping,
          EditorView.contentAttributes.of({ 'aria-label': pageWords[garment.language()].sheetText }),
          keymap.of([
            { key: 'Mod-z', run: done(garment.history.undo) },
            { key: 'Mod-Shift-z', run: done(garment.history.redo) },
            ...defaultKeymap,
            indentWithTab,
          ]),
          EditorView.updateListener.of(update => {
            const own = !update.transactions.some(t => t.annotation(fromSheet));
            // What is typed in one go is one thing to undo.
            if (update.docChanged && own) garment.history.write(update.state.doc.toString(), false);
            if (update.selectionSet && own) {
              const line = update.state.doc.lineAt(update.state.selection.main.head).number;
              garment.setOpen(stepAtLine(update.state.doc.toString(), line));
            }
          }),
          EditorView.domEventHandlers({
            blur: () => {
              garment.history.settle();
            },
          }),
        ],
      }),
    });
    createEffect(() => {
      const change = changeTo(view.state.doc.toString(), garment.history.now());
      if (change) view.dispatch({ changes: change, annotations: fromSheet.of(true) });
    });
    createEffect(() => {
      const { doc } = view.state;
      const faults = garment.engine.faults().flatMap(({ line, text }): Diagnostic[] => {
        if (line === undefined || line > doc.lines) return [];
        const { from, to } = doc.line(line);
        return [{ from, to, severity: 'error', message: text }];
      });
      view.dispatch(setDiagnostics(view.state, faults));
    });
    onCleanup(() => view.destroy());
  });
  return <div class="editor" ref={place} />;
}

/** A command of a key, which is taken whatever came of it. */
const done = (work: () => void) => (): boolean => {
  work();
  return true;
};

/** What must be replaced in a text to make it another, and nothing that both share. */
function changeTo(had: string, now: string) {
  if (had === now) return undefined;
  let from = 0;
  while (from < had.length && had[from] === now[from]) from++;
  let end = 0;
  while (
    end < Math.min(had.length, now.length) - from &&
    had[had.length - 1 - end] === now[now.length - 1 - end]
  )
    end++;
  return { from, to: had.length - end, insert: now.slice(from, now.length - end) };
}
