import type { FileEntry } from '../../model/entry/entry.ts';
import { partsWithin } from '../../model/snapshot/named-files.ts';
import { isAbsent } from '../../model/state/lookup.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const fileMissing = rule({
  code: 'file-missing',
  severity: 'information',
  title: 'A photo or log that is missing',
  why: 'A notebook passed on without its photos and logs, or one wrong letter in a file name, is only noticed when somebody needs the file, perhaps years later. Files are looked for only inside the folders this notebook may read.',
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
    const place = lookedAt === path ? '' : ` at ${lookedAt}`;
    return [
      {
        span: pathSpan,
        message: `Can't find the ${word} "${path}"${place}. Paths are relative to this notebook's folder.`,
      },
    ];
  },
});

/** Whether the file is looked for. A log outside the notebook's own folder is never read, and has a rule of its own. */
const isLookedFor = ({ word, path }: FileEntry): boolean =>
  path !== '' && (word === 'photo' || (word === 'log' && partsWithin(path) !== undefined));
