/** Timing totals as figures. */
import { formatValue } from '../../trade/measure/format.ts';
import type { Figure, Working } from '../figure.ts';
import { type Derived, totalsOf } from './timing-totals.ts';

const ABOUT = [
  'initial',
  'mechanical',
  'mechanical limit',
  'vacuum advance',
  'vacuum limit',
  'vacuum source',
  'timing',
  'total',
  'all in',
];

export const TIMING: Working = {
  topic: 'timing',
  about: ABOUT,
  work: ({ state }) => totalsOf(state).given.map(figureOf),
};

function figureOf({ name, value, unit, formula, working, inputs }: Derived): Figure {
  return {
    topic: 'timing',
    name,
    text: formatValue(value, unit),
    value,
    unit,
    formula,
    working,
    inputs,
    standing: 'common practice',
    source: 'follows from the four-stroke cycle',
    caution: undefined,
    rows: [],
  };
}
