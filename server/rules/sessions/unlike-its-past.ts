import type { Span } from '../../../grammar/index.ts';
import { firstAmount } from '../../model/entry/amount.ts';
import type { QuantityEntry, Statement } from '../../model/entry/entry.ts';
import { readingKey } from '../../model/state/reading-key.ts';
import { numbersIn } from '../../model/state/reading-window.ts';
import type { ReadingWindow, State } from '../../model/state/state.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { exact, type Interval } from '../../trade/measure/interval.ts';
import { convertInterval, unitById } from '../../trade/measure/units.ts';
import { compareWithPast } from '../../trade/sums/noise.ts';
import { isResponse } from '../../trade/vocabulary/quantity.ts';
import { NO_PROBLEMS, type Problem, problemsIn, rule } from '../rule.ts';

const PAST = [820, 830, 815, 825, 810, 835].map((rpm) => `  idle ${rpm} rpm in neutral\n`).join('');

export const unlikeItsPast = rule({
  code: 'unlike-its-past',
  severity: 'information',
  title: 'A reading far from earlier ones',
  why: 'The last readings of the same quantity, at the same place and under the same conditions, show what is usual for this engine. One far from them was misread, mistyped, or shows a change: it is a question, not a fault.',
  standing: 'published',
  source: 'NIST/SEMATECH e-Handbook of Statistical Methods 1.3.5.17: modified z-score over 3.5',
  good: `session 2026-05-02\n${PAST}  idle 840 rpm in neutral\n`,
  bad: `session 2026-05-02\n${PAST}  idle 1180 rpm in neutral\n`,
  on: ['reading'],
  about: isResponse,
  check(entry, { before }) {
    if (before.recentReadings.size === 0) return NO_PROBLEMS;
    return problemsIn(entry.statements, (said) => problemsOf(entry, said, before.recentReadings));
  },
});

function problemsOf(
  entry: QuantityEntry,
  said: Statement,
  past: State['recentReadings'],
): readonly Problem[] {
  const lists = past.get(readingKey(entry.quantity.name, said))?.lists;
  const numbers = lists ? numbersIn(entry.quantity, said) : undefined;
  if (!lists || !numbers) return NO_PROBLEMS;
  if (numbers.every((number, i) => isAmong(number, i, lists, numbers.length))) return NO_PROBLEMS;
  const alike = lists.filter((list) => list.length === numbers.length);
  return numbers.flatMap((number, i) => {
    const before = alike.map((list) => list[i] ?? number);
    const found = compareWithPast(before, number);
    if (!found?.odd) return [];
    return [problemOf(entry, said, said.values[i]?.span ?? said.span, number, before, found.median)];
  });
}

/** Whether a number lies between earlier readings: then it is not odd, and most readings need no closer check. */
function isAmong(number: number, i: number, lists: ReadingWindow['lists'], length: number): boolean {
  let [above, below] = [false, false];
  for (const list of lists) {
    if (list.length !== length) continue;
    above ||= (list[i] as number) >= number;
    below ||= (list[i] as number) <= number;
  }
  return above && below;
}

function problemOf(
  { quantity }: QuantityEntry,
  said: Statement,
  span: Span,
  number: number,
  before: readonly number[],
  median: number,
): Problem {
  const usual = quantity.unit === undefined ? undefined : unitById(quantity.unit);
  const unit = firstAmount(said.values)?.unit ?? usual;
  const text = (of: Interval) => formatValue(usual && unit ? convertInterval(of, usual, unit) : of, unit);
  const range = text({ low: Math.min(...before), high: Math.max(...before), about: false });
  return {
    span,
    message: `${text(exact(number))} is far from earlier readings: the last ${before.length} under the same conditions were ${range}, median ${text(exact(median))}. Misread, or what has changed? (published: modified z-score over 3.5)`,
  };
}
