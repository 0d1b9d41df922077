/** Idle figures: drop into gear, the two sides' mixture screws, and the power valve against the idle depression. */

import { settingText } from '../../model/state/setting-text.ts';
import type { State } from '../../model/state/state.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { exact, type Interval, monotone, subtract } from '../../trade/measure/interval.ts';
import { unitById } from '../../trade/measure/units.ts';
import { powerValve } from '../../trade/sums/carburation.ts';
import type { Figure, Working } from '../figure.ts';
import { settingOf } from '../inputs.ts';
import { farApart, idleDepression, idleOf, mixtureSides, SIDES_APART, type Sides } from './idle-readings.ts';

const RPM = unitById('rpm');
const IN_HG = unitById('inHg');
const TURN = unitById('turn');

const IN_GEAR_CAUTION =
  'Checking idle in gear: chock the wheels, set the brake, keep everyone clear front and back; tie a boat up well.';

export const IDLE_DROP: Working = {
  topic: 'idle and mixture',
  about: ['idle'],
  work: ({ state }) => drop(state),
};

export const MIXTURE_SIDES: Working = {
  topic: 'idle and mixture',
  about: ['mixture'],
  work: ({ state }) => mixtureSides(state.settings).map(sides),
};

export const POWER_VALVE: Working = {
  topic: 'idle and mixture',
  about: ['power valve', 'depression'],
  work: ({ state }, word) => valve(state, word),
};

function drop(state: State): readonly Figure[] {
  const { inGear, outOfGear } = idleOf(state);
  if (!inGear || !outOfGear) return [];
  const value = subtract(outOfGear.value, inGear.value);
  const [out, within] = [formatValue(outOfGear.value, RPM), formatValue(inGear.value, RPM)];
  return [
    {
      topic: 'idle and mixture',
      name: 'drop into gear',
      text:
        value.high < 0
          ? `${within} in gear is above ${out} out of gear: readings swapped?`
          : formatValue(value, RPM),
      value,
      unit: RPM,
      formula: 'idle out of gear - idle in gear',
      working: `${out} - ${within} = ${formatValue(value, RPM)}`,
      inputs: [
        { name: `idle ${outOfGear.words.join(' ')}`, value: out, by: outOfGear.by },
        { name: `idle ${inGear.words.join(' ')}`, value: within, by: inGear.by },
      ],
      standing: 'common practice',
      source: 'an engine idles slower in gear than out of gear',
      caution: IN_GEAR_CAUTION,
      rows: [],
    },
  ];
}

function sides(pair: Sides): Figure {
  const { left, right, difference } = pair;
  const size = Math.max(Math.abs(difference.low), Math.abs(difference.high));
  const apart = formatValue(magnitude(difference), TURN);
  const further = difference.low + difference.high > 0 ? left : right;
  const usual = `usually within about ${formatValue(exact(SIDES_APART), TURN)}`;
  const places = `mixture ${left.place} and ${right.place}`;
  return {
    topic: 'idle and mixture',
    name: places,
    text:
      size < 1e-9
        ? 'alike'
        : `${apart} apart, ${further.place} further out; ${usual}${farApart(pair) ? ': look for a leak or a blocked passage on one side' : ''}`,
    value: difference,
    unit: TURN,
    formula: `${left.place} - ${right.place}`,
    working: `${settingText(left)} - ${settingText(right)} = ${formatValue(difference, TURN)}`,
    inputs: [left, right].map((screw) => {
      return { name: `mixture ${screw.place}`, value: settingText(screw), by: screw.by };
    }),
    standing: 'common practice',
    source: 'no source',
    caution: undefined,
    rows: [],
  };
}

function magnitude({ low, high, about }: Interval): Interval {
  if (low >= 0) return { low, high, about };
  return high <= 0 ? { low: -high, high: -low, about } : { low: 0, high: Math.max(-low, high), about };
}

/** Power valve figure; where none is fitted, only for the word itself: many carburettors have none. */
function valve(state: State, word: string | undefined): readonly Figure[] {
  const fitted = settingOf(state, 'power valve', 'inHg');
  const depression = idleDepression(state);
  if (!fitted && word !== 'power valve') return [];
  if (!depression || !(depression.value.low > 2)) return [];
  const value = monotone(depression.value, (inHg) => powerValve(inHg)?.suggested ?? Number.NaN);
  const ceiling = monotone(depression.value, (inHg) => powerValve(inHg)?.ceiling ?? Number.NaN);
  const read = formatValue(depression.value, IN_HG);
  const [half, most] = [formatValue(value, IN_HG), formatValue(ceiling, IN_HG)];
  return [
    {
      topic: 'idle and mixture',
      name: 'power valve by idle depression',
      text: `about ${half}, never above ${most}${fitted ? `; fitted ${fitted.input.value}: ${verdict(fitted.value, value, ceiling)}` : ''}${depression.inGear ? '' : '; this depression may be out of gear, where it is higher'}`,
      value,
      unit: IN_HG,
      formula: 'half the idle depression in gear, and at most 2 inHg below it',
      working: `${read} / 2 = ${half}; ${read} - 2 inHg = ${most}`,
      inputs: [
        { name: `depression ${depression.words.join(' ')}`, value: read, by: depression.by },
        ...(fitted ? [fitted.input] : []),
      ],
      standing: 'common practice',
      source: 'no source',
      caution: depression.inGear ? IN_GEAR_CAUTION : undefined,
      rows: [],
    },
  ];
}

function verdict(fitted: Interval, suggested: Interval, ceiling: Interval): string {
  if (fitted.low > ceiling.high) return 'above the ceiling, so it may be open at idle';
  if (fitted.low > suggested.high) return 'above half, below the ceiling';
  return fitted.high < suggested.low ? 'below half' : 'agrees with the rule of thumb';
}
