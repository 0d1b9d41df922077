/** What a line of plain speech was taken for, and what is asked where it may mean several things. */
import type { AskedEntry, SpokenEntry } from '../../model/entry/entry.ts';
import { saidOn } from '../../model/snapshot/page.ts';
import { lineSpan } from '../../rules/lib/line-syntax.ts';
import { blocks, plain, stacked, strong } from '../markdown.ts';
import { quantityHover } from './quantity.ts';
import type { HoverAnswer, HoverQuestion } from './question.ts';

/** The lines it means, and what there is to say of the first. */
export function spokenHover(question: HoverQuestion): HoverAnswer {
  const { as, line, entries } = question.reading.entry as SpokenEntry;
  const isRemark = entries.every(({ kind }) => kind === 'note');
  const said = saidOn(question.reading).find(({ entry }) => 'statements' in entry);
  const first =
    said && 'statements' in said.entry
      ? quantityHover({ ...question, reading: said, column: said.entry.name.from })
      : undefined;
  const head = isRemark ? ['Kept as a note'] : ['Read as:', ...as];
  return {
    span: lineSpan(line),
    text: blocks([stacked(head.map((text, i) => (i === 0 ? plain(text) : strong(text)))), first?.text ?? '']),
  };
}

/** What is not known, and the readings to choose from. */
export function askedHover({ reading }: HoverQuestion): HoverAnswer {
  const { question, offers, line, head } = reading.entry as AskedEntry;
  const inForce = head ? '' : plain('Nothing of this line is in force.');
  const readings = offers.map((offer) => `- ${plain(offer.join(', '))}`).join('\n');
  return { span: lineSpan(line), text: blocks([stacked([strong(question)]), inForce, readings]) };
}

/** Added to what is told of a line that does not count. */
export const VOID = plain('Nothing of this line is in force: something on it has no part in what it means.');
