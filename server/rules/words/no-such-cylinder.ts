import { KIND } from '../../../grammar/index.ts';
import { cylindersOf } from '../../analysis/engine/engine-facts.ts';
import { QUANTITY_KINDS } from '../lib/kinds.ts';
import { problemsIn, rule } from '../rule.ts';

export const noSuchCylinder = rule({
  code: 'no-such-cylinder',
  severity: 'warning',
  title: 'A cylinder that the engine does not have',
  why: 'Cylinders are numbered from 1 to the number given in the section "engine".',
  standing: 'notation',
  good: 'engine\n  cylinders 4\nsession 2026-05-02\n  plug #4 "sooty, wet"\n',
  bad: 'engine\n  cylinders 4\nsession 2026-05-02\n  plug #5 "sooty, wet"\n',
  on: QUANTITY_KINDS,
  formed: ({ kinds }) => kinds.includes(KIND.Cylinder),
  check({ statements: said }, { before }) {
    return problemsIn(said, ({ place }) => {
      if (place?.cylinder === undefined) return [];
      const engine = cylindersOf(before);
      if (place.cylinder > 0 && place.cylinder <= (engine?.count ?? Number.POSITIVE_INFINITY)) return [];
      const has = engine
        ? `the engine has ${engine.count}, #1 to #${engine.count}`
        : 'cylinders are numbered from #1';
      return [
        {
          span: place.span,
          message: `There is no cylinder #${place.cylinder}: ${has}.`,
          related: engine ? [{ origin: engine.by, message: 'Number of cylinders' }] : [],
        },
      ];
    });
  },
});
