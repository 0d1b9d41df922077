import { settingIn } from '../model/amounts.ts';
import { keyOf } from '../model/carry.ts';
import { idleDepression } from '../model/idling.ts';
import { formatValue } from '../trade/format.ts';
import { shift } from '../trade/interval.ts';
import { unitById } from '../trade/units.ts';
import { NO_PROBLEMS, rule } from './rule.ts';

/** inHg under the idle depression in gear that a power valve's rating keeps. Common practice, no source. */
const ROOM = 2;

export const powerValveHigh = rule({
  code: 'power-valve-high',
  severity: 'information',
  title: 'Power valve rated too near the idle depression',
  why: 'The valve opens when the depression falls under its rating. One rated near the idle depression in gear may stand open at idle, which floods it with fuel. The rule of thumb is half the depression, and never over it less 2 inHg.',
  standing: 'common practice',
  good: 'session 2026-05-02\n  depression 12 inHg at idle in drive\n  power valve 6.5 inHg\n',
  bad: 'session 2026-05-02\n  depression 10 inHg at idle in drive\n  power valve 8.5 inHg\n',
  on: ['setting', 'reading'],
  about: ({ name }) => name === 'power valve' || name === 'depression',
  check({ kind, said, name }, { after, where }) {
    const setting = after.settings.get(keyOf('power valve', undefined));
    const rating = settingIn(setting, 'inHg');
    const depression = idleDepression(after);
    if (!setting || !rating || !depression || (kind === 'reading' && depression.by !== where))
      return NO_PROBLEMS;
    const ceiling = shift(depression.value, -ROOM);
    if (!(rating.low > ceiling.high)) return NO_PROBLEMS;
    const told = (value: typeof rating) => formatValue(value, unitById('inHg'));
    const other = kind === 'reading' ? setting.by : depression.by;
    return [
      {
        span: said[0]?.span ?? name,
        message: `The power valve opens at ${told(rating)}, the idle depression ${depression.inGear ? 'in gear ' : ''}is ${told(depression.value)}: over ${told(ceiling)} it may stand open at idle (common practice, no source).`,
        related: other === where ? [] : [{ origin: other, message: 'the other of the two' }],
      },
    ];
  },
});
