import { expect, test } from 'vitest';
import { unitById } from '../../server/trade/measure/units.ts';
import { hoverLines } from '../harness/checks.ts';

const FIRST = `
  session 2026-05-02
    initial  9 deg
    mechanical  0 deg @ 900 rpm, 8 deg @ 1500 rpm, 22 deg @ 3200 rpm`;

/** A notebook with its cursor, and lines that its hover must have, in this order. */
const ROWS: readonly (readonly [what: string, notebook: string, ...lines: readonly string[]])[] = [
  [
    'the word: value, meaning, band with its standing',
    'engine\n  «bo‸re»  86 mm\n',
    'bore 86 mm = 3.386 in',
    'Diameter of the cylinders.',
    "Expected 25..250 mm (common practice: from model-sized to ship's boats)",
  ],
  [
    'a published band names its source',
    'session 2026-05-02\n  depress‸ion 17 inHg\n',
    'Expected 0..25 inHg (published: OD1001 lesson 3: wide open falls to about 2, snapping shut rises to about 25 inHg)',
  ],
  [
    'a value of a list: its cylinder, and the unit said once for all',
    'session 2026-05-02\n  tube  388 «4‸01» 384 226 F\n',
    'tube #2 401 F = 205 C',
  ],
  ['the last value of a list', 'session 2026-05-02\n  tube  388 401 384 «2‸26 F»\n', 'tube #4 226 F = 108 C'],
  [
    'the word of a list: all of them',
    'session 2026-05-02\n  tu‸be  388 401 F\n',
    'tube 388 401 F = 198 205 C',
  ],
  ['a whole value below nought', 'session 2026-05-02\n  initial at «‸-4 deg»\n', 'initial -4 deg'],
  [
    'a direction in words stays as it is written',
    'session 2026-05-02\n  cam tim‸ing 4 deg retarded\n',
    'cam timing 4 deg retarded',
  ],
  ['below nought', 'session 2026-05-02\n  weather «‸-5 C», 1011 hPa\n', 'weather -5 C = 23 F'],
  ['a change', 'session 2026-05-02\n  thermostat «‸-5 C»\n', 'thermostat -5 C = -9 F'],
  [
    'degrees of frost',
    'session 2026-05-02\n  air temperature «‸-5..-2 C»\n',
    'air temperature -5..-2 C = 23..28 F',
  ],
  ['a number the trade writes without its unit', 'session 2026-05-02\n  idle  «8‸50»\n', 'idle 850 rpm'],
  [
    'a part of the weather',
    'session 2026-05-02\n  weather  14 C, «10‸11 hPa», 62 %RH\n',
    'weather 1011 hPa = 29.85 inHg',
  ],
  [
    'a depression, in what such gauges read',
    'session 2026-05-02\n  depression  «17‸ inHg»\n',
    'depression 17 inHg = 57.6 kPa',
  ],
  ['a bound', 'limits\n  water  «<= 195‸ F»\n', 'water <= 195 F = <= 91 C'],
  [
    'a change of temperature is a difference, not a reading',
    'session 2026-05-02\n  thermostat  «+18‸ F»\n',
    'thermostat +18 F = +10 C',
  ],
  ['the place before the word', 'session 2026-05-02\n  left mix‸ture 1 turn\n', 'mixture left 1 turn'],
  [
    'a total with its formula, its numbers and the lines of its inputs',
    `${FIRST.replace('mechanical', 'mechan‸ical')}`,
    'total 31 deg = 9 deg + 22 deg',
    'initial + maximum mechanical from 3200 rpm, no vacuum',
    'initial: line 2; maximum mechanical: this line',
    'all in 3200 rpm',
    'slope 13.3 deg per 1000 rpm, 900 to 1500 rpm',
  ],
  [
    'a total whose other part comes further down in the session',
    `${FIRST.replace('initial', 'init‸ial')}`,
    'total 31 deg = 9 deg + 22 deg',
    'initial: this line; maximum mechanical: line 3',
    'timing at idle needs an idle reading',
  ],
  [
    'a total that nothing asked for yet at the line: its vacuum comes further down',
    `${FIRST.replace('initial', 'init‸ial')}
    vacuum advance  0 deg @ 4 inHg, 12 deg @ 12 inHg, manifold`,
    'cruise total 43 deg = 9 deg + 22 deg + 12 deg',
    'initial: this line; maximum mechanical: line 3; maximum vacuum: line 4',
  ],
  [
    'a point of the curve: the total at that speed',
    `${FIRST.replace('8 deg @ 1500 rpm', '«8 deg @ 15‸00 rpm»')}`,
    'mechanical 8 deg @ 1500 rpm',
    'total 17 deg = 9 deg + 8 deg',
    'initial + mechanical at 1500 rpm',
  ],
  [
    'degrees and rpm of the distributor, told of the crank',
    'session 2026-05-02\n  initial 5 deg\n  mechanical  0 deg @ 450 rpm, «11 deg‸ @ 1600 rpm», distributor\n',
    '22 deg @ 3200 rpm at the crank',
    'total 27 deg = 5 deg + 22 deg',
  ],
  [
    'the total before the timing at idle, which is known first',
    'session 2026-05-02\n  idle 650 rpm\n  init‸ial 8 deg\n  mechanical 0 deg @ 900 rpm, 20 deg @ 2800 rpm\n',
    'total 28 deg = 8 deg + 20 deg',
    'timing at idle 8 deg = 8 deg + 0 deg',
  ],
  [
    'timing that was read at a speed, against the sum there',
    `${FIRST}\n  tim‸ing 18 deg @ 1500 rpm, vacuum plugged\n`,
    'total 17 deg = 9 deg + 8 deg',
    'Measured 18 deg: 1 deg more than calculated',
  ],
  [
    'the stop that holds the vacuum advance, with its line',
    `${FIRST}\n  vacuum advance 0 deg @ 5 inHg, 14 deg @ 14 inHg, ported\n  vacuum li‸mit 9 deg\n`,
    'cruise total 40 deg = 9 deg + 22 deg + 9 deg',
    'initial: line 2; maximum mechanical: line 3; maximum vacuum: line 4; vacuum limit: this line',
  ],
  [
    'a fact: what the whole section makes of it',
    'engine\n  bo‸re 92 mm\n  stroke 86 mm\n  cylinders 8\n',
    'displacement 4574 cc, 279.1 cu in',
  ],
  [
    'a meter: how far since',
    'session 2026-05-02\n  odometer 61200 mi\nsession 2026-05-03\n  odo‸meter 61212 mi\n',
    'Last 61200 mi (line 2, 2026-05-02): 12 mi more',
  ],
  ['a height', 'session 2026-05-02\n  alti‸tude 1700 ft\n', 'altitude 1700 ft = 518 m'],
  ['a tank', 'session 2026-05-02\n  fuel u‸sed 9.2 gal\n', 'fuel used 9.2 gal = 34.8 L'],
  ['as finely as it is read', 'session 2026-05-02\n  plug g‸ap 0.030 in\n', 'plug gap 0.030 in = 0.76 mm'],
  [
    'the target for the conditions of the reading',
    'targets\n  idle 650..700 rpm in neutral\nsession 2026-05-02\n  id‸le 690 rpm in neutral\n',
    'Target 650..700 rpm in neutral (line 2)',
  ],
  [
    "the notebook's own limit of the word, and of a total",
    `limits\n  total <= 34 deg${FIRST.replace(/^ {2}/gm, '')}\n  tot‸al 31 deg @ 3200 rpm\n`,
    'total 31 deg = 9 deg + 22 deg',
    'Limit <= 34 deg (line 2)',
  ],
  [
    'a limit is told with a total of another word',
    `limits\n  total <= 34 deg${FIRST.replace(/^ {2}/gm, '').replace('mechanical', 'mechan‸ical')}`,
    'total 31 deg = 9 deg + 22 deg',
    'Limit <= 34 deg (line 2)',
  ],
  [
    'the timing at idle, from a reading further down',
    `${FIRST}
    idle  ‸820 rpm in neutral
    depression 17 inHg
    vacuum advance  0 deg @ 4 inHg, 12 deg @ 12 inHg, manifold`,
    'timing at idle 9 deg = 9 deg + 0 deg',
    'initial + mechanical at 820 rpm; no vacuum source written, so none counted',
  ],
  [
    'a setting: what it was, and by how much it changed',
    `${FIRST}\n  session 2026-05-03\n    init‸ial 11 deg`,
    'Before 9 deg (line 2, 2026-05-02): 2 deg more',
  ],
  [
    'a setting changed twice in a session: what it was before the session too',
    `${FIRST}\n  session 2026-05-03\n    initial 12 deg\n    init‸ial 11 deg`,
    'Before 12 deg (line 5): 1 deg less',
    'Before this session 9 deg (line 2, 2026-05-02): 2 deg more',
  ],
  [
    'a change: what it comes to, and since when it is counted',
    `${FIRST}\n  session 2026-05-03\n    init‸ial +2 deg`,
    'initial +2 deg',
    'Now 11 deg, counted from line 2, 2026-05-02',
    'Before 9 deg (line 2, 2026-05-02): 2 deg more',
  ],
  [
    'a change from a start nobody wrote',
    'session 2026-05-02\n  mixt‸ure in 1/4 turn\n',
    'Now -1/4 turn from an unknown start',
  ],
  [
    'each place by itself',
    'session 2026-05-02\n  mixture left 1 turn, right 2 turns\nsession 2026-05-03\n  mixt‸ure left 1 1/4 turns, right 1 turn\n',
    'left: before 1 turn (line 2, 2026-05-02): 1/4 turn more',
    'right: before 2 turns (line 2, 2026-05-02): 1 turn less',
  ],
  [
    'a reading told in words: the last one',
    'session 2026-05-02\n  plug #3 "tan"\nsession 2026-05-03\n  plug #3 "so‸oty"\n',
    'plug #3 "sooty"',
    '#3: last tan (line 2, 2026-05-02)',
  ],
  [
    'a reading in numbers: the last comparable one, not one under other conditions',
    'session 2026-05-02\n  idle 820 rpm in neutral\n  idle 700 rpm in drive\nsession 2026-05-03\n  id‸le 860 rpm in neutral\n',
    '860 rpm - 820 rpm = 40 rpm',
  ],
  [
    "a word of the notebook's own",
    'words\n  boost knob: setting, 0..10 turns, "how far the bleed is open"\nsession 2026-05-02\n  boost kn‸ob 3 turns\n',
    'boost knob 3 turns',
    'how far the bleed is open',
    'Expected 0..10 turns (common practice: this notebook)',
  ],
  ['a line broken around it', 'session ~~\n  ?? ,, 3\n  bo‸ost 6 psi\n', 'boost 6 psi = 0.41 bar'],
  [
    'two sources of one name, and how many more there are',
    'session 2026-05-02\n  run time 14.2 s\n  run time 14.1 s\n  run time 14 s\n  run ti‸me 15 s\n',
    'run time: line 2; line 3 and 2 more',
  ],
  [
    'three sources of one name are all named: one more is no more to read than its number',
    'session 2026-05-02\n  run time 14.2 s\n  run time 14.1 s\n  run ti‸me 15 s\n',
    'run time: line 2; line 3; this line',
  ],
  [
    'five sources, and how many more there are',
    `session 2026-05-02\n${[1, 2, 3, 4, 5, 6].map((i) => `  compression #${i} 150 psi\n`).join('')}  compress‸ion #7 150 psi\n`,
    '#1: line 2; #2: line 3; #3: line 4; #4: line 5; #5: line 6; 2 more',
  ],
];

