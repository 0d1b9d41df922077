import { KIND } from '../../grammar/index.ts';
import { rule } from './rule.ts';
import { amountsOf } from './said.ts';

export const tooManyValues = rule({
  code: 'too-many-values',
  severity: 'warning',
  title: 'Several values where there is one',
  why: 'What the engine has once takes one value. Of several, nobody can tell which holds, so none is used.',
  standing: 'notation',
  good: 'session 2026-05-02\n  initial 9 deg\n',
  bad: 'session 2026-05-02\n  initial 9 deg 12 deg\n',
  on: ['setting', 'reading', 'limit', 'target'],
  check({ quantity, said, line }) {
    if (quantity.form === 'text' || quantity.form === 'several' || quantity.places?.length) return [];
    if (quantity.kind === 'fact') return [];
    return said.flatMap(({ values, points, place }) => {
      const amounts = amountsOf(values);
      const [first, second] = points.length > 0 ? [points[0]?.value, amounts[0]] : amounts;
      if (!first || !second || place) return [];
      const range = !line.tokens.kinds.includes(KIND.Dots) && amounts.length === 2;
      const hint = range ? ' For anything between two values, write them as 450..580.' : '';
      return [
        { span: second.span, message: `${quantity.name} takes one value, and this is one more.${hint}` },
      ];
    });
  },
});
