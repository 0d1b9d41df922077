/** Every answer that a notebook gives to an editor or the terminal, as texts without ids, so that two notebooks can be compared. */
import type { Position } from '../../grammar/index.ts';
import { allFigures } from '../../server/analysis/figures.ts';
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
import { mentionAt } from '../../server/features/mentions.ts';
import { newSession } from '../../server/features/new-session.ts';
import { highlighting, referring } from '../../server/features/references.ts';
import { renamableAt, renaming } from '../../server/features/rename.ts';
import { selectionsAt } from '../../server/features/selection-ranges.ts';
import { semanticTokens } from '../../server/features/semantic-tokens.ts';
import { symbolsOf } from '../../server/features/symbols.ts';
import type { UnitChoice } from '../../server/features/units.ts';
import { runToEnd } from '../../server/model/snapshot/interruptible.ts';
import { lineCount, lineStateAt } from '../../server/model/snapshot/locate.ts';
import type { Files } from '../../server/model/snapshot/named-files.ts';
import { sessionsOf } from '../../server/model/snapshot/section-ranges.ts';
import type { Snapshot } from '../../server/model/snapshot/snapshot.ts';
import { filesAskedBy, usesOf } from '../../server/model/snapshot/used-notebooks.ts';
import { comparisonOf } from '../../server/report/comparison.ts';
import { inForceAt } from '../../server/report/in-force.ts';
import { momentOf } from '../../server/report/moment.ts';
import { answers, plain } from '../laws/located.ts';

/** Where one looks; lines beyond the end count from the start again. */
export interface Look extends Position {
  /** The line of another session to compare with. */
  readonly other: number;
}

const TODAY = '2026-06-01';
const LEVELS = new Map<string, Level>();
const UNITS: UnitChoice = new Map();
const HINTS = new Set(['total', 'change', 'unit'] as const);
const LOG = 'Time (s),RPM,AFR\n0,1010,13\n1,1240,14\n2,1250,12\n3,2100,12.5\n';
/** Whichever log is named, it is there. */
const FILES = { get: () => ({ text: LOG }), has: () => true } as unknown as Files;

type Asked = Readonly<Record<string, (snapshot: Snapshot, look: Look) => unknown>>;

/** Asked about the whole notebook. */
const OF_ALL: Asked = {
  model: answers,
  diagnostics: (snapshot) => diagnosticsOf(snapshot, { levels: LEVELS, leaveOut: () => false }),
  lenses: (snapshot) => [...lensesOf(snapshot)],
  hints: (snapshot) => hintsOf(snapshot, 0, lineCount(snapshot), { kinds: HINTS, units: UNITS }),
  'semantic tokens': (snapshot) => [...semanticTokens(snapshot)],
  folding: foldsOf,
  symbols: (snapshot) => [...symbolsOf(snapshot)],
  links: linksIn,
  formatting: (snapshot) => formatEdits(snapshot, DEFAULT_STYLE),
  uses: (snapshot) => [usesOf(snapshot), filesAskedBy(snapshot)],
  days: (snapshot) => sessionsOf(snapshot).map(({ date }) => momentOf(snapshot, date ?? '')),
};

/** Asked about a place. */
const AT_PLACE: Asked = {
  figures: (snapshot, { line }) => {
    const state = lineStateAt(snapshot, line)?.after;
    return state && allFigures({ state, snapshot, line, files: FILES });
  },
  report: (snapshot, { line }) => inForceAt(snapshot, line, FILES),
  'comparison with the kept one': (snapshot, { line }) => comparisonOf(snapshot, { line, against: 'kept' }),
  'comparison with before': (snapshot, { line }) => comparisonOf(snapshot, { line, against: 'before' }),
  comparison: (snapshot, { line, other }) => comparisonOf(snapshot, { line, against: other }),
  hover: (snapshot, look) => hoverAt(snapshot, look, UNITS, FILES),
  completion: (snapshot, look) => suggestionsAt(snapshot, look, { today: TODAY }),
  'completion unasked': (snapshot, look) => suggestionsAt(snapshot, look, { today: TODAY, unasked: true }),
  'hints of a line': (snapshot, { line }) =>
    hintsOf(snapshot, line, line + 1, { kinds: HINTS, units: UNITS }),
  definition: definitionAt,
  references: (snapshot, { line, character }) => {
    const subject = mentionAt(snapshot, line, character);
    return subject && runToEnd(referring(snapshot, subject, true));
  },
  highlight: (snapshot, look) => runToEnd(highlighting(snapshot, look)),
  rename: (snapshot, look) => {
    const found = renamableAt(snapshot, look);
    return 'subject' in found ? runToEnd(renaming(snapshot, found.subject, 'new name')) : found;
  },
  selections: selectionsAt,
  actions: (snapshot, look) => codeActionsAt(snapshot, { start: look, end: look }, AROUND),
  'new session': (snapshot, { line }) => newSession(snapshot, { today: TODAY, title: '', from: line }),
};

const AROUND = {
  levels: LEVELS,
  units: UNITS,
  indent: 2,
  today: TODAY,
  only: undefined,
  elsewhere: () => [],
};

/** By what was asked, of the whole notebook and of the place. */
export function everyAnswer(snapshot: Snapshot, look: Look): ReadonlyMap<string, string> {
  const lines = lineCount(snapshot);
  const within = { ...look, line: look.line % lines, other: look.other % lines };
  const text = (value: unknown) => JSON.stringify(value, (_, each) => exact(plain(snapshot, each))) ?? 'none';
  return new Map(
    Object.entries({ ...OF_ALL, ...AT_PLACE }).map(([name, ask]) => [name, text(ask(snapshot, within))]),
  );
}

/** JSON has one word for all that is no number. */
const exact = (value: unknown): unknown =>
  typeof value === 'number' && !Number.isFinite(value) ? String(value) : value;
