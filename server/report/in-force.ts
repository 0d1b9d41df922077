/** State in force at a line: settings, parts, open items, limits and totals, each with the line that says so. */

import { logsWanted } from '../analysis/road/log.ts';
import { cautionsOfSession } from '../analysis/upkeep/cautions.ts';
import { statementText, valueText } from '../model/entry/as-written.ts';
import type { Origin } from '../model/entry/entry.ts';
import { lineStateAt } from '../model/snapshot/locate.ts';
import type { Files } from '../model/snapshot/named-files.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import { settingText } from '../model/state/setting-text.ts';
import type { Declared, SettingInForce, State } from '../model/state/state.ts';
import { ROAD_CHECKS } from '../trade/practice/road-checks.ts';
import type { PartKind } from '../trade/vocabulary/quantity.ts';
import { VOCABULARY } from '../trade/vocabulary/vocabulary.ts';
import { type FigureRow, figureRows, type TotalRows, totalRows } from './figure-rows.ts';
import { type ChangeRow, sinceKept } from './since-kept.ts';
import { type Where, whereOf } from './where.ts';

export interface InForceReport {
  /** The notebook's title; empty where it has none. */
  readonly notebook: string;
  /** Last line taken into account, from zero, and its session. */
  readonly line: number;
  readonly session: { readonly date: string | undefined; readonly title: string } | undefined;
  /** In the order of the trade's own table, the notebook's own words last. */
  readonly settings: readonly SettingRow[];
  readonly parts: readonly PartRow[];
  readonly items: readonly ItemRow[];
  readonly checks: readonly CheckRow[];
  readonly rechecks: readonly NamedRow[];
  readonly limits: readonly NamedRow[];
  readonly targets: readonly NamedRow[];
  readonly totals: TotalRows;
  /** All else that is worked out. */
  readonly figures: readonly FigureRow[];
  /** Cautions for the work of this session. */
  readonly cautions: readonly CautionRow[];
  /** The last session marked as one to keep. */
  readonly kept: Where | undefined;
  /** Settings that differ from then. */
  readonly sinceKept: readonly ChangeRow[];
}

interface NamedRow {
  /** With its place: `mixture left`. */
  readonly name: string;
  readonly value: string;
  readonly where: Where;
}

export interface SettingRow extends NamedRow {
  /** The kind of part that owns it. */
  readonly owner: PartKind | undefined;
  /** The line that moved it since, by an amount nobody knows. */
  readonly doubt: Where | undefined;
}

export interface PartRow {
  readonly kind: PartKind;
  readonly name: string;
  /** As it was described in the section of parts. */
  readonly text: string | undefined;
  readonly where: Where;
}

export interface ItemRow {
  readonly word: 'todo' | 'fault';
  readonly id: string;
  readonly text: string;
  readonly safety: boolean;
  readonly where: Where;
}

export interface CautionRow {
  /** The work it belongs to, in a few words. */
  readonly work: string;
  readonly text: string;
}

/** A check that must be made before a road run. */
interface CheckRow {
  readonly name: string;
  /** `due`: not made since the work at `where`; `bad`: made there, and found wanting. */
  readonly state: 'due' | 'bad';
  readonly why: string | undefined;
  readonly where: Where;
}

/** What holds after `line` (from zero, within the notebook). `files`: those of `logsAt`, where somebody read them. */
export function inForceAt(snapshot: Snapshot, line: number, files?: Files): InForceReport {
  const state = lineStateAt(snapshot, line)?.after;
  if (!state) throw new RangeError(`line ${line} is not in the notebook`);
  const where = (origin: Origin) => whereOf(snapshot, origin);
  const { session, keptSession: kept } = state;
  return {
    notebook: state.notebook,
    line,
    session: session && { date: session.date, title: session.title },
    settings: settingRows(state, where),
    parts: partRows(state, where),
    items: itemRows(state, where),
    checks: checkRows(state, where),
    rechecks: recheckRows(state, where),
    limits: statedRows(state.limits, where),
    targets: statedRows(state.targets, where),
    totals: totalRows(snapshot, state),
    figures: figureRows({ state, snapshot, line, ...(files && { files }) }),
    cautions: cautionsOfSession(snapshot, line).map(({ work, text }) => ({ work, text })),
    kept: kept && where(kept.by),
    sinceKept: sinceKept(snapshot, line, state),
  };
}

/** Paths of the logs that the figures at a line need, as the notebook writes them. */
export function logsAt(snapshot: Snapshot, line: number): readonly string[] {
  const state = lineStateAt(snapshot, line)?.after;
  return state ? logsWanted({ state, snapshot, line }) : [];
}

type Locate = (origin: Origin) => Where;

function settingRows({ settings }: State, where: Locate): readonly SettingRow[] {
  return [...settings.values()].toSorted(inTradeOrder).map((setting) => ({
    name: nameWithPlace(setting.quantity.name, setting.place),
    value: settingText(setting),
    owner: setting.quantity.owner,
    doubt: setting.doubt && where(setting.doubt),
    where: where(setting.by),
  }));
}

const RANK = new Map(VOCABULARY.map((quantity, i) => [quantity.name, i]));

const rank = ({ quantity }: SettingInForce): number => RANK.get(quantity.name) ?? RANK.size;

const inTradeOrder = (a: SettingInForce, b: SettingInForce): number =>
  rank(a) - rank(b) || compare(a.quantity.name, b.quantity.name) || compare(a.place, b.place);

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

const nameWithPlace = (name: string, place: string | undefined): string =>
  place ? `${name} ${place}` : name;

function partRows({ fitted, parts }: State, where: Locate): readonly PartRow[] {
  return [...fitted].map(([kind, { name, written, by }]) => ({
    kind,
    name: written,
    text: parts.get(name)?.text,
    where: where(by),
  }));
}

function itemRows({ items }: State, where: Locate): readonly ItemRow[] {
  return [...items].map(([id, { word, text, safety, by }]) => ({ word, id, text, safety, where: where(by) }));
}

function checkRows({ checksDue: due, checks }: State, where: Locate): readonly CheckRow[] {
  const why = (name: string) => ROAD_CHECKS.find((check) => check.name === name)?.why;
  const bad = [...checks].filter(([, check]) => !check.ok);
  return [
    ...[...due]
      .filter(([name]) => !checks.has(name))
      .map(([name, by]) => ({ name, state: 'due' as const, why: why(name), where: where(by) })),
    ...bad.map(([name, { by }]) => ({ name, state: 'bad' as const, why: why(name), where: where(by) })),
  ];
}

function recheckRows({ rechecks }: State, where: Locate): readonly NamedRow[] {
  return [...rechecks].map(([name, { after, again, by }]) => ({
    name,
    value: `${again ? 'every' : 'after'} ${valueText(after, undefined)}`,
    where: where(by),
  }));
}

function statedRows(stated: ReadonlyMap<string, Declared>, where: Locate): readonly NamedRow[] {
  return [...stated.values()].map(({ quantity, statement: said, text, by }) => ({
    name: nameWithPlace(quantity.name, said.place?.text),
    value: text ?? statementText(said, quantity.unit),
    where: where(by),
  }));
}
