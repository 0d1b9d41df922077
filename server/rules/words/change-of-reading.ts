import { amountsOf } from '../lib/statement-values.ts';
import { type Problem, rule } from '../rule.ts';

export const changeOfReading = rule({
  code: 'change-of-reading',
  severity: 'warning',
  title: 'A change written for something that is only read',
  why: 'A reading is what the engine gave at one moment, so "more" or "less" does not apply: the number is taken as the reading itself. What was adjusted is a setting; write the change under its own word.',
  standing: 'notation',
  good: 'session 2026-05-02\n  initial 9 deg\n  initial +2 deg\n',
  bad: 'session 2026-05-02\n  timing +2 deg\n',
  on: ['reading'],
  about: ({ traits }) => traits?.adjustedBy !== undefined,
  formed: ({ kinds }) => /[-+iu]/.test(kinds),
  check({ quantity, statements: said, line }) {
    return said.flatMap(({ values }) =>
      amountsOf(values).flatMap(({ relative, span, numberSpan }): Problem[] => {
        const apart = /[-−]\s$/.test(line.text.slice(0, numberSpan.from));
        if (!relative || (relative === 'less' && !apart)) return [];
        return [
          {
            span,
            message: `${quantity.name} is read, not set, so this is taken as the reading itself. Write a change under ${quantity.traits?.adjustedBy}.`,
          },
        ];
      }),
    );
  },
});
