/** The words that begin a line of work. */
import type { CompletionQuestion, Offer } from './suggestion.ts';

const WORDS: readonly (readonly [word: string, detail: string])[] = [
  ['note', 'a remark, free text'],
  ['todo', 'something to be done: name, colon, what'],
  ['fault', 'something wrong: name, colon, what'],
  ['done', 'closes a todo, a fault or a reminder'],
  ['check', 'a check made: name, then ok or bad'],
  ['fit', 'puts a part on'],
  ['remove', 'takes a part off'],
  ['photo', 'a picture beside the notebook'],
  ['log', "a data logger's file"],
  ['keep', 'marks this session as one to go back to'],
  ['revert to', 'puts the settings of that day back'],
  ['recheck', 'a reminder: name, after, how much later'],
  ['use', 'takes specs, limits and words from another file'],
];

export const workOffers = (question: CompletionQuestion): readonly Offer[] =>
  WORDS.map(([word, detail]) => offer(question, word, detail));

/** Offers `want` below the rows of a trial. */
export const wantOffers = (question: CompletionQuestion): readonly Offer[] =>
  (question.state.trial?.rows.size ?? 0) > 0
    ? [offer(question, 'want', 'the response or setting to solve for')]
    : [];

const offer = ({ from }: CompletionQuestion, word: string, detail: string): Offer => ({
  label: word,
  kind: 'work',
  detail,
  text: word,
  from,
});
