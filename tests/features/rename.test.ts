import { expect, test } from 'vitest';
import { stateGiven } from '../../server/model/snapshot/used-notebooks.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { renamedTo } from '../harness/navigation.ts';

const at = (marked: string): string => marked.split(' | ').join('\n');
const PART = 'parts | carb twin "two" | session 2026-05-02 | fit carb tw‸in | note carb twin';
const ITEM = 'session 2026-05-02 | fault  strainer : x [safety] | todo main: y | done stra‸iner';
const WORD =
  'words | flap gap: setting, 2..5 mm | session 2026-05-02 | flap‸-gap 3 mm | +5 min flap gap 4 mm | trial flap gap -> idle';

test.each([
  ['Carb Pair', PART, 'parts | Carb Pair "two" | session 2026-05-02 | fit Carb Pair | note carb twin'],
  ['cable', ITEM, 'session 2026-05-02 | fault  cable : x [safety] | todo main: y | done cable'],
  [
    'strainer-2',
    ITEM,
    'session 2026-05-02 | fault  strainer-2 : x [safety] | todo main: y | done strainer-2',
  ],
  [
    'air flap',
    WORD,
    'words | air flap: setting, 2..5 mm | session 2026-05-02 | air flap 3 mm | +5 min air flap 4 mm | trial air flap -> idle',
  ],
  [
    'hood',
    'words | cow‸l: reading, 10..90 C | session 2026-05-02 | cowl 40 to 50 and falling | cowl 45 C',
    'words | hood: reading, 10..90 C | session 2026-05-02 | hood 40 to 50 and falling | hood 45 C',
  ],
  ['Carb-Twin', PART, 'parts | Carb-Twin "two" | session 2026-05-02 | fit Carb-Twin | note carb twin'],
])('to %s: %s', (name, marked, text) => expect(renamedTo(name, at(marked))).toBe(at(text)));

test.each([
  ['main', ITEM, 'There is already an item called "main"'],
  ['a: b', ITEM, "can't be a name"],
  ['', ITEM, "can't be a name"],
  ['«', ITEM, "can't be a name"],
  ['distributor new', PART, 'it would be read as a distributor'],
  ['twin', PART, 'the name must say that it is a carburettor'],
  ['initial', `${WORD} | initial 9 deg`, 'is a built-in word'],
  ['cold setting', WORD, "can't be the name"],
  ['x', 'session 2026-05-02 | init‸ial 9 deg', '"initial" is a built-in word'],
  ['x', 'session 2026-05-02 | check throttle‸ return ok', 'is a built-in check'],
  ['x', 'session 2026‸-05-02', 'is a date'],
  ['x', 'session 2026-05-02 | photo a.‸jpg', 'Rename the file itself'],
  ['x', 'ports | mani‸fold rear capped', 'is a port'],
  ['x', 'session 2026-05-02 | note a‸bc', 'There is nothing to rename here.'],
])('not to "%s": %s', (name, marked, says) => expect(renamedTo(name, at(marked))).toContain(says));

test('a word of another notebook is renamed there', () => {
  const given = stateGiven(openNotebook('words\n  flap gap: reading, 2 mm\n'));
  const text = 'use shop\nsession 2026-05-02\n  flap‸ gap 3 mm\n';
  expect(renamedTo('x', text, () => given)).toBe('"flap gap" comes from another notebook. Rename it there.');
});
