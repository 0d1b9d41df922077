/** What is carried down the page: a notebook in, what holds at its end out. Lines are parted by ` / `. */
import { describe, expect, test } from 'vitest';
import { statementText } from '../../server/model/entry/as-written.ts';
import { endOf, settingsIn } from './state.ts';

const day = (n: number) => `session 2026-05-0${n}`;
const notebook = (lines: string) =>
  lines
    .replaceAll(/\bday (\d)/g, (_, n) => day(Number(n)))
    .split(' / ')
    .join('\n');

const SETTINGS: Readonly<Record<string, readonly (readonly [lines: string, ...inForce: string[]])[]>> = {
  'a setting holds until it is changed': [
    ['day 1 / initial 9 deg / day 2 / note none', 'initial: 9 deg'],
    ['day 1 / initial 9 deg / day 2 / initial 11 deg', 'initial: 11 deg'],
    ['initial 9 deg', 'initial: 9 deg'],
    ['day 1 / idle 850 rpm'],
    ['engine / valve lash 0.012 in / day 1', 'valve lash: 0.012 in'],
    ['limits / initial <= 12 deg / targets / initial 9 deg'],
  ],
  'changes add up': [
    ['day 1 / initial 9 deg / initial +2 deg / day 2 / initial -0.5 deg', 'initial: 10.5 deg'],
    ['day 1 / initial ~9 deg / initial +2 deg', 'initial: ~11 deg'],
    ['day 1 / initial 8..9 deg / initial +2 deg', 'initial: 10..11 deg'],
    ['day 1 / initial 9 deg / initial +1..2 deg', 'initial: 10..11 deg'],
    ['day 1 / mixture 1 1/2 turns / mixture in 1/4 turn', 'mixture: 1 1/4 turns'],
    ['day 1 / mixture 1 1/2 turns / mixture out 1/4 turn', 'mixture: 1 3/4 turns'],
    ['day 1 / mixture 9 flats / mixture out 1/2 turn', 'mixture: 12 flats'],
    ['day 1 / idle screw 1 turn / idle screw in 1/4 turn', 'idle screw: 1 1/4 turns'],
    ['day 1 / mixture 1 / mixture out 1/4 turn', 'mixture: 1 1/4 turns'],
    ['day 1 / main jet 105 / main jet +5', 'main jet: 110'],
    ['day 1 / initial 9 deg / initial +2 F', 'initial: 9 deg'],
  ],
  'between the markers of a merge nothing is in force': [
    [
      'day 1 / initial 9 deg / <<<<<<< a / initial 6 deg / ======= / initial 7 deg / >>>>>>> b',
      'initial: 9 deg',
    ],
    ['day 1 / <<<<<<< a / day 2 / ||||||| / limits / ======= / >>>>>>> b / initial 7 deg', 'initial: 7 deg'],
    ['day 1 / <<<<<<< a / initial 9 deg / initial 7 deg'],
    ['day 1 / ======= / initial 9 deg / >>>>>>> b / dwell 49 deg', 'dwell: 49 deg', 'initial: 9 deg'],
    ['day 1 / <<<<<<< a / <<<<<<< b / >>>>>>> b / initial 9 deg', 'initial: 9 deg'],
    [
      'day 1 / initial 9 deg / <<<<<<< a / day 2 / >>>>>>> b / day 3 / revert to 2026-05-02',
      'initial: 9 deg',
    ],
  ],
  'a change from an unknown start stays a change': [
    ['day 1 / initial +2 deg', 'initial: +2 deg from an unknown start'],
    ['day 1 / initial +2 deg / initial +1 deg', 'initial: +3 deg from an unknown start'],
    ['day 1 / initial +2 deg / initial -3 deg', 'initial: -1 deg from an unknown start'],
    ['day 1 / mixture in 1/4 turn / mixture in 1/4 turn', 'mixture: -1/2 turn from an unknown start'],
    ['day 1 / initial +2 deg / initial 9 deg / initial +1 deg', 'initial: 10 deg'],
  ],
  'places are kept apart': [
    ['day 1 / mixture left 1 turn, right 1 1/4 turns', 'mixture left: 1 turn', 'mixture right: 1 1/4 turns'],
    ['day 1 / mixture 1 turn / mixture right out 1/8 turn', 'mixture right: 1 1/8 turns', 'mixture: 1 turn'],
    ['day 1 / mixture left 1, right 1 turn / mixture 2 turns', 'mixture: 2 turns'],
    [
      'day 1 / mixture left 1 turn, right 1 1/4 turns / mixture in 1/4 turn',
      'mixture left: 3/4 turn',
      'mixture right: 1 turn',
    ],
    [
      'day 1 / mixture 1 turn / mixture left 2 turns / mixture out 1/2 turn',
      'mixture left: 2 1/2 turns',
      'mixture: 1 1/2 turns',
    ],
  ],
  'a curve stays when only its connection is told': [
    [
      'day 1 / vacuum advance 0 deg @ 4 inHg, 12 deg @ 12 inHg, manifold / vacuum advance plugged',
      'vacuum advance: 0 deg @ 4 inHg, 12 deg @ 12 inHg, plugged',
    ],
    ['day 1 / vacuum advance plugged', 'vacuum advance: plugged'],
    ['day 1 / power valve 6.5 inHg / power valve plugged', 'power valve: plugged'],
  ],
  'parts own their settings': [
    ['day 1 / fit carb a / main jet 105 / initial 9 deg / fit carb b', 'initial: 9 deg'],
    ['day 1 / fit carb a / main jet 105 / fit carb b / main jet 110', 'main jet: 110'],
    ['day 1 / fit carb a / main jet 105 / fit carb b / main jet 110 / fit carb a', 'main jet: 105'],
    ['day 1 / fit carb a / main jet 105 / fit carb a', 'main jet: 105'],
    ['day 1 / fit carb a / main jet 105 / remove carb a'],
    ['day 1 / fit carb a / main jet 105 / remove carb b', 'main jet: 105'],
    ['day 1 / fit carb a / main jet 105 / remove carb a / day 2 / fit Carb-A', 'main jet: 105'],
    ['day 1 / main jet 105 / fit carb a'],
    ['day 1 / fit shelf / main jet 105 / fit shelf two', 'main jet: 105'],
    ['parts / number two carb "spare" / day 1 / fit carb a / main jet 105 / fit number two carb'],
    ['day 1 / fit distributor a / initial 9 deg / main jet 105 / fit distributor b', 'main jet: 105'],
  ],
  'revert puts the settings and parts of a day back': [
    ['day 1 / initial 9 deg / day 2 / initial 11 deg / day 3 / revert to 2026-05-01', 'initial: 9 deg'],
    [
      'day 1 / initial 9 deg / initial 10 deg / day 2 / initial 11 deg / revert 2026-05-01',
      'initial: 10 deg',
    ],
    ['day 1 / initial 9 deg / day 2 / main jet 105 / revert to 2026-05-01', 'initial: 9 deg'],
    [
      'day 1 / fit carb a / main jet 105 / day 2 / fit carb b / day 3 / revert to 2026-05-01',
      'main jet: 105',
    ],
    ['day 1 / initial 9 deg / day 2 / initial 11 deg / revert to 2026-05-09', 'initial: 11 deg'],
    ['day 1 / initial 9 deg / day 2 / initial 11 deg / revert to 2026-05-02', 'initial: 11 deg'],
    [
      'day 1 / initial 9 deg / day 1 / initial 10 deg / day 2 / initial 11 deg / revert to 2026-05-01',
      'initial: 10 deg',
    ],
    ['day 1 / initial 9 deg / day 1 / initial 10 deg / revert to 2026-05-01', 'initial: 9 deg'],
    [
      'day 1 / initial 9 deg / limits / water 200 F / day 2 / initial 8 deg / revert to 2026-05-01',
      'initial: 9 deg',
    ],
  ],
  'own words': [
    ['words / feed restrictor: setting, in / day 1 / feed restrictor 1/8 in', 'feed restrictor: 1/8 in'],
    ['words / sparkle: reading, 1..9 / day 1 / sparkle 5'],
    ['day 1 / feed restrictor 1/8 in / words / feed restrictor: setting, in'],
  ],
};

