import { isEmpty, runSpan, runText } from '../../grammar/index.ts';
import { EVERY_KIND } from './kinds.ts';
import { NO_PROBLEMS, rule } from './rule.ts';

export const unreadable = rule({
  code: 'unreadable',
  severity: 'error',
  title: 'Something on the line cannot be read',
  why: 'What cannot be placed is kept but counts for nothing. The rest of the line is read as if it were not there.',
  standing: 'notation',
  good: 'session 2026-05-02\n  initial 9 deg\n',
  bad: 'session 2026-05-02\n  initial 9 deg : 7\n',
  on: EVERY_KIND,
  formed: ({ syntax }) => !isEmpty(syntax.stray),
  check({ line }) {
    const { stray } = line.syntax;
    if (isEmpty(stray)) return NO_PROBLEMS;
    const text = runText(line, stray);
    return [
      {
        span: runSpan(line, stray),
        message: `"${text}" cannot be read here, and what stands before it does not need it.`,
      },
    ];
  },
});
