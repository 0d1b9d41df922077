/** The rules about what is worked out: trials, points, air, fuel and squeeze. */
import { rows } from './found.ts';

const TRIAL = [
  'session 2026-05-02',
  'trial feed restrictor -> oil pressure',
  '1/8 in 12 psi',
  '5/32 in 14.5 psi',
].join('\n');

rows(
  'want-outside-trial',
  [
    ['want 13 psi'],
    ['want 12 psi'],
    ['want 14.5 psi'],
    ['«want 11.84 psi»', 'feed restrictor at 0.123 in, and only 1/8..5/32 in was tried'],
    ['«want 14..15 psi»', 'at 0.1625 in'],
    ['want 9/64 in'],
    ['«want 3/16 in»', 'outside what was tried'],
    ['3/16 in 17 psi | want 16 psi'],
  ],
  TRIAL,
);

const FLAT = ['session 2026-05-02', 'trial shims -> idle', '1 800 rpm'].join('\n');

rows(
  'want-without-response',
  [
    ['2 800 rpm | «want 850 rpm»', 'idle does not move at all with shims from 1..2'],
    ['2 805 rpm | want 850 rpm'],
    ['1 830 rpm | 2 820 rpm | «want 850 rpm»', 'no more than repeats of one setting do'],
    ['2 840 rpm | 3 790 rpm | 4 830 rpm | 5 795 rpm | «want 850 rpm»', 'follows no trend'],
    ['2 800 rpm | want 2 turns'],
  ],
  FLAT,
);

rows(
  'trial-units-differ',
  [
    ['4 mm 14 psi'],
    ['«3 turns 14 psi»', 'The rows above give feed restrictor (in) and oil pressure (psi)'],
    ['«3/16 in 3 V»'],
    ['3/16 in 17'],
    ['«want 900 rpm»'],
    ['want 13'],
    ['want 0.2 in'],
  ],
  TRIAL,
);

const TIMED = ['session 2026-05-02', 'initial 9 deg', 'session 2026-05-09'].join('\n');

rows(
  'kept-without-timing',
  [
    ['dwell 50 deg | «keep»', 'dwell was set this session and the timing not read since'],
    ['dwell 50 deg | timing 9 deg at idle | keep'],
    ['dwell 50 deg | total 31 deg @ 3200 rpm | keep'],
    ['dwell 50 deg | initial 10 deg | keep'],
    ['idle 800 rpm | keep'],
    ['points gap 0.016 in | session 2026-05-10 | idle 800 rpm | keep'],
  ],
  TIMED,
);

const SQUEEZE = ['engine', 'compression 9:1', 'session 2026-05-02'].join('\n');

rows(
  'effective-ratio-high',
  [
    ['boost 4 psi'],
    ['boost «10 psi»', '9:1 with 10 psi comes to 15.1:1, over the 12:1'],
    ['boost «0.69 bar»', '15.1:1'],
    ['wastegate «8 psi»', 'overrules'],
    ['boost 4..10 psi'],
  ],
  SQUEEZE,
);

rows('effective-ratio-high', [['boost 10 psi']], SQUEEZE.replace('engine', 'engine\nfuel methanol'));

const SIDE_DRAUGHTS = ['parts', 'carb twin "pair of side-drafts"', 'session 2026-05-02'].join('\n');

rows(
  'fuel-pressure-for-needle',
  [
    ['fuel pressure 6 psi'],
    ['fuel pressure 3 psi'],
    ['fuel regulator «7.5 psi»', 'over the 4..7 psi that a needle and seat carburettor takes'],
    ['fit carb twin | fuel pressure «5 psi»', 'over the 1.5..4 psi that a side-draught'],
    ['fit carb twin | fuel pressure «1 psi»', 'may run low'],
    ['needle height 40 in | fuel regulator 7.5 psi'],
  ],
  SIDE_DRAUGHTS,
);

rows(
  'piston-speed-high',
  [
    ['red line 6000 rpm'],
    ['red line «6500 rpm»', '20.4 m/s on average at 6500 rpm'],
    ['session 2026-05-02 | engine speed «6500 rpm»'],
    ['session 2026-05-02 | rev limit 6300..7000 rpm'],
  ],
  'engine\nstroke 94 mm',
);

