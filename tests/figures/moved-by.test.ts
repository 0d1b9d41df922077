/** Which changes can have moved a reading: jets and timing move no compression, nor valves the fuel pressure. */
import { testFigures } from '../harness/figures.ts';

testFigures([
  {
    say: 'what cannot move a reading is no change for it',
    book: `session 2026-05-02
    main jet 58
    valve lash 0.012 in
    compression 140 141 138 142 psi
session 2026-05-03
    main jet 60
    valve lash 0.014 in
    compression 142 143 140 144 psi`,
    figure: 'compression, against 2026-05-02',
    text: [
      `2 psi more after one change, valve lash 0.012 in -> 0.014 in: +1000 psi per in; scatter not known, so nothing can be credited on one reading`,
    ],
  },
  {
    say: 'what can move it is confounded as ever',
    book: `session 2026-05-02
    fuel regulator 4 psi
    float level 7/16 in
    valve lash 0.012 in
    fuel pressure 4 psi
session 2026-05-03
    fuel regulator 3 psi
    float level 3/8 in
    valve lash 0.014 in
    fuel pressure 3 psi`,
    figure: 'fuel pressure, against 2026-05-02',
    text: ['1 psi less, but 2 changes (fuel regulator, float level): confounded, so credited to none'],
  },
  {
    say: 'what the engine itself is may move anything',
    book: `engine
    bore 86 mm
session 2026-05-02
    compression 140 141 138 142 psi
engine
    bore 87 mm
session 2026-05-03
    compression 142 143 140 144 psi`,
    figure: 'compression, against 2026-05-02',
    text: [
      '2 psi more after one change, bore 86 mm -> 87 mm; scatter not known, so nothing can be credited on one reading',
    ],
  },
]);
