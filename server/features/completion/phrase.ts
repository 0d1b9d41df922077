/** Names of several words: what of one stands there already, and which names go on from there. */
import { isEmpty, type Run, runSpan } from '../../../grammar/index.ts';
import type { CompletionQuestion } from './suggestion.ts';

/** A name that is being typed: where it begins, and its whole words. */
export interface Phrase {
  readonly from: number;
  /** Lower case, parted by one blank, one at the end; empty where the first word is being typed. */
  readonly begun: string;
}

/** The name whose whole words are a run of what is written. */
export function phraseOf({ written, from }: CompletionQuestion, run: Run): Phrase {
  if (isEmpty(run)) return { from, begun: '' };
  const start = runSpan(written, run).from;
  return { from: start, begun: `${normal(written.text.slice(start).trimEnd())} ` };
}

export const goesOn = (phrase: Phrase, name: string): boolean => normal(name).startsWith(phrase.begun);

/** Past what stands behind the cursor already, where that is the rest of the name. */
export function endOf(question: CompletionQuestion, phrase: Phrase, name: string): number {
  const { to, typed, rest } = question;
  const left = normal(name).slice(phrase.begun.length + typed.length);
  return normal(rest.slice(0, left.length)) === left
    ? Math.max(to, question.from + typed.length + left.length)
    : to;
}

/** As names are compared: a hyphen may have been typed as a blank. */
export const normal = (text: string): string => text.toLowerCase().replace(/[\s-]+/g, ' ');
