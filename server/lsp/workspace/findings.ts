/** What is found in every notebook of the open folders, for editors that ask. */
import type { WorkspaceDocumentDiagnosticReport } from 'vscode-languageserver';
import { textOf } from '../../model/snapshot/locate.ts';
import { openNotebook } from '../../rules/check.ts';
import type { Client } from '../client.ts';
import { type Report, reportOn, unchangedIf } from '../diagnostics.ts';
import type { Documents } from '../documents.ts';
import type { Settings } from '../settings.ts';
import type { Pause } from '../yielding.ts';
import { plainAddress } from './addresses.ts';
import type { IndexedNotebook } from './notebook-index.ts';
import type { Workspace } from './workspace.ts';

/** `told`: by uri, the names of the findings that the editor has. */
export type EveryReport = (
  told: ReadonlyMap<string, string>,
  pause: Pause,
) => Promise<WorkspaceDocumentDiagnosticReport[]>;

interface WorkspaceFindingsDeps {
  readonly documents: Documents;
  readonly workspace: Workspace;
  /** Of a notebook or a folder. */
  readonly settings: (uri: string) => Promise<Settings>;
  readonly client: () => Client;
}

/** A report on a notebook that is not open, and what else it was made from: those that it uses, and which files are missing. */
interface Kept {
  readonly settings: Settings;
  readonly around: readonly unknown[];
  readonly report: Report;
}

/** Editors ask again every few seconds: what is not open is read again only when it, or one that it uses, has changed. */
export function createEveryReport({
  documents,
  workspace,
  settings,
  client,
}: WorkspaceFindingsDeps): EveryReport {
  const { namedFiles } = workspace;
  const kept = new WeakMap<IndexedNotebook, Kept>();
  const reportOf = async (
    notebook: IndexedNotebook,
    around: readonly unknown[],
    pause: Pause,
  ): Promise<Report | undefined> => {
    const last = kept.get(notebook);
    // Of its folder: what is not open may be many, and an editor has no settings of its own for each.
    const asked = await settings(workspace.rootOf(notebook.uri));
    if (last?.settings === asked && sameItems(last.around, around)) return last.report;
    const read = await workspace.notebookAt(notebook.uri, pause);
    if (!read) return undefined;
    const snapshot = openNotebook(textOf(read.snapshot), read.snapshot.shared);
    const report = reportOn({ uri: notebook.uri, snapshot, typed: [], edited: undefined }, asked, client());
    kept.set(notebook, { settings: asked, around, report });
    return report;
  };
  return async (told, pause) => {
    const opened = [...documents.all()];
    const reports: WorkspaceDocumentDiagnosticReport[] = [];
    for (const document of opened) {
      const { uri, version } = document;
      const report = reportOn(document, await settings(uri), client());
      reports.push({ ...unchangedIf(report, told.get(uri)), uri, version });
    }
    await workspace.whenUpToDate();
    const closed = [...workspace.closed()];
    await namedFiles.lookFor(closed.flatMap(({ names }) => names));
    const sources = new Map<string, Source>([
      ...closed.map((each) => [each.uri, each] as const),
      ...opened.map(({ uri, snapshot }) => [plainAddress(uri), snapshot] as const),
    ]);
    for (const notebook of closed) {
      const { uri } = notebook;
      await pause();
      const around = [...usedBy(notebook, sources), ...notebook.names.map(namedFiles.missing)];
      const report = await reportOf(notebook, around, pause);
      if (report) reports.push({ ...unchangedIf(report, told.get(uri)), uri, version: null });
    }
    return reports;
  };
}

type Source = IndexedNotebook | object;

/** All that it uses, through others too, each as it is now. */
function usedBy({ uses }: IndexedNotebook, sources: ReadonlyMap<string, Source>): readonly unknown[] {
  const seen = new Set(uses);
  for (const uri of seen) {
    const source = sources.get(uri);
    if (source && 'uses' in source) for (const each of (source as IndexedNotebook).uses) seen.add(each);
  }
  return [...seen].map((uri) => sources.get(uri));
}

const sameItems = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((each, i) => each === b[i]);
