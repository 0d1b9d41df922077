/** Renaming: of parts, items and own words in every notebook that shares them; of files in every notebook that names them. */
import {
  LSPErrorCodes,
  PrepareRenameRequest,
  RenameRequest,
  ResponseError,
  type ServerCapabilities,
  WillRenameFilesRequest,
} from 'vscode-languageserver';
import { type Refusal, renamableAt } from '../../features/rename.ts';
import { toWorkspaceEdit } from '../changes.ts';
import { aboutNotebook, aboutWorkspace, type Handler } from '../request.ts';
import { editsForMoves } from '../workspace/moves.ts';
import { renameEverywhere } from '../workspace/rename-everywhere.ts';

const ANY_FILE = { filters: [{ pattern: { glob: '**/*' } }] };

const FILES: ServerCapabilities = {
  workspace: {
    workspaceFolders: { supported: true, changeNotifications: true },
    fileOperations: { willRename: ANY_FILE, didRename: ANY_FILE, didDelete: ANY_FILE },
  },
};

export const RENAME_REQUESTS: readonly Handler[] = [
  aboutNotebook({
    request: PrepareRenameRequest.type,
    capability: { renameProvider: { prepareProvider: true } },
    run: ({ snapshot }, { position }) => renamableAt(snapshot, position),
    convert: (target) =>
      'refused' in target ? refusal(target) : { range: target.range, placeholder: target.text },
  }),
  aboutNotebook({
    request: RenameRequest.type,
    capability: { renameProvider: { prepareProvider: true } },
    run: (context, { position, newName }) => {
      const target = renamableAt(context.snapshot, position);
      return 'refused' in target ? target : renameEverywhere(context, target.subject, newName);
    },
    convert: (changes, { server }) =>
      'refused' in changes ? refusal(changes) : toWorkspaceEdit(changes, server.client()),
  }),
  aboutWorkspace({
    request: WillRenameFilesRequest.type,
    capability: FILES,
    run: ({ server: { documents, workspace }, pause }, { files }) =>
      editsForMoves(files, documents.all(), workspace, pause),
    convert: (changes, { server }) => toWorkspaceEdit(changes, server.client()),
  }),
];

/** A protocol error with its reason, which editors show; the dispatcher passes it on as the answer. */
const refusal = ({ refused }: Refusal): never =>
  new ResponseError(LSPErrorCodes.RequestFailed, refused) as never;
