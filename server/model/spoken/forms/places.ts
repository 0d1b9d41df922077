/** Where a number is of, and whether it can be: places that a word takes, two numbers of one thing. */
import type { PlaceKind, Quantity } from '../../../trade/vocabulary/quantity.ts';
import { PLACE_WORDS } from '../../../trade/vocabulary/vocabulary.ts';
import type { Context, Fact } from '../form.ts';
import type { Frame } from '../frames.ts';
import { LOOKS } from '../lexicon.ts';
import type { Fit } from '../resolve.ts';

/** `76 sec` of a jet is the secondary one. */
export const placeIn = ({ place, amount }: Frame, { quantity }: Fit, context: Context): string | undefined =>
  amount.unitText === 'sec' && quantity.places?.includes('barrel')
    ? 'secondary'
    : place && quantity.places?.includes('carburettor')
      ? placeFor(place, context)
      : place;

/** A place that the word does not take, or the look of a plug beside its gap. */
export function isElsewhere({ place, remark, names, states }: Frame, { quantity, name }: Fit): boolean {
  const isLook =
    name === 'plug gap' && names?.includes('plug gap') && remark.split(/\W+/).some((word) => LOOKS.has(word));
  // Nothing is read at two speeds.
  // `2 off` is how far it is off.
  if (/^(?:off|off by|by)$/.test(remark) && name !== 'volts') return true;
  // No speed is read at a speed.
  if (quantity.dimension === 'rotation' && states.some((state) => state.startsWith('@'))) return true;
  if (isLook || states.filter((state) => state.startsWith('@')).length > 1) return true;
  if (!place) return false;
  const whole = PLACE_WORDS.get(place);
  if (whole) return !takes(quantity, whole);
  const kinds = place.split(' ').map((word) => (word.startsWith('#') ? 'cylinder' : PLACE_WORDS.get(word)));
  const isCarb = / carb$/.test(place);
  return isCarb
    ? !quantity.places?.includes('carburettor')
    : !kinds.every((kind) => kind && takes(quantity, kind));
}

/** Front and rear are sides, and so are carburettors of a pair. */
const takes = ({ places = [] }: Quantity, kind: PlaceKind): boolean =>
  places.includes(kind) || (kind === 'side' && places.includes('carburettor'));

/** `front` is the front carburettor where the notebook has one. */
const placeFor = (place: string, { habits: { places = [] } }: Pick<Context, 'habits'>): string =>
  places.includes(`${place} carb`) ? `${place} carb` : place;

/** `opened the rear screw 1/4 turn, both 5`: a bare number after a change is of something else. */
export function isOfAnother(
  { names, amount, isWhole, place }: Frame,
  { name }: Fit,
  { facts }: Context,
): boolean {
  const last = facts.at(-1);
  if (names || amount.unit || !last || last.name !== name || !/^(?:[+-]|in |out )/.test(last.value))
    return false;
  return !isWhole || last.place !== place;
}

/** Two numbers of one word in one clause, where not each says when or where it was. */
export const isSameAgain = (one: Fact, other: Fact): boolean => {
  const said = [one, other].map(({ place, states, remark }) =>
    [place, ...states, remark].filter(Boolean).join('|'),
  );
  return one.name === other.name && one.of === other.of && (said[0] === said[1] || said.includes(''));
};
