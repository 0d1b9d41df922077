/** Units as the table of units prints them. */
import { parseLine } from '../../../grammar/index.ts';
import type { Entry } from '../../model/entry/entry.ts';
import type { NameScope } from '../../model/entry/name-lookup.ts';
import { readEntry } from '../../model/entry/read-entry.ts';
import type { Amount } from '../../model/entry/value.ts';
import { same } from '../../model/state/immutable.ts';
import { symbolAfter } from '../../trade/measure/format.ts';

/** The entry with its units spelled anew; as it is where that would make something else of it. */
export function inTableUnits(entry: Entry, around: NameScope): Entry {
  const text = respelled(entry);
  if (text === entry.line.text) return entry;
  const spelled = readEntry(parseLine(text), around);
  return same(meaningOf(spelled), meaningOf(entry)) ? spelled : entry;
}

function respelled({ line, ...said }: Entry): string {
  const amounts = [...amountsIn(said)].sort((a, b) => b.unitSpan.from - a.unitSpan.from);
  return amounts.reduce((text, { unit, unitSpan: { from, to }, numberSpan }) => {
    if (!unit || from === to) return text;
    const numbers = line.text.slice(numberSpan.from, numberSpan.to);
    const written = line.text.slice(from, to);
    // `3/4 turn` and `3/4 turns` are both used.
    if (written === unit.symbol || written === symbolAfter('1', unit)) return text;
    const gap = /\s$/.test(line.text.slice(0, from)) ? '' : ' ';
    // An inch sign may touch the next word; its letters must not.
    const after = /^[\p{L}\p{N}]/u.test(line.text.slice(to)) ? ' ' : '';
    return text.slice(0, from) + gap + symbolAfter(numbers, unit) + after + text.slice(to);
  }, line.text);
}

/** Every amount that an entry holds, each once. */
function* amountsIn(value: unknown, seen = new Set<number>()): Generator<Amount> {
  if (typeof value !== 'object' || value === null) return;
  if ('numberSpan' in value) {
    const amount = value as Amount;
    if (seen.has(amount.unitSpan.from)) return;
    seen.add(amount.unitSpan.from);
    yield amount;
  } else for (const each of Object.values(value)) yield* amountsIn(each, seen);
}

/** An entry's content without its columns, for comparison. */
function meaningOf(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(meaningOf);
  const kept = Object.entries(value).filter(([key, each]) => key !== 'line' && !isSpan(each));
  return Object.fromEntries(kept.map(([key, each]) => [key, meaningOf(each)]));
}

const isSpan = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && Object.keys(value).join() === 'from,to';
