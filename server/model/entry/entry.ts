/**
 * Entries: the meaning of notebook lines, as data. An entry knows its columns on its own line and nothing of where the line
 * stands; `Ref` and `Origin` say that from outside, by ids that survive edits above.
 */
import type { Line, Span } from '../../../grammar/index.ts';
import type { PartKind, Quantity } from '../../trade/vocabulary/quantity.ts';
import type { Amount, Plain, Value, Word } from './value.ts';

/** A line of the notebook by ids: they stay when lines are added above it. */
export interface Ref {
  readonly page: number;
  readonly line: number;
}

/** The line that said something, and the date of its session. */
export interface Origin {
  readonly ref: Ref;
  readonly date: string | undefined;
}

export type SectionKind =
  | 'notebook'
  | 'engine'
  | 'vehicle'
  | 'parts'
  | 'limits'
  | 'targets'
  | 'specs'
  | 'ports'
  | 'words'
  | 'session';

/** `#3`, `left`, `primary rear`: lower case, separated by one space. */
export interface Place {
  readonly text: string;
  readonly cylinder: number | undefined;
  readonly span: Span;
}

/** `@ 2500 rpm`, `at idle`, `in drive`: a value, or words. */
export interface Condition {
  readonly value: Amount | undefined;
  readonly words: readonly Word[];
  readonly span: Span;
}

/** A point of a curve: `8 deg @ 1500 rpm`. */
export interface Point {
  readonly value: Amount;
  readonly at: Amount;
  readonly span: Span;
}

/** Statement about one place: values, words beside them, and conditions. */
export interface Statement {
  readonly place: Place | undefined;
  readonly values: readonly Value[];
  readonly points: readonly Point[];
  /** Words beside the values: `manifold`, `probe`, `plugged`. Lower case. */
  readonly words: readonly Word[];
  readonly conditions: readonly Condition[];
  /** All words, beside the values and in the conditions; lower case. */
  readonly qualifiers: readonly string[];
  readonly span: Span;
}

export interface QuantityEntry extends Base {
  readonly kind: 'setting' | 'reading' | 'fact' | 'limit' | 'target';
  readonly quantity: Quantity;
  readonly name: Span;
  /** At least one; more where a line gives several places. */
  readonly statements: readonly Statement[];
  /** For quantities that are text: what was said, without quotes. */
  readonly text: string | undefined;
}

interface Base {
  /** `09:30` or `+20 min`, as written. */
  readonly time: string | undefined;
  readonly line: Line;
  /** Read, but something on the line has no part in that: nothing of it is in force. */
  readonly isVoid?: true;
  /** Whole readings to choose from instead, each as lines of the notation, the likeliest first. */
  readonly offers?: readonly (readonly string[])[];
}

export interface SessionEntry extends Base {
  readonly kind: 'session';
  /** ISO 8601; undefined where it is missing or no real day. */
  readonly date: string | undefined;
  readonly dateText: Plain | undefined;
  readonly clock: string | undefined;
  readonly title: string;
}

interface UnknownEntry extends Base {
  readonly kind: 'unknown';
  readonly words: readonly Word[];
}

export interface SpecEntry extends Base {
  readonly kind: 'spec';
  /** `head bolts`; the quantity's own name where nothing comes before it. */
  readonly name: string;
  readonly nameSpan: Span;
  readonly quantity: Quantity;
  readonly values: readonly Value[];
  readonly source: string | undefined;
}

export interface PartEntry extends Base {
  readonly kind: 'part';
  readonly name: string;
  readonly nameSpan: Span;
  readonly part: PartKind | undefined;
  readonly text: string | undefined;
}

export interface PortEntry extends Base {
  readonly kind: 'port';
  readonly name: string;
  readonly nameSpan: Span;
  /** What is on it: `brake booster`, `capped`, `open`; undefined where nothing is given. */
  readonly on: string | undefined;
  readonly onSpan: Span;
  /** For a fluid path: what it passes, in order. */
  readonly path: readonly Word[];
}

