import { AFLOAT_CHECKS } from './checks/afloat.ts';
import { AIR_CHECKS } from './checks/air.ts';
import type { Check } from './checks/check.ts';
import { ENGINE_CHECKS } from './checks/engine.ts';
import { STATISTICS_CHECKS } from './checks/statistics.ts';
import { WORKSHOP_CHECKS } from './checks/workshop.ts';

/** Every value from outside the project the trade's sums are held to. */
export const CHECKS: readonly Check[] = [
  ...AIR_CHECKS,
  ...ENGINE_CHECKS,
  ...WORKSHOP_CHECKS,
  ...AFLOAT_CHECKS,
  ...STATISTICS_CHECKS,
];
