/** Law 5: what an edit gives. */
import fc from 'fast-check';
import { expect } from 'vitest';
import { edit, open } from '../../server/model/snapshot.ts';
import { law } from './law.ts';
import { answers } from './located.ts';
import { type AnyChange, changeIn, longNotebook, notebook } from './notebooks.ts';
import { changed } from './peer.ts';
import { watchful } from './watchful.ts';

const edited = (text: fc.Arbitrary<string>) =>
  text.chain((before) =>
    fc.tuple(fc.constant(before), fc.array(changeIn(before), { minLength: 1, maxLength: 4 })),
  );

function sameAsOpened([before, changes]: [string, AnyChange[]]): void {
  let snapshot = open(before, watchful);
  let text = before;
  for (const change of changes) {
    snapshot = edit(snapshot, change);
    text = changed(text, change);
  }
  expect(answers(snapshot)).toEqual(answers(open(text, watchful)));
}

law('law 5: edits of any notebook give what opening it gives', edited(notebook), sameAsOpened);
law('law 5: edits of sections longer than a page too', edited(longNotebook), sameAsOpened, 0.05);
