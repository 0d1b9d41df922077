import { ROAD_CHECKS } from '../../trade/practice/road-checks.ts';
import { didYouMean, guessAmong } from '../lib/did-you-mean.ts';
import { NO_PROBLEMS, replaceWith, rule } from '../rule.ts';

export const checkMisspelt = rule({
  code: 'check-misspelt',
  severity: 'warning',
  title: 'A check whose name is nearly a known one',
  why: 'A check under another name does not clear the one that is due.',
  standing: 'notation',
  good: 'session 2026-05-02\n  check throttle return ok\n',
  bad: 'session 2026-05-02\n  check throtle return ok\n',
  on: ['check'],
  check({ name, nameSpan }, { before }) {
    if (NAMES.includes(name) || before.rechecks.has(name)) return NO_PROBLEMS;
    const guess = guessAmong(name, NAMES);
    const nearest = guess.words[0];
    if (!nearest) return NO_PROBLEMS;
    const fixes = guess.sure ? [replaceWith(nameSpan, nearest)] : [];
    return [{ span: nameSpan, message: `There is no check "${name}".${didYouMean(guess)}`, fixes }];
  },
});

const NAMES = ROAD_CHECKS.map(({ name }) => name);
