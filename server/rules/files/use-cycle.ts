import { isAbsent } from '../../model/state/lookup.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const useCycle = rule({
  code: 'use-cycle',
  severity: 'warning',
  title: 'Notebooks that use each other',
  why: 'Where two notebooks use each other there is no telling which one overrules, so neither is read into the other. Put what both need into a third.',
  standing: 'notation',
  good: 'specs\n  use shop-limits.tappet\n',
  bad: 'specs\n  use use-cycle.tappet\n',
  on: ['file'],
  check({ word, path, pathSpan }, { lookUp }) {
    if (word !== 'use' || path === '') return NO_PROBLEMS;
    const found = lookUp({ of: 'notebook', path });
    if (!isAbsent(found) || found.problem !== 'cycle') return NO_PROBLEMS;
    return [
      {
        span: pathSpan,
        message: `"${path}" is this notebook or uses it in turn, so nothing is taken from it. Put what both need into a third notebook.`,
      },
    ];
  },
});
