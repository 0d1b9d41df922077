/**
 * State carried from line to line: everything a line's meaning can depend on. Two equal states give the same reading of
 * whatever follows, which is where a rebuild stops.
 */
import type { PartKind, Quantity } from '../../trade/vocabulary/quantity.ts';
import type { Origin, Point, SectionKind, Statement } from '../entry/entry.ts';
import type { Amount, Value } from '../entry/value.ts';
import type { Habits } from '../spoken/habits.ts';

/** A setting in force. */
export interface SettingInForce {
  readonly quantity: Quantity;
  /** Empty where it was given for no place. */
  readonly place: string;
  readonly values: readonly Value[];
  readonly points: readonly Point[];
  /** Lower-case words beside the value: `manifold`, `distributor`. */
  readonly words: readonly string[];
  readonly text: string | undefined;
  /** The line that set it last. */
  readonly by: Origin;
  /** The last line that gave it whole; undefined where only changes were written, so that the sum stays a change. */
  readonly base: Origin | undefined;
  /** The line that says it was moved since, by an amount that nobody knows. */
  readonly doubt?: Origin;
}

/** A fact, limit or target in force. */
export interface Declared {
  readonly quantity: Quantity;
  readonly statement: Statement;
  readonly text: string | undefined;
  readonly by: Origin;
}

/** A reading of the session that is being read. */
export interface SessionReading {
  readonly quantity: Quantity;
  readonly statement: Statement;
  readonly time: string | undefined;
  readonly by: Origin;
}

export interface Spec {
  readonly name: string;
  readonly quantity: Quantity;
  readonly values: readonly Value[];
  readonly source: string | undefined;
  readonly by: Origin;
}

export interface Part {
  readonly part: PartKind | undefined;
  readonly text: string | undefined;
  readonly by: Origin;
}

export interface OpenItem {
  readonly word: 'todo' | 'fault';
  readonly text: string;
  readonly safety: boolean;
  readonly by: Origin;
}

export interface Trial {
  readonly knob: string;
  readonly response: string;
  readonly under: string;
  /** By their number, from zero. */
  readonly rows: By<Row>;
  /** The first unit written on each axis, by its id. */
  readonly units: { readonly knob: string | undefined; readonly response: string | undefined };
  readonly by: Origin;
}

export interface Row {
  readonly values: readonly Value[];
  readonly size: string;
  readonly by: Origin;
}

/** The last readings of one quantity, place and conditions. */
export interface ReadingWindow {
  /** Each the values of one line, in the quantity's usual unit: one, or one for each cylinder. The latest last. */
  readonly lists: readonly (readonly number[])[];
  /** Sessions begun since the last of them. */
  readonly unread: number;
}

/** A setting or a kind of part that was changed, by its name. */
export interface PendingChange {
  readonly name: string;
  readonly by: Origin;
}

/** A part on the engine. */
interface FittedPart {
  readonly name: string;
  /** The name as its line spells it. */
  readonly written: string;
  readonly by: Origin;
}

/** A port, or a fluid path where `path` is not empty. */
export interface Port {
  /** Lower case; empty where nothing is given, or where what was on it has since moved to another port. */
  readonly on: string;
  readonly path: readonly string[];
  readonly by: Origin;
  /** The head of the section it was said in; undefined outside one. */
  readonly within: Origin | undefined;
  /** Where what was on it has gone. */
  readonly movedTo: string | undefined;
}

/** A reminder that is not yet done. */
export interface Recheck {
  readonly after: Amount;
  /** Starts again once done. */
  readonly again: boolean;
  readonly by: Origin;
  /** The meter as last read before it; the first reading after it where there was none. */
  readonly start: SessionReading | undefined;
  /** The first heat cycle that counts, as `recheckIndex` counts them. */
  readonly fromCycle: number;
  /** Fell due, and is not done. */
  readonly due: boolean;
}

/** Where reminders fall due. */
interface RecheckIndex {
  /** The names of those that wait, by `where|name`. */
  readonly at: By<string>;
  /** How many are due. */
  readonly due: number;
  /** How many wait for heat cycles. */
  readonly counting: number;
  /** Heat cycles complete since one of those began while there was no other. */
  readonly cycles: number;
  /** Whether the engine got warm in this session. */
  readonly warm: boolean;
}

export interface JetAir {
  readonly date: string;
  readonly air: ReadonlyMap<string, SessionReading>;
}

