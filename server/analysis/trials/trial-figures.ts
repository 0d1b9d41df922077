/** Trials: how the response follows the knob, which setting should give the wanted value, and what the nearest real size gives. */

import { lineOf } from '../../model/snapshot/locate.ts';
import { exact } from '../../trade/measure/interval.ts';
import { responseAt } from '../../trade/sums/trials.ts';
import { type Figure, type FigureContext, figure, type Plot, type Working } from '../figure.ts';
import { type ReadTrial, readTrial } from './trial.ts';
import { answer } from './trial-answers.ts';
import {
  count,
  courseText,
  FIT,
  type Fitted,
  flatReason,
  formulaOf,
  inputsOf,
  inUnits,
  small,
  withUnit,
} from './trial-text.ts';
import { trialAt, trialsOfSession, type WrittenTrial } from './written-trials.ts';

export const TRIALS: Working = {
  topic: 'trials',
  about: ['trial'],
  work: (moment, word) =>
    (word === undefined ? trialsOfSession(moment) : trialAt(moment).map(onlyAsked(moment))).flatMap(
      (written) => trialFigures(written, moment),
    ),
};

/** On the line of a want, only its own answer. */
const onlyAsked =
  ({ snapshot, line }: FigureContext) =>
  (written: WrittenTrial): WrittenTrial => {
    const own = written.wants.filter((want) => lineOf(snapshot, want.by.ref) === line);
    return own.length > 0 ? { ...written, wants: own } : written;
  };

function trialFigures(written: WrittenTrial, { state }: FigureContext): readonly Figure[] {
  const trial = readTrial(written.trial, state.words);
  const { fit } = trial;
  if (!fit) return [tooFew(written, trial)];
  const fitted = { ...trial, fit };
  return [...written.wants.flatMap((want) => answer(want, written, fitted, state)), course(written, fitted)];
}

const title = ({ trial: { knob, response, under } }: WrittenTrial): string =>
  [`${knob} -> ${response}`, under].filter(Boolean).join(' ');

const TOO_FEW = 'two rows at different settings make a line, three show how far to trust it';

const tooFew = (written: WrittenTrial, trial: ReadTrial): Figure =>
  figure({
    ...FIT,
    name: title(written),
    text: `Nothing to fit yet: ${TOO_FEW}`,
    formula: TOO_FEW,
    working: `${count(trial.rows.length)} read${leftOutText(trial)}`,
    inputs: inputsOf(written),
  });

const leftOutText = ({ leftOut }: ReadTrial): string =>
  leftOut === 0 ? '' : `, ${leftOut} left out without two numbers in the units of the others`;

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
    plot: plotOf(trial),
  });
}

/** Enough points for a curve to look like one. */
const DRAWN = 24;

function plotOf({ fit, knob, response }: Fitted): Plot {
  const step = (fit.high - fit.low) / DRAWN;
  const along = Array.from({ length: DRAWN + 1 }, (_, i) => fit.low + i * step);
  const points = fit.rows
    .toSorted((a, b) => a.knob - b.knob)
    .map((row) => ({ at: row.knob, value: exact(row.response) }));
  const line = along.map((at) => ({ at, value: exact(responseAt(fit, at).value) }));
  return {
    across: { name: knob.name, unit: knob.unit },
    up: { name: response.name, unit: response.unit },
    series: [
      { name: 'tried', drawn: 'points', points },
      { name: 'fitted', drawn: 'line', points: line },
    ],
  };
}

const roughText = ({ about }: ReadTrial): readonly string[] =>
  about ? ['approximate rows taken at their middle'] : [];

function scatterText({ fit, response }: Fitted): readonly string[] {
  if (fit.spread === undefined) return ['two rows say nothing about scatter'];
  const { leaveOneOut } = fit;
  const size = (of: number) => withUnit(small(of), response);
  const foretold = leaveOneOut
    ? [`leave-one-out error ${size(leaveOneOut.line)} for the line, ${size(leaveOneOut.curve)} for the curve`]
    : [];
  return [`scatter ${size(fit.spread)}`, ...foretold];
}
