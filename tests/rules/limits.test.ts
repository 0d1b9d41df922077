/** The notebook's own limits and targets, and totals held to them. */
import { rows } from './found.ts';

const CURVE = 'mechanical 0 deg @ 900 rpm, 22 deg @ 3200 rpm';

rows(
  'over-limit',
  [
    ['session 2026-05-02 | water «204 F»', "over the notebook's own limit, <= 195 F"],
    ['session 2026-05-02 | water «96 C»', '<= 91 C'],
    ['session 2026-05-02 | water «190..200 F»'],
    ['session 2026-05-02 | oil pressure «8 psi»', 'under'],
    ['session 2026-05-02 | idle «910 rpm» in drive', '<= 900 rpm'],
    ['session 2026-05-02 | initial 9 deg | initial «+4 deg»', 'initial 13 deg is over'],
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
    [`session 2026-05-02 | initial 14 deg | «${CURVE}»`, 'total is now 36 deg'],
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
    'total is 36 deg already, over this limit, <= 34 deg: 14 deg + 22',
  ],
  [`${CURVE} | initial 14 deg | limits | total «34 deg»`],
  [`${CURVE} | initial 14 deg | limits | total «<= 24 deg @ 2000 rpm»`, 'total is 24.5 deg already'],
  [`${CURVE} | initial 14 deg | limits | total <= 34 deg @ 2000 rpm`],
  [`${CURVE} | limits | total <= 34 deg`],
  ['initial 14 deg | limits | initial «12 deg»', 'initial is 14 deg already'],
  ['initial 14 deg | initial -3 deg | limits | initial 12 deg'],
  ['initial +14 deg | limits | initial 12 deg'],
  ['initial 14 deg | limits | initial ~14 deg'],
  [
    'mixture left 1 turn, right 2 1/2 turns | limits | mixture «<= 2 turns»',
    'mixture right is 2 1/2 turns already',
  ],
  ['mixture left 1 turn, right 2 1/2 turns | limits | mixture left <= 2 turns'],
  ['mixture 2 1/2 turns | limits | mixture «left <= 2 turns»'],
  ['water 204 F | limits | water <= 195 F'],
  ['fuel regulator 5 psi | limits | fuel regulator «<= 0.3 bar»', 'fuel regulator is 5 psi already'],
  ['fuel regulator 5 psi | limits | fuel regulator <= 4 psi hot'],
  ['fuel regulator 5 psi | limits | fuel regulator <= 4 psi ; meant: limit-passed-already'],
]);
rows('limit-passed-already', [
  [
    `${CURVE} | initial 14 deg | use «shop-limits.tappet»`,
    'total is 36 deg already, over this limit, <= 34 deg',
  ],
  [`${CURVE} | initial 12 deg | use shop-limits.tappet`],
  [
    `${CURVE} | initial 14 deg | limits | total «<= 34 deg» | use shop-limits.tappet ; meant: limit-passed-already`,
  ],
]);
rows('limit-passed-already', [['total <= 34 deg | session 2026-05-02 | initial 40 deg']], 'limits');

rows('target-not-met-yet', [
  [`${CURVE} | targets | all in «2600..3000 rpm»`, 'all in is 3200 rpm now, above this target'],
  [`${CURVE} | targets | all in 2600..3400 rpm`],
  [`initial 6 deg | ${CURVE} | targets | total «32..34 deg @ 3200 rpm»`, '28 deg now, below'],
  ['idle 920 rpm in neutral | targets | idle 800..850 rpm in neutral'],
  ['idle screw 2 turns | targets | idle screw «1 turn»', 'idle screw is 2 turns now, above'],
]);

rows('total-over-usual', [
  // TM 10-3930-623-12 par. 4-21: some engines use as much as 42 degrees of advance at high speed.
  [`${CURVE} | «initial 20.5 deg»`, 'over the usual 42 deg (published: TM 10-3930-623-12'],
  [`${CURVE} | initial 20 deg`],
  // A cruise total is rarely over 52 deg: common practice, no source.
  [
    `${CURVE} | initial 12 deg | «vacuum advance 0 deg @ 4 inHg, 20 deg @ 12 inHg, manifold»`,
    'cruise total is now 54 deg, over the usual 52 deg (common practice, no source',
  ],
  [`limits | total <= 45 deg | session 2026-05-02 | ${CURVE} | initial 22 deg`],
]);

rows(
  'misses-target',
  [
    ['session 2026-05-02 | idle «920 rpm» in neutral', 'above'],
    ['session 2026-05-02 | idle «700 rpm» in neutral', 'below'],
    [`session 2026-05-02 | «${CURVE}»`, 'all in is now 3200 rpm, above'],
    ['session 2026-05-02 | idle 820 rpm in neutral'],
    ['session 2026-05-02 | idle 700 rpm in drive'],
    ['session 2026-05-02 | idle ~850 rpm in neutral'],
    ['session 2026-05-02 | total 30 deg @ 2000 rpm'],
    ['session 2026-05-02 | total «30 deg» @ 3200 rpm', '32..34 deg'],
  ],
  'targets\n  idle 800..850 rpm in neutral\n  all in 2600..3000 rpm\n  total 32..34 deg @ 3200 rpm',
);
