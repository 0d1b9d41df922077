import { idleOf } from '../model/idling.ts';
import { formatValue } from '../trade/format.ts';
import { subtract } from '../trade/interval.ts';
import { unitById } from '../trade/units.ts';
import { rule } from './rule.ts';

/** rpm. From memory: workshop habit is a drop of 50 to 150. */
const LARGE = 200;

export const idleDropLarge = rule({
  code: 'idle-drop-large',
  severity: 'information',
  title: 'Idle drops far into gear',
  why: 'Every engine slows when it takes up the load of the gearbox. A large drop speaks of an idle held up by throttle opening and a weak mixture or little advance, or of a tight converter.',
  standing: 'from memory',
  good: 'session 2026-05-02\n  idle 850 rpm in neutral\n  idle 720 rpm in drive\n',
  bad: 'session 2026-05-02\n  idle 950 rpm in neutral\n  idle 690 rpm in drive\n',
  on: ['reading'],
  about: ({ name }) => name === 'idle',
  check(entry, { before, after, where }) {
    // What was turned between the two accounts for the difference.
    if (before.turned.length > 0) return [];
    const { inGear, outOfGear } = idleOf(after);
    if (!inGear || !outOfGear || (inGear.by !== where && outOfGear.by !== where)) return [];
    const drop = subtract(outOfGear.value, inGear.value);
    if (!(drop.low > LARGE)) return [];
    const rpm = unitById('rpm');
    const other = inGear.by === where ? outOfGear : inGear;
    return [
      {
        span: entry.said[0]?.span ?? entry.name,
        message: `Idle drops by ${formatValue(drop, rpm)} into gear, from ${formatValue(outOfGear.value, rpm)} to ${formatValue(inGear.value, rpm)}; usual are 50 to 150, over ${LARGE} rpm is asked about (from memory).`,
        related: other.by === where ? [] : [{ origin: other.by, message: 'the other idle reading' }],
      },
    ];
  },
});
