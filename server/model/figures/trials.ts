/** Trials: how the response follows the knob, which setting should give what is wanted, and what the nearest real size gives. */
import { formatNumber, formatValue } from '../../trade/format.ts';
import { exact, hull, type Interval, middle } from '../../trade/interval.ts';
import { type Estimate, knobFor, responseAt, type TrialFit } from '../../trade/trials.ts';
import type { Carried } from '../carry.ts';
import { valueText } from '../describe.ts';
import { type Axis, type ReadTrial, readTrial, wantIn } from '../trials.ts';
import { type Figure, figure, type Input, type Moment, type Working } from './figure.ts';
import { realSizes } from './real-sizes.ts';
import { trialAt, trialsOfSession, type Want, type WrittenTrial } from './written-trials.ts';

export const TRIALS: Working = {
  topic: 'trials',
  about: ['trial'],
  work: (moment, word) =>
    (word === undefined ? trialsOfSession(moment) : trialAt(moment)).flatMap((written) =>
      trialFigures(written, moment),
    ),
};

interface Fitted extends ReadTrial {
  readonly fit: TrialFit;
}

function trialFigures(written: WrittenTrial, { carried }: Moment): readonly Figure[] {
  const trial = readTrial(written.trial, carried.words);
  const { fit } = trial;
  if (!fit) return [tooFew(written, trial)];
  const fitted = { ...trial, fit };
  return [
    course(written, fitted),
    ...written.wants.flatMap((want) => answer(want, written, fitted, carried)),
  ];
}

const title = ({ trial }: WrittenTrial): string => `${trial.knob} -> ${trial.response}`;

const FIT = {
  topic: 'trials',
  standing: 'published',
  source: 'least squares, and its prediction interval at 95 per cent (NIST/SEMATECH e-Handbook)',
} as const;

const TOO_FEW = 'two rows at different settings make a line, three tell how far it may be trusted';

const tooFew = (written: WrittenTrial, trial: ReadTrial): Figure =>
  figure({
    ...FIT,
    name: title(written),
    text: `nothing to fit yet: ${TOO_FEW}`,
    formula: TOO_FEW,
    working: `${count(trial.rows.length)} read${leftOutText(trial)}`,
    inputs: inputsOf(written),
  });

const count = (rows: number): string => (rows === 1 ? '1 row' : `${rows} rows`);

const leftOutText = ({ leftOut }: ReadTrial): string =>
  leftOut === 0 ? '' : `, ${leftOut} left out for want of two numbers in the units of the others`;

const inputsOf = ({ trial }: WrittenTrial): readonly Input[] =>
  trial.rows.map((row, i) => ({
    name: `row ${i + 1}`,
    value: [row.size, ...row.values.map((value) => valueText(value, undefined))].filter(Boolean).join(' '),
    by: row.by,
  }));

const inUnits = (value: number, { unit }: Axis): string => formatValue(exact(value), unit);

/** The rows beside what was fitted to them. */
function course(written: WrittenTrial, trial: Fitted): Figure {
  const { fit, knob, response } = trial;
  return figure({
    ...FIT,
    name: title(written),
    text: courseText(trial),
    formula: formulaOf(trial),
    working: [count(trial.rows.length) + leftOutText(trial), ...roughText(trial), ...scatterText(trial)].join(
      '; ',
    ),
    inputs: inputsOf(written),
    caution: fit.flat && flatReason(trial),
    rows: [
      [knob.name, response.name, 'fitted', 'off'],
      ...fit.rows.map((row) => {
        const { value } = responseAt(fit, row.knob);
        return [
          inUnits(row.knob, knob),
          inUnits(row.response, response),
          inUnits(value, response),
          small(row.response - value),
        ];
      }),
    ],
  });
}

/** A difference to two figures; one of rounding alone is none. */
const small = (difference: number): string =>
  Math.abs(difference) < 1e-9 ? '0' : formatNumber(Number(difference.toPrecision(2)), undefined);

const FLAT = {
  'does not move': 'does not move',
  'within noise': 'moves no more than repeats of one setting do',
  'no trend': 'follows no trend',
} as const;

