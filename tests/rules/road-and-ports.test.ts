/** Rules on specs, ports, reminders, road speeds, meters and logs. */
import { rows } from './found.ts';

const HEAD =
  'specs\n  head bolts torque 58..62 lb-ft source "manual"\n  plug gap 0.025 in\n  intake valve lash 0.012 in\nsession 2026-05-02';

rows(
  'torque-outside-spec',
  [
    ['head bolts torque «70 lb-ft»', 'above the head bolts torque specified, 58..62 lb-ft (manual)'],
    ['head bolts «70 lb-ft»'],
    ['torque «50 lb-ft» head bolts', 'below'],
    ['head bolts «95 N.m»'],
    ['head bolts 80 N.m'],
    ['head bolts 58 lb-ft'],
    ['head bolts 55..60 lb-ft'],
    ['torque 70 lb-ft'],
    ['torque 70 lb-ft rod bolts'],
  ],
  HEAD,
);
rows('torque-outside-spec', [['torque 70 lb-ft']]);

rows(
  'outside-spec',
  [
    [
      'plug gap «0.035 in»',
      'Plug gap 0.035 in is above the specified plug gap, 0.025 in (source not written).',
    ],
    ['plug gap 0.635 mm'],
    ['plug gap «0.7 mm»'],
    ['plug gap 0.025 in'],
    ['plug gap ~0.025 in'],
    ['valve lash intake «0.014 in», exhaust 0.016 in', 'specified intake valve lash'],
    ['intake valve lash 0.012 in'],
    ['plug gap +0.002 in'],
  ],
  HEAD,
);

rows('spec-differs', [
  [
    'specs | head bolts torque 58..62 lb-ft | «head bolts» torque 30 lb-ft',
    'Head bolts: 58..62 lb-ft earlier, 30 lb-ft here; this one holds from here on.',
  ],
  ['specs | head bolts torque 58..62 lb-ft | head bolts torque 58..62 lb-ft'],
  ['specs | head bolts torque 58..62 lb-ft | rod bolts torque 30 lb-ft'],
  ['specs | head bolts torque "3/8-16 grade 5" | head bolts torque 30 lb-ft'],
]);

rows(
  'port-doubled',
  [
    [
      'manifold rear brake booster | manifold front «brake booster»',
      '"brake booster" is already on port "manifold rear".',
    ],
    ['manifold rear brake booster | manifold front «Brake Booster»'],
    ['manifold rear capped | manifold front capped'],
    ['manifold rear open | manifold front open'],
    ['manifold rear brake booster | ports | manifold front brake booster'],
    ['manifold rear brake booster | manifold rear brake booster'],
    ['coolant: pump -> block | oil: pump -> block'],
  ],
  'ports',
);

rows(
  'port-connected-and-capped',
  [
    ['manifold rear «brake booster», capped'],
    [
      'manifold rear «brake booster and capped»',
      'Port "manifold rear" is both capped and connected to "brake booster". Which is it?',
    ],
    [
      'manifold rear brake booster | manifold rear «capped»',
      'Port "manifold rear" is "brake booster" above and "capped" here.',
    ],
    ['manifold rear brake booster | manifold rear «boost gauge»'],
    ['manifold rear brake booster | manifold rear brake booster'],
    ['manifold rear brake booster | ports | manifold rear capped'],
    ['manifold rear | manifold rear capped'],
  ],
  'ports',
);

rows(
  'port-open',
  [
    ['manifold rear «open»', 'a vacuum leak'],
    ['vacuum tee: «nothing»'],
    ['base plate rear «open»', 'a vacuum leak'],
    ['sump: open'],
    ['manifold rear capped'],
  ],
  'ports',
);
rows(
  'port-unsaid',
  [['«manifold rear»', 'is it capped?'], ['manifold rear capped'], ['coolant: pump -> block']],
  'ports',
);
rows(
  'cooler-order',
  [
    ['oil: «pump -> aux cooler -> radiator -> pump»', 'The oil goes through the small cooler first.'],
    [
      'oil: «pump -> small cooler -> pump»',
      'The oil has only a small cooler, which cannot keep up under load: it is meant to trim what a large one leaves (common practice, no source).',
    ],
    ['oil: pump -> radiator -> aux cooler -> pump'],
    ['oil: pump -> cooler -> pump'],
  ],
  'ports',
);

rows(
  'recheck-due',
  [
    [
      'recheck head bolts after 200 mi | session 2026-05-03 | «odometer 1300 mi»',
      'Recheck of head bolts is due: 200 mi since the reminder of 2026-05-02.',
    ],
    [
      'recheck head bolts after 200 mi | session 2026-05-03 | «odometer 1300 mi» | odometer 1310 mi | session 2026-05-04',
    ],
    [
      'recheck head bolts after 200 mi | session 2026-05-03 | «odometer 1300 mi» | check head bolts ok | session 2026-05-04',
    ],
    ['recheck head bolts after 200 mi | session 2026-05-03 | odometer 1100 mi'],
    [
      'recheck head bolts every 200 mi | session 2026-05-03 | «odometer 1300 mi» | check head bolts ok | session 2026-05-04 | odometer 1400 mi | odometer 1499 mi | session 2026-05-05 | «odometer 1500 mi»',
      'Recheck of head bolts is due: 200 mi since the reminder of 2026-05-03.',
    ],
    [
      'recheck head bolts every 200 mi | session 2026-05-03 | «odometer 1300 mi» | done head bolts | session 2026-05-04 | odometer 1400 mi',
    ],
    [
      'recheck head bolts after 1 day | «session 2026-05-03»',
      'Recheck of head bolts is due: 1 day since the reminder of 2026-05-02.',
    ],
    [
      'recheck head bolts after 1 heat cycle | water 180 F | «session 2026-05-03»',
      'Recheck of head bolts is due: 1 heat cycle since the reminder of 2026-05-02.',
    ],
    ['recheck head bolts after 1 heat cycle | idle 800 rpm | session 2026-05-03'],
    ['recheck head bolts after 200 mi | session 2026-05-03 | odometer 1100..1400 mi'],
    [
      'recheck head bolts after 1 heat cycle | water 180 F | «ports»',
      'Recheck of head bolts is due: 1 heat cycle since the reminder of 2026-05-02.',
    ],
    [
      'recheck points gap after 30 days | recheck dwell after 60 days | «session 2026-06-05» | points gap 0.4 mm | dwell 50 deg | «session 2026-07-06»',
    ],
  ],
  'session 2026-05-02\n  odometer 1000 mi',
);

