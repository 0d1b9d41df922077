/** Figures of any notebook at all: nothing throws, and after a change they are what a fresh reading gives. */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { allFigures, figuresAbout } from '../../server/analysis/figures.ts';
import { lineCount, lineStateAt, textOf } from '../../server/model/snapshot/locate.ts';
import { edit, type Snapshot } from '../../server/model/snapshot/snapshot.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { VOCABULARY } from '../../server/trade/vocabulary/vocabulary.ts';
import { SEED } from '../laws/law.ts';
import { changeIn, notebook } from '../laws/notebooks.ts';

/** Many notebooks are read: a machine with other work takes its time. */
const SLOW = { timeout: 600_000 };

/** What a workshop says before the lines that go wrong, so that there is much to work out. */
const BENCH = `engine
  cylinders 4
  bore 86 mm
  stroke 94 mm
  damper 152 mm
  stop radius 12 mm
session 2026-05-01
  weather 15 C, 1013 hPa, 50 %RH
  initial 9 deg
  mechanical 0 deg @ 900 rpm, 22 deg @ 3200 rpm
  main jet 120
  dwell 50 deg
  boost 6 psi
  trial feed restrictor -> idle
    1 800 rpm
    2 850 rpm
    want 830 rpm
`;

const WORDS = ['trial', 'session', 'port', 'spec', 'recheck', ...VOCABULARY.map((row) => row.name)];

/** What the figures say, without the ids of lines. */
function saidAt(snapshot: Snapshot, line: number): readonly string[] {
  const state = lineStateAt(snapshot, line)?.after;
  if (!state) return [];
  const figures = allFigures({ state, snapshot, line });
  return figures.map(({ name, text, working, rows }) => JSON.stringify([name, text, working, rows]));
}

test('there is much to work out above the lines that go wrong', () => {
  const snapshot = openNotebook(BENCH);
  expect(saidAt(snapshot, lineCount(snapshot) - 1).length).toBeGreaterThan(15);
});

test('a figure can be asked for at any line of any notebook', SLOW, () => {
  fc.assert(
    fc.property(notebook, fc.nat(), fc.constantFrom(...WORDS), (lines, at, word) => {
      const snapshot = openNotebook(BENCH + lines);
      const line = at % lineCount(snapshot);
      const state = lineStateAt(snapshot, line)?.after;
      if (state) figuresAbout(word, { state, snapshot, line });
      saidAt(snapshot, line);
    }),
    { numRuns: 200, seed: SEED },
  );
});

test('no figure prints what is no number', SLOW, () => {
  fc.assert(
    fc.property(notebook, (lines) => {
      const snapshot = openNotebook(BENCH + lines);
      const said = saidAt(snapshot, lineCount(snapshot) - 1).join('\n');
      expect(said).not.toMatch(/NaN|undefined|Infinity/);
    }),
    { numRuns: 150, seed: SEED },
  );
});

test('after a change the figures are those of a fresh reading', SLOW, () => {
  const changed = notebook.chain((lines) =>
    fc.record({ text: fc.constant(BENCH + lines), change: changeIn(BENCH + lines) }),
  );
  fc.assert(
    fc.property(changed, ({ text, change }) => {
      const after = edit(openNotebook(text), change);
      const fresh = openNotebook(textOf(after));
      const line = lineCount(after) - 1;
      expect(saidAt(after, line)).toEqual(saidAt(fresh, line));
    }),
    { numRuns: 150, seed: SEED },
  );
});
