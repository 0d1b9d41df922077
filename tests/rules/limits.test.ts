/** The notebook's own limits and targets, and totals held to them. */
import { rows } from './found.ts';

const CURVE = 'mechanical 0 deg @ 900 rpm, 22 deg @ 3200 rpm';

rows(
  'over-limit',
  [
    ['session 2026-05-02 | water «204 F»', 'Water 204 F is over your limit of 195 F.'],
    ['session 2026-05-02 | water «96 C»', 'Water 96 C is over your limit of 91 C.'],
    ['session 2026-05-02 | water «190..200 F»'],
    ['session 2026-05-02 | oil pressure «8 psi»', 'under'],
    ['session 2026-05-02 | idle «910 rpm» in drive', 'Idle 910 rpm is over your limit of 900 rpm.'],
    ['session 2026-05-02 | initial 9 deg | initial «+4 deg»', 'Initial 13 deg is over your limit of 12 deg.'],
    ['session 2026-05-02 | initial «13 deg»'],
    ['session 2026-05-02 | water 195 F'],
    ['session 2026-05-02 | water > 180 F'],
    ['session 2026-05-02 | water 204 psi'],
    ['session 2026-05-02 | idle 910 rpm in neutral'],
    ['session 2026-05-02 | initial +4 deg'],
  ],
  'limits\n  water <= 195 F\n  oil pressure >= 10 psi\n  idle <= 900 rpm in drive\n  initial 12 deg',
);
rows('over-limit', [['water 204 F | limits | water <= 195 F']]);

rows(
  'total-over-limit',
  [
    [`session 2026-05-02 | ${CURVE} | «initial 14 deg»`, '14 deg + 22 deg = 36 deg'],
    [
      `session 2026-05-02 | initial 14 deg | «${CURVE}»`,
      'Total is now 36 deg, over your limit of 34 deg: 14 deg + 22 deg = 36 deg.',
    ],
    [`session 2026-05-02 | ${CURVE} | initial 9 deg | «initial +5 deg»`],
    [`session 2026-05-02 | initial 14 deg | «mechanical 11 deg @ 1600 rpm, distributor»`],
    [`session 2026-05-02 | ${CURVE} | «initial 14 deg» | vacuum source ported`],
    [`session 2026-05-02 | ${CURVE} | initial 12 deg`],
    ['session 2026-05-02 | initial 14 deg'],
    [
      `parts | distributor old "bushed" | session 2026-05-02 | fit distributor old | ${CURVE} | «initial 14 deg» | session 2026-05-03 | fit distributor new | initial 5 deg | session 2026-05-04 | «fit distributor old»`,
    ],
  ],
  'limits\n  total <= 34 deg',
);

