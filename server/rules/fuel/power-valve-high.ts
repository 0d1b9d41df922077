import { idleDepression } from '../../analysis/fuel/idle-readings.ts';
import { settingIn } from '../../model/state/apply-setting.ts';
import { keyOf } from '../../model/state/state.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { shift } from '../../trade/measure/interval.ts';
import { unitById } from '../../trade/measure/units.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

/** inHg, margin of a power valve's rating below the idle depression in gear. Common practice, no source. */
const ROOM = 2;

export const powerValveHigh = rule({
  code: 'power-valve-high',
  severity: 'information',
  title: 'Power valve rating too close to the idle depression',
  why: 'The valve opens when the depression falls below its rating. One rated close to the idle depression in gear may be open at idle and make it too rich. The rule of thumb is half the depression, and never more than the depression less 2 inHg.',
  standing: 'common practice',
  good: 'session 2026-05-02\n  depression 12 inHg at idle in drive\n  power valve 6.5 inHg\n',
  bad: 'session 2026-05-02\n  depression 10 inHg at idle in drive\n  power valve 8.5 inHg\n',
  on: ['setting', 'reading'],
  about: ({ name }) => name === 'power valve' || name === 'depression',
  check({ kind, statements: said, name }, { after, where }) {
    const setting = after.settings.get(keyOf('power valve', undefined));
    const rating = settingIn(setting, 'inHg');
    const depression = idleDepression(after);
    if (!setting || !rating || !depression || (kind === 'reading' && depression.by !== where))
      return NO_PROBLEMS;
    const ceiling = shift(depression.value, -ROOM);
    if (!(rating.low > ceiling.high)) return NO_PROBLEMS;
    const inHg = (value: typeof rating) => formatValue(value, unitById('inHg'));
    const other = kind === 'reading' ? setting.by : depression.by;
    return [
      {
        span: said[0]?.span ?? name,
        message: `The power valve opens at ${inHg(rating)}, but idle depression ${depression.inGear ? 'in gear ' : ''}is ${inHg(depression.value)}. Rated over ${inHg(ceiling)} it may be open at idle (common practice, no source).`,
        related:
          other === where
            ? []
            : [
                {
                  origin: other,
                  message: kind === 'reading' ? 'Power valve set here' : 'Idle depression read here',
                },
              ],
      },
    ];
  },
});
