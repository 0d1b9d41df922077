/** Hints and lenses in tests: a notebook in, what is shown on its lines out. */
import { lensesOf } from '../../server/features/code-lens.ts';
import { type HintKind, hintsOf } from '../../server/features/inlay-hints.ts';
import { lineCount } from '../../server/model/snapshot/locate.ts';
import { type Comparison, type ComparisonAsked, comparisonOf } from '../../server/report/comparison.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { dedent, fixture } from './fixture.ts';

/** The hints as they show on the line of the cursor, or on all lines: `initial 11 deg «2 deg more»`. */
export function hinted(marked: string, ...kinds: readonly HintKind[]): readonly string[] {
  const { text, cursor } = fixture(marked);
  const snapshot = openNotebook(text);
  const from = cursor?.line ?? 0;
  const to = cursor ? from + 1 : lineCount(snapshot);
  const lines = text.split('\n');
  return hintsOf(snapshot, from, to, { kinds: new Set(kinds), units: new Map() }).map(
    ({ position, text }) => `${lines[position.line]?.slice(0, position.character).trim()} «${text}»`,
  );
}

/** Lenses as `line: text`, lines from one. */
export const lensed = (text: string): readonly string[] =>
  [...lensesOf(openNotebook(dedent(text)))].map(({ line, text }) => `${line + 1}: ${text}`);

export function compared(text: string, asked: ComparisonAsked): Comparison {
  const comparison = comparisonOf(openNotebook(dedent(text)), asked);
  if ('problem' in comparison) throw new Error(comparison.problem);
  return comparison;
}
