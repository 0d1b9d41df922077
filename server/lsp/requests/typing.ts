/** Help while writing: completion, hints, lenses and their commands. */
import {
  CodeLensRequest,
  CompletionRequest,
  CompletionTriggerKind,
  ExecuteCommandRequest,
  InlayHintRequest,
} from 'vscode-languageserver';
import { lensesOf } from '../../features/code-lens.ts';
import { folderWanted, suggestionsAt } from '../../features/completion.ts';
import { type Hint, hintsOf } from '../../features/inlay-hints.ts';
import { lineCount } from '../../model/snapshot/locate.ts';
import { preparePages } from '../../model/snapshot/per-page.ts';
import { today } from '../clock.ts';
import { COMMAND_NAMES, runCommand } from '../commands.ts';
import { toCodeLens, toCompletionItem, toInlayHint } from '../convert-writing.ts';
import { isBetweenStops } from '../fresh-template.ts';
import { aboutNotebook, aboutWorkspace, type Handler } from '../request.ts';
import { mapWithPauses } from '../yielding.ts';

const LINES_AT_ONCE = 500;

export const TYPING_REQUESTS: readonly Handler[] = [
  aboutNotebook({
    request: CompletionRequest.type,
    capability: { completionProvider: { triggerCharacters: [' ', '#', '@', '/', '['] } },
    run: async ({ snapshot, document: { fresh }, uri, server }, { position, context }) => {
      const byTrigger = context?.triggerKind === CompletionTriggerKind.TriggerCharacter;
      // An open list would take the Tab that moves to the next stop; it opens only when invoked.
      if (byTrigger && server.client().snippets && isBetweenStops(fresh, position.line)) return [];
      const parts = folderWanted(snapshot, position);
      const folder = parts && (await server.listFolder(uri, parts));
      const unasked = byTrigger && context?.triggerCharacter === ' ';
      return suggestionsAt(snapshot, position, { today: today(), unasked, ...(folder && { folder }) });
    },
    // Requested again at every letter: the server decides what matches the letters typed.
    convert: (suggestions, { server }) => ({
      isIncomplete: true,
      items: suggestions.map((suggestion, rank) => toCompletionItem(suggestion, rank, server.client())),
    }),
  }),
  aboutNotebook({
    request: InlayHintRequest.type,
    capability: { inlayHintProvider: true },
    prepare: preparePages,
    run: async ({ snapshot, settings: { hints: kinds, units }, pause }, { range: { start, end } }) => {
      const hints: Hint[] = [];
      // Some editors request the whole notebook at once.
      for (let from = start.line; from <= Math.min(end.line, lineCount(snapshot)); from += LINES_AT_ONCE) {
        const to = Math.min(from + LINES_AT_ONCE, end.line + 1);
        hints.push(...hintsOf(snapshot, from, to, { kinds, units }));
        await pause();
      }
      return hints;
    },
    convert: (hints) => hints.map(toInlayHint),
  }),
  aboutNotebook({
    request: CodeLensRequest.type,
    capability: { codeLensProvider: {} },
    run: ({ snapshot, uri, pause }) =>
      mapWithPauses(lensesOf(snapshot), (lens) => toCodeLens(lens, uri), pause),
    convert: (lenses) => lenses,
  }),
  aboutWorkspace({
    request: ExecuteCommandRequest.type,
    capability: { executeCommandProvider: { commands: [...COMMAND_NAMES] } },
    run: ({ server }, { command, arguments: values = [] }) => runCommand(server, command, values),
    convert: (answer) => answer,
  }),
];