function courseText({ fit, knob, response }: Fitted): string {
  if (fit.flat) return `${response.name} ${FLAT[fit.flat]} between ${tried(fit, knob)}`;
  if (fit.model.kind === 'curve') return `a curve through ${count(fit.rows.length)}, ${tried(fit, knob)}`;
  return `${perUnit(fit.model.slope, knob, response)}, ${tried(fit, knob)}`;
}

const tried = ({ low, high }: TrialFit, { unit }: Axis): string =>
  formatValue({ low, high, about: false }, unit);

/** `56 deg for each in`, `20 rpm for each number`. */
function perUnit(slope: number, knob: Axis, response: Axis): string {
  const symbol = knob.unit.symbol === 'turns' ? 'turn' : knob.unit.symbol;
  return `${inUnits(slope, response)} for each ${symbol || 'one'}`;
}

function formulaOf({ fit, knob, response }: Fitted): string {
  if (fit.model.kind === 'curve')
    return `${response.name} as a curve over ${knob.name} that never turns back; it foretells a row left out better than a line`;
  const { slope, intercept } = fit.model;
  const sign = intercept < 0 ? '-' : '+';
  return `${response.name} = ${knob.name} x ${formatNumber(slope, undefined)} ${sign} ${inUnits(Math.abs(intercept), response)}`;
}

const roughText = ({ about }: ReadTrial): readonly string[] =>
  about ? ['rough rows taken at their middle'] : [];

function scatterText({ fit, response }: Fitted): readonly string[] {
  if (fit.spread === undefined) return ['two rows say nothing of the scatter'];
  const { leaveOneOut } = fit;
  const foretold = leaveOneOut
    ? [
        `a row left out is foretold within ${small(leaveOneOut.line)} by the line, ${small(leaveOneOut.curve)} by the curve`,
      ]
    : [];
  return [`scatter ${small(fit.spread)} ${response.unit.symbol}`.trim(), ...foretold];
}

/** Idle screws that do nothing have a cause the trade knows. */
function flatReason({ knob }: ReadTrial): string {
  const plain = 'Nothing is worked out for a wanted value: first find what does move it.';
  if (knob.quantity?.name !== 'mixture') return plain;
  return `${plain} Mixture screws that do nothing: throttle plates too far open, so that fuel comes from the transfer slot (common practice). Close the plates and give the air another way.`;
}

function answer(want: Want, written: WrittenTrial, trial: Fitted, carried: Carried): readonly Figure[] {
  const asked = wantIn(want.entry.values[0], trial);
  if (!asked) return [];
  const input = {
    name: 'want',
    value: want.entry.values.map((value) => valueText(value, undefined)).join(' '),
    by: want.by,
  };
  const inputs = [input, ...inputsOf(written)];
  return [
    asked.of === 'knob'
      ? foretold(endsOf(asked.value), trial, inputs)
      : settingFor(endsOf(asked.value), trial, inputs, carried),
  ];
}

/** A range is asked at both ends, a bound at its one end. */
const endsOf = ({ low, high }: Interval): readonly number[] =>
  [...new Set([low, high])].filter((end) => Number.isFinite(end));

const spread = (ends: readonly number[], { unit }: Axis): string =>
  formatValue(ends.map(exact).reduce(hull), unit);

function settingFor(
  wanted: readonly number[],
  trial: Fitted,
  inputs: readonly Input[],
  carried: Carried,
): Figure {
  const { fit, knob, response } = trial;
  const name = `${knob.name} for ${spread(wanted, response)}`;
  const answers = wanted.map((each) => knobFor(fit, each));
  const found = answers.flatMap((each) => (each.kind === 'found' ? [each] : []));
  const words = { ...FIT, name, inputs, formula: inverse(trial) };
  if (found.length === 0 || found.length < answers.length)
    return figure({
      ...words,
      text: noAnswer(trial),
      working: courseText(trial),
      caution: flatReason(trial),
    });
  const interval = { ...found.map((each) => exact(each.value)).reduce(hull), about: trial.about };
  const value = { ...found.map(spanOf).reduce(hull), about: trial.about };
  return figure({
    ...words,
    text: `${formatValue(interval, knob.unit)}${spanText(found, knob)}`,
    value,
    unit: knob.unit,
    working: wanted.map((each, i) => workingOf(each, (found[i] as Estimate).value, trial)).join('; '),
    caution: outsideText(found, trial),
    rows: sizeRows(middle(interval), trial, carried),
  });
}

