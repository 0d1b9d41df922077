import { idleOf } from '../../analysis/fuel/idle-readings.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { subtract } from '../../trade/measure/interval.ts';
import { unitById } from '../../trade/measure/units.ts';
import { rule } from '../rule.ts';

/** rpm. From memory: a drop of 50 to 150 is typical. */
const LARGE = 200;

export const idleDropLarge = rule({
  code: 'idle-drop-large',
  severity: 'information',
  title: 'Idle drops far into gear',
  why: 'Every engine slows as it takes up the load of the gearbox. A large drop suggests an idle held up by throttle opening, with a lean mixture or little advance, or a tight converter.',
  standing: 'from memory',
  good: 'session 2026-05-02\n  idle 850 rpm in neutral\n  idle 720 rpm in drive\n',
  bad: 'session 2026-05-02\n  idle 950 rpm in neutral\n  idle 690 rpm in drive\n',
  on: ['reading'],
  about: ({ name }) => name === 'idle',
  check(entry, { before, after, where }) {
    // A setting changed between the two explains the difference.
    if (before.changesSinceReading.length > 0) return [];
    const { inGear, outOfGear } = idleOf(after);
    if (!inGear || !outOfGear || (inGear.by !== where && outOfGear.by !== where)) return [];
    const drop = subtract(outOfGear.value, inGear.value);
    if (!(drop.low > LARGE)) return [];
    const rpm = unitById('rpm');
    const other = inGear.by === where ? outOfGear : inGear;
    return [
      {
        span: entry.statements[0]?.span ?? entry.name,
        message: `Idle drops by ${formatValue(drop, rpm)} into gear, from ${formatValue(outOfGear.value, rpm)} to ${formatValue(inGear.value, rpm)}; 50 to 150 rpm is typical, over ${LARGE} is worth a look (from memory).`,
        related: other.by === where ? [] : [{ origin: other.by, message: 'Other idle reading' }],
      },
    ];
  },
});
