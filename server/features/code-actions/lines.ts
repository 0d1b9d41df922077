/** Actions that insert lines: the settings in force at the start of a session, and `done` for an open item. */

import { linesBetween, lineText } from '../../model/snapshot/locate.ts';
import { type SectionRange, sessionsOf } from '../../model/snapshot/section-ranges.ts';
import type { Change, Snapshot } from '../../model/snapshot/snapshot.ts';
import type { State } from '../../model/state/state.ts';
import { type ReadyLine, readyLine } from '../completion/setting-line.ts';
import { breakOf, newSession } from '../new-session.ts';
import { type ActionAround, type CodeAction, type Place, rewriting } from './action.ts';

const NAME_COLUMN = 15;
const GAP = 2;

/** On the head of a session: all settings in force as its first lines, but those that it gives itself. */
export function settingsWritten(
  { snapshot, reading, line }: Place,
  { indent }: ActionAround,
): readonly CodeAction[] {
  if (reading.entry.kind !== 'session') return [];
  const lines = linesInForce(reading.after, settingsGiven(snapshot, line));
  if (lines.length === 0) return [];
  const widest = Math.max(NAME_COLUMN, ...lines.map(({ name }) => name.length)) + GAP;
  const texts = lines.map(({ name, value }) => ' '.repeat(indent) + name.padEnd(widest) + value);
  const title = `Write out the ${lines.length === 1 ? 'setting' : `${lines.length} settings`} in force`;
  return [rewriting(title, [below(snapshot, line, texts)])];
}

/** A value for no place replaces those of all places, so it is written only where each of those is written below it. */
function linesInForce(state: State, given: ReadonlySet<string>): readonly ReadyLine[] {
  const settings = [...state.settings];
  const rows = settings.map(([key, setting]) => ({
    setting,
    ready: given.has(key) ? undefined : readyLine(state, setting),
  }));
  const partly = new Set(
    rows.flatMap(({ setting, ready }) => (setting.place && !ready ? [setting.quantity] : [])),
  );
  return rows.flatMap(({ setting, ready }) =>
    ready && (setting.place || !partly.has(setting.quantity)) ? [ready] : [],
  );
}

/** By `name|place`. */
function settingsGiven(snapshot: Snapshot, line: number): ReadonlySet<string> {
  const session = sessionsOf(snapshot).find(({ from }) => from === line);
  const given = new Set<string>();
  for (const { after, where } of linesBetween(snapshot, line + 1, session?.to ?? line + 1))
    for (const [key, { by }] of after.settings) if (by.ref === where.ref) given.add(key);
  return given;
}

/** On a todo or fault that is still open at the end: a line `done` in the session of today, which is begun if there is none. */
export function doneToday(
  { snapshot, reading }: Place,
  { today, indent }: ActionAround,
): readonly CodeAction[] {
  const { entry, where } = reading;
  if (entry.kind !== 'item' || entry.word === 'done' || entry.id === '') return [];
  if (lastState(snapshot)?.items.get(entry.id)?.by.ref.line !== where.ref.line) return [];
  const done = `done ${entry.id}`;
  const session = sessionsOf(snapshot).at(-1);
  const isToday = session?.date !== undefined && session.date >= today;
  const edit = isToday
    ? below(snapshot, lastLine(snapshot, session), [' '.repeat(indent) + done])
    : begun(snapshot, today, done);
  return [rewriting(`Mark ${entry.id} done ${isToday ? `on ${session.date}` : 'today'}`, [edit])];
}

const lastState = ({ pages }: Snapshot): State | undefined => pages.at(-1)?.after;

function begun(snapshot: Snapshot, today: string, done: string): Change {
  const { range, text } = newSession(snapshot, { today, title: '' });
  return { range, text: text + done + breakOf(snapshot) };
}

/** Its last line that is not blank. */
function lastLine(snapshot: Snapshot, { from, to }: SectionRange): number {
  let line = to - 1;
  while (line > from && lineText(snapshot, line).trim() === '') line--;
  return line;
}

function below(snapshot: Snapshot, line: number, texts: readonly string[]): Change {
  const end = { line, character: lineText(snapshot, line).length };
  return { range: { start: end, end }, text: texts.map((text) => breakOf(snapshot) + text).join('') };
}
