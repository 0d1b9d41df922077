import { valueText } from '../model/describe.ts';
import { specFor, specName } from '../model/specs.ts';
import { NO_PROBLEMS, rule } from './rule.ts';
import { besideSpec } from './spec-values.ts';

export const torqueOutsideSpec = rule({
  code: 'torque-outside-spec',
  severity: 'warning',
  title: 'A fastener not tightened as specified',
  why: "A fastener over its torque may be stretched, one under it may come loose. The maker's figure holds; a bolt that was stretched is replaced, not loosened and used again.",
  standing: 'notation',
  good: 'specs\n  head bolts torque 58..62 lb-ft source "manual, table 4"\nsession 2026-05-02\n  head bolts torque 60 lb-ft\n',
  bad: 'specs\n  head bolts torque 58..62 lb-ft source "manual, table 4"\nsession 2026-05-02\n  head bolts torque 72 lb-ft\n',
  on: ['setting', 'reading'],
  check({ quantity, said }, { before: { specs } }) {
    if (specs.size === 0 || quantity.dimension !== 'torque') return NO_PROBLEMS;
    return said.flatMap((each) => {
      const spec = specFor(specs, quantity, each);
      return spec
        ? besideSpec(spec, each, quantity).map(({ value, past, wanted }) => ({
            span: value.span,
            message: `${valueText(value, quantity.unit)} is ${past} the ${specName(spec)} specified, ${wanted} (${spec.source ?? 'the notebook does not say from where'}).`,
            related: [{ origin: spec.by, message: 'the specification' }],
          }))
        : [];
    });
  },
});
