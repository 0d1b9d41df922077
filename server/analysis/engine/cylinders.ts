/** Readings by cylinder: mean, spread, highest and lowest, by bank and firing order; a cold cylinder; plugs side by side. */

import type { State } from '../../model/state/state.ts';
import { formatNumber, formatValue } from '../../trade/measure/format.ts';
import { convert, type Unit, unitById } from '../../trade/measure/units.ts';
import { COLD_RULE, inFiringOrder, summarize } from '../../trade/sums/cylinders.ts';
import { meanOf } from '../evidence/conditions.ts';
import { readingName, withHead } from '../evidence/effect-text.ts';
import type { Figure, Input, Working } from '../figure.ts';
import { judgeCold } from './cold-cylinder.ts';
import { type CylinderSet, cylinderSets, numbersOf, toldByCylinder } from './cylinder-readings.ts';
import { banksOf, firingOrderOf } from './engine-facts.ts';

const ABOUT = [
  'tube',
  'egt',
  'head temperature',
  'air fuel ratio',
  'lambda',
  'carbon monoxide',
  'hydrocarbons',
  'oxygen',
  'lead resistance',
  'compression',
  'leak down',
];

export const CYLINDERS: Working = {
  topic: 'cylinders',
  about: ABOUT,
  work: ({ state }, word) =>
    cylinderSets(state, word).flatMap((set) => [...summary(state, set), ...cold(state, set)]),
};

const ABOUT_PLUGS = ['plug', 'spark', 'knock'];

export const PLUGS: Working = {
  topic: 'cylinders',
  about: ABOUT_PLUGS,
  work: ({ state }, word) =>
    ABOUT_PLUGS.filter((name) => word === undefined || word === name).flatMap((name) =>
      sideBySide(state, name),
    ),
};

/** Mean, spread, highest and lowest. Approximate readings make an approximate mean; highest and lowest go by midpoints. */
function summary(state: State, set: CylinderSet): readonly Figure[] {
  const numbers = numbersOf(set);
  const found = summarize(numbers);
  if (!found || numbers.length < 2) return [];
  const unit = unitIn(set);
  const mean = meanOf(set.readings.map(({ value }) => value));
  const told = (n: number) => `${formatNumber(n, unit)}${unit?.symbol ? ` ${unit.symbol}` : ''}`;
  const { highest, lowest } = found;
  const values = set.readings.map(({ value }) => formatValue(value, unit)).join(' + ');
  return [
    {
      topic: 'cylinders',
      name: readingName(set.name, '', set.under),
      text: `mean ${formatValue(mean, unit)}, spread ${told(found.spread)}: highest #${highest.cylinder} ${told(highest.value)}, lowest #${lowest.cylinder} ${told(lowest.value)}`,
      value: mean,
      unit,
      formula: 'sum / number of cylinders read; spread = highest - lowest',
      working: `(${values}) / ${set.readings.length} = ${formatValue(mean, unit)}; ${told(highest.value)} - ${told(lowest.value)} = ${told(found.spread)}`,
      inputs: inputsOf(set),
      standing: 'common practice',
      source: 'arithmetic',
      caution: undefined,
      rows: withHead(
        ['cylinders', 'mean', 'spread', 'readings'],
        [...bankRows(state, set, told), ...firingRow(state, set)],
      ),
    },
  ];
}

function bankRows(
  state: State,
  set: CylinderSet,
  told: (n: number) => string,
): readonly (readonly string[])[] {
  const banks = banksOf(state);
  if (banks.length < 2) return [];
  return banks.flatMap(({ name, cylinders }) => {
    const numbers = inFiringOrder(numbersOf(set), cylinders);
    const found = summarize(numbers);
    if (!found) return [];
    const each = numbers.map(({ cylinder, value }) => `#${cylinder} ${formatNumber(value, unitIn(set))}`);
    return [[bankName(name), told(found.mean), told(found.spread), each.join(', ')]];
  });
}

const bankName = (name: string): string => (name.includes('bank') ? name : `${name} bank`);

