/** The only callers of the features in tests: a marked notebook in, the expected answer out. */
import { expect } from 'vitest';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { type ActionAround, type CodeAction, codeActionsAt } from '../../server/features/code-actions.ts';
import { type Diagnostic, diagnosticsOf, type Level } from '../../server/features/diagnostics.ts';
import { foldsOf } from '../../server/features/folding.ts';
import { DEFAULT_STYLE, type FormatStyle, formatEdits } from '../../server/features/formatting.ts';
import { hoverAt } from '../../server/features/hover.ts';
import { withoutMarkdown } from '../../server/features/markdown.ts';
import { selectionsAt } from '../../server/features/selection-ranges.ts';
import { semanticTokens } from '../../server/features/semantic-tokens.ts';
import { type OutlineSymbol, symbolsOf } from '../../server/features/symbols.ts';
import type { UnitChoice } from '../../server/features/units.ts';
import { findSymbols, listedIn } from '../../server/features/workspace-symbols.ts';
import type { Shared } from '../../server/model/snapshot/look-up.ts';
import type { Change } from '../../server/model/snapshot/snapshot.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { dedent, fixture } from './fixture.ts';

/** The hover where `‸` stands, line by line and without Markdown; it is about what stands between « and », if they do. */
export function hoverLines(marked: string, units: UnitChoice = new Map()): readonly string[] {
  const { text, cursor, ranges } = fixture(marked);
  if (!cursor) throw new Error('no ‸ in the notebook');
  const hover = hoverAt(openNotebook(text), cursor, units);
  if (ranges[0]) expect(hover?.range).toEqual(ranges[0]);
  return hover ? withoutMarkdown(hover.text).split('\n') : [];
}

/** Folds as `kind: first line .. last line`, by the words the lines begin with. */
export function foldTexts(text: string): readonly string[] {
  const lines = dedent(text).split(/\r\n|\n/);
  const begin = (line: number) => (lines[line] ?? '').trim().split(/ {2,}/)[0];
  return foldsOf(openNotebook(dedent(text))).map(
    ({ kind, from, to }) => `${kind}: ${begin(from)} .. ${begin(to)}`,
  );
}

/** The outline, two blanks deeper for each level. */
export function outline(text: string): readonly string[] {
  const told = (symbol: OutlineSymbol, indent: string): readonly string[] => [
    `${indent}${symbol.name}${symbol.detail && ` | ${symbol.detail}`}`,
    ...symbol.children.flatMap((child) => told(child, `${indent}  `)),
  ];
  return [...symbolsOf(openNotebook(dedent(text)))].flatMap((symbol) => told(symbol, ''));
}

/** What would be published; `levels` as a reader would set them. */
export function diagnosticsIn(
  text: string,
  levels: Readonly<Record<string, Level>> = {},
  edited?: number,
): readonly Diagnostic[] {
  const choice = { levels: new Map(Object.entries(levels)), leaveOut: () => false, edited };
  return diagnosticsOf(openNotebook(text), choice);
}

/** What is found across notebooks, as `name | container`. */
export function foundSymbols(query: string, ...texts: readonly string[]): readonly string[] {
  const notebooks = texts.map((text, i) => ({ uri: `${i}`, symbols: listedIn(openNotebook(dedent(text))) }));
  return findSymbols(notebooks, query).map(({ name, container }) => `${name} | ${container}`);
}

/** The notebook formatted, as a text; only what stands between « and », if they do. */
export function formatted(marked: string, style: Partial<FormatStyle> = {}): string {
  const { text, ranges } = fixture(marked);
  return withEdits(text, formatEdits(openNotebook(text), { ...DEFAULT_STYLE, ...style }, ranges[0]));
}

/** A text after edits that are all of the text as it was; throws where two overlap. */
export function withEdits(text: string, edits: readonly Change[]): string {
  const document = TextDocument.create('bench:x', 'tappet', 1, text);
  return TextDocument.applyEdits(
    document,
    edits.map(({ range, text }) => ({ range, newText: text })),
  );
}

/** What the lines from `from` on mean, word by word, as `meaning text`. */
export function meanings(text: string, from = 1): readonly string[] {
  const lines = text.split('\n');
  return [...semanticTokens(openNotebook(text), from)].map(
    ({ line, span, meaning }) => `${meaning} ${lines[line]?.slice(span.from, span.to)}`,
  );
}

/** The texts that are selected step by step from `‸` outwards. */
export function selections(marked: string): readonly string[] {
  const { text, cursor } = fixture(marked);
  if (!cursor) throw new Error('no ‸ in the notebook');
  const document = TextDocument.create('bench:x', 'tappet', 1, text);
  return selectionsAt(openNotebook(text), cursor).map((range) => document.getText(range));
}

const AROUND: ActionAround = {
  levels: new Map(),
  units: new Map(),
  indent: 2,
  today: '2026-05-20',
  only: undefined,
  elsewhere: () => [],
};

/** What can be done at `‸`. */
export function actionsAt(
  marked: string,
  around: Partial<ActionAround> = {},
  shared?: Shared,
): readonly CodeAction[] {
  const { text, cursor } = fixture(marked);
  if (!cursor) throw new Error('no ‸ in the notebook');
  return codeActionsAt(openNotebook(text, shared), { start: cursor, end: cursor }, { ...AROUND, ...around });
}

/** The notebook after the one action at `‸` whose title begins like this. */
export function acted(marked: string, title: string, around: Partial<ActionAround> = {}): string {
  const actions = actionsAt(marked, around);
  const [action, ...others] = actions.filter((each) => each.title.startsWith(title));
  if (!action || others.length > 0)
    throw new Error(`not one "${title}": ${actions.map((each) => each.title)}`);
  return withEdits(fixture(marked).text, action.edits);
}
