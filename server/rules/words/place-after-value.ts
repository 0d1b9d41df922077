import type { Line } from '../../../grammar/index.ts';
import type { Statement } from '../../model/entry/entry.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { PLACE_WORDS } from '../../trade/vocabulary/vocabulary.ts';
import { ownAmounts } from '../lib/statement-values.ts';
import { type Problem, problemsIn, rule } from '../rule.ts';

export const placeAfterValue = rule({
  code: 'place-after-value',
  severity: 'warning',
  title: 'A place after its value',
  why: 'The place goes before the value it belongs to. In a session one after the value is read as plain speech where it can mean one thing only; elsewhere nothing of the line is in force.',
  standing: 'notation',
  good: 'session 2026-05-02\n  mixture left 1 1/4 turns, right 1 1/2 turns\n',
  bad: 'targets\n  mixture 1 1/4 turns left\n',
  outranks: ['list-length', 'too-many-values', 'unknown-unit'],
  on: ['setting', 'reading', 'limit', 'target'],
  about: ({ places }) => (places?.length ?? 0) > 0,
  check: ({ quantity, statements: said, line }) =>
    problemsIn(said, (each) => problemsOf(quantity, each, line)),
});

function problemsOf(quantity: Quantity, said: Statement, line: Line): Problem[] {
  const first = ownAmounts(said)[0];
  if (!first || said.place || !quantity.places?.length) return [];
  const after = said.words.filter(({ text, span }) => span.from > first.span.from && isPlace(text));
  const [word, another] = after;
  if (!word) return [];
  const text = `${word.text} ${line.text.slice(first.span.from, first.span.to)}`;
  const span = { from: first.span.from, to: (another ?? word).span.to };
  const alone = !another && line.text.slice(first.span.to, word.span.from).trim() === '';
  return [
    {
      span,
      message: `"${word.text}" comes after its value, so nothing of this line is in force. Write ${text}.`,
      fixes: alone ? [{ title: `Write "${text}"`, edits: [{ span, text }] }] : [],
    },
  ];
}

const isPlace = (word: string): boolean =>
  /^#\d+$/.test(word) || (word !== 'all' && PLACE_WORDS.has(word.toLowerCase()));
