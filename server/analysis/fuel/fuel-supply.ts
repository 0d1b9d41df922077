/** Fuel supply to the bowl: the smallest passage, and the pressure left at the needle. */

import type { State } from '../../model/state/state.ts';
import { exact, type Interval, middle, monotoneEach } from '../../trade/measure/interval.ts';
import { unitById } from '../../trade/measure/units.ts';
import {
  judgeNeedlePressure,
  NEEDLE_BANDS,
  passagesInSeries,
  pressureAtNeedle,
} from '../../trade/sums/carburation.ts';
import { type Figure, figure, type Working } from '../figure.ts';
import { inWords, type KnownInput, readingOf, settingOf } from '../inputs.ts';

export const FEED: Working = {
  topic: 'fuel',
  about: ['fuel line', 'needle seat', 'fuel regulator', 'fuel pressure', 'needle height'],
  work: ({ state }) => [...smallest(state), ...atNeedle(state)],
};

function smallest(state: State): readonly Figure[] {
  const passages = ['fuel line', 'needle seat']
    .flatMap((name) => settingOf(state, name, 'in') ?? [])
    .filter((passage) => passage.value.low > 0);
  const series = passagesInSeries(passages.map((passage) => middle(passage.value)));
  const least = series && passages[series.smallest];
  if (!series || !least || passages.length < 2) return [];
  const areas = passages.map((passage) =>
    monotoneEach([passage.value, least.value] as const, (own, small) => (own / small) ** 2),
  );
  const others = passages.flatMap((passage, i) =>
    passage === least ? [] : [{ passage, area: areas[i] as Interval }],
  );
  return [
    figure({
      topic: 'fuel',
      name: 'smallest passage',
      text: `${least.input.name}, ${least.input.value}; ${others
        .map(({ passage, area }) => `${passage.input.name} ${times(area)} its area`)
        .join(', ')}`,
      formula: 'the smallest of passages in series is the restriction; area goes with the square of the bore',
      working: others
        .map(
          ({ passage, area }) =>
            `(${inWords(passage.value, 'in')} / ${inWords(least.value, 'in')})² = ${times(area)}`,
        )
        .join(', '),
      inputs: passages.map((passage) => passage.input),
      standing: 'published',
      source: 'orifice equation',
    }),
  ];
}

const times = (area: Interval): string => `${inWords(area, 'number', 0.1)} times`;

/** From the fuel pressure read in this session, else from the regulator setting. */
function atNeedle(state: State): readonly Figure[] {
  const pressure = readingOf(state, 'fuel pressure', 'psi') ?? settingOf(state, 'fuel regulator', 'psi');
  if (!pressure) return [];
  const height = settingOf(state, 'needle height', 'in');
  const rise = height?.value ?? exact(0);
  const value = monotoneEach([pressure.value, rise] as const, (psi, inches) => pressureAtNeedle(psi, inches));
  const kind = carburettorKind(state);
  const band = NEEDLE_BANDS[kind];
  const psi = inWords(value, 'psi', 0.1);
  return [
    figure({
      topic: 'fuel',
      name: 'pressure at the needle',
      text: `${psi}, ${judgement(value, kind)} ${band.low}..${band.high} psi for a ${kind} carburettor`,
      value,
      unit: unitById('psi'),
      formula: 'pressure - needle height x 0.0361 psi per inch of water x 0.74 for gasoline',
      working: `${inWords(pressure.value, 'psi')} - ${inWords(rise, 'in')} x 0.0361 x 0.74 = ${psi}`,
      inputs: heightInput(pressure, height),
      standing: 'common practice',
      source: `range ${band.standing}, ${band.source}; fuel column from NIST SP 811`,
      caution: 'Fuel under pressure: no flame or spark near, engine cold, extinguisher at hand.',
    }),
  ];
}

const heightInput = (pressure: KnownInput, height: KnownInput | undefined) => [
  pressure.input,
  height?.input ?? { name: 'needle height', value: '0 in, assumed', by: undefined },
];

/** Kind of carburettor fitted, from its name or description: side-draughts run on less pressure. */
export function carburettorKind({ fitted, parts }: State): keyof typeof NEEDLE_BANDS {
  const name = fitted.get('carburettor')?.name ?? '';
  const said = `${name} ${parts.get(name)?.text ?? ''}`;
  return /side.?dra(?:ugh|f)t/i.test(said) ? 'side-draught' : 'needle and seat';
}

const JUDGEMENTS = {
  low: 'below the',
  'in band': 'within the',
  high: 'above the',
  'likely to flood': 'likely to flood, well above the',
} as const;

function judgement(psi: Interval, kind: keyof typeof NEEDLE_BANDS): string {
  const [low, high] = [judgeNeedlePressure(psi.low, kind), judgeNeedlePressure(psi.high, kind)];
  return low === high ? JUDGEMENTS[low] : 'partly outside the';
}
