/** Suggestions of paths: files beside the notebook or below it. */
import { type Line, parseLine, tokenSpan, tokenText } from '../../../grammar/index.ts';
import { partsWithin } from '../../model/snapshot/named-files.ts';
import type { CompletionQuestion, FolderEntry, Offer } from './suggestion.ts';

/** Which files such a line is likely to name. */
const ENDINGS: ReadonlyMap<string, RegExp> = new Map(
  Object.entries({
    photo: /\.(?:jpe?g|png|gif|webp|heic|avif|tiff?|bmp|svg)$/i,
    log: /\.(?:csv|tsv|txt|log|dat)$/i,
    use: /\.tappet$/i,
  }),
);

interface PathBegun {
  readonly word: string;
  /** As typed up to its last `/`; empty for the notebook's own folder. */
  readonly folder: string;
  /** Column after that `/`. */
  readonly from: number;
}

/** The path that a line (up to the cursor) is in the middle of; undefined for any other line. */
export function pathBegun(before: string): PathBegun | undefined {
  const line: Line = parseLine(before);
  const { syntax } = line;
  if (syntax.kind !== 'file' || line.comment !== undefined) return undefined;
  const keyword = tokenSpan(line, syntax.word);
  if (keyword.to === before.length) return undefined;
  const start = syntax.path === undefined ? before.length : tokenSpan(line, syntax.path).from;
  const from = before[start] === '"' ? start + 1 : start;
  const path = before.slice(from);
  const folder = path.slice(0, path.lastIndexOf('/') + 1);
  return { word: tokenText(line, syntax.word).toLowerCase(), folder, from: from + folder.length };
}

/** The folder to be looked into, as parts below that of the notebook; undefined where none may be. */
export function folderParts({ folder }: PathBegun): readonly string[] | undefined {
  return folder === '' ? [] : partsWithin(folder);
}

/** More are of no use in a list to choose from. */
const MOST = 200;

/** Folders, and the files that such a line is likely to name. */
export function pathOffers({ folder = [] }: CompletionQuestion, { word, from }: PathBegun): readonly Offer[] {
  return folder
    .filter(({ name, isFolder }) => !name.startsWith('.') && (isFolder || ENDINGS.get(word)?.test(name)))
    .toSorted(byName)
    .slice(0, MOST)
    .map(({ name, isFolder }) => ({
      label: isFolder ? `${name}/` : name,
      kind: isFolder ? 'folder' : 'file',
      detail: '',
      text: isFolder ? `${name}/` : name,
      from,
    }));
}

const byName = (a: FolderEntry, b: FolderEntry): number =>
  Number(b.isFolder) - Number(a.isFolder) || (a.name < b.name ? -1 : 1);
