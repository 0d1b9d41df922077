/** The hover of lines that are no quantity: session heads, parts, items, checks, specs, ports, reminders, trials, logs, words. */
import type { Span } from '../../../grammar/index.ts';
import { cautionsOfSession } from '../../analysis/upkeep/cautions.ts';
import type { Entry } from '../../model/entry/entry.ts';
import { touches } from '../../model/snapshot/locate.ts';
import { titleOf } from '../entry-titles.ts';
import { blocks, plain, stacked, strong } from '../markdown.ts';
import { cautionsText } from './cautions.ts';
import { figuresText } from './figures.ts';
import { checkText, itemText } from './items.ts';
import { partText } from './parts.ts';
import type { HoverAnswer, HoverQuestion } from './question.ts';
import { sessionText } from './session.ts';
import { specText } from './spec.ts';

/** Undefined where the cursor is not on what the line is about, or nothing is known of it. */
export function namedHover(question: HoverQuestion): HoverAnswer | undefined {
  const { entry } = question.reading;
  const span = spanOf(entry);
  if (!span || !touches(span, question.column)) return undefined;
  const text = textOf(question, entry);
  return text === '' ? undefined : { span, text };
}

/** The columns of the line's name. */
function spanOf(entry: Entry): Span | undefined {
  switch (entry.kind) {
    case 'session':
    case 'row':
    case 'want':
      return { from: 0, to: entry.line.text.length };
    case 'port':
      return { from: 0, to: Math.max(entry.onSpan.to, entry.path.at(-1)?.span.to ?? 0) };
    case 'spec':
    case 'recheck':
    case 'part':
    case 'fit':
    case 'check':
    case 'word':
      return { from: 0, to: entry.nameSpan.to };
    case 'item':
      return { from: 0, to: entry.idSpan.to };
    case 'trial':
      return entry.span;
    case 'file':
      return entry.pathSpan;
    default:
      return undefined;
  }
}

function textOf(question: HoverQuestion, entry: Entry): string {
  switch (entry.kind) {
    case 'session':
      return blocks([
        strong(['session', entry.date, entry.title].filter(Boolean).join(' ')),
        sessionText(question),
        figuresText(question, 'session'),
        cautionsText(cautionsOfSession(question.snapshot, question.line)),
      ]);
    case 'part':
    case 'fit':
      return partText(question, entry);
    case 'item':
      return itemText(question, entry);
    case 'check':
      return checkText(question, entry);
    case 'word':
      return entry.quantity
        ? stacked([titleText(entry), plain(entry.quantity.meaning)].filter((text) => text !== ''))
        : '';
    case 'spec':
      return specText(question, entry);
    case 'port':
      return blocks([entry.path.length > 0 ? '' : titleText(entry), figuresText(question, 'port')]);
    // The name is in what is worked out.
    case 'recheck':
      return figuresText(question, 'recheck') || titleText(entry);
    case 'trial':
    case 'row':
    case 'want':
      return figuresText(question, 'trial');
    case 'file':
      return entry.word === 'log' ? blocks([titleText(entry), figuresText(question, 'log')]) : '';
    default:
      return '';
  }
}

/** `**manifold rear** brake booster` */
function titleText(entry: Entry): string {
  const title = titleOf(entry);
  if (!title) return '';
  return strong(title.name) + (title.detail === '' ? '' : ` ${plain(title.detail)}`);
}
