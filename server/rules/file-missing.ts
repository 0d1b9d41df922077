import { partsWithin } from '../model/files.ts';
import type { FileEntry } from '../model/notebook.ts';
import { isAbsent } from '../model/step.ts';
import { NO_PROBLEMS, rule } from './rule.ts';

export const fileMissing = rule({
  code: 'file-missing',
  severity: 'information',
  title: 'A photo or log that is not there',
  why: 'A notebook that is passed on without its photos and logs, or a name with one letter wrong, is noticed when somebody needs them, which may be years later. Files are looked for inside the folders that may be read, never outside.',
  standing: 'notation',
  good: 'session 2026-05-02\n  photo photos/linkage.jpg\n',
  bad: 'session 2026-05-02\n  photo photos/linkage-lost.jpg\n',
  on: ['file'],
  check(entry, { lookUp }) {
    const { word, path, pathSpan } = entry;
    if (!isLookedFor(entry)) return NO_PROBLEMS;
    const found = lookUp({ of: 'file', path });
    if (!isAbsent(found)) return NO_PROBLEMS;
    const { lookedAt = path } = found;
    const place = lookedAt === path ? '' : `, at ${lookedAt}`;
    return [
      {
        span: pathSpan,
        message: `The ${word} "${path}" is not there: it was looked for from the folder of this notebook${place}. Where it is kept elsewhere on purpose, "; meant: file-missing" at the end of the line says so.`,
      },
    ];
  },
});

/** A log outside the notebook's own folder is never read, and told by a rule of its own. */
const isLookedFor = ({ word, path }: FileEntry): boolean =>
  path !== '' && (word === 'photo' || (word === 'log' && partsWithin(path) !== undefined));
