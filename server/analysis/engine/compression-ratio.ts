/** Compression ratio: displacement, static ratio from volumes, effective ratio under boost, mean piston speed. */

import { saidAt } from '../../model/snapshot/locate.ts';
import type { State } from '../../model/state/state.ts';
import { exact, type Interval, middle, monotoneEach, scale } from '../../trade/measure/interval.ts';
import { convertInterval, unitById } from '../../trade/measure/units.ts';
import {
  EFFECTIVE_RATIO_LIMIT,
  effectiveRatio,
  meanPistonSpeed,
  SEA_LEVEL_PSI,
  sweptVolume,
} from '../../trade/sums/compression.ts';
import { boostOf, isBoosted } from '../boost.ts';
import { type Figure, type FigureContext, figure, type Working } from '../figure.ts';
import { factOf, inWords } from '../inputs.ts';
import { compressionOf, ratioFromVolumes, sweptByAll, topSpeedOf } from './engine-facts.ts';

export const DISPLACEMENT: Working = {
  topic: 'compression ratio',
  about: ['bore', 'stroke', 'displacement', 'cylinders'],
  work: ({ state }) => sizes(state),
};

export const RATIO: Working = {
  topic: 'compression ratio',
  about: [
    'compression',
    'chamber volume',
    'piston volume',
    'deck clearance',
    'gasket thickness',
    'gasket bore',
    'boost',
    'wastegate',
  ],
  work: (moment, word) =>
    word === 'compression' && isReading(moment)
      ? []
      : [...fromVolumes(moment.state), ...underBoost(moment.state)],
};

export const PISTON_SPEED: Working = {
  topic: 'compression ratio',
  about: ['stroke', 'red line', 'rev limit'],
  work: pistonSpeed,
};

/** True on a line that reads cranking pressure, which is also called compression. */
const isReading = ({ snapshot, line }: FigureContext): boolean =>
  saidAt(snapshot, line).some(({ entry }) => entry.kind === 'reading');

const CC = unitById('cc');
const RATIO_UNIT = unitById('ratio');
const DEFINITION = { standing: 'published', source: 'definition of compression ratio' } as const;

const cc = (value: Interval): string => inWords(value, 'cc', 0.1);

function sizes(state: State): readonly Figure[] {
  const all = sweptByAll(state);
  const bore = factOf(state, 'bore', 'mm');
  const stroke = factOf(state, 'stroke', 'mm');
  if (!all || !bore || !stroke) return [];
  const one = monotoneEach([bore.value, stroke.value] as const, (b, s) => sweptVolume(b, s) / 1000);
  const inCubicInches = inWords(convertInterval(all.value, CC, unitById('cu-in')), 'cu-in');
  return [
    figure({
      topic: 'compression ratio',
      name: 'displacement',
      text: `${cc(all.value)}, ${inCubicInches}`,
      value: all.value,
      unit: CC,
      formula: 'pi / 4 x bore x bore x stroke x cylinders',
      working: `${cc(one)} per cylinder x ${all.inputs[2]?.value ?? ''} = ${cc(all.value)}`,
      inputs: all.inputs,
      ...DEFINITION,
    }),
  ];
}

function fromVolumes(state: State): readonly Figure[] {
  const worked = ratioFromVolumes(state);
  if (!worked) return [];
  const { value, swept, left, inputs } = worked;
  return [
    figure({
      topic: 'compression ratio',
      name: 'static ratio',
      text: inWords(value, 'ratio', 0.01),
      value,
      unit: RATIO_UNIT,
      formula: '(swept + clearance) / clearance; clearance = chamber + gasket + deck + piston crown',
      working: `(${cc(swept)} + ${cc(left)}) / ${cc(left)} = ${inWords(value, 'ratio', 0.01)}`,
      inputs,
      ...DEFINITION,
    }),
  ];
}

function underBoost(state: State): readonly Figure[] {
  const ratio = compressionOf(state);
  const boost = boostOf(state);
  if (!ratio || !isBoosted(state)) return [];
  const effective = (psi: Interval): Interval => monotoneEach([ratio.value, psi] as const, effectiveRatio);
  const at = boost?.value ?? exact(6);
  const value = effective(at);
  const [psi, air] = [inWords(at, 'psi'), inWords(exact(SEA_LEVEL_PSI), 'psi')];
  return [
    figure({
      topic: 'compression ratio',
      name: 'effective ratio',
      text: `${inWords(value, 'ratio', 0.1)} at ${psi} boost`,
      value,
      unit: RATIO_UNIT,
      formula: 'static ratio x (boost / air at sea level + 1)',
      working: `${inWords(ratio.value, 'ratio', 0.01)} x (${psi} / ${air} + 1) = ${inWords(value, 'ratio', 0.1)}`,
      inputs: [...ratio.inputs, ...(boost ? [boost.input] : [])],
      standing: EFFECTIVE_RATIO_LIMIT.standing,
      source: EFFECTIVE_RATIO_LIMIT.source,
      caution: `Over about ${EFFECTIVE_RATIO_LIMIT.value}:1 pump fuel is likely to knock under boost. The maker's figure overrules this.`,
      rows: [
        ['boost', 'effective ratio'],
        ...boostSteps(at).map((each) => [
          inWords(exact(each), 'psi'),
          inWords(effective(exact(each)), 'ratio', 0.1),
        ]),
      ],
    }),
  ];
}

function boostSteps(most: Interval): readonly number[] {
  const last = Math.min(40, Math.max(8, Math.ceil(middle(most) / 2) * 2));
  return Array.from({ length: last / 2 }, (_, i) => 2 * (i + 1));
}

/** Piston speed at the red line or rev limit, and at each thousand rpm below it. */
function pistonSpeed({ state }: FigureContext): readonly Figure[] {
  const stroke = factOf(state, 'stroke', 'm');
  const top = topSpeedOf(state);
  if (!stroke) return [];
  const at = (rpm: Interval): Interval => monotoneEach([stroke.value, rpm] as const, meanPistonSpeed);
  const fastest = top?.value ?? exact(6000);
  const value = at(fastest);
  const written = factOf(state, 'stroke', 'mm') ?? stroke;
  return [
    figure({
      topic: 'compression ratio',
      name: 'mean piston speed',
      text: `${speed(value)} at ${inWords(fastest, 'rpm')}`,
      value,
      unit: unitById('m/s'),
      formula: '2 x stroke x speed / 60',
      working: `2 x ${inWords(written.value, 'mm')} x ${inWords(fastest, 'rpm')} / 60 = ${inWords(value, 'm/s', 0.1)}`,
      inputs: [written.input, top?.input ?? { name: 'top speed', value: '6000 rpm, assumed', by: undefined }],
      ...DEFINITION,
      source: 'definition of mean piston speed',
      rows: [
        ['speed', 'mean piston speed'],
        ...thousands(fastest).map((rpm) => [inWords(exact(rpm), 'rpm'), speed(at(exact(rpm)))]),
      ],
    }),
  ];
}

const FEET_A_MINUTE = 60 / 0.3048;

function speed(metres: Interval): string {
  const feet = inWords(scale(metres, FEET_A_MINUTE), 'number', 10);
  return `${inWords(metres, 'm/s', 0.1)} (${feet} ft/min)`;
}

function thousands(fastest: Interval): readonly number[] {
  const count = Math.min(15, Math.max(1, Math.floor(middle(fastest) / 1000)));
  return Array.from({ length: count }, (_, i) => 1000 * (i + 1));
}
