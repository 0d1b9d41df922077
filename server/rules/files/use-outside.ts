import { isAbsent } from '../../model/state/lookup.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const useOutside = rule({
  code: 'use-outside',
  severity: 'warning',
  title: 'A notebook to use outside the workspace',
  why: 'Other notebooks are read only inside the folders that are open: a notebook passed on to somebody must not open other files on their machine, and what it needs should travel with it.',
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
        message: `"${path}" is outside the open folders and is not read. Move it inside and write its path relative to this notebook's folder.`,
      },
    ];
  },
});
