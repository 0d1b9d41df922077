import { isAmount } from '../../model/entry/amount.ts';
import { keyOf } from '../../model/state/state.ts';
import { problemsIn, rule } from '../rule.ts';

export const changeWithoutStart = rule({
  code: 'change-without-start',
  severity: 'information',
  title: 'A change with no starting value',
  why: 'Changes are added to a value that was written in full once. Without one only the sum of the changes is known, and the totals leave the setting out.',
  standing: 'notation',
  good: 'session 2026-05-02\n  mixture 1 1/2 turns\n  mixture in 1/4 turn\n',
  bad: 'session 2026-05-02\n  mixture in 1/4 turn\n',
  on: ['setting'],
  check: ({ quantity, statements: said }, { before, after }) =>
    problemsIn(said, ({ place, values }) => {
      const change = values.find((value) => isAmount(value) && value.relative && value.interval);
      const key = keyOf(quantity.name, place?.text);
      const setting = after.settings.get(key);
      const was = before.settings.get(key);
      if (!change || !setting || setting.base) return [];
      const name = `${quantity.name}${place ? ` ${place.text}` : ''}`;
      if (!was)
        return [
          {
            span: change.span,
            message: `No earlier value for ${name}, so only the change is recorded. Write the full value once.`,
          },
        ];
      if (was.points.length === 0 && was.values.length < 2) return [];
      return [
        {
          span: change.span,
          message: `One change for several values of ${name} does not give the new value of each, so ${name} is now unknown. Write it in full.`,
        },
      ];
    }),
});
