import type { FileProblem } from '../model/files.ts';
import { isAbsent } from '../model/step.ts';
import { NO_PROBLEMS, rule } from './rule.ts';

export const useMissing = rule({
  code: 'use-missing',
  severity: 'warning',
  title: 'A notebook to use that cannot be read',
  why: 'Without it its specs, limits and own words are missing here: its words are not known, and nothing is held to its limits.',
  standing: 'notation',
  good: 'specs\n  use shop-limits.tappet\n',
  bad: 'specs\n  use shop-limit.tappet\n',
  on: ['file'],
  check({ word, path, pathSpan }, { lookUp }) {
    if (word !== 'use' || path === '') return NO_PROBLEMS;
    const found = lookUp({ of: 'notebook', path });
    if (!isAbsent(found) || found.problem === 'cycle' || found.problem === 'outside') return NO_PROBLEMS;
    return [{ span: pathSpan, message: `"${path}" gives nothing here: ${BECAUSE[found.problem]}.` }];
  },
});

const BECAUSE: Readonly<Record<Exclude<FileProblem, 'outside'>, string>> = {
  missing: 'there is no such file; the path is written from the folder of this notebook',
  'too large': 'it is too large to be used',
  'not text': 'it is not text in UTF-8',
  'not readable': 'it could not be read',
};
