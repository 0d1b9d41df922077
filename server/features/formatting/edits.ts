/** Minimal edits from a line as it is to the line as it should be. */
import { everyToken, KIND, type Token } from '../../../grammar/index.ts';
import type { Change } from '../../model/snapshot/snapshot.ts';
import { onLine } from '../ranges.ts';

/** Whether two lines differ in white space alone. */
export function sameTokens(a: string, b: string): boolean {
  const [old, next] = [tokensOf(a), tokensOf(b)];
  return (
    old.length === next.length &&
    old.every(({ kind, text }, i) => next[i]?.kind === kind && next[i]?.text === text)
  );
}

/** The tokens of a line without white space. */
const tokensOf = (text: string): readonly Token[] =>
  [...everyToken(text)].filter(({ kind }) => kind !== KIND.Blank);

/** Where both have as many tokens, only the white space and tokens that differ; else one piece of the line. */
export function lineEdits(line: number, before: string, after: string): readonly Change[] {
  if (before === after) return [];
  const [old, next] = [tokensOf(before), tokensOf(after)];
  if (old.length !== next.length) return [trimmed(line, before, after)];
  const edits: Change[] = [];
  const replace = (from: number, to: number, text: string) => {
    if (before.slice(from, to) !== text) edits.push({ range: onLine(line, { from, to }), text });
  };
  let [oldEnd, nextEnd] = [0, 0];
  for (const [i, token] of old.entries()) {
    const other = next[i] as Token;
    replace(oldEnd, token.from, after.slice(nextEnd, other.from));
    replace(token.from, token.to, other.text);
    [oldEnd, nextEnd] = [token.to, other.to];
  }
  replace(oldEnd, before.length, after.slice(nextEnd));
  return edits;
}

function trimmed(line: number, before: string, after: string): Change {
  const shorter = Math.min(before.length, after.length);
  let from = 0;
  while (from < shorter && before[from] === after[from]) from++;
  let end = 0;
  while (end < shorter - from && before.at(-1 - end) === after.at(-1 - end)) end++;
  return {
    range: onLine(line, { from, to: before.length - end }),
    text: after.slice(from, after.length - end),
  };
}
