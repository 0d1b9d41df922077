import { FIRST_WORDS, type Span } from '../../grammar/index.ts';
import type { Carried } from '../model/carry.ts';
import type { Word } from '../model/values.ts';
import { didYouMean, guessWord } from './nearest.ts';
import { NO_PROBLEMS, type Problem, replaceWith, rule } from './rule.ts';

export const unknownWord = rule({
  code: 'unknown-word',
  severity: 'warning',
  title: 'A word that is not known',
  why: 'The line is kept but counts for nothing: neither the words of the trade nor those of this notebook begin like it. Use a known word, write it as a note, or give it a meaning in the section "words".',
  standing: 'notation',
  good: 'session 2026-05-02\n  idle 850 rpm\n',
  bad: 'session 2026-05-02\n  idel 850 rpm\n',
  on: ['unknown'],
  check({ words, time }, { before }) {
    const all = spanOf(words);
    if (!all) return NO_PROBLEMS;
    if (time && Object.hasOwn(FIRST_WORDS, words[0]?.text.toLowerCase() ?? ''))
      return [lateHead(words, time)];
    if (before.section === 'specs') return [specProblem(words, all)];
    return [wordProblem(words, all, before)];
  },
});

const lateHead = (words: readonly Word[], time: string): Problem => ({
  span: (words[0] as Word).span,
  message: `A section begins with its word, so that "${time}" cannot stand before it. A session takes its time after the date.`,
});

/** The longest beginning that is near a known word is what was meant. */
function wordProblem(words: readonly Word[], all: Span, before: Carried): Problem {
  for (let count = Math.min(4, words.length); count > 0; count--) {
    const naming = words.slice(0, count);
    const guess = guessWord(textOf(naming), before);
    const span = spanOf(naming);
    if (guess.words.length === 0 || !span) continue;
    const fixes = guess.sure ? [replaceWith(span, guess.words[0] as string)] : [];
    return { span, message: `"${textOf(naming)}" is not a known word.${didYouMean(guess)}`, fixes };
  }
  return {
    span: all,
    message: `"${textOf(words)}" is not a known word. Write it as a note, or give it a meaning under "words".`,
  };
}

const specProblem = (words: readonly Word[], span: Span): Problem => ({
  span,
  message: `"${textOf(words)}" does not say what is specified: end it with a word such as torque or plug gap.`,
});

const textOf = (words: readonly Word[]): string => words.map((word) => word.text).join(' ');

function spanOf(words: readonly Word[]): Span | undefined {
  const [first, last] = [words[0], words.at(-1)];
  return first && last && { from: first.span.from, to: last.span.to };
}
