/** Work groups: settings that one job moves together, so that they count as one cause, and readings only few parts affect (common practice, no source). */
import type { PartKind } from '../vocabulary/quantity.ts';

/** The same for settings, and kinds of part, that one piece of work moves; any other is an act of its own. */
export const actOf = (name: string): string => ACT_OF.get(name) ?? name;

const ACTS: readonly (readonly string[])[] = [
  ['points gap', 'dwell'],
  ['mechanical', 'mechanical limit', 'advance springs', 'advance weights'],
  ['vacuum advance', 'vacuum limit', 'vacuum source'],
  ['plug type', 'heat range'],
  ['blower ratio', 'blower pulley'],
  ['float level', 'float drop'],
  ['carburettor', 'fuel regulator'],
];

const ACT_OF: ReadonlyMap<string, string> = new Map(
  ACTS.flatMap((names) => names.map((name) => [name, names[0] as string] as const)),
);

/** The parts whose settings can move a reading; undefined where any may. */
export const movedBy = (reading: string): readonly PartKind[] | undefined => MOVED_BY.get(reading);

/** Jets and timing do not change how a cylinder seals, nor the valves what the fuel pump makes. */
const MOVED_BY: ReadonlyMap<string, readonly PartKind[]> = new Map(
  Object.entries({
    compression: ['engine', 'valve gear', 'blower'],
    'leak down': ['engine', 'valve gear'],
    'oil pressure': ['engine', 'valve gear'],
    'fuel pressure': ['fuel system', 'carburettor', 'blower'],
    'lead resistance': ['plugs', 'distributor'],
  }),
);
