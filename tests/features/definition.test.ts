import { expect, test } from 'vitest';
import { stateGiven } from '../../server/model/snapshot/used-notebooks.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { goneTo } from '../harness/navigation.ts';

const at = (marked: string): string => marked.split(' | ').join('\n');

test.each([
  [
    'a change -> what it changes',
    'session 2026-05-02 | mixture 1 turn | session 2026-05-03 | mix‸ture in 1/4 turn',
    'mixture 1 turn',
  ],
  [
    'a whole value -> itself',
    'session 2026-05-02 | mixture 1 turn | session 2026-05-03 | mix‸ture 2 turns',
    'mixture 2 turns',
  ],
  [
    'plain speech -> what it is held to',
    'targets | idle 800 rpm | session 2026-05-02 | id‸le 7 to 950',
    'idle 800 rpm',
  ],
  ['places', 'session 2026-05-02 | mixture left 1 turn, right 2 turns | mixture in 1/4 turn‸', ''],
  [
    'several places',
    'session 2026-05-02 | mixture left 1 turn | mixture right 2 turns | ‸mixture in 1/4 turn',
    'mixture left 1 turn|mixture right 2 turns',
  ],
  [
    'total -> what makes it, and its limit',
    'limits | total <= 34 deg | session 2026-05-02 | initial 9 deg | total‸ 31 deg',
    'total <= 34 deg|initial 9 deg',
  ],
  ['a reading -> its target', 'targets | idle 800 rpm | session 2026-05-02 | i‸dle 920 rpm', 'idle 800 rpm'],
  [
    'a torque -> its spec',
    'specs | head bolts torque 60 lb-ft | session 2026-05-02 | head b‸olts 61 lb-ft',
    'head bolts torque 60 lb-ft',
  ],
  ['a reading of nothing else -> itself', 'session 2026-05-02 | depress‸ion 17 inHg', 'depression 17 inHg'],
  [
    'an own reading -> its word',
    'words | flap gap: reading, 2..5 mm | session 2026-05-02 | fl‸ap gap 3 mm',
    'flap gap: reading, 2..5 mm',
  ],
  [
    'done -> its item',
    'session 2026-05-02 | todo strainer: clean it out | session 2026-05-03 | done str‸ainer',
    'todo strainer: clean it out',
  ],
  [
    'an item again -> the last one',
    'session 2026-05-02 | todo a: x | done a | todo a: y | done a‸',
    'todo a: y',
  ],
  ['fit -> its part', 'parts | carb twin "two" | session 2026-05-02 | fit ‸Carb-Twin', 'carb twin "two"'],
  [
    'remove of a part never declared -> where it went on',
    'session 2026-05-02 | fit carb old | remove carb ol‸d',
    'fit carb old',
  ],
  [
    'revert -> that session',
    'session 2026-05-02 | session 2026-05-03 | revert to 2026-05‸-02',
    'session 2026-05-02',
  ],
  [
    'a check -> the work that made it due',
    'session 2026-05-02 | fit carb a | check throttle ret‸urn ok',
    'fit carb a',
  ],
  [
    'a trial -> the setting in force',
    'session 2026-05-02 | initial 9 deg | trial initi‸al -> idle',
    'initial 9 deg',
  ],
  [
    'a path -> its file',
    'session 2026-05-02 | photo photos/a b‸.jpg',
    'photo photos/a b.jpg|-> photos/a b.jpg',
  ],
  ['a note', 'session 2026-05-02 | note i‸nitial', ''],
  ['a word nobody knows', 'session 2026-05-02 | xyz‸zy 3', ''],
])('%s', (_, marked, lines) => expect(goneTo(at(marked)).join('|')).toBe(lines));

test('what another notebook gave is gone to in that notebook', () => {
  const given = stateGiven(openNotebook('limits\n  total <= 30 deg\nwords\n  flap gap: reading, 2 mm\n'));
  const shared = () => given;
  expect(goneTo('use shop\nsession 2026-05-02\n  to‸tal 31 deg\n', shared)).toEqual([
    'use shop',
    '-> shop # total',
  ]);
  expect(goneTo('use shop\nsession 2026-05-02\n  flap‸ gap 3 mm\n', shared)).toEqual([
    'flap gap 3 mm',
    '-> shop # flap gap',
  ]);
});
