/**
 * Reads a line to its entry: which word of the trade, for which place, with which values. Depends on the line, the
 * section it is in, whether a merge is open there, and the notebook's own words, on nothing else.
 */
import {
  type GroupSyntax,
  isEmpty,
  type Line,
  type LineSyntax,
  type Run,
  runSpan,
  runText,
  tokenSpan,
  tokenText,
} from '../../../grammar/index.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { isoDate } from './date.ts';
import type { Entry, QuantityEntry, SectionKind, SessionEntry } from './entry.ts';
import { markOf } from './merge-conflict.ts';
import { type NameScope, nameAt, nameOf } from './name-lookup.ts';
import { resolveQuantity } from './resolve-quantity.ts';
import { partEntry, portEntry, specEntry, wordEntry } from './section-entry.ts';
import { placeIn, placeLength, statementsOf } from './statement.ts';
import { lowerValue, type Word, wordsOf } from './value.ts';

type Syntax<Kind extends LineSyntax['kind']> = LineSyntax & { readonly kind: Kind };

export function readEntry(line: Line, around: NameScope): Entry {
  const time = timeOf(line);
  const syntax = line.syntax;
  if (syntax.kind === 'conflict' || around.inConflict)
    return { kind: 'conflict', mark: markOf(line), time: undefined, line };
  switch (syntax.kind) {
    case 'blank':
      return { kind: 'blank', time, line };
    case 'notebook':
      return { kind: 'section', section: 'notebook', title: proseOf(line, syntax.title), time, line };
    case 'section':
      return {
        kind: 'section',
        section: tokenText(line, syntax.word).toLowerCase() as SectionKind,
        title: '',
        time,
        line,
      };
    case 'session':
      return sessionEntry(line, syntax);
    case 'note':
    case 'keep':
      return { kind: syntax.kind, text: proseOf(line, syntax.text), time, line };
    case 'item':
      return itemEntry(line, syntax, time);
    case 'fit':
      return {
        kind: 'fit',
        word: tokenText(line, syntax.word).toLowerCase() as 'fit' | 'remove',
        name: nameOf(line, syntax.part),
        nameSpan: runSpan(line, syntax.part),
        time,
        line,
      };
    case 'check':
      return checkEntry(line, syntax, time);
    case 'file':
      return fileEntry(line, syntax, time);
    case 'revert': {
      const span = syntax.date === undefined ? runSpan(line, [1, 1]) : tokenSpan(line, syntax.date);
      return {
        kind: 'revert',
        date: isoDate(line.text.slice(span.from, span.to)),
        dateSpan: span,
        time,
        line,
      };
    }
    case 'trial':
      return {
        kind: 'trial',
        knob: nameOf(line, syntax.knob),
        response: nameOf(line, syntax.response),
        under: runText(line, syntax.under),
        span: runSpan(line, [0, line.tokens.kinds.length]),
        time,
        line,
      };
    case 'want':
    case 'row':
      return rowEntry(line, syntax, time);
    case 'recheck':
      return recheckEntry(line, syntax, time);
    case 'entry':
      return wordsEntry(line, syntax, around, time);
  }
}

const proseOf = (line: Line, token: number | undefined): string =>
  token === undefined ? '' : tokenText(line, token);

function timeOf(line: Line): string | undefined {
  const text = runText(line, line.syntax.time);
  return text === '' ? undefined : text;
}

function sessionEntry(line: Line, syntax: Syntax<'session'>): SessionEntry {
  const text = syntax.date === undefined ? undefined : tokenText(line, syntax.date);
  return {
    kind: 'session',
    date: text === undefined ? undefined : isoDate(text),
    dateText:
      text === undefined ? undefined : { form: 'date', text, span: tokenSpan(line, syntax.date as number) },
    clock: syntax.clock === undefined ? undefined : tokenText(line, syntax.clock),
    title: proseOf(line, syntax.title),
    time: undefined,
    line,
  };
}

function itemEntry(line: Line, syntax: Syntax<'item'>, time: string | undefined): Entry {
  const flags = syntax.flags.map((token) => ({
    text: tokenText(line, token).slice(1, -1).toLowerCase(),
    span: tokenSpan(line, token),
  }));
  // `todo: new leads` has no name of its own, so its text is the name.
  const name: Run =
    isEmpty(syntax.id) && syntax.text !== undefined ? [syntax.text, syntax.text + 1] : syntax.id;
  const id = nameOf(line, name);
  return {
    kind: 'item',
    word: tokenText(line, syntax.word).toLowerCase() as 'todo' | 'fault' | 'done',
    id,
    idSpan: runSpan(line, name),
    text: syntax.text === undefined ? id : tokenText(line, syntax.text),
    safety: flags.some((flag) => flag.text === 'safety'),
    flags,
    time,
    line,
  };
}

function checkEntry(line: Line, syntax: Syntax<'check'>, time: string | undefined): Entry {
  const last = runText(line, [Math.max(syntax.words[0], syntax.words[1] - 1), syntax.words[1]]).toLowerCase();
  const outcome = OUTCOMES.get(last);
  const name: Run = outcome !== undefined ? [syntax.words[0], syntax.words[1] - 1] : syntax.words;
  return {
    kind: 'check',
    name: nameOf(line, name).replace(/ ?[:=]$/, ''),
    nameSpan: runSpan(line, name),
    ok: outcome,
    time,
    line,
  };
}

/** Results of a check. */
const OUTCOMES: ReadonlyMap<string, boolean> = new Map([
  ...['ok', 'okay', 'good', 'fine'].map((word) => [word, true] as const),
  ...['bad', 'failed', 'poor'].map((word) => [word, false] as const),
]);

