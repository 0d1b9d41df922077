import { specName } from '../model/specs.ts';
import { NO_PROBLEMS, rule } from './rule.ts';
import { outsideSpecs } from './spec-values.ts';

export const outsideSpec = rule({
  code: 'outside-spec',
  severity: 'information',
  title: 'A value that is not the specified one',
  why: 'The section "specs" says what the maker gives. A tuner may mean another value; one that is not meant is found here. The maker\'s own figure overrules both.',
  standing: 'notation',
  good: 'specs\n  plug gap 0.024..0.026 in\nsession 2026-05-02\n  plug gap 0.025 in\n',
  bad: 'specs\n  plug gap 0.024..0.026 in\nsession 2026-05-02\n  plug gap 0.035 in\n',
  on: ['setting', 'reading'],
  about: ({ dimension }) => dimension !== 'torque',
  check(entry, context) {
    if (context.before.specs.size === 0) return NO_PROBLEMS;
    return outsideSpecs(
      entry,
      context,
      (value, past, spec) => `${entry.quantity.name} ${value} is ${past} the specified ${specName(spec)}`,
    );
  },
});
