import { NO_PROBLEMS, rule } from '../rule.ts';

export const mergeConflict = rule({
  code: 'merge-conflict',
  severity: 'error',
  title: 'A merge was not finished',
  why: 'Two people changed the same lines, and git has left both versions. Which one holds cannot be known, so that neither is in force: one session read twice would change every value that comes after it.',
  standing: 'notation',
  good: 'session 2026-05-02\n  initial 9 deg\n',
  bad: 'session 2026-05-02\n<<<<<<< bench\n  initial 9 deg\n=======\n  initial 9 F\n>>>>>>> yard\n',
  on: ['conflict'],
  check({ mark, line }, { before }) {
    const span = { from: 0, to: line.text.trimEnd().length };
    if (mark === 'begins') return [{ span, message: BOTH_SIDES }];
    return mark === undefined || before.inConflict ? NO_PROBLEMS : [{ span, message: left(line.text) }];
  },
});

const BOTH_SIDES =
  'A merge was not finished: nothing is in force from this line to the next one that begins with >>>>>>>. Choose one side, and delete the other and the lines that begin with <<<<<<<, |||||||, ======= and >>>>>>>.';

const left = (text: string): string =>
  `A merge leaves lines like this one, but none above begins it with <<<<<<<. Look which of the lines around it are meant, and delete this one${text.startsWith('=') ? '; a line to part two pieces of a page goes behind a ";"' : ''}.`;
