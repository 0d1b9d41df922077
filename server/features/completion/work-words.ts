/** The words that begin a line of work. */
import type { CompletionQuestion, Offer } from './suggestion.ts';

const WORDS: readonly (readonly [word: string, detail: string])[] = [
  ['note', 'a remark, taken as it stands'],
  ['todo', 'something to be done: name, colon, what'],
  ['fault', 'something wrong: name, colon, what'],
  ['done', 'ends a todo, a fault or a reminder'],
  ['check', 'a look taken: name, then ok or bad'],
  ['fit', 'a part is put on'],
  ['remove', 'a part is taken off'],
  ['photo', 'a picture beside the notebook'],
  ['log', 'a file a logger wrote'],
  ['keep', 'marks this session as one to come back to'],
  ['revert to', 'puts the settings of a day back'],
  ['recheck', 'a reminder: name, after, how long'],
  ['use', 'takes specs, limits and words from another file'],
];

export const workOffers = (question: CompletionQuestion): readonly Offer[] =>
  WORDS.map(([word, detail]) => offer(question, word, detail));

/** Where rows of a trial stand above: what they are for. */
export const wantOffers = (question: CompletionQuestion): readonly Offer[] =>
  (question.state.trial?.rows.size ?? 0) > 0 ? [offer(question, 'want', 'what the trial is to give')] : [];

const offer = ({ from }: CompletionQuestion, word: string, detail: string): Offer => ({
  label: word,
  kind: 'work',
  detail,
  text: word,
  from,
});
