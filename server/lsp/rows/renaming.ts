/** Other names: of parts, items and own words, in every notebook that takes them; of files, in every notebook that names them. */
import {
  LSPErrorCodes,
  PrepareRenameRequest,
  RenameRequest,
  ResponseError,
  type ServerCapabilities,
  WillRenameFilesRequest,
  type WorkspaceEdit,
} from 'vscode-languageserver';
import type { TextEdit } from '../../features/document-links.ts';
import { type Refusal, renamableAt } from '../../features/rename.ts';
import { aboutNotebook, aboutWorkspace, type Handler } from '../rows.ts';
import { editsForMoves } from '../workspace/moves.ts';
import { renameEverywhere } from '../workspace/rename-everywhere.ts';

const ANY_FILE = { filters: [{ pattern: { glob: '**/*' } }] };

const FILES: ServerCapabilities = {
  workspace: {
    workspaceFolders: { supported: true, changeNotifications: true },
    fileOperations: { willRename: ANY_FILE, didRename: ANY_FILE, didDelete: ANY_FILE },
  },
};

export const RENAMING: readonly Handler[] = [
  aboutNotebook({
    request: PrepareRenameRequest.type,
    capability: { renameProvider: { prepareProvider: true } },
    run: ({ snapshot }, { position }) => renamableAt(snapshot, position),
    convert: (found) =>
      'refused' in found ? refusal(found) : { range: found.range, placeholder: found.text },
  }),
  aboutNotebook({
    request: RenameRequest.type,
    capability: { renameProvider: { prepareProvider: true } },
    run: ({ snapshot, uri, workspace }, { position, newName }) => {
      const found = renamableAt(snapshot, position);
      if ('refused' in found) return found;
      return renameEverywhere({ uri, snapshot }, found.subject, newName, workspace);
    },
    convert: (edits) => ('refused' in edits ? refusal(edits) : workspaceEdit(edits)),
  }),
  aboutWorkspace({
    request: WillRenameFilesRequest.type,
    capability: FILES,
    run: ({ notebooks, workspace }, { files }) => editsForMoves(files, notebooks(), workspace),
    convert: workspaceEdit,
  }),
];

/** An error with its reason, which editors show; whoever answers hands it over as one. */
const refusal = ({ refused }: Refusal): never =>
  new ResponseError(LSPErrorCodes.RequestFailed, refused) as never;

function workspaceEdit(edits: ReadonlyMap<string, readonly TextEdit[]>): WorkspaceEdit {
  const changes = [...edits].map(([uri, each]) => [
    uri,
    each.map(({ range, text }) => ({ range, newText: text })),
  ]);
  return { changes: Object.fromEntries(changes) };
}
