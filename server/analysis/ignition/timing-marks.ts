/** Timing tape on the damper, and degrees gained or lost by filing or sleeving the distributor's stop. */

import type { State } from '../../model/state/state.ts';
import { exact, type Interval, isBounded, middle, monotoneEach } from '../../trade/measure/interval.ts';
import { convertInterval, unitById } from '../../trade/measure/units.ts';
import {
  crankDegreesForStopTravel,
  damperDistance,
  stopTravelForCrankDegrees,
} from '../../trade/sums/ignition.ts';
import { type Figure, type FigureContext, figure, type Working } from '../figure.ts';
import { factOf, inWords, statedIn } from '../inputs.ts';
import { mostAdvance, timingOf } from './timing-settings.ts';
import { totalNamed } from './timing-totals.ts';

export const DAMPER_TAPE: Working = {
  topic: 'timing',
  about: ['damper', 'timing mark', 'timing', 'total', 'initial'],
  work: damperTape,
};

export const STOP_TRAVEL: Working = {
  topic: 'timing',
  about: ['stop radius', 'mechanical limit', 'mechanical'],
  work: stopTravel,
};

const MM = unitById('mm');
const GEOMETRY = { standing: 'published', source: 'geometry of the circle' } as const;
const RUNNING =
  'Mark the damper with the engine stopped. When it runs, keep clear of fan, belts and hot parts.';

/** Tape lengths for the damper's diameter: for one degree and for the angles of the notebook. */
function damperTape({ state }: FigureContext): readonly Figure[] {
  const damper = factOf(state, 'damper', 'mm');
  if (!damper || !(damper.value.low > 0)) return [];
  const tape = (degrees: Interval): Interval =>
    monotoneEach([damper.value, degrees] as const, damperDistance);
  const one = tape(exact(1));
  return [
    figure({
      topic: 'timing',
      name: 'tape on the damper',
      text: `${both(one)} per degree`,
      value: one,
      unit: MM,
      formula: 'pi x diameter x degrees / 360',
      working: `pi x ${inWords(damper.value, 'mm')} x 1 / 360 = ${inWords(one, 'mm')}`,
      inputs: [damper.input],
      ...GEOMETRY,
      caution: RUNNING,
      rows: [
        ['angle', 'mm', 'in'],
        ...anglesOf(state).map(({ name, degrees }) => [name, ...taped(tape(degrees))]),
      ],
    }),
  ];
}

interface Angle {
  readonly name: string;
  readonly degrees: Interval;
}

/** Round angles, and those worth a mark: the initial, the total, its target and limit. */
function anglesOf(state: State): readonly Angle[] {
  const round = [5, 10, 20, 30, 40].map((each) => ({ name: `${each} deg`, degrees: exact(each) }));
  const { initial } = timingOf(state);
  const total = totalNamed(state, 'total');
  const target = statedIn(state.targets, 'total', 'deg', 'target total');
  const limit = statedIn(state.limits, 'total', 'deg', 'total limit');
  const most = limit && exact(limit.value.high);
  const named: readonly (readonly [string, Interval | undefined])[] = [
    ['initial', initial?.value],
    ['total', total?.value],
    ['target total', target?.value],
    ['total limit', most],
  ];
  const own = named.flatMap(([name, degrees]) =>
    degrees && isBounded(degrees) ? [{ name: `${name}, ${inWords(degrees, 'deg', 0.1)}`, degrees }] : [],
  );
  return [...round, ...own].toSorted((a, b) => middle(a.degrees) - middle(b.degrees));
}

/** Stop travel for an angle, and angle for a stop travel. */
function stopTravel({ state }: FigureContext): readonly Figure[] {
  const radius = factOf(state, 'stop radius', 'mm');
  if (!radius || !(radius.value.low > 0)) return [];
  const travel = (degrees: Interval): Interval =>
    monotoneEach([radius.value, degrees] as const, stopTravelForCrankDegrees);
  const angle = (mm: number): Interval =>
    monotoneEach([radius.value, exact(mm)] as const, crankDegreesForStopTravel);
  const one = travel(exact(1));
  const perMm = angle(1);
  const geometry = { topic: 'timing', inputs: [radius.input], ...GEOMETRY } as const;
  return [
    figure({
      ...geometry,
      name: 'stop travel for an angle',
      text: `${both(one)} per degree at the crank`,
      value: one,
      unit: MM,
      formula: 'radius x (crank degrees / 2) x pi / 180',
      working: `${inWords(radius.value, 'mm')} x 1 / 2 x pi / 180 = ${inWords(one, 'mm')}`,
      rows: [
        ['mechanical', 'mm', 'in'],
        ...stopAngles(state).map(({ name, degrees }) => [name, ...lengths(travel(degrees))]),
      ],
    }),
    figure({
      ...geometry,
      name: 'angle for a stop travel',
      text: `${inWords(perMm, 'deg', 0.1)} at the crank per mm`,
      value: perMm,
      unit: unitById('deg'),
      formula: '2 x travel / radius x 180 / pi',
      working: `2 x 1 mm / ${inWords(radius.value, 'mm')} x 180 / pi = ${inWords(perMm, 'deg', 0.1)}`,
      rows: [
        ['travel', 'mechanical'],
        ...[0.5, 1, 2, 3, 4, 5].map((mm) => [inWords(exact(mm), 'mm'), inWords(angle(mm), 'deg', 0.1)]),
      ],
    }),
  ];
}

function stopAngles(state: State): readonly Angle[] {
  const round = [2, 6, 10, 14, 18, 22].map((each) => ({ name: `${each} deg`, degrees: exact(each) }));
  const { mechanical, mechanicalLimit } = timingOf(state);
  const now = mechanical && mostAdvance(mechanical, mechanicalLimit?.value);
  const own = now ? [{ name: `now, ${inWords(now, 'deg', 0.1)}`, degrees: now }] : [];
  return [...round, ...own].toSorted((a, b) => middle(a.degrees) - middle(b.degrees));
}

const inches = (mm: Interval): Interval => convertInterval(mm, MM, unitById('in'));

const both = (mm: Interval): string => `${lengths(mm)[0]} (${lengths(mm)[1]})`;

/** No finer than a calliper shows. */
const lengths = (mm: Interval): readonly string[] => [
  inWords(mm, 'mm', 0.01),
  inWords(inches(mm), 'in', 0.001),
];

/** No finer than a tape round a damper shows. */
const taped = (mm: Interval): readonly string[] => [inWords(mm, 'mm', 0.1), inWords(inches(mm), 'in', 0.01)];
