/** Hovers of lines that are no quantity: session heads, parts, items, checks, specs, ports, reminders, trials, logs. */
import { expect, test } from 'vitest';
import { hoverLines } from '../harness/checks.ts';

const TRIAL =
  'session 2026-05-02\n  trial feed restrictor -> oil pressure\n    1/8 in 12 psi\n    5/32 in 14.5 psi\n';

test.each<[what: string, notebook: string, ...lines: readonly string[]]>([
  [
    'a session: the cautions of its work, each once',
    '«sess‸ion 2026-05-02  Out»\n  speed 20 kn\n  speed 21 kn\n',
    'session 2026-05-02 Out',
    'Caution, run on the road or water: Test brakes, steering and throttle return first. Keep to the law, and let a passenger read the instruments.',
  ],
  [
    'a session: what it changed, read and left open',
    'session 2026-05-02\n  initial 8 deg\nsess‸ion 2026-05-03\n  initial 10 deg\n  main jet 58\n  idle 700 rpm\n  fault steering: binds [safety]\n',
    'Changed: initial 10 deg (2 deg more)',
    'First written: main jet',
    'Read: idle',
    'Open: fault steering [safety]',
  ],
  [
    'a part: what it is, when it was fitted, what it holds',
    'parts\n«  carb sin‸gle» "one barrel"\nsession 2026-05-02\n  fit carb single\n  main jet 58\n',
    'carb single one barrel',
    'Fitted line 4, 2026-05-02',
    'Its settings now: main jet 58',
  ],
  [
    'a part that comes back, with its settings',
    'parts\n  carb single "one barrel"\n  carb twin "a pair"\nsession 2026-05-02\n  fit carb single\n  main jet 58\n  fit carb twin\nsession 2026-05-03\n«  fit carb sin‸gle»\n',
    'fit carb single one barrel',
    'Also fitted line 5, 2026-05-02',
    'Its settings: main jet 58',
  ],
  [
    'a part that is new',
    'parts\n  carb single "one barrel"\nsession 2026-05-02\n  fit carb sin‸gle\n',
    'Its settings are unknown until they are written.',
  ],
  [
    'what is to do, and when it was done',
    'session 2026-05-02\n«  fault stee‸ring»: binds [safety]\nsession 2026-05-03\n  done steering: cable greased\n',
    'fault steering [safety] binds',
    'Done line 4, 2026-05-03: cable greased',
  ],
  ['what is not done yet', 'session 2026-05-02\n  todo ch‸oke: clean it out\n', 'Still open.'],
  [
    'what was done, and what it was',
    'session 2026-05-02\n  fault steering: binds [safety]\nsession 2026-05-03\n  done stee‸ring: cable greased\n',
    'done steering cable greased',
    'fault [safety] of line 2, 2026-05-02: binds',
  ],
  [
    'a look before the run, and the work that asks for it',
    'session 2026-05-02\n  idle screw 1 turn\n  check throttle re‸turn ok\n',
    'check throttle return ok',
    'Before a run: a throttle that sticks open takes the vehicle out of your control.',
    'Due since work on line 2',
  ],
  [
    "a word of the notebook's own",
    'words\n«  feed restri‸ctor»: setting, in, "bore of the screw"\n',
    'feed restrictor setting',
    'bore of the screw',
  ],
  [
    'a rule that is silenced',
    'session 2026-05-02\n  idle 2400 rpm  ; meant: «outside-b‸and»\n',
    'A value outside the usual range (outside-band)',
  ],
  [
    'a session: what is due',
    'session 2026-05-02\n  recheck head bolts after 1 day\nsess‸ion 2026-05-03\n',
    'recheck head bolts due',
  ],
  [
    'a spec',
    'specs\n«  head b‸olts» torque 58..62 lb-ft source "manual"\n',
    'head bolts torque 58..62 lb-ft = 78.6..84.1 N·m',
    'manual',
    "The maker's own figure for this engine overrules this one.",
  ],
  [
    'the same word in a session',
    'specs\n  head bolts torque 58..62 lb-ft\nsession 2026-05-02\n  «head b‸olts» 64 lb-ft\n',
    'head bolts torque 58..62 lb-ft; last 64 lb-ft on 2026-05-02: above spec',
    'as written in the notebook (from memory: no source written)',
  ],
  [
    'an estimate is marked',
    'specs\n  rod b‸olts torque "3/8-16 grade 5"\n',
    'rod bolts torque, estimate about 31 lb-ft, an estimate (~20.5..41 lb-ft), dry',
  ],
  [
    'a port: the map of all of the section, wherever the cursor is',
    'ports\n«  manifold rear brake boo‸ster»\n  manifold front capped\n',
    'ports 1 connected, 1 capped',
    '| manifold rear | brake booster | connected |',
  ],
  [
    'a way of a fluid',
    'ports\n«  cool‸ant: pump -> block -> radiator»\n',
    'path of the coolant pump -> block -> radiator',
  ],
  [
    'a reminder',
    'session 2026-05-02\n  odometer 1000 mi\n«  recheck head b‸olts» after 200 mi\n  odometer 1200 mi\n',
    'recheck head bolts in 200 mi',
  ],
  [
    'a trial: what is wanted first, then the line through the rows',
    `${TRIAL.replace('feed restrictor', 'feed restri‸ctor')}    want 13 psi\n`,
    'feed restrictor for 13 psi 0.1375 in',
    'feed restrictor -> oil pressure 80 psi per in, 1/8..5/32 in',
  ],
  [
    'a row of it',
    `${TRIAL.replace('5/32', '5/3‸2')}`,
    'feed restrictor -> oil pressure 80 psi per in, 1/8..5/32 in',
  ],
  [
    'the caution of a reading',
    'session 2026-05-02\n  boo‸st 5 psi\n',
    'Caution, boost: Knock under boost breaks pistons in seconds. Lift off at once, retard or richen, and find the cause before going on.',
  ],
  [
    'in gear',
    'session 2026-05-02\n  id‸le 620 rpm in drive\n',
    'Caution, idle checked in gear: Chock the wheels, set the brake, have someone on the foot brake and nobody in front or behind.',
  ],
])('%s', (_, notebook, ...lines) => {
  const hover = hoverLines(notebook);
  expect(hover.filter((line) => lines.includes(line))).toEqual(lines);
});

test.each<[what: string, notebook: string]>([
  ['what follows the name of a spec', 'specs\n  head bolts torque 58 lb‸-ft\n'],
  ['a photo', 'session 2026-05-02\n  photo x‸.jpg\n'],
  ['a note', 'session 2026-05-02\n  note id‸le\n'],
])('nothing is told of %s', (_, notebook) => expect(hoverLines(notebook)).toEqual([]));
