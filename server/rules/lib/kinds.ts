/** Groups of entry kinds that several rules share. */
import type { EntryKind } from '../../model/entry/entry.ts';

const KINDS: Readonly<Record<Exclude<EntryKind, 'conflict' | 'spoken' | 'asked'>, true>> = {
  blank: true,
  section: true,
  session: true,
  setting: true,
  reading: true,
  fact: true,
  limit: true,
  target: true,
  unknown: true,
  spec: true,
  part: true,
  port: true,
  word: true,
  item: true,
  fit: true,
  check: true,
  file: true,
  revert: true,
  trial: true,
  row: true,
  want: true,
  recheck: true,
  note: true,
  keep: true,
};

/** All that the notation itself has, but the lines of a merge that was not finished, of which nothing else is said. */
export const EVERY_KIND = Object.keys(KINDS) as readonly EntryKind[];

/** Lines that give a value of a quantity. */
export const QUANTITY_KINDS = ['setting', 'reading', 'fact', 'limit', 'target'] as const;

/** Lines that may hold a list of values. */
export const LISTED_KINDS = [
  ...QUANTITY_KINDS,
  'unknown',
  'spec',
  'part',
  'port',
  'word',
  'row',
  'want',
  'recheck',
] as const;
