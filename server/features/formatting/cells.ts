/** Cells of a line: which part goes in which column. */
import { isEmpty, KIND, type Line, type Span, tokenSpan, tokenText } from '../../../grammar/index.ts';
import type { Entry, QuantityEntry } from '../../model/entry/entry.ts';
import type { State } from '../../model/state/state.ts';

export interface Cells {
  /** The line it was made of, whose tokens it keeps. */
  readonly line: Line;
  /** How many times it is moved in, where no trial is around it. */
  readonly depth: 0 | 1 | 2;
  /** What it is to a trial: a row, or something that may come between two. */
  readonly trial: 'head' | 'row' | 'between' | undefined;
  /** Of the time, the name and its place; all of the line where it has no columns. */
  readonly lead: string;
  /** Of the values; empty for none. */
  readonly body: string;
  /** Its first token; undefined for none. */
  readonly bodyToken: number | undefined;
  /** Where a figure is printed, in a column behind the values; empty for none. */
  readonly source: string;
  readonly sourceToken: number | undefined;
  /** Has a time before it, so that it takes more room than its name needs. */
  readonly timed: boolean;
  readonly comment: string;
}

/** A line to be laid out. */
export interface Laid {
  readonly at: number;
  readonly text: string;
  /** Undefined where the line stays as it is. */
  readonly cells: Cells | undefined;
}

/** Undefined for a line that cannot be read, wholly or in part: it stays as it is. */
export function cellsOf(entry: Entry, before: State): Cells | undefined {
  const { line } = entry;
  if (isBroken(entry)) return undefined;
  const count = line.comment ?? line.tokens.kinds.length;
  const split = firstIn(line, columnOf(entry), count);
  const end = sourceIn(entry, split, count);
  return {
    line,
    depth: depthOf(entry, before),
    trial: trialPart(entry, before),
    lead: spaced(entry, 0, split),
    body: spaced(entry, split, end),
    bodyToken: split < end ? split : undefined,
    source: spaced(entry, end, count),
    sourceToken: end < count ? end : undefined,
    timed: !isEmpty(line.syntax.time),
    comment: line.comment === undefined ? '' : tokenText(line, line.comment),
  };
}

function isBroken({ kind, line }: Entry): boolean {
  const { kinds } = line.tokens;
  const strange = kinds.includes(KIND.Unknown) || kinds.includes(KIND.OpenText);
  const isSpeech = kind === 'spoken' || kind === 'asked' || kind === 'unknown';
  return isSpeech || kind === 'conflict' || line.tooLong || strange || !isEmpty(line.syntax.stray);
}

function depthOf({ kind, line }: Entry, { section, trial }: State): Cells['depth'] {
  if (kind === 'section' || kind === 'session' || section === undefined) return 0;
  // A comment at the edge of the page is a heading of its own.
  if (kind === 'blank' && line.tokens.starts[0] === 0) return 0;
  return trial && (kind === 'row' || kind === 'want') ? 2 : 1;
}

function trialPart({ kind }: Entry, { trial }: State): Cells['trial'] {
  if (kind === 'trial') return 'head';
  if (!trial) return undefined;
  if (kind === 'row' || kind === 'want') return 'row';
  return kind === 'note' || kind === 'file' || kind === 'blank' ? 'between' : undefined;
}

/** Where the first column ends; undefined for a line without columns. */
function columnOf(entry: Entry): number | undefined {
  switch (entry.kind) {
    case 'setting':
    case 'reading':
    case 'fact':
    case 'limit':
    case 'target':
      return nameEnd(entry);
    case 'port':
      return gapIn(entry.line) ?? entry.nameSpan.to;
    case 'spec':
    case 'part':
    case 'word':
      return entry.nameSpan.to;
    case 'row':
      return entry.size.at(-1)?.span.to ?? entry.values[0]?.span.to;
    default:
      return undefined;
  }
}

/** End of a port's name: the gap its writer left after it. */
function gapIn({ tokens, syntax }: Line): number | undefined {
  const { starts, ends } = tokens;
  return ends.find((end, i) => i >= syntax.time[1] && (starts[i + 1] ?? end) - end > 1);
}

/** A single place belongs to the name, where it comes right after it: `plug #4`, `mixture right`. */
function nameEnd({ name, statements: said, line }: QuantityEntry): number {
  const place: Span | undefined = said.length === 1 ? said[0]?.place?.span : undefined;
  if (!place || place.from < name.to) return name.to;
  return line.text.slice(name.to, place.from).trim() === '' ? place.to : name.to;
}

/** The first token of the second column; a colon stays with the name. */
function firstIn({ tokens }: Line, column: number | undefined, count: number): number {
  if (column === undefined) return count;
  let token = 0;
  while (token < count && (tokens.starts[token] as number) < column) token++;
  return tokens.kinds[token] === KIND.Colon ? token + 1 : token;
}

function spaced(entry: Entry, from: number, to: number): string {
  let text = '';
  for (let token = from; token < to; token++)
    text += (token > from ? gapBefore(entry, token) : '') + tokenText(entry.line, token);
  return text;
}

/** Tokens that touch stay so; others get one space between them. */
function gapBefore(entry: Entry, token: number): string {
  const { line } = entry;
  const { kinds } = line.tokens;
  if (kinds[token] === KIND.Comma || kinds[token] === KIND.Colon) return '';
  if (kinds[token - 1] === KIND.Comma) return ' ';
  if (startsTitle(entry, token) || token === line.syntax.time[1]) return '  ';
  return tokenSpan(line, token - 1).to === tokenSpan(line, token).from ? '' : ' ';
}

const startsTitle = ({ kind, line }: Entry, token: number): boolean =>
  (kind === 'session' || kind === 'section') && line.tokens.kinds[token] === KIND.Prose;

/** The token that begins where a figure is printed; `end` where that is not given. */
function sourceIn({ kind, line }: Entry, from: number, end: number): number {
  if (kind !== 'spec') return end;
  for (let token = from; token < end - 1; token++)
    if (/^source$/i.test(tokenText(line, token)) && line.tokens.kinds[token + 1] === KIND.Text) return token;
  return end;
}
