/** Notebooks to use from which nothing is taken: outside the workspace, in a circle, or not to be read. */
import { type FileProblem, isAbsent } from '../../model/state/lookup.ts';
import { family, NO_PROBLEMS } from '../rule.ts';

export const unreadNotebooks = family({
  rules: [
    {
      code: 'use-outside',
      severity: 'warning',
      title: 'A notebook to use outside the workspace',
      why: 'Other notebooks are read only inside the folders that are open: a notebook passed on to somebody must not open other files on their machine, and what it needs should travel with it.',
      standing: 'notation',
      good: 'specs\n  use shop-limits.tappet\n',
      bad: 'specs\n  use /shop-limits.tappet\n',
    },
    {
      code: 'use-cycle',
      severity: 'warning',
      title: 'Notebooks that use each other',
      why: 'Where two notebooks use each other there is no telling which one overrules, so neither is read into the other. Put what both need into a third.',
      standing: 'notation',
      good: 'specs\n  use shop-limits.tappet\n',
      bad: 'specs\n  use use-cycle.tappet\n',
    },
    {
      code: 'use-missing',
      severity: 'warning',
      title: 'A notebook to use that cannot be read',
      why: 'Its specs, limits and own words are missing here: its words are not known, and nothing is checked against its limits.',
      standing: 'notation',
      good: 'specs\n  use shop-limits.tappet\n',
      bad: 'specs\n  use shop-limit.tappet\n',
    },
  ],
  on: ['file'],
  check({ word, path, pathSpan: span }, { lookUp }) {
    if (word !== 'use' || path === '') return NO_PROBLEMS;
    const found = lookUp({ of: 'notebook', path });
    if (!isAbsent(found)) return NO_PROBLEMS;
    const { problem } = found;
    const code = problem === 'outside' || problem === 'cycle' ? (`use-${problem}` as const) : 'use-missing';
    return [{ code, span, message: MESSAGES[problem](path) }];
  },
});

const MESSAGES: Readonly<Record<FileProblem | 'cycle', (path: string) => string>> = {
  outside: (path) =>
    `"${path}" is outside the open folders and is not read. Move it inside and write its path relative to this notebook's folder.`,
  cycle: (path) =>
    `"${path}" is this notebook or uses it in turn, so nothing is taken from it. Put what both need into a third notebook.`,
  missing: (path) => `Can't find "${path}". Paths are relative to this notebook's folder.`,
  'too large': (path) => `"${path}" is too large to be used.`,
  'not text': (path) => `"${path}" is not UTF-8 text, so nothing is taken from it.`,
  'not readable': (path) => `Can't open "${path}", so nothing is taken from it.`,
};