describe.each(Object.entries(SETTINGS))('%s', (_, rows) => {
  test.each(rows.map(([lines, ...inForce]) => [lines, inForce] as const))('%s', (lines, inForce) =>
    expect(settingsIn(endOf(notebook(lines)).state)).toEqual(inForce),
  );
});

/** The line each setting was set by last, and the last that gave it whole. */
test.each([
  ['day 1 / initial 9 deg / initial +2 deg', 'initial|', 'initial +2 deg', 'initial 9 deg'],
  ['day 1 / initial +2 deg', 'initial|', 'initial +2 deg', undefined],
  [
    'day 1 / mixture 1 turn / mixture right out 1/8 turn',
    'mixture|right',
    'mixture right out 1/8 turn',
    'mixture 1 turn',
  ],
  [
    'day 1 / initial 9 deg / day 2 / initial 8 deg / revert to 2026-05-01',
    'initial|',
    'initial 9 deg',
    'initial 9 deg',
  ],
  [
    'day 1 / vacuum advance 12 deg @ 12 inHg / vacuum advance plugged',
    'vacuum advance|',
    'vacuum advance plugged',
    'vacuum advance 12 deg @ 12 inHg',
  ],
])('%s: who set %s', (lines, key, by, base) => {
  const { state, textAt } = endOf(notebook(lines));
  const setting = state.settings.get(key);
  expect(setting && textAt(setting.by)).toBe(by);
  expect(setting?.base && textAt(setting.base)).toBe(base);
});

