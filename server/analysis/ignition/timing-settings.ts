/** Ignition settings in force, as the curves and numbers that the totals need. */

import { latestFew } from '../../memo.ts';
import { amountIn } from '../../model/entry/amount.ts';
import type { Point } from '../../model/entry/entry.ts';
import type { Value } from '../../model/entry/value.ts';
import { settingIn } from '../../model/state/apply-setting.ts';
import type { SettingInForce, State } from '../../model/state/state.ts';
import { exact, type Interval, least, range, scale } from '../../trade/measure/interval.ts';
import { greatestOn, type VacuumSource } from '../../trade/sums/ignition.ts';
import type { CurvePoint } from '../../trade/vocabulary/quantity.ts';

export interface Curve {
  readonly points: readonly CurvePoint[];
  readonly setting: SettingInForce;
}

export interface Timing {
  readonly initial: { readonly value: Interval; readonly setting: SettingInForce } | undefined;
  /** Crank degrees at engine rpm. */
  readonly mechanical: Curve | undefined;
  readonly mechanicalLimit: { readonly value: Interval; readonly setting: SettingInForce } | undefined;
  /** Crank degrees at inHg. */
  readonly vacuum: Curve | undefined;
  readonly vacuumLimit: { readonly value: Interval; readonly setting: SettingInForce } | undefined;
  readonly source: { readonly value: VacuumSource; readonly setting: SettingInForce } | undefined;
}

/** Undefined for each part that is not known, is no angle, or is a change from an unknown start. */
export const timingOf = ({ settings }: Pick<State, 'settings'>): Timing => timingIn(settings);

/** Memo by the settings: most lines set nothing, and the settings stay the same. */
const timingIn = latestFew(2, (settings: State['settings']): Timing => {
  const setting = (name: string) => settings.get(`${name}|`);
  const [mechanical, vacuum] = [setting('mechanical'), setting('vacuum advance')];
  return {
    initial: crankAngle(setting('initial')),
    mechanical: mechanical && byRpm(mechanical),
    mechanicalLimit: crankAngle(setting('mechanical limit')),
    vacuum: vacuum && byDepression(vacuum),
    vacuumLimit: crankAngle(setting('vacuum limit')),
    source: sourceOf(setting('vacuum source'), vacuum),
  };
});

/** Words and points of a timing setting; words in lower case. */
export type TimingTerms = Pick<SettingInForce, 'words' | 'points'>;

/**
 * The word `distributor` (or `dist`) anywhere on the line means all of it: whoever reads degrees off a distributor
 * machine reads its speed there too.
 */
const inDistributorTerms = ({ words, points }: TimingTerms): boolean =>
  words.some((word) => /^dist(?:ributor|\.)?$/.test(word)) ||
  points.some((point) => ofDistributor(point.value) || ofDistributor(point.at));

const ofDistributor = (amount: Value | undefined): boolean =>
  amount?.form === 'amount' && (amount.unit?.id.startsWith('dist-') ?? false);

/** Degrees or rpm of the crank; a unit that says distributor is turned into the crank's by itself. */
export function ofCrank(
  amount: Value | undefined,
  unit: 'deg' | 'rpm',
  terms: TimingTerms,
): Interval | undefined {
  const value = amountIn(amount, unit);
  return value && inDistributorTerms(terms) && !ofDistributor(amount) ? scale(value, 2) : value;
}

function crankAngle(
  setting: SettingInForce | undefined,
): { value: Interval; setting: SettingInForce } | undefined {
  if (!setting || !settingIn(setting, 'deg')) return undefined;
  const value = ofCrank(setting.values[0], 'deg', setting);
  return value && { value, setting };
}

/** Memo by the curve's setting: it is needed again at every line until it is changed. */
const byRpm = latestFew(4, (setting: SettingInForce) => readCurve(setting, 'rpm'));
const byDepression = latestFew(4, (setting: SettingInForce) => readCurve(setting, 'inHg'));

function readCurve(setting: SettingInForce, against: 'rpm' | 'inHg'): Curve | undefined {
  const points = setting.points.flatMap((point) => curvePoint(point, against, setting));
  if (points.length > 0) return { points, setting };
  const most = crankAngle(setting);
  return most && { points: upTo(most.value), setting };
}

function curvePoint(point: Point, against: 'rpm' | 'inHg', setting: SettingInForce): CurvePoint[] {
  const value = ofCrank(point.value, 'deg', setting);
  const at = against === 'rpm' ? ofCrank(point.at, 'rpm', setting) : amountIn(point.at, against);
  return value && at && at.low === at.high ? [{ at: at.low, value }] : [];
}

/** Curve where only the maximum is known: anything up to it at low speed, all of it at the highest. */
const upTo = (most: Interval): readonly CurvePoint[] => [
  { at: 0, value: range(0, Math.max(0, most.high)) },
  { at: UNKNOWN_SPEED - 1, value: range(0, Math.max(0, most.high)) },
  { at: UNKNOWN_SPEED, value: most },
];

/** Maximum advance of a curve, no more than its stop allows; in crank degrees. */
export function mostAdvance(curve: Curve, stop: Interval | undefined): Interval {
  const most = (onlyMostKnown(curve) ? curve.points.at(-1)?.value : greatestOn(curve.points)) ?? NO_ADVANCE;
  return stop ? least(most, stop) : most;
}

/** Written as one angle, without speeds. */
export const onlyMostKnown = (curve: Curve): boolean => curve.points.at(-1)?.at === UNKNOWN_SPEED;

/** Above any speed that is looked up. */
const UNKNOWN_SPEED = 1e6;
export const NO_ADVANCE = exact(0);

function sourceOf(source: SettingInForce | undefined, advance: SettingInForce | undefined): Timing['source'] {
  for (const setting of [source, advance]) {
    const words = setting ? [...setting.words, ...(setting.text ?? '').toLowerCase().split(/\s+/)] : [];
    const value = words.find((word) => word === 'manifold' || word === 'ported' || word === 'plugged');
    if (setting && value) return { value: value as VacuumSource, setting };
  }
  return undefined;
}
