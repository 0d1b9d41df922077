/** Advance curve figures: total by speed, initial for another stop, and total under boost. */

import { settingText } from '../../model/state/setting-text.ts';
import { add, exact, type Interval, middle, surelyAbove } from '../../trade/measure/interval.ts';
import { unitById } from '../../trade/measure/units.ts';
import {
  allInSpeed,
  boostRetard,
  initialFor,
  mechanicalLimitFor,
  type TotalsBySpeed,
  totalOver,
} from '../../trade/sums/ignition.ts';
import { boostOf, isBoosted } from '../boost.ts';
import { type Figure, type FigureContext, figure, type Input, type Plot, type Working } from '../figure.ts';
import { inWords, type KnownInput, settingOf, statedIn } from '../inputs.ts';
import { type Curve, mostAdvance, onlyMostKnown, type Timing, timingOf } from './timing-settings.ts';

export const BY_SPEED: Working = {
  topic: 'timing',
  about: ['mechanical', 'mechanical limit', 'initial', 'total'],
  work: ({ state }) => bySpeed(timingOf(state)),
};

export const OTHER_STOP: Working = {
  topic: 'timing',
  about: ['mechanical limit', 'initial', 'total', 'stop radius'],
  work: otherStop,
};

export const UNDER_BOOST: Working = {
  topic: 'timing',
  about: ['boost retard', 'boost', 'wastegate', 'total'],
  work: underBoost,
};

const STEP = 250;
const DEG = unitById('deg');
const FOUR_STROKE = { standing: 'common practice', source: 'follows from the four-stroke cycle' } as const;

const deg = (value: Interval): string => inWords(value, 'deg', 0.1);
const rpm = (value: number): string => inWords(exact(value), 'rpm');

/** Rows from the step before the curve starts to rise to the step after all is in; it is level outside them. */
function bySpeed({ initial, mechanical, mechanicalLimit }: Timing): readonly Figure[] {
  const allIn = mechanical && allInSpeed(mechanical.points, mechanicalLimit?.value);
  if (!initial || !mechanical || allIn === undefined || onlyMostKnown(mechanical)) return [];
  const first = Math.min(...mechanical.points.map((point) => point.at));
  const from = Math.max(0, Math.ceil(first / STEP) - 1) * STEP;
  const to = (Math.floor(allIn / STEP) + 1) * STEP;
  const totals = totalOver(initial.value, mechanical.points, from, to, mechanicalLimit?.value, STEP);
  if (!totals) return [];
  const inputs = inputsOf(initial, mechanical, mechanicalLimit);
  return [
    figure({
      topic: 'timing',
      name: 'total by speed',
      text: `${deg(totals.maximum)} from ${rpm(totals.at)}`,
      value: totals.maximum,
      unit: DEG,
      formula:
        'initial + mechanical at each speed; straight lines between the points of the curve, level outside them',
      working: `${deg(initial.value)} + the curve at each ${STEP} rpm`,
      inputs,
      ...FOUR_STROKE,
      rows: [
        ['at', 'mechanical', 'total'],
        ...totals.rows.map((row) => [rpm(row.rpm), deg(row.mechanical), deg(row.total)]),
      ],
      plot: plotOf(totals),
    }),
  ];
}

const plotOf = ({ rows }: TotalsBySpeed): Plot => ({
  across: { name: 'engine speed', unit: unitById('rpm') },
  up: { name: 'timing', unit: DEG },
  series: [
    {
      name: 'mechanical',
      drawn: 'line',
      points: rows.map((row) => ({ at: row.rpm, value: row.mechanical })),
    },
    { name: 'total', drawn: 'line', points: rows.map((row) => ({ at: row.rpm, value: row.total })) },
  ],
});

