/**
 * Cautions by kind of work: what can hurt somebody, shown once where it applies, never as a finding. Common practice; the
 * maker's instructions, local law and a licensed mechanic come before it.
 */

export interface Caution {
  /** Lower case, words joined by hyphens. */
  readonly id: string;
  /** The work, in a few words. */
  readonly work: string;
  /** One or two short sentences. */
  readonly text: string;
  /** Settings and readings that are that work. */
  readonly quantities: ReadonlySet<string>;
  /** Words beside a value or in its conditions that are that work, lower case. */
  readonly words: ReadonlySet<string>;
}

const row = (id: string, work: string, text: string, quantities: string, words = ''): Caution => ({
  id,
  work,
  text,
  quantities: new Set(quantities.split(', ')),
  words: new Set(words === '' ? [] : words.split(', ')),
});

/** In the order in which they are shown. */
export const CAUTIONS: readonly Caution[] = [
  row(
    'carbon-monoxide',
    'engine running',
    'Exhaust gas kills in a closed space: run the engine outdoors or with exhaust extraction.',
    'idle, fast idle, engine speed, timing, total, cruise total, tube, egt, carbon monoxide, hydrocarbons, oxygen, lambda, air fuel ratio, depression, smoke, carburettor balance',
    'idle, idling, running',
  ),
  row(
    'hot-parts-and-fans',
    'hands near a running engine',
    'Keep hands, sleeves and leads clear of fan, belts and hot exhaust. An electric fan can start on its own.',
    'timing, total, cruise total, tube, water, head temperature, carburettor balance, idle',
  ),
  row(
    'fuel-opened',
    'fuel system opened',
    'Release the pressure first. No flame, spark or hot part near, catch drips, extinguisher at hand. Check for leaks before starting.',
    'fuel line, return line, fuel filter, fuel regulator, fuel pressure, float level, float drop, needle seat, main jet, secondary jet, idle jet, pump nozzle, power valve, accelerator pump, fuel pump, hose',
  ),
  row(
    'idle-in-gear',
    'idle checked in gear',
    'Chock the wheels, set the brake, have someone on the foot brake and nobody in front or behind.',
    'stall speed',
    'drive, gear, reverse',
  ),
  row(
    'road-run',
    'run on the road or water',
    'Test brakes, steering and throttle return first. Keep to the law, and let a passenger read the instruments.',
    'speed, run time',
    'road, driving, underway',
  ),
  row(
    'boost',
    'boost',
    'Knock under boost breaks pistons in seconds. Lift off at once, retard or richen, and find the cause before going on.',
    'boost, blower ratio, wastegate, boost retard, blower pulley',
    'boost',
  ),
  row(
    'jacked-up',
    'dynamometer run',
    'Tie the vehicle down, keep clear of wheels and rollers, extract the exhaust, wear ear protection.',
    'power',
  ),
  row(
    'ignition-voltage',
    'ignition open',
    'Thousands of volts: hold leads with insulated pliers, never by hand. No fuel vapour near an open spark.',
    'spark, lead resistance',
  ),
];

/** Cautions for a quantity with these words beside it, in the table's order. */
export const cautionsFor = (quantity: string, words: readonly string[]): readonly Caution[] =>
  CAUTIONS.filter(
    ({ quantities, words: own }) =>
      quantities.has(quantity) || words.some((word) => own.has(word.toLowerCase())),
  );
