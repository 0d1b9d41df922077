/** Unit conversion of the amounts of a line, as finely as that unit is read. */
import { parseLine, type Span } from '../../../grammar/index.ts';
import type { Entry } from '../../model/entry/entry.ts';
import { type Amount, lowerValue } from '../../model/entry/value.ts';
import { formatNumber, symbolAfter } from '../../trade/measure/format.ts';
import { type Interval, scale } from '../../trade/measure/interval.ts';
import { convertDifference, convertInterval, type Unit } from '../../trade/measure/units.ts';

interface Piece {
  readonly span: Span;
  readonly text: string;
}

/** One piece for each amount; undefined where one of them cannot be read, or would not be read as that unit again. */
export function turned(
  entry: Entry,
  amounts: readonly Amount[],
  from: Unit,
  to: Unit,
): readonly Piece[] | undefined {
  if (!amounts.every(({ span }) => standsApart(entry.line.text, span.from))) return undefined;
  const pieces = amounts.map((amount, i) => {
    const interval = intervalIn(amount, entry, from, to);
    if (!interval) return undefined;
    const isUnitSaid = amount.unitSpan.to > amount.unitSpan.from || i === amounts.length - 1;
    const text = numbers(interval, to);
    return {
      span: { from: amount.span.from, to: Math.max(amount.numberSpan.to, amount.unitSpan.to) },
      text: prefixOf(amount, entry) + text + (isUnitSaid ? ` ${symbolAfter(text, to)}` : ''),
    };
  });
  const all = pieces.filter((piece) => piece !== undefined);
  return all.length === amounts.length && all.every(({ text }) => isRead(text, to)) ? all : undefined;
}

/** Right after another number (`0-0.035`) a new one would be read together with it. */
const standsApart = (text: string, from: number): boolean => !/[\p{L}\p{N}]/u.test(text.charAt(from - 1));

/** Whether the sign makes it a change: in a setting it does, anywhere else it belongs to the number. */
function intervalIn(
  { interval, relative }: Amount,
  { kind }: Entry,
  from: Unit,
  to: Unit,
): Interval | undefined {
  if (!interval) return undefined;
  if (relative && (kind === 'setting' || relative === 'in' || relative === 'out'))
    return scale(interval, convertDifference(1, from, to));
  return convertInterval(relative === 'less' ? scale(interval, -1) : interval, from, to);
}

/** `~`, `<=`, `+`, `in` as written; a sign that is the number's own comes with the number. */
function prefixOf({ relative, span, numberSpan }: Amount, { kind, line }: Entry): string {
  if (kind !== 'setting' && (relative === 'less' || relative === 'more')) return '';
  return line.text.slice(span.from, numberSpan.from);
}

function numbers({ low, high }: Interval, unit: Unit): string {
  const [first, last] = [low, high].map((end) => formatNumber(end, unit)) as [string, string];
  if (!Number.isFinite(low)) return last;
  return first === last || !Number.isFinite(high) ? first : `${first}..${last}`;
}

function isRead(text: string, unit: Unit): boolean {
  const line = parseLine(text);
  const [value] = line.syntax.kind === 'row' ? (line.syntax.groups[0]?.values ?? []) : [];
  const read = value && lowerValue(line, value).value;
  return read?.form === 'amount' && (read.unit === unit || (!read.unit && !/\p{L}/u.test(text)));
}
