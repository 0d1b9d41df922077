import {
  type Gear,
  type Gearing,
  gearingOf,
  type SpeedRead,
  slipIn,
  speedIn,
  speedRead,
} from '../../analysis/road/gearing.ts';
import type { State } from '../../model/state/state.ts';
import { formatValue } from '../../trade/measure/format.ts';
import type { Interval } from '../../trade/measure/interval.ts';
import { convertInterval, type Unit, unitById } from '../../trade/measure/units.ts';
import { PLAUSIBLE_SLIP } from '../../trade/sums/gears.ts';
import { amountsOf } from '../lib/statement-values.ts';
import { NO_PROBLEMS, problemsIn, rule } from '../rule.ts';

export const speedNotPossible = rule({
  code: 'speed-not-possible',
  severity: 'warning',
  title: 'Road speed does not match gear and engine speed',
  why: 'Tyre, final drive and gear fix the road speed at each engine speed; slip only takes some off. Speed, engine speed, gear or one of those facts is wrong. Up to 5 % over is allowed for worn tyres or rough tyre sizes, up to 20 % under for slip.',
  standing: 'common practice',
  good: 'vehicle\n  tyre diameter 25 in\n  final drive 3.9\n  gear ratios 3.5 2 1.3 1\nsession 2026-05-02\n  speed 55 mph @ 3000 rpm in fourth\n',
  bad: 'vehicle\n  tyre diameter 25 in\n  final drive 3.9\n  gear ratios 3.5 2 1.3 1\nsession 2026-05-02\n  speed 80 mph @ 3000 rpm in fourth\n',
  on: ['reading'],
  about: ({ name }) => name === 'speed',
  check({ statements: said }, { before }) {
    const gearing = gearingOf(before);
    if (!gearing) return NO_PROBLEMS;
    return problemsIn(said, (each) => {
      const read = speedRead(each, before, gearing);
      const [value] = amountsOf(each.values);
      const message =
        read?.rpm && value && messageFor(gearing, read, read.rpm, before, value.unit ?? unitById('mph'));
      return message ? [{ span: value.span, message }] : [];
    });
  },
});

function messageFor(
  gearing: Gearing,
  read: SpeedRead,
  rpm: Interval,
  state: State,
  unit: Unit,
): string | undefined {
  const fastest = gearing.gears.reduce((a, b) => (b.overall.low < a.overall.low ? b : a));
  const gear = read.gear ?? fastest;
  const slip = slipIn(gearing, gear, rpm, read.metresPerSecond);
  const gives = (each: Gear) =>
    formatValue(roundInterval(convertInterval(speedIn(gearing, each, rpm), unitById('m/s'), unit)), unit);
  const where = gear.name === 'direct' ? 'direct drive' : gear.name;
  if (slip.high < PLAUSIBLE_SLIP.low)
    return `At ${formatValue(rpm, unitById('rpm'))} ${where} gives ${gives(gear)}, so a faster reading is not possible in ${read.gear ? 'that' : 'any'} gear (common practice, no source).`;
  if (read.gear && slip.low > PLAUSIBLE_SLIP.high && !slipsMuch(state))
    return `At ${formatValue(rpm, unitById('rpm'))} ${where} gives ${gives(gear)}. This is much slower: another gear, or something is slipping (common practice, no source).`;
  return undefined;
}

/** Whether the gearbox has a torque converter, which may slip more than a tyre. */
const slipsMuch = ({ facts }: State): boolean => /auto/i.test(facts.get('transmission|')?.text ?? '');

const roundInterval = (iv: Interval): Interval => ({
  ...iv,
  low: Math.round(iv.low * 10) / 10,
  high: Math.round(iv.high * 10) / 10,
});
