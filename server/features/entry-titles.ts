/** Short titles of lines, for outlines and lists. */
import type { Span } from '../../grammar/index.ts';
import { statementText } from '../model/entry/as-written.ts';
import type { Entry, QuantityEntry, SpokenEntry } from '../model/entry/entry.ts';

export interface Title {
  readonly name: string;
  /** Further detail; may be empty. */
  readonly detail: string;
}

const LONGEST = 60;

/** Undefined for what is nothing by itself: blank lines, heads of sections, rows of a trial. */
export function titleOf(entry: Entry): Title | undefined {
  const title = written(entry);
  return title && { name: shortened(title.name.trim()), detail: shortened(title.detail) };
}

function written(entry: Entry): Title | undefined {
  if (entry.isVoid) return { name: entry.line.text.trim(), detail: '' };
  switch (entry.kind) {
    case 'blank':
    case 'section':
    case 'session':
    case 'row':
    case 'want':
      return undefined;
    case 'setting':
    case 'reading':
    case 'fact':
    case 'limit':
    case 'target':
      return quantityTitle(entry);
    case 'spoken':
      return spokenTitle(entry);
    case 'asked':
      return entry.head ? undefined : { name: entry.line.text.trim(), detail: '' };
    case 'unknown':
      return { name: entry.line.text.trim(), detail: '' };
    case 'spec':
      return { name: namesOf(entry.name, entry.quantity.name), detail: entry.source ?? '' };
    case 'part':
      return { name: asWritten(entry), detail: entry.text ?? '' };
    case 'port':
      return { name: asWritten(entry), detail: entry.on ?? '' };
    case 'word':
      return { name: entry.name, detail: entry.quantity?.kind ?? '' };
    case 'item':
      return { name: `${entry.word} ${entry.id}`, detail: entry.text === entry.id ? '' : entry.text };
    case 'fit':
      return { name: `${entry.word} ${asWritten(entry)}`, detail: '' };
    case 'check':
      return { name: `check ${entry.name}`, detail: entry.ok === undefined ? '' : entry.ok ? 'ok' : 'bad' };
    case 'file':
      return { name: entry.word, detail: entry.path };
    case 'revert':
      return { name: `revert to ${entry.date ?? '?'}`, detail: '' };
    case 'trial':
      return { name: 'trial', detail: `${entry.knob} -> ${entry.response}` };
    case 'recheck':
      return { name: `recheck ${entry.name}`, detail: '' };
    case 'note':
    case 'keep':
      return { name: entry.kind, detail: entry.text };
  }
}

/** As it was written, with what it means; the head of a day is none. */
function spokenTitle({ line, as, entries }: SpokenEntry): Title | undefined {
  const [first] = entries;
  if (first?.kind === 'session') return undefined;
  if (first?.kind === 'note' && entries.length === 1) return { name: 'note', detail: first.text };
  return { name: line.text.trim(), detail: as.join(', ') };
}

function quantityTitle({ quantity, statements: said, text }: QuantityEntry): Title {
  const only = said.length === 1 ? said[0] : undefined;
  const details = said.map((each) =>
    [only ? undefined : each.place?.text, statementText(each, quantity.unit)].filter(Boolean).join(' '),
  );
  return {
    name: [quantity.name, only?.place?.text].filter(Boolean).join(' '),
    detail: text ?? details.join(', '),
  };
}

/** With the hyphens and capitals of its line. */
const asWritten = ({ line, nameSpan }: Entry & { readonly nameSpan: Span }): string =>
  line.text.slice(nameSpan.from, nameSpan.to).replace(/\s+/g, ' ');

const namesOf = (name: string, quantity: string): string =>
  name === quantity ? name : `${name} ${quantity}`;

const shortened = (text: string): string =>
  text.length <= LONGEST ? text : `${text.slice(0, LONGEST - 1)}…`;
