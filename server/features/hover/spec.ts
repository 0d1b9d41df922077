/** Hover of a specification: the value in other units too, with its source. */

import { valueText } from '../../model/entry/as-written.ts';
import type { SpecEntry } from '../../model/entry/entry.ts';
import { specName } from '../../model/entry/spec-names.ts';
import type { Amount } from '../../model/entry/value.ts';
import { blocks, plain, stacked, strong } from '../markdown.ts';
import { inOtherUnits } from '../units.ts';
import { figuresText } from './figures.ts';
import type { HoverQuestion } from './question.ts';

const OVERRULED = "The maker's own figure for this engine overrules this one.";

/** Markdown. One that gives no figure has at most an estimate. */
export function specText(question: HoverQuestion, entry: SpecEntry): string {
  const { quantity, values, source } = entry;
  if (values.length === 0) return blocks([strong(specName(entry)), figuresText(question, 'spec')]);
  const amounts = values.filter((value): value is Amount => value.form === 'amount');
  const { preferred, others } = inOtherUnits(amounts, quantity, question.units);
  const written = values.map((value) => valueText(value, quantity.unit)).join(' ');
  const [shown, ...equals] = [preferred, written, ...others].filter((text) => text !== undefined);
  return stacked([
    [strong(`${specName(entry)} ${shown}`), ...equals.map(plain)].join(' = '),
    plain(source ?? 'No source written.'),
    plain(OVERRULED),
  ]);
}
