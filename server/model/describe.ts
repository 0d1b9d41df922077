/** Settings and readings in words, as the notation itself would write them. */
import { formatNumber, formatValue } from '../trade/format.ts';
import { convert, unitById } from '../trade/units.ts';
import type { InForce } from './carry.ts';
import type { Point, Said } from './notebook.ts';
import type { Amount, Value } from './values.ts';

/** A setting as it stands: `1 1/4 turns`, `0 deg @ 900 rpm, 22 deg @ 3200 rpm`, `+2 deg from an unknown start`. */
export function settingText(setting: InForce): string {
  if (setting.text !== undefined) return setting.text;
  const values = [
    ...setting.points.map((point) => pointText(point, setting.quantity.unit)),
    ...setting.values.map((value) => valueText(value, setting.quantity.unit)),
  ];
  const said = [values.join(setting.points.length > 0 ? ', ' : ' '), ...setting.words]
    .filter((text) => text !== '')
    .join(', ');
  return setting.base ? said : `${said} from an unknown start`;
}

export function saidText(said: Said, unit: string | undefined): string {
  const values = [
    ...said.points.map((point) => pointText(point, unit)),
    ...said.values.map((value) => valueText(value, unit)),
  ].join(' ');
  const words = said.words.map((word) => word.text).join(' ');
  const conditions = said.conditions.map((condition) =>
    condition.value
      ? `@ ${valueText(condition.value, undefined)}`
      : `at ${condition.words.map((word) => word.text).join(' ')}`,
  );
  return [values, words, ...conditions].filter((text) => text !== '').join(' ');
}

const pointText = (point: Point, unit: string | undefined): string =>
  `${valueText(point.value, unit)} @ ${valueText(point.at, undefined)}`;

/** In the unit it was written in; a bare number in `assumed`. */
export function valueText(value: Value, assumed: string | undefined): string {
  if (value.form !== 'amount') return value.text;
  if (!value.interval) return '?';
  const unit = value.unit ?? (assumed === undefined ? undefined : unitById(assumed));
  const text = formatValue(value.interval, unit);
  if (!value.relative) return text;
  if (value.relative === 'in' || value.relative === 'out') return `${value.relative} ${text}`;
  return value.relative === 'less' ? `-${text}` : text.startsWith('-') ? text : `+${text}`;
}

/** `2 deg more`, `in 1/4 turn`; undefined where the two cannot be compared. */
export function changeText(before: InForce, after: InForce): string | undefined {
  const from = only(before);
  const to = only(after);
  const unit = to?.unit ?? (after.quantity.unit ? unitById(after.quantity.unit) : undefined);
  const fromUnit = from?.unit ?? unit;
  if (!from?.interval || !to?.interval || !unit || !fromUnit || unit.dimension !== fromUnit.dimension)
    return undefined;
  const difference = middle(to) - convert(middle(from), fromUnit, unit);
  if (Math.abs(difference) < 1e-9) return 'unchanged';
  const size = `${formatNumber(Math.abs(difference), unit)} ${unit.symbol}`;
  return difference > 0 ? `${size} more` : `${size} less`;
}

const only = (setting: InForce): Amount | undefined => {
  const value = setting.values.length === 1 ? setting.values[0] : undefined;
  return value?.form === 'amount' && setting.base ? value : undefined;
};

const middle = (amount: Amount): number => ((amount.interval?.low ?? 0) + (amount.interval?.high ?? 0)) / 2;