test.each(ROWS)('%s', (_what, notebook, ...lines) => {
  const hover = hoverLines(notebook);
  let at = -1;
  for (const line of lines) {
    const found = hover.findIndex((each, i) => i > at && each === line);
    expect(found, `"${line}" after line ${at + 1} of\n${hover.join('\n')}`).toBeGreaterThan(at);
    at = found;
  }
});

test.each([
  ['a blank line', 'session 2026-05-02\n‸\n'],
  ['the blanks before a line', 'session 2026-05-02\n ‸   idle 850 rpm\n'],
  ['a comment', 'session 2026-05-02\n  idle 850 rpm  ; in the ‸yard\n'],
  ['a word nobody knows', 'engine\n  wob‸ble 3\n'],
])('nothing to say of %s', (_what, notebook) => expect(hoverLines(notebook)).toEqual([]));

test.each([
  ['temperature', 'C', 'water 194 F', 'water 90 C = 194 F'],
  ['temperature', 'F', 'water 194 F', 'water 194 F = 90 C'],
  ['temperature', 'F', 'water 90 C', 'water 194 F = 90 C'],
  ['depression', 'kPa', 'depression 17 inHg', 'depression 57.6 kPa = 17 inHg'],
  ['pressure', 'kPa', 'depression 17 inHg', 'depression 17 inHg = 57.6 kPa'],
  ['pressure', 'kPa', 'fuel pressure 4 psi', 'fuel pressure 27.6 kPa = 4 psi = 0.28 bar'],
  ['roadSpeed', 'km/h', 'speed 60 mph', 'speed 96.6 km/h = 60 mph'],
] as const)('whoever prefers %s in %s reads "%s" as "%s"', (topic, unit, line, expected) => {
  const [word] = line.split(' ');
  const marked = `session 2026-05-02\n  ${line.replace(word as string, `‸${word}`)}\n`;
  expect(hoverLines(marked, new Map([[topic, unitById(unit)]]))[0]).toBe(expected);
});

