/** What an editor may ask: one row a request. The server's capabilities are the sum of the rows. */
import {
  DocumentSymbolRequest,
  FoldingRangeRequest,
  HoverRequest,
  WorkspaceSymbolRequest,
} from 'vscode-languageserver';
import { foldsOf, prepareFolding } from '../features/folding.ts';
import { filesWanted, hoverAt, prepareHover } from '../features/hover.ts';
import { prepareOutline, symbolsOf } from '../features/symbols.ts';
import { findSymbols, listedIn } from '../features/workspace-symbols.ts';
import { toDocumentSymbol, toFoldingRange, toHover, toWorkspaceSymbol } from './convert.ts';
import type { OpenDocument } from './documents.ts';
import { filesFor } from './files.ts';
import { aboutNotebook, aboutWorkspace, type Handler } from './request.ts';
import { FINDINGS } from './requests/findings.ts';
import { MEANINGS_ASKED } from './requests/meanings.ts';
import { NAVIGATION } from './requests/navigation.ts';
import { RENAMING } from './requests/renaming.ts';
import { WHILE_TYPING } from './requests/typing.ts';
import { WRITING } from './requests/writing.ts';
import { mapWithPauses, runWithPauses } from './yielding.ts';

export const HANDLERS: readonly Handler[] = [
  aboutNotebook({
    request: HoverRequest.type,
    capability: { hoverProvider: true },
    ahead: prepareHover,
    run: async ({ snapshot, settings, uri, readFile }, { position }) => {
      const files = await filesFor(filesWanted(snapshot, position.line), uri, readFile);
      return hoverAt(snapshot, position, settings.units, files);
    },
    convert: (hover, { client }) => (hover ? toHover(hover, client) : null),
  }),
  aboutNotebook({
    request: FoldingRangeRequest.type,
    capability: { foldingRangeProvider: true },
    ahead: prepareFolding,
    run: ({ snapshot }) => foldsOf(snapshot),
    convert: (folds) => folds.map(toFoldingRange),
  }),
  aboutNotebook({
    request: DocumentSymbolRequest.type,
    capability: { documentSymbolProvider: true },
    ahead: prepareOutline,
    run: ({ snapshot, pause }) => mapWithPauses(symbolsOf(snapshot), toDocumentSymbol, pause),
    convert: (symbols) => symbols,
  }),
  aboutWorkspace({
    request: WorkspaceSymbolRequest.type,
    capability: { workspaceSymbolProvider: true },
    run: async ({ notebooks, workspace, pause }, { query }) => {
      for (const { snapshot } of notebooks()) await runWithPauses(prepareOutline(snapshot), pause);
      await workspace.whenUpToDate();
      return findSymbols([...[...notebooks()].map(listedOpen), ...workspace.closed()], query);
    },
    convert: (symbols) => symbols.map(toWorkspaceSymbol),
  }),
  ...WHILE_TYPING,
  ...NAVIGATION,
  ...RENAMING,
  ...WRITING,
  ...MEANINGS_ASKED,
  ...FINDINGS,
];

const listedOpen = ({ uri, snapshot }: OpenDocument) => ({ uri, symbols: listedIn(snapshot) });
