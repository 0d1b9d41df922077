import type { Span } from '../../../grammar/index.ts';
import type { QuantityEntry } from '../../model/entry/entry.ts';

/** Columns of one cylinder on a line: its value in a list, or the part for its place; else everything after the word. */
export function cylinderSpan(entry: QuantityEntry, cylinder: number): Span {
  const own = entry.statements.find(({ place }) => place?.cylinder === cylinder);
  if (own) return own.span;
  const list = entry.statements.find(({ values }) => values.length > 1);
  return list?.values[cylinder - 1]?.span ?? entry.statements[0]?.span ?? entry.name;
}
