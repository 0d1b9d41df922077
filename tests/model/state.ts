/** What stands at the end of a notebook, as texts. */

import type { Origin } from '../../server/model/entry/entry.ts';
import { lineCount, lineOf, readingAt } from '../../server/model/snapshot/locate.ts';
import { open, type Snapshot } from '../../server/model/snapshot/snapshot.ts';
import { settingText } from '../../server/model/state/setting-text.ts';
import type { Carried } from '../../server/model/state/state.ts';

export interface End {
  readonly carried: Carried;
  /** The line of an origin, as text: what a person would find there. */
  readonly textAt: (origin: Origin) => string;
}

export function endOf(text: string): End {
  const snapshot = open(text, () => []);
  return { carried: lastCarried(snapshot), textAt: ({ ref }) => textOfLine(snapshot, lineOf(snapshot, ref)) };
}

/** Settings in force, `name place: value`, in order of their names. */
export const settingsIn = ({ settings }: Carried): readonly string[] =>
  [...settings]
    .map(([key, setting]) => `${key.replace('|', ' ').trim()}: ${settingText(setting)}`)
    .sort((a, b) => (a < b ? -1 : 1));

const lastCarried = (snapshot: Snapshot): Carried =>
  (readingAt(snapshot, lineCount(snapshot) - 1) as NonNullable<ReturnType<typeof readingAt>>).after;

function textOfLine(snapshot: Snapshot, line: number | undefined): string {
  return (line === undefined ? undefined : readingAt(snapshot, line))?.entry.line.text.trim() ?? 'gone';
}
