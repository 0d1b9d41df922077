/**
 * Law 5, of every answer: a notebook that came about by edits, on pages of any size, answers as its text does when it is
 * opened anew. So does one that uses it.
 */
import fc from 'fast-check';
import type { Shared } from '../../server/model/snapshot/look-up.ts';
import { type Change, edit, open, refresh, type Snapshot } from '../../server/model/snapshot/snapshot.ts';
import { stateGiven } from '../../server/model/snapshot/used-notebooks.ts';
import { checkLine, openNotebook } from '../../server/rules/check.ts';
import { changed } from '../laws/peer.ts';
import { book, sample } from './books.ts';
import { everyAnswer, type Look } from './every-answer.ts';
import type { Fuzzer } from './fuzzer.ts';
import { changesOf, type Step, step } from './steps.ts';

interface Editing {
  readonly text: string;
  /** Lines of a page, from 1. */
  readonly longestPage: number;
  readonly steps: readonly { readonly step: Step; readonly look: Look }[];
}

const look: fc.Arbitrary<Look> = fc.record({
  line: fc.nat({ max: 120 }),
  character: fc.nat({ max: 40 }),
  other: fc.nat({ max: 120 }),
});

const editing: fc.Arbitrary<Editing> = fc.record({
  text: book,
  longestPage: fc.oneof(fc.integer({ min: 1, max: 8 }), fc.integer({ min: 1, max: 200 })),
  steps: fc.array(fc.record({ step, look }), { minLength: 1, maxLength: 8 }),
});

export const edits: Fuzzer = {
  name: 'edits',
  property: () => fc.property(editing, answersAsOpened),
  stepsPerRun: 10,
};

/** What the edited notebook uses; files that it names are there, but for one. */
const OTHER = stateGiven(openNotebook(sample('shop-limits.tappet')));
const USED: Shared = (path, of) =>
  of === 'notebook' ? OTHER : path.startsWith('lost') ? { problem: 'missing' } : undefined;

/** A notebook that uses the edited one. */
const USER = `use edited
session 2026-06-01
  initial 40 deg
  water 200 F
  oil pressure 10 psi @ 3000 rpm
  head bolts 10 lb-ft
  spark plugs 90 lb-ft
  sparkle 4
`;
const giving =
  (edited: Snapshot): Shared =>
  (_, of) =>
    of === 'notebook' ? stateGiven(edited) : undefined;

/** Holds every answer after every step to that of a fresh opening. */
export function answersAsOpened({ text, longestPage, steps }: Editing): void {
  let now = text;
  const past: string[] = [];
  let edited = open(text, checkLine, USED, longestPage);
  let user = openNotebook(USER, giving(edited));
  for (const { step, look } of steps) {
    const before = now;
    for (const change of changesOf(step, now, past)) {
      now = changed(now, change as Required<Change>);
      edited = edit(edited, change);
      user = refresh(user, giving(edited));
    }
    const opened = openNotebook(now, USED);
    compare(edited, opened, look);
    compare(user, openNotebook(USER, giving(opened)), look);
    past.push(before);
  }
}

function compare(edited: Snapshot, opened: Snapshot, look: Look): void {
  const wanted = everyAnswer(opened, look);
  for (const [name, answer] of everyAnswer(edited, look)) same(name, answer, wanted.get(name) ?? '');
}

const AROUND = 200;

/** Answers may be long: a failure shows the place where they part. */
function same(name: string, answer: string, wanted: string): void {
  if (answer === wanted) return;
  let at = 0;
  while (answer[at] === wanted[at]) at++;
  const [is, was] = [answer, wanted].map((text) => text.slice(Math.max(0, at - AROUND), at + AROUND));
  throw new Error(`${name}: edited\n${is}\nopened\n${was}`);
}
