/** Files beside a notebook, read for a server without a disk: nothing outside the notebook's own folder and workspace. */
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';

interface FileRequest {
  /** URI of the notebook. */
  readonly notebook: string;
  /** Below its folder. */
  readonly parts: readonly string[];
  /** In bytes. */
  readonly largest: number;
}

/** A text or a problem. */
interface Answer {
  readonly text?: string;
  readonly problem?: string;
}

/** Answers the server's `tappet/readFile` and `tappet/listFolder`. */
export function answerFileRequests(client: BaseLanguageClient): vscode.Disposable {
  return vscode.Disposable.from(
    client.onRequest<Answer, void>('tappet/readFile', (request: FileRequest) => read(request)),
    client.onRequest<readonly Entry[], void>('tappet/listFolder', (request: FileRequest) => list(request)),
  );
}

interface Entry {
  readonly name: string;
  readonly isFolder: boolean;
}

/** Empty for a folder that may not be listed. */
async function list({ notebook, parts }: Pick<FileRequest, 'notebook' | 'parts'>): Promise<readonly Entry[]> {
  const uri = within(notebook, parts);
  if (!uri) return [];
  const entries = await vscode.workspace.fs.readDirectory(uri);
  return entries.map(([name, type]) => ({ name, isFolder: (type & vscode.FileType.Directory) !== 0 }));
}

/** Undefined for what is not below the notebook's folder, or outside the workspace. */
function within(notebook: string, parts: readonly string[]): vscode.Uri | undefined {
  const uri = vscode.Uri.joinPath(vscode.Uri.parse(notebook, true), '..', ...parts);
  const plain = parts.every((part) => part !== '' && part !== '..' && !/[/\\]/.test(part));
  return plain && vscode.workspace.getWorkspaceFolder(uri) ? uri : undefined;
}

async function read({ notebook, parts, largest }: FileRequest): Promise<Answer> {
  const uri = parts.length > 0 ? within(notebook, parts) : undefined;
  if (!uri) return { problem: 'outside' };
  try {
    const { type, size } = await vscode.workspace.fs.stat(uri);
    if (type & vscode.FileType.SymbolicLink) return { problem: 'outside' };
    if (!(type & vscode.FileType.File)) return { problem: 'not readable' };
    if (size > largest) return { problem: 'too large' };
    return decoded(await vscode.workspace.fs.readFile(uri));
  } catch (error) {
    const isMissing = error instanceof vscode.FileSystemError && error.code === 'FileNotFound';
    return { problem: isMissing ? 'missing' : 'not readable' };
  }
}

function decoded(bytes: Uint8Array): Answer {
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch {
    return { problem: 'not text' };
  }
}