function fileEntry(line: Line, syntax: Syntax<'file'>, time: string | undefined): Entry {
  const word = tokenText(line, syntax.word).toLowerCase() as 'photo' | 'log' | 'use';
  const written = proseOf(line, syntax.path);
  const pathSpan =
    syntax.path === undefined
      ? runSpan(line, [syntax.word + 1, syntax.word + 1])
      : tokenSpan(line, syntax.path);
  const quoted = written.startsWith('"');
  return {
    kind: 'file',
    word,
    path: quoted ? written.slice(1, -1) : written,
    pathSpan: quoted ? { from: pathSpan.from + 1, to: pathSpan.to - 1 } : pathSpan,
    time,
    line,
  };
}

const rowEntry = (line: Line, { kind, groups }: Syntax<'row' | 'want'>, time: string | undefined): Entry =>
  rowOf(
    line,
    kind,
    groups.flatMap((group) => wordsOf(line, group.words)),
    groups,
    time,
  );

function rowOf(
  line: Line,
  kind: 'row' | 'want',
  size: readonly Word[],
  groups: readonly GroupSyntax[],
  time: string | undefined,
): Entry {
  const lowered = groups.flatMap((group) => group.values).map((value) => lowerValue(line, value));
  const values = lowered.map(({ value }) => value);
  return { kind, size, values, words: lowered.flatMap(({ after }) => after), time, line };
}

/** `F drill  9.5 deg`: a letter drill begins a row as a number drill does. */
const namesDrill = (head: readonly Word[]): boolean =>
  /^(?:letter )?[a-z] drill$/i.test(head.map((word) => word.text).join(' '));

function recheckEntry(line: Line, syntax: Syntax<'recheck'>, time: string | undefined): Entry {
  const value = syntax.groups[0]?.values[0];
  const amount = value ? lowerValue(line, value).value : undefined;
  return {
    kind: 'recheck',
    name: nameOf(line, syntax.name),
    nameSpan: runSpan(line, syntax.name),
    after: amount?.form === 'amount' ? amount : undefined,
    again: syntax.after !== undefined && tokenText(line, syntax.after).toLowerCase() === 'every',
    time,
    line,
  };
}

function wordsEntry(line: Line, syntax: Syntax<'entry'>, around: NameScope, time: string | undefined): Entry {
  if (around.section === 'parts') return partEntry(line, syntax, time);
  if (around.section === 'ports') return portEntry(line, syntax, time);
  if (around.section === 'words') return wordEntry(line, syntax, time);
  if (around.section === 'specs') return specEntry(line, syntax, around, time);
  return quantityEntry(line, syntax, around, time);
}

function quantityEntry(
  line: Line,
  syntax: Syntax<'entry'>,
  around: NameScope,
  time: string | undefined,
): Entry {
  const head = wordsOf(line, syntax.head);
  const found = named(head, around);
  if (!found && namesDrill(head)) return rowOf(line, 'row', head, syntax.groups, time);
  if (!found) return { kind: 'unknown', words: head, time, line };
  const { from, length } = found;
  const name = { from: (head[from] as Word).span.from, to: (head[from + length - 1] as Word).span.to };
  // `no knock` is none.
  const before = head
    .slice(0, from)
    .map((word) => (/^no$/i.test(word.text) ? { ...word, text: 'none' } : word));
  const beside = placeIn([...before, ...head.slice(from + length)]);
  const read = statementsOf(line, syntax.groups, beside.place, beside.rest, found.quantity);
  const { quantity, said } = resolveQuantity(line, found.quantity, read);
  return {
    kind: roleOf(quantity, around.section),
    quantity,
    name,
    statements: said,
    text: quantity.form === 'text' ? textOf(line, syntax, beside.rest) : undefined,
    time,
    line,
  };
}

/** A place may come before the name: `left mixture 1 1/4 turns`; the name may be a place's own word: `left bank 1-3`. */
function named(
  head: readonly Word[],
  around: NameScope,
): { quantity: Quantity; from: number; length: number } | undefined {
  const texts = head.map((word) => word.text);
  const atOnce = nameAt(texts, 0, around);
  if (atOnce) return { ...atOnce, from: 0 };
  const denied = texts[0]?.toLowerCase() === 'no' ? nameAt(texts, 1, around) : undefined;
  if (denied?.quantity.words?.includes('none')) return { ...denied, from: 1 };
  const place = placeLength(head, 0);
  for (let from = place; from > 0; from--) {
    const later = nameAt(texts, from, around);
    if (later) return { ...later, from };
  }
  return undefined;
}

function roleOf(quantity: Quantity, section: SectionKind | undefined): QuantityEntry['kind'] {
  if (section === 'limits') return 'limit';
  return section === 'targets' ? 'target' : quantity.kind;
}

/** Quoted text without its quotes; else the text after name and place, as written. */
function textOf(line: Line, syntax: Syntax<'entry'>, rest: readonly Word[]): string {
  const groups = syntax.groups;
  const quoted = groups.flatMap((group) => group.values).find((value) => value.form === 'text');
  if (quoted?.form === 'text') return tokenText(line, quoted.token).slice(1, -1);
  if (rest[0]?.text === 'none') return ['none', textOf(line, syntax, rest.slice(1))].join(' ').trim();
  const from = rest[0]?.span.from ?? runSpan(line, groups[0]?.run ?? [0, 0]).from;
  const last = groups.at(-1)?.run[1] ?? syntax.head[1];
  return line.text.slice(from, runSpan(line, [syntax.head[0], last]).to).trim();
}
