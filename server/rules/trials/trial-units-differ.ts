import { type Axis, axesOf, isOnAxes, wantIn } from '../../analysis/trials/trial.ts';
import { rowOf } from '../../model/state/trial-rows.ts';
import { lineSpan } from '../lib/line-syntax.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const trialUnitsDiffer = rule({
  code: 'trial-units-differ',
  severity: 'warning',
  title: 'A trial line in different units from the rest',
  why: 'All rows of a trial are fitted with one line, so each must give the same two quantities. A row in another kind of unit is left out; a "want" in another kind has no answer.',
  standing: 'notation',
  good: 'session 2026-05-02\n  trial feed restrictor -> oil pressure\n    1/8 in 12 psi\n    4 mm 14.5 psi\n    want 13 psi\n',
  bad: 'session 2026-05-02\n  trial feed restrictor -> oil pressure\n    1/8 in 12 psi\n    5/32 in 14.5 psi\n    want 13 V\n',
  on: ['row', 'want'],
  check(entry, { before, after, where }) {
    const { kind, values, size, line } = entry;
    const trial = before.trial;
    if (!trial || trial.rows.size === 0 || values.length === 0) return NO_PROBLEMS;
    const above = axesOf(trial, before.words);
    const fits =
      kind === 'want'
        ? wantIn(values[0], above) !== undefined
        : values.length + size.length < 2 ||
          after.trial === undefined ||
          isOnAxes(rowOf(entry, where), axesOf(after.trial, after.words));
    if (fits || values.some((value) => value.form === 'amount' && !value.interval)) return NO_PROBLEMS;
    const [knob, response] = [above.knob, above.response].map(axisText);
    return [
      {
        span: lineSpan(line),
        message: `The rows above give ${knob} and ${response}; this line does not, so it is left out of the fit.`,
      },
    ];
  },
});

const axisText = ({ name, unit: { symbol } }: Axis): string => `${name}${symbol ? ` (${symbol})` : ''}`;
