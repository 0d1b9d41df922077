import { ofDay } from '../lib/limit-text.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const sameNameTwice = rule({
  code: 'same-name-twice',
  severity: 'warning',
  title: 'A todo or fault whose name is already in use',
  why: 'The name is what "done" refers to. Only the last entry under a name is kept, so the first would be lost.',
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
        message: `"${id}" is already open, as the ${open.word}${ofDay(open.by)}: ${open.text}. Give this one another name.`,
        related: [{ origin: open.by, message: `Open ${open.word}` }],
      },
    ];
  },
});
