/** Entries whose section gives them a form of their own: parts, ports, specs, own words. */
import {
  isEmpty,
  KIND,
  type Line,
  type LineSyntax,
  runSpan,
  type Span,
  tokenText,
  type ValueSyntax,
} from '../../../grammar/index.ts';
import { matchUnit, type Unit } from '../../trade/measure/units.ts';
import { partKind } from '../../trade/vocabulary/parts.ts';
import type { Band, Quantity, QuantityKind } from '../../trade/vocabulary/quantity.ts';
import type { Entry } from './entry.ts';
import { type NameScope, nameAt, nameOf } from './name-lookup.ts';
import { placeLength, withSharedUnit } from './statement.ts';
import { asRange, lowerValue, type Value, type Word, wordsOf } from './value.ts';

type Syntax = LineSyntax & { readonly kind: 'entry' };
type Time = string | undefined;

const valuesOf = (syntax: Syntax): readonly ValueSyntax[] => syntax.groups.flatMap((group) => group.values);

/** The text in quotes, if there is one. */
function quoted(line: Line, syntax: Syntax): string | undefined {
  const value = valuesOf(syntax).find((each) => each.form === 'text');
  return value?.form === 'text' ? tokenText(line, value.token).slice(1, -1) : undefined;
}

const spanOfWords = (words: readonly Word[], otherwise: Span): Span => ({
  from: words[0]?.span.from ?? otherwise.from,
  to: words.at(-1)?.span.to ?? otherwise.to,
});

const joined = (words: readonly Word[]): string =>
  words
    .map((word) => word.text)
    .join(' ')
    .toLowerCase()
    .replaceAll('-', ' ');

/** `carb twin  "pair of side-draughts"`: the first word that names a kind of part says what it owns. */
export function partEntry(line: Line, syntax: Syntax, time: Time): Entry {
  const name = nameOf(line, syntax.head);
  return {
    kind: 'part',
    name,
    nameSpan: runSpan(line, syntax.head),
    part: partKind(name.split(' ')),
    text: quoted(line, syntax),
    time,
    line,
  };
}

/** `manifold rear  brake booster`: the port is the first word with the places after it, or the text before a colon or `capped`. */
export function portEntry(line: Line, syntax: Syntax, time: Time): Entry {
  const head = wordsOf(line, syntax.head);
  const after = syntax.groups.map((group) => wordsOf(line, group.words));
  const firstGroup = after[0] ?? [];
  const isPath = line.tokens.kinds.includes(KIND.Arrow);
  const names = firstGroup.length > 0 ? head.length : isPath ? fluidWords(head) : portWords(head);
  const on = firstGroup.length > 0 ? firstGroup : head.slice(names);
  const end = runSpan(line, syntax.head).to;
  return {
    kind: 'port',
    name: joined(head.slice(0, names)),
    nameSpan: spanOfWords(head.slice(0, names), runSpan(line, syntax.head)),
    on:
      on.length > 0
        ? after
            .slice(1)
            .reduce((text, words) => `${text}${isPath ? ' ->' : ','} ${joined(words)}`, joined(on))
        : quoted(line, syntax)?.toLowerCase(),
    onSpan: spanOfWords(on, { from: end, to: end }),
    path: (isPath ? [on, ...after.slice(1)] : []).map((words) => ({
      text: joined(words),
      span: spanOfWords(words, { from: end, to: end }),
    })),
    time,
    line,
  };
}

/** A path without a colon is named by its fluid, which may take two words: `raw water pump -> oil cooler`. */
const fluidWords = (head: readonly Word[]): number =>
  FLUIDS.has(joined(head.slice(0, 2))) && head.length > 2 ? 2 : portWords(head);

const FLUIDS: ReadonlySet<string> = new Set([
  'raw water',
  'sea water',
  'fresh water',
  'engine oil',
  'gearbox oil',
  'transmission oil',
  'transmission fluid',
]);

function portWords(head: readonly Word[]): number {
  let length = 1;
  while (length < head.length && portPartLength(head, length) > 0) length += portPartLength(head, length);
  return saysStateAlone(head) ? Math.max(length, head.length - 1) : length;
}

const portPartLength = (head: readonly Word[], at: number): number =>
  PORT_PARTS.test(head[at]?.text ?? '') ? 1 : placeLength(head, at);

/** Words for a position on a thing that a port name may hold, beside the places. */
const PORT_PARTS = /^(?:base|body|flange|nipple|plate|port|ported|spacer|tap|timed|top)$/i;

