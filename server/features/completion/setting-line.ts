/** A setting in force as a line that would set it again. */
import { parseLine } from '../../../grammar/index.ts';
import { unaccounted } from '../../model/entry/every-word-counts.ts';
import { readEntry } from '../../model/entry/read-entry.ts';
import { parsedLine } from '../../model/snapshot/locate.ts';
import type { Snapshot } from '../../model/snapshot/snapshot.ts';
import { applySetting } from '../../model/state/apply-setting.ts';
import { sameSetting } from '../../model/state/same-setting.ts';
import { settingText } from '../../model/state/setting-text.ts';
import type { SettingInForce, State } from '../../model/state/state.ts';

export interface ReadyLine {
  /** With its place. */
  readonly name: string;
  readonly value: string;
}

/** Undefined where the line would not give exactly the value in force: after changes from an unknown start, or rounded. */
export function readyLine(state: State, setting: SettingInForce): ReadyLine | undefined {
  if (!setting.base) return undefined;
  const { quantity, place, text } = setting;
  const name = [quantity.name, place].filter(Boolean).join(' ');
  const written = text === undefined ? settingText(setting) : `"${text}"`;
  // A minus alone would be a change.
  const value = written.startsWith('-') ? `at ${written}` : written;
  return value !== '' && readsAs(`${name} ${value}`, state, setting) ? { name, value } : undefined;
}

function readsAs(text: string, state: State, setting: SettingInForce): boolean {
  const entry = readEntry(parseLine(text), state);
  const [said] = 'statements' in entry ? entry.statements : [];
  if (entry.kind !== 'setting' || !said || entry.statements.length > 1) return false;
  if (unaccounted(entry, 'session').length > 0) return false;
  const [again] = applySetting(new Map(), entry, said, setting.by).values();
  return again !== undefined && again.place === setting.place && sameSetting(again, setting);
}

const LINES_LOOKED_AT = 20;
/** A name, two spaces or more, a value. */
const COLUMNS = /^\s*\p{L}\S*(?: \S+)*\s{2,}(?=\S)/u;
/** Lines that have something else after the gap. */
const OTHER = /^\s*(?:session|notebook|note|todo|fault|done|check|photo|log|use|keep|trial)\b/i;

/** The column that values begin in on the lines just above; 0 where they have none. */
export function valueColumn(snapshot: Snapshot, line: number): number {
  for (let at = line - 1; at >= Math.max(0, line - LINES_LOOKED_AT); at--) {
    const { text } = parsedLine(snapshot, at);
    const columns = OTHER.test(text) ? undefined : COLUMNS.exec(text)?.[0].length;
    if (columns !== undefined) return columns;
  }
  return 0;
}
