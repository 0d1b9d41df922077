/** Values whose sign is given in words, since a plus or minus before a value makes it a change. */
import { scale } from '../../trade/measure/interval.ts';
import { unitById } from '../../trade/measure/units.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import type { Condition, Statement } from './entry.ts';
import { type Amount, asWhole } from './value.ts';

/** `at -4 deg` is the whole value, `4 deg retarded` is a value below zero. */
export const withSigns = (said: Statement, quantity: Quantity): Statement =>
  quantity.form === 'number' ? withDirection(valueAt(said, quantity), quantity) : said;

/** Value given only after `at`: `initial at 4 deg`. A condition would be of another dimension. */
function valueAt(said: Statement, quantity: Quantity): Statement {
  if (said.values.length > 0 || said.conditions.length === 0) return said;
  const value = said.conditions.find((condition) => isOwn(condition, quantity))?.value;
  const whole = value && asWhole(value);
  if (!whole) return said;
  return { ...said, values: [whole], conditions: said.conditions.filter((each) => each.value !== value) };
}

function isOwn({ value }: Condition, { dimension, orIn, bare, unit }: Quantity): boolean {
  if (!value?.interval) return false;
  const given = value.unit?.dimension ?? (bare && unit ? unitById(unit).dimension : undefined);
  return given !== undefined && (given === dimension || (orIn?.includes(given) ?? false));
}

/** Words for the side of zero a value is on, where the word of the trade takes them. */
const DIRECTIONS: ReadonlyMap<string, 1 | -1> = new Map([
  ['advanced', 1],
  ['retarded', -1],
]);

function withDirection(said: Statement, { words: known }: Quantity): Statement {
  const word = known && said.words.find(({ text }) => DIRECTIONS.has(text.toLowerCase()));
  if (!word || !known.includes(word.text.toLowerCase())) return said;
  const sign = DIRECTIONS.get(word.text.toLowerCase()) as 1 | -1;
  return {
    ...said,
    values: said.values.map((value) => (value.form === 'amount' ? onSide(value, sign) : value)),
    words: said.words.filter((each) => each !== word),
    qualifiers: said.qualifiers.filter((each) => each !== word.text.toLowerCase()),
  };
}

const onSide = (amount: Amount, sign: 1 | -1): Amount =>
  amount.relative || !amount.interval ? amount : { ...amount, interval: scale(amount.interval, sign) };
