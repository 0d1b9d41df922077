/** Law 5, of every answer: any notebook, and below it those that once answered otherwise. */
import fc from 'fast-check';
import { describe, test } from 'vitest';
import { answersAsOpened, edits } from '../fuzz/edits.ts';
import type { Step } from '../fuzz/steps.ts';
import { fixture } from '../harness/fixture.ts';
import { SEED } from './law.ts';

/** A run asks many questions of some five texts. */
const RUNS = Math.max(1, Math.round(Number(process.env.LAW_RUNS ?? 200) / 8));

test('law 5: every answer of an edited notebook is that of its text opened anew', {
  timeout: 600_000,
}, () => {
  fc.assert(edits.property() as fc.IProperty<unknown>, { numRuns: RUNS, seed: SEED });
});

/** Read again without a change. */
const AGAIN: readonly Step[] = [{ act: 'undo', at: 0 }];

describe('law 5: what once hung on where pages end', () => {
  test.each<[what: string, longestPage: number, book: string, steps?: readonly Step[]]>([
    [
      'the reference day has the air at the end of its session',
      2,
      `session 2026-05-01
         weather 10 C, 1013 hPa, 50 %RH
         weather 30 C, 1013 hPa, 50 %RH
       session 2026-05-02
         weather 20 C, 1013 hPa, 50 %RH‸`,
    ],
    [
      'a jet was set in the air at the end of its session',
      3,
      `session 2026-05-01
         main jet 100
         weather 10 C, 1013 hPa, 50 %RH
         weather 30 C, 1013 hPa, 50 %RH
       session 2026-05-02
         weather 20 C, 1013 hPa, 50 %RH‸`,
    ],
    [
      'all places read in the latest session are held to the spec',
      2,
      `specs
         compression 140..160 psi
       session 2026-05-01
         compression #1 130 psi
         compression #2 150 psi‸`,
    ],
    [
      'a jet changed and changed back within a session is passed over',
      1,
      `session 2026-05-01
         main jet 100
       session 2026-05-02
         main jet 105
         main jet 100‸`,
    ],
    [
      'all logs of the latest session are told',
      2,
      `session 2026-05-01
         log first.csv
         log second.csv‸`,
    ],
    [
      'what is written below the cursor does not count among suggestions',
      1,
      `session 2026-05-01
         ‸
         knock none
         knock none`,
    ],
    [
      'a reading is held to the last one however many pages lie between',
      1,
      `session 2026-05-01
         idle 800 rpm${'\n         note runs'.repeat(210)}
         idle 850 rpm‸`,
    ],
    [
      'what differs from the kept session is told after a line beside its keep was changed',
      100,
      `session 2026-05-01
         keep
       session 2026-05-02
         note runs
         fit carb big
         note runs‸`,
      [{ act: 'type', at: 1, text: '' }],
    ],
    [
      'no session is a kept one because lines above it and in it were read again',
      2,
      `session 2026-05-01
         keep
       session 2026-05-02
         note runs
         note well
         idle 800 rpm
       session 2026-05-03‸`,
      [
        { act: 'type', at: 1, text: '' },
        { act: 'replace', at: 4, text: '  note stalls' },
      ],
    ],
  ])('%s', (_, longestPage, book, steps = AGAIN) => {
    const { text, cursor = { line: 0, character: 0 } } = fixture(book);
    const look = { ...cursor, other: 0 };
    answersAsOpened({ text, longestPage, steps: steps.map((step) => ({ step, look })) });
  });
});
