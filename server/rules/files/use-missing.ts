import { type FileProblem, isAbsent } from '../../model/state/lookup.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const useMissing = rule({
  code: 'use-missing',
  severity: 'warning',
  title: 'A notebook to use that cannot be read',
  why: 'Its specs, limits and own words are missing here: its words are not known, and nothing is checked against its limits.',
  standing: 'notation',
  good: 'specs\n  use shop-limits.tappet\n',
  bad: 'specs\n  use shop-limit.tappet\n',
  on: ['file'],
  check({ word, path, pathSpan }, { lookUp }) {
    if (word !== 'use' || path === '') return NO_PROBLEMS;
    const found = lookUp({ of: 'notebook', path });
    if (!isAbsent(found) || found.problem === 'cycle' || found.problem === 'outside') return NO_PROBLEMS;
    return [{ span: pathSpan, message: MESSAGES[found.problem](path) }];
  },
});

const MESSAGES: Readonly<Record<Exclude<FileProblem, 'outside'>, (path: string) => string>> = {
  missing: (path) => `Can't find "${path}". Paths are relative to this notebook's folder.`,
  'too large': (path) => `"${path}" is too large to be used.`,
  'not text': (path) => `"${path}" is not UTF-8 text, so nothing is taken from it.`,
  'not readable': (path) => `Can't open "${path}", so nothing is taken from it.`,
};
