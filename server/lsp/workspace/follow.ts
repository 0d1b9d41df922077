/** Keeps the workspace up to date with the editor's folders and files. */
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
/** Most photos and logs end in one of these; any other file is looked up again when its notebook is opened or changed. */
const ENDINGS = 'csv,txt,log,jpg,jpeg,png,gif,webp,heic,svg,pdf,mp4,mov';
const NAMED = `**/*.{${ENDINGS},${ENDINGS.toUpperCase()}}`;
const NOTHING = () => undefined;
const NO_PROGRESS = { begin: NOTHING, report: NOTHING, done: NOTHING };
const TITLE = 'Reading the notebooks of this workspace';

/** The open folders; older editors report one only. */
export const foldersIn = ({ workspaceFolders, rootUri }: InitializeParams): readonly string[] =>
  workspaceFolders?.map(({ uri }) => uri) ?? (rootUri ? [rootUri] : []);

/** @returns a function that registers for changes of files and folders, and reads the notebooks for the first time. */
export function followWorkspace(
  connection: Connection,
  client: () => Client,
  { places, index, inUse, filePresence }: WorkspaceKeeper,
  log: (message: string) => void,
): () => Promise<void> {
  const readAll = async () => {
    if (places.roots().length === 0) return index.readAll(NO_PROGRESS);
    // An editor that cannot show it has its notebooks read all the same.
    const progress = await connection.window.createWorkDoneProgress().catch(() => NO_PROGRESS);
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
        filePresence.fileChanged(uri);
        if (!isNotebook(uri)) continue;
        inUse.fileChanged(uri);
        await index.fileChanged(uri);
      }
    }),
  );
  // When a folder moves, its files are not reported one by one.
  const readAgain = async (uris: readonly string[]) => {
    for (const uri of uris) {
      inUse.fileChanged(uri);
      filePresence.fileChanged(uri);
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
