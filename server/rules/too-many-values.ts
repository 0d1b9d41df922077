import { problemsIn, rule } from './rule.ts';
import { amountsOf } from './said.ts';

export const tooManyValues = rule({
  code: 'too-many-values',
  severity: 'warning',
  title: 'Several values where there is one',
  why: 'What the engine has once takes one value. Of several, nobody can tell which holds, so none is used.',
  standing: 'notation',
  good: 'session 2026-05-02\n  initial 9 deg\n',
  bad: 'session 2026-05-02\n  initial 9 deg 12 deg\n',
  outranks: ['outside-band', 'ten-times', 'units-mixed-up', 'degrees-mixed-up', 'missing-unit'],
  on: ['setting', 'reading', 'limit', 'target'],
  check({ quantity, said, line }) {
    if (quantity.form === 'text' || quantity.form === 'several' || quantity.places?.length) return [];
    if (quantity.kind === 'fact') return [];
    return problemsIn(said, ({ values, points, place }) => {
      const amounts = amountsOf(values);
      const [first, second] = points.length > 0 ? [points[0]?.value, amounts[0]] : amounts;
      if (!first || !second || place) return [];
      const together = line.text.slice(first.span.to, second.span.from).trim() === '';
      const hint = together
        ? 'Anything between two values is written 450..580.'
        : 'Give each a line of its own.';
      return [
        { span: second.span, message: `${quantity.name} takes one value, and this is one more. ${hint}` },
      ];
    });
  },
});
