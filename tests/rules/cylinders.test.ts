/** What the engine has, and what it has not. */
import { rows } from './found.ts';

const FOUR = 'engine\n  cylinders 4\n  bank left 1-2\nsession 2026-05-02';

rows(
  'no-such-cylinder',
  [['plug «#5» sooty', 'the engine has 4, #1 to #4'], ['plug «#0» sooty'], ['tube 400 F'], ['plug #4 sooty']],
  FOUR,
);
rows('no-such-cylinder', [
  ['plug #12 sooty'],
  ['plug «#0» sooty', 'There is no cylinder #0: cylinders are numbered from #1.'],
]);

rows('wrong-place', [
  ['initial «left» 9 deg', 'once for the whole engine'],
  ['initial «#3» 9 deg'],
  ['plug gap «secondary» 0.035 in', 'for each cylinder'],
  ['mixture left 1 turn, right 1 turn'],
  ['tube #3 400 F'],
  ['valve lash intake 0.012 in'],
  ['mixture primary left 1 turn'],
]);

rows(
  'list-length',
  [
    ['tube «388 401 384 F»', '3 values for 4 cylinders'],
    ['tube «388 401 384 226 300 F»'],
    ['compression «150 148 psi»'],
    ['tube left «388 401 384 F»', '3 values for 2 cylinders'],
    ['tube left 388 401 F'],
    ['tube right 388 401 384 F'],
    ['tube 388 401 384 226 F'],
    ['tube 388 F'],
    ['tube #3 388 390 F'],
    ['main jet 120 130'],
    ['valve lash 12 12 13 12 14 14 14 14 thou'],
  ],
  FOUR,
);
rows('list-length', [['tube 388 401 384 F']]);

rows(
  'firing-order',
  [
    ['firing order «1-3-4-3»', 'Cylinder 3 appears twice in the firing order.'],
    ['firing order «1-3-4-5»', 'names cylinder 5'],
    ['firing order «1-3-2»', 'The firing order leaves out cylinder 4, of 4 in all.'],
    [
      'firing order «1342»',
      'Join the cylinders of a firing order with hyphens, such as 1-3-4-2.',
      'firing order 1-3-4-2',
    ],
    [
      'firing order «1 3 4 2»',
      'Join the cylinders of a firing order with hyphens, such as 1-3-4-2.',
      'firing order 1-3-4-2',
    ],
    ['firing order 1-3-4-2'],
    ['firing order 1-3-4-2 | «cylinders 6»', 'The firing order above does not fit 6 cylinders: it has 4.'],
    ['bank left 1-3'],
  ],
  'engine\n  cylinders 4',
);
rows('firing-order', [['firing order 1-8-4-3-6-5-7-2'], ['firing order «1-8-4-3-6-5-7»']], 'engine');