test('the date of the session that set it is carried with it', () => {
  const { state } = endOf(notebook('day 1 / initial 9 deg / day 2 / note none'));
  expect(state.settings.get('initial|')?.by.date).toBe('2026-05-01');
});

test.each<[lines: string, open: readonly string[]]>([
  ['day 1 / todo strainer: clean it out', ['todo strainer']],
  ['day 1 / todo strainer: clean it out / day 2 / done strainer: cleaned', []],
  ['day 1 / fault steering: binds [safety] / day 2', ['fault steering safety']],
  ['day 1 / fault steering: binds [safety] / done strainer', ['fault steering safety']],
  ['day 1 / todo Strainer-Basket: x / done strainer basket', []],
  ['day 1 / todo strainer: x / fault strainer: y [safety]', ['fault strainer safety']],
])('open items: %s', (lines, items) => {
  const { state } = endOf(notebook(lines));
  expect([...state.items].map(([id, { word, safety }]) => `${word} ${id}${safety ? ' safety' : ''}`)).toEqual(
    items,
  );
});

test.each<[lines: string, due: readonly string[]]>([
  ['day 1 / idle screw 1 turn', ['throttle return']],
  ['day 1 / initial 9 deg', []],
  ['day 1 / fuel regulator 4 psi', ['fuel leaks']],
  ['day 1 / float level 0.4 in', ['throttle return', 'fuel leaks']],
  ['day 1 / idle screw 1 turn / check throttle return ok', []],
  ['day 1 / idle screw 1 turn / check throttle return bad', ['throttle return']],
  ['day 1 / check throttle return ok / idle screw 1 turn', ['throttle return']],
  ['day 1 / fit carb a', ['throttle return']],
  ['day 1 / fit carb a / check throttle return ok / remove carb a', ['throttle return']],
  ['day 1 / fit carb a / check throttle return ok / remove carb b', []],
  [
    'day 1 / main jet 105 / day 2 / main jet 110 / check throttle return ok / revert to 2026-05-01',
    ['throttle return'],
  ],
  ['day 1 / main jet 105 / check throttle return ok / day 2 / revert to 2026-05-01', []],
])('checks that are due: %s', (lines, due) => {
  expect([...endOf(notebook(lines)).state.checksDue.keys()]).toEqual(due);
});

test.each<[lines: string, limits: readonly string[]]>([
  ['limits / water <= 195 F', ['water| <= 195 F']],
  ['limits / water <= 195 F / day 1', ['water| <= 195 F']],
  ['limits / water <= 195 F / day 1 / limits / water <= 200 F', ['water| <= 200 F']],
  ['limits / tube #4 <= 600 F', ['tube|#4 <= 600 F']],
  ['day 1 / water 195 F', []],
])('limits hold from their line on: %s', (lines, limits) => {
  const { state } = endOf(notebook(lines));
  expect(
    [...state.limits].map(
      ([key, { statement: said, quantity }]) => `${key} ${statementText(said, quantity.unit)}`,
    ),
  ).toEqual(limits);
});

test('a limit does not hold above its line', () => {
  expect(endOf(notebook('day 1 / water 200 F')).state.limits.size).toBe(0);
});

test.each<[lines: string, trial: string | undefined]>([
  [
    'day 1 / trial feed restrictor -> oil pressure / 1/8 in 12 psi / 5/32 in 14.5 psi / want 13 psi',
    'feed restrictor -> oil pressure: 2',
  ],
  [
    'day 1 / trial feed restrictor -> oil pressure / note hot / 1/8 in 12 psi',
    'feed restrictor -> oil pressure: 1',
  ],
  ['day 1 / trial feed restrictor -> oil pressure / 1/8 in 12 psi / initial 9 deg', undefined],
  ['day 1 / trial feed restrictor -> oil pressure / 1/8 in 12 psi / day 2', undefined],
  ['day 1 / 1/8 in 12 psi', undefined],
])('a trial goes on to the next line of another kind: %s', (lines, expected) => {
  const { trial } = endOf(notebook(lines)).state;
  expect(trial && `${trial.knob} -> ${trial.response}: ${trial.rows.size}`).toBe(expected);
});

test('readings are of their session, the last of each kind', () => {
  const { state } = endOf(
    notebook('day 1 / idle 900 rpm / day 2 / idle 800 rpm / idle 850 rpm / idle 750 rpm in drive'),
  );
  const values = [...state.readings.values()].map(({ statement: said }) => statementText(said, 'rpm'));
  expect(values).toEqual(['850 rpm', '750 rpm in drive']);
});

test('the last session kept, and what it is called', () => {
  const { state } = endOf(notebook('notebook Marsh runner / day 1 / keep / day 2 / note none'));
  expect([state.notebook, state.keptSession?.date, state.session?.date]).toEqual([
    'Marsh runner',
    '2026-05-01',
    '2026-05-02',
  ]);
});
