import { ofDay } from './limits.ts';
import { NO_PROBLEMS, rule } from './rule.ts';

export const sameNameTwice = rule({
  code: 'same-name-twice',
  severity: 'warning',
  title: 'A todo or fault under a name that is open already',
  why: 'The name is what "done" points at. Under one name only the last is kept, so the first would be lost.',
  standing: 'notation',
  good: 'session 2026-05-02\n  todo strainer: brush the basket out\n  todo hose: replace the brittle one\n',
  bad: 'session 2026-05-02\n  todo strainer: brush the basket out\n  fault strainer: lid weeps\n',
  on: ['item'],
  check({ word, id, idSpan }, { before: { items } }) {
    const open = word === 'done' ? undefined : items.get(id);
    if (!open) return NO_PROBLEMS;
    return [
      {
        span: idSpan,
        message: `"${id}" is open already, as the ${open.word}${ofDay(open.by)}: ${open.text}. Give this one another name.`,
        related: [{ origin: open.by, message: `the ${open.word} that is open` }],
      },
    ];
  },
});
