/** Quick fix for a `use` line whose notebook is at another path. */
import { lineStateAt } from '../../model/snapshot/locate.ts';
import type { Snapshot } from '../../model/snapshot/snapshot.ts';
import type { Diagnostic } from '../diagnostics.ts';
import { writtenPath } from '../document-links.ts';
import { onLine } from '../ranges.ts';
import type { ActionAround, CodeAction } from './action.ts';

/** One for each place where a notebook of that name is; the one to take where it is the only one. */
export function lostPaths(
  snapshot: Snapshot,
  found: Diagnostic & { readonly code: string },
  { elsewhere }: ActionAround,
): readonly CodeAction[] {
  const line = found.range.start.line;
  const entry = found.code === 'use-missing' ? lineStateAt(snapshot, line)?.entry : undefined;
  if (entry?.kind !== 'file') return [];
  const paths = elsewhere(entry.path);
  return paths.flatMap((path): CodeAction[] => {
    const text = writtenPath(path, entry);
    if (text === undefined) return [];
    const edits = [{ range: onLine(line, entry.pathSpan), text }];
    return [{ title: `Use "${path}"`, kind: 'quickfix', edits, found: [found], isSure: paths.length === 1 }];
  });
}
