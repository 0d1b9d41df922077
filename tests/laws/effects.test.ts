/** Laws 4 and 5 for what is asked of the whole notebook: any text has an answer, and kept pages never make it stale. */
import fc from 'fast-check';
import { expect } from 'vitest';
import { SEALING } from '../../server/analysis/engine/compression-test-figures.ts';
import { CYLINDERS, PLUGS } from '../../server/analysis/engine/cylinders.ts';
import { KNOWN_EFFECTS } from '../../server/analysis/evidence/known-effects.ts';
import { HISTORY } from '../../server/analysis/evidence/outlier-figures.ts';
import type { Working } from '../../server/analysis/figure.ts';
import { IDLE_DROP, MIXTURE_SIDES, POWER_VALVE } from '../../server/analysis/fuel/idle.ts';
import { NO_EFFECT, TURNS } from '../../server/analysis/fuel/mixture-screws.ts';
import { lineCount, lineOf, lineStateAt } from '../../server/model/snapshot/locate.ts';
import { edit, open, type Snapshot } from '../../server/model/snapshot/snapshot.ts';
import { checkLine } from '../../server/rules/check.ts';
import { law } from './law.ts';
import { answers } from './located.ts';
import { type AnyChange, changeIn, longNotebook, notebook } from './notebooks.ts';
import { changed } from './peer.ts';

const ROWS: readonly Working[] = [
  KNOWN_EFFECTS,
  HISTORY,
  CYLINDERS,
  PLUGS,
  SEALING,
  IDLE_DROP,
  MIXTURE_SIDES,
  POWER_VALVE,
  NO_EFFECT,
  TURNS,
];
const NO_CHECK = () => [];

/** Every figure at the end and in the middle, with the lines of its inputs as numbers. */
function figures(snapshot: Snapshot): readonly unknown[] {
  const count = lineCount(snapshot);
  return [count - 1, count >> 1].flatMap((line) => {
    const state = lineStateAt(snapshot, line)?.after;
    if (!state) return [];
    return ROWS.flatMap(({ work }) =>
      [undefined, 'idle', 'mixture'].flatMap((word) => work({ state, snapshot, line }, word)),
    ).map((figure) => ({
      ...figure,
      inputs: figure.inputs.map(({ by, ...input }) => ({ ...input, line: by && lineOf(snapshot, by.ref) })),
    }));
  });
}

const edited = (text: fc.Arbitrary<string>): fc.Arbitrary<[string, AnyChange[]]> =>
  text.chain((before) =>
    fc.tuple(fc.constant(before), fc.array(changeIn(before), { minLength: 1, maxLength: 3 })),
  );

/** Figures are asked before the edits too, so that there are pages that could be stale. */
function sameAsOpened([before, changes]: readonly [string, readonly AnyChange[]]): void {
  let snapshot = open(before, NO_CHECK);
  for (const change of changes) {
    figures(snapshot);
    snapshot = edit(snapshot, change);
  }
  expect(figures(snapshot)).toEqual(figures(open(changes.reduce(changed, before), NO_CHECK)));
}

const day = fc
  .array(
    fc.constantFrom(
      'initial 9 deg',
      'initial 11 deg',
      'mixture in 1/4 turn',
      'mixture left 1 turn, right 2 turns',
      'idle 820 rpm in neutral',
      'idle 840 rpm in neutral',
      'idle 700 rpm in drive',
      'tube 400 410 390 120 F at idle',
      'tube #2 380 F at idle',
      'compression 150 149 80 82 psi',
      'depression 12 inHg at idle in drive',
      'water 80 F',
      'weather 14 C, 1010 hPa',
      'weather 34 C',
      'fit carb single',
      'fit carb twin',
      'revert to 2026-05-01',
      'plug #1 tan',
      'plug #2 wet',
    ),
    { minLength: 1, maxLength: 8 },
  )
  .map((lines) => lines.map((line) => `  ${line}\n`).join(''));
const bench = fc
  .array(day, { minLength: 1, maxLength: 8 })
  .map((days) => days.map((lines, i) => `session 2026-05-0${i + 1}\n${lines}`).join(''));

law('law 5: figures of the bench after edits are those of the opened text', edited(bench), sameAsOpened);
law(
  'law 5: findings of the bench after edits are those of the opened text',
  edited(bench),
  ([before, changes]) => {
    const snapshot = changes.reduce(edit, open(before, checkLine));
    expect(answers(snapshot)).toEqual(answers(open(changes.reduce(changed, before), checkLine)));
  },
);
law('law 5: and of any notebook', edited(notebook), sameAsOpened, 0.5);
law('law 5: and in long sections', edited(longNotebook), sameAsOpened, 0.05);
