import { FIRST_WORDS, isEmpty, type Line, runSpan, runText, type Span } from '../../grammar/index.ts';
import type { Carried } from '../model/carry.ts';
import type { Word } from '../model/values.ts';
import { didYouMean, guessAmong, guessWord } from './nearest.ts';
import { NO_PROBLEMS, type Problem, replaceWith, rule } from './rule.ts';

export const unknownWord = rule({
  code: 'unknown-word',
  severity: 'warning',
  title: 'A word that is not known',
  why: 'The line is kept but has no effect: it does not begin with a word of the trade or of this notebook. Use a known word, write it as a note, or define it in the section "words".',
  standing: 'notation',
  good: 'session 2026-05-02\n  idle 850 rpm\n',
  bad: 'session 2026-05-02\n  idel 850 rpm\n',
  outranks: ['port-unsaid', 'own-word-incomplete'],
  // A port, a part or an own word may have any name, so a misspelt session line is easily taken for one.
  on: ['unknown', 'port', 'part', 'word'],
  check(entry, { before }) {
    const head = misspeltHead(entry.line);
    if (head) return [head];
    if (entry.kind !== 'unknown') return NO_PROBLEMS;
    const { words, time } = entry;
    const all = spanOf(words);
    if (!all) return NO_PROBLEMS;
    if (time && Object.hasOwn(FIRST_WORDS, words[0]?.text.toLowerCase() ?? ''))
      return [lateHead(words, time)];
    if (before.section === 'specs') return [specProblem(words, all)];
    const instead = INSTEAD.get(words[0]?.text.toLowerCase() ?? '');
    if (instead) return [{ span: all, message: `"${textOf(words)}" is not a known word. ${instead}` }];
    return [wordProblem(words, all, before)];
  },
});

/** The problem of a single word like `session` followed by a date. */
function misspeltHead(line: Line): Problem | undefined {
  const { syntax } = line;
  if (syntax.kind !== 'entry' || syntax.head[1] - syntax.head[0] !== 1) return undefined;
  if (syntax.groups[0]?.values[0]?.form !== 'date' || !isEmpty(syntax.groups[0].words)) return undefined;
  const word = runText(line, syntax.head);
  if (guessAmong(word, ['session']).words.length === 0) return undefined;
  const span = runSpan(line, syntax.head);
  const message = `"${word}" is not a known word here. Did you mean session? Until it is fixed, the lines below belong to the section above.`;
  return { span, message, fixes: [replaceWith(span, 'session')] };
}

const lateHead = (words: readonly Word[], time: string): Problem => ({
  span: (words[0] as Word).span,
  message: `"${time}" can't come before the word of a section. Write the time of a session after its date.`,
});

/** Words people begin a line with, and what the notation uses instead. */
const INSTEAD: ReadonlyMap<string, string> = new Map(
  Object.entries({
    retorque:
      'Write a reminder as "recheck head bolts after 500 km", and work done as "head bolts torque 60 lb-ft".',
    retighten:
      'Write a reminder as "recheck head bolts after 500 km", and work done as "head bolts torque 60 lb-ft".',
    limit: 'Limits go in the section "limits"; the stop of the advance weights is "mechanical limit".',
    replaced: 'Change a part with "remove" and "fit"; write anything else as a note.',
    new: 'Change a part with "remove" and "fit"; write anything else as a note.',
  }),
);

/** The problem of an unknown first word; its longest beginning close to a known word gives the guess. */
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
    message: `"${textOf(words)}" is not a known word. Write it as a note, or define it under "words".`,
  };
}

const specProblem = (words: readonly Word[], span: Span): Problem => ({
  span,
  message: `"${textOf(words)}" does not say what is specified. End it with a word such as torque or plug gap.`,
});

const textOf = (words: readonly Word[]): string => words.map((word) => word.text).join(' ');

function spanOf(words: readonly Word[]): Span | undefined {
  const [first, last] = [words[0], words.at(-1)];
  return first && last && { from: first.span.from, to: last.span.to };
}
