import { valueText } from '../../model/entry/as-written.ts';
import { keyOf } from '../../model/state/state.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const specDiffers = rule({
  code: 'spec-differs',
  severity: 'warning',
  title: 'Specified twice with different figures',
  why: 'The later line holds from there on. Two figures for one thing are a mistake, or are for two things that need two names.',
  standing: 'notation',
  good: 'specs\n  head bolts torque 58..62 lb-ft\n  rod bolts torque 30..34 lb-ft\n',
  bad: 'specs\n  head bolts torque 58..62 lb-ft\n  head bolts torque 30..34 lb-ft\n',
  on: ['spec'],
  check({ name, nameSpan, quantity, values }, { before: { specs } }) {
    const other = specs.get(keyOf(name, quantity.name));
    const text = (each: typeof values) => each.map((value) => valueText(value, quantity.unit)).join(' ');
    if (!other || other.values.length === 0 || values.length === 0 || text(other.values) === text(values))
      return NO_PROBLEMS;
    return [
      {
        span: nameSpan,
        message: `${name}: ${text(other.values)} earlier, ${text(values)} here; this one holds from here on.`,
        related: [{ origin: other.by, message: 'Specification above' }],
      },
    ];
  },
});