/** A word of the notebook's own. */
interface WordEntry extends Base {
  readonly kind: 'word';
  readonly quantity: Quantity | undefined;
  readonly name: string;
  readonly nameSpan: Span;
}

export interface ItemEntry extends Base {
  readonly kind: 'item';
  readonly word: 'todo' | 'fault' | 'done';
  readonly id: string;
  readonly idSpan: Span;
  readonly text: string;
  readonly safety: boolean;
  readonly flags: readonly Word[];
}

export interface FitEntry extends Base {
  readonly kind: 'fit';
  readonly word: 'fit' | 'remove';
  readonly name: string;
  readonly nameSpan: Span;
}

export interface CheckEntry extends Base {
  readonly kind: 'check';
  readonly name: string;
  readonly nameSpan: Span;
  /** Undefined where neither `ok` nor `bad` is given. */
  readonly ok: boolean | undefined;
}

export interface FileEntry extends Base {
  readonly kind: 'file';
  readonly word: 'photo' | 'log' | 'use';
  readonly path: string;
  readonly pathSpan: Span;
}

interface RevertEntry extends Base {
  readonly kind: 'revert';
  readonly date: string | undefined;
  readonly dateSpan: Span;
}

export interface TrialEntry extends Base {
  readonly kind: 'trial';
  readonly knob: string;
  readonly response: string;
  /** `@ 3000 rpm`, `in drive`, as written; empty where there are none. */
  readonly under: string;
  readonly span: Span;
}

export interface RowEntry extends Base {
  readonly kind: 'row' | 'want';
  /** `#7 drill` before the values. */
  readonly size: readonly Word[];
  readonly values: readonly Value[];
  readonly words: readonly Word[];
}

export interface RecheckEntry extends Base {
  readonly kind: 'recheck';
  readonly name: string;
  readonly nameSpan: Span;
  readonly after: Amount | undefined;
  /** `every`: starts again once done. */
  readonly again: boolean;
}

interface NoteEntry extends Base {
  readonly kind: 'note' | 'keep';
  readonly text: string;
}

interface SectionEntry extends Base {
  readonly kind: 'section';
  readonly section: SectionKind;
  readonly title: string;
}

/** A line of plain speech that has one meaning. A remark means a note. */
export interface SpokenEntry extends Base {
  readonly kind: 'spoken';
  /** As lines of the notation. */
  readonly as: readonly string[];
  /** What the ordinary reader makes of those, one after the other. */
  readonly entries: readonly Entry[];
}

/** A line of plain speech that may mean several things, or is understood only in part: nothing of it is in force. */
export interface AskedEntry extends Base {
  readonly kind: 'asked';
  /** What is not known, in plain English. */
  readonly question: string;
  readonly offers: readonly (readonly string[])[];
  /** It may be dangerous. */
  readonly safety: boolean;
  /** Settings that moved, nobody knows how far. */
  readonly doubts: readonly { readonly name: string; readonly place?: string }[];
  /**
   * `undated`: a day begins, and which one is open. `elsewhere`: the day is another machine's; nothing counts up to the next
   * head.
   */
  readonly head: 'undated' | 'elsewhere' | undefined;
}

interface BlankEntry extends Base {
  readonly kind: 'blank';
}

/** Role of a conflict marker: begins the conflict, divides its sides, ends it. */
export type ConflictMark = 'begins' | 'parts' | 'ends';

/** A line of an unfinished merge: a marker, or a line between two. */
interface ConflictEntry extends Base {
  readonly kind: 'conflict';
  /** Undefined for a line between markers, which has no meaning whatever its text. */
  readonly mark: ConflictMark | undefined;
}

export type Entry =
  | BlankEntry
  | ConflictEntry
  | SectionEntry
  | SessionEntry
  | QuantityEntry
  | UnknownEntry
  | SpecEntry
  | PartEntry
  | PortEntry
  | WordEntry
  | ItemEntry
  | FitEntry
  | CheckEntry
  | FileEntry
  | RevertEntry
  | TrialEntry
  | RowEntry
  | RecheckEntry
  | NoteEntry
  | SpokenEntry
  | AskedEntry;

export type EntryKind = Entry['kind'];