const CAR = 'vehicle\n  tyre diameter 25 in\n  final drive 4\n  gear ratios 3.5 2 1.3 1\n';
rows(
  'speed-not-possible',
  [
    [
      'speed «80 mph» @ 3000 rpm in fourth',
      'At 3000 rpm fourth gives 55.8 mph, so a faster reading is not possible in that gear (common practice, no source).',
    ],
    ['speed «80 mph» @ 3000 rpm', 'in any gear'],
    ['speed «30 mph» @ 3000 rpm in fourth', 'another gear'],
    ['speed «128 km/h» @ 3000 rpm in top', '89.8 km/h'],
    ['speed 55 mph @ 3000 rpm in fourth'],
    ['speed 30 mph @ 3000 rpm'],
    ['speed 57 mph @ 3000 rpm in fourth'],
    ['speed 80 mph'],
    ['speed 80 mph @ 3000..5000 rpm in fourth'],
    ['speed 55 mph @ 3000 rpm in sixth'],
  ],
  `${CAR}session 2026-05-02`,
);
rows('speed-not-possible', [['speed 80 mph @ 3000 rpm in fourth']]);
rows(
  'speed-not-possible',
  [['speed 30 mph @ 3000 rpm in fourth'], ['speed «80 mph» @ 3000 rpm in fourth']],
  `${CAR}  transmission automatic\nsession 2026-05-02`,
);

rows(
  'tyre-unreadable',
  [
    ['tyre «"big blocks"»', '"big blocks" gives no diameter.'],
    ['tyre 185/65R15'],
    ['tyre "185 R 14"'],
    ['tyre diameter 25 in | tyre "big blocks"'],
  ],
  'vehicle',
);

rows(
  'revs-above-red-line',
  [
    ['oil pressure 52 psi @ «6200 rpm»', '6200 rpm is above the red line, 5500 rpm'],
    ['engine speed «6200 rpm»'],
    ['speed 60 mph @ «6200 rpm»'],
    ['oil pressure 52 psi @ 5500 rpm'],
    ['oil pressure 52 psi @ 5000..6000 rpm'],
    ['idle 6200 rpm'],
  ],
  'engine\n  red line 5500\nsession 2026-05-02',
);
rows('revs-above-red-line', [['engine speed 6200 rpm']]);

rows('odometer-backwards', [
  [
    'odometer 1200 mi | session 2026-05-03 | odometer «1020 mi»',
    'Odometer 1020 mi is less than the last reading of 2026-05-02, 1200 mi.',
  ],
  ['odometer 1200 mi | odometer «1900 km»'],
  ['odometer 1200 mi | odometer 1200 mi'],
  ['odometer 1200 mi | odometer 1100..1300 mi'],
  ['odometer 1200 mi'],
]);
rows('hours-backwards', [['hours 120 | hours «102»', '120 h'], ['hours 120 | hours 121']]);

rows('file-missing', [
  ['photo «photos/lost.jpg»', 'Can\'t find the photo "photos/lost.jpg".'],
  [
    'log "«lost; run.csv»"',
    'Can\'t find the log "lost; run.csv". Paths are relative to this notebook\'s folder.',
  ],
  ['photo lost.jpg ; meant: file-missing'],
  ['log ../lost.csv'],
  ['photo'],
  ['photo there.jpg'],
  ['note photo lost.jpg'],
]);

rows('log-outside', [
  ['log «../run.csv»', '"../run.csv" is outside this notebook\'s folder and is not read.'],
  ['log «/home/run.csv»'],
  ['log «C:/run.csv»'],
  ['log "«..\\run.csv»"'],
  ['log logs/run.csv'],
  ['log logs/../run.csv'],
  ['photo ../run.jpg'],
]);

rows('done-nothing-open', [
  ['recheck head bolts after 200 mi | done head bolts'],
  [
    'recheck head bolts after 200 mi | done «head bolt»',
    'open are: head bolts',
    'recheck head bolts after 200 mi | done head bolts',
  ],
  [
    'recheck head bolts after 200 mi | check head bolts ok | done «head bolts»',
    'Nothing called "head bolts" is open; there is no open todo, fault or reminder.',
  ],
]);
rows('check-misspelt', [
  ['recheck throttle returns after 1 day | check throttle returns ok'],
  ['check «throttle returns» ok', 'Did you mean throttle return?', 'check throttle return ok'],
]);
