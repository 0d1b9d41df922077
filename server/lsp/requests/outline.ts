/** What a notebook is made of, at a glance: folds, outline, symbols of the whole workspace. */
import { DocumentSymbolRequest, FoldingRangeRequest, WorkspaceSymbolRequest } from 'vscode-languageserver';
import { foldsOf, prepareFolding } from '../../features/folding.ts';
import { prepareOutline, symbolsOf } from '../../features/symbols.ts';
import { findSymbols, listedIn } from '../../features/workspace-symbols.ts';
import { toDocumentSymbol, toFoldingRange, toWorkspaceSymbol } from '../convert.ts';
import { aboutNotebook, aboutWorkspace, type Handler } from '../request.ts';
import { mapWithPauses, runWithPauses } from '../yielding.ts';

export const OUTLINE_REQUESTS: readonly Handler[] = [
  aboutNotebook({
    request: FoldingRangeRequest.type,
    capability: { foldingRangeProvider: true },
    prepare: prepareFolding,
    run: ({ snapshot }) => foldsOf(snapshot),
    convert: (folds) => folds.map(toFoldingRange),
  }),
  aboutNotebook({
    request: DocumentSymbolRequest.type,
    capability: { documentSymbolProvider: true },
    prepare: prepareOutline,
    run: ({ snapshot, pause }) => mapWithPauses(symbolsOf(snapshot), toDocumentSymbol, pause),
    convert: (symbols) => symbols,
  }),
  aboutWorkspace({
    request: WorkspaceSymbolRequest.type,
    capability: { workspaceSymbolProvider: true },
    run: async ({ server: { documents, workspace }, pause }, { query }) => {
      for (const { snapshot } of documents.all()) await runWithPauses(prepareOutline(snapshot), pause);
      await workspace.whenUpToDate();
      const open = [...documents.all()].map(({ uri, snapshot }) => ({ uri, symbols: listedIn(snapshot) }));
      return findSymbols([...open, ...workspace.closed()], query);
    },
    convert: (symbols) => symbols.map(toWorkspaceSymbol),
  }),
];