rows('limit-passed-already', [
  [
    `${CURVE} | initial 14 deg | limits | total «<= 34 deg»`,
    'Total is already 36 deg, over this limit of 34 deg: 14 deg + 22 deg = 36 deg.',
  ],
  [`${CURVE} | initial 14 deg | limits | total «34 deg»`],
  [
    `${CURVE} | initial 14 deg | limits | total «<= 24 deg @ 2000 rpm»`,
    'Total is already 24.5 deg, over this limit of 24 deg: 14 deg + 10.5 deg = 24.5 deg.',
  ],
  [`${CURVE} | initial 14 deg | limits | total <= 34 deg @ 2000 rpm`],
  [`${CURVE} | limits | total <= 34 deg`],
  ['initial 14 deg | limits | initial «12 deg»', 'Initial is already 14 deg, over this limit of 12 deg.'],
  ['initial 14 deg | initial -3 deg | limits | initial 12 deg'],
  ['initial +14 deg | limits | initial 12 deg'],
  ['initial 14 deg | limits | initial ~14 deg'],
  [
    'mixture left 1 turn, right 2 1/2 turns | limits | mixture «<= 2 turns»',
    'Mixture right is already 2 1/2 turns, over this limit of 2 turns.',
  ],
  ['mixture left 1 turn, right 2 1/2 turns | limits | mixture left <= 2 turns'],
  ['mixture 2 1/2 turns | limits | mixture «left <= 2 turns»'],
  ['water 204 F | limits | water <= 195 F'],
  [
    'fuel regulator 5 psi | limits | fuel regulator «<= 0.3 bar»',
    'Fuel regulator is already 5 psi, over this limit of 4.351 psi.',
  ],
  ['fuel regulator 5 psi | limits | fuel regulator <= 4 psi hot'],
  ['fuel regulator 5 psi | limits | fuel regulator <= 4 psi ; meant: limit-passed-already'],
]);
rows('limit-passed-already', [
  [
    `${CURVE} | initial 14 deg | use «shop-limits.tappet»`,
    'Total is already 36 deg, over this limit of 34 deg: 14 deg + 22 deg = 36 deg.',
  ],
  [`${CURVE} | initial 12 deg | use shop-limits.tappet`],
  [
    `${CURVE} | initial 14 deg | limits | total «<= 34 deg» | use shop-limits.tappet ; meant: limit-passed-already`,
  ],
]);
rows('limit-passed-already', [['total <= 34 deg | session 2026-05-02 | initial 40 deg']], 'limits');

rows('target-not-met-yet', [
  [`${CURVE} | targets | all in «2600..3000 rpm»`, 'All in is now 3200 rpm, above this target: 3200 rpm.'],
  [`${CURVE} | targets | all in 2600..3400 rpm`],
  [
    `initial 6 deg | ${CURVE} | targets | total «32..34 deg @ 3200 rpm»`,
    'Total is now 28 deg, below this target: 6 deg + 22 deg = 28 deg.',
  ],
  ['idle 920 rpm in neutral | targets | idle 800..850 rpm in neutral'],
  ['idle screw 2 turns | targets | idle screw «1 turn»', 'Idle screw is now 2 turns, above this target.'],
]);

rows('total-over-usual', [
  // TM 10-3930-623-12 par. 4-21: some engines use as much as 42 degrees of advance at high speed.
  [
    `${CURVE} | «initial 20.5 deg»`,
    'Total is now 42.5 deg, over the usual 42 deg: 20.5 deg + 22 deg = 42.5 deg (published: TM 10-3930-623-12 par. 4-21: some engines use as much as 42 degrees at high speed; the low end is common practice).',
  ],
  [`${CURVE} | initial 20 deg`],
  // A cruise total is rarely over 52 deg: common practice, no source.
  [
    `${CURVE} | initial 12 deg | «vacuum advance 0 deg @ 4 inHg, 20 deg @ 12 inHg, manifold»`,
    'Cruise total is now 54 deg, over the usual 52 deg: 12 deg + 22 deg + 20 deg = 54 deg (common practice, no source: cruise total is rarely over 52 deg).',
  ],
  [`limits | total <= 45 deg | session 2026-05-02 | ${CURVE} | initial 22 deg`],
]);

rows(
  'misses-target',
  [
    ['session 2026-05-02 | idle «920 rpm» in neutral', 'above'],
    ['session 2026-05-02 | idle «700 rpm» in neutral', 'below'],
    [`session 2026-05-02 | «${CURVE}»`, 'All in is now 3200 rpm, above your target of 2600..3000 rpm.'],
    ['session 2026-05-02 | idle 820 rpm in neutral'],
    ['session 2026-05-02 | idle 700 rpm in drive'],
    ['session 2026-05-02 | idle ~850 rpm in neutral'],
    ['session 2026-05-02 | total 30 deg @ 2000 rpm'],
    ['session 2026-05-02 | total «30 deg» @ 3200 rpm', '32..34 deg'],
  ],
  'targets\n  idle 800..850 rpm in neutral\n  all in 2600..3000 rpm\n  total 32..34 deg @ 3200 rpm',
);
