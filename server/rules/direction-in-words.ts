import { QUANTITY_KINDS } from './kinds.ts';
import { rule } from './rule.ts';

export const directionInWords = rule({
  code: 'direction-in-words',
  severity: 'warning',
  title: 'Advanced or retarded, where it counts for nothing',
  why: 'Of timing these words may mean how far it was moved or on which side of top dead centre it is. A remark beside the value is kept as written and changes nothing, so that the totals would be wrong unseen.',
  standing: 'notation',
  good: 'session 2026-05-02\n  initial 9 deg\n  initial -2 deg\n',
  bad: 'session 2026-05-02\n  initial 2 deg retarded\n',
  outranks: ['unknown-place'],
  on: QUANTITY_KINDS,
  about: ({ dimension, words }) => dimension === 'angle' && !words?.includes('retarded'),
  check: ({ said }) =>
    said.flatMap(({ words }) =>
      words
        .filter(({ text }) => DIRECTION.test(text))
        .map(({ text, span }) => ({
          span,
          message: `"${text}" counts for nothing here. How far a setting was moved is written by its sign, such as -2 deg; a mark after top dead centre as 2 deg ATDC.`,
        })),
    ),
});

const DIRECTION = /^(?:advanced|retarded)$/i;
