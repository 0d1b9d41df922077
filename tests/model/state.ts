/** What stands at the end of a notebook, as texts. */

import type { Origin } from '../../server/model/entry/entry.ts';
import { lineCount, lineOf, lineStateAt } from '../../server/model/snapshot/locate.ts';
import { open, type Snapshot } from '../../server/model/snapshot/snapshot.ts';
import { settingText } from '../../server/model/state/setting-text.ts';
import type { State } from '../../server/model/state/state.ts';

export interface End {
  readonly state: State;
  /** The line of an origin, as text: what a person would find there. */
  readonly textAt: (origin: Origin) => string;
}

export function endOf(text: string): End {
  const snapshot = open(text, () => []);
  return { state: lastCarried(snapshot), textAt: ({ ref }) => textOfLine(snapshot, lineOf(snapshot, ref)) };
}

/** Settings in force, `name place: value`, in order of their names. */
export const settingsIn = ({ settings }: State): readonly string[] =>
  [...settings]
    .map(([key, setting]) => `${key.replace('|', ' ').trim()}: ${settingText(setting)}`)
    .sort((a, b) => (a < b ? -1 : 1));

const lastCarried = (snapshot: Snapshot): State =>
  (lineStateAt(snapshot, lineCount(snapshot) - 1) as NonNullable<ReturnType<typeof lineStateAt>>).after;

function textOfLine(snapshot: Snapshot, line: number | undefined): string {
  return (line === undefined ? undefined : lineStateAt(snapshot, line))?.entry.line.text.trim() ?? 'gone';
}