type By<T> = ReadonlyMap<string, T>;

export interface State {
  readonly section: SectionKind | undefined;
  /** Inside an unfinished merge. */
  readonly inConflict: boolean;
  readonly session:
    | { readonly date: string | undefined; readonly title: string; readonly by: Origin }
    | undefined;
  /** The latest date a session head gave, and the time of that day. */
  readonly lastDate:
    | { readonly date: string; readonly clock: string | undefined; readonly by: Origin }
    | undefined;
  readonly notebook: string;
  /** What plain speech is read by. */
  readonly habits: Habits;
  /** The last lines of the session as they were read, the latest last. */
  readonly recentLines: readonly string[];
  /** What the notebook is kept of, where its title or a head says so. */
  readonly machine: string | undefined;
  /** Below a head of another machine: nothing counts up to the next head. */
  readonly isElsewhere: boolean;
  /** By `name|place`, as all below where a place may be given. */
  readonly settings: By<SettingInForce>;
  readonly facts: By<Declared>;
  readonly limits: By<Declared>;
  readonly targets: By<Declared>;
  /** By `name|quantity`. */
  readonly specs: By<Spec>;
  readonly parts: By<Part>;
  readonly fitted: ReadonlyMap<PartKind, FittedPart>;
  /** The settings of parts that are off the engine, by part name. */
  readonly parked: By<By<SettingInForce>>;
  readonly ports: By<Port>;
  /** The names of the ports that a thing is on, by `thing|name`. */
  readonly connected: By<string>;
  /** The head of the section of ports that is being read. */
  readonly portsHead: Origin | undefined;
  readonly words: By<Quantity>;
  readonly items: By<OpenItem>;
  /** Those of them that stand in the way of a road run. */
  readonly safetyItems: By<OpenItem>;
  /** Checks made and not yet made due again by later work. */
  readonly checks: By<{ readonly ok: boolean; readonly by: Origin }>;
  /** Checks that work has made due, with that work. */
  readonly checksDue: By<Origin>;
  /** Those that work of this session has made due after its last run. */
  readonly checksDueSinceRun: By<Origin>;
  /** Reminders that are not yet done. */
  readonly rechecks: By<Recheck>;
  readonly recheckIndex: RecheckIndex;
  /** Readings of this session, by name, place and conditions; the last of each. */
  readonly readings: By<SessionReading>;
  /** The latest reading of the quantities that the totals take, and of the meters: by name, whichever session it is from. */
  readonly latest: By<SessionReading>;
  /** The last few readings of each kind that is still read. */
  readonly recentReadings: By<ReadingWindow>;
  /** Settings and parts changed since the last reading that answers to them. */
  readonly changesSinceReading: readonly PendingChange[];
  /** Settings given whole on the lines right above, with nothing but settings between; by `name|place`. */
  readonly notYetUsed: By<Origin>;
  /** The last session that set a jet, with its air. */
  readonly jetAir: JetAir | undefined;
  readonly trial: Trial | undefined;
  /** The last session marked as one to keep. */
  readonly keptSession: { readonly date: string | undefined; readonly by: Origin } | undefined;
}

// biome-ignore lint/suspicious/noExplicitAny: an empty map is a map of anything
const NONE: ReadonlyMap<any, any> = new Map();

export const EMPTY_STATE: State = {
  section: undefined,
  inConflict: false,
  session: undefined,
  lastDate: undefined,
  notebook: '',
  habits: {},
  recentLines: [],
  machine: undefined,
  isElsewhere: false,
  settings: NONE,
  facts: NONE,
  limits: NONE,
  targets: NONE,
  specs: NONE,
  parts: NONE,
  fitted: NONE,
  parked: NONE,
  ports: NONE,
  connected: NONE,
  portsHead: undefined,
  words: NONE,
  items: NONE,
  safetyItems: NONE,
  checks: NONE,
  checksDue: NONE,
  checksDueSinceRun: NONE,
  rechecks: NONE,
  recheckIndex: { at: NONE, due: 0, counting: 0, cycles: 0, warm: false },
  readings: NONE,
  latest: NONE,
  recentReadings: NONE,
  changesSinceReading: [],
  notYetUsed: NONE,
  jetAir: undefined,
  trial: undefined,
  keptSession: undefined,
};

export const keyOf = (name: string, place: string | undefined): string => `${name}|${place ?? ''}`;
