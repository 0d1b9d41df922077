/** Road speed in each gear, and slip from a measured speed. */

import { statementText } from '../../model/entry/as-written.ts';
import { lineOf } from '../../model/snapshot/locate.ts';
import type { Declared, SessionReading, State } from '../../model/state/state.ts';
import { exact, type Interval, monotoneEach, scale } from '../../trade/measure/interval.ts';
import { convertInterval, unitById } from '../../trade/measure/units.ts';
import { PLAUSIBLE_SLIP, TOP } from '../../trade/sums/gears.ts';
import { engineSpeed } from '../../trade/sums/road.ts';
import { topSpeedOf } from '../engine/engine-facts.ts';
import { type Figure, type FigureContext, figure, type Input, type Working } from '../figure.ts';
import { inWords } from '../inputs.ts';
import {
  type Gear,
  type Gearing,
  gearingOf,
  likeliestGear,
  type SpeedRead,
  slipIn,
  speedIn,
  speedRead,
} from './gearing.ts';

const ABOUT_GEARS = ['tyre', 'tyre diameter', 'final drive', 'gear ratios', 'overdrive', 'transmission'];

export const GEARS: Working = { topic: 'road', about: [...ABOUT_GEARS, 'red line'], work: speedsInGears };
export const SLIP: Working = {
  topic: 'road',
  about: ['speed', 'speedometer error', 'stall speed'],
  work: slips,
};

const PUBLISHED = {
  topic: 'road',
  standing: 'published',
  source: 'geometry of a rolling wheel; tyre sizes as in UN ECE Regulation 30',
} as const;
const ON_THE_ROAD = 'Only where the road and the law allow it. The local law is the limit, not this figure.';
const A_THOUSAND = exact(1000);

/** Speed in each gear, at 1000 rpm and at the red line where one is written. */
function speedsInGears({ state }: FigureContext): readonly Figure[] {
  const gearing = gearingOf(state);
  if (!gearing) return [];
  const { gears, tyre } = gearing;
  const red = topSpeedOf(state);
  const last = gears.at(-1) as Gear;
  const speed = speedIn(gearing, last, A_THOUSAND);
  const kmh = convertInterval(speed, unitById('m/s'), unitById('km/h'));
  const most = red ? [`at ${inWords(red.value, 'rpm')}`] : [];
  const working = `pi x ${inWords(tyre.metres, 'm')} x 1000 rpm / (60 x ${inWords(last.overall, 'ratio')}) = ${inWords(speed, 'm/s')}`;
  return [
    figure({
      ...PUBLISHED,
      name: 'speed in each gear',
      text: `${gearText(last, gears)}: ${bothUnits(speed)} per 1000 rpm, ${tyreText(gearing)}`,
      value: kmh,
      unit: unitById('km/h'),
      formula: 'pi x tyre diameter x rpm / (60 x gear x final drive)',
      working,
      inputs: [...gearing.facts.map(inputOf), ...(red ? [red.input] : [])],
      caution: red && ON_THE_ROAD,
      rows: [
        ['gear', 'overall', 'at 1000 rpm', ...most],
        ...gears.map((gear) => [
          gear.name,
          inWords(gear.overall, 'ratio'),
          bothUnits(speedIn(gearing, gear, A_THOUSAND)),
          ...(red ? [bothUnits(speedIn(gearing, gear, red.value))] : []),
        ]),
      ],
    }),
  ];
}

const gearText = ({ name }: Gear, gears: readonly Gear[]): string =>
  name === 'direct'
    ? 'direct drive (no gear ratios written)'
    : gears.length > 1 && name !== 'overdrive'
      ? `${TOP} (${name})`
      : name;

const tyreText = ({ tyre }: Gearing): string =>
  tyre.kind === 'rolling' ? 'without slip' : 'unloaded tyre, without slip: a few per cent less on the road';

const bothUnits = (metresPerSecond: Interval): string => {
  const said = (unit: string) =>
    inWords(convertInterval(metresPerSecond, unitById('m/s'), unitById(unit)), unit, 0.1);
  return `${said('mph')} (${said('km/h')})`;
};

