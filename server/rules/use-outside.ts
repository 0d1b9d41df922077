import { isAbsent } from '../model/step.ts';
import { NO_PROBLEMS, rule } from './rule.ts';

export const useOutside = rule({
  code: 'use-outside',
  severity: 'warning',
  title: 'A notebook to use outside the workspace',
  why: 'Other notebooks are read only inside the folders that are open: a notebook that is passed on must not open other files of who reads it, and what it needs should travel with it.',
  standing: 'notation',
  good: 'specs\n  use shop-limits.tappet\n',
  bad: 'specs\n  use /shop-limits.tappet\n',
  on: ['file'],
  check({ word, path, pathSpan }, { lookUp }) {
    if (word !== 'use' || path === '') return NO_PROBLEMS;
    const found = lookUp({ of: 'notebook', path });
    if (!isAbsent(found) || found.problem !== 'outside') return NO_PROBLEMS;
    return [
      {
        span: pathSpan,
        message: `"${path}" lies outside the folders that may be read for this notebook, and is not read: put it inside, and write the path from the folder of this notebook.`,
      },
    ];
  },
});
