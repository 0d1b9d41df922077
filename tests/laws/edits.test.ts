/** Laws 5 and 10: what an edit gives, and what it costs. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Check } from '../../server/model/snapshot/finding.ts';
import { lineCount, lineOf } from '../../server/model/snapshot/locate.ts';
import type { Shared } from '../../server/model/snapshot/look-up.ts';
import type { Page } from '../../server/model/snapshot/page.ts';
import {
  type Change,
  edit,
  open,
  pageAt,
  refresh,
  type Snapshot,
} from '../../server/model/snapshot/snapshot.ts';
import { checkLine } from '../../server/rules/check.ts';
import { law } from './law.ts';
import { answers } from './located.ts';
import { type AnyChange, changeIn, conflicted, longNotebook, notebook } from './notebooks.ts';
import { changed } from './peer.ts';
import { watchful } from './watchful.ts';

type Edited = readonly [text: string, changes: readonly AnyChange[]];

const edited = (text: fc.Arbitrary<string>): fc.Arbitrary<Edited> =>
  text.chain((before) =>
    fc.tuple(fc.constant(before), fc.array(changeIn(before), { minLength: 1, maxLength: 4 })),
  );

const asOpened =
  (check: Check) =>
  ([before, changes]: Edited): void => {
    const snapshot = changes.reduce(edit, open(before, check));
    const after = changes.reduce(changed, before);
    expect(answers(snapshot)).toEqual(answers(open(after, check)));
  };

law('law 5: edits of any notebook give what opening it gives', edited(notebook), asOpened(watchful));
law('law 5: and in sections longer than a page', edited(longNotebook), asOpened(watchful), 0.1);
law('law 5: and with a merge that was not finished', edited(conflicted), asOpened(watchful));
law('law 5: and all findings of the rules', edited(notebook), asOpened(checkLine));

/** A notebook whose `use` lines, whichever file they name, are answered by the end of another one. */
const sharing = (other: string): Shared => {
  const { after } = open(other, watchful).pages.at(-1) as Page;
  return () => after;
};

law(
  'law 5: a notebook refreshed after another changed answers as one opened then',
  fc.tuple(notebook, notebook, notebook),
  ([text, other, otherThen]) => {
    const refreshed = refresh(open(text, watchful, sharing(other)), sharing(otherThen));
    expect(answers(refreshed)).toEqual(answers(open(text, watchful, sharing(otherThen))));
  },
);

/** Which lines an edit reads again. */
function reread(before: Snapshot, change: Change): readonly number[] {
  const refs: { readonly page: number; readonly line: number }[] = [];
  const noting: Check = (_, { where }) => {
    refs.push(where.ref);
    return [];
  };
  const after = edit({ ...before, check: noting }, change);
  return refs.map((ref) => lineOf(after, ref) as number);
}

law('law 10: no line above the page of a change is read again', edited(notebook), ([text, [change]]) => {
  const before = open(text, watchful);
  const { start } = (change as AnyChange).range;
  // The page above is read again where its last line ends in a lone carriage return.
  const page = Math.max(0, pageAt(before, Math.min(start.line, lineCount(before) - 1)) - 1);
  for (const line of reread(before, change as AnyChange))
    expect(line).toBeGreaterThanOrEqual(before.starts[page] as number);
});

describe('law 10: typing in a session reads that session, and those below as far as what is carried changes', () => {
  const session = (day: number) => [
    `session 2026-05-${String(day).padStart(2, '0')}`,
    `  initial   ${day % 7} deg`,
    '  main jet  105',
    '  idle      850 rpm in neutral',
    '  note      runs',
  ];
  const days = Array.from({ length: 28 }, (_, i) => i + 1);
  const text = days.flatMap(session).join('\n');
  const at = (day: number, line: number, from: number, to: number, text: string): Change => ({
    range: {
      start: { line: (day - 1) * 5 + line, character: from },
      end: { line: (day - 1) * 5 + line, character: to },
    },
    text,
  });

  test.each<[what: string, change: Change, sessions: number]>([
    ['a note', at(10, 4, 12, 12, 'x'), 1],
    ['a comment', at(10, 1, 17, 17, ' ; mark'), 1],
    // The next session is read too: it is told the title, or the value, and hands on what it did before.
    ['the title', at(10, 0, 18, 18, ' Title'), 2],
    ['a setting', at(10, 1, 12, 13, '9'), 2],
    ['a todo, open for ever', at(10, 4, 0, 12, '  todo hose: fit it'), 19],
    ['the last line', at(28, 4, 12, 12, 'x'), 1],
  ])('%s', (_, change, sessions) => {
    expect(
      reread(
        open(text, () => []),
        change,
      ).length,
    ).toBe(sessions * 5);
  });

  /** A session longer than a page, and a session after it. */
  const long = [
    'session 2026-05-01',
    ...Array.from({ length: 150 }, (_, i) => `  plug #${i + 1} tan`),
    'session 2026-05-02',
  ].join('\n');
  const put = (line: number, character: number, text: string): Change => ({
    range: { start: { line, character }, end: { line, character } },
    text,
  });
  const taken: Change = {
    range: { start: { line: 5, character: 0 }, end: { line: 6, character: 0 } },
    text: '',
  };

  test.each<[what: string, change: Change, lines: number]>([
    ['a new line before a line', put(5, 0, '\n'), 101],
    ['a new line after a line', put(4, '  plug #4 tan'.length, '\n'), 101],
    ['a pasted note', put(5, 0, 'note a\nnote b\n'), 102],
    // A session's readings are carried to the next head: all up to it is read for the one that is gone.
    ['a reading taken out', taken, 99 + 51 + 1],
  ])('in a section longer than a page, %s', (_, change, lines) => {
    expect(
      reread(
        open(long, () => []),
        change,
      ).length,
    ).toBe(lines);
  });
});
