import { describe, expect, test } from 'vitest';
import { type FolderEntry, folderWanted } from '../../server/features/completion.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { fixture } from '../harness/fixture.ts';
import { listed, TODAY, taken } from '../harness/suggestions.ts';

const FIRST = `
engine
  cylinders 4
parts
  carb single  "one-barrel"
  carb twin  "pair"
session 2026-05-02  As found
  fit carb single
  initial          9 deg
  mixture          left 1 turn, right 1 1/4 turns
  mechanical       0 deg @ 900 rpm, 22 deg @ 3200 rpm
  advance springs  "two light ones"
  idle             850 rpm in neutral
  idle             800 rpm in neutral
  idle             760 rpm in drive hot
  egt              640 C
  todo hot start: boils
  fault steering: binds [safety]
  keep
session 2026-05-03  Leaner
`;

/** What is typed on the last line, and what is listed first. */
const LISTS: readonly (readonly [what: string, line: string, ...first: readonly string[]])[] = [
  ['words by how often they are used', '  ‸', 'idle | reading, rpm'],
  [
    'a word, and the setting as it stands',
    '  ini‸',
    'initial | setting, deg, now 9 deg',
    'initial 9 deg | in force from 2026-05-02',
  ],
  ['another spelling', '  base ti‸', 'initial | setting, deg, now 9 deg'],
  ['the second word of a name', '  vacuum ad‸', 'vacuum advance | setting, deg'],
  ['the value in force after the name', '  initial ‸', '9 deg | in force, from 2026-05-02'],
  ['of one place', '  mixture right ‸', '1 1/4 turns | in force, from 2026-05-02'],
  ['a text in force', '  advance springs ‸', '"two light ones" | in force, from 2026-05-02'],
  ['a place before the word', '  left mixt‸', 'mixture | setting, turns'],
  [
    'cylinders of this engine',
    '  plug #‸',
    '#1 | cylinder',
    '#2 | cylinder',
    '#3 | cylinder',
    '#4 | cylinder',
  ],
  ['the unit this notebook uses', '  egt 600 ‸', 'C | temperature', 'F | temperature'],
  ['the unit the trade uses', '  water 80 ‸', 'F | temperature', 'C | temperature'],
  ['a unit behind @', '  mechanical 0 deg @ 900 ‸', 'rpm | rotation'],
  ['a unit of a change, of less than one', '  mixture in 1/4 ‸', 'turn | turns'],
  ['of more than one', '  mixture 1 1/4 ‸', 'turns | turns'],
  ['time gone by', '  +20 ‸', 'min | time'],
  ['an entry after a time', '  +20 min tu‸', 'tube | reading, F'],
  ['what it was read under, as is usual here', '  idle 820 rpm i‸', 'in neutral | beside the value'],
  ['a gear', '  idle 820 rpm in n‸', 'neutral | condition'],
  ['open items, whatever they are', '  done ‸', 'hot start | todo: boils', 'steering | fault: binds'],
  ['the second word of an id', '  done hot s‸', 'hot start | todo: boils'],
  ['parts that are off', '  fit ‸', 'carb twin | pair'],
  ['parts that are on', '  remove ‸', 'carb single | carburettor'],
  ['checks, those due first', '  check ‸', 'throttle return | due since the last work on it'],
  ['how a check went', '  check throttle return ‸', 'ok', 'bad'],
  ['days to go back to', '  revert to ‸', '2026-05-02 | kept: As found'],
  ['a day half typed', '  revert to 2026-0‸', '2026-05-02 | kept: As found'],
  ['today', 'session ‸', `${TODAY} | today`],
  [
    'what answers in a trial',
    '  trial main jet -> eg‸',
    'egt | Exhaust gas temperature, taken with a probe in the gas.',
  ],
  ['the unit of a row', '  trial stop radius -> egt\n    1 600 ‸', 'F | temperature'],
  [
    'the unit of a reminder',
    '  recheck head bolts after 3 ‸',
    'heat cycles | heat cycles',
    'mi | distance',
    'km | distance',
    'h | time',
    'days | time',
  ],
  [
    'how long a reminder often waits',
    '  recheck head bolts after ‸',
    '1 heat cycle',
    '100 mi',
    '10 h',
    '30 days',
  ],
  [
    'the side that is not said yet, before cylinders',
    '  mixture left 1 turn, ‸',
    'right | place',
    'front | place',
  ],
  ['the units that stand beside the usual one', '  boost 5 ‸', 'psi | pressure', 'bar | pressure'],
  ['of the weather what is not said yet', '  weather 8 C, 1010 ‸', 'hPa | pressure', 'inHg | pressure'],
  ['an entry after a clock time', '  08:30 tu‸', 'tube | reading, F'],
  [
    'what a trial is to give',
    '  trial shim -> idle\n  1 800 rpm\n  ‸',
    'want | the response or setting to solve for',
  ],
  [
    'the rule that found something on the line',
    '  idle 2600 rpm ; meant: ‸',
    'outside-band | A value outside the usual range',
  ],
  [
    'where a specification is from',
    '  note x\nspecs\n  head bolts torque 85 lb-ft ‸',
    'source | where the figure comes from',
  ],
  ['codes of rules', '  idle 9 ; meant: outside-b‸', 'outside-band | A value outside the usual range'],
  [
    'a second code',
    '  idle 9 ; meant: ten-times, outside-b‸',
    'outside-band | A value outside the usual range',
  ],
  ['the flag of a fault', '  fault brake: drags [‸', '[safety] | blocks a road run until done'],
  ['facts in their section', 'engine\n  comp‸', 'compression | fact, :1'],
  ['words a fact may take', 'engine\n  fuel gas‸', 'gasoline'],
  ['a quantity to be limited', 'limits\n  wat‸', 'water | reading, F'],
  [
    'what an own word is',
    'words\n  feed restrictor: ‸',
    'setting | stays until it is changed',
    'reading | one measurement',
  ],
  ['what is on a port', 'ports\n  manifold rear  brake booster\n  carb base  b‸', 'brake booster'],
  [
    'an own word',
    'words\n  feed restrictor: setting, in\nsession 2026-05-04\n  feed r‸',
    'feed restrictor | setting, in',
  ],
  [
    'what is specified',
    'specs\n  head bolts  torque 60 lb-ft\nsession 2026-05-04\n  head b‸',
    'head bolts torque | reading, lb-ft',
  ],
  ['below broken lines', '  ~~ ?? ..\n  initial 9 @@ "\n  ini‸', 'initial | setting, deg, now 9 deg'],
];

