/** The hover of lines that are no quantity: session heads, specs, ports, reminders, trials, logs. */
import type { Span } from '../../../grammar/index.ts';
import { cautionsOfSession } from '../../model/cautions.ts';
import { touches } from '../../model/locate.ts';
import type { Entry } from '../../model/notebook.ts';
import { blocks, plain, stacked, strong } from '../markdown.ts';
import { titleOf } from '../titles.ts';
import { cautionsText } from './cautions.ts';
import { figuresText } from './figures.ts';
import type { HoverAnswer, HoverQuestion } from './question.ts';

/** Undefined where the cursor is not on what the line is about, or nothing is known of it. */
export function namedHover(question: HoverQuestion): HoverAnswer | undefined {
  const { entry } = question.reading;
  const about = aboutOf(entry);
  if (!about || !touches(about.span, question.column)) return undefined;
  const text = blocks([headline(entry), figuresText(question, about.word), sessionCautions(question, entry)]);
  return text === '' ? undefined : { span: about.span, text };
}

/** The word that figures are asked about, and the columns it stands for. */
function aboutOf(entry: Entry): { readonly word: string; readonly span: Span } | undefined {
  switch (entry.kind) {
    case 'session':
      return { word: 'session', span: { from: 0, to: entry.line.text.length } };
    case 'port':
      return {
        word: 'port',
        span: { from: 0, to: Math.max(entry.onSpan.to, entry.path.at(-1)?.span.to ?? 0) },
      };
    case 'spec':
    case 'recheck':
      return { word: entry.kind, span: { from: 0, to: entry.nameSpan.to } };
    case 'trial':
      return { word: 'trial', span: entry.span };
    case 'row':
    case 'want':
      return { word: 'trial', span: { from: 0, to: entry.line.text.length } };
    case 'file':
      return entry.word === 'log' ? { word: 'log', span: entry.pathSpan } : undefined;
    default:
      return undefined;
  }
}

function headline(entry: Entry): string {
  if (entry.kind === 'session') return strong(['session', entry.date, entry.title].filter(Boolean).join(' '));
  const title = titleOf(entry);
  if (!title) return '';
  return stacked([strong(title.name), ...(title.detail === '' ? [] : [plain(title.detail)])]);
}

const sessionCautions = ({ snapshot, line }: HoverQuestion, { kind }: Entry): string =>
  kind === 'session' ? cautionsText(cautionsOfSession(snapshot, line)) : '';
