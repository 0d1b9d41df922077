/** Reminders by odometer, hours, dates and heat cycles. */
import { describe } from 'vitest';
import { testFigures } from '../harness/figures.ts';

/** Lines of each session, one day after another. */
const sessions = (...days: readonly string[]): string =>
  days
    .map(
      (day, i) =>
        `session 2026-05-0${i + 1}\n${day
          .split(' | ')
          .map((line) => `  ${line}\n`)
          .join('')}`,
    )
    .join('');

interface Row {
  readonly say: string;
  readonly days: readonly string[];
  /** Undefined where it is done with. */
  readonly text: string | undefined;
}

const reminders = (rows: readonly Row[]): void =>
  testFigures(
    rows.map(({ say, days, text }) => ({
      say,
      book: sessions(...days),
      figure: 'recheck head bolts',
      text: text === undefined ? [] : [text],
    })),
  );

const AFTER_MILES = 'recheck head bolts after 200 mi';

describe('by the odometer', () => {
  reminders([
    {
      say: 'what is left',
      days: [`odometer 1000 mi | ${AFTER_MILES}`, 'odometer 1150 mi'],
      text: 'in 50 mi',
    },
    { say: 'due to the mile', days: [`odometer 1000 mi | ${AFTER_MILES}`, 'odometer 1200 mi'], text: 'due' },
    {
      say: 'over',
      days: [`odometer 1000 mi | ${AFTER_MILES}`, 'odometer 1300 mi'],
      text: 'due, 100 mi over',
    },
    {
      say: 'an odometer in kilometres: 322 km are 200.1 mi',
      days: [`odometer 1000 km | ${AFTER_MILES}`, 'odometer 1322 km'],
      text: 'due, 0.1 mi over',
    },
    {
      say: 'from the next reading where there was none',
      days: [AFTER_MILES, 'odometer 1000 mi', 'odometer 1060 mi'],
      text: 'in 140 mi',
    },
    {
      say: 'nothing to count from',
      days: [AFTER_MILES],
      text: 'Needs an odometer reading to count from',
    },
    {
      say: 'a rough reading is due only for certain',
      days: [`odometer 1000 mi | ${AFTER_MILES}`, 'odometer 1150..1250 mi'],
      text: 'may be due: -50..50 mi left',
    },
    {
      say: 'written again it counts anew',
      days: [`odometer 1000 mi | ${AFTER_MILES}`, `odometer 1300 mi | ${AFTER_MILES}`],
      text: 'in 200 mi',
    },
    {
      say: 'done by a check',
      days: [`odometer 1000 mi | ${AFTER_MILES}`, 'odometer 1300 mi | check head bolts ok'],
      text: undefined,
    },
    {
      say: 'not by a bad one',
      days: [`odometer 1000 mi | ${AFTER_MILES}`, 'odometer 1300 mi | check head bolts bad'],
      text: 'due, 100 mi over',
    },
    {
      say: 'done by "done"',
      days: [`odometer 1000 mi | ${AFTER_MILES}`, 'done head bolts'],
      text: undefined,
    },
  ]);
});

describe('by the hour meter and the calendar', () => {
  reminders([
    { say: 'hours', days: ['hours 100 | recheck head bolts after 10 h', 'hours 112'], text: 'due, 2 h over' },
    { say: 'minutes', days: ['hours 100 | recheck head bolts after 90 min', 'hours 101'], text: 'in 30 min' },
    { say: 'days', days: ['recheck head bolts after 3 days', 'idle 800', 'idle 800'], text: 'in 1 day' },
    {
      say: 'due by the date of a session',
      days: ['recheck head bolts after 1 day', 'idle 800'],
      text: 'due',
    },
    { say: 'a week', days: ['recheck head bolts after 1 week', 'idle 800'], text: 'in 0.9 weeks' },
  ]);
});

const CYCLE = 'recheck head bolts after 1 heat cycle';

describe('by heat cycles', () => {
  reminders([
    { say: 'none yet', days: [CYCLE], text: 'in 1 heat cycle' },
    { say: 'warm, but not yet cooled down', days: [`${CYCLE} | water 180 F`], text: 'in 1 heat cycle' },
    { say: 'the next session', days: [`${CYCLE} | water 180 F`, 'idle 800'], text: 'due' },
    { say: 'a run counts', days: [`${CYCLE} | speed 40 mph`, 'idle 800'], text: 'due' },
    { say: 'said to be hot', days: [`${CYCLE} | oil pressure 30 psi hot`, 'idle 800'], text: 'due' },
    { say: '60 C is warm', days: [`${CYCLE} | water 60 C`, 'idle 800'], text: 'due' },
    { say: '59 C is not', days: [`${CYCLE} | water 59 C`, 'idle 800'], text: 'in 1 heat cycle' },
    {
      say: 'cold readings do not',
      days: [`${CYCLE} | compression 150 150 psi cold`, 'idle 800'],
      text: 'in 1 heat cycle',
    },
    {
      say: 'warm before the line does not',
      days: [`water 180 F | ${CYCLE} | water 185 F`, 'idle 800'],
      text: 'in 1 heat cycle',
    },
    {
      say: 'but the session after does',
      days: [`water 180 F | ${CYCLE}`, 'water 180 F', 'idle 800'],
      text: 'due',
    },
    {
      say: 'two cycles, one gone',
      days: ['recheck head bolts after 2 heat cycles | water 180 F | water 190 F', 'idle 800'],
      text: 'in 1 heat cycle',
    },
    {
      say: 'two gone',
      days: ['recheck head bolts after 2 heat cycles | water 180 F', 'water 180 F', 'idle 800'],
      text: 'due',
    },
  ]);
});

describe('what counts nothing', () => {
  reminders([
    {
      say: 'an amount of another kind',
      days: ['recheck head bolts after 3 psi'],
      text: "Can't be counted: write heat cycles, mi or km, h, or days",
    },
  ]);
});
