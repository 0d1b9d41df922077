/** Hover of the timing totals a line goes into, each with its formula, its numbers, and the lines of its inputs. */

import type { Figure, NumberFigure } from '../../analysis/figure.ts';
import { totalAtSpeed, totalsOf } from '../../analysis/ignition/timing-totals.ts';
import { isWithoutVacuum } from '../../analysis/limits/vacuum-off.ts';
import { amountIn } from '../../model/entry/amount.ts';
import type { Origin, QuantityEntry, Statement } from '../../model/entry/entry.ts';
import type { Value } from '../../model/entry/value.ts';
import type { LineState } from '../../model/snapshot/page.ts';
import { stateAtSectionEnd } from '../../model/snapshot/section-ranges.ts';
import type { State } from '../../model/state/state.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { exact, middle } from '../../trade/measure/interval.ts';
import { blocks, plain, stacked, strong } from '../markdown.ts';
import { crankSpeed } from './crank.ts';
import { ownExpectations } from './expected.ts';
import type { Focus } from './focus.ts';
import { inputTexts } from './inputs.ts';
import type { HoverQuestion } from './question.ts';

/** Markdown; empty for words that go into no total. */
export function totalsText(question: HoverQuestion, entry: QuantityEntry, focus: Focus): string {
  const names =
    entry.kind === 'setting' || entry.kind === 'reading' ? entry.quantity.traits?.totals : undefined;
  if (!names) return '';
  const speed = speedOf(entry, focus, question.reading);
  const textOf = (total: Figure) => totalText(question, total, entry.quantity.name);
  const atSpeed = speed === undefined ? undefined : totalAtSpeed(question.reading.after, speed);
  if (atSpeed) return stacked([textOf(atSpeed), ...measuredText(entry, focus, atSpeed)]);
  const totals = totalsFor(question);
  const inOrder = names.flatMap((each) => totals.filter(({ name }) => name === each));
  return blocks([
    ...inOrder.filter(isWorkedOut).map(textOf),
    ...inOrder.filter((total) => !isWorkedOut(total)).map(lackingText),
  ]);
}

/** The cursor is on a point of the curve, or on a timing that was read at a speed with the vacuum off. */
function speedOf(
  entry: QuantityEntry,
  { said: [said], point }: Focus,
  { before }: LineState,
): number | undefined {
  const at = entry.quantity.name === 'mechanical' ? point?.at : measuredSpeed(entry, said, before);
  const speed = crankSpeed(said, at);
  return speed && speed.low === speed.high ? speed.low : undefined;
}

function measuredSpeed({ kind, quantity }: QuantityEntry, said: Statement, before: State): Value | undefined {
  const isTiming = kind === 'reading' && (quantity.name === 'total' || quantity.name === 'timing');
  return isTiming && isWithoutVacuum(quantity.name, said, before) ? said.conditions[0]?.value : undefined;
}

/** Measured timing against the calculated sum. */
function measuredText(
  { kind, quantity }: QuantityEntry,
  { said }: Focus,
  { value, unit }: NumberFigure,
): readonly string[] {
  const measured = kind === 'reading' ? amountIn(said[0].values[0], unit.id, quantity.unit) : undefined;
  if (!measured) return [];
  const apart = middle(measured) - middle(value);
  const size = formatValue(exact(Math.abs(apart)), unit);
  const difference =
    Math.abs(apart) < 0.05 ? 'as calculated' : `${size} ${apart > 0 ? 'more' : 'less'} than calculated`;
  return [plain(`Measured ${formatValue(measured, unit)}: ${difference}`)];
}

const isWorkedOut = ({ lacks }: Figure): boolean => lacks === undefined;

/** As at the line; what cannot be given there, as at the session's end, if this line still goes into it. */
function totalsFor(question: HoverQuestion): readonly Figure[] {
  const now = totalsOf(question.reading.after);
  const end = stateAtSectionEnd(question.snapshot, question.line);
  if (end === question.reading.after) return now;
  const isRead = [...end.latest.values()].some(({ by }) => isThisLine(question, by));
  const lackNow = now.filter((total) => !isWorkedOut(total)).map(({ name }) => name);
  const given = now.filter(isWorkedOut);
  const atEnd = totalsOf(end).filter(({ name }) => given.every((total) => total.name !== name));
  const goesInto = (total: Figure) =>
    (isRead && lackNow.includes(total.name)) || total.inputs.some(({ by }) => by && isThisLine(question, by));
  return [
    ...given,
    ...atEnd.filter((total) => (isWorkedOut(total) ? goesInto(total) : lackNow.includes(total.name))),
  ];
}

const isThisLine = ({ reading }: HoverQuestion, { ref }: Origin): boolean =>
  ref.page === reading.where.ref.page && ref.line === reading.where.ref.line;

/** With its limit and target, unless the hover has them already because it is about that very word. */
function totalText(question: HoverQuestion, total: Figure, word: string): string {
  const { name, formula, inputs } = total;
  const own = name === word ? [] : ownExpectations(question, name);
  const from = inputTexts(question, inputs).join('; ');
  return stacked([sumText(total), plain(formula), ...own, from].filter((line) => line !== ''));
}

/** `total 31 deg = 9 deg + 22 deg`: the working with its result in front. */
function sumText({ name, text, working }: Figure): string {
  const sum = working.endsWith(` = ${text}`) ? working.slice(0, -` = ${text}`.length) : undefined;
  return sum === undefined
    ? `${strong(name)} ${plain(working)}`
    : `${strong(`${name} ${text}`)}${plain(` = ${sum}`)}`;
}

const lackingText = ({ name, lacks = [] }: Figure): string => plain(`${name} needs ${lacks.join(' and ')}`);
