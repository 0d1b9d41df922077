import { NO_PROBLEMS, rule } from './rule.ts';
import { lineSpan } from './syntax.ts';

export const wantWithoutRows = rule({
  code: 'want-without-rows',
  severity: 'information',
  title: 'A trial that cannot answer yet',
  why: 'Two rows are the least that a line can be laid through; with fewer nobody can say which size gives what is wanted.',
  standing: 'notation',
  good: 'session 2026-05-02\n  trial feed restrictor -> oil pressure\n    1/8 in 12 psi\n    5/32 in 14.5 psi\n    want 13 psi\n',
  bad: 'session 2026-05-02\n  trial feed restrictor -> oil pressure\n    1/8 in 12 psi\n    want 13 psi\n',
  on: ['want'],
  check({ line }, { before }) {
    const rows = before.trial?.rows.size ?? 2;
    if (rows >= 2) return NO_PROBLEMS;
    const had = rows === 0 ? 'no row' : 'one row';
    return [
      {
        span: lineSpan(line),
        message: `The trial has ${had} above this; it takes two to say which size gives that.`,
      },
    ];
  },
});
