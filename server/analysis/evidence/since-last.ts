/** Readings against the last comparable ones, as figures. */

import { linesBetween } from '../../model/snapshot/locate.ts';
import { sessionHead } from '../../model/snapshot/section-ranges.ts';
import { formatValue } from '../../trade/measure/format.ts';
import type { Figure, FigureContext } from '../figure.ts';
import { AIR_MOVED, airMoved, type Comparison, type Evidence, numberOf } from './comparisons.ts';
import { each, nameOf, repeats, tellerOf, withHead } from './effect-text.ts';
import { againstNoise, causeText } from './effects.ts';
import { type Changed, oneChange, settingOrWordsText, sizeOf, stepText } from './setup-changes.ts';

/** For a word those of the line itself; else the latest of each of the session up to the line. */
export function comparisonFigures(
  moment: FigureContext,
  evidence: Evidence,
  word: string | undefined,
): readonly Figure[] {
  const lines = linesOf(moment, word);
  const latest = new Map<string, Comparison>();
  for (const comparison of evidence.comparisons)
    if (lines.has(comparison.after.by.ref.line)) latest.set(comparison.after.key, comparison);
  return [...latest.values()]
    .filter(({ after }) => !after.ofList)
    .map((comparison) => figureOf(comparison, evidence, cylinderRows(comparison, latest)));
}

/** Ids of the lines whose readings are shown. */
function linesOf({ snapshot, line, state }: FigureContext, word: string | undefined): ReadonlySet<number> {
  const head = word === undefined ? sessionHead(snapshot, state) : undefined;
  const readings = [...linesBetween(snapshot, head ?? line, line + 1)];
  return new Set(readings.map(({ where }) => where.ref.line));
}

function figureOf(
  comparison: Comparison,
  evidence: Evidence,
  cylinders: readonly (readonly string[])[],
): Figure {
  const { before, after, difference, changes } = comparison;
  const teller = tellerOf(after);
  return {
    topic: 'effects',
    name: `${nameOf(after)}, against ${sinceText(comparison)}`,
    text: [
      `${teller.difference(difference)}${causeOf(comparison)}`,
      ...noiseText(comparison, evidence),
      ...airText(comparison),
    ].join('; '),
    value: teller.ownDifference(difference),
    unit: teller.unit,
    formula: 'this reading - the last one of the same quantity, place and conditions',
    working: workingOf(comparison),
    inputs: [
      { name: 'before', value: teller.value(before.value), by: before.by },
      { name: 'after', value: teller.value(after.value), by: after.by },
      ...changes.map((change) => ({
        name: causeText(change),
        value: afterText(change),
        by: change.by,
      })),
    ],
    standing: 'published',
    source: 'scatter by ISO 5725-6; change of air by common practice',
    caution: undefined,
    rows: withHead(['', 'before', 'after', 'change'], [...changes.map(changeRow), ...cylinders]),
  };
}

const sinceText = ({ before, after }: Comparison): string =>
  before.by.date === undefined || before.by.date === after.by.date ? 'the one before' : before.by.date;

function causeOf({ changes, difference, after }: Comparison): string {
  if (changes.length === 0) return ' with nothing changed';
  const change = oneChange(changes);
  if (!change) {
    const names = changes.map(causeText);
    return `, but ${changes.length} changes (${names.slice(0, 5).join(', ')}${names.length > 5 ? ', ...' : ''}): confounded, so credited to none`;
  }
  const per = perUnit(change, numberOf(difference));
  const what = `${causeText(change)} ${beforeText(change)} -> ${afterText(change)}`;
  return per === undefined || !change.amount
    ? ` after one change, ${what}`
    : ` after one change, ${what}: ${tellerOf(after).signed(per)} per ${each(change.amount.unit)}`;
}

function perUnit(change: Changed, difference: number | undefined): number | undefined {
  const amount = sizeOf(change);
  return amount === undefined || amount === 0 || difference === undefined ? undefined : difference / amount;
}

function noiseText(comparison: Comparison, evidence: Evidence): readonly string[] {
  const against = againstNoise(comparison, evidence);
  const one = oneChange(comparison.changes) !== undefined;
  if (comparison.changes.length === 0) return []; // it is one of the repeats the scatter comes from
  if (!against) return one ? ['scatter not known, so nothing can be credited on one reading'] : [];
  const from = `${tellerOf(comparison.after).rough(against.least)}, from ${repeats(against.noise.degrees)}`;
  return [against.within ? `within the scatter (${from})` : `clear of the scatter (${from})`];
}

function airText(comparison: Comparison): readonly string[] {
  const { air } = comparison;
  if (air === undefined || !airMoved(comparison)) return [];
  const per = Math.round(Math.abs(air) * 100);
  return [
    `the air changed too: ${per} % ${air > 0 ? 'denser' : 'thinner'} (mentioned from ${AIR_MOVED * 100} % up)`,
  ];
}

function workingOf({ before, after, difference, changes }: Comparison): string {
  const teller = tellerOf(after);
  const size = formatValue(teller.ownDifference(difference), teller.unit);
  const sum = `${teller.value(after.value)} - ${teller.value(before.value)} = ${size}`;
  const change = oneChange(changes);
  const per = change && perUnit(change, numberOf(difference));
  if (!change?.amount || per === undefined) return sum;
  const amount = formatValue(change.amount.value, change.amount.unit);
  return `${sum}; ${size} / ${amount} = ${teller.signed(per)} per ${each(change.amount.unit)}`;
}

const beforeText = ({ before }: Changed): string =>
  before === undefined ? 'not written' : settingOrWordsText(before);

const afterText = ({ after }: Changed): string => (after === undefined ? 'off' : settingOrWordsText(after));

const changeRow = (change: Changed): readonly string[] => [
  causeText(change),
  beforeText(change),
  afterText(change),
  stepText(change) ?? (change.amount ? signedAmount(change.amount) : ''),
];

const signedAmount = ({ value, unit }: NonNullable<Changed['amount']>): string =>
  `${value.low > 0 ? '+' : ''}${formatValue(value, unit)}`;

/** The cylinders of a list, each against its own last reading. */
function cylinderRows(
  { after: whole }: Comparison,
  latest: ReadonlyMap<string, Comparison>,
): readonly (readonly string[])[] {
  return [...latest.values()]
    .filter(({ after }) => after.ofList && after.family === whole.family && after.by === whole.by)
    .map(({ before, after, difference }) => {
      const teller = tellerOf(after);
      return [
        after.place,
        teller.value(before.value),
        teller.value(after.value),
        teller.difference(difference),
      ];
    });
}
