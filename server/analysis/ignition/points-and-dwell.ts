/** Contact points: dwell as a share, coil on-time, and whether the timing needs checking again. */

import type { Origin } from '../../model/entry/entry.ts';
import { lineOf, saidBetween } from '../../model/snapshot/locate.ts';
import type { Page } from '../../model/snapshot/page.ts';
import { pagesOfSession } from '../../model/snapshot/section-ranges.ts';
import { pageAt, type Snapshot } from '../../model/snapshot/snapshot.ts';
import { settingText } from '../../model/state/setting-text.ts';
import type { SettingInForce, State } from '../../model/state/state.ts';
import { equal, exact, type Interval, middle, scale } from '../../trade/measure/interval.ts';
import { unitById } from '../../trade/measure/units.ts';
import {
  coilOnTime,
  dwellAvailable,
  dwellDegrees,
  dwellPercent,
  sparkInterval,
} from '../../trade/sums/points.ts';
import { cylindersOf, topSpeedOf } from '../engine/engine-facts.ts';
import { type Figure, type FigureContext, figure, type Input, type Working } from '../figure.ts';
import { inWords, readingOf } from '../inputs.ts';

export const DWELL: Working = {
  topic: 'points',
  about: ['dwell', 'points gap', 'coil', 'condenser'],
  work: ({ state }) => dwellFigures(state),
};

export const TIMING_AFTER_POINTS: Working = {
  topic: 'points',
  about: ['dwell', 'points gap', 'timing', 'initial'],
  work: timingToRecheck,
};

const TEXTBOOK = { standing: 'published', source: 'standard textbook relations' } as const;

const ms = (seconds: Interval): string => inWords(scale(seconds, 1000), 'ms', 0.01);

function dwellFigures(state: State): readonly Figure[] {
  const cylinders = cylindersOf(state);
  const setting = state.settings.get('dwell|');
  if (!cylinders || !setting) return [];
  const count = cylinders.count;
  const dwell = dwellOf(setting, count);
  if (!dwell) return [];
  const inputs = [{ name: 'dwell', value: settingText(setting), by: setting.by }, cylinders.input];
  return [share(dwell, count, inputs), onTime(state, dwell, count, inputs)];
}

/** Dwell in distributor degrees, as a dwell meter reads it: `deg` here never means crank degrees. */
function dwellOf(setting: SettingInForce, cylinders: number): Interval | undefined {
  const value = setting.values[0];
  if (!setting.base || setting.values.length !== 1 || value?.form !== 'amount' || !value.interval)
    return undefined;
  if (value.unit?.dimension === 'percent') return dwellDegrees(value.interval, cylinders);
  return value.unit === undefined || value.unit.id === 'deg' || value.unit.id === 'dist-deg'
    ? value.interval
    : undefined;
}

function share(dwell: Interval, cylinders: number, inputs: readonly Input[]): Figure {
  const value = dwellPercent(dwell, cylinders);
  const available = exact(dwellAvailable(cylinders));
  return figure({
    topic: 'points',
    name: 'dwell in per cent',
    text: `${inWords(value, '%', 0.1)}: closed for ${inWords(dwell, 'deg')} of the ${inWords(available, 'deg')} between sparks`,
    value,
    unit: unitById('%'),
    formula: 'dwell / (360 / cylinders), in distributor degrees',
    working: `${inWords(dwell, 'deg')} / (360 / ${cylinders}) = ${inWords(value, '%', 0.1)}`,
    inputs,
    ...TEXTBOOK,
  });
}

