/** Checks before a road run, and the work that makes each one due again (common practice, no source). */
import type { PartKind, Traits } from '../vocabulary/quantity.ts';

interface RoadCheck {
  readonly name: string;
  /** Work on a setting of these owners makes it due, and work on a setting that names it (`Traits.roadCheck`). */
  readonly owners: readonly PartKind[];
  readonly why: string;
}

export const ROAD_CHECKS: readonly RoadCheck[] = [
  {
    name: 'throttle return',
    owners: ['carburettor'],
    why: 'a throttle that sticks open takes the vehicle out of your control',
  },
  {
    name: 'fuel leaks',
    owners: ['fuel system'],
    why: 'fuel under pressure near hot parts starts fires',
  },
];

/** What was worked on: a setting, or a kind of part fitted or taken off. */
export interface Work {
  readonly owner?: PartKind;
  readonly traits?: Traits;
}

/** The checks that this work makes due. */
export function checksDueAfter({ owner, traits }: Work): readonly RoadCheck[] {
  return ROAD_CHECKS.filter(
    (check) => check.name === traits?.roadCheck || (owner !== undefined && check.owners.includes(owner)),
  );
}
