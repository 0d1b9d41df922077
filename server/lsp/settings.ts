/** The user's settings. They come from outside: a value of the wrong form counts as not set. */
import type { Level } from '../features/diagnostics.ts';
import { DEFAULT_STYLE, type FormatStyle } from '../features/formatting.ts';
import type { HintKind } from '../features/inlay-hints.ts';
import type { UnitChoice, UnitTopic } from '../features/units.ts';
import { ruleOf } from '../rules/check.ts';
import { matchUnit, type Unit } from '../trade/measure/units.ts';

export interface Settings {
  /** Severity by a rule's code. */
  readonly levels: ReadonlyMap<string, Level>;
  readonly units: UnitChoice;
  /** Milliseconds; 0: findings are not held back. */
  readonly holdBack: number;
  readonly format: FormatStyle;
  /** Empty where hints are switched off. */
  readonly hints: ReadonlySet<HintKind>;
}

export const DEFAULT_SETTINGS: Settings = {
  levels: new Map(),
  units: new Map(),
  holdBack: 800,
  format: DEFAULT_STYLE,
  hints: new Set(['total', 'change']),
};

const LONGEST_HOLD_BACK = 10_000;
const WIDEST_INDENT = 8;
const LEVELS: ReadonlySet<unknown> = new Set<Level>(['error', 'warning', 'information', 'hint', 'off']);
const TOPICS: ReadonlySet<string> = new Set<UnitTopic>([
  'temperature',
  'pressure',
  'depression',
  'length',
  'torque',
  'roadSpeed',
  'distance',
]);

/** Settings from the section `tappet` of the editor's settings. */
export function settingsFrom(section: unknown): Settings {
  const { severity, units, holdBack, format, hints } = record(section);
  return {
    levels: levelsFrom(severity),
    units: unitsFrom(units),
    holdBack: holdBackFrom(holdBack),
    format: formatFrom(format),
    hints: hintsFrom(hints),
  };
}

function levelsFrom(severity: unknown): ReadonlyMap<string, Level> {
  const rows = Object.entries(record(severity));
  return new Map(
    rows.filter((row): row is [string, Level] => ruleOf(row[0]) !== undefined && LEVELS.has(row[1])),
  );
}

/** Units by any of their spellings; `as written` is none of them. */
function unitsFrom(units: unknown): UnitChoice {
  const choice = new Map<UnitTopic, Unit>();
  for (const [topic, spelling] of Object.entries(record(units))) {
    const words = typeof spelling === 'string' ? spelling.split(' ') : [];
    const match = matchUnit(words, 0);
    if (TOPICS.has(topic) && match?.length === words.length) choice.set(topic as UnitTopic, match.unit);
  }
  return choice;
}

function formatFrom(format: unknown): FormatStyle {
  const { indent, unitSpelling } = record(format);
  const isIndent = Number.isInteger(indent) && (indent as number) >= 0;
  return {
    indent: isIndent ? Math.min(indent as number, WIDEST_INDENT) : DEFAULT_STYLE.indent,
    unitSpelling: unitSpelling === 'table' ? 'table' : DEFAULT_STYLE.unitSpelling,
  };
}

function holdBackFrom(value: unknown): number {
  const isTime = typeof value === 'number' && Number.isFinite(value);
  return isTime ? Math.min(Math.max(value, 0), LONGEST_HOLD_BACK) : DEFAULT_SETTINGS.holdBack;
}

const HINTS: readonly (readonly [setting: string, kind: HintKind])[] = [
  ['totals', 'total'],
  ['changes', 'change'],
  ['units', 'unit'],
];

/** Each kind by its own switch, all of them by `enabled`. */
function hintsFrom(hints: unknown): ReadonlySet<HintKind> {
  const switches = record(hints);
  const isOn = (name: string, otherwise: boolean) =>
    typeof switches[name] === 'boolean' ? switches[name] : otherwise;
  if (!isOn('enabled', true)) return new Set();
  const chosen = HINTS.filter(([name, kind]) => isOn(name, DEFAULT_SETTINGS.hints.has(kind)));
  return new Set(chosen.map(([, kind]) => kind));
}

const record = (value: unknown): Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};
