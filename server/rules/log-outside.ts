import { partsWithin } from '../model/files.ts';
import { NO_PROBLEMS, rule } from './rule.ts';

export const logOutside = rule({
  code: 'log-outside',
  severity: 'warning',
  title: "A log outside the notebook's folder",
  why: 'A log is read only where it lies in the folder of the notebook or below it, and its path is written from there: a notebook that is passed on must not open other files of who reads it.',
  standing: 'notation',
  good: 'session 2026-05-02\n  log logs/run.csv\n',
  bad: 'session 2026-05-02\n  log ../run.csv\n',
  on: ['file'],
  check({ word, path, pathSpan }) {
    if (word !== 'log' || path === '' || partsWithin(path)) return NO_PROBLEMS;
    return [
      {
        span: pathSpan,
        message: `"${path}" lies outside the folder of this notebook and is not read: put it beside the notebook, and write the path from there.`,
      },
    ];
  },
});
