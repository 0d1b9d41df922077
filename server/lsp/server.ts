/** What the server is made of: every answer is worked out from one of these. */
import type { WorkspaceDocumentDiagnosticReport } from 'vscode-languageserver';
import type { Client } from './client.ts';
import type { Documents } from './documents.ts';
import type { Editor } from './editor.ts';
import type { ReadFile } from './files.ts';
import type { ListFolder } from './folders.ts';
import type { TokenResults } from './semantic-token-results.ts';
import type { Settings } from './settings.ts';
import type { Workspace } from './workspace/workspace.ts';
import type { Pause } from './yielding.ts';

/** Reports on every notebook of the workspace. `previousIds`: by URI, the ids of the reports that the editor has. */
export type ReportAll = (
  previousIds: ReadonlyMap<string, string>,
  pause: Pause,
) => Promise<WorkspaceDocumentDiagnosticReport[]>;

export interface Server {
  /** Every open notebook. */
  readonly documents: Documents;
  /** The user's settings for a notebook or a folder. */
  readonly settings: (uri: string) => Promise<Settings>;
  /** What the editor at the other end can do; known once it has said hello. */
  readonly client: () => Client;
  readonly log: (message: string) => void;
  readonly readFile: ReadFile;
  readonly listFolder: ListFolder;
  /** Requests from the server to the editor. */
  readonly editor: Editor;
  readonly tokenResults: TokenResults;
  /** All notebooks of the open folders, and the files around them. */
  readonly workspace: Workspace;
  readonly reportAll: ReportAll;
  readonly phase: () => 'starting' | 'running' | 'ended';
}
