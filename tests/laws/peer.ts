/** The protocol's own text document, which says from outside what a text is after a change. */
import { TextDocument } from 'vscode-languageserver-textdocument';
import type { AnyChange } from './notebooks.ts';

const documentOf = (text: string): TextDocument => TextDocument.create('bench:x', 'tappet', 1, text);

/** The text after a change. */
export const changed = (text: string, change: AnyChange): string =>
  TextDocument.applyEdits(documentOf(text), [{ range: change.range, newText: change.text }]);
