import { expect, test } from 'vitest';
import { newSession, type SessionAsked } from '../../server/features/new-session.ts';
import { textOf } from '../../server/model/snapshot/locate.ts';
import { edit } from '../../server/model/snapshot/snapshot.ts';
import { openNotebook } from '../../server/rules/check.ts';

/** The notebook after it, with `‸` where writing goes on. */
function started(text: string, asked: Partial<SessionAsked>): string {
  const snapshot = openNotebook(text);
  const { cursor, ...change } = newSession(snapshot, { today: '2026-07-01', title: '', ...asked });
  const after = edit(snapshot, change);
  const range = { start: cursor, end: cursor };
  return textOf(edit(after, { range, text: '‸' }));
}

const OLD = 'session 2026-05-02\n  initial 9 deg\n';

test.each<readonly [what: string, text: string, asked: Partial<SessionAsked>, after: string]>([
  ['in nothing', '', {}, 'session 2026-07-01\n  ‸'],
  [
    'a blank line below the last',
    OLD,
    { title: ' Leaner  now ' },
    `${OLD}\nsession 2026-07-01  Leaner now\n  ‸`,
  ],
  ['not two', `${OLD}\n`, {}, `${OLD}\nsession 2026-07-01\n  ‸`],
  ['below a line without its break', OLD.trimEnd(), {}, `${OLD}\nsession 2026-07-01\n  ‸`],
  ['over blanks of the last line', `${OLD}\n   `, {}, `${OLD}\nsession 2026-07-01\n  ‸`],
  [
    'with the breaks of the notebook',
    OLD.replaceAll('\n', '\r\n'),
    {},
    `${OLD}\nsession 2026-07-01\n  ‸`.replaceAll('\n', '\r\n'),
  ],
  ['from the last session: nothing to go back to', OLD, { from: 1 }, `${OLD}\nsession 2026-07-01\n  ‸`],
  [
    'from an earlier session: back to what held then',
    `${OLD}session 2026-05-03\n`,
    { from: 1 },
    `${OLD}session 2026-05-03\n\nsession 2026-07-01\n  revert to 2026-05-02\n  ‸`,
  ],
])('%s', (_what, text, asked, after) => expect(started(text, asked)).toBe(after));
