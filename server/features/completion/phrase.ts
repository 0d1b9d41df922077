/** Names of several words: what is typed of one, and which names continue it. */
import { isEmpty, type Run, runSpan } from '../../../grammar/index.ts';
import type { CompletionQuestion } from './suggestion.ts';

/** A name that is being typed: where it begins, and its whole words. */
export interface Phrase {
  readonly from: number;
  /** Lower case, with one space after each word; empty where the first word is being typed. */
  readonly begun: string;
}

/** The name whose whole words are a run of what is written. */
export function phraseOf({ written, from }: CompletionQuestion, run: Run): Phrase {
  if (isEmpty(run)) return { from, begun: '' };
  const start = runSpan(written, run).from;
  return { from: start, begun: `${normal(written.text.slice(start).trimEnd())} ` };
}

export const goesOn = (phrase: Phrase, name: string): boolean => normal(name).startsWith(phrase.begun);

/** End of the text to replace, past the rest of the name where that is already after the cursor. */
export function endOf(question: CompletionQuestion, phrase: Phrase, name: string): number {
  const { to, typed, rest } = question;
  const left = normal(name).slice(phrase.begun.length + typed.length);
  return normal(rest.slice(0, left.length)) === left
    ? Math.max(to, question.from + typed.length + left.length)
    : to;
}

/** As names are compared: a hyphen may have been typed as a space. */
export const normal = (text: string): string => text.toLowerCase().replace(/[\s-]+/g, ' ');
