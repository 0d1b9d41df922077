/** Work lines: items, checks, parts, trials, changes. */
import { rows } from './found.ts';

const FAULT = 'fault steering: binds [safety]';

rows('road-run-open-fault', [
  [`${FAULT} | «speed 30 mph»`, 'steering (2026-05-02)'],
  [`${FAULT} | «run time 12 s»`],
  [`${FAULT} | «egt 1200 F on the road»`],
  [`${FAULT} | session 2026-05-03 | «speed 30 mph»`],
  [`${FAULT} | done steering | speed 30 mph`],
  [`${FAULT} | idle 850 rpm`],
  ['fault strainer: binds | speed 30 mph'],
]);

rows('road-run-check-due', [
  [
    'idle screw 1 turn | «speed 30 mph»',
    '"throttle return" has not been checked since the work of 2026-05-02',
  ],
  ['fuel line 3/8 in | «speed 30 mph»', 'fuel leaks'],
  ['fuel line 3/8 in | session 2026-05-03 | «speed 30 mph» | run time 12 s | speed 32 mph'],
  ['fuel line 3/8 in | «speed 30 mph» | run time 12 s | fuel line 1/4 in | «speed 32 mph» | speed 33 mph'],
  [`fuel line 3/8 in | «speed 30 mph»${' | note a long day'.repeat(120)} | speed 32 mph`],
  ['fuel line 3/8 in | «speed 30 mph» | fuel line 1/2 in | «speed 32 mph»'],
  [
    'check throttle return bad | «speed 30 mph»',
    '"throttle return" was bad at the last check of 2026-05-02. Fix it and check it again before driving.',
  ],
  ['idle screw 1 turn | check throttle return bad | «speed 30 mph»', 'was bad'],
  ['idle screw 1 turn | check throttle return ok | speed 30 mph'],
  ['idle screw 1 turn | check throttle-return ok | speed 30 mph'],
  ['check throttle return ok | idle screw 1 turn | «speed 30 mph»'],
  ['initial 9 deg | speed 30 mph'],
]);

rows('check-without-answer', [
  ['«check throttle return»', 'End the line with ok or bad'],
  ['check throttle return ok'],
  ['check brakes bad'],
]);
rows('check-misspelt', [
  ['check «throtle return» ok', 'Did you mean throttle return?', 'check throttle return ok'],
  ['check fuel-leaks ok'],
  ['check brakes ok'],
]);

rows('done-nothing-open', [
  ['todo strainer: cable | done «strainr»', 'Did you mean strainer?', 'todo strainer: cable | done strainer'],
  ['done «strainer»', 'Nothing called "strainer" is open; there is no open todo, fault or reminder.'],
  ['todo strainer: cable | done strainer | done «strainer»'],
  ['todo strainer: cable | done Strainer: cleaned'],
  [
    'fault brakes: drag | done «brakes adjusted»',
    'Did you mean brakes: adjusted?',
    'fault brakes: drag | done brakes: adjusted',
  ],
  [
    'todo: new gasket at the rear | done «new gasket»',
    'new gasket at',
    'todo: new gasket at the rear | done new gasket at the rear',
  ],
  ['todo: new gasket at the rear | done new gasket at the rear'],
]);
rows('same-name-twice', [
  ['todo strainer: cable | fault «strainer»: binds', 'the todo of 2026-05-02: cable'],
  ['todo strainer: cable | done strainer | todo strainer: cable again'],
  ['todo strainer: cable | todo hose: brittle'],
]);

rows(
  'unknown-part',
  [
    [
      'session 2026-05-02 | fit «carb sinlge»',
      'Did you mean carb single?',
      'session 2026-05-02 | fit carb single',
    ],
    ['session 2026-05-02 | fit «thingummy»', 'List it under "parts"'],
    ['session 2026-05-02 | fit carb single'],
    ['session 2026-05-02 | fit Carb-Single'],
    ['session 2026-05-02 | fit distributor spare'],
  ],
  'parts\n  carb single "one-barrel"',
);
rows('not-fitted', [
  ['remove «carb twin»', 'no carburettor was fitted by name'],
  ['fit carb single | remove «carb twin»', 'carb single is'],
  ['fit carb twin | remove carb twin'],
]);

rows('change-without-start', [
  ['mixture «in 1/4 turn»', 'No earlier value for mixture, so only the change is recorded.'],
  ['mixture left «in 1/4 turn»', 'No earlier value for mixture left, so only the change is recorded.'],
  ['mixture «in 1/4 turn» | mixture out 1/8 turn'],
  ['mixture 1 turn | mixture left in 1/4 turn'],
  ['initial 9 deg | initial +2 deg'],
  [
    'mechanical 0 deg @ 900 rpm, 22 deg @ 3200 rpm | mechanical «+2 deg»',
    'One change for several values of mechanical does not give the new value of each, so mechanical is now unknown.',
  ],
]);

rows('recheck-without-end', [
  ['«recheck head bolts»', 'When is it due?'],
  ['recheck head bolts after «200»'],
  ['recheck head bolts after «200 psi»'],
  ['recheck head bolts after 200 mi'],
  ['recheck head bolts after 1 heat cycle'],
  ['recheck valve lash after 10 h'],
  ['recheck valve lash after 30 days'],
]);

const TRIAL = 'trial feed restrictor -> oil pressure';
rows('row-outside-trial', [
  ['«1/8 in 12 psi»', 'For a setting or reading, write its word first.'],
  ['«want 13 psi»', 'belongs to a trial'],
  [`${TRIAL} | 1/8 in 12 psi | initial 9 deg | «5/32 in 14.5 psi»`],
  [`${TRIAL} | 1/8 in 12 psi | note oil hot | 5/32 in 14.5 psi`],
]);
rows('row-incomplete', [
  [`${TRIAL} | «1/8 in»`, 'A value is missing: a row gives feed restrictor, then oil pressure.'],
  [`${TRIAL} | 1/8 in 12 psi`],
  [`${TRIAL} | #7 drill 12 psi`],
  ['1/8 in'],
]);
rows('want-without-rows', [
  [`${TRIAL} | «want 13 psi»`, 'No row so far; it takes at least two to estimate a size.'],
  [`${TRIAL} | 1/8 in 12 psi | «want 13 psi»`, 'one row'],
  [`${TRIAL} | 1/8 in 12 psi | 5/32 in 14.5 psi | want 13 psi`],
]);

rows('overridden', [
  [
    'initial 9 deg | «initial» 11 deg',
    'Initial is set twice with nothing in between; the first value was never used.',
  ],
  ['initial 9 deg | idle 850 rpm in neutral | initial 11 deg'],
  ['initial 9 deg | note too little | initial 11 deg'],
  ['initial 9 deg | initial +2 deg'],
  ['initial 9 deg | initial +2 deg | initial 12 deg'],
  ['initial 9 deg | main jet 105 | «initial» 11 deg'],
  ['mixture left 1 turn | mixture right 2 turns'],
  ['mixture left 1 turn, right 1 turn | «mixture» right 2 turns'],
  ['vacuum advance 0 deg @ 4 inHg, 12 deg @ 12 inHg | vacuum advance plugged'],
  ['initial 9 deg | session 2026-05-03 | initial 11 deg'],
  ['points gap 0.012 in | dwell 56 deg | points gap 0.016 in | dwell 50 deg'],
]);
