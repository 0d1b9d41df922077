/** The columns of a data logger's file, recognised by their headings: `Engine Speed (rpm)`, `EGT 1 [C]`, `speed_mph`. */
import type { Unit } from '../measure/units.ts';
import { matchUnit, unitById } from '../measure/units.ts';
import { findQuantity } from '../vocabulary/vocabulary.ts';

/** A column that is known: what it is of and in which unit. */
export interface LogColumn {
  /** As the notebook calls it: `engine speed`, `egt #1`, `time`. */
  readonly name: string;
  readonly unit: Unit;
  /** From zero. */
  readonly index: number;
  readonly heading: string;
}

/** Why a heading is not used. */
export interface UnreadHeading {
  readonly heading: string;
  readonly why: 'not a known word' | 'no unit' | 'wrong kind of unit' | 'a second column of the same';
}

interface KnownChannel {
  readonly name: string;
  readonly dimension: Unit['dimension'];
  /** Taken where the heading and the line of units say none: only where nothing else is in use. */
  readonly bare: string | undefined;
}

/** What loggers write that is no word of the notebook. */
const LOGGER_WORDS: Readonly<Record<string, readonly [name: string, bareUnit: string, needsUnit?: true]>> = {
  rpm: ['engine speed', 'rpm'],
  'engine rpm': ['engine speed', 'rpm'],
  'engine revs': ['engine speed', 'rpm'],
  'vehicle speed': ['speed', 'km/h', true],
  'gps speed': ['speed', 'km/h', true],
  'wheel speed': ['speed', 'km/h', true],
  time: ['time', 's'],
  timestamp: ['time', 's', true],
  elapsed: ['time', 's'],
  'elapsed time': ['time', 's'],
  map: ['manifold absolute pressure', 'kPa', true],
  'manifold absolute pressure': ['manifold absolute pressure', 'kPa', true],
  tps: ['throttle', '%'],
  throttle: ['throttle', '%'],
  'throttle position': ['throttle', '%'],
  'throttle opening': ['throttle', '%'],
  advance: ['timing', 'deg'],
  'ignition advance': ['timing', 'deg'],
  'ign timing': ['timing', 'deg'],
  clt: ['water', 'C', true],
  coolant: ['water', 'C', true],
  'engine temperature': ['water', 'C', true],
  iat: ['intake temperature', 'C', true],
  act: ['intake temperature', 'C', true],
  'oil press': ['oil pressure', 'psi', true],
  'fuel press': ['fuel pressure', 'psi', true],
  'wideband o2': ['air fuel ratio', 'ratio'],
  wideband: ['air fuel ratio', 'ratio'],
  vbat: ['volts', 'V'],
  'supply voltage': ['volts', 'V'],
};

/** Dimensions in which a heading without a unit can mean but one. */
const ONE_UNIT: ReadonlySet<string> = new Set(['rotation', 'ratio', 'number', 'percent', 'angle', 'voltage']);

/** Characters; no logger writes a longer heading. */
const LONGEST_HEADING = 200;

/** The columns of a row of headings; `units` is the line of units some loggers write below it. */
export function columnsOf(
  headings: readonly string[],
  units: readonly string[] = [],
): { readonly columns: readonly LogColumn[]; readonly unread: readonly UnreadHeading[] } {
  const columns: LogColumn[] = [];
  const unread: UnreadHeading[] = [];
  for (const [index, heading] of headings.entries()) {
    if (heading.trim() === '') continue;
    const read = readHeading(heading, units[index]);
    if ('why' in read) unread.push({ heading, why: read.why });
    else if (columns.some(({ name }) => name === read.name))
      unread.push({ heading, why: 'a second column of the same' });
    else columns.push({ ...read, index, heading });
  }
  return { columns, unread };
}

/** A text that is a unit and nothing else. */
export function unitIn(text: string): Unit | undefined {
  if (text.length > LONGEST_HEADING) return undefined;
  const words = text.trim().split(/\s+/);
  const match = text.trim() === '' ? undefined : matchUnit(words, 0);
  return match?.length === words.length ? match.unit : undefined;
}

function readHeading(
  heading: string,
  below: string | undefined,
): Pick<LogColumn, 'name' | 'unit'> | { readonly why: UnreadHeading['why'] } {
  if (heading.length > LONGEST_HEADING) return { why: 'not a known word' };
  const { name, unitText } = splitHeading(heading);
  const known = knownAs(name) ?? knownAs(withoutUnit(name).name);
  if (!known) return { why: 'not a known word' };
  const written = unitIn(unitText) ?? unitIn(below ?? '') ?? withoutUnit(name).unit;
  if (written && written.dimension !== known.dimension) return { why: 'wrong kind of unit' };
  const unit = written ?? (known.bare === undefined ? undefined : unitById(known.bare));
  return unit ? { name: known.name, unit } : { why: 'no unit' };
}

/** `EGT 1 [C]` to `egt 1` and `C`; `EngineSpeed` to `engine speed`. */
function splitHeading(heading: string): { readonly name: string; readonly unitText: string } {
  const closed = heading.trimEnd().slice(0, -1);
  const from = CLOSING.has(heading.trimEnd().slice(-1)) ? lastBracket(closed) : undefined;
  const name = heading
    .slice(0, from)
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .replace(/[_.:\s-]+/g, ' ')
    .trim()
    .toLowerCase();
  return { name, unitText: from === undefined ? '' : closed.slice(from + 1).trim() };
}

const CLOSING: ReadonlySet<string> = new Set(')]}');

/** Where the last brackets open that are not closed within a text. */
function lastBracket(text: string): number | undefined {
  const after = Math.max(...[...CLOSING].map((sign) => text.lastIndexOf(sign))) + 1;
  const opening = text.slice(after).search(/[([{]/);
  return opening < 0 ? undefined : after + opening;
}

/** `speed mph` to `speed` and mph. */
function withoutUnit(name: string): { readonly name: string; readonly unit: Unit | undefined } {
  const words = name.split(' ');
  for (let from = 1; from < words.length; from++) {
    const unit = unitIn(words.slice(from).join(' '));
    if (unit) return { name: words.slice(0, from).join(' '), unit };
  }
  return { name, unit: undefined };
}

/** A number at its end is a cylinder's: `egt 1`, `egt#1`, `egt1`. */
function knownAs(name: string): KnownChannel | undefined {
  const whole = knownWord(name);
  if (whole) return whole;
  const numbered = /^(.*?[a-z]) ?(?:#|cyl(?:inder)?)? ?(\d{1,2})$/.exec(name);
  const known = numbered ? knownWord((numbered[1] ?? '').trim()) : undefined;
  return known && numbered ? { ...known, name: `${known.name} #${Number(numbered[2])}` } : undefined;
}

function knownWord(name: string): KnownChannel | undefined {
  const logger = Object.hasOwn(LOGGER_WORDS, name) ? LOGGER_WORDS[name] : undefined;
  if (logger) {
    const [own, unit, needsUnit] = logger;
    return { name: own, dimension: unitById(unit).dimension, bare: needsUnit ? undefined : unit };
  }
  const words = name.split(' ');
  const found = findQuantity(words);
  if (!found || found.length !== words.length) return undefined;
  const { kind, form, dimension, unit, bare } = found.quantity;
  if (kind === 'fact' || form !== 'number' || !dimension || !unit) return undefined;
  return { name: found.quantity.name, dimension, bare: bare || ONE_UNIT.has(dimension) ? unit : undefined };
}
