import { KIND, runSpan, tokenText } from '../../grammar/index.ts';
import { numberOf } from '../model/values.ts';
import { LISTED_KINDS } from './kinds.ts';
import { type Problem, replaceWith, rule } from './rule.ts';
import { amountsIn } from './syntax.ts';

export const reversedRange = rule({
  code: 'reversed-range',
  severity: 'warning',
  title: 'A range that runs from high to low',
  why: 'It is read from the lower to the higher number; but written backwards one of the two may be a slip.',
  standing: 'notation',
  good: 'targets\n  idle 750..800 rpm\n',
  bad: 'targets\n  idle 800..750 rpm\n',
  on: LISTED_KINDS,
  formed: ({ kinds }) => kinds.includes(KIND.Dots),
  check({ line }) {
    if (!line.tokens.kinds.includes(KIND.Dots)) return [];
    const found: Problem[] = [];
    for (const { low, link, high } of amountsIn(line.syntax)) {
      if (low === undefined || link === undefined || high === undefined) continue;
      const [from, to] = [tokenText(line, low), tokenText(line, high)];
      if (line.tokens.kinds[link] !== KIND.Dots || !descends(from, to)) continue;
      const span = runSpan(line, [low, high + 1]);
      found.push({
        span,
        message: `The range runs from ${from} down to ${to}; it is read as ${to}..${from}.`,
        fixes: [replaceWith(span, `${to}..${from}`)],
      });
    }
    return found;
  },
});

function descends(from: string, to: string): boolean {
  const [first, second] = [numberOf(from), numberOf(to)];
  return typeof first === 'number' && typeof second === 'number' && first > second;
}
