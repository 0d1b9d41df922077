/** The findings of every notebook of the open folders, for editors that request them. */
import type { WorkspaceDocumentDiagnosticReport } from 'vscode-languageserver';
import { textOf } from '../../model/snapshot/locate.ts';
import { openNotebook } from '../../rules/check.ts';
import { type Report, reportOn, unchangedIf } from '../diagnostics.ts';
import type { ReportAll, Server } from '../server.ts';
import type { Settings } from '../settings.ts';
import type { Pause } from '../yielding.ts';
import { plainAddress } from './addresses.ts';
import type { IndexedNotebook } from './notebook-index.ts';
import { reachableFrom } from './use-graph.ts';

/** The last report on a notebook that is not open, and what else it was made from: notebooks it uses, missing files. */
interface CachedReport {
  readonly settings: Settings;
  readonly sources: readonly unknown[];
  readonly report: Report;
}

/** Editors repeat the request every few seconds: a closed notebook is read again only when it, or one that it uses, has changed. */
export function createReportAll({
  documents,
  workspace,
  settings,
  client,
}: Pick<Server, 'documents' | 'workspace' | 'settings' | 'client'>): ReportAll {
  const { filePresence } = workspace;
  const cache = new WeakMap<IndexedNotebook, CachedReport>();
  const reportOf = async (
    notebook: IndexedNotebook,
    sources: readonly unknown[],
    pause: Pause,
  ): Promise<Report | undefined> => {
    const last = cache.get(notebook);
    // Those of its folder: closed notebooks may be many, and an editor has no settings of its own for each.
    const ofFolder = await settings(workspace.rootOf(notebook.uri));
    if (last?.settings === ofFolder && sameItems(last.sources, sources)) return last.report;
    const read = await workspace.notebookAt(notebook.uri, pause);
    if (!read) return undefined;
    const snapshot = openNotebook(textOf(read.snapshot), read.snapshot.shared);
    const closed = { uri: notebook.uri, snapshot, typed: [], edited: undefined };
    const report = reportOn(closed, ofFolder, client());
    cache.set(notebook, { settings: ofFolder, sources, report });
    return report;
  };
  return async (previousIds, pause) => {
    const opened = [...documents.all()];
    const reports: WorkspaceDocumentDiagnosticReport[] = [];
    for (const document of opened) {
      const { uri, version } = document;
      const report = reportOn(document, await settings(uri), client());
      reports.push({ ...unchangedIf(report, previousIds.get(uri)), uri, version });
    }
    await workspace.whenUpToDate();
    const closed = [...workspace.closed()];
    await filePresence.lookFor(closed.flatMap(({ names }) => names));
    const byAddress = new Map<string, IndexedNotebook | object>([
      ...closed.map((each) => [each.uri, each] as const),
      ...opened.map(({ uri, snapshot }) => [plainAddress(uri), snapshot] as const),
    ]);
    for (const notebook of closed) {
      const { uri } = notebook;
      await pause();
      const sources = [...usedBy(notebook, byAddress), ...notebook.names.map(filePresence.missing)];
      const report = await reportOf(notebook, sources, pause);
      if (report) reports.push({ ...unchangedIf(report, previousIds.get(uri)), uri, version: null });
    }
    return reports;
  };
}

/** All notebooks that one uses, through others too, each as it is now. */
function usedBy(
  { uses }: IndexedNotebook,
  byAddress: ReadonlyMap<string, IndexedNotebook | object>,
): readonly unknown[] {
  const targetsOf = (address: string): readonly string[] => {
    const notebook = byAddress.get(address);
    return notebook && 'uses' in notebook ? (notebook as IndexedNotebook).uses : [];
  };
  return [...reachableFrom(uses, targetsOf)].map((address) => byAddress.get(address));
}

const sameItems = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((each, i) => each === b[i]);
