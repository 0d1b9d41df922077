/** Propeller: speed from pitch, and slip from a measured speed. */

import { statementText } from '../../model/entry/as-written.ts';
import { lineOf, lineStateAt } from '../../model/snapshot/locate.ts';
import type { SessionReading, State } from '../../model/state/state.ts';
import { exact, type Interval, monotoneEach, scale } from '../../trade/measure/interval.ts';
import { convertInterval, unitById } from '../../trade/measure/units.ts';
import { propellerSpeed, slip } from '../../trade/sums/road.ts';
import { topSpeedOf } from '../engine/engine-facts.ts';
import { type Figure, type FigureContext, figure, type Input, type Working } from '../figure.ts';
import { factOf, inWords, type KnownInput, settingOf } from '../inputs.ts';
import { engineSpeedAt, trueSpeed } from './gearing.ts';

const ABOUT = ['propeller pitch', 'propeller', 'drop gear'];

export const PITCH_SPEED: Working = { topic: 'road', about: [...ABOUT, 'red line'], work: speedsByPitch };
export const PROPELLER_SLIP: Working = { topic: 'road', about: [...ABOUT, 'speed'], work: slips };

const PUBLISHED = {
  topic: 'road',
  standing: 'published',
  source: 'apparent slip as in naval architecture; definition of pitch',
} as const;
const ON_THE_WATER =
  'Only where the water and the law allow it. The local law is the limit, not this figure.';
const A_THOUSAND = exact(1000);

/** The propeller and the gear before it. */
interface Drive {
  /** Metres. */
  readonly pitch: KnownInput;
  readonly reduction: Interval;
  /** Undefined where none is written. */
  readonly gear: KnownInput | undefined;
  /** Date of another propeller, fitted later than the pitch was written. */
  readonly since: string | undefined;
}

/** Drive of the boat; undefined where no pitch is written. Without a reduction, direct drive is assumed. */
function driveOf(state: State): Drive | undefined {
  const pitch = settingOf(state, 'propeller pitch', 'm');
  const gear = factOf(state, 'drop gear', 'ratio');
  if (!pitch || !(pitch.value.low > 0) || (gear && !(gear.value.low > 0))) return undefined;
  const changed = state.settings.get('propeller|')?.by.date ?? '';
  const since = changed > (pitch.by.date ?? '') ? changed : undefined;
  return { pitch, gear, since, reduction: gear?.value ?? exact(1) };
}

/** In m/s, without slip. */
const speedIn = ({ pitch, reduction }: Drive, rpm: Interval): Interval =>
  monotoneEach([rpm, reduction, pitch.value] as const, propellerSpeed);

const inputsOf = ({ pitch, gear }: Drive): readonly Input[] => [pitch.input, ...(gear ? [gear.input] : [])];

const assumed = ({ gear, since }: Drive): string =>
  (gear ? '' : '; direct drive assumed, no reduction (drop gear) written') +
  (since ? `; the propeller fitted ${since} may have a different pitch` : '');

/** At 1000 rpm, and at the red line where one is written. */
function speedsByPitch({ state }: FigureContext): readonly Figure[] {
  const drive = driveOf(state);
  if (!drive) return [];
  const speed = speedIn(drive, A_THOUSAND);
  const red = topSpeedOf(state);
  const most = red ? `, ${bothUnits(speedIn(drive, red.value))} at ${inWords(red.value, 'rpm')}` : '';
  return [
    figure({
      ...PUBLISHED,
      name: 'speed from propeller pitch',
      text: `${bothUnits(speed)} per 1000 rpm${most}, without slip${assumed(drive)}`,
      value: convertInterval(speed, unitById('m/s'), unitById('kn')),
      unit: unitById('kn'),
      formula: 'pitch x rpm / (60 x reduction)',
      working: workingOf(drive, A_THOUSAND, speed),
      inputs: [...inputsOf(drive), ...(red ? [red.input] : [])],
      caution: red && ON_THE_WATER,
    }),
  ];
}

/** Slip of the speed at hand, else of each one of this session read with its engine speed; with the propeller of that day. */
function slips({ state, snapshot, line }: FigureContext, word?: string): readonly Figure[] {
  return [...state.readings.values()]
    .filter(({ quantity }) => quantity.name === 'speed')
    .flatMap((taken) => {
      const at = lineOf(snapshot, taken.by.ref);
      if (at === undefined || (word === 'speed' && at !== line)) return [];
      const then = lineStateAt(snapshot, at)?.after ?? state;
      const drive = driveOf(then);
      return drive ? slipFigure(taken, drive, then) : [];
    });
}

function slipFigure(taken: SessionReading, drive: Drive, state: State): readonly Figure[] {
  const measured = trueSpeed(taken.statement, state);
  const rpm = engineSpeedAt(taken.statement);
  if (!measured || !rpm || !(rpm.low > 0)) return [];
  const worked = speedIn(drive, rpm);
  const percent = scale(monotoneEach([worked, measured] as const, slip), 100);
  const { quantity, statement: said, by } = taken;
  return [
    figure({
      ...PUBLISHED,
      name: `propeller slip at ${inWords(rpm, 'rpm')}`,
      text: `${inWords(percent, '%', 0.1)}: ${bothUnits(measured)} measured, ${bothUnits(worked)} from the pitch${assumed(drive)}${percent.high < 0 ? IMPOSSIBLE : ''}`,
      value: percent,
      unit: unitById('%'),
      formula: '1 - measured speed / (pitch x rpm / (60 x reduction))',
      working: `${workingOf(drive, rpm, worked)}; 1 - ${inWords(measured, 'm/s')} / ${inWords(worked, 'm/s')} = ${inWords(percent, '%')}`,
      inputs: [{ name: quantity.name, value: statementText(said, quantity.unit), by }, ...inputsOf(drive)],
      caution: 'Current and wind show up as slip: run both ways and take the mean.',
    }),
  ];
}

/** Common practice, no source. */
const IMPOSSIBLE = '; negative: wrong pitch, reduction or tachometer, or a following current';

const workingOf = ({ pitch, reduction }: Drive, rpm: Interval, speed: Interval): string =>
  `${inWords(pitch.value, 'm')} x ${inWords(rpm, 'rpm')} / (60 x ${inWords(reduction, 'ratio')}) = ${inWords(speed, 'm/s')}`;

function bothUnits(metresPerSecond: Interval): string {
  const said = (unit: string) =>
    inWords(convertInterval(metresPerSecond, unitById('m/s'), unitById(unit)), unit, 0.1);
  return `${said('kn')} (${said('mph')})`;
}