rows(
  'mixture-unlike-fuel',
  [
    ['air fuel ratio 9.8'],
    ['air fuel ratio 7'],
    ['air fuel ratio «15.5»', 'burns exactly at 9.8:1'],
    ['lambda 1.5'],
  ],
  'engine\nfuel e85\nsession 2026-05-02',
);

rows(
  'mixture-readings-differ',
  [
    ['lambda 0.85 | air fuel ratio 12.5'],
    ['lambda 0.85 | air fuel ratio «14»', '14:1 on gasoline is lambda 0.95, and lambda was 0.85'],
    ['air fuel ratio 14 | lambda «0.85»'],
    ['lambda 0.85 @ 3000 rpm | air fuel ratio 14 @ 1000 rpm'],
    ['lambda ~0.8..0.95 | air fuel ratio 14'],
  ],
  'engine\nfuel petrol\nsession 2026-05-02',
);

const VOLUMES = [
  'engine',
  'bore 86 mm',
  'stroke 94 mm',
  'chamber volume 58 cc',
  'piston volume 4 cc',
  'deck clearance 0.5 mm',
].join('\n');

rows(
  'ratio-unlike-volumes',
  [
    ['gasket thickness 1.2 mm | compression 8.6:1'],
    ['gasket thickness 1.2 mm | compression 8.4'],
    ['gasket thickness 1.2 mm | «compression 9.5:1»', 'The volumes give 8.6:1 and 9.5:1 is written'],
    ['compression 9.5:1 | «gasket thickness 1.2 mm»'],
    ['compression 9.5:1'],
  ],
  VOLUMES,
);

rows(
  'displacement-unlike-bore',
  [
    ['cylinders 4 | displacement 2184 cc'],
    ['cylinders 4 | displacement 2.2 L'],
    ['cylinders 4 | «displacement 2000 cc»', 'give 2184 cc and 2000 cc is written'],
    ['displacement 1638 cc | «cylinders 4»'],
    ['displacement 1638 cc | cylinders 3'],
  ],
  VOLUMES,
);

const COOL = [
  'session 2026-05-02',
  'weather 15 C, 1013 hPa, 50 %RH',
  'main jet 122',
  'session 2026-07-02',
].join('\n');

rows(
  'jet-against-air',
  [
    ['weather 32 C, 990 hPa, 50 %RH | main jet 120'],
    ['weather 32 C, 990 hPa, 50 %RH | main jet «125»', 'the air since 2026-05-02 asks for -4.2 %'],
    ['weather 32 C, 990 hPa, 50 %RH | main jet «110»', 'rich before'],
    ['weather 18 C, 1010 hPa, 50 %RH | main jet 128'],
    ['weather 32 C, 990 hPa, 50 %RH | main jet 1.3 mm'],
    ['main jet 128'],
  ],
  COOL,
);

rows('barometer-at-sea-level', [
  ['altitude 1500 m | weather 15 C, 845 hPa'],
  ['altitude 1500 m | «weather 15 C, 1015 hPa»', 'the standard atmosphere has 846 hPa'],
  ['weather 15 C, 1015 hPa | «altitude 5000 ft»'],
  ['altitude 200 m | weather 15 C, 1020 hPa'],
  ['weather 15 C, 1015 hPa'],
  ['altitude 1500 m | weather 15 C'],
]);

const BLOWN = ['session 2026-05-02', 'initial 9 deg', 'mechanical 0 deg @ 900 rpm, 20 deg @ 3200 rpm'].join(
  '\n',
);

rows(
  'boost-without-retard',
  [
    ['«boost 6 psi»', '1 deg comes out for each psi'],
    ['«boost 6 psi @ 3000 rpm» | boost 8 psi @ 4000 rpm'],
    ['«boost 6 psi» | session 2026-05-03 | boost 8 psi'],
    ['boost retard 1 deg/psi | boost 6 psi'],
  ],
  BLOWN,
);

rows('rating-without-depression', [
  ['carb rating 500 cfm @ 3 inHg'],
  ['carb rating «500 cfm»', 'At which depression?'],
]);
