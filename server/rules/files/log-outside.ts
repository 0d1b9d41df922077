import { partsWithin } from '../../model/snapshot/named-files.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const logOutside = rule({
  code: 'log-outside',
  severity: 'warning',
  title: "A log outside the notebook's folder",
  why: 'A log is read only from the folder of the notebook or below it, with its path written from there: a notebook passed on to somebody must not open other files on their machine.',
  standing: 'notation',
  good: 'session 2026-05-02\n  log logs/run.csv\n',
  bad: 'session 2026-05-02\n  log ../run.csv\n',
  on: ['file'],
  check({ word, path, pathSpan }) {
    if (word !== 'log' || path === '' || partsWithin(path)) return NO_PROBLEMS;
    return [
      {
        span: pathSpan,
        message: `"${path}" is outside this notebook's folder and is not read. Move the log there and write its path relative to that folder.`,
      },
    ];
  },
});
