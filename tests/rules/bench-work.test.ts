/** Rules on what the bench work shows: cylinders, screws, idle, changes and the notebook's own past. */
import { rows } from './found.ts';

const FOUR = 'engine\n  cylinders 4\n  layout inline\nsession 2026-05-02';
const PAST = [
  'session 2026-05-02',
  ...[820, 830, 815, 825, 835].map((rpm) => `  idle ${rpm} rpm in neutral`),
].join('\n');

rows('cold-cylinder', [
  [
    'tube 388 401 384 «120 F» at idle',
    'Cylinder 4 may not be firing: its tube is 120 F, the median of the others 388 F.',
  ],
  ['tube 310 295 505 440 350 455 365 380 F at idle'],
  ['tube 205 212 203 «49 C» at idle', '205 C'],
  ['tube #1 388 F | tube #2 401 F | tube «#3 120 F»', 'Its rise above outside air is 16 % of theirs.'],
  ['tube 120 415 F'],
  ['egt 1200 1210 «300» 1220 F @ 3000 rpm'],
  ['compression 150 149 20 148 psi'],
  ['weather 110 F | tube 388 401 384 «200 F» at idle', 'Its rise above outside air is 32 % of theirs.'],
  ['weather 20 F | tube 388 401 384 270 F at idle'],
]);

rows(
  'compression-low',
  [
    [
      'compression 150 148 «108» 149 psi',
      'Cylinder 3 is low at 108 psi, 72 % of the highest (150 psi): under the 112.5 psi of the 75 % rule, within the 105 psi of the 70 % rule (published: factory service manuals).',
    ],
    [
      'compression 150 148 «96» 149 psi',
      'Cylinder 3 is low at 96 psi, 64 % of the highest (150 psi): under the 112.5 psi of the 75 % rule, under the 105 psi of the 70 % rule (published: factory service manuals).',
    ],
    ['compression 150 148 113 149 psi'],
    ['compression 92 101 88 97 psi'],
    [
      'compression 10.3 10.2 «7.4» 10.1 bar',
      'Cylinder 3 is low at 7.4 bar, 71.8 % of the highest (10.3 bar): under the 7.725 bar of the 75 % rule, within the 7.21 bar of the 70 % rule (published: factory service manuals).',
    ],
    ['compression #1 150 psi | compression «#3 100 psi»'],
    ['compression 150 psi'],
  ],
  FOUR,
);

rows(
  'compression-pair-low',
  [
    ['compression 150 «96 98» 149 psi', 'Adjacent cylinders 2 and 3 are both under 75 % of the highest.'],
    ['compression «96 98» 150 149 psi'],
    ['compression 96 150 98 149 psi'],
    ['compression 92 101 88 97 psi'],
  ],
  FOUR,
);
rows('compression-pair-low', [['compression 150 96 98 149 psi']]);
rows(
  'compression-pair-low',
  [
    [
      'compression 150 148 «98 152 99» 150 151 149 psi',
      'Adjacent cylinders 3 and 5 are both under 75 % of the highest.',
    ],
    ['compression 150 148 98 99 151 150 151 149 psi'],
  ],
  'engine\n  cylinders 8\n  bank left 1-3-5-7\n  bank right 2-4-6-8\nsession 2026-05-02',
);

rows('leak-down-spread', [
  [
    'leak down 8 7 9 «24 %»',
    'Cylinder 4 leaks 24 %, the best 7 %: 17 points apart; up to 10 is typical (common practice, no source).',
  ],
  ['leak down 8 7 9 17 %'],
  ['leak down 28 27 29 31 %'],
  ['leak down #1 8 % | leak down «#2 30 %»'],
]);

rows('sides-apart', [
  ['mixture «left 1 turn», right 1 3/4 turns', 'right at 1 3/4 turns'],
  ['mixture left 1 1/4 turns, right 1 1/2 turns'],
  [
    'mixture left 1 1/4 turns, right 1 1/2 turns | mixture «left in 1/4 turn»',
    'Mixture left is at 1 turn, right at 1 1/2 turns.',
  ],
  ['mixture left 1..1 1/2 turns, right 1 1/2 turns'],
  // 1.1 less 0.85 is a quarter and a rounding in the last place.
  ['mixture left 1.1 turns, right 0.85 turns'],
  ['mixture «left 1.101 turns», right 0.85 turns'],
  ['mixture primary left 1 turn, secondary right 2 turns'],
  ['mixture port 1 turn | mixture «starboard 2 turns»'],
]);