/** `carb ported tap  capped`: the text before is the name, except in `brake booster and capped`. */
const saysStateAlone = (head: readonly Word[]): boolean =>
  STATES.test(head.at(-1)?.text ?? '') && !head.some((word) => JOINING.test(word.text));

const STATES = /^(?:capped|plugged|blanked|blocked|open)$/i;
const JOINING = /^(?:and|but|then|with)$/i;

/** `head bolts  torque 58..62 lb-ft  source "workshop manual"`: the last word of the trade is what is specified. */
export function specEntry(line: Line, syntax: Syntax, around: NameScope, time: Time): Entry {
  const head = wordsOf(line, syntax.head);
  const values = specValues(line, syntax);
  const found = specified(head, values, around);
  if (!found) return { kind: 'unknown', words: head, time, line };
  return {
    kind: 'spec',
    name: found.name.length === 0 ? found.quantity.name : joined(found.name),
    nameSpan: spanOfWords(found.name, runSpan(line, syntax.head)),
    quantity: found.quantity,
    values: found.quantity.form === 'several' ? values : withSharedUnit(values),
    source: quoted(line, syntax),
    time,
    line,
  };
}

/** Quantity and name of a spec; a torque is known by its unit alone: `rod bolts 45 lb-ft`. */
function specified(
  head: readonly Word[],
  values: readonly Value[],
  around: NameScope,
): { readonly quantity: Quantity; readonly name: readonly Word[] } | undefined {
  const texts = head.map((word) => word.text);
  const isTorque = values.some((value) => value.form === 'amount' && value.unit?.dimension === 'torque');
  const torque = isTorque ? nameAt(['torque'], 0, around)?.quantity : undefined;
  for (let from = 0; from < head.length; from++) {
    const found = nameAt(texts, from, around);
    if (!found || from + found.length < head.length) continue;
    if (torque && found.quantity.dimension !== 'torque') break;
    return { quantity: found.quantity, name: head.slice(0, from) };
  }
  return torque && { quantity: torque, name: head };
}

const specValues = (line: Line, syntax: Syntax): readonly Value[] =>
  valuesOf(syntax)
    .filter((value) => value.form !== 'text')
    .map((value) => asRange(line, value, lowerValue(line, value)).value);

/** `shutter gap: setting, 2..5 mm, "between blade and stop"`. */
export function wordEntry(line: Line, syntax: Syntax, time: Time): Entry {
  const head = wordsOf(line, syntax.head);
  const kindAt = head.findIndex((word) => isKind(word));
  const name = kindAt > 0 ? head.slice(0, kindAt) : head;
  const beside = [
    ...head.slice(name.length),
    ...syntax.groups.flatMap((group) => wordsOf(line, group.words)),
  ];
  const kind = beside.find(isKind)?.text.toLowerCase() as QuantityKind | undefined;
  return {
    kind: 'word',
    name: joined(name),
    nameSpan: spanOfWords(name, runSpan(line, syntax.head)),
    quantity:
      kind && !isEmpty(syntax.head) ? ownQuantity(line, syntax, joined(name), kind, beside) : undefined,
    time,
    line,
  };
}

const isKind = (word: Word): boolean => /^(?:setting|reading)$/i.test(word.text);

function ownQuantity(
  line: Line,
  syntax: Syntax,
  name: string,
  kind: QuantityKind,
  beside: readonly Word[],
): Quantity {
  const lowered = valuesOf(syntax).map((value) => lowerValue(line, value));
  const amount = lowered.map(({ value }) => value).find((value) => value.form === 'amount');
  const words = [...beside.filter((word) => !isKind(word)), ...lowered.flatMap(({ after }) => after)];
  const unit = amount?.unit ?? firstUnit(words);
  const band = amount?.interval && unit ? ownBand(amount.interval, unit) : undefined;
  return {
    name,
    aliases: [],
    kind,
    form: unit || amount ? 'number' : 'text',
    ...(unit ? { dimension: unit.dimension, unit: unit.id } : amount ? { dimension: 'number' } : {}),
    ...(band && { band }),
    meaning: quoted(line, syntax) ?? 'a word of this notebook',
  };
}

function firstUnit(words: readonly Word[]): Unit | undefined {
  const texts = words.map((word) => word.text);
  for (let at = 0; at < texts.length; at++) {
    const match = matchUnit(texts, at);
    if (match) return match.unit;
  }
  return undefined;
}

const ownBand = ({ low, high }: { readonly low: number; readonly high: number }, unit: Unit): Band => ({
  low,
  high,
  unit: unit.id,
  standing: 'common practice',
  source: 'this notebook',
});
