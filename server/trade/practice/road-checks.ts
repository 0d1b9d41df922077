/** Checks before a road run, and the work that makes each one due again (common practice, no source). */
import type { PartKind } from '../vocabulary/quantity.ts';

interface RoadCheck {
  readonly name: string;
  /** Work on a setting of these owners, or on these settings, makes it due. */
  readonly owners: readonly PartKind[];
  readonly settings: readonly string[];
  readonly why: string;
}

export const ROAD_CHECKS: readonly RoadCheck[] = [
  {
    name: 'throttle return',
    owners: ['carburettor'],
    settings: ['throttle spring', 'idle screw', 'secondary stop', 'accelerator pump'],
    why: 'a throttle that sticks open takes the vehicle out of your control',
  },
  {
    name: 'fuel leaks',
    owners: ['fuel system'],
    settings: ['fuel regulator', 'fuel line', 'float level', 'needle seat'],
    why: 'fuel under pressure near hot parts starts fires',
  },
];

/** The checks that work on this setting makes due. */
export function checksDueAfter(setting: string, owner: PartKind | undefined): readonly RoadCheck[] {
  return ROAD_CHECKS.filter(
    (check) => check.settings.includes(setting) || (owner !== undefined && check.owners.includes(owner)),
  );
}
