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
    ['«want 11.84 psi»', 'This needs feed restrictor 0.123 in; only 1/8..5/32 in was tried.'],
    ['«want 14..15 psi»', 'This needs feed restrictor 0.1625 in; only 1/8..5/32 in was tried.'],
    ['want 9/64 in'],
    ['«want 3/16 in»', 'This needs feed restrictor 3/16 in; only 1/8..5/32 in was tried.'],
    ['3/16 in 17 psi | want 16 psi'],
  ],
  TRIAL,
);

const FLAT = ['session 2026-05-02', 'trial shims -> idle', '1 800 rpm'].join('\n');

rows(
  'want-without-response',
  [
    ['2 800 rpm | «want 850 rpm»', 'Idle did not change over shims 1..2, so no size can be worked out.'],
    ['2 805 rpm | want 850 rpm'],
    [
      '1 830 rpm | 2 820 rpm | «want 850 rpm»',
      'Idle changed no more than repeat readings of one setting did over shims 1..2, so no size can be worked out.',
    ],
    [
      '2 840 rpm | 3 790 rpm | 4 830 rpm | 5 795 rpm | «want 850 rpm»',
      'Idle showed no trend over shims 1..5, so no size can be worked out.',
    ],
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
    [
      'dwell 50 deg | «keep»',
      'The dwell was changed this session and the timing has not been checked since; changing the dwell moves the timing (common practice, no source).',
    ],
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
    [
      'fuel regulator «7.5 psi»',
      '7.5 psi at the needle is over the 4..7 psi usual for a needle and seat carburettor; it may flood.',
    ],
    [
      'fit carb twin | fuel pressure «5 psi»',
      '5 psi at the needle is over the 1.5..4 psi usual for a side-draught carburettor; it may flood.',
    ],
    ['fit carb twin | fuel pressure «1 psi»', 'may run low'],
    ['needle height 40 in | fuel regulator 7.5 psi'],
  ],
  SIDE_DRAUGHTS,
);

rows(
  'piston-speed-high',
  [
    ['red line 6000 rpm'],
    [
      'red line «6500 rpm»',
      'Mean piston speed is 20.4 m/s at 6500 rpm with a stroke of 94 mm, over the 20 m/s usual for road engines (common practice, no source).',
    ],
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
    ['air fuel ratio «15.5»', 'Stoichiometric for e85 is 9.8:1, so this is lambda 1.58.'],
    ['lambda 1.5'],
  ],
  'engine\nfuel e85\nsession 2026-05-02',
);

rows(
  'mixture-readings-differ',
  [
    ['lambda 0.85 | air fuel ratio 12.5'],
    [
      'lambda 0.85 | air fuel ratio «14»',
      '14:1 on gasoline is lambda 0.95, but the lambda reading is 0.85, more than 0.05 apart.',
    ],
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
    [
      'gasket thickness 1.2 mm | «compression 9.5:1»',
      'The volumes give 8.6:1, but 9.5:1 is written, more than 0.3 apart.',
    ],
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
    [
      'cylinders 4 | «displacement 2000 cc»',
      'Bore, stroke and cylinders give 2184 cc, but 2000 cc is written, more than 3 % apart.',
    ],
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
    [
      'weather 32 C, 990 hPa, 50 %RH | main jet «125»',
      'This jet is 5 % larger in area; the change in air since 2026-05-02 calls for 4.2 % smaller.',
    ],
    [
      'weather 32 C, 990 hPa, 50 %RH | main jet «110»',
      'Right only if it was running rich (published, orifice equation).',
    ],
    ['weather 18 C, 1010 hPa, 50 %RH | main jet 128'],
    ['weather 32 C, 990 hPa, 50 %RH | main jet 1.3 mm'],
    ['main jet 128'],
  ],
  COOL,
);

rows('barometer-at-sea-level', [
  ['altitude 1500 m | weather 15 C, 845 hPa'],
  [
    'altitude 1500 m | «weather 15 C, 1015 hPa»',
    '1015 hPa is too high for 1500 m, where the standard atmosphere is 846 hPa.',
  ],
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
    [
      '«boost 6 psi»',
      'Boost without a "boost retard": usual is about 1 deg of retard for each psi, more to begin with.',
    ],
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
