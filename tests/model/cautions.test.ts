/** Which cautions a session calls for: each once, whatever its lines, and none of another session. */
import { expect, test } from 'vitest';
import { cautionsOfSession } from '../../server/analysis/upkeep/cautions.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { fixture } from '../harness/fixture.ts';

const idsIn = (book: string): string => {
  const { text, cursor } = fixture(book);
  return cautionsOfSession(openNotebook(text), cursor?.line ?? 0)
    .map(({ id }) => id)
    .join(' ');
};

const TWO = (first: string, second: string): string => `
  engine
    cylinders 4
  session 2026-05-02${first}
    fuel line 5/16 in
    idle 800 rpm
    idle 820 rpm
  session 2026-05-03${second}
    speed 30 mph`;

test.each<[what: string, book: string, ids: string]>([
  ['at its head', TWO('‸', ''), 'carbon-monoxide hot-parts-and-fans fuel-opened'],
  ['at the next head', TWO('', '‸'), 'road-run'],
  ['on a line inside', TWO('', '').replace('820', '8‸20'), 'carbon-monoxide hot-parts-and-fans fuel-opened'],
  ['outside sessions', TWO('', '').replace('cylinders', 'cylin‸ders'), ''],
  ['a session without work', '\nsession 2026-05-02‸\n  note nothing done\n', ''],
  [
    'a session of several pages',
    `\nsession 2026-05-02‸\n${'  note driven\n'.repeat(150)}  speed 30 mph\nsession 2026-05-03\n  boost 5 psi\n`,
    'road-run',
  ],
])('%s', (_, book, ids) => expect(idsIn(book)).toBe(ids));
