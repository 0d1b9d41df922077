/** Other names: of parts, items and own words, in every notebook that takes them; of files, in every notebook that names them. */
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
    run: (asked, { position, newName }) => {
      const found = renamableAt(asked.snapshot, position);
      return 'refused' in found ? found : renameEverywhere(asked, found.subject, newName);
    },
    convert: (changes, { client }) =>
      'refused' in changes ? refusal(changes) : toWorkspaceEdit(changes, client),
  }),
  aboutWorkspace({
    request: WillRenameFilesRequest.type,
    capability: FILES,
    run: ({ notebooks, workspace, pause }, { files }) => editsForMoves(files, notebooks(), workspace, pause),
    convert: (changes, { client }) => toWorkspaceEdit(changes, client),
  }),
];

/** An error with its reason, which editors show; whoever answers hands it over as one. */
const refusal = ({ refused }: Refusal): never =>
  new ResponseError(LSPErrorCodes.RequestFailed, refused) as never;