/** Coil on-time at this session's idle, at each thousand rpm, and at the red line. */
function onTime(state: State, dwell: Interval, cylinders: number, inputs: readonly Input[]): Figure {
  const idle = readingOf(state, 'idle', 'rpm');
  const top = topSpeedOf(state);
  const thousands = [1000, 2000, 3000, 4000, 5000, 6000].map((rpm) => exact(rpm));
  const speeds = [...thousands, ...(idle ? [idle.value] : []), ...(top ? [top.value] : [])]
    .filter((rpm) => rpm.low > 0)
    .toSorted((a, b) => middle(a) - middle(b))
    .filter((rpm, i, all) => i === 0 || !equal(rpm, all[i - 1] as Interval));
  const at = top?.value ?? exact(5000);
  const value = coilOnTime(dwell, at);
  return figure({
    topic: 'points',
    name: 'coil on-time',
    text: `${ms(value)} at ${inWords(at, 'rpm')}`,
    value: scale(value, 1000),
    unit: unitById('ms'),
    formula: 'dwell / (3 x engine rpm): the distributor turns 3 x rpm degrees per second',
    working: `${inWords(dwell, 'deg')} / (3 x ${inWords(at, 'rpm')}) = ${ms(value)}`,
    inputs: [...inputs, ...(top ? [top.input] : [])],
    ...TEXTBOOK,
    rows: [
      ['at', 'coil on', 'between sparks'],
      ...speeds.map((rpm) => [
        inWords(rpm, 'rpm'),
        ms(coilOnTime(dwell, rpm)),
        ms(sparkInterval(rpm, cylinders)),
      ]),
    ],
  });
}

/** Reminder to check the timing, where dwell or gap was set after it was last read. */
function timingToRecheck(moment: FigureContext): readonly Figure[] {
  const { state, snapshot } = moment;
  const changed = ['dwell', 'points gap'].flatMap((name) => state.settings.get(`${name}|`) ?? []);
  const read = lastTimingReading(moment);
  const late = changed.filter(({ by }) => isAfter(snapshot, by, read));
  if (late.length === 0 || isReadLater(moment)) return [];
  const names = late.map((setting) => setting.quantity.name).join(' and ');
  const since = read ? `last read ${on(read)}, before that` : 'not read since';
  return [
    figure({
      topic: 'points',
      name: 'timing check due',
      text: `${names} set ${on((late[0] as SettingInForce).by)}; timing ${since}`,
      formula: 'more dwell opens the points later and retards the spark: set dwell first, then timing',
      working: late.map((setting) => `${setting.quantity.name} ${settingText(setting)}`).join(', '),
      inputs: late.map((setting) => ({
        name: setting.quantity.name,
        value: settingText(setting),
        by: setting.by,
      })),
      standing: 'common practice',
      source: 'dwell first, then timing; no source',
    }),
  ];
}

/** Last timing reading, of this session so far, else of the sessions above, from what their pages hold. */
function lastTimingReading({ state, snapshot, line }: FigureContext): Origin | undefined {
  for (let page = pageAt(snapshot, line); page >= 0; page--) {
    const { readings } = page === pageAt(snapshot, line) ? state : (snapshot.pages[page] as Page).after;
    const found = [...readings.values()]
      .filter((taken) => taken.quantity.traits?.sparkTiming)
      .map(({ by }) => ({ by, at: lineOf(snapshot, by.ref) ?? -1 }))
      .toSorted((a, b) => b.at - a.at)[0];
    if (found) return found.by;
  }
  return undefined;
}

/** Whether timing is read further down in the same session: the work was not finished yet. */
function isReadLater({ snapshot, line }: FigureContext): boolean {
  const end = snapshot.starts[pagesOfSession(snapshot, line).to];
  return [...saidBetween(snapshot, line + 1, end)].some(
    ({ entry }) => entry.kind === 'reading' && entry.quantity.traits?.sparkTiming === true,
  );
}

const isAfter = (snapshot: Snapshot, one: Origin, other: Origin | undefined): boolean =>
  other === undefined || (lineOf(snapshot, one.ref) ?? 0) > (lineOf(snapshot, other.ref) ?? 0);

const on = ({ date }: Origin): string => (date === undefined ? 'without a date' : `on ${date}`);
