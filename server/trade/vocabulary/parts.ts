/** Words that name a part, by kind of part. */
import type { PartKind } from './quantity.ts';

const PART_WORDS: Readonly<Record<PartKind, string>> = {
  carburettor: 'carb carbs carburettor carburettors carburetor carburetors needle jet jets',
  distributor: 'distributor distributors ignition magneto magnetos mag mags points',
  plugs: 'plugs plug',
  'fuel system': 'pump regulator tank fuel',
  blower: 'blower supercharger',
  'valve gear': 'cam camshaft head heads valves lifters rockers valve',
  engine: 'engine block',
  manifold: 'manifold manifolds intake exhaust headers vaporiser vaporizer',
  flywheel: 'flywheel damper clutch',
  gearbox: 'gearbox transmission',
  propeller: 'propeller prop',
  tyres: 'tyres tyre tires tire',
  'running gear': 'axle wheels brakes hull',
  vehicle: 'vehicle',
};

const KIND_OF = new Map(
  Object.entries(PART_WORDS).flatMap(([kind, words]) =>
    words.split(' ').map((word) => [word, kind as PartKind] as const),
  ),
);

/** A name to begin a part's with, one for each kind. */
export const PART_NAMES: readonly string[] = Object.values(PART_WORDS).map(
  (words) => words.split(' ', 1)[0] as string,
);

/** The kind of the first word that names one; undefined where none does. */
export function partKind(words: readonly string[]): PartKind | undefined {
  for (const word of words) {
    const kind = KIND_OF.get(word.toLowerCase());
    if (kind) return kind;
  }
  return undefined;
}
