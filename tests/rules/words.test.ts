/** Words that are not known, and what was probably meant. */
import { rows } from './found.ts';

rows('unknown-word', [
  ['«mxture» left 1 turn', 'Did you mean mixture?', 'mixture left 1 turn'],
  ['«sesion» 2026-05-03', 'Did you mean session?', 'session 2026-05-03'],
  ['«retorque head after» 500 km', 'recheck head bolts after 500 km'],
  ['idle 850 rpm'],
  ['09:30'],
]);
for (const section of ['ports', 'parts', 'words', 'specs', 'limits', 'engine'])
  rows(
    'unknown-word',
    [
      ['«sesion» 2026-05-03 10:00 Leaner', 'Did you mean session?', 'session 2026-05-03 10:00 Leaner'],
      [
        '«Sessions» 2026-05-03',
        'Until it is fixed, the lines below belong to the section above.',
        'session 2026-05-03',
      ],
    ],
    section,
  );
rows('unknown-word', [['session rear capped'], ['season capped'], ['mansion 2026-05-03']], 'ports');
rows('port-unsaid', [['sesion 2026-05-03'], ['«mansion» 2026-05-03']], 'ports');
rows('own-word-incomplete', [['sesion 2026-05-03']], 'words');
rows(
  'unknown-word',
  [['«head bolts» 58 F', 'what is specified'], ['head bolts 58 lb-ft'], ['head bolts torque 58 lb-ft']],
  'specs',
);
rows(
  'unknown-word',
  [
    ['session 2026-05-02 | flap gap 3 mm'],
    ['session 2026-05-02 | «flap gpa» 3 mm', 'Did you mean flap gap?', 'session 2026-05-02 | flap gap 3 mm'],
  ],
  'words\n  flap gap: setting, 2..5 mm',
);

rows('unknown-place', [
  ['mixture «lefft» 1 turn', 'Did you mean left?', 'mixture left 1 turn'],
  ['tube «somewhere» 400 F', 'not a known place'],
  ['mixture left 1 turn, right 1 1/4 turns'],
  ['tube hot 400 F'],
  ['plug #4 sooty'],
  ['idle 850 rpm steady'],
]);

rows('direction-in-words', [
  ['timing 2 deg «advanced» @ 900 rpm'],
  ['initial 2 deg ATDC'],
  ['cam timing 4 deg retarded'],
  ['idle 850 rpm retarded'],
]);
rows('unknown-place', [['initial retarded 2 deg'], ['cam timing retarded 4 deg']]);

rows('place-after-value', [
  ['plug gap «0.035 in #3»', 'Write #3 0.035 in.', 'plug gap #3 0.035 in'],
  [
    'valve lash «.012 in intake .020 in exhaust»',
    '"intake" comes after its value, so nothing of this line is in force.',
  ],
  ['mixture left 1 1/4 turns, right 1 1/2 turns'],
  ['idle 850 rpm left running'],
  ['tube 388 F all'],
]);

rows('misspelt-word', [
  ['idle 850 rpm in «nuetral»', 'Did you mean neutral?', 'idle 850 rpm in neutral'],
  ['vacuum advance 12 deg, «manifld»', 'Did you mean manifold?', 'vacuum advance 12 deg, manifold'],
  ['knock «heavvy»', 'Did you mean heavy?', 'knock heavy'],
  ['idle 850 rpm in neutral'],
  ['idle 850 rpm a little rough'],
  ['tube 400 F probe, loads of smoke'],
  ['plug #4 tan and dry'],
]);

rows('unknown-flag', [
  ['fault steering: binds «[saftey]»', '[safety]', 'fault steering: binds [safety]'],
  ['fault steering: binds «[urgent]»', '[urgent] has no effect.'],
  ['fault steering: binds [safety]'],
  ['fault steering: binds [Safety]'],
]);

rows('nothing-said', [
  ['«todo»'],
  ['todo: new leads'],
  [
    'keep | session 2026-05-03 | «revert to last keep»',
    'The last session marked to keep is 2026-05-02.',
    'keep | session 2026-05-03 | revert to 2026-05-02',
  ],
  ['«revert»', 'Write the date to go back to.'],
  ['«done»'],
  ['«fit»', 'This fit is empty.'],
  ['«check»'],
  ['«check ok»'],
  ['«photo»', 'path'],
  ['«note»'],
  ['«09:30»', 'Nothing follows the time.'],
  ['«trial»', 'what is tried'],
  ['«trial feed restrictor ->»', 'what it should change'],
  ['«recheck»'],
  ['«revert»', 'Write the date to go back to.'],
  ['«revert to»'],
  ['keep'],
  ['todo strainer'],
]);

rows('no-value', [
  ['«initial»', 'a number (deg)'],
  ['«initial nine»'],
  ['«initial "nine"»'],
  ['«mixture left»'],
  ['«mechanical»', 'points such as 8 deg @ 1500 rpm'],
  ['«weather fine»', 'numbers with their units'],
  ['«power valve»'],
  ['power valve plugged'],
  ['vacuum advance plugged'],
  ['plug #4 sooty'],
]);
rows(
  'part-with-value',
  [
    ['«initial 9 deg»', 'Write what was set or read under a session, or a description in quotes.'],
    ['carb twin "38 mm"'],
  ],
  'parts',
);
rows('no-value', [['«firing order»', 'joined by hyphens'], ['firing order 1-2']], 'engine');

rows(
  'own-word-incomplete',
  [
    ['«flap gap» 2..5 mm', 'Is "flap gap" a setting or a reading? Write one of the two after it.'],
    ['«flap gap»'],
    ['flap gap: setting, 2..5 mm'],
    ['flap gap: reading'],
  ],
  'words',
);
