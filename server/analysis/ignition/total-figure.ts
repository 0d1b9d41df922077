/** A timing total as a figure: one value, a sum with its terms, or what it lacks. */

import type { SettingInForce } from '../../model/state/state.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { add, type Interval } from '../../trade/measure/interval.ts';
import { type Unit, unitById } from '../../trade/measure/units.ts';
import { type Figure, figure, type Input, type NumberFigure } from '../figure.ts';

const DEG = unitById('deg');

interface Workings {
  readonly formula: string;
  readonly working: string;
  readonly inputs: readonly Input[];
}

/** The four-stroke cycle is geometry; which terms belong in which total is how tuners reckon. */
const BASIS = {
  topic: 'timing',
  standing: 'common practice',
  source: 'follows from the four-stroke cycle',
} as const;

const NO_ROWS: Figure['rows'] = [];

/** Totals whose texts are built only when read: rules need the values alone, on every line. */
export function lazyTotal(name: string, value: Interval, unit: Unit, work: () => Workings): NumberFigure {
  const { topic, standing, source } = BASIS;
  return {
    topic,
    name,
    value,
    unit,
    get text() {
      return formatValue(value, unit);
    },
    get formula() {
      return work().formula;
    },
    get working() {
      return work().working;
    },
    get inputs() {
      return work().inputs;
    },
    standing,
    source,
    caution: undefined,
    rows: NO_ROWS,
  };
}

interface SumTerms {
  readonly formula: string;
  /** Of each value of the sum, in order. */
  readonly names: readonly string[];
  readonly from: readonly SettingInForce[];
  /** Inputs the sum depends on but does not add. */
  readonly beside?: readonly Input[];
}

export function sum(name: string, values: readonly Interval[], terms: () => SumTerms): NumberFigure {
  const value = values.reduce(add);
  return lazyTotal(name, value, DEG, () => {
    const { formula, names, from, beside = [] } = terms();
    const texts = values.map((each) => formatValue(each, DEG));
    const added = names.map((each, i) => ({ name: each, value: texts[i] ?? '', by: from[i]?.by }));
    return {
      formula,
      working: `${texts.join(' + ')} = ${formatValue(value, DEG)}`,
      inputs: [...added, ...beside],
    };
  });
}

/** Of what it needs, each by its name, the total lacks what is undefined. */
export const lacking = (name: string, needs: Readonly<Record<string, unknown>>): Figure =>
  figure({
    ...BASIS,
    name,
    text: '',
    lacks: Object.entries(needs).flatMap(([need, has]) => (has === undefined ? [need] : [])),
    formula: '',
    working: '',
    inputs: [],
  });
