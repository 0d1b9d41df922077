/** The files a notebook names: photos, logs, other notebooks. */
import type { Range, Span } from '../../grammar/index.ts';
import type { FileEntry } from '../model/entry/entry.ts';
import { keptByPage } from '../model/snapshot/per-page.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import { onLine } from './ranges.ts';

interface FileLink {
  readonly range: Range;
  readonly word: FileEntry['word'];
  /** As written, without quotes. */
  readonly path: string;
  readonly isQuoted: boolean;
}

/** In the order of lines. Whether the files are there is for those to say who can look. */
export function linksIn(snapshot: Snapshot): readonly FileLink[] {
  return snapshot.pages.flatMap((_, page) => {
    const start = snapshot.starts[page] as number;
    return linksOn(snapshot, page).map(({ line, span, ...link }) => ({
      ...link,
      range: onLine(start + line, span),
    }));
  });
}

interface LineLink extends Omit<FileLink, 'range'> {
  readonly line: number;
  readonly span: Span;
}

const linksOn = keptByPage((readings): readonly LineLink[] =>
  readings.flatMap(({ entry }, line) => {
    if (entry.kind !== 'file' || entry.path === '') return [];
    const { word, path, pathSpan: span } = entry;
    return [{ line, span, word, path, isQuoted: isQuoted(entry) }];
  }),
);

export interface TextEdit {
  readonly range: Range;
  readonly text: string;
}

/** The edits that make each path what `moved` says; those of which it says nothing stay. */
export function pathEdits(
  snapshot: Snapshot,
  moved: (path: string) => string | undefined,
): readonly TextEdit[] {
  return linksIn(snapshot).flatMap(({ path, range, isQuoted }) => {
    const now = moved(path);
    const text = now === undefined || now === path ? undefined : inPlace(now, isQuoted);
    return text === undefined ? [] : [{ range, text }];
  });
}

/** Another path, as it is put in the place of a line's own; undefined for one that cannot be written. */
export const writtenPath = (path: string, entry: FileEntry): string | undefined =>
  inPlace(path, isQuoted(entry));

const isQuoted = ({ line, pathSpan }: FileEntry): boolean => line.text[pathSpan.from - 1] === '"';

function inPlace(path: string, isQuoted: boolean): string | undefined {
  if (path.includes('"')) return undefined;
  return isQuoted || !path.includes(';') ? path : `"${path}"`;
}
