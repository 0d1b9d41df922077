import { LONGEST_LINE } from '../../../grammar/index.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const lineTooLong = rule({
  code: 'line-too-long',
  severity: 'error',
  title: 'A line is too long to be read',
  why: 'A line holds one fact. One this long is nearly always damage, or a file of another kind; it is kept as it is and not read.',
  standing: 'notation',
  good: 'session 2026-05-02\n  note hunts a little once hot\n',
  bad: `session 2026-05-02\n  note ${'hunts '.repeat(LONGEST_LINE / 6)}\n`,
  on: ['blank'],
  check: ({ line }) =>
    line.tooLong
      ? [
          {
            span: { from: 0, to: line.text.length },
            message: `This line is ${line.text.length} characters; lines over ${LONGEST_LINE} are not read. Split it.`,
          },
        ]
      : NO_PROBLEMS,
});
