import type { Span } from '../../grammar/index.ts';
import type { QuantityEntry } from '../model/notebook.ts';

/** Where a line tells of a cylinder: its value in a list, or what is said of its place; else the whole of what is said. */
export function cylinderSpan(entry: QuantityEntry, cylinder: number): Span {
  const own = entry.said.find(({ place }) => place?.cylinder === cylinder);
  if (own) return own.span;
  const list = entry.said.find(({ values }) => values.length > 1);
  return list?.values[cylinder - 1]?.span ?? entry.said[0]?.span ?? entry.name;
}
