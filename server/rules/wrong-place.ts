import type { PlaceKind } from '../trade/quantity.ts';
import { PLACE_WORDS } from '../trade/vocabulary.ts';
import { problemsIn, rule } from './rule.ts';

export const wrongPlace = rule({
  code: 'wrong-place',
  severity: 'information',
  title: 'A place where the engine has no such thing',
  why: 'Some things are there once for each cylinder or side and some once for the whole engine. A value for a place is kept apart from the value for the whole, so the totals do not take it.',
  standing: 'common practice',
  good: 'session 2026-05-02\n  mixture left 1 1/4 turns\n',
  bad: 'session 2026-05-02\n  initial left 9 deg\n',
  on: ['setting', 'reading'],
  check({ quantity, said }, { before }) {
    if (before.words.has(quantity.name)) return [];
    const places = quantity.places ?? [];
    return problemsIn(said, ({ place }) => {
      if (!place || kindsOf(place.text).some((kind) => kind === 'any' || places.includes(kind))) return [];
      const given = places.length === 0 ? 'once for the whole engine' : `for each ${places.join(' or ')}`;
      return [{ span: place.span, message: `${quantity.name} is given ${given}, not for "${place.text}".` }];
    });
  },
});

/** What the words of a place may be a place of; a side may be the side of anything that stands on one. */
function kindsOf(place: string): readonly (PlaceKind | 'any')[] {
  if (place.includes('#')) return ['cylinder'];
  const whole = PLACE_WORDS.get(place);
  const words = place.split(' ').flatMap((word) => PLACE_WORDS.get(word) ?? []);
  const kinds = whole ? [whole, ...words] : words;
  if (place === 'all') return ['any'];
  return kinds.includes('side') ? [...kinds, 'bank', 'carburettor', 'barrel', 'valve'] : kinds;
}
