/** Settings that one piece of work moves together: two words for it are no two causes. Common practice, no source. */

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
