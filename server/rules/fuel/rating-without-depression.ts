import { problemsIn, rule } from '../rule.ts';

export const ratingWithoutDepression = rule({
  code: 'rating-without-depression',
  severity: 'information',
  title: 'A carburettor rating without its depression',
  why: 'Flow rises with the square root of the depression it is measured at. Four-barrels are rated at 1.5 inHg and two-barrels at 3.0, so the number alone cannot be compared with another.',
  standing: 'published',
  source: 'public handbooks',
  good: 'session 2026-05-02\n  carb rating 500 cfm @ 3 inHg\n',
  bad: 'session 2026-05-02\n  carb rating 500 cfm\n',
  on: ['setting'],
  about: ({ name }) => name === 'carb rating',
  check({ statements: said }) {
    return problemsIn(said, ({ points, values, span }) =>
      points.length > 0 || values.length === 0
        ? []
        : [
            {
              span,
              message:
                'At which depression? Two-barrels are rated at 3 inHg and four-barrels at 1.5. Write "@ 3 inHg" or "@ 1.5 inHg" to make it comparable (published, public handbooks).',
            },
          ],
    );
  },
});
