/** Hover of todos, faults and done lines, and of the checks before a run. */

import type { CheckEntry, ItemEntry } from '../../model/entry/entry.ts';
import { lineStateAt } from '../../model/snapshot/locate.ts';
import { ROAD_CHECKS } from '../../trade/practice/road-checks.ts';
import { plain, stacked, strong } from '../markdown.ts';
import { mentionsOf } from '../mentions.ts';
import type { HoverQuestion } from './question.ts';
import { whereabouts } from './whereabouts.ts';

/** Markdown: the item, and its other end where it has one. */
export function itemText(question: HoverQuestion, entry: ItemEntry): string {
  const { word, id, text, safety } = entry;
  const title = `${word} ${id}${safety ? ' [safety]' : ''}`;
  const detail = text === '' || text === id ? '' : ` ${plain(text)}`;
  return stacked([
    strong(title) + detail,
    word === 'done' ? openedText(question, id) : doneText(question, id),
  ]);
}

function openedText(question: HoverQuestion, id: string): string {
  const opened = question.reading.before.items.get(id);
  if (!opened) return 'No open item above has this name.';
  const { word, text, safety, by } = opened;
  const title = `${word}${safety ? ' [safety]' : ''} of ${whereabouts(question, by)}`;
  return plain(text === '' || text === id ? title : `${title}: ${text}`);
}

function doneText(question: HoverQuestion, id: string): string {
  const { snapshot, line } = question;
  for (const { at, role } of mentionsOf(snapshot, { of: 'item', name: id })) {
    const reading = at > line && role === 'writes' ? lineStateAt(snapshot, at) : undefined;
    if (reading?.entry.kind !== 'item') continue;
    const { text } = reading.entry;
    const where = whereabouts(question, reading.where);
    return plain(`Done ${where}${text === '' || text === id ? '' : `: ${text}`}`);
  }
  return 'Still open.';
}

/** Markdown: what the check is for, and which work made it due. */
export function checkText(question: HoverQuestion, { name, ok }: CheckEntry): string {
  const why = ROAD_CHECKS.find((check) => check.name === name)?.why;
  const due = question.reading.before.checksDue.get(name);
  return stacked([
    strong(`check ${name}${ok === undefined ? '' : ok ? ' ok' : ' bad'}`),
    ...(why === undefined ? [] : [plain(`Before a run: ${why}.`)]),
    ...(due ? [plain(`Due since work on ${whereabouts(question, due)}`)] : []),
  ]);
}
