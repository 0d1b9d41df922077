import { FIRST_WORDS, isEmpty, type Line, runSpan, runText, type Span } from '../../../grammar/index.ts';
import type { Entry } from '../../model/entry/entry.ts';
import type { Word } from '../../model/entry/value.ts';
import type { State } from '../../model/state/state.ts';
import { didYouMean, guessAmong, guessWord } from '../lib/did-you-mean.ts';
import { NO_PROBLEMS, type Problem, replaceWith, rule } from '../rule.ts';

export const unknownWord = rule({
  code: 'unknown-word',
  severity: 'warning',
  title: 'A word that is not known',
  why: 'The line is kept but has no effect: it does not begin with a word of the trade or of this notebook. Use a known word, write it as a note, or define it in the section "words".',
  standing: 'notation',
  good: 'session 2026-05-02\n  idle 850 rpm\n',
  bad: 'engine\n  cilynders 4\n',
  outranks: ['port-unsaid', 'own-word-incomplete'],
  // A port, a part or an own word may have any name, so a misspelt session line is easily taken for one.
  on: ['unknown', 'port', 'part', 'word'],
  check(entry, { before }) {
    const { time } = entry;
    const head = misspeltHead(entry.line, time);
    if (head) return [head];
    if (entry.kind !== 'unknown') return NO_PROBLEMS;
    const { words } = entry;
    const all = spanOf(words);
    if (!all) return NO_PROBLEMS;
    if (time && Object.hasOwn(FIRST_WORDS, words[0]?.text.toLowerCase() ?? ''))
      return [lateHead((words[0] as Word).span, time)];
    if (before.section === 'specs') return [specProblem(words, all)];
    const instead = INSTEAD.get(words[0]?.text.toLowerCase() ?? '');
    if (instead) return [{ span: all, message: `"${textOf(words)}" is not a known word. ${instead}` }];
    return [wordProblem(words, all, entry, before)];
  },
});

/** The problem of a single word like `session` followed by a date. */
function misspeltHead(line: Line, time: string | undefined): Problem | undefined {
  const { syntax } = line;
  if (syntax.kind !== 'entry' || syntax.head[1] - syntax.head[0] !== 1) return undefined;
  if (syntax.groups[0]?.values[0]?.form !== 'date' || !isEmpty(syntax.groups[0].words)) return undefined;
  const word = runText(line, syntax.head);
  if (guessAmong(word, ['session']).words.length === 0) return undefined;
  const span = runSpan(line, syntax.head);
  // Spelled right it would be no head either.
  if (time) return lateHead(span, time);
  const message = `"${word}" is not a known word here. Did you mean session? Until it is fixed, the lines below belong to the section above.`;
  return { span, message, fixes: [replaceWith(span, 'session')] };
}

const lateHead = (span: Span, time: string): Problem => ({
  span,
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
function wordProblem(words: readonly Word[], all: Span, { line, time }: Entry, before: State): Problem {
  for (let count = Math.min(4, words.length); count > 0; count--) {
    const naming = words.slice(0, count);
    const guess = guessWord(textOf(naming), before);
    const span = spanOf(naming);
    if (guess.words.length === 0 || !span) continue;
    const [nearest = ''] = guess.words;
    const kind = Object.hasOwn(FIRST_WORDS, nearest) ? FIRST_WORDS[nearest] : undefined;
    if (time && (kind === 'Section' || kind === 'Session' || kind === 'Notebook'))
      return lateHead(span, time);
    // A section begins on a line of its own, and this one may have more on it.
    if (kind === 'Section' && !isAlone(all, line)) return sectionProblem(textOf(naming), nearest, span);
    const fixes = guess.sure ? [replaceWith(span, nearest)] : [];
    return { span, message: `"${textOf(naming)}" is not a known word.${didYouMean(guess)}`, fixes };
  }
  return {
    span: all,
    message: `"${textOf(words)}" is not a known word. Write it as a note, or define it under "words".`,
  };
}

const isAlone = ({ to }: Span, { text }: Line): boolean => /^\s*(?:;.*)?$/.test(text.slice(to));

const sectionProblem = (text: string, section: string, span: Span): Problem => ({
  span,
  message: `"${text}" does not begin a section here; "${section}" must be alone on its line.`,
});

const specProblem = (words: readonly Word[], span: Span): Problem => ({
  span,
  message: `"${textOf(words)}" does not say what is specified. End it with a word such as torque or plug gap.`,
});

const textOf = (words: readonly Word[]): string => words.map((word) => word.text).join(' ');

function spanOf(words: readonly Word[]): Span | undefined {
  const [first, last] = [words[0], words.at(-1)];
  return first && last && { from: first.span.from, to: last.span.to };
}
