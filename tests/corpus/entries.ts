/** Entries as text that can be compared: values in the word's own unit, the wording of remarks left out. */
import { parseLine } from '../../grammar/index.ts';
import type { Entry, SectionKind, Statement } from '../../server/model/entry/entry.ts';
import { readEntry } from '../../server/model/entry/read-entry.ts';
import type { Amount, Value } from '../../server/model/entry/value.ts';
import { convertInterval, unitById } from '../../server/trade/measure/units.ts';
import type { Quantity } from '../../server/trade/vocabulary/quantity.ts';

export interface Placed {
  readonly entry: Entry;
  readonly section: SectionKind;
}

/** Reads lines one after the other; a section's word changes what the next ones are read in. */
export function placed(lines: readonly string[], first: SectionKind = 'session'): readonly Placed[] {
  let section = first;
  return lines.map((text) => {
    const entry = readEntry(parseLine(text), {
      section,
      words: new Map(),
      specs: new Map(),
      inConflict: false,
    });
    if (entry.kind === 'section') section = entry.section;
    if (entry.kind === 'session') section = 'session';
    return { entry, section };
  });
}

/** What would be in force or remembered: one text for each place; notes and section heads are none. */
export const keysOf = (lines: readonly string[]): readonly string[] =>
  placed(lines)
    .flatMap(({ entry }) => keys(entry))
    .sort();

function keys(entry: Entry): readonly string[] {
  const at = entry.time === undefined ? '' : `${entry.time} `;
  switch (entry.kind) {
    case 'setting':
    case 'reading':
    case 'fact':
    case 'limit':
    case 'target': {
      const { kind, quantity } = entry;
      return inSameState(entry.statements).map(
        (said) => `${at}${kind} ${quantity.name}${saidKey(said, quantity, entry.text)}`,
      );
    }
    case 'session':
      return [`session ${entry.date}`];
    case 'item':
      return [`${entry.word}${entry.safety ? ' safety' : ''}`];
    case 'check':
      return [`check ${entry.name} ${entry.ok}`];
    case 'note':
    case 'keep':
    case 'section':
    case 'blank':
      return [];
    default:
      return [`${entry.kind} ${entry.line.text}`];
  }
}

/** `left 21, right 24 at idle`: a condition that only the last of several places has was meant for all. */
function inSameState(all: readonly Statement[]): readonly Statement[] {
  const last = all.at(-1);
  const isLast =
    last !== undefined &&
    all.every(({ place }) => place) &&
    all.slice(0, -1).every(({ qualifiers, conditions }) => qualifiers.length + conditions.length === 0);
  return isLast
    ? all.map((each) => ({ ...each, qualifiers: last.qualifiers, conditions: last.conditions }))
    : all;
}

const GEARS = new Map(
  (
    'neutral drive park reverse ahead astern idle top 1st:first 2nd:second 3rd:third 4th:fourth first second third fourth ' +
    'fifth inlet exhaust'
  )
    .split(' ')
    .map((word) => word.split(':'))
    .map(([word, full]) => [word as string, full ?? (word as string)]),
);

function saidKey(said: Statement, quantity: Quantity, text: string | undefined): string {
  const values = said.values.map((value) => valueKey(value, quantity));
  const points = said.points.map(
    ({ value, at }) => `${amountKey(value, quantity)}@${amountKey(at, undefined)}`,
  );
  const conditions = said.conditions.flatMap(({ value }) =>
    value ? [`@${amountKey(value, undefined).replace(/ $| rpm$/, '')}`] : [],
  );
  const gears = said.qualifiers.flatMap((word) => GEARS.get(word) ?? []);
  const known = quantity.form === 'text' ? textKey(text ?? '', quantity) : '';
  const numbers = quantity.form === 'text' ? [] : values;
  const pieces = [known, ...numbers, ...points, ...conditions.sort(), ...new Set(gears)].filter(Boolean);
  return ` [${(said.place?.text ?? '').replace(/^intake$/, 'inlet')}] ${pieces.join(' ')}`;
}

/** Of free words only those that the word of the trade knows; the rest is a remark. */
const textKey = (text: string, { words }: Quantity): string =>
  words
    ? text
        .toLowerCase()
        .split(/\W+/)
        .filter((word) => words.includes(word))
        .join(' ')
    : 'text';

const valueKey = (value: Value, quantity: Quantity): string =>
  value.form === 'amount'
    ? amountKey(value, quantity)
    : value.form === 'text'
      ? ''
      : `${value.form} ${value.text}`;

function amountKey({ interval, unit, relative }: Amount, quantity: Quantity | undefined): string {
  if (!interval) return '?';
  const own = quantity?.unit ? unitById(quantity.unit) : undefined;
  const written = unit ?? own;
  const change = relative ? `${relative} ` : '';
  const isOwn = own && written && own.dimension === written.dimension && !relative;
  const read = isOwn ? convertInterval(interval, written, own) : interval;
  const about = read.about ? '~' : '';
  const number = [...new Set([round(read.low), round(read.high)])].join('..');
  return `${change}${about}${number} ${isOwn ? own.id : (written?.id ?? '')}`.trim();
}

const round = (n: number): string => String(Number(n.toPrecision(5)));
