/** Distributor degrees and rpm converted to the crank, which turns twice as fast. */

import { ofCrank, type TimingTerms } from '../../analysis/ignition/timing-settings.ts';
import type { Statement } from '../../model/entry/entry.ts';
import type { Value } from '../../model/entry/value.ts';
import { formatValue } from '../../trade/measure/format.ts';
import type { Interval } from '../../trade/measure/interval.ts';
import { unitById } from '../../trade/measure/units.ts';
import { plain } from '../markdown.ts';
import type { Focus } from './focus.ts';

/** `22 deg @ 3200 rpm at the crank`; nothing for what is the crank's anyway. */
export function atTheCrank({ said: [said], value, point }: Focus): readonly string[] {
  const written = value ?? said.values[0];
  const angle = ofCrank(written, 'deg', termsOf(said));
  if (!angle || written?.form !== 'amount' || written.relative || written.interval?.low === angle.low)
    return [];
  const speed = point && crankSpeed(said, point.at);
  const at = speed ? ` @ ${formatValue(speed, unitById('rpm'))}` : '';
  return [plain(`${formatValue(angle, unitById('deg'))}${at} at the crank`)];
}

/** In rpm of the crank, whether written in crank or distributor rpm; undefined where it is no speed. */
export const crankSpeed = (said: Statement, at: Value | undefined): Interval | undefined =>
  ofCrank(at, 'rpm', termsOf(said));

const termsOf = ({ words, points }: Statement): TimingTerms => ({
  words: words.map(({ text }) => text.toLowerCase()),
  points,
});
