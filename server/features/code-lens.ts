/** Code lenses above the head of a session: what it changed, what is open, and commands to compare or start a session. */

import { changesBetween } from '../analysis/evidence/setup-changes.ts';
import { oncePerPair } from '../memo.ts';
import { type SectionRange, sessionsOf } from '../model/snapshot/section-ranges.ts';
import { carriedAfter, carriedBefore, isKept } from '../model/snapshot/session-state.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import type { State } from '../model/state/state.ts';

export interface Lens {
  /** Of the session's head, from zero. */
  readonly line: number;
  readonly text: string;
  readonly act: LensAct;
}

/** `compare`: with the session whose head is on the line `against`, where one is given; else with what stood before. */
type LensAct = { readonly act: 'compare'; readonly against: number | undefined } | { readonly act: 'start' };

/** Above the head of each session, in the order of their lines. */
export function* lensesOf(snapshot: Snapshot): Generator<Lens> {
  let kept: SectionRange | undefined;
  for (const session of sessionsOf(snapshot)) {
    yield* lensesOn(snapshot, session, kept);
    if (isKept(snapshot, session)) kept = session;
  }
}

function lensesOn(
  snapshot: Snapshot,
  session: SectionRange,
  kept: SectionRange | undefined,
): readonly Lens[] {
  const line = session.from;
  const [before, after] = [carriedBefore(snapshot, session), carriedAfter(snapshot, session)];
  const summary: Lens = { line, text: summaryOf(after, before), act: { act: 'compare', against: undefined } };
  const start: Lens = { line, text: 'Start a session from here', act: { act: 'start' } };
  if (!kept) return [summary, start];
  const text = `Compare with ${[kept.date, 'kept'].filter(Boolean).join(', ')}`;
  return [summary, { line, text, act: { act: 'compare', against: kept.from } }, start];
}

/** Memo by what it is made from: an editor requests it after every keystroke, and all sessions but one are unchanged. */
const summaryOf = oncePerPair((after: State, before: State): string => {
  // As if the parts were the same: the settings that came with another part count too.
  const settings = changesBetween({ ...before, fitted: after.fitted }, after).filter((each) => each.after);
  const changed = settings.filter((each) => each.before !== undefined).length;
  const written = settings.length - changed;
  const parts = [...after.fitted].filter(([kind, { name }]) => before.fitted.get(kind)?.name !== name).length;
  const [open, safety, due] = [after.items.size, after.safetyItems.size, after.recheckIndex.due];
  const counts = [
    changed > 0 && `${counted(changed, 'setting')} changed`,
    written > 0 && `${counted(written, 'setting')} first written`,
    parts > 0 && `${counted(parts, 'part')} fitted`,
    due > 0 && `${counted(due, 'recheck')} due`,
    open > 0 && `${counted(open, 'item')} open${safety > 0 ? `, ${safety} safety` : ''}`,
  ];
  return counts.filter(Boolean).join(', ') || 'Nothing changed';
});

const counted = (count: number, what: string): string => `${count} ${what}${count === 1 ? '' : 's'}`;
