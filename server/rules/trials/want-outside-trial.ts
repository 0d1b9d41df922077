import { type ReadTrial, shortTrial, wantIn } from '../../analysis/trials/trial.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { knobFor, responseAt, type TrialFit } from '../../trade/sums/trials.ts';
import { lineSpan } from '../lib/line-syntax.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const wantOutsideTrial = rule({
  code: 'want-outside-trial',
  severity: 'information',
  title: 'Wanted value outside what was tried',
  why: 'A fitted line says little beyond its rows: a stop, a jet that can flow no more or a closed plate may come in between. Try a row near it before cutting metal.',
  standing: 'published',
  source: 'NIST/SEMATECH e-Handbook of Statistical Methods, on prediction outside the range of the data',
  good: 'session 2026-05-02\n  trial feed restrictor -> oil pressure\n    1/8 in 12 psi\n    5/32 in 14.5 psi\n    want 13 psi\n',
  bad: 'session 2026-05-02\n  trial feed restrictor -> oil pressure\n    1/8 in 12 psi\n    5/32 in 14.5 psi\n    want 19 psi\n',
  on: ['want'],
  check({ values, line }, { before }) {
    const trial = shortTrial(before);
    const wanted = trial && wantIn(values[0], trial);
    if (!trial?.fit || trial.fit.flat || !wanted) return NO_PROBLEMS;
    const { fit, knob } = trial;
    const ends = [wanted.value.low, wanted.value.high].filter((end) => Number.isFinite(end));
    const far = ends.flatMap((end) =>
      wanted.of === 'knob' ? outsideKnob(fit, end, trial) : outsideAnswer(fit, end, trial),
    );
    if (far.length === 0) return NO_PROBLEMS;
    const tried = formatValue({ low: fit.low, high: fit.high, about: false }, knob.unit);
    return [
      {
        span: lineSpan(line),
        message: `This needs ${knob.name} ${far[0]}; only ${tried} was tried. Add a row near it before relying on the answer.`,
      },
    ];
  },
});

const outsideKnob = (fit: TrialFit, size: number, { knob: { unit } }: ReadTrial): readonly string[] =>
  responseAt(fit, size).outside ? [formatValue({ low: size, high: size, about: false }, unit)] : [];

function outsideAnswer(fit: TrialFit, wanted: number, { knob }: ReadTrial): readonly string[] {
  const answer = knobFor(fit, wanted);
  if (answer.kind === 'none') return ['far beyond the rows'];
  const at = { low: answer.value, high: answer.value, about: false };
  return answer.outside ? [formatValue(at, knob.unit)] : [];
}