rows('changed-together', [
  [
    'initial 9 deg | idle 820 rpm | initial 11 deg | mixture in 1/4 turn | «idle» 850 rpm',
    'Initial and mixture',
  ],
  ['initial 9 deg | mixture 1 turn | idle 820 rpm'],
  ['initial 9 deg | mixture 1 turn | idle 820 rpm | initial 9 deg | mixture 1 turn | idle 830 rpm'],
  ['plug gap 0.035 in | initial 9 deg | idle 820 rpm | plug gap 35 thou | initial 10 deg | idle 830 rpm'],
  [
    'mixture left 1 turn, right 1 turn | idle 820 rpm | mixture left in 1/4 turn | mixture right in 1/4 turn | idle 830 rpm',
  ],
  [
    'initial 9 deg | idle 820 rpm | initial 11 deg | mixture in 1/4 turn | plug #1 tan | weather 14 C | «idle» 850 rpm | depression 17 inHg',
  ],
  [
    'fit carb single | initial 9 deg | idle 820 rpm | fit carb twin | initial 11 deg | «idle» 850 rpm',
    'Carburettor and initial',
  ],
  ['points gap 0.016 in | dwell 50 deg | idle 820 rpm | points gap 0.014 in | dwell 53 deg | idle 850 rpm'],
  [
    'mechanical 22 deg | advance springs "stiff" | idle 820 rpm | advance springs "light" | mechanical 20 deg | idle 850 rpm',
  ],
  [
    'dwell 50 deg | initial 9 deg | idle 820 rpm | dwell 53 deg | initial 11 deg | «idle» 850 rpm',
    'Dwell and initial',
  ],
  [
    'initial 9 deg | mixture 1 turn | idle 820 rpm | initial 11 deg | idle 830 rpm | mixture in 1/4 turn | idle 850 rpm',
  ],
]);

rows(
  'unlike-its-past',
  [
    [
      'idle «1180 rpm» in neutral',
      '1180 rpm is far from earlier readings: the last 5 under the same conditions were 815..835 rpm, median 825 rpm.',
    ],
    ['idle 840 rpm in neutral'],
    ['idle 1180 rpm in drive'],
    ['idle 860 rpm in neutral'],
    ['session 2026-06-02 | idle «500 rpm» in neutral'],
  ],
  PAST,
);
rows('unlike-its-past', [
  ['tube 400 410 F | tube 388 411 F | tube 398 409 F | tube 401 412 F | tube 399 410 F | tube 400 «300 F»'],
  ['water 190 F | water 190 F | water 190 F | water 190 F | water 190 F | water 220 F'],
]);

rows('idle-drop-large', [
  ['idle 950 rpm in neutral | idle «690 rpm in drive»', 'drops by 260 rpm'],
  ['idle 690 rpm in drive | idle «950 rpm in neutral»'],
  ['idle 950 N | idle screw out 1/2 turn | idle 690 D'],
  ['idle 850 rpm in park | idle 700 rpm in gear'],
  ['idle 950 rpm in neutral | idle 690..800 rpm in drive'],
]);

rows('idle-in-gear-low', [
  ['idle «500 rpm in drive»', 'TM 5-4210-230-14&P-1'],
  ['idle 550 rpm in drive'],
  ['idle 500 rpm in neutral'],
  ['idle 500 rpm in gear'],
  ['idle 500..600 rpm in drive'],
]);
rows(
  'idle-in-gear-low',
  [['idle «500 rpm in gear»']],
  'vehicle\n  transmission automatic\nsession 2026-05-02',
);
rows('idle-in-gear-low', [['idle 500 rpm in drive']], 'vehicle\n  transmission manual\nsession 2026-05-02');

rows('screws-without-effect', [
  [
    'trial mixture -> idle |   1 turn 820 rpm |   1 1/4 turns 818 rpm |   «1 1/2 turns 821 rpm» |   1 3/4 turns 819 rpm |   2 turns 820 rpm',
    'transfer slot',
  ],
  ['trial mixture -> idle |   1 1/2 turns 780 |   1 turn 780 |   «1/2 turn 775»', 'transfer slot'],
  ['trial mixture -> idle |   1 1/2 turns 780 |   1 turn 780 |   1/2 turn 760'],
  [
    'trial mixture -> idle |   1 turn 820 rpm |   1 1/4 turns 820 rpm |   «1 1/2 turns 820 rpm»',
    'transfer slot',
  ],
  ['trial mixture -> idle |   1 turn 780 rpm |   1 1/4 turns 820 rpm |   1 1/2 turns 850 rpm'],
  ['trial initial -> idle |   6 deg 820 rpm |   8 deg 820 rpm |   10 deg 820 rpm'],
  ['trial mixture -> idle |   1 turn 820 rpm |   1 1/4 turns 820 rpm'],
]);

rows('power-valve-high', [
  [
    'depression 10 inHg at idle in drive | power valve «8.5 inHg»',
    'Rated over 8 inHg it may be open at idle (common practice, no source).',
  ],
  ['power valve 8.5 inHg | depression «10 inHg at idle in drive»'],
  ['depression 10 inHg at idle in drive | power valve 8 inHg'],
  ['depression 10 inHg @ 2500 rpm | power valve 8.5 inHg'],
  ['depression 10 inHg at idle in drive | session 2026-05-03 | power valve «8.5 inHg»'],
  ['power valve 8.5 inHg'],
]);
