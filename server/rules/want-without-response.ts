import { shortTrial, wantIn } from '../model/trials.ts';
import { formatValue } from '../trade/format.ts';
import { NO_PROBLEMS, rule } from './rule.ts';
import { lineSpan } from './syntax.ts';

const FLAT = {
  'does not move': 'does not move at all',
  'within noise': 'moves no more than repeats of one setting do',
  'within the meter': 'moves by less than a tachometer tells (1 per cent, TM 5-4210-230-14&P-1)',
  'no trend': 'follows no trend',
} as const;

export const wantWithoutResponse = rule({
  code: 'want-without-response',
  severity: 'information',
  title: 'A value wanted of a response that does not move',
  why: 'Where the rows tell no effect of the knob, no setting of it can be worked out: whatever came out would be chance. Look for what does move the response.',
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
        message: `${response.name} ${FLAT[flat]} with ${knob.name} from ${tried}, so no ${knob.name} gives this: something else holds it.`,
      },
    ];
  },
});
