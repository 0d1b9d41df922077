import type { Carried } from '../model/carry.ts';
import { isInGear } from '../model/idling.ts';
import type { Said } from '../model/notebook.ts';
import { formatValue } from '../trade/format.ts';
import { unitById } from '../trade/units.ts';
import { problemsIn, rule } from './rule.ts';
import { valueIn } from './said.ts';

/** rpm, with an automatic in drive: TM 5-4210-230-14&P-1. */
const LOWEST = 550;

export const idleInGearLow = rule({
  code: 'idle-in-gear-low',
  severity: 'information',
  title: 'Idle in gear too low for an automatic',
  why: 'With an automatic in drive a published manual brings an idle under 550 rpm up to 550. It asks for a tachometer good to 1 or 2 per cent. The manual of your own engine overrules it.',
  standing: 'published',
  source: 'TM 5-4210-230-14&P-1',
  good: 'session 2026-05-02\n  idle 600 rpm in drive\n',
  bad: 'session 2026-05-02\n  idle 500 rpm in drive\n',
  on: ['reading'],
  about: ({ name }) => name === 'idle',
  check({ quantity, said }, { before }) {
    return problemsIn(said, (each) => {
      const value = valueIn(each, 'rpm', quantity);
      if (!value || !(value.high < LOWEST) || !isInGear(each) || !isAutomatic(before, each)) return [];
      return [
        {
          span: each.span,
          message: `Idle in gear is ${formatValue(value, unitById('rpm'))}; with an automatic in drive one under ${LOWEST} rpm is to be brought up to ${LOWEST} (published: TM 5-4210-230-14&P-1).`,
        },
      ];
    });
  },
});

/** Only an automatic idles `in drive`. */
function isAutomatic({ facts }: Carried, said: Said): boolean {
  const gearbox = facts.get('transmission|')?.text?.toLowerCase();
  return gearbox === undefined ? said.heard.includes('drive') : gearbox.includes('automatic');
}
