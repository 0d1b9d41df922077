import { expect, test } from 'vitest';
import { foldTexts } from '../harness/checks.ts';

const ROWS: readonly (readonly [what: string, text: string, ...folds: readonly string[]])[] = [
  [
    'sections and sessions, the blank lines at their ends outside',
    `
      notebook  Bench stand

      engine
        cylinders  4
        fuel  gasoline


      session 2026-05-02
        initial  9 deg

      session 2026-05-03
        initial  11 deg

    `,
    'section: engine .. fuel',
    'section: session 2026-05-02 .. initial',
    'section: session 2026-05-03 .. initial',
  ],
  ['a section of one line does not fold', 'engine\nvehicle\n'],
  [
    'a trial with its rows, its wish and what stands between',
    `
      session 2026-05-02
        trial feed restrictor -> oil pressure
          1/8 in   12 psi
          note warm by now
          5/32 in  14.5 psi

          want 13 psi

        initial  9 deg
    `,
    'section: session 2026-05-02 .. initial',
    'trial: trial feed restrictor -> oil pressure .. want 13 psi',
  ],
  [
    'two trials after each other',
    `
      session 2026-05-02
        trial main jet -> egt
          105  1210 F
        trial idle screw -> idle
          1 turn  920
    `,
    'section: session 2026-05-02 .. 1 turn',
    'trial: trial main jet -> egt .. 105',
    'trial: trial idle screw -> idle .. 1 turn',
  ],
  [
    'runs of comments and of notes, not single ones',
    `
      ; the boat
      ; of the yard
      notebook  Marsh runner
      ; alone
      session 2026-05-02
        note cold
        note wet
        note windy
        initial  9 deg
        note later
    `,
    'comment: ; the boat .. ; of the yard',
    'section: notebook .. ; alone',
    'section: session 2026-05-02 .. note later',
    'note: note cold .. note windy',
  ],
  ['nothing in nothing', ''],
  ['blank lines alone', '\n\n\n'],
  ['a broken line is a line', 'session 2026-05-02\n  ~~ ?? ..\n', 'section: session 2026-05-02 .. ~~ ?? ..'],
];

test.each(ROWS)('%s', (_what, text, ...folds) => expect(foldTexts(text)).toEqual(folds));

test('a session longer than a page is one fold', () => {
  const lines = Array.from({ length: 350 }, (_, i) => `  idle ${800 + (i % 9)} rpm`);
  expect(foldTexts(`session 2026-05-02\n${lines.join('\n')}\n\n`)).toEqual([
    'section: session 2026-05-02 .. idle 807 rpm',
  ]);
});
