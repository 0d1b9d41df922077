import { shortTrial, wantIn } from '../../analysis/trials/trial.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { lineSpan } from '../lib/line-syntax.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

const FLAT = {
  'does not move': 'did not change',
  'within noise': 'changed no more than repeat readings of one setting did',
  'within the meter': 'changed by less than a tachometer can show (1 per cent, TM 5-4210-230-14&P-1)',
  'no trend': 'showed no trend',
} as const;

export const wantWithoutResponse = rule({
  code: 'want-without-response',
  severity: 'information',
  title: 'Wanted value of something that does not respond',
  why: 'Where the rows show no effect, no size can be worked out: any answer would be chance. Look for what does move it.',
  standing: 'published',
  source: 'NIST/SEMATECH e-Handbook of Statistical Methods, on the slope of a fitted line',
  good: 'session 2026-05-02\n  trial feed restrictor -> oil pressure\n    1/8 in 12 psi\n    5/32 in 14.5 psi\n    want 13 psi\n',
  bad: 'session 2026-05-02\n  trial feed restrictor -> oil pressure\n    1/8 in 12 psi\n    5/32 in 12 psi\n    want 13 psi\n',
  on: ['want'],
  check({ values, line }, { before }) {
    const trial = shortTrial(before);
    const flat = trial?.fit?.flat;
    if (!trial?.fit || !flat || wantIn(values[0], trial)?.of !== 'response') return NO_PROBLEMS;
    const { knob, response, fit } = trial;
    const tried = formatValue({ low: fit.low, high: fit.high, about: false }, knob.unit);
    return [
      {
        span: lineSpan(line),
        message: `${response.name} ${FLAT[flat]} over ${knob.name} ${tried}, so no size can be worked out. Something else limits it.`,
      },
    ];
  },
});
