/** What a head says that the day was of: a notebook is one engine's. */

const MACHINES: ReadonlyMap<string, string> = new Map(
  [
    'truck pickup lorry',
    'boat launch cruiser',
    'car saloon sedan coupe',
    'bike motorcycle motorbike',
    'tractor',
    'van',
    'mower',
  ].flatMap((names) => names.split(' ').map((name, _, all) => [name, all[0] as string] as const)),
);

/** The machine that a head's title, or the notebook's, begins with or names alone; undefined where it names none. */
export function machineIn(title: string): string | undefined {
  const words = title.toLowerCase().match(/\p{L}+/gu) ?? [];
  return MACHINES.get(words[0] ?? '');
}

/** True for the head of a day on which another machine was worked on than the notebook is kept of. */
export function isOtherMachine(head: string, machine: string | undefined): boolean {
  const named = machineIn(head.replace(/^session \S+\s*/, ''));
  return machine !== undefined && named !== undefined && named !== machine;
}
