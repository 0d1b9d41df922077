/** Trials around a line, whole: rows and wants below the line belong to them too. */

import type { Origin, RowEntry } from '../../model/entry/entry.ts';
import { lineOf, saidBetween } from '../../model/snapshot/locate.ts';
import { sessionHead } from '../../model/snapshot/section-ranges.ts';
import type { Snapshot } from '../../model/snapshot/snapshot.ts';
import type { Trial } from '../../model/state/state.ts';
import type { FigureContext } from '../figure.ts';

export interface Want {
  readonly entry: RowEntry;
  readonly by: Origin;
}

export interface WrittenTrial {
  readonly trial: Trial;
  readonly wants: readonly Want[];
}

/** Of more wants in one trial the last are answered: each answer goes over all its rows. */
const MOST_WANTS = 24;

/** The trial the line is in; none on other lines. */
export function trialAt({ state, snapshot }: FigureContext): readonly WrittenTrial[] {
  const start = state.trial && lineOf(snapshot, state.trial.by.ref);
  return start === undefined ? [] : trialsBetween(snapshot, start, start);
}

/** Every trial of the session that has begun by the line. */
export function trialsOfSession({ state, snapshot, line }: FigureContext): readonly WrittenTrial[] {
  const head = sessionHead(snapshot, state);
  return head === undefined ? [] : trialsBetween(snapshot, head, line);
}

/** Those that begin from one line to another; the last is read to its end. */
function trialsBetween(snapshot: Snapshot, from: number, to: number): readonly WrittenTrial[] {
  const found: WrittenTrial[] = [];
  for (const { at, entry, after, where } of saidBetween(snapshot, from)) {
    if (at > to && (entry.kind === 'trial' || !after.trial)) break;
    if (!after.trial) continue;
    if (entry.kind === 'trial') found.push({ trial: after.trial, wants: [] });
    const open = found.pop();
    if (!open) continue;
    const asked = entry.kind === 'want' ? [{ entry: entry as RowEntry, by: where }] : [];
    const wants = asked.length > 0 ? [...open.wants, ...asked].slice(-MOST_WANTS) : open.wants;
    found.push({ trial: after.trial, wants });
  }
  return found;
}
