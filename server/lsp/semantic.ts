/** Semantic tokens in the protocol's terms: five whole numbers a token, its place counted from the token before it. */
import {
  SemanticTokensBuilder,
  type SemanticTokensEdit,
  type SemanticTokensLegend,
} from 'vscode-languageserver';
import { MEANINGS, type Meaning, type SemanticToken, tokensOn } from '../features/semantic-tokens.ts';
import { once } from '../memo.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';

/** The standard type of each, so that any editor colours it; a meaning without a standard type of its own has a modifier. */
const TYPES: Readonly<Record<Meaning, readonly [type: string, modifier?: string]>> = {
  keyword: ['keyword'],
  setting: ['property'],
  reading: ['function'],
  fact: ['property', 'readonly'],
  value: ['number'],
  unit: ['type'],
  text: ['string'],
  place: ['enumMember'],
  condition: ['modifier'],
  id: ['class'],
  note: ['comment', 'documentation'],
  title: ['namespace'],
};

/** As the manifest of the extension spells it. */
export const selectorOf = (meaning: Meaning): string => TYPES[meaning].join('.');

const types = [...new Set(MEANINGS.map((meaning) => TYPES[meaning][0]))];
const modifiers = [...new Set(MEANINGS.flatMap((meaning) => TYPES[meaning].slice(1) as string[]))];

export const LEGEND: SemanticTokensLegend = { tokenTypes: types, tokenModifiers: modifiers };

const NUMBERS = new Map(
  MEANINGS.map((meaning) => {
    const [type, modifier] = TYPES[meaning];
    return [meaning, [types.indexOf(type), modifier ? 1 << modifiers.indexOf(modifier) : 0] as const];
  }),
);

export function encoded(tokens: Iterable<SemanticToken>): number[] {
  const builder = new SemanticTokensBuilder();
  for (const { line, span, meaning } of tokens) {
    const [type, modifiers] = NUMBERS.get(meaning) as readonly [number, number];
    builder.push(line, span.from, span.to - span.from, type, modifiers);
  }
  return builder.build().data;
}

/** A page's tokens, counted from its own first line. After a keystroke all pages but one are as they were. */
const encodedPage = once((tokens: readonly SemanticToken[]): readonly number[] => encoded(tokens));

/** All tokens of a notebook: page after page, only the first line of each counted anew. */
export function encodedAll(snapshot: Snapshot): number[] {
  const data: number[] = [];
  let last = 0;
  for (let page = 0; page < snapshot.pages.length; page++) {
    const tokens = tokensOn(snapshot, page);
    if (tokens.length === 0) continue;
    const start = snapshot.starts[page] as number;
    const first = data.length;
    for (const number of encodedPage(tokens)) data.push(number);
    data[first] = start + (data[first] as number) - last;
    last = start + (tokens.at(-1) as SemanticToken).line;
  }
  return data;
}

/** The edits that turn `before` into `after`: one piece, from the first number that differs to the last. */
export function editsBetween(before: readonly number[], after: readonly number[]): SemanticTokensEdit[] {
  const shorter = Math.min(before.length, after.length);
  let start = 0;
  while (start < shorter && before[start] === after[start]) start++;
  let end = 0;
  while (end < shorter - start && before.at(-1 - end) === after.at(-1 - end)) end++;
  if (start === before.length && start === after.length) return [];
  const data = after.slice(start, after.length - end);
  return [{ start, deleteCount: before.length - end - start, data }];
}