test.each(LISTS)('%s', (_what, line, ...first) =>
  expect(listed(FIRST + line).slice(0, first.length)).toEqual(first),
);

const NOTHING: readonly (readonly [what: string, line: string])[] = [
  ['a note', '  note in‸'],
  ['the text of an item', '  todo strainer: in‸'],
  ['the name of a new item', '  todo in‸'],
  ['a title', 'session 2026-05-04 in‸'],
  ['a comment', '  initial 9 deg ; in‸'],
  ['a quote', '  advance springs "in‸'],
  ['what a session was kept for', '  keep in‸'],
  ['a line that is too long', `  ${'in '.repeat(900)}‸`],
];

/** All that is listed, where nothing but what begins with the letters typed may be. */
const BEGUN: readonly (readonly [line: string, ...all: readonly string[]])[] = [
  ['  choke off\n  choke of‸', 'off'],
  ['  choke off‸'],
  ['  idle 820 rpm in neu‸', 'neutral'],
  ['  idle 820 rpm in neutral‸'],
  ['  water 80 C‸'],
  ['  advance spr‸', 'advance springs', 'advance springs "two light ones"'],
  ['  done steer‸', 'steering'],
  ['  done steering‸'],
  ['  done Steering‸'],
  ['  trial Initial -> Water‸'],
  ['  fit carb tw‸', 'carb twin'],
  ['  fit carb twin‸'],
  ['  keep‸'],
];

test.each(BEGUN)('%s', (line, ...all) => {
  const labels = listed(FIRST + line).map((each) => each.split(' | ')[0]);
  expect(labels).toEqual(all);
});

test.each(NOTHING)('nothing in %s', (_what, line) => expect(listed(FIRST + line)).toEqual([]));

