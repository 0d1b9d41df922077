/** Lookups in the tree and tokens of a line, for rules on its form. */
import type { AmountSyntax, Kind, Line, LineSyntax, Span } from '../../../grammar/index.ts';
import { tokenSpan } from '../../../grammar/index.ts';

/** Every amount of the line, including those after `@`. */
export function* amountsIn(syntax: LineSyntax): Generator<AmountSyntax> {
  if (!('groups' in syntax)) return;
  for (const { values, conditions } of syntax.groups) {
    for (const value of values) if (value.form === 'amount') yield value;
    for (const { value } of conditions) if (value?.form === 'amount') yield value;
  }
}

/** Indexes of the line's tokens of one kind. */
export function tokensOf(line: Line, kind: Kind): readonly number[] {
  const { kinds } = line.tokens;
  const found: number[] = [];
  for (let token = kinds.indexOf(kind); token >= 0; token = kinds.indexOf(kind, token + 1)) found.push(token);
  return found;
}

/** Columns of the line without surrounding spaces and without its comment. */
export function lineSpan(line: Line): Span {
  const count = line.comment ?? line.tokens.kinds.length;
  if (count === 0) return { from: 0, to: line.text.length };
  return { from: tokenSpan(line, 0).from, to: tokenSpan(line, count - 1).to };
}
