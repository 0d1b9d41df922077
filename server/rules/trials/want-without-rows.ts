import { lineSpan } from '../lib/line-syntax.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const wantWithoutRows = rule({
  code: 'want-without-rows',
  severity: 'information',
  title: 'A trial with too few rows to answer',
  why: 'It takes at least two rows to fit a line; with fewer no size can be estimated.',
  standing: 'notation',
  good: 'session 2026-05-02\n  trial feed restrictor -> oil pressure\n    1/8 in 12 psi\n    5/32 in 14.5 psi\n    want 13 psi\n',
  bad: 'session 2026-05-02\n  trial feed restrictor -> oil pressure\n    1/8 in 12 psi\n    want 13 psi\n',
  on: ['want'],
  check({ line }, { before }) {
    const rows = before.trial?.rows.size ?? 2;
    if (rows >= 2) return NO_PROBLEMS;
    const had = rows === 0 ? 'No row' : 'Only one row';
    return [
      {
        span: lineSpan(line),
        message: `${had} so far; it takes at least two to estimate a size.`,
      },
    ];
  },
});
