/** Quick fixes for a finding: its own fix, the fixes of all findings of its rule, or a comment that silences it. */
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

type Reported = Diagnostic & { readonly code: string; readonly finding: LocatedFinding };

export function fixesAt(snapshot: Snapshot, range: Range, around: ActionAround): readonly CodeAction[] {
  const all = reportedIn(snapshot, around);
  const here = all.filter((each) => touch(each.range, range));
  return [
    ...here.flatMap((reported) => ownFixes(snapshot, reported)),
    ...here.flatMap((reported) => lostPaths(snapshot, reported, around)),
    ...each(here, ({ code }) => fixAllOf(snapshot, code, all)),
    ...each(here, about),
    ...each(here, (reported) => silenced(snapshot, reported.finding, [reported])),
  ];
}

/** All fixes that are surely what was meant, in one step. */
export function fixAll(snapshot: Snapshot, around: ActionAround): readonly CodeAction[] {
  const mended = mending(snapshot, reportedIn(snapshot, around));
  if (mended.edits.length === 0) return [];
  const title = `Fix all obvious slips (${mended.found.length})`;
  return [{ ...mended, title, kind: 'source.fixAll', isSure: false }];
}

/** The changes of `fixAll`, of every rule at its own severity. */
export const sureFixes = (snapshot: Snapshot): readonly Change[] =>
  mending(snapshot, reportedIn(snapshot, { levels: new Map() })).edits;

const reportedIn = (snapshot: Snapshot, { levels }: Pick<ActionAround, 'levels'>): readonly Reported[] =>
  diagnosticsOf(snapshot, { levels, leaveOut: () => false }).filter(
    (reported): reported is Reported => reported.finding !== undefined,
  );

/** By line alone: an editor requests actions from wherever on the line its cursor is. */
const touch = (a: Range, b: Range): boolean => a.start.line <= b.end.line && b.start.line <= a.end.line;

/** One action for each rule, however often it found something here. */
function each(
  here: readonly Reported[],
  act: (reported: Reported) => CodeAction | undefined,
): readonly CodeAction[] {
  const first = new Map(here.toReversed().map((reported) => [reported.code, reported]));
  return here.flatMap((reported) => (first.get(reported.code) === reported ? (act(reported) ?? []) : []));
}

/** Lines that a fix puts in end as those of the notebook do. */
function ownFixes(snapshot: Snapshot, reported: Reported): readonly CodeAction[] {
  const { at, fixes } = reported.finding;
  return fixes.map(({ title, edits }) => ({
    title,
    kind: 'quickfix',
    edits: edits.map(({ span, text }) => ({
      range: onLine(at, span),
      text: text.replaceAll('\n', breakOf(snapshot)),
    })),
    found: [reported],
    isSure: fixes.length === 1,
  }));
}

function fixAllOf(snapshot: Snapshot, code: string, all: readonly Reported[]): CodeAction | undefined {
  const mended = mending(
    snapshot,
    all.filter((reported) => reported.code === code),
  );
  if (mended.found.length < 2) return undefined;
  const title = `Fix all ${mended.found.length} of "${ruleOf(code)?.title ?? code}"`;
  return { ...mended, title, kind: 'quickfix', isSure: false };
}

/** Fixes of all findings that have exactly one, without those that would overlap another. */
function mending(snapshot: Snapshot, all: readonly Reported[]): Pick<CodeAction, 'edits' | 'found'> {
  const edits: Change[] = [];
  const found: Reported[] = [];
  for (const reported of all) {
    const [fix, ...others] = ownFixes(snapshot, reported);
    if (!fix || others.length > 0 || fix.edits.some((edit) => edits.some((taken) => collide(edit, taken))))
      continue;
    edits.push(...fix.edits);
    found.push(reported);
  }
  return { edits, found };
}

function collide({ range: a }: Change, { range: b }: Change): boolean {
  if (a.start.line !== b.start.line) return false;
  return a.start.character <= b.end.character && b.start.character <= a.end.character;
}

const about = (reported: Reported): CodeAction => ({
  title: `About this rule: ${ruleOf(reported.code)?.title ?? reported.code}`,
  kind: 'quickfix',
  edits: [],
  found: [reported],
  isSure: false,
  explains: reported.code,
});
