import { keyOf } from '../../model/state/state.ts';
import { type Problem, problemsIn, rule } from '../rule.ts';

export const overridden = rule({
  code: 'overridden',
  severity: 'hint',
  title: 'Set twice with nothing in between',
  why: 'The first of the two values was never used: nothing was read, run or noted between them in this session. Keep the one that holds; or write down what was seen in between, because that is why it was changed.',
  standing: 'notation',
  good: 'session 2026-05-02\n  initial 9 deg\n  idle 820 rpm in neutral\n  initial 11 deg\n',
  bad: 'session 2026-05-02\n  initial 9 deg\n  initial 11 deg\n',
  isAboutRelated: true,
  on: ['setting'],
  about: ({ traits }) => !traits?.measuredFirst,
  check({ quantity, statements: said, name }, { before, after, where }) {
    return problemsIn(said, ({ place }): readonly Problem[] => {
      const key = keyOf(quantity.name, place?.text);
      const first = before.notYetUsed.get(key);
      // A relative change builds on the first value, which is used then.
      if (!first || after.notYetUsed.get(key)?.ref !== where.ref) return [];
      const what = [quantity.name, place?.text].filter(Boolean).join(' ');
      const message = `${what} is set twice with nothing in between; the first value was never used.`;
      return [
        {
          span: name,
          message,
          related: [
            { origin: first, message: `Never used: ${what} is set again below with nothing in between.` },
          ],
        },
      ];
    });
  },
});
