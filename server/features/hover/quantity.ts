/** The hover of a quantity: its value in other units, what the word means, how it came to be, its totals, what is usual. */
import { cautionsOf } from '../../analysis/upkeep/cautions.ts';
import type { QuantityEntry, Statement } from '../../model/entry/entry.ts';
import { blocks, plain, stacked } from '../markdown.ts';
import { cautionsText } from './cautions.ts';
import { bandText, expectations } from './expected.ts';
import { figuresText } from './figures.ts';
import { focusOf } from './focus.ts';
import { headline } from './headline.ts';
import { readingHistory, settingHistory } from './history.ts';
import type { HoverAnswer, HoverQuestion } from './question.ts';
import { totalsText } from './totals.ts';

/** Undefined where the cursor is on no part of it. */
export function quantityHover(question: HoverQuestion): HoverAnswer | undefined {
  const entry = question.reading.entry as QuantityEntry;
  const focus = focusOf(entry, question.column);
  if (!focus) return undefined;
  const totals = totalsText(question, entry, focus);
  const totalsFirst = entry.kind !== 'reading' || entry.quantity.dimension === 'angle';
  const text = blocks([
    stacked([...headline(question, entry, focus), plain(entry.quantity.meaning)]),
    stacked(focus.said.flatMap((said) => historyOf(question, entry, said))),
    totalsFirst ? totals : '',
    stacked(expectations(question, entry, focus.said[0])),
    figuresText(question, entry.quantity.name),
    totalsFirst ? '' : totals,
    entry.quantity.band ? bandText(entry.quantity.band) : '',
    cautionsText(cautionsOf(entry)),
  ]);
  return { span: focus.span, text };
}

function historyOf(question: HoverQuestion, entry: QuantityEntry, said: Statement): readonly string[] {
  if (entry.kind === 'setting') return settingHistory(question, entry, said);
  return entry.kind === 'reading' ? readingHistory(question, entry, said) : [];
}
