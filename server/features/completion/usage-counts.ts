/** Usage counts over the lines above: what was written often will be written again. */

import type { QuantityEntry, Statement } from '../../model/entry/entry.ts';
import type { Value } from '../../model/entry/value.ts';
import { type LineState, saidOn } from '../../model/snapshot/page.ts';
import { keptByPage } from '../../model/snapshot/per-page.ts';
import { pageAt, type Snapshot } from '../../model/snapshot/snapshot.ts';

/** How often; nothing that was never used is in it. */
export type UsageCounts = ReadonlyMap<string, number>;

/** Lines further up count no more: habits change, and a list must come at once in a notebook of any length. */
const LINES_COUNTED = 600;

/** `name of quantity`, `quantity|unit id`, `quantity@in neutral`, `quantity#left`. */
export function usedAbove(snapshot: Snapshot, line: number): UsageCounts {
  const first = Math.max(0, line - LINES_COUNTED);
  const used = new Map<string, number>();
  for (let page = pageAt(snapshot, first); page <= pageAt(snapshot, line); page++) {
    const start = snapshot.starts[page] as number;
    for (const { row, key } of usesOn(snapshot, page))
      if (start + row >= first && start + row < line) used.set(key, (used.get(key) ?? 0) + 1);
  }
  return used;
}

export const unitKey = (quantity: string, unit: string): string => `${quantity}|${unit}`;
export const placeKey = (quantity: string, place: string): string => `${quantity}#${place}`;
const besideKey = (quantity: string, words: string): string => `${quantity}@${words}`;

/** The words beside a quantity, the most usual first: `in neutral`, `probe`. */
export function wordsBeside(used: UsageCounts, quantity: string): readonly string[] {
  const begin = besideKey(quantity, '');
  return [...used]
    .filter(([key]) => key.startsWith(begin))
    .sort(([, a], [, b]) => b - a)
    .map(([key]) => key.slice(begin.length));
}

interface Use {
  /** Line of its page, from zero. */
  readonly row: number;
  readonly key: string;
}

const usesOn = keptByPage((readings: readonly LineState[]) =>
  readings.flatMap((reading, row) =>
    saidOn(reading).flatMap(({ entry }) =>
      'statements' in entry ? usesOf(entry).map((key): Use => ({ row, key })) : [],
    ),
  ),
);

function usesOf({ quantity: { name }, statements: said, line }: QuantityEntry): readonly string[] {
  return [
    name,
    ...said.flatMap((each) => [
      ...unitsIn(each).map((unit) => unitKey(name, unit)),
      ...(each.place ? [placeKey(name, each.place.text.toLowerCase())] : []),
      ...besideIn(each, line.text).map((words) => besideKey(name, words)),
    ]),
  ];
}

const unitsIn = ({ values, points }: Statement): readonly string[] =>
  [...values, ...points.map(({ value }) => value)].flatMap((value: Value) =>
    value.form === 'amount' && value.unit ? [value.unit.id] : [],
  );

const besideIn = ({ words, conditions }: Statement, line: string): readonly string[] => [
  ...words.map(({ text }) => text.toLowerCase()),
  ...conditions
    .filter(({ words }) => words.length > 0)
    .map(({ span }) => line.slice(span.from, span.to).toLowerCase().replaceAll(/\s+/g, ' ')),
];
