/** What fuzzing has broken, as small as it got: each case is tried again at every test. */
export interface Case {
  readonly fuzzer: string;
  /** What went wrong with it. */
  readonly was: string;
  /** A value of the fuzzer's property. */
  readonly value: readonly unknown[];
}

const START = { line: 0, character: 0 };
const PLAIN = { indent: 2, unitSpelling: 'as written' };
const MANY = '1'.repeat(400);

export const CASES: readonly Case[] = [
  {
    fuzzer: 'csv',
    was: 'a number with a decimal comma, beyond all that a number can be, was read as infinite',
    value: [['read', `RPM;AFR\n${MANY},1;13\n900;13\n`]],
  },
  {
    fuzzer: 'csv',
    was: 'the mean of numbers whose sum is beyond all numbers was infinite',
    value: [['read', 'RPM,AFR\n900,1e308\n901,1e308\n']],
  },
  {
    fuzzer: 'actions',
    was: 'behind a time, "session" was to be mended into "session"',
    value: [['09:30 session 2026-05-02', START]],
  },
  {
    fuzzer: 'actions',
    was: 'behind a time, what is near to "session" was to be mended into that, where it begins no session',
    value: [['09:30A session 2026-05-02', START]],
  },
  {
    fuzzer: 'actions',
    was: 'a fraction was put right after another number, which made one number of the two',
    value: [['initial 9 9 9..3/8 deg', START]],
  },
  {
    fuzzer: 'actions',
    was: 'a unit was put right before letters, which made one word of the two',
    value: [['  stop radius        1A4 mm', START]],
  },
  {
    fuzzer: 'actions',
    was: 'a unit was put right before a hyphen and a number, which made one word of all',
    value: [['session 2026-05-01\npower valve 3/8-0 0..9 0 psi', { line: 1, character: 0 }]],
  },
  {
    fuzzer: 'actions',
    was: 'a unit was put right before a percent sign and a number, which made one word of all',
    value: [['+20 min float 10 .. 10%0 deg', START]],
  },
  {
    fuzzer: 'actions',
    was: 'a number was parted into a firing order that names a cylinder three times',
    value: [['firing order ~ 4000 deg', START]],
  },
  {
    fuzzer: 'actions',
    was: 'the word of a section was to be mended where more stands behind it, so that it still was none',
    value: [['engin:e', START]],
  },
  {
    fuzzer: 'actions',
    was: 'the unit of the last number in a spec was not read as that of all, so that it was missing again once it was added',
    value: [['specs\ndwell 8 >= 0 40', { line: 1, character: 0 }]],
  },
  {
    fuzzer: 'formats',
    was: 'a time gone by with a space that does not break was told of, and after formatting it was not',
    value: ['+20\u00a0 min photo bench.jpg', PLAIN, { start: START, end: START }],
  },
  {
    fuzzer: 'names',
    was: 'a name with a line break in it was taken, and the line cut in two',
    value: [['words\n  flap gap: setting, 2..5 mm', '', ''], 0, 'x\ny'],
  },
];
