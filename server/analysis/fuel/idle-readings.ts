/** Idle readings of a session, in and out of gear, and opposite pairs of mixture screws. */

import { amountIn } from '../../model/entry/amount.ts';
import type { Origin, Statement } from '../../model/entry/entry.ts';
import { settingIn } from '../../model/state/apply-setting.ts';
import { ofName } from '../../model/state/immutable.ts';
import type { SessionReading, SettingInForce, State } from '../../model/state/state.ts';
import { type Interval, subtract } from '../../trade/measure/interval.ts';

interface ReadAt {
  readonly value: Interval;
  /** The conditions as words: `neutral`, `drive`. */
  readonly words: readonly string[];
  readonly by: Origin;
}

const OUT_OF_GEAR = ['neutral', 'park'];
const IN_GEAR = ['gear', 'drive', 'reverse', 'low', 'ahead', 'astern', 'first', 'top'];

/** Gear, from the words beside a value; false for both where none is given. */
export const isInGear = (said: Statement): boolean => said.qualifiers.some((word) => IN_GEAR.includes(word));
export const isOutOfGear = (said: Statement): boolean =>
  said.qualifiers.some((word) => OUT_OF_GEAR.includes(word));

/** The latest idle of the session in gear and out of it, rpm. */
export function idleOf(state: State): {
  readonly inGear: ReadAt | undefined;
  readonly outOfGear: ReadAt | undefined;
} {
  return {
    inGear: lastRead(state, 'idle', 'rpm', isInGear),
    outOfGear: lastRead(state, 'idle', 'rpm', isOutOfGear),
  };
}

/**
 * Latest depression at idle, inHg: the one in gear, else one without a gear. From this session, else the last one
 * before it.
 */
export function idleDepression(state: State): (ReadAt & { readonly inGear: boolean }) | undefined {
  const atIdle = (said: Statement) => said.conditions.every(({ value }) => value === undefined);
  const inGear = lastRead(state, 'depression', 'inHg', (said) => atIdle(said) && isInGear(said));
  if (inGear) return { ...inGear, inGear: true };
  const any = lastRead(
    state,
    'depression',
    'inHg',
    (said) => atIdle(said) && said.qualifiers.includes('idle'),
  );
  return any && { ...any, inGear: false };
}

function lastRead(
  state: State,
  name: string,
  unit: string,
  holds: (said: Statement) => boolean,
): ReadAt | undefined {
  const latest = state.latest.get(name);
  const holding = (each: SessionReading) => holds(each.statement);
  const taken =
    ofName(state.readings, name, MOST_READ).findLast(holding) ??
    (name === 'depression' && latest && holding(latest) ? latest : undefined);
  const value = taken && amountIn(taken.statement.values[0], unit, taken.quantity.unit);
  return taken && value ? { value, words: taken.statement.qualifiers, by: taken.by } : undefined;
}

/** Most readings of one kind considered, from the last of a session. */
const MOST_READ = 64;

/** Turns by which left and right usually differ at most (common practice, no source). */
export const SIDES_APART = 0.25;

export interface Sides {
  readonly left: SettingInForce;
  readonly right: SettingInForce;
  /** Left minus right, in turns. */
  readonly difference: Interval;
}

const OPPOSITE: readonly (readonly [string, string])[] = [
  ['left', 'right'],
  ['port', 'starboard'],
];

/** Most mixture screws considered, the latest: more than any engine has. */
const MOST_SCREWS = 96;

/** Opposite mixture screws, both known. */
export function mixtureSides(settings: State['settings']): readonly Sides[] {
  const screws = ofName(settings, 'mixture', MOST_SCREWS);
  return OPPOSITE.flatMap(([one, other]) =>
    screws
      .filter(({ place }) => place.split(' ').includes(one))
      .flatMap((left): Sides[] => {
        const right = settings.get(`mixture|${left.place.replace(one, other)}`);
        const [a, b] = [settingIn(left, 'turn'), settingIn(right, 'turn')];
        return right && a && b ? [{ left, right, difference: subtract(a, b) }] : [];
      }),
  );
}

/** Whether the difference is certainly over the usual; a rounding in the last place does not count. */
export const farApart = ({ difference: { low, high } }: Sides): boolean =>
  Math.max(low, -high) > SIDES_APART + 1e-9;

/** `the screws do nothing`, `mixture made no difference`. */
export const NOTED_WITHOUT_EFFECT =
  /^(?:(?!\b(?:screw|mixture)).)*\b(?:screws?|mixture)\b.*\b(?:do(?:es)? nothing|did nothing|no (?:effect|difference|change|response)|without effect)\b|^(?:(?!\bno (?:effect|difference|change|response)\b).)*\bno (?:effect|difference|change|response)\b.*\b(?:screws?|mixture)\b/i;
