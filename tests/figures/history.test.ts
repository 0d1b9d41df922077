import { describe, expect, test } from 'vitest';
import { figuresIn, testFigures } from '../harness/figures.ts';

const PAST = [820, 830, 815, 825, 835].map((rpm) => `  idle ${rpm} rpm in neutral\n`).join('');
const laterLine = (line: string): string => `session 2026-05-02\n${PAST}session 2026-05-03\n  ${line}`;
const NAME = 'idle (neutral) against past readings';

describe('a reading against its own past', () => {
  testFigures([
    {
      say: 'far from it is a question',
      book: laterLine('idle 1180 rpm in neutral'),
      figure: NAME,
      text: [
        '1180 rpm is unlike past readings: 5 earlier readings 815..835 rpm, median 825 rpm. Misread, or has something changed?',
      ],
      source: 'NIST/SEMATECH e-Handbook',
    },
    {
      say: 'near it is like it',
      book: laterLine('idle 840 rpm in neutral'),
      figure: NAME,
      text: ['840 rpm is in line with past readings: 5 earlier readings 815..835 rpm, median 825 rpm'],
    },
    {
      say: 'other conditions have another past',
      book: laterLine('idle 700 rpm in drive'),
      figure: NAME,
      text: [],
    },
    {
      say: 'so has the cold engine',
      book: laterLine('idle 1180 rpm in neutral cold'),
      figure: 'idle (neutral, cold) against past readings',
      text: [],
    },
    {
      say: 'four readings are too few',
      book: laterLine('idle 1180 rpm in neutral').replace('  idle 835 rpm in neutral\n', ''),
      figure: NAME,
      text: [],
    },
  ]);

  test('a line above is not judged by those below', () =>
    expect(
      figuresIn(laterLine('idle 840 rpm in neutral').replace('idle 835 rpm', 'idle 8‸35 rpm'), 'idle').filter(
        ({ topic }) => topic === 'history',
      ),
    ).toEqual([]));
});