function firingRow(state: State, set: CylinderSet): readonly (readonly string[])[] {
  const numbers = inFiringOrder(numbersOf(set), firingOrderOf(state));
  if (numbers.length < 2) return [];
  const each = numbers.map(({ cylinder, value }) => `#${cylinder} ${formatNumber(value, unitIn(set))}`);
  return [['in firing order', '', '', each.join(', ')]];
}

/** A tube far colder than the rest is worth a question; spread at idle is normal. */
function cold(state: State, set: CylinderSet): readonly Figure[] {
  const judged = judgeCold(state, set);
  if (!judged) return [];
  const { cold: found, numbers, around, aroundWritten, unit } = judged;
  const told = (n: number) => `${formatNumber(convert(n, unitById('C'), unit), unit)} ${unit.symbol}`;
  const one = found.map(
    ({ cylinder, value, othersMedian }) => `#${cylinder} ${told(value)}, the others ${told(othersMedian)}`,
  );
  const air = `${told(around)}${aroundWritten ? '' : ' (assumed; no air temperature written)'}`;
  return [
    {
      topic: 'cylinders',
      name: `cold cylinder by ${readingName(set.name, '', set.under)}`,
      text:
        found.length > 0
          ? `May not be firing: ${one.join('; ')}`
          : 'No cylinder is clearly colder than the rest; spread alone at idle means little',
      value: undefined,
      unit: undefined,
      formula: 'rise over ambient / median rise of the other cylinders',
      working: numbers.map((each) => riseText(each, numbers, around)).join(', '),
      inputs: [{ name: 'ambient air', value: air, by: undefined }, ...inputsOf(set)],
      standing: 'common practice',
      source: `under ${COLD_RULE.dead} it is not firing; under ${COLD_RULE.weak} only if it is also an outlier (modified z-score ${COLD_RULE.score})`,
      caution: found.length > 0 ? 'Unburnt fuel from a dead cylinder can burn in the exhaust.' : undefined,
      rows: [],
    },
  ];
}

function riseText(
  { cylinder, value }: { readonly cylinder: number; readonly value: number },
  all: readonly { readonly cylinder: number; readonly value: number }[],
  air: number,
): string {
  const others = summarize(all.filter((each) => each.cylinder !== cylinder));
  const rise = (others?.median ?? air) - air;
  return `#${cylinder} ${rise > 0 ? ((value - air) / rise).toFixed(2) : '?'}`;
}

function sideBySide(state: State, name: string): readonly Figure[] {
  const looks = toldByCylinder(state, name);
  if (looks.length < 2) return [];
  const order = firingOrderOf(state).filter((cylinder) => looks.some((each) => each.cylinder === cylinder));
  const kinds = new Set(looks.map(({ text }) => text.toLowerCase()));
  return [
    {
      topic: 'cylinders',
      name: `${name}s side by side`,
      text:
        kinds.size === 1
          ? `${looks.length} read, all ${looks[0]?.text}`
          : `${looks.length} read, ${kinds.size} kinds`,
      value: undefined,
      unit: undefined,
      formula: 'as written, in cylinder order',
      working: order.length > 1 ? `firing order ${order.join('-')}` : '',
      inputs: looks.map(({ cylinder, text, by }) => ({ name: `${name} #${cylinder}`, value: text, by })),
      standing: 'common practice',
      source: 'as written in the notebook',
      caution: undefined,
      rows: withHead(
        ['cylinder', name],
        looks.map(({ cylinder, text }) => [`#${cylinder}`, text]),
      ),
    },
  ];
}

const unitIn = ({ unit }: CylinderSet): Unit | undefined => (unit === undefined ? undefined : unitById(unit));

/** A list is one line, and is listed once. */
export function inputsOf(set: CylinderSet): readonly Input[] {
  const unit = unitIn(set);
  const [first, ...rest] = set.readings;
  if (first && rest.every(({ by }) => by === first.by)) {
    const values = set.readings.map(({ value }) => formatValue(value, undefined)).join(' ');
    return [{ name: set.name, value: unit?.symbol ? `${values} ${unit.symbol}` : values, by: first.by }];
  }
  return set.readings.map(({ cylinder, value, by }) => {
    return { name: `#${cylinder}`, value: formatValue(value, unit), by };
  });
}
