/** Observations: each reading with the settings in force when it was taken. */

import type { Origin } from '../../model/entry/entry.ts';
import { type LineState, saidBy } from '../../model/snapshot/page.ts';
import { keptByPage } from '../../model/snapshot/per-page.ts';
import { type SessionAir, sessionAir } from '../air/session-air.ts';
import { type Measured, measuredIn } from './conditions.ts';
import type { Setup } from './setup-changes.ts';

export interface Observation extends Measured {
  readonly setup: Setup;
  /** The air of its session up to there. */
  readonly air: SessionAir;
  readonly by: Origin;
}

/** The observations of each page, in the order of their lines. */
export const observationsOn = keptByPage(observationsIn);

function observationsIn(readings: readonly LineState[]): readonly Observation[] {
  return saidBy(readings).flatMap(({ entry, before, where }) => {
    if (entry.kind !== 'reading') return [];
    const measured = entry.statements.flatMap((said) => measuredIn(entry.quantity, said, before));
    if (measured.length === 0) return [];
    const { settings, fitted, facts } = before;
    const setup = { settings, fitted, facts };
    const air = sessionAir(before);
    return measured.map((each) => ({ ...each, setup, air, by: where }));
  });
}
