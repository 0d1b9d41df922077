import { specName } from '../../model/entry/spec-names.ts';
import { outsideSpecs } from '../lib/spec-values.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const torqueOutsideSpec = rule({
  code: 'torque-outside-spec',
  severity: 'warning',
  title: 'A fastener not tightened as specified',
  why: "Over its torque a fastener may be stretched; under it, it may come loose. The maker's figure decides; replace a bolt that was stretched, do not loosen it and use it again.",
  standing: 'notation',
  good: 'specs\n  head bolts torque 58..62 lb-ft source "manual, table 4"\nsession 2026-05-02\n  head bolts torque 60 lb-ft\n',
  bad: 'specs\n  head bolts torque 58..62 lb-ft source "manual, table 4"\nsession 2026-05-02\n  head bolts torque 72 lb-ft\n',
  on: ['setting', 'reading'],
  about: ({ dimension }) => dimension === 'torque',
  check(entry, context) {
    if (context.before.specs.size === 0) return NO_PROBLEMS;
    return outsideSpecs(
      entry,
      context,
      (value, past, spec) => `${value} is ${past} the ${specName(spec)} specified`,
    );
  },
});
