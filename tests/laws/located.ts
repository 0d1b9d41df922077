/** What a snapshot answers, with every reference as the number of its line, so that two snapshots can be compared. */
import { lineCount, lineOf, linesBetween, textOf } from '../../server/model/snapshot/locate.ts';
import { sessionsOf } from '../../server/model/snapshot/section-ranges.ts';
import type { Snapshot } from '../../server/model/snapshot/snapshot.ts';

/** One text for each answer. What is carried is asked at the last line of every section and of the notebook. */
export function answers(snapshot: Snapshot): readonly string[] {
  const told = (value: unknown) => JSON.stringify(value, (_, each) => plain(snapshot, each));
  const sections = sessionsOf(snapshot).map(({ pagesFrom: _, pagesTo: __, ...session }) => session);
  const ends = new Set([...sections.map(({ to }) => to - 1), lineCount(snapshot) - 1]);
  return [
    textOf(snapshot),
    told(sections),
    ...snapshot.findings.map((finding) => told({ ...finding, line: undefined })),
    ...[...linesBetween(snapshot)].map(({ entry, after, at }) =>
      told([at, entry.kind, ends.has(at) ? after : '']),
    ),
  ];
}

/** References as line numbers, maps as pairs; a reference that leads nowhere says so. */
export function plain(snapshot: Snapshot, value: unknown): unknown {
  if (value instanceof Map) return [...value];
  if (typeof value !== 'object' || value === null || !('page' in value && 'line' in value)) return value;
  const ref = value as { readonly page: number; readonly line: number };
  return lineOf(snapshot, ref) ?? 'a line that is gone';
}
