import { valueText } from '../model/describe.ts';
import { specFor, specName } from '../model/specs.ts';
import { NO_PROBLEMS, rule } from './rule.ts';
import { besideSpec } from './spec-values.ts';

export const outsideSpec = rule({
  code: 'outside-spec',
  severity: 'information',
  title: 'A value that is not the specified one',
  why: 'The section "specs" says what the maker gives. A tuner may mean another value; one that is not meant is found here. The maker\'s own figure overrules both.',
  standing: 'notation',
  good: 'specs\n  plug gap 0.024..0.026 in\nsession 2026-05-02\n  plug gap 0.025 in\n',
  bad: 'specs\n  plug gap 0.024..0.026 in\nsession 2026-05-02\n  plug gap 0.035 in\n',
  on: ['setting', 'reading'],
  check({ quantity, said }, { before: { specs } }) {
    if (specs.size === 0 || quantity.dimension === 'torque') return NO_PROBLEMS;
    return said.flatMap((each) => {
      const spec = specFor(specs, quantity, each);
      return spec
        ? besideSpec(spec, each, quantity).map(({ value, past, wanted }) => ({
            span: value.span,
            message: `${quantity.name} ${valueText(value, quantity.unit)} is ${past} the specified ${specName(spec)}, ${wanted} (${spec.source ?? 'the notebook does not say from where'}).`,
            related: [{ origin: spec.by, message: 'the specification' }],
          }))
        : [];
    });
  },
});
