/** Runs of one kind side by side, corrected to the same air. */

import { statementText } from '../../model/entry/as-written.ts';
import { type Interval, monotone } from '../../trade/measure/interval.ts';
import { convertInterval, unitById } from '../../trade/measure/units.ts';
import { correctRunSpeed, correctRunTime } from '../../trade/sums/road.ts';
import { type Figure, type FigureContext, figure, type Working } from '../figure.ts';
import { inWords } from '../inputs.ts';
import { betterRun, RUN_UNIT, type Run, runsUpTo } from './run-readings.ts';

export const RUNS: Working = { topic: 'road', about: ['run time', 'speed'], work: comparedRuns };

/** Most runs of one kind shown. */
const MOST_ROWS = 15;

/** One figure per kind of run with at least two; on a run's own line, only its kind. */
function comparedRuns(moment: FigureContext, word?: string): readonly Figure[] {
  const runs = runsUpTo(moment.snapshot, moment.line);
  const kinds = new Map<string, Run[]>();
  for (const run of runs) {
    const kind = kinds.get(run.key);
    if (kind) kind.push(run);
    else kinds.set(run.key, [run]);
  }
  const asked = [...kinds.values()].filter(
    (kind) =>
      kind.length > 1 && (word === undefined || (kind[0]?.quantity === word && isInSession(moment, kind))),
  );
  return asked.map(oneKind);
}

/** Runs of the session at hand, so that a hover shows its own line only. */
const isInSession = ({ state }: FigureContext, kind: readonly Run[]): boolean =>
  kind.some(({ key }) => state.readings.has(key));

interface Placed {
  readonly run: Run;
  /** Corrected value; undefined where the run has no correction. */
  readonly value: Interval | undefined;
}

function oneKind(kind: readonly Run[]): Figure {
  const placed = kind.map((run) => ({ run, value: corrected(run) }));
  const comparable = placed.filter((each) => each.value !== undefined);
  const [first] = kind as readonly [Run, ...Run[]];
  return comparable.length > 1 ? onCorrected(first, placed, comparable) : asRun(first, placed);
}

function corrected({ quantity, value, correction }: Run): Interval | undefined {
  if ('none' in correction) return undefined;
  const { factor, name } = correction;
  const correct = quantity === 'run time' ? correctRunTime : correctRunSpeed;
  return monotone(value, (n) => correct(n, factor, name).value);
}

const WORDS = {
  'run time': { best: 'fastest', formula: 'time / cube root of the correction factor' },
  speed: { best: 'highest', formula: 'speed x cube root of the correction factor' },
} as const;

const nameOf = ({ quantity, said }: Run): string => {
  const under = statementText({ ...said, values: [], points: [] }, undefined);
  return `${quantity} compared${under === '' ? '' : `, ${under}`}`;
};

function onCorrected(first: Run, placed: readonly Placed[], comparable: readonly Placed[]): Figure {
  const best = bestOf(first.quantity, comparable);
  const value = best.value as Interval;
  const { correction } = best.run;
  const factor = 'factor' in correction ? correction.factor.toFixed(3) : '';
  const name = 'factor' in correction ? correction.name : '';
  const left = placed.length - comparable.length;
  return figure({
    topic: 'road',
    name: nameOf(first),
    text: `${WORDS[first.quantity].best} ${inUnit(best.run, value)} on ${dateOf(best.run)}, corrected by ${name}, cube root of power${left > 0 ? `; ${left} not compared: ${reasonsOf(placed)}` : ''}`,
    value,
    unit: unitById(RUN_UNIT[first.quantity]),
    formula: WORDS[first.quantity].formula,
    working: `${inUnit(best.run, best.run.value)}, factor ${factor}: ${inUnit(best.run, value)}`,
    inputs: lastOf(placed).map(({ run }) => ({
      name: first.quantity,
      value: inUnit(run, run.value),
      by: run.by,
    })),
    standing: 'common practice',
    source: `factor by ${name}; that time goes with the cube root of power is a rule of thumb`,
    caution:
      'Compare runs only over the same stretch with the same load, and make them only where the law allows.',
    rows: [
      ['date', 'as run', 'factor', 'corrected', `against ${WORDS[first.quantity].best}`],
      ...lastOf(placed).map((each) => row(each, value)),
    ],
  });
}

/** Uncorrected times, where no correction applies: boosted engines, days without weather. */
function asRun(first: Run, placed: readonly Placed[]): Figure {
  const best = bestOf(
    first.quantity,
    placed.map(({ run }) => ({ run, value: run.value })),
  );
  return figure({
    topic: 'road',
    name: nameOf(first),
    text: `${WORDS[first.quantity].best} ${inUnit(best.run, best.run.value)} on ${dateOf(best.run)}, as run`,
    value: best.run.value,
    unit: unitById(RUN_UNIT[first.quantity]),
    formula: 'as run, not corrected for air',
    working: reasonsOf(placed),
    inputs: lastOf(placed).map(({ run }) => ({
      name: first.quantity,
      value: inUnit(run, run.value),
      by: run.by,
    })),
    standing: 'common practice',
    source: "runs in different air can't be compared without a correction",
    caution:
      'Compare runs only over the same stretch with the same load, and make them only where the law allows.',
    rows: [['date', 'as run'], ...lastOf(placed).map(({ run }) => [dateOf(run), inUnit(run, run.value)])],
  });
}

/** Why some have no correction, each reason once. */
const reasonsOf = (placed: readonly Placed[]): string =>
  [
    ...new Set(placed.flatMap(({ run: { correction } }) => ('none' in correction ? [correction.none] : []))),
  ].join('; ');

const bestOf = (quantity: Run['quantity'], placed: readonly Placed[]): Placed =>
  placed.reduce((best, each) =>
    betterRun(quantity, each.value as Interval, best.value as Interval) ? each : best,
  );

const lastOf = (placed: readonly Placed[]): readonly Placed[] => placed.slice(-MOST_ROWS);

function row({ run, value }: Placed, best: Interval): readonly string[] {
  const { correction } = run;
  if (!value || 'none' in correction) {
    return [dateOf(run), inUnit(run, run.value), 'none', '', ''];
  }
  const share = monotone(value, (n) => 100 * (n / ((best.low + best.high) / 2) - 1));
  const factor = correction.factor.toFixed(3) + (correction.assumed ? ` (${correction.assumed})` : '');
  return [dateOf(run), inUnit(run, run.value), factor, inUnit(run, value), inWords(share, '%', 0.1)];
}

/** In the unit it was written in. */
function inUnit({ quantity, said }: Run, value: Interval): string {
  const own = unitById(RUN_UNIT[quantity]);
  const written = said.values[0];
  const unit = (written?.form === 'amount' && written.unit) || unitById(quantity === 'speed' ? 'mph' : 's');
  return inWords(convertInterval(value, own, unit), unit.id, quantity === 'speed' ? 0.1 : 0.01);
}

const dateOf = ({ by }: Run): string => by.date ?? 'an undated session';
