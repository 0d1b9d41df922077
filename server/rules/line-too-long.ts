import { LONGEST_LINE } from '../../grammar/index.ts';
import { NO_PROBLEMS, rule } from './rule.ts';

export const lineTooLong = rule({
  code: 'line-too-long',
  severity: 'error',
  title: 'A line is too long to be read',
  why: 'One fact stands on one line. A line this long is nearly always damage, or a file of another kind; it is kept as it is and not read.',
  standing: 'notation',
  good: 'session 2026-05-02\n  note hunts a little once hot\n',
  bad: `session 2026-05-02\n  note ${'hunts '.repeat(LONGEST_LINE / 6)}\n`,
  on: ['blank'],
  check: ({ line }) =>
    line.tooLong
      ? [
          {
            span: { from: 0, to: line.text.length },
            message: `The line has ${line.text.length} signs; none longer than ${LONGEST_LINE} is read. Part it into several.`,
          },
        ]
      : NO_PROBLEMS,
});
