import type { PlaceKind } from '../../trade/vocabulary/quantity.ts';
import { PLACE_WORDS } from '../../trade/vocabulary/vocabulary.ts';
import { problemsIn, rule } from '../rule.ts';

export const wrongPlace = rule({
  code: 'wrong-place',
  severity: 'information',
  title: 'A place that does not apply',
  why: 'Some things exist once for each cylinder or side, others once for the whole engine. A value for a place is kept separate from the value for the whole engine, so the totals do not use it.',
  standing: 'common practice',
  good: 'session 2026-05-02\n  mixture left 1 1/4 turns\n',
  bad: 'session 2026-05-02\n  initial left 9 deg\n',
  on: ['setting', 'reading'],
  check({ quantity, statements: said }, { before }) {
    if (before.words.has(quantity.name)) return [];
    const places = quantity.places ?? [];
    return problemsIn(said, ({ place }) => {
      if (!place || kindsOf(place.text).some((kind) => kind === 'any' || places.includes(kind))) return [];
      const given = places.length === 0 ? 'once for the whole engine' : `for each ${places.join(' or ')}`;
      return [
        {
          span: place.span,
          message: `${quantity.name} is given ${given}, not for "${place.text}", so the totals leave this value out (common practice, no source).`,
        },
      ];
    });
  },
});

/** Kinds of place that the words may name; a side may be that of anything with sides. */
function kindsOf(place: string): readonly (PlaceKind | 'any')[] {
  if (place.includes('#')) return ['cylinder'];
  const whole = PLACE_WORDS.get(place);
  const words = place.split(' ').flatMap((word) => PLACE_WORDS.get(word) ?? []);
  const kinds = whole ? [whole, ...words] : words;
  if (place === 'all') return ['any'];
  return kinds.includes('side') ? [...kinds, 'bank', 'carburettor', 'barrel', 'valve'] : kinds;
}
