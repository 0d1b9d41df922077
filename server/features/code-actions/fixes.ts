/** What mends a finding: its own fix, the fixes of all that its rule found, or a word that the line is meant so. */
import type { Range } from '../../../grammar/index.ts';
import type { LocatedFinding } from '../../model/snapshot/finding.ts';
import type { Change, Snapshot } from '../../model/snapshot/snapshot.ts';
import { ruleOf } from '../../rules/check.ts';
import { type Diagnostic, diagnosticsOf } from '../diagnostics.ts';
import { breakOf } from '../new-session.ts';
import { onLine } from '../ranges.ts';
import type { ActionAround, CodeAction } from './action.ts';
import { lostPaths } from './lost-paths.ts';
import { silenced } from './silence.ts';

type Told = Diagnostic & { readonly code: string; readonly finding: LocatedFinding };

export function fixesAt(snapshot: Snapshot, range: Range, around: ActionAround): readonly CodeAction[] {
  const all = toldIn(snapshot, around);
  const here = all.filter((each) => touch(each.range, range));
  return [
    ...here.flatMap((told) => ownFixes(snapshot, told)),
    ...here.flatMap((told) => lostPaths(snapshot, told, around)),
    ...each(here, ({ code }) => fixAllOf(snapshot, code, all)),
    ...each(here, about),
    ...each(here, (told) => silenced(snapshot, told.finding, [told])),
  ];
}

/** Everything that is sure, in one step. */
export function fixAll(snapshot: Snapshot, around: ActionAround): readonly CodeAction[] {
  const mended = mending(snapshot, toldIn(snapshot, around));
  if (mended.edits.length === 0) return [];
  const title = `Fix all that is sure (${mended.found.length})`;
  return [{ ...mended, title, kind: 'source.fixAll', isSure: false }];
}

/** The changes of `fixAll`, of every rule at its own severity. */
export const sureFixes = (snapshot: Snapshot): readonly Change[] =>
  mending(snapshot, toldIn(snapshot, { levels: new Map() })).edits;

const toldIn = (snapshot: Snapshot, { levels }: Pick<ActionAround, 'levels'>): readonly Told[] =>
  diagnosticsOf(snapshot, { levels, leaveOut: () => false }).filter(
    (told): told is Told => told.finding !== undefined,
  );

/** Lines alone count: an editor asks from wherever on the line its cursor is. */
const touch = (a: Range, b: Range): boolean => a.start.line <= b.end.line && b.start.line <= a.end.line;

/** One action for each rule, however often it found something here. */
function each(here: readonly Told[], act: (told: Told) => CodeAction | undefined): readonly CodeAction[] {
  const first = new Map(here.toReversed().map((told) => [told.code, told]));
  return here.flatMap((told) => (first.get(told.code) === told ? (act(told) ?? []) : []));
}

/** Lines that a fix puts in end as those of the notebook do. */
function ownFixes(snapshot: Snapshot, told: Told): readonly CodeAction[] {
  const { at, fixes } = told.finding;
  return fixes.map(({ title, edits }) => ({
    title,
    kind: 'quickfix',
    edits: edits.map(({ span, text }) => ({
      range: onLine(at, span),
      text: text.replaceAll('\n', breakOf(snapshot)),
    })),
    found: [told],
    isSure: fixes.length === 1,
  }));
}

function fixAllOf(snapshot: Snapshot, code: string, all: readonly Told[]): CodeAction | undefined {
  const mended = mending(
    snapshot,
    all.filter((told) => told.code === code),
  );
  if (mended.found.length < 2) return undefined;
  const title = `Fix all ${mended.found.length} of "${ruleOf(code)?.title ?? code}"`;
  return { ...mended, title, kind: 'quickfix', isSure: false };
}

/** The fixes of all that have only one, but those that would write over another's. */
function mending(snapshot: Snapshot, all: readonly Told[]): Pick<CodeAction, 'edits' | 'found'> {
  const edits: Change[] = [];
  const found: Told[] = [];
  for (const told of all) {
    const [fix, ...others] = ownFixes(snapshot, told);
    if (!fix || others.length > 0 || fix.edits.some((edit) => edits.some((taken) => collide(edit, taken))))
      continue;
    edits.push(...fix.edits);
    found.push(told);
  }
  return { edits, found };
}

function collide({ range: a }: Change, { range: b }: Change): boolean {
  if (a.start.line !== b.start.line) return false;
  return a.start.character <= b.end.character && b.start.character <= a.end.character;
}

const about = (told: Told): CodeAction => ({
  title: `About this rule: ${ruleOf(told.code)?.title ?? told.code}`,
  kind: 'quickfix',
  edits: [],
  found: [told],
  isSure: false,
  explains: told.code,
});
