/** Reminders: what is due by odometer, hour meter, dates and heat cycles, and how far off the rest is. */

import { statementText, valueText } from '../../model/entry/as-written.ts';
import { saidAt } from '../../model/snapshot/locate.ts';
import { COUNTED_IN, type Counted } from '../../model/state/recheck-index.ts';
import { type Progress, progressOf } from '../../model/state/rechecks.ts';
import type { Recheck, State } from '../../model/state/state.ts';
import { exact, greatest, type Interval, subtract } from '../../trade/measure/interval.ts';
import { convertInterval, unitById } from '../../trade/measure/units.ts';
import { type Figure, type FigureContext, figure, type Input, type Working } from '../figure.ts';
import { inWords } from '../inputs.ts';

export const REMINDERS: Working = {
  topic: 'reminders',
  about: ['recheck', 'session', 'odometer', 'hours'],
  work: reminders,
};

/** On a reminder's line its own; on a session's head and at a meter those that are due; else all, what is due first. */
function reminders(moment: FigureContext, word?: string): readonly Figure[] {
  const { state } = moment;
  const own = word === 'recheck' ? nameOnLine(moment) : undefined;
  return [...state.rechecks]
    .filter(([name]) => own === undefined || name === own)
    .map(([name, recheck]) => ({ name, recheck, progress: progressOf(recheck, state) }))
    .filter(({ progress }) => word === undefined || word === 'recheck' || progress?.due)
    .toSorted((a, b) => Number(b.progress?.due ?? false) - Number(a.progress?.due ?? false))
    .map(({ name, recheck, progress }) => reminder(name, recheck, progress, state));
}

function nameOnLine({ snapshot, line }: FigureContext): string | undefined {
  const [entry] = saidAt(snapshot, line).map((said) => said.entry);
  return entry?.kind === 'recheck' ? entry.name : undefined;
}

function reminder(name: string, recheck: Recheck, progress: Progress | undefined, state: State): Figure {
  const after = valueText(recheck.after, undefined);
  const left = progress?.gone && subtract(progress.wanted, progress.gone);
  return figure({
    topic: 'reminders',
    name: `recheck ${name}`,
    text: stateText(recheck, progress, left),
    value: left && progress && inUnitOf(recheck, left, progress),
    unit: left && recheck.after.unit,
    formula: progress ? WORDS[progress.counted].formula : 'an amount the notebook does not count',
    working: progress?.gone ? `${inOwn(recheck, progress.gone, progress)} of ${after}` : `after ${after}`,
    inputs: [
      { name: 'recheck', value: `${recheck.again ? 'every' : 'after'} ${after}`, by: recheck.by },
      ...(progress ? countedInputs(recheck, progress, state) : []),
    ],
    standing: 'common practice',
    source: "the notebook's own reminder",
  });
}

const WORDS: Readonly<Record<Counted, { readonly formula: string; readonly lacks: string }>> = {
  odometer: { formula: 'odometer now - odometer then', lacks: 'an odometer reading' },
  hours: { formula: 'hours now - hours then', lacks: 'an hours reading' },
  days: { formula: 'latest session - session of the reminder', lacks: 'a session with a date' },
  'heat cycles': {
    formula:
      'sessions since in which the engine got warm (water, oil or head at 60 C or more, a run, or noted as hot)',
    lacks: '',
  },
};

/** Share of the interval below which an overrun is not mentioned. */
const LEAST_OVER = 1e-6;

function stateText(recheck: Recheck, progress: Progress | undefined, left: Interval | undefined): string {
  if (!progress) return "Can't be counted: write heat cycles, mi or km, h, or days";
  if (!progress.gone || !left) return `Needs ${WORDS[progress.counted].lacks} to count from`;
  if (!progress.due)
    return left.low > 0
      ? `in ${inOwn(recheck, left, progress)}`
      : `may be due: ${inOwn(recheck, left, progress)} left`;
  const over = inOwn(recheck, greatest(exact(0), subtract(exact(0), left)), progress);
  return left.high < -LEAST_OVER * progress.wanted.high ? `due, ${over} over` : 'due';
}

const inUnitOf = ({ after }: Recheck, value: Interval, { counted }: Progress): Interval =>
  after.unit ? convertInterval(value, unitById(COUNTED_IN[counted]), after.unit) : value;

const inOwn = (recheck: Recheck, value: Interval, progress: Progress): string =>
  inWords(inUnitOf(recheck, value, progress), recheck.after.unit?.id ?? COUNTED_IN[progress.counted], 0.1);

/** The two readings of the meter, or the dates. */
function countedInputs(recheck: Recheck, progress: Progress, state: State): readonly Input[] {
  if (progress.counted === 'days') {
    const { lastDate } = state;
    return lastDate ? [{ name: 'latest session', value: lastDate.date, by: lastDate.by }] : [];
  }
  const now = state.latest.get(progress.counted);
  return [recheck.start, now].flatMap((taken, i) =>
    taken && progress.counted !== 'heat cycles'
      ? [
          {
            name: `${progress.counted} ${i === 0 ? 'then' : 'now'}`,
            value: statementText(taken.statement, taken.quantity.unit),
            by: taken.by,
          },
        ]
      : [],
  );
}
