/** The two tests of how well cylinders seal: compression by the published rules, and leak-down. */
import { type CompressionVerdict, leakDown } from '../../trade/compression.ts';
import { formatNumber, formatValue } from '../../trade/format.ts';
import { divide, greatest, type Interval, least } from '../../trade/interval.ts';
import { unitById } from '../../trade/units.ts';
import type { Carried } from '../carry.ts';
import { type CylinderSet, cylinderSets, neighboursIn, numbersOf } from '../cylinders.ts';
import { type JudgedCompression, judgeSet } from '../sealing.ts';
import { inputsOf } from './cylinders.ts';
import type { Figure, Working } from './figure.ts';

export const SEALING: Working = {
  topic: 'cylinders',
  about: ['compression', 'leak down'],
  work: ({ carried }, word) =>
    [
      ...cylinderSets(carried, 'compression').flatMap((set) => compression(carried, set)),
      ...cylinderSets(carried, 'leak down').flatMap(leak),
    ].filter(({ name }) => word === undefined || name.startsWith(word)),
};

const PSI = unitById('psi');
const psi = (n: number): string => `${formatNumber(n, PSI)} psi`;

function compression(carried: Carried, set: CylinderSet): readonly Figure[] {
  const judged = judgeSet(carried, set);
  if (!judged) return [];
  const values = set.readings.map(({ value }) => value);
  const [highest, lowest] = [values.reduce(greatest), values.reduce(least)];
  const ratio = divide(lowest, highest);
  return judged.verdicts.map((verdict, i) => ({
    topic: 'cylinders',
    name: `compression by the rule of ${verdict.rule.name}`,
    text: verdictText(judged, verdict, neighboursIn(carried).length > 0),
    value: ratio,
    unit: unitById('ratio'),
    formula: `lowest / highest, not under ${verdict.rule.fraction}${verdict.rule.floorPsi ? `; none under ${verdict.rule.floorPsi} psi` : ''}`,
    working: `${psi(judged.lowest)} / ${psi(judged.highest)} = ${formatNumber(judged.ratio, undefined)}; ${verdict.rule.fraction} x ${psi(judged.highest)} = ${psi(verdict.rule.fraction * judged.highest)}`,
    inputs: inputsOf(set),
    standing: 'published',
    source: `${verdict.rule.source}; your engine's own manual overrules it`,
    caution: undefined,
    rows: i === 0 ? shares(set, judged.highest) : [],
  }));
}

const shares = (set: CylinderSet, highest: number): readonly (readonly string[])[] =>
  set.readings.map(({ cylinder, value }) => [
    `#${cylinder}`,
    formatValue(value, PSI),
    percentOf(value, highest),
  ]);

const percentOf = (value: Interval, highest: number): string =>
  `${formatNumber(Math.round((100 * (value.low + value.high)) / 2 / highest), undefined)} % of the highest`;

function verdictText(
  { lowest, highest, ratio }: JudgedCompression,
  { rule, allowed, low, lowPairs }: CompressionVerdict,
  neighboursKnown: boolean,
): string {
  const compared = `lowest ${psi(lowest)} is ${formatNumber(ratio, undefined)} of the highest ${psi(highest)}`;
  if (low.length === 0) return `${compared}: none under the ${psi(allowed)} allowed`;
  const floor = allowed === rule.floorPsi ? ' (engines of a low ratio stand under that in good health)' : '';
  const under = `${low.map((each) => `#${each}`).join(', ')} under the ${psi(allowed)} allowed${floor}`;
  const pairs = lowPairs.map(([one, other]) => `#${one} and #${other}`).join('; ');
  if (pairs !== '')
    return `${compared}: ${under}; ${pairs} stand side by side: suspect the head gasket between them`;
  const unknown =
    low.length > 1 && !neighboursKnown
      ? '; write the banks or `layout inline` to have neighbours judged'
      : '';
  return `${compared}: ${under}${unknown}`;
}

function leak(set: CylinderSet): readonly Figure[] {
  const numbers = numbersOf(set);
  const found = leakDown(numbers.map(({ value }) => value));
  const worst = found && numbers[found.worstCylinder - 1];
  if (!found || !worst || numbers.length < 2) return [];
  const told = (n: number) => `${formatNumber(n, undefined)} %`;
  return [
    {
      topic: 'cylinders',
      name: 'leak down spread',
      text: `${told(found.spread)}: best ${told(found.best)}, worst #${worst.cylinder} ${told(found.worst)}`,
      value: { low: found.spread, high: found.spread, about: false },
      unit: unitById('%'),
      formula: 'worst - best',
      working: `${told(found.worst)} - ${told(found.best)} = ${told(found.spread)}`,
      inputs: inputsOf(set),
      standing: 'common practice',
      source: "testers differ, so cylinders are compared with each other; the maker's figure is the limit",
      caution:
        'Test air can turn the engine over: keep hands and tools clear of it, and take the spanner off the crank.',
      rows: set.readings.map(({ cylinder, value }) => [`#${cylinder}`, formatValue(value, unitById('%'))]),
    },
  ];
}