describe('a blank asks only for what the line lacks', () => {
  test.each<readonly [line: string, ...first: readonly string[]]>([
    ['  ‸'],
    ['  idle 850 ‸'],
    ['  initial 9 deg ‸'],
    ['  idle 850 rpm in ‸'],
    ['  initial 9 ‸', 'deg | angle'],
    ['  initial ‸', '9 deg | in force, from 2026-05-02'],
    ['  carbon ‸', 'carbon monoxide | reading, %'],
  ])('%s', (line, ...first) => {
    const list = listed(FIRST + line, { unasked: true });
    expect(first.length === 0 ? list : list.slice(0, first.length)).toEqual(first);
  });
});

/** The line after a choice is taken. */
const TAKEN: readonly (readonly [what: string, line: string, choice: string, after: string])[] = [
  ['the word being typed alone', '  ini‸ 9 deg', 'initial', '  initial 9 deg'],
  ['a word to its end', '  in‸itial 9 deg', 'initial', '  initial 9 deg'],
  ['all words of a name', '  vacuum ad‸', 'vacuum advance', '  vacuum advance'],
  ['a name whose rest stands there', '  vac‸uum advance 3 deg', 'vacuum advance', '  vacuum advance 3 deg'],
  [
    'a ready line, its value under the others',
    '  idle             9 rpm\n  ini‸',
    'initial 9 deg',
    '  initial          9 deg',
  ],
  ['a unit right after its number', '  initial 9‸', 'deg', '  initial 9 deg'],
  ['a unit half typed', '  initial 9d‸', 'deg', '  initial 9 deg'],
  [
    'a head at the edge, wherever it was typed',
    '  limi‸',
    'limits',
    'limits\n  total            <=  deg\n  ',
  ],
  ['today, and the head at the edge', '  session ‸', TODAY, `session ${TODAY}`],
  ['the flag', '  fault brake: drags [sa‸', '[safety]', '  fault brake: drags [safety]'],
  ['the day with its word', '  revert ‸', '2026-05-02', '  revert to 2026-05-02'],
];

test.each(TAKEN)('takes %s', (_what, line, choice, after) => {
  const above = line.split('\n').slice(0, -1);
  const all = taken(FIRST + line, choice);
  expect(all, above.join('\n')).toBe(after);
});

test('a setting is not ready to be written where the line would say something else', () => {
  const book = 'session 2026-05-02\n  initial 9.25 deg\n  mixture in 1/4 turn\n';
  expect(listed(`${book}  ini‸`)).not.toContainEqual(expect.stringContaining('carried'));
  expect(listed(`${book}  mix‸`)).not.toContainEqual(expect.stringContaining('carried'));
});

describe('paths', () => {
  const folder: readonly FolderEntry[] = [
    { name: 'plug.jpg', isFolder: false },
    { name: 'run.csv', isFolder: false },
    { name: 'old', isFolder: true },
    { name: '.git', isFolder: true },
    { name: 'limits.tappet', isFolder: false },
  ];

  test.each<readonly [line: string, ...names: readonly string[]]>([
    ['  photo ‸', 'old/', 'plug.jpg'],
    ['  log r‸', 'run.csv'],
    ['  use "‸', 'old/', 'limits.tappet'],
    ['  photo old/pl‸', 'plug.jpg'],
  ])('%s', (line, ...names) => expect(listed(FIRST + line, { folder })).toEqual(names));

  test.each<readonly [line: string, parts: readonly string[] | undefined]>([
    ['  photo ‸', []],
    ['  log logs/may/r‸', ['logs', 'may']],
    ['  log ../r‸', undefined],
    ['  log /etc/p‸', undefined],
    ['  photo‸', undefined],
    ['  initial ‸', undefined],
  ])('the folder of %s', (line, parts) => {
    const { text, cursor } = fixture(line);
    expect(folderWanted(openNotebook(text), cursor ?? { line: 0, character: 0 })).toEqual(parts);
  });
});

test('a meter answers to no knob', () => {
  expect(listed(`${FIRST}  trial main jet -> idle‸`)).not.toEqual([]);
  expect(listed(`${FIRST}  trial main jet -> odo‸`)).toEqual([]);
});

test('a part is written as the line spells it that describes it, however it is typed', () => {
  const book = 'parts\n  carb two-barrel "pair"\nsession 2026-05-02\n';
  expect(taken(`${book}  fit ‸`, 'carb two-barrel')).toBe('  fit carb two-barrel');
  expect(taken(`${book}  fit carb two b‸`, 'carb two-barrel')).toBe('  fit carb two-barrel');
});
