/** What helps in writing: suggestions, hints, lenses and their commands. */
import {
  CodeLensRequest,
  CompletionRequest,
  CompletionTriggerKind,
  ExecuteCommandRequest,
  InlayHintRequest,
} from 'vscode-languageserver';
import { lensesOf } from '../../features/code-lens.ts';
import { folderWanted, suggestionsAt } from '../../features/completion.ts';
import { hintsOf } from '../../features/inlay-hints.ts';
import { today } from '../clock.ts';
import { COMMAND_NAMES, runCommand } from '../commands.ts';
import { toCodeLens, toCompletionItem, toInlayHint } from '../convert-writing.ts';
import { aboutNotebook, aboutWorkspace, type Handler } from '../rows.ts';

export const WHILE_TYPING: readonly Handler[] = [
  aboutNotebook({
    request: CompletionRequest.type,
    capability: { completionProvider: { triggerCharacters: [' ', '#', '@', '/', '['] } },
    run: async ({ snapshot, uri, listFolder }, { position, context }) => {
      const parts = folderWanted(snapshot, position);
      const folder = parts && (await listFolder(uri, parts));
      const unasked =
        context?.triggerKind === CompletionTriggerKind.TriggerCharacter && context.triggerCharacter === ' ';
      return suggestionsAt(snapshot, position, { today: today(), unasked, ...(folder && { folder }) });
    },
    convert: (suggestions, { client }) =>
      suggestions.map((suggestion, rank) => toCompletionItem(suggestion, rank, client)),
  }),
  aboutNotebook({
    request: InlayHintRequest.type,
    capability: { inlayHintProvider: true },
    run: ({ snapshot, settings }, { range: { start, end } }) =>
      hintsOf(snapshot, start.line, end.line + 1, { kinds: settings.hints, units: settings.units }),
    convert: (hints) => hints.map(toInlayHint),
  }),
  aboutNotebook({
    request: CodeLensRequest.type,
    capability: { codeLensProvider: {} },
    run: ({ snapshot }) => lensesOf(snapshot),
    convert: (lenses, { uri }) => lenses.map((lens) => toCodeLens(lens, uri)),
  }),
  aboutWorkspace({
    request: ExecuteCommandRequest.type,
    capability: { executeCommandProvider: { commands: [...COMMAND_NAMES] } },
    run: (asked, { command, arguments: given = [] }) => runCommand(asked, command, given),
    convert: (answer) => answer,
  }),
];
