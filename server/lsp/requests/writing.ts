/** Formatting and selecting text. */
import {
  DocumentFormattingRequest,
  DocumentOnTypeFormattingRequest,
  DocumentRangeFormattingRequest,
  SelectionRangeRequest,
} from 'vscode-languageserver';
import { formatEdits, formatting } from '../../features/formatting.ts';
import { selectionsAt } from '../../features/selection-ranges.ts';
import { toSelectionRange, toTextEdit } from '../convert.ts';
import { aboutNotebook, type Handler } from '../request.ts';
import { runWithPauses } from '../yielding.ts';

const BREAK = '\n';

export const WRITING_REQUESTS: readonly Handler[] = [
  aboutNotebook({
    request: DocumentFormattingRequest.type,
    capability: { documentFormattingProvider: true },
    run: ({ snapshot, settings, pause }) => runWithPauses(formatting(snapshot, settings.format), pause),
    convert: (edits) => edits.map(toTextEdit),
  }),
  aboutNotebook({
    request: DocumentRangeFormattingRequest.type,
    capability: { documentRangeFormattingProvider: true },
    run: ({ snapshot, settings, pause }, { range }) =>
      runWithPauses(formatting(snapshot, settings.format, range), pause),
    convert: (edits) => edits.map(toTextEdit),
  }),
  aboutNotebook({
    request: DocumentOnTypeFormattingRequest.type,
    capability: { documentOnTypeFormattingProvider: { firstTriggerCharacter: BREAK } },
    // The line that Enter was typed on; the editor indents the new one.
    run: ({ snapshot, settings }, { ch, position: { line } }) => {
      const left = { line: line - 1, character: 0 };
      return ch === BREAK && line > 0
        ? formatEdits(snapshot, settings.format, { start: left, end: left })
        : [];
    },
    convert: (edits) => edits.map(toTextEdit),
  }),
  aboutNotebook({
    request: SelectionRangeRequest.type,
    capability: { selectionRangeProvider: true },
    run: ({ snapshot }, { positions }) => positions.map((position) => selectionsAt(snapshot, position)),
    convert: (selections) => selections.map(toSelectionRange),
  }),
];
