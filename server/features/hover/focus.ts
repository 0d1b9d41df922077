/** What of a line about a quantity the cursor is on. */
import type { Span } from '../../../grammar/index.ts';
import { touches } from '../../model/locate.ts';
import type { Point, QuantityEntry, Said } from '../../model/notebook.ts';
import type { Value } from '../../model/values.ts';

export interface Focus {
  readonly span: Span;
  readonly said: Said;
  /** Undefined where it is on the name, or on no single value. */
  readonly value: Value | undefined;
  /** The point of a curve that the value belongs to. */
  readonly point: Point | undefined;
}

/** Undefined where the cursor is on neither the name nor anything that is said. */
export function focusOf(entry: QuantityEntry, column: number): Focus | undefined {
  const nothing = { value: undefined, point: undefined };
  const first = entry.said[0];
  if (first && touches(entry.name, column)) return { span: entry.name, said: first, ...nothing };
  const said = entry.said.find(
    ({ span, place }) => touches(span, column) || (place && touches(place.span, column)),
  );
  if (!said) return undefined;
  const point = said.points.find(({ span }) => touches(span, column));
  if (point) return { span: point.span, said, value: point.value, point };
  const value = said.values.find(({ span }) => touches(span, column));
  if (value) return { span: value.span, said, value, point: undefined };
  return {
    span: said.place && touches(said.place.span, column) ? said.place.span : said.span,
    said,
    ...nothing,
  };
}