const inverse = ({ fit, knob, response }: Fitted): string =>
  fit.model.kind === 'line'
    ? `${knob.name} = (${response.name} - intercept) / slope`
    : `where the curve of ${response.name} over ${knob.name} passes the value wanted`;

const noAnswer = ({ fit, knob, response }: Fitted): string =>
  fit.flat
    ? `none: ${response.name} ${FLAT[fit.flat]} between ${tried(fit, knob)}`
    : `none: out of reach of the curve, even well outside ${tried(fit, knob)}`;

function workingOf(wanted: number, value: number, { fit, knob, response }: Fitted): string {
  const [asked, answered] = [inUnits(wanted, response), inUnits(value, knob)];
  if (fit.model.kind === 'curve') return `the curve passes ${asked} at ${answered}`;
  const { slope, intercept } = fit.model;
  const sign = intercept < 0 ? '+' : '-';
  return `(${asked} ${sign} ${inUnits(Math.abs(intercept), response)}) / ${formatNumber(slope, undefined)} = ${answered}`;
}

/** From the lowest setting that could give it to the highest; the setting alone where the rows are too few to say. */
const spanOf = ({ value, low, high }: Estimate): Interval => ({
  low: low ?? value,
  high: high ?? value,
  about: false,
});

function spanText(found: readonly Estimate[], knob: Axis): string {
  if (found.every((each) => each.low === undefined && each.high === undefined)) return '';
  const low = Math.min(...found.map((each) => each.low ?? Number.NEGATIVE_INFINITY));
  const high = Math.max(...found.map((each) => each.high ?? Number.POSITIVE_INFINITY));
  return `, 19 times in 20 within ${formatValue({ low, high, about: false }, knob.unit)}`;
}

function outsideText(found: readonly Estimate[], { fit, knob }: Fitted): string | undefined {
  if (!found.some((each) => each.outside)) return undefined;
  return `Outside what was tried (${tried(fit, knob)}): try a row there before leaning on it.`;
}

/** What each size that can be had should give. */
function sizeRows(wanted: number, trial: Fitted, carried: Carried): readonly (readonly string[])[] {
  const sizes = realSizes(wanted, trial, carried);
  if (sizes.length === 0) return [];
  const { fit, knob, response } = trial;
  return [
    ['nearest', knob.name, 'off', response.name],
    ...sizes.map(({ name, size }) => [
      name,
      inUnits(size, knob),
      small(size - wanted),
      estimateText(responseAt(fit, size), response),
    ]),
  ];
}

function estimateText({ value, low, high }: Estimate, { unit }: Axis): string {
  const told = formatValue(exact(value), unit);
  return low === undefined || high === undefined
    ? told
    : `${told} (${formatValue({ low, high, about: false }, unit)})`;
}

function foretold(knobs: readonly number[], trial: Fitted, inputs: readonly Input[]): Figure {
  const { fit, knob, response } = trial;
  const estimates = knobs.map((each) => responseAt(fit, each));
  return figure({
    ...FIT,
    name: `${response.name} at ${spread(knobs, knob)}`,
    text: estimates.map((each) => estimateText(each, response)).join('; '),
    value: { ...estimates.map(spanOf).reduce(hull), about: trial.about },
    unit: response.unit,
    formula: formulaOf(trial),
    working: knobs
      .map((each, i) => `${inUnits(each, knob)}: ${inUnits((estimates[i] as Estimate).value, response)}`)
      .join('; '),
    inputs,
    caution: outsideText(estimates, trial),
  });
}
