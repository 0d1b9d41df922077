import type { Amount } from '../../model/entry/value.ts';
import type { Dimension } from '../../trade/measure/units.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { amountsOf, dimensionsOf } from '../lib/statement-values.ts';
import { type Problem, problemsIn, rule } from '../rule.ts';

export const tooManyValues = rule({
  code: 'too-many-values',
  severity: 'warning',
  title: 'Several values where one is expected',
  why: 'A thing the engine has once takes one value. With several it is not clear which one holds, so none is used.',
  standing: 'notation',
  good: 'session 2026-05-02\n  initial 9 deg\n',
  bad: 'session 2026-05-02\n  initial 9 deg 12 deg\n',
  outranks: [
    'wrong-unit',
    'outside-band',
    'ten-times',
    'units-mixed-up',
    'degrees-mixed-up',
    'missing-unit',
    'over-limit',
    'misses-target',
    'change-of-reading',
  ],
  on: ['setting', 'reading', 'limit', 'target'],
  check({ quantity, statements: said, line }) {
    if (quantity.form === 'text' || quantity.form === 'several' || quantity.places?.length) return [];
    if (quantity.kind === 'fact') return [];
    return problemsIn(said, ({ values, points, place }) => {
      const amounts = amountsOf(values);
      const [first, second] = points.length > 0 ? [points[0]?.value, amounts[0]] : amounts;
      if (!first || !second || place) return [];
      const other = lineOfItsOwn(line.text, second, quantity);
      if (other) return [other];
      const together = line.text.slice(first.span.to, second.span.from).trim() === '';
      const hint = together ? 'Write a range as 190..220.' : 'Give each its own line.';
      return [
        {
          span: { from: second.span.from, to: Math.max(...amounts.map(({ span }) => span.to)) },
          message: `${quantity.name} takes one value; this is a second one. ${hint}`,
        },
      ];
    });
  },
});

/** The problem of a second quantity, which has its own word: `WOT 4900 rpm 58 mph`. */
function lineOfItsOwn(text: string, { unit, span }: Amount, quantity: Quantity): Problem | undefined {
  if (!unit || dimensionsOf(quantity).includes(unit.dimension)) return undefined;
  const value = text.slice(span.from, span.to);
  const word = quantity.name.startsWith('oil') && OF_OIL[unit.dimension] ? OF_OIL : WORD_OF;
  const name = word[unit.dimension];
  const such = name ? `, such as "${name} ${value}"` : '';
  return { span, message: `${value} is not a value of ${quantity.name}. Give it its own line${such}.` };
}

const WORD_OF: Partial<Record<Dimension, string>> = {
  'road speed': 'speed',
  rotation: 'engine speed',
  ratio: 'air fuel ratio',
  voltage: 'volts',
  time: 'run time',
};
const OF_OIL: Partial<Record<Dimension, string>> = {
  temperature: 'oil temperature',
  pressure: 'oil pressure',
};
