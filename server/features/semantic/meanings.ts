/** The words of one line with what they mean. */
import { KIND, type Kind, type Line, type Span, tokenSpan } from '../../../grammar/index.ts';
import type { Entry, QuantityEntry, Statement } from '../../model/entry/entry.ts';
import type { Value } from '../../model/entry/value.ts';

/** Never reordered: editors refer to meanings by number. */
export const MEANINGS = [
  'keyword',
  'setting',
  'reading',
  'fact',
  'value',
  'unit',
  'text',
  'place',
  'condition',
  'id',
  'note',
  'title',
] as const;

export type Meaning = (typeof MEANINGS)[number];

export interface Meant {
  readonly span: Span;
  readonly meaning: Meaning;
}

/** By column; none overlap, none is empty. What cannot be read means nothing; comments are left to the colouring. */
export function meaningsOf(entry: Entry): readonly Meant[] {
  const meant = [...wordsOf(entry)].filter(({ span }) => span.to > span.from);
  meant.sort((a, b) => a.span.from - b.span.from || b.span.to - a.span.to);
  let end = 0;
  return meant.filter(({ span }) => {
    const isFree = span.from >= end;
    if (isFree) end = span.to;
    return isFree;
  });
}

function* wordsOf(entry: Entry): Generator<Meant> {
  if (entry.kind === 'unknown' || entry.kind === 'spoken' || entry.kind === 'asked') return;
  yield* keywordIn(entry.line);
  yield* 'statements' in entry ? quantityWords(entry) : otherWords(entry);
  for (const [kind, meaning] of ALWAYS) yield* tokensIn(entry.line, kind, meaning);
  yield* tokensIn(entry.line, KIND.Prose, isHead(entry) ? 'title' : 'note');
}

/** Tokens that mean the same anywhere. */
const ALWAYS: readonly (readonly [Kind, Meaning])[] = [
  [KIND.Date, 'value'],
  [KIND.Clock, 'value'],
  [KIND.Text, 'text'],
];

const isHead = ({ kind }: Entry): boolean => kind === 'session' || kind === 'section';

/** The word that begins a line of its own kind. */
function* keywordIn(line: Line): Generator<Meant> {
  const { kind, time } = line.syntax;
  if (kind !== 'entry' && kind !== 'row' && kind !== 'blank')
    yield { span: tokenSpan(line, time[1]), meaning: 'keyword' };
}

function* quantityWords({ kind, quantity, name, statements: said }: QuantityEntry): Generator<Meant> {
  yield { span: name, meaning: kind === 'limit' || kind === 'target' ? quantity.kind : kind };
  for (const each of said) yield* saidWords(each);
}

function* saidWords({ place, values, points, words, conditions }: Statement): Generator<Meant> {
  if (place) yield { span: place.span, meaning: 'place' };
  yield* valueWords(values);
  for (const point of points) yield* valueWords([point.value, point.at]);
  for (const { span } of words) yield { span, meaning: 'condition' };
  for (const condition of conditions) {
    if (condition.value) yield* valueWords([condition.value]);
    for (const { span } of condition.words) yield { span, meaning: 'condition' };
  }
}

/** A symbol or word before the number is left to the colouring. */
function* valueWords(values: readonly Value[]): Generator<Meant> {
  for (const value of values) {
    if (value.form !== 'amount')
      yield { span: value.span, meaning: value.form === 'text' ? 'text' : 'value' };
    else {
      yield { span: value.numberSpan, meaning: 'value' };
      if (value.unit) yield { span: value.unitSpan, meaning: 'unit' };
    }
  }
}

function* otherWords(entry: Entry): Generator<Meant> {
  if (entry.kind === 'word' && entry.quantity) yield { span: entry.nameSpan, meaning: entry.quantity.kind };
  if ('nameSpan' in entry) yield { span: entry.nameSpan, meaning: 'id' };
  if ('idSpan' in entry) yield { span: entry.idSpan, meaning: 'id' };
  if ('pathSpan' in entry) yield { span: entry.pathSpan, meaning: 'text' };
  if ('dateSpan' in entry) yield { span: entry.dateSpan, meaning: 'value' };
  if ('size' in entry) for (const { span } of entry.size) yield { span, meaning: 'text' };
  if ('values' in entry) yield* valueWords(entry.values);
  if ('after' in entry && entry.after) yield* valueWords([entry.after]);
}

function* tokensIn(line: Line, kind: Kind, meaning: Meaning): Generator<Meant> {
  for (let token = 0; token < line.tokens.kinds.length; token++)
    if (line.tokens.kinds[token] === kind) yield { span: tokenSpan(line, token), meaning };
}
