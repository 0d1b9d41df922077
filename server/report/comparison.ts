/** Comparison of two moments of a notebook: settings, totals, readings under the same conditions, items opened and done. */

import {
  type Changed,
  everyChange,
  settingOrWordsText,
  stepText,
} from '../analysis/evidence/setup-changes.ts';
import type { NumberFigure } from '../analysis/figure.ts';
import { TOTAL_NAMES, totalNamed } from '../analysis/ignition/timing-totals.ts';
import { differenceText, statementText } from '../model/entry/as-written.ts';
import { type SectionRange, sessionsOf } from '../model/snapshot/section-ranges.ts';
import { carriedAfter, carriedBefore, keptBefore } from '../model/snapshot/session-state.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import type { OpenItem, State } from '../model/state/state.ts';
import { formatValue } from '../trade/measure/format.ts';
import { exact, middle } from '../trade/measure/interval.ts';

export interface Comparison {
  readonly notebook: string;
  /** `2026-05-03 Leaner`, or what else is meant. */
  readonly before: string;
  readonly after: string;
  readonly settings: readonly ComparedRow[];
  readonly totals: readonly ComparedRow[];
  readonly readings: readonly ComparedRow[];
  readonly opened: readonly string[];
  readonly done: readonly string[];
}

export interface ComparedRow {
  readonly name: string;
  /** Undefined where nothing was written before (or after). */
  readonly before: string | undefined;
  readonly after: string | undefined;
  /** `2 deg more`; undefined where the two cannot be compared. */
  readonly change: string | undefined;
}

/** Session to compare, by a line of it, and what to compare it with. */
export interface ComparisonAsked {
  /** From zero. */
  readonly line: number;
  /** `kept`: the last session above that is marked to keep; `before`: the state when it began; or a line of a session. */
  readonly against: 'kept' | 'before' | number;
}

/** Or why there is nothing to compare. Never throws. */
export function comparisonOf(
  snapshot: Snapshot,
  { line, against }: ComparisonAsked,
): Comparison | { readonly problem: string } {
  const session = sessionsOf(snapshot).findLast(({ from }) => from <= line);
  if (!session) return { problem: 'There is no session above this line.' };
  const after = { name: nameOf(session), state: carriedAfter(snapshot, session) };
  if (against === 'before') {
    const state = carriedBefore(snapshot, session);
    // Readings belong to their session: those of the session before it.
    const readings = previous(snapshot, session)?.readings;
    return compareSides({ name: 'what was before', state }, after, readings);
  }
  const other = against === 'kept' ? keptBefore(snapshot, session) : sessionAt(snapshot, against);
  if (!other) return { problem: 'No earlier session is marked "keep".' };
  const state = carriedAfter(snapshot, other);
  return compareSides({ name: nameOf(other), state }, after, state.readings);
}

interface Side {
  readonly name: string;
  readonly state: State;
}

function compareSides(before: Side, after: Side, readings: State['readings'] = new Map()): Comparison {
  const [was, is] = [before.state, after.state];
  return {
    notebook: is.notebook,
    before: before.name,
    after: after.name,
    settings: everyChange(was, is).map(settingRow),
    totals: totalRows(was, is),
    readings: readingRows(readings, is.readings),
    opened: missingIn(was.items, is.items),
    done: missingIn(is.items, was.items),
  };
}

const sessionAt = (snapshot: Snapshot, line: number): SectionRange | undefined =>
  sessionsOf(snapshot).find(({ from, to }) => from <= line && line < to);

function previous(snapshot: Snapshot, session: SectionRange): State | undefined {
  const before = sessionsOf(snapshot).findLast(({ to }) => to <= session.from);
  return before && carriedAfter(snapshot, before);
}

const nameOf = ({ date, title }: SectionRange): string =>
  [date, title].filter(Boolean).join(' ') || 'session';

function settingRow(change: Changed): ComparedRow {
  const { name, place, before, after } = change;
  return {
    name: nameWithPlace(name, place),
    before: before === undefined ? undefined : settingOrWordsText(before),
    after: after === undefined ? undefined : settingOrWordsText(after),
    change: stepText(change),
  };
}

const nameWithPlace = (name: string, place: string | undefined): string =>
  place ? `${name} ${place}` : name;

/** Those that differ. */
function totalRows(was: State, is: State): readonly ComparedRow[] {
  return TOTAL_NAMES.map((name) => totalRow(name, totalNamed(was, name), totalNamed(is, name))).filter(
    ({ before, after }) => before !== after,
  );
}

function totalRow(name: string, was: NumberFigure | undefined, is: NumberFigure | undefined): ComparedRow {
  const [before, after] = [was?.text, is?.text];
  return { name, before, after, change: was && is && stepBetween(was, is) };
}

/** By their middles; undefined where one has an open end. */
function stepBetween({ value: was }: NumberFigure, { value: is, unit }: NumberFigure): string | undefined {
  const step = middle(is) - middle(was);
  if (!Number.isFinite(step)) return undefined;
  return `${formatValue(exact(Math.abs(step)), unit)} ${step > 0 ? 'more' : 'less'}`;
}

/** The last of each kind that both sessions took. */
function readingRows(was: State['readings'], is: State['readings']): readonly ComparedRow[] {
  return [...is].flatMap(([key, { quantity, statement: said }]): ComparedRow[] => {
    const before = was.get(key)?.statement;
    if (!before) return [];
    const isOne = said.values.length === 1 && before.values.length === 1;
    return [
      {
        name: nameWithPlace(quantity.name, said.place?.text),
        before: statementText(before, quantity.unit),
        after: statementText(said, quantity.unit),
        change: isOne ? differenceText(before.values[0], said.values[0], quantity.unit) : undefined,
      },
    ];
  });
}

const missingIn = (
  there: ReadonlyMap<string, OpenItem>,
  here: ReadonlyMap<string, OpenItem>,
): readonly string[] =>
  [...here].filter(([id]) => !there.has(id)).map(([id, { word, text }]) => `${word} ${id}: ${text}`);
