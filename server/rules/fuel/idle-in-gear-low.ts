import { isInGear } from '../../analysis/fuel/idle-readings.ts';
import type { Statement } from '../../model/entry/entry.ts';
import type { State } from '../../model/state/state.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { unitById } from '../../trade/measure/units.ts';
import { valueIn } from '../lib/statement-values.ts';
import { problemsIn, rule } from '../rule.ts';

/** rpm, lowest idle of an automatic in drive: TM 5-4210-230-14&P-1. */
const LOWEST = 550;

export const idleInGearLow = rule({
  code: 'idle-in-gear-low',
  severity: 'information',
  title: 'Idle in gear too low for an automatic',
  why: 'A published manual brings an idle under 550 rpm up to 550 with an automatic in drive. It calls for a tachometer good to 1 or 2 per cent. The manual for your own engine overrules it.',
  standing: 'published',
  source: 'TM 5-4210-230-14&P-1',
  good: 'session 2026-05-02\n  idle 600 rpm in drive\n',
  bad: 'session 2026-05-02\n  idle 500 rpm in drive\n',
  on: ['reading'],
  about: ({ name }) => name === 'idle',
  check({ quantity, statements: said }, { before }) {
    return problemsIn(said, (each) => {
      const value = valueIn(each, 'rpm', quantity);
      if (!value || !(value.high < LOWEST) || !isInGear(each) || !isAutomatic(before, each)) return [];
      return [
        {
          span: each.span,
          message: `Idle in gear is ${formatValue(value, unitById('rpm'))}, low for an automatic in drive. Bring it up to ${LOWEST} rpm (published: TM 5-4210-230-14&P-1).`,
        },
      ];
    });
  },
});

/** Whether the gearbox is an automatic; where it is not written, whether the reading is `in drive`, which no other gearbox has. */
function isAutomatic({ facts }: State, said: Statement): boolean {
  const gearbox = facts.get('transmission|')?.text?.toLowerCase();
  return gearbox === undefined ? said.qualifiers.includes('drive') : gearbox.includes('automatic');
}
