/**
 * What an editor asks, by length of the notebook: when asked for the first time, and after a keystroke. The growth is the
 * exponent between the two longest: 1 is as the notebook grows, 0 is not at all.
 */
import type { Position } from '../../grammar/index.ts';
import { codeActionsAt } from '../../server/features/code-actions.ts';
import { lensesOf } from '../../server/features/code-lens.ts';
import { suggestionsAt } from '../../server/features/completion.ts';
import { definitionAt } from '../../server/features/definition.ts';
import { diagnosticsOf, type Level } from '../../server/features/diagnostics.ts';
import { linksIn } from '../../server/features/document-links.ts';
import { foldsOf } from '../../server/features/folding.ts';
import { DEFAULT_STYLE, formatEdits } from '../../server/features/formatting.ts';
import { hoverAt } from '../../server/features/hover.ts';
import { hintsOf } from '../../server/features/inlay-hints.ts';
import { mentionAt, type Subject } from '../../server/features/mentions.ts';
import { highlighting, referring } from '../../server/features/references.ts';
import { renamableAt } from '../../server/features/rename.ts';
import { selectionsAt } from '../../server/features/selection-ranges.ts';
import { semanticTokens } from '../../server/features/semantic-tokens.ts';
import { symbolsOf } from '../../server/features/symbols.ts';
import { runToEnd } from '../../server/model/snapshot/interruptible.ts';
import { lineCount } from '../../server/model/snapshot/locate.ts';
import { edit, type Snapshot } from '../../server/model/snapshot/snapshot.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { notebookOf } from './notebook.ts';

const SIZES = [1_000, 10_000, 40_000];
const SCREEN = 60;
const KEYSTROKES = 7;
const TODAY = '2026-01-01';
const AS_IS = { levels: new Map<string, Level>(), units: new Map() };

type Ask = (snapshot: Snapshot, at: Position) => unknown;

const ASKED: Readonly<Record<string, Ask>> = {
  hover: (snapshot, at) => hoverAt(snapshot, at, AS_IS.units),
  completion: (snapshot, at) => suggestionsAt(snapshot, at, { today: TODAY }),
  definition: definitionAt,
  references: (snapshot, { line, character }) =>
    runToEnd(referring(snapshot, mentionAt(snapshot, line, character) as Subject, true)),
  highlight: (snapshot, at) => runToEnd(highlighting(snapshot, at)),
  'prepare rename': renamableAt,
  'selection ranges': selectionsAt,
  'code actions': (snapshot, at) =>
    codeActionsAt(
      snapshot,
      { start: at, end: at },
      { ...AS_IS, indent: 2, today: TODAY, only: undefined, elsewhere: () => [] },
    ),
  'inlay hints, one screen': (snapshot, { line }) =>
    hintsOf(snapshot, line, line + SCREEN, {
      kinds: new Set(['total', 'change'] as const),
      units: AS_IS.units,
    }),
  'semantic tokens, one screen': (snapshot, { line }) => [...semanticTokens(snapshot, line, line + SCREEN)],
  'semantic tokens, all': (snapshot) => [...semanticTokens(snapshot)],
  folding: foldsOf,
  outline: (snapshot) => [...symbolsOf(snapshot)],
  'code lenses': (snapshot) => [...lensesOf(snapshot)],
  'document links': linksIn,
  'diagnostics, all': (snapshot) => diagnosticsOf(snapshot, { levels: AS_IS.levels, leaveOut: () => false }),
  'formatting, all': (snapshot) => formatEdits(snapshot, DEFAULT_STYLE),
};

/** Prints a row for each question. */
export function benchAnswers(): void {
  console.log(
    `${'answers, ms'.padEnd(30)}${SIZES.map((lines) => `${lines} lines`.padStart(24)).join('')}    growth`,
  );
  console.log(`${''.padEnd(30)}${SIZES.map(() => 'first   after a key'.padStart(24)).join('')}`);
  measure(ASKED.hover as Ask, 1_000); // warms up what all questions share
  for (const [name, ask] of Object.entries(ASKED)) {
    const rows = SIZES.map((lines) => measure(ask, lines));
    const [shorter, longer] = rows.slice(-2) as [Measured, Measured];
    const growth =
      Math.log(longer.again / shorter.again) / Math.log((SIZES.at(-1) as number) / (SIZES.at(-2) as number));
    const cells = rows.map(({ first, again }) =>
      `${first.toFixed(1)}${again.toFixed(2).padStart(12)}`.padStart(24),
    );
    console.log(`${name.padEnd(30)}${cells.join('')}${growth.toFixed(1).padStart(10)}`);
  }
}

interface Measured {
  readonly first: number;
  /** Median of some keystrokes. */
  readonly again: number;
}

function measure(ask: Ask, lines: number): Measured {
  let snapshot = openNotebook(notebookOf(lines));
  const line = lastIdle(snapshot);
  const at = { line, character: 4 };
  const first = timed(() => ask(snapshot, at));
  const again = Array.from({ length: KEYSTROKES }, () => {
    const end = { line, character: Number.MAX_SAFE_INTEGER };
    snapshot = edit(snapshot, { range: { start: end, end }, text: ' ' });
    return timed(() => ask(snapshot, at));
  });
  return { first, again: again.toSorted((a, b) => a - b)[KEYSTROKES >> 1] as number };
}

/** A line with a reading, near the end: what an editor shows when a notebook is written on. */
function lastIdle(snapshot: Snapshot): number {
  const text = snapshot.pages.at(-3)?.text ?? '';
  const within = text.split('\n').findIndex((line) => line.trimStart().startsWith('idle'));
  return within < 0
    ? lineCount(snapshot) - 2
    : (snapshot.starts[snapshot.pages.length - 3] as number) + within;
}

function timed(act: () => unknown): number {
  const start = performance.now();
  act();
  return performance.now() - start;
}
