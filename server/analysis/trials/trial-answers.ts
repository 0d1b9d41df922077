/** Answers of a trial to each of its wants: the knob for a response, or the response at a knob. */

import { valueText } from '../../model/entry/as-written.ts';
import type { State } from '../../model/state/state.ts';
import { formatNumber, formatValue, formatWithin } from '../../trade/measure/format.ts';
import { exact, hull, type Interval, middle } from '../../trade/measure/interval.ts';
import { type Estimate, knobFor, responseAt } from '../../trade/sums/trials.ts';
import { type Figure, figure, type Input } from '../figure.ts';
import { realSizes } from './real-sizes.ts';
import { type Axis, wantIn } from './trial.ts';
import {
  courseText,
  FIT,
  type Fitted,
  FLAT,
  flatReason,
  formulaOf,
  inputsOf,
  inUnits,
  small,
  tried,
} from './trial-text.ts';
import type { Want, WrittenTrial } from './written-trials.ts';

export function answer(want: Want, written: WrittenTrial, trial: Fitted, state: State): readonly Figure[] {
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
      : settingFor(endsOf(asked.value), trial, inputs, state),
  ];
}

/** Values to solve for: both ends of a range, the one end of a bound. */
const endsOf = ({ low, high }: Interval): readonly number[] =>
  [...new Set([low, high])].filter((end) => Number.isFinite(end));

const spread = (ends: readonly number[], { unit }: Axis): string =>
  formatValue(ends.map(exact).reduce(hull), unit);

function settingFor(
  wanted: readonly number[],
  trial: Fitted,
  inputs: readonly Input[],
  state: State,
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
    text: textOf(interval, found, knob),
    value,
    unit: knob.unit,
    working: wanted.map((each, i) => workingOf(each, (found[i] as Estimate).value, trial)).join('; '),
    caution: outsideText(found, trial),
    rows: sizeRows(middle(interval), trial, state),
  });
}

const inverse = ({ fit, knob, response }: Fitted): string =>
  fit.model.kind === 'line'
    ? `(${response.name} - intercept) / slope`
    : `where the curve of ${response.name} over ${knob.name} passes the wanted value`;

const noAnswer = ({ fit, knob, response }: Fitted): string =>
  fit.flat
    ? `None: ${response.name} ${FLAT[fit.flat]} between ${tried(fit, knob)}`
    : `None: out of reach, even well outside ${tried(fit, knob)}`;

function workingOf(wanted: number, value: number, { fit, knob, response }: Fitted): string {
  const [asked, answered] = [inUnits(wanted, response), inUnits(value, knob)];
  if (fit.model.kind === 'curve') return `the curve passes ${asked} at ${answered}`;
  const { slope, intercept } = fit.model;
  const sign = intercept < 0 ? '+' : '-';
  return `(${asked} ${sign} ${inUnits(Math.abs(intercept), response)}) / ${formatNumber(slope, undefined)} = ${answered}`;
}

/** Range of settings that could give it; the setting alone where the rows are too few to say. */
const spanOf = ({ value, low, high }: Estimate): Interval => ({
  low: low ?? value,
  high: high ?? value,
  about: false,
});

function textOf(interval: Interval, found: readonly Estimate[], { unit }: Axis): string {
  const plain = formatValue(interval, unit);
  if (found.every((each) => each.low === undefined && each.high === undefined)) return plain;
  const low = Math.min(...found.map((each) => each.low ?? Number.NEGATIVE_INFINITY));
  const high = Math.max(...found.map((each) => each.high ?? Number.POSITIVE_INFINITY));
  const within = formatWithin(middle(interval), { low, high }, unit);
  if (formatValue(exact(low), unit) === formatValue({ low, high, about: false }, unit))
    return `${plain}; too few rows to say how far off`;
  const value = found.length === 1 && !interval.about ? within.value : plain;
  return `${value} (19 times in 20 within ${within.span})`;
}

function outsideText(found: readonly Estimate[], { fit, knob }: Fitted): string | undefined {
  if (!found.some((each) => each.outside)) return undefined;
  return `Outside the range tried (${tried(fit, knob)}): try a row there before trusting it.`;
}

/** Expected response at each size that can be had. */
function sizeRows(wanted: number, trial: Fitted, state: State): readonly (readonly string[])[] {
  const sizes = realSizes(wanted, trial, state);
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
  if (low === undefined || high === undefined) return formatValue(exact(value), unit);
  const within = formatWithin(value, { low, high }, unit);
  return `${within.value} (${within.span})`;
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
