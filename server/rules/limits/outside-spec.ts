import { specName } from '../../model/entry/spec-names.ts';
import { outsideSpecs } from '../lib/spec-values.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const outsideSpec = rule({
  code: 'outside-spec',
  severity: 'information',
  title: 'A value that differs from the specification',
  why: 'The section "specs" holds what the maker specifies. A tuner may choose another value on purpose; this finds the one that was not. The maker\'s own figure overrules both.',
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