test('what a reader wrote is never taken for Markdown', () => {
  const lines = hoverLines('session 2026-05-02\n  plug #3 "‸*black* <b>wet</b> ~oily~ [x](y)"\n');
  expect(lines[0]).toBe('plug #3 "*black* <b>wet</b> ~oily~ [x](y)"');
});

test.each<[what: string, notebook: string, never: RegExp]>([
  [
    'a target for other conditions',
    'targets\n  idle 650..700 rpm in neutral\nsession 2026-05-02\n  id‸le 560 rpm in drive\n',
    /^Target/,
  ],
  [
    'a change told of the crank',
    `${FIRST.replace('initial  9 deg', 'initial  9 deg\n    init‸ial -2 deg')}`,
    /at the crank/,
  ],
  [
    'a reading far from its past that has been read before',
    `session 2026-05-02\n${[650, 655, 650, 690, 690].map((rpm) => `  idle ${rpm} rpm\n`).join('')}  id‸le 685 rpm\n`,
    /far from its past/,
  ],
  [
    'the ratio of the engine beside a pressure of the same name',
    'engine\n  bore 92 mm\n  stroke 86 mm\n  chamber volume 70 cc\n  gasket thickness 1 mm\nsession 2026-05-02\n  comp‸ression 140 141 138 142 psi\n',
    /^static ratio/,
  ],
  [
    'a timing to be read that is read further down',
    'session 2026-05-02\n  dw‸ell 30 deg\n  timing 4 deg @ 600 rpm\n',
    /^timing check due/,
  ],
])('a hover never tells %s', (_, notebook, never) => {
  const lines = hoverLines(notebook);
  expect(lines.length).toBeGreaterThan(0);
  expect(lines.filter((line) => never.test(line))).toEqual([]);
});
