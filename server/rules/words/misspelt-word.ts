import type { QuantityEntry, Statement } from '../../model/entry/entry.ts';
import type { Word } from '../../model/entry/value.ts';
import { matchUnit } from '../../trade/measure/units.ts';
import { editDistance } from '../../trade/text/spelling-distance.ts';
import { didYouMean, guessAmong } from '../lib/did-you-mean.ts';
import { QUANTITY_KINDS } from '../lib/kinds.ts';
import { knownBeside, wordsBeside } from '../lib/known-words.ts';
import { type Problem, problemsIn, replaceWith, rule } from '../rule.ts';

export const misspeltWord = rule({
  code: 'misspelt-word',
  severity: 'information',
  title: 'A word beside a value that looks misspelt',
  why: 'Readings are compared with others taken under the same words, so a misspelling keeps apart what belongs together. A word that is not close to any known one is taken as a remark.',
  standing: 'notation',
  good: 'session 2026-05-02\n  idle 850 rpm in neutral\n',
  bad: 'session 2026-05-02\n  idle 850 rpm in nuetral\n',
  on: QUANTITY_KINDS,
  check: (entry) =>
    problemsIn(entry.statements, (said) => wordsOf(entry, said).flatMap((word) => misspelt(entry, word))),
});

function wordsOf(entry: QuantityEntry, said: Statement): readonly Word[] {
  if (said.qualifiers.length === 0) return [];
  if (entry.quantity.form === 'text')
    return entry.quantity.words && said.words.length === 1 ? said.words : [];
  const start = said.values[0]?.span.from ?? said.points[0]?.span.from ?? 0;
  const after = said.words.filter((word) => word.span.from > start);
  return [...after, ...said.conditions.flatMap((condition) => condition.words)];
}

function misspelt({ quantity }: QuantityEntry, { text, span }: Word): Problem[] {
  if (text.length < 4 || knownBeside(quantity, text) || matchUnit([text], 0)) return [];
  const guess = guessAmong(text, wordsBeside(quantity));
  const nearest = guess.words[0];
  if (nearest === undefined || !oneSlip(text.toLowerCase(), nearest)) return [];
  return [
    {
      span,
      message: `"${text}" is not a known word here.${didYouMean(guess)}`,
      fixes: guess.sure ? [replaceWith(span, nearest)] : [],
    },
  ];
}

/** Whether two words are one edit apart. A plural or another ending is not a misspelling. */
const oneSlip = (text: string, known: string): boolean =>
  editDistance(text, known, 1) <= 1 && !text.startsWith(known) && !known.startsWith(text);
