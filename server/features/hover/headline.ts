/** The first lines of a quantity's hover: the value as written and in other units, the reader's own first. */
import { amountIn } from '../../model/amounts.ts';
import { keyOf } from '../../model/carry.ts';
import { saidText, valueText } from '../../model/describe.ts';
import type { QuantityEntry } from '../../model/notebook.ts';
import type { Amount, Value } from '../../model/values.ts';
import { formatNumber, formatValue } from '../../trade/format.ts';
import { damperDistance } from '../../trade/ignition.ts';
import { scale } from '../../trade/interval.ts';
import { unitById } from '../../trade/units.ts';
import { plain, strong } from '../markdown.ts';
import { inOtherUnits } from '../units.ts';
import type { Focus } from './focus.ts';
import type { HoverQuestion } from './question.ts';

export function headline(question: HoverQuestion, entry: QuantityEntry, focus: Focus): readonly string[] {
  const written = writtenText(entry, focus);
  const { preferred, others } = inOtherUnits(amountsOf(focus), entry.quantity, question.units);
  const [shown, ...equals] = [preferred, written, ...others].filter((text) => text !== undefined);
  const first = [strong(`${nameText(entry, focus)} ${shown}`.trim()), ...equals.map(plain)].join(' = ');
  return [first, ...atTheCrank(focus), ...onTheDamper(question, entry, focus)];
}

function writtenText({ quantity, text }: QuantityEntry, { said, value, point }: Focus): string {
  if (point)
    return `${valueText(point.value, quantity.unit)} @ ${valueText(point.at, quantity.against?.unit)}`;
  return value ? valueText(value, quantity.unit) : (text ?? saidText(said, quantity.unit));
}

/** With its place; of a list a cylinder, with the cylinder's number. */
function nameText({ quantity }: QuantityEntry, { said, value }: Focus): string {
  const inList = quantity.places?.includes('cylinder') && said.values.length > 1;
  const cylinder = value && inList && !said.place ? `#${said.values.indexOf(value) + 1}` : undefined;
  return [quantity.name, said.place?.text ?? cylinder].filter(Boolean).join(' ');
}

const isAmount = (value: Value): value is Amount => value.form === 'amount';

const amountsOf = ({ said, value }: Focus): readonly Amount[] =>
  value ? [value].filter(isAmount) : said.values.filter(isAmount);

/** The distributor turns once in two turns of the crank. */
function atTheCrank({ said, value }: Focus): readonly string[] {
  const ofDistributor = said.words.some(({ text }) => /^dist(?:ributor)?$/i.test(text));
  const written = value ?? said.values[0];
  const angle = ofDistributor || unitIdOf(written) === 'dist-deg' ? amountIn(written, 'deg') : undefined;
  if (!angle) return [];
  const crank = unitIdOf(written) === 'dist-deg' ? angle : scale(angle, 2);
  return [plain(`${formatValue(crank, unitById('deg'))} at the crank`)];
}

const unitIdOf = (value: Value | undefined): string | undefined =>
  value?.form === 'amount' ? value.unit?.id : undefined;

/** What is laid off on the rim of the damper with a tape. */
const READ_AT_THE_MARK: ReadonlySet<string> = new Set(['initial', 'timing', 'total', 'cruise total']);

function onTheDamper(
  { reading }: HoverQuestion,
  { quantity }: QuantityEntry,
  { said, value }: Focus,
): readonly string[] {
  const damper = reading.before.facts.get(keyOf('damper', undefined))?.said.values[0];
  const angle = READ_AT_THE_MARK.has(quantity.name) ? amountIn(value ?? said.values[0], 'deg') : undefined;
  const diameter = amountIn(damper, 'mm');
  if (!angle || !diameter || diameter.low !== diameter.high || !damper) return [];
  const unit = (damper.form === 'amount' && damper.unit) || unitById('mm');
  const inUnit = amountIn(damper, unit.id) ?? diameter;
  const distance = formatValue(scale(angle, damperDistance(inUnit.low, 1)), unit);
  return [plain(`${distance} along the rim of the ${formatNumber(inUnit.low, unit)} ${unit.symbol} damper`)];
}
