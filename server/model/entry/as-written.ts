/** Settings and readings in words, as the notation itself would write them. */
import { formatValue } from '../../trade/measure/format.ts';
import { exact, middle, width } from '../../trade/measure/interval.ts';
import { convert, unitById } from '../../trade/measure/units.ts';
import type { Point, Statement } from './entry.ts';
import type { Amount, Value } from './value.ts';

/** A statement as it would be written; `unit`: that of numbers without one. */
export function statementText(said: Statement, unit: string | undefined): string {
  const values = [
    ...said.points.map((point) => pointText(point, unit)),
    ...said.values.map((value) => valueText(value, unit)),
  ].join(isList(said) ? ' ' : ', ');
  const words = said.words.map((word) => word.text).join(' ');
  const conditions = said.conditions.map((condition) =>
    condition.value
      ? `@ ${valueText(condition.value, undefined)}`
      : conditionText(condition.words.map((word) => word.text)),
  );
  return [values, words, ...conditions].filter((text) => text !== '').join(' ');
}

/** Condition in words: `in` a gear, `at` anything else. */
const conditionText = (words: readonly string[]): string =>
  `${IN_GEAR.test(words[0] ?? '') ? 'in' : 'at'} ${words.join(' ')}`;

const IN_GEAR = /^(?:neutral|drive|gear|park|reverse|first|second|third|fourth|fifth|top|low|high)$/i;

/** List of one kind, `388 401 F`, written with spaces; points and weather values are separated by commas. */
const isList = ({ points, values }: Statement): boolean =>
  points.length === 0 &&
  values.every((value) => value.form === 'amount' && value.unit?.id === (values[0] as Amount).unit?.id);

export const pointText = (point: Point, unit: string | undefined): string =>
  `${valueText(point.value, unit)} @ ${valueText(point.at, undefined)}`;

/** A value as text in the unit it was written in; a bare number in `assumed`. */
export function valueText(value: Value, assumed: string | undefined): string {
  if (value.form !== 'amount') return value.text;
  if (!value.interval) return '?';
  const unit = value.unit ?? (assumed === undefined ? undefined : unitById(assumed));
  const text = formatValue(value.interval, unit);
  if (!value.relative) return text;
  if (value.relative === 'in' || value.relative === 'out') return `${value.relative} ${text}`;
  return value.relative === 'less' ? `-${text}` : text.startsWith('-') ? text : `+${text}`;
}

/** Difference of two values in words, `2 deg more`; a bare number is taken to be in `assumed`. */
export function differenceText(
  from: Value | undefined,
  to: Value | undefined,
  assumed: string | undefined,
): string | undefined {
  if (from?.form !== 'amount' || to?.form !== 'amount' || !from.interval || !to.interval) return undefined;
  const unit = to.unit ?? (assumed === undefined ? undefined : unitById(assumed));
  const fromUnit = from.unit ?? unit;
  if (!unit || !fromUnit || unit.dimension !== fromUnit.dimension) return undefined;
  const difference = middle(to.interval) - convert(middle(from.interval), fromUnit, unit);
  if (width(from.interval) + width(to.interval) === Infinity) return undefined;
  if (Math.abs(difference) < 1e-9) return 'unchanged';
  const size = formatValue(exact(Math.abs(difference)), unit);
  return difference > 0 ? `${size} more` : `${size} less`;
}
