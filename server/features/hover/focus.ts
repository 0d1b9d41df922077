/** Focus: the part of a quantity's line the cursor is on. */
import type { Span } from '../../../grammar/index.ts';
import type { Point, QuantityEntry, Statement } from '../../model/entry/entry.ts';
import type { Value } from '../../model/entry/value.ts';
import { touches } from '../../model/snapshot/locate.ts';

export interface Focus {
  readonly span: Span;
  /** At least one; all of the line where the cursor is on the name. */
  readonly said: readonly [Statement, ...Statement[]];
  /** Undefined where it is on the name, or on no single value. */
  readonly value: Value | undefined;
  /** The point of a curve that the value belongs to. */
  readonly point: Point | undefined;
}

/** Undefined where the cursor is on neither the name nor any value. */
export function focusOf({ name, statements: said }: QuantityEntry, column: number): Focus | undefined {
  const nothing = { value: undefined, point: undefined };
  const [first, ...others] = said;
  if (first && touches(name, column)) return { span: name, said: [first, ...others], ...nothing };
  const here = said.find(({ span }) => span.from < span.to && touches(span, column));
  if (!here) return undefined;
  const point = here.points.find(({ span }) => touches(span, column));
  if (point) return { span: point.span, said: [here], value: point.value, point };
  const value = here.values.find(({ span }) => touches(span, column));
  return value
    ? { span: value.span, said: [here], value, point: undefined }
    : { span: here.span, said: [here], ...nothing };
}