const inputOf = ({ quantity, statement: said, text, by }: Declared): Input => ({
  name: quantity.name,
  value: text ?? statementText(said, quantity.unit),
  by,
});

/** For the road speed at hand, else each one of this session: slip where engine speed was read with it, else engine speed by gear. */
function slips({ state, snapshot, line }: FigureContext, word?: string): readonly Figure[] {
  const gearing = gearingOf(state);
  if (!gearing) return [];
  return [...state.readings.values()]
    .filter(
      ({ quantity, by }) =>
        quantity.name === 'speed' && (word !== 'speed' || lineOf(snapshot, by.ref) === line),
    )
    .flatMap((taken) => {
      const read = speedRead(taken.statement, state, gearing);
      if (!read) return [];
      return read.rpm
        ? slipFigures(taken, read, gearing, state)
        : [enginesSpeeds(taken, read, gearing, state)];
    });
}

function slipFigures(
  taken: SessionReading,
  read: SpeedRead,
  gearing: Gearing,
  state: State,
): readonly Figure[] {
  const rpm = read.rpm as Interval;
  const { metresPerSecond: measured } = read;
  const gear = read.gear ?? likeliestGear(gearing, rpm, measured, PLAUSIBLE_SLIP);
  if (!gear) return [];
  const worked = speedIn(gearing, gear, rpm);
  const percent = scale(slipIn(gearing, gear, rpm, measured), 100);
  const name = read.gear ? `slip in ${gear.name}` : `slip, ${gear.name} fits best (no gear written)`;
  return [
    figure({
      ...PUBLISHED,
      name,
      text: `${inWords(percent, '%', 0.1)}: ${bothUnits(measured)} measured, ${bothUnits(worked)} calculated`,
      value: percent,
      unit: unitById('%'),
      formula: '1 - measured speed / calculated speed',
      working: `1 - ${inWords(measured, 'm/s')} / ${inWords(worked, 'm/s')} = ${inWords(percent, '%', 0.1)}, tyre ${gearing.tyre.kind}`,
      inputs: [readInput(taken), ...speedometer(state), ...gearing.facts.map(inputOf)],
    }),
  ];
}

function enginesSpeeds(taken: SessionReading, read: SpeedRead, gearing: Gearing, state: State): Figure {
  const rpmIn = ({ overall }: Gear): Interval =>
    monotoneEach([read.metresPerSecond, overall, gearing.tyre.metres] as const, engineSpeed);
  const gear = read.gear ?? (gearing.gears.at(-1) as Gear);
  const rpm = rpmIn(gear);
  return figure({
    ...PUBLISHED,
    name: `engine speed at ${statementText({ ...taken.statement, words: [], conditions: [] }, taken.quantity.unit)}`,
    text: `${inWords(rpm, 'rpm')} in ${read.gear ? gear.name : gearText(gear, gearing.gears)}, without slip`,
    value: rpm,
    unit: unitById('rpm'),
    formula: '60 x gear x final drive x speed / (pi x tyre diameter)',
    working: `60 x ${inWords(gear.overall, 'ratio')} x ${inWords(read.metresPerSecond, 'm/s')} / (pi x ${inWords(gearing.tyre.metres, 'm')}) = ${inWords(rpm, 'rpm')}`,
    inputs: [readInput(taken), ...speedometer(state), ...gearing.facts.map(inputOf)],
    rows: [
      ['gear', 'engine speed'],
      ...gearing.gears.map((each) => [each.name, inWords(rpmIn(each), 'rpm')]),
    ],
  });
}

const readInput = ({ quantity, statement: said, by }: SessionReading): Input => ({
  name: quantity.name,
  value: statementText(said, quantity.unit),
  by,
});

const speedometer = ({ facts }: State): readonly Input[] => {
  const error = facts.get('speedometer error|');
  return error ? [inputOf(error)] : [];
};
