/** The first lines of a quantity's hover: the value as written and in other units, the reader's own first. */
import { valueText } from '../../model/entry/as-written.ts';
import type { QuantityEntry } from '../../model/entry/entry.ts';
import type { Amount, Value } from '../../model/entry/value.ts';
import { plain, strong } from '../markdown.ts';
import { inOtherUnits } from '../units.ts';
import { atTheCrank } from './crank.ts';
import type { Focus } from './focus.ts';
import type { HoverQuestion } from './question.ts';

export function headline(question: HoverQuestion, entry: QuantityEntry, focus: Focus): readonly string[] {
  const written = writtenText(entry, focus);
  const { preferred, others } = inOtherUnits(amountsOf(focus), entry.quantity, question.units);
  const [shown, ...equals] = [preferred, written, ...others].filter((text) => text !== undefined);
  const first = [strong(`${nameText(entry, focus)} ${shown}`.trim()), ...equals.map(plain)].join(' = ');
  return [first, ...atTheCrank(focus)];
}

/** The value as written on the line, so that nobody has to wonder whether it was read right. */
function writtenText({ name, line, quantity }: QuantityEntry, { said, value, point }: Focus): string {
  if (value && !point && isBare(value)) return valueText(value, quantity.unit);
  const one = point ?? value;
  if (one) return line.text.slice(one.span.from, one.span.to);
  const from = said[0].span.from;
  const to = said.at(-1)?.span.to ?? from;
  const place = from < name.from ? `${said[0].place?.text ?? ''} ` : '';
  return place + line.text.slice(Math.max(from, name.to), Math.max(to, name.to)).trim().replace(/\s+/g, ' ');
}

/** Whether it has no unit of its own: one unit for the whole list, or one known from the word. */
const isBare = (value: Value): boolean =>
  value.form === 'amount' && value.unitSpan.from === value.unitSpan.to && value.unit?.id !== 'ratio';

/** Of a list a cylinder, with the cylinder's number; of several places the place. */
function nameText({ quantity }: QuantityEntry, { said, value }: Focus): string {
  const [{ values, place }] = said;
  const inList = quantity.places?.includes('cylinder') && values.length > 1 && !place;
  if (value && inList) return `${quantity.name} #${values.indexOf(value) + 1}`;
  return value && place ? `${quantity.name} ${place.text}` : quantity.name;
}

const isAmount = (value: Value): value is Amount => value.form === 'amount';

const amountsOf = ({ said, value }: Focus): readonly Amount[] =>
  (value ? [value] : said.length === 1 ? said[0].values : []).filter(isAmount);
