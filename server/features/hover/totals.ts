/** Hover of the timing totals a line goes into, each with its formula, its numbers, and the lines of its inputs. */

import { type Derived, type Lacking, totalAtSpeed, totalsOf } from '../../analysis/ignition/timing-totals.ts';
import { isWithoutVacuum } from '../../analysis/limits/vacuum-off.ts';
import { amountIn } from '../../model/entry/amount.ts';
import type { Origin, QuantityEntry, Statement } from '../../model/entry/entry.ts';
import type { Value } from '../../model/entry/value.ts';
import type { LineState } from '../../model/snapshot/page.ts';
import { stateAtSectionEnd } from '../../model/snapshot/section-ranges.ts';
import type { State } from '../../model/state/state.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { exact, middle } from '../../trade/measure/interval.ts';
import { VOCABULARY } from '../../trade/vocabulary/vocabulary.ts';
import { blocks, plain, stacked, strong } from '../markdown.ts';
import { crankSpeed } from './crank.ts';
import { ownExpectations } from './expected.ts';
import type { Focus } from './focus.ts';
import { inputTexts } from './inputs.ts';
import type { HoverQuestion } from './question.ts';

/** Totals shown here, as far as known at the line, and not again among the other figures. */
export const TOTALS: ReadonlySet<string> = new Set(VOCABULARY.flatMap(({ traits }) => traits?.totals ?? []));

/** Markdown; empty for words that go into no total. */
export function totalsText(question: HoverQuestion, entry: QuantityEntry, focus: Focus): string {
  const names =
    entry.kind === 'setting' || entry.kind === 'reading' ? entry.quantity.traits?.totals : undefined;
  if (!names) return '';
  const speed = speedOf(entry, focus, question.reading);
  const asText = (derived: Derived) => derivedText(question, derived, entry.quantity.name);
  const atSpeed = speed === undefined ? undefined : totalAtSpeed(question.reading.after, speed);
  if (atSpeed && 'value' in atSpeed)
    return stacked([asText(atSpeed), ...measuredText(entry, focus, atSpeed)]);
  const { given, lacking } = totalsFor(question);
  const asked = <T extends { readonly name: string }>(all: readonly T[]) =>
    names.flatMap((each) => all.filter(({ name }) => name === each));
  return blocks([...asked(given).map(asText), ...asked(lacking).map(lackingText)]);
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
  { value, unit }: Derived,
): readonly string[] {
  const measured = kind === 'reading' ? amountIn(said[0].values[0], unit.id, quantity.unit) : undefined;
  if (!measured) return [];
  const apart = middle(measured) - middle(value);
  const size = formatValue(exact(Math.abs(apart)), unit);
  const difference =
    Math.abs(apart) < 0.05 ? 'as calculated' : `${size} ${apart > 0 ? 'more' : 'less'} than calculated`;
  return [plain(`Measured ${formatValue(measured, unit)}: ${difference}`)];
}

interface TotalsFor {
  readonly given: readonly Derived[];
  readonly lacking: readonly Lacking[];
}

/** As at the line; what cannot be given there, as at the session's end, if this line still goes into it. */
function totalsFor(question: HoverQuestion): TotalsFor {
  const now = totalsOf(question.reading.after);
  const end = stateAtSectionEnd(question.snapshot, question.line);
  if (end === question.reading.after) return now;
  const isRead = [...end.latest.values()].some(({ by }) => isThisLine(question, by));
  const atEnd = totalsOf(end);
  const among = (totals: readonly { readonly name: string }[], name: string) =>
    totals.some((each) => each.name === name);
  const later = atEnd.given.filter(
    ({ name, inputs }) =>
      !among(now.given, name) &&
      ((isRead && among(now.lacking, name)) || inputs.some(({ by }) => by && isThisLine(question, by))),
  );
  const lacking = atEnd.lacking.filter(({ name }) => among(now.lacking, name));
  return { given: [...now.given, ...later], lacking };
}

const isThisLine = ({ reading }: HoverQuestion, { ref }: Origin): boolean =>
  ref.page === reading.where.ref.page && ref.line === reading.where.ref.line;

/** With its limit and target, unless the hover has them already because it is about that very word. */
function derivedText(question: HoverQuestion, derived: Derived, word: string): string {
  const { name, formula, inputs } = derived;
  const own = name === word ? [] : ownExpectations(question, name);
  const from = inputTexts(question, inputs).join('; ');
  return stacked([sumText(derived), plain(formula), ...own, from].filter((line) => line !== ''));
}

/** `total 31 deg = 9 deg + 22 deg`: the working with its result in front. */
function sumText({ name, value, unit, working }: Derived): string {
  const result = formatValue(value, unit);
  const sum = working.endsWith(` = ${result}`) ? working.slice(0, -` = ${result}`.length) : undefined;
  return sum === undefined
    ? `${strong(name)} ${plain(working)}`
    : `${strong(`${name} ${result}`)}${plain(` = ${sum}`)}`;
}

const lackingText = ({ name, lacks }: Lacking): string => plain(`${name} needs ${lacks.join(' and ')}`);
