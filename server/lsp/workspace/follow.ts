/** Keeps the workspace in step with what the editor tells: folders, files, and the notebooks that are open. */
import {
  type Connection,
  DidChangeWatchedFilesNotification,
  type FileEvent,
  type InitializeParams,
} from 'vscode-languageserver';
import type { Client } from '../client.ts';
import { listening } from '../dispatch.ts';
import type { WorkspaceKeeper } from './workspace.ts';

const NOTEBOOKS = '**/*.tappet';
/** Photos and logs mostly end in one of these; any other file is looked for again as its notebook is opened or changed. */
const ENDINGS = 'csv,txt,log,jpg,jpeg,png,gif,webp,heic,svg,pdf,mp4,mov';
const NAMED = `**/*.{${ENDINGS},${ENDINGS.toUpperCase()}}`;
const NOTHING = () => undefined;
const UNSEEN = { begin: NOTHING, report: NOTHING, done: NOTHING };
const TITLE = 'Reading the notebooks of this workspace';

/** The folders that are open; older editors tell of one only. */
export const foldersIn = ({ workspaceFolders, rootUri }: InitializeParams): readonly string[] =>
  workspaceFolders?.map(({ uri }) => uri) ?? (rootUri ? [rootUri] : []);

/** @returns what asks for all that is to be told, and reads the notebooks for the first time. */
export function followWorkspace(
  connection: Connection,
  client: () => Client,
  { places, index, used, namedFiles }: WorkspaceKeeper,
  log: (message: string) => void,
): () => Promise<void> {
  const readAll = async () => {
    if (places.roots().length === 0) return index.readAll(UNSEEN);
    // An editor that cannot show it has its notebooks read all the same.
    const progress = await connection.window.createWorkDoneProgress().catch(() => UNSEEN);
    progress.begin(TITLE, 0);
    try {
      await index.readAll({ report: (percent) => progress.report(percent) });
    } finally {
      progress.done();
    }
  };
  connection.onDidChangeWatchedFiles(
    listening(log, async ({ changes }: { readonly changes: readonly FileEvent[] }) => {
      for (const { uri } of changes) {
        namedFiles.fileChanged(uri);
        if (!isNotebook(uri)) continue;
        used.fileChanged(uri);
        await index.fileChanged(uri);
      }
    }),
  );
  // Of a folder's files nobody tells one by one.
  const readAgain = async (uris: readonly string[]) => {
    for (const uri of uris) {
      used.fileChanged(uri);
      namedFiles.fileChanged(uri);
    }
    await readAll();
  };
  connection.workspace.onDidRenameFiles(
    listening(log, ({ files }) => readAgain(files.flatMap(({ oldUri, newUri }) => [oldUri, newUri]))),
  );
  connection.workspace.onDidDeleteFiles(
    listening(log, ({ files }) => readAgain(files.map(({ uri }) => uri))),
  );
  const followFolders = () =>
    connection.workspace.onDidChangeWorkspaceFolders(
      listening(log, async ({ added, removed }) => {
        const gone = new Set(removed.map(({ uri }) => uri));
        const left = folders.filter((uri) => !gone.has(uri));
        folders = [...left, ...added.map(({ uri }) => uri)];
        places.setRoots(folders);
        await readAll();
      }),
    );
  let folders: readonly string[] = [];
  return async () => {
    folders = places.roots();
    if (client().workspaceFolders) followFolders();
    if (client().watchesFiles)
      await connection.client
        .register(DidChangeWatchedFilesNotification.type, {
          watchers: [NOTEBOOKS, NAMED].map((globPattern) => ({ globPattern })),
        })
        .catch((error) => log(String(error)));
    await readAll();
  };
}

const isNotebook = (uri: string): boolean => uri.toLowerCase().endsWith('.tappet');
