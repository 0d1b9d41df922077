import { QUANTITY_KINDS } from '../lib/kinds.ts';
import { rule } from '../rule.ts';

export const directionInWords = rule({
  code: 'direction-in-words',
  severity: 'warning',
  title: '"Advanced" or "retarded" where it has no effect',
  why: 'For timing these words can mean how far it was moved, or which side of top dead centre it is on. In a session they are read where only one of the two can be meant; elsewhere nothing of the line is in force.',
  standing: 'notation',
  good: 'session 2026-05-02\n  initial 9 deg\n  initial -2 deg\n',
  bad: 'targets\n  initial 2 deg retarded\n',
  outranks: ['unknown-place'],
  on: QUANTITY_KINDS,
  about: ({ dimension, words }) => dimension === 'angle' && !words?.includes('retarded'),
  check: ({ statements: said }) =>
    said.flatMap(({ words }) =>
      words
        .filter(({ text }) => DIRECTION.test(text))
        .map(({ text, span }) => ({
          span,
          message: `"${text}" may be a change or a side of top dead centre, so nothing of this line is in force. Write a change with a sign (-2 deg), or timing after top dead centre as 2 deg ATDC.`,
        })),
    ),
});

const DIRECTION = /^(?:advanced|retarded)$/i;
