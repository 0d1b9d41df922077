/** Sealing tests: compression judged by the published rules, and leak-down. */

import type { State } from '../../model/state/state.ts';
import { formatNumber, formatValue } from '../../trade/measure/format.ts';
import { divide, exact, greatest, least, middle } from '../../trade/measure/interval.ts';
import { convertInterval, unitById } from '../../trade/measure/units.ts';
import { type CompressionVerdict, leakDown } from '../../trade/sums/compression.ts';
import { withHead } from '../evidence/effect-text.ts';
import type { Figure, Working } from '../figure.ts';
import { type JudgedCompression, judgeSet } from './compression-test.ts';
import { type CylinderSet, cylinderSets, numbersOf } from './cylinder-readings.ts';
import { inputsOf } from './cylinders.ts';
import { neighboursIn } from './engine-facts.ts';

export const SEALING: Working = {
  topic: 'cylinders',
  about: ['compression', 'leak down'],
  work: ({ state }, word) =>
    [
      ...cylinderSets(state, 'compression').flatMap((set) => compression(state, set)),
      ...cylinderSets(state, 'leak down').flatMap(leak),
    ].filter(({ name }) => word === undefined || name.startsWith(word)),
};

/** A psi value converted to the unit of the readings. */
const tellerOf = ({ unit }: CylinderSet): ((psi: number) => string) => {
  const told = unitById(unit ?? 'psi');
  return (psi) => formatValue(convertInterval(exact(psi), unitById('psi'), told), told);
};

function compression(state: State, set: CylinderSet): readonly Figure[] {
  const judged = judgeSet(state, set);
  if (!judged) return [];
  const told = tellerOf(set);
  const values = set.readings.map(({ value }) => value);
  const [highest, lowest] = [values.reduce(greatest), values.reduce(least)];
  const ratio = divide(lowest, highest);
  return judged.verdicts.map((verdict, i) => ({
    topic: 'cylinders',
    name: `compression, ${verdict.rule.name} rule`,
    text: verdictText(judged, verdict, told, neighboursIn(state).length > 0),
    value: ratio,
    unit: unitById('ratio'),
    formula: `lowest / highest, at least ${verdict.rule.fraction}${verdict.rule.floorPsi ? `; no cylinder under ${told(verdict.rule.floorPsi)}` : ''}`,
    working: `${told(judged.lowest)} / ${told(judged.highest)} = ${share(judged.ratio)}; ${verdict.rule.fraction} x ${told(judged.highest)} = ${told(verdict.rule.fraction * judged.highest)}`,
    inputs: inputsOf(set),
    standing: 'published',
    source: `${verdict.rule.source}; the engine's own manual overrules it`,
    caution: undefined,
    rows: i === 0 ? shares(set) : [],
  }));
}

const share = (ratio: number): string => `${(100 * ratio).toFixed(1)} %`;

function shares(set: CylinderSet): readonly (readonly string[])[] {
  const unit = unitById(set.unit ?? 'psi');
  const highest = Math.max(...numbersOf(set).map(({ value }) => value));
  const rows = set.readings.map(({ cylinder, value }) => [
    `#${cylinder}`,
    formatValue(value, unit),
    `${Math.round((100 * middle(value)) / highest)} %`,
  ]);
  return withHead(['cylinder', 'compression', 'of the highest'], rows);
}

function verdictText(
  { lowest, highest, ratio }: JudgedCompression,
  { rule, allowed, low, lowPairs }: CompressionVerdict,
  told: (psi: number) => string,
  neighboursKnown: boolean,
): string {
  const compared = `lowest ${told(lowest)} is ${share(ratio)} of the highest, ${told(highest)}`;
  if (low.length === 0) return `${compared}: none under the ${told(allowed)} allowed`;
  const floor = allowed === rule.floorPsi ? ' (a healthy low-compression engine can read less)' : '';
  const under = `${low.map((each) => `#${each}`).join(', ')} under the ${told(allowed)} allowed${floor}`;
  const pairs = lowPairs.map(([one, other]) => `#${one} and #${other}`).join('; ');
  if (pairs !== '')
    return `${compared}: ${under}; ${pairs} are neighbours: suspect the head gasket between them`;
  const unknown =
    low.length > 1 && !neighboursKnown ? '; write the banks or `layout inline` to compare neighbours' : '';
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
      name: 'leak-down spread',
      text: `${told(found.spread)}: best ${told(found.best)}, worst #${worst.cylinder} ${told(found.worst)}`,
      value: { low: found.spread, high: found.spread, about: false },
      unit: unitById('%'),
      formula: 'worst - best',
      working: `${told(found.worst)} - ${told(found.best)} = ${told(found.spread)}`,
      inputs: inputsOf(set),
      standing: 'common practice',
      source: "testers differ, so compare cylinders with each other; the maker's figure is the limit",
      caution:
        'Test air can turn the engine over: keep hands and tools clear, and take the wrench off the crank.',
      rows: withHead(
        ['cylinder', 'leaks'],
        set.readings.map(({ cylinder, value }) => [`#${cylinder}`, formatValue(value, unitById('%'))]),
      ),
    },
  ];
}
