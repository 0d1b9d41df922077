import { settingBehind } from '../trade/behind.ts';
import { type Problem, rule } from './rule.ts';
import { amountsOf } from './said.ts';

export const changeOfReading = rule({
  code: 'change-of-reading',
  severity: 'warning',
  title: 'A change written of something that is only read',
  why: 'A reading is what the engine gave at a moment, so that "more" and "less" say nothing of it: the number is taken to be the reading itself. What was turned is a setting, and is written by its own word.',
  standing: 'notation',
  good: 'session 2026-05-02\n  initial 9 deg\n  initial +2 deg\n',
  bad: 'session 2026-05-02\n  timing +2 deg\n',
  on: ['reading'],
  about: ({ name }) => settingBehind(name) !== undefined,
  formed: ({ kinds }) => /[-+iu]/.test(kinds),
  check({ quantity, said, line }) {
    return said.flatMap(({ values }) =>
      amountsOf(values).flatMap(({ relative, span, numberSpan }): Problem[] => {
        const apart = /[-−]\s$/.test(line.text.slice(0, numberSpan.from));
        if (!relative || (relative === 'less' && !apart)) return [];
        return [
          {
            span,
            message: `${quantity.name} is read, not set: this is taken as the reading itself. A change is written of ${settingBehind(quantity.name)}.`,
          },
        ];
      }),
    );
  },
});
