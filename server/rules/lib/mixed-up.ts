/** Values that would be usual in another unit than the one written. */

import type { Amount } from '../../model/entry/value.ts';
import type { Fix } from '../../model/snapshot/finding.ts';
import { formatValue } from '../../trade/measure/format.ts';
import type { Dimension } from '../../trade/measure/units.ts';
import { NO_PROBLEMS, type Problem, replaceWith } from '../rule.ts';
import { bandText, type Outside } from './expected-range.ts';

/** The problem of a value that another unit explains; none for other values and other dimensions. */
export function mixedUp(outside: Outside, about: (kind: Dimension) => boolean): readonly Problem[] {
  const { quantity, amount, value, unit, band, slip } = outside;
  if (slip?.kind !== 'unit' || !about(unit.dimension)) return NO_PROBLEMS;
  const odd = `${quantity.name} ${formatValue(value, unit)} is outside the usual ${bandText(band, unit)}`;
  return [
    {
      span: amount.span,
      message: `${odd}; ${formatValue(value, slip.unit)} is inside. Did you mean ${slip.unit.symbol}?`,
      fixes: [written(amount, slip.unit.symbol)],
    },
  ];
}

/** Replaces the written unit, or adds one after the number. */
const written = ({ unitSpan }: Amount, symbol: string): Fix =>
  unitSpan.from < unitSpan.to
    ? replaceWith(unitSpan, symbol)
    : { title: `Write "${symbol}"`, edits: [{ span: unitSpan, text: ` ${symbol}` }] };
