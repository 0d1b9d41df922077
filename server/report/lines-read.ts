/** What each line of a notebook was taken for, as data for a person or a program. */
import { tokenSpan } from '../../grammar/index.ts';
import type { Condition, Entry, QuantityEntry, Statement } from '../model/entry/entry.ts';
import type { Amount, Value } from '../model/entry/value.ts';
import { linesBetween } from '../model/snapshot/locate.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import { scale } from '../trade/measure/interval.ts';
import { convertDifference, convertInterval, type Unit, unitById } from '../trade/measure/units.ts';
import type { Quantity } from '../trade/vocabulary/quantity.ts';

/** `read`: in the notation. `spoken`: plain speech with one meaning. `asked`, `unread`: nothing of it is in force. */
type Status = 'read' | 'spoken' | 'asked' | 'note' | 'unread';

/** One value, or one thing that a line says. What it has not is null. */
interface ReadEntry {
  readonly kind: string;
  readonly name: string | null;
  readonly place: string | null;
  /** In `unit`; null where that side is open too. */
  readonly low: number | null;
  readonly high: number | null;
  /** The word's own unit; the one that is written where it has none. */
  readonly unit: string | null;
  /** How a setting was moved; then `low` and `high` are how far. */
  readonly relative: 'more' | 'less' | 'in' | 'out' | null;
  /** As written: `in neutral`, `@ 3000 rpm`. */
  readonly conditions: readonly string[];
  readonly text: string | null;
}

export interface LineRead {
  /** From one. */
  readonly line: number;
  readonly text: string;
  readonly status: Status;
  /** Lines of the notation that it means. */
  readonly as: readonly string[];
  /** Whole readings to choose from, the likeliest first; the lines of one are joined by ` | `. */
  readonly offers: readonly string[];
  readonly entries: readonly ReadEntry[];
  /** It is a fault marked [safety], or may have to be one. */
  readonly safety: boolean;
}

/** Line by line, in order. */
export function* linesRead(snapshot: Snapshot): Generator<LineRead> {
  for (const { entry, at } of linesBetween(snapshot)) yield lineRead(entry, at + 1);
}

function lineRead(entry: Entry, line: number): LineRead {
  const status = statusOf(entry);
  const said = entry.kind === 'spoken' ? entry.entries : status === 'read' ? [entry] : [];
  return {
    line,
    text: entry.line.text,
    status,
    as: entry.kind === 'spoken' ? entry.as : status === 'read' ? writtenIn(entry) : [],
    offers: (entry.offers ?? []).map((lines) => lines.join(' | ')),
    entries: said.flatMap(entriesIn),
    safety: entry.kind === 'asked' ? entry.safety : said.some((each) => each.kind === 'item' && each.safety),
  };
}

function statusOf(entry: Entry): Status {
  if (entry.kind === 'spoken') return entry.entries.every(({ kind }) => kind === 'note') ? 'note' : 'spoken';
  if (entry.kind === 'asked') return 'asked';
  if (entry.isVoid || entry.kind === 'unknown') return (entry.offers ?? []).length > 0 ? 'asked' : 'unread';
  return 'read';
}

/** Without its comment; none for an empty line. */
function writtenIn({ line }: Entry): readonly string[] {
  const end = line.comment === undefined ? line.text.length : tokenSpan(line, line.comment).from;
  const text = line.text.slice(0, end).trim();
  return text === '' ? [] : [text];
}

function entriesIn(entry: Entry): readonly ReadEntry[] {
  if ('statements' in entry) return entry.statements.flatMap((said) => valuesIn(entry, said));
  if (entry.kind === 'blank') return [];
  return [{ ...NOTHING, kind: entry.kind, name: nameOf(entry), text: textOf(entry) }];
}

const NOTHING = {
  name: null,
  place: null,
  low: null,
  high: null,
  unit: null,
  relative: null,
  conditions: [],
  text: null,
} as const;

function nameOf(entry: Entry): string | null {
  switch (entry.kind) {
    case 'item':
      return `${entry.word} ${entry.id}`.trim();
    case 'session':
      return entry.date ?? null;
    case 'section':
      return entry.section;
    case 'file':
      return entry.word;
    case 'revert':
      return entry.date ?? null;
    case 'trial':
      return `${entry.knob} -> ${entry.response}`;
    default:
      return 'name' in entry && typeof entry.name === 'string' ? entry.name : null;
  }
}

function textOf(entry: Entry): string | null {
  if (entry.kind === 'session' || entry.kind === 'section') return entry.title || null;
  if (entry.kind === 'file') return entry.path;
  if (entry.kind === 'check') return entry.ok === undefined ? null : entry.ok ? 'ok' : 'bad';
  return ('text' in entry && entry.text) || null;
}

/** One for each value; one without a value where it has only words. */
function valuesIn(entry: QuantityEntry, said: Statement): readonly ReadEntry[] {
  const { kind, quantity, line } = entry;
  const conditions = said.conditions.map((condition) => conditionText(condition, line.text));
  const words = said.words.map(({ text }) => text);
  const quoted = said.values.flatMap((value) =>
    value.form === 'text' ? [line.text.slice(value.span.from + 1, value.span.to - 1)] : [],
  );
  const text = entry.text ?? [...words, ...quoted].join(' ');
  const base = { ...NOTHING, kind, name: quantity.name, conditions, text: text || null };
  const amounts = quantity.form === 'text' ? [] : said.values.filter((value) => value.form !== 'text');
  const isList = (quantity.places?.includes('cylinder') ?? false) && amounts.length > 1 && !said.place;
  const values = amounts.map((value, i) => ({
    ...base,
    ...numbersIn(value, quantity),
    place: isList ? `#${i + 1}` : (said.place?.text ?? null),
  }));
  const points = said.points.map(({ value, at }) => ({
    ...base,
    ...amountOf(value, quantity),
    place: said.place?.text ?? null,
    conditions: [`@ ${line.text.slice(at.span.from, at.span.to)}`, ...conditions],
  }));
  const all = [...values, ...points];
  return all.length > 0 ? all : [{ ...base, place: said.place?.text ?? null }];
}

const conditionText = ({ span }: Condition, line: string): string =>
  line.slice(span.from, span.to).replace(/\s+/g, ' ');

const numbersIn = (value: Value, quantity: Quantity): Partial<ReadEntry> =>
  value.form === 'amount' ? amountOf(value, quantity) : { text: value.form === 'text' ? null : value.text };

function amountOf({ interval, unit, relative }: Amount, quantity: Quantity): Partial<ReadEntry> {
  if (!interval) return {};
  const own = quantity.unit === undefined ? undefined : unitById(quantity.unit);
  const written = unit ?? own;
  const shown = own && written && own.dimension === written.dimension ? own : written;
  const isChange = relative !== undefined && quantity.kind === 'setting';
  const convert = (number: number) => rounded(inUnit(number, written, shown, isChange));
  // Of anything but a setting a sign is the number's own.
  const { low, high } = relative === 'less' && !isChange ? scale(interval, -1) : interval;
  return {
    low: convert(low),
    high: convert(high),
    unit: shown?.symbol || null,
    relative: isChange ? relative : null,
  };
}

function inUnit(number: number, from: Unit | undefined, to: Unit | undefined, isChange: boolean): number {
  if (!from || !to || from === to) return number;
  if (isChange) return convertDifference(number, from, to);
  return convertInterval({ low: number, high: number, about: false }, from, to).low;
}

/** Ten figures: what a change of units adds behind them says nothing. */
const rounded = (number: number): number | null =>
  Number.isFinite(number) ? Number(number.toPrecision(10)) : null;
