/** Expected values: the trade's range with its standing, and the notebook's own limit and target. */

import { isComparable, statedFor } from '../../analysis/limits/limits.ts';
import { statementText } from '../../model/entry/as-written.ts';
import type { QuantityEntry, Statement } from '../../model/entry/entry.ts';
import type { Declared } from '../../model/state/state.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { range } from '../../trade/measure/interval.ts';
import { unitById } from '../../trade/measure/units.ts';
import type { Band } from '../../trade/vocabulary/quantity.ts';
import { plain } from '../markdown.ts';
import type { HoverQuestion } from './question.ts';
import { whereabouts } from './whereabouts.ts';

export const expectations = (
  question: HoverQuestion,
  { kind, quantity }: QuantityEntry,
  said: Statement,
): readonly string[] =>
  kind === 'limit' || kind === 'target' ? [] : ownExpectations(question, quantity.name, said);

/** The notebook's own limit and target of a quantity; of one that was read only those for its conditions. */
export function ownExpectations(question: HoverQuestion, name: string, said?: Statement): readonly string[] {
  const { limits, targets } = question.reading.before;
  const stated = (map: ReadonlyMap<string, Declared>) => {
    const found = statedFor(map, name, said?.place?.text);
    return found && said && !isComparable(found.statement, said) ? undefined : found;
  };
  return [
    ...statedText(question, 'Limit', stated(limits)),
    ...statedText(question, 'Target', stated(targets)),
  ];
}

/** `Expected 0..20 deg (common practice: street engines run 6 to 12 deg)`. */
export function bandText({ low, high, unit, standing, source }: Band): string {
  const band = formatValue(range(low, high), unitById(unit));
  return plain(`Expected ${band} (${standing}: ${source})`);
}

function statedText(question: HoverQuestion, title: string, stated: Declared | undefined): readonly string[] {
  if (!stated) return [];
  const { quantity, statement: said, text, by } = stated;
  return [plain(`${title} ${text ?? statementText(said, quantity.unit)} (${whereabouts(question, by)})`)];
}
