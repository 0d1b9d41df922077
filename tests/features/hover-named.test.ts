/** Hovers of lines that are no quantity: session heads, specs, ports, reminders, trials, logs. */
import { expect, test } from 'vitest';
import { hoverLines } from '../harness/checks.ts';

const TRIAL =
  'session 2026-05-02\n  trial stop hole -> vacuum advance\n    1/4 in 7 deg\n    9/32 in 9.5 deg\n';

test.each<[what: string, notebook: string, ...lines: readonly string[]]>([
  [
    'a session: the cautions of its work, each once',
    '«sess‸ion 2026-05-02  Out»\n  speed 20 kn\n  speed 21 kn\n',
    'session 2026-05-02 Out',
    'Caution, run on the road or the water: Brakes, steering and throttle return are tried first. Keep to the law of the place; let a passenger read the instruments.',
  ],
  [
    'a session: what is due',
    'session 2026-05-02\n  recheck head bolts after 1 day\nsess‸ion 2026-05-03\n',
    'recheck head bolts due',
  ],
  [
    'a spec',
    'specs\n«  head b‸olts» torque 58..62 lb-ft source "manual"\n',
    'head bolts torque 58..62 lb-ft',
    'as the notebook gives it (published: manual)',
  ],
  [
    'the same word in a session',
    'specs\n  head bolts torque 58..62 lb-ft\nsession 2026-05-02\n  «head b‸olts» 64 lb-ft\n',
    'head bolts torque 58..62 lb-ft; last written 64 lb-ft on 2026-05-02: above it',
  ],
  [
    'an estimate is marked',
    'specs\n  rod b‸olts torque "3/8-16 grade 5"\n',
    'rod bolts torque, estimate about 31 lb-ft, an estimate (~20.5..41 lb-ft), dry',
  ],
  [
    'a port: the map',
    'ports\n  manifold front capped\n«  manifold rear brake boo‸ster»\n',
    'ports 1 connected, 1 capped',
    '| manifold rear | brake booster | connected |',
  ],
  [
    'a way of a fluid',
    'ports\n«  cool‸ant: pump -> block -> radiator»\n',
    'way of the coolant pump -> block -> radiator',
  ],
  [
    'a reminder',
    'session 2026-05-02\n  odometer 1000 mi\n«  recheck head b‸olts» after 200 mi\n  odometer 1200 mi\n',
    'recheck head bolts in 200 mi',
  ],
  ['a trial', `${TRIAL.replace('stop hole', 'stop ho‸le')}`, 'trial'],
  [
    'a row of it',
    `${TRIAL.replace('9/32', '9/3‸2')}`,
    'stop hole -> vacuum advance 80 deg for each in, 1/4..9/32 in',
  ],
  [
    'the caution of a reading',
    'session 2026-05-02\n  boo‸st 5 psi\n',
    'Caution, boost: Knock under boost breaks pistons in seconds: lift at once, take timing out or fuel up, find the cause before going on.',
  ],
  [
    'in gear',
    'session 2026-05-02\n  id‸le 620 rpm in drive\n',
    'Caution, idle checked in gear: Chock the wheels, set the brake, somebody on the foot brake, nobody in front or behind.',
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
