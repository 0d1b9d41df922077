import { keyOf } from '../model/carry.ts';
import { type Problem, problemsIn, rule } from './rule.ts';

/** What is measured as it was found, and then set: both values belong on the page. */
const MEASURED: ReadonlySet<string> = new Set([
  'points gap',
  'dwell',
  'plug gap',
  'valve lash',
  'float level',
  'tyre pressure',
]);

export const overridden = rule({
  code: 'overridden',
  severity: 'hint',
  title: 'Set again before anything was read',
  why: 'The first of the two values was never in use: in this session nothing was read, run or noted between them. Keep the one that holds; or write down what was seen in between, which is why it was changed.',
  standing: 'notation',
  good: 'session 2026-05-02\n  initial 9 deg\n  idle 820 rpm in neutral\n  initial 11 deg\n',
  bad: 'session 2026-05-02\n  initial 9 deg\n  initial 11 deg\n',
  isAboutRelated: true,
  on: ['setting'],
  about: ({ name }) => !MEASURED.has(name),
  check({ quantity, said, name }, { before, after, where }) {
    return problemsIn(said, ({ place }): readonly Problem[] => {
      const key = keyOf(quantity.name, place?.text);
      const first = before.untried.get(key);
      // A change builds on what was set, and leaves the first line its use.
      if (!first || after.untried.get(key)?.ref !== where.ref) return [];
      const what = [quantity.name, place?.text].filter(Boolean).join(' ');
      const message = `The ${what} is set again before anything was read: the value before this one was never in use.`;
      return [
        {
          span: name,
          message,
          related: [
            { origin: first, message: `Never in use: ${what} is set again below before anything was read.` },
          ],
        },
      ];
    });
  },
});