/** Initial to go with each stop, for the target total, else the limit, else the total as it is now. */
function otherStop({ state }: FigureContext): readonly Figure[] {
  const { initial, mechanical, mechanicalLimit } = timingOf(state);
  if (!initial || !mechanical) return [];
  const most = mostAdvance(mechanical, mechanicalLimit?.value);
  const now = add(initial.value, most);
  const wanted = statedIn(state.targets, 'total', 'deg', 'target total') ?? limitThatBites(state.limits, now);
  const total = wanted?.value ?? now;
  const kept = wanted ? `${deg(total)} (${wanted.input.name})` : `${deg(now)}, as it is now`;
  const needed = wanted ? initialFor(total, most) : initial.value;
  return [
    figure({
      topic: 'timing',
      name: 'initial for another stop',
      text: `${deg(needed)} with the stop at ${deg(most)} gives a total of ${kept}`,
      value: needed,
      unit: DEG,
      formula: 'total - maximum mechanical',
      working: `${deg(total)} - ${deg(most)} = ${deg(needed)}`,
      inputs: [...(wanted ? [wanted.input] : []), ...inputsOf(initial, mechanical, mechanicalLimit)],
      ...FOUR_STROKE,
      caution: 'Prove a wide-open total under load, working up from the retarded side. Stop at any knock.',
      rows: [
        ['mechanical limited to', 'initial'],
        ...stopsAround(most).map((stop) => [deg(exact(stop)), deg(initialFor(total, exact(stop)))]),
      ],
    }),
    ...(wanted ? [stopForInitial(total, initial, kept)] : []),
  ];
}

function stopForInitial(total: Interval, initial: NonNullable<Timing['initial']>, kept: string): Figure {
  const stop = mechanicalLimitFor(total, initial.value);
  return figure({
    topic: 'timing',
    name: 'stop for this initial',
    text: `${deg(stop)} mechanical with ${deg(initial.value)} initial gives a total of ${kept}`,
    value: stop,
    unit: DEG,
    formula: 'total - initial',
    working: `${deg(total)} - ${deg(initial.value)} = ${deg(stop)}`,
    inputs: [{ name: 'initial', value: settingText(initial.setting), by: initial.setting.by }],
    ...FOUR_STROKE,
  });
}

/** Total under boost, at about one degree of retard per psi where the notebook gives none. */
function underBoost({ state }: FigureContext): readonly Figure[] {
  const { initial, mechanical, mechanicalLimit } = timingOf(state);
  const boost = boostOf(state);
  if (!initial || !mechanical || !isBoosted(state)) return [];
  const total = add(initial.value, mostAdvance(mechanical, mechanicalLimit?.value));
  const own = settingOf(state, 'boost retard', 'deg/psi');
  const perPsi = own?.value ?? exact(1);
  const at = boost?.value ?? exact(1);
  const left = boostRetard(total, at, perPsi);
  return [
    figure({
      topic: 'timing',
      name: 'total under boost',
      text: `${deg(left)} at ${inWords(at, 'psi')}`,
      value: left,
      unit: DEG,
      formula: 'total - boost x retard per psi',
      working: `${deg(total)} - ${inWords(at, 'psi')} x ${inWords(perPsi, 'deg/psi')} = ${deg(left)}`,
      inputs: [
        ...inputsOf(initial, mechanical, mechanicalLimit),
        ...(boost ? [boost.input] : []),
        own?.input ?? { name: 'boost retard', value: '1 deg/psi, assumed', by: undefined },
      ],
      standing: 'common practice',
      source: 'about 1 deg per psi, no source',
      caution:
        "Knock under boost breaks pistons. Start with more retard, and stop at the first knock. The maker's figure overrules this.",
      rows: [
        ['boost', 'total'],
        ...boosts(at).map((psi) => [inWords(exact(psi), 'psi'), deg(boostRetard(total, exact(psi), perPsi))]),
      ],
    }),
  ];
}

/** Limit of the total, only where the total is now over it. */
function limitThatBites(limits: Parameters<typeof statedIn>[0], now: Interval): KnownInput | undefined {
  const limit = statedIn(limits, 'total', 'deg', 'total limit');
  const most = limit && exact(limit.value.high);
  return limit && most && Number.isFinite(most.low) && surelyAbove(now, most)
    ? { ...limit, value: most }
    : undefined;
}

/** Even degrees from well below the present stop to a little above it. */
function stopsAround(most: Interval): readonly number[] {
  const centre = 2 * Math.round(middle(most) / 2);
  const first = Math.max(2, centre - 10);
  return Array.from({ length: (centre + 4 - first) / 2 + 1 }, (_, i) => first + 2 * i);
}

function boosts(most: Interval): readonly number[] {
  const last = Math.min(40, Math.max(6, Math.ceil(middle(most) / 2) * 2));
  return Array.from({ length: last / 2 }, (_, i) => 2 * (i + 1));
}

function inputsOf(
  initial: NonNullable<Timing['initial']>,
  mechanical: Curve,
  limit: Timing['mechanicalLimit'],
): readonly Input[] {
  const settings = [initial.setting, mechanical.setting, ...(limit ? [limit.setting] : [])];
  return settings.map((setting) => ({
    name: setting.quantity.name,
    value: settingText(setting),
    by: setting.by,
  }));
}
