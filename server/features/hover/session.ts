/** Hover of a session in three lines: changed, read, open. */

import { causeText } from '../../analysis/evidence/effects.ts';
import {
  type Changed,
  everyChange,
  settingOrWordsText,
  stepText,
} from '../../analysis/evidence/setup-changes.ts';
import { sessionsOf } from '../../model/snapshot/section-ranges.ts';
import { carriedAfter, carriedBefore } from '../../model/snapshot/session-state.ts';
import { plain, stacked } from '../markdown.ts';
import type { HoverQuestion } from './question.ts';

const MOST_NAMED = 8;

/** Markdown; empty where the cursor's line is no head of a session. */
export function sessionText({ snapshot, line }: HoverQuestion): string {
  const session = sessionsOf(snapshot).find(({ from }) => from === line);
  if (!session) return '';
  const [before, after] = [carriedBefore(snapshot, session), carriedAfter(snapshot, session)];
  const changes = everyChange(before, after);
  const changed = changes.filter((change) => change.before !== undefined).map(changeLine);
  const written = changes.filter((change) => change.before === undefined).map(causeText);
  const read = [...new Set([...after.readings.values()].map(({ quantity }) => quantity.name))];
  const open = [...after.items].map(([id, { word, safety }]) => `${word} ${id}${safety ? ' [safety]' : ''}`);
  return stacked([
    ...listed('Changed', changed),
    ...listed('First written', written),
    ...listed('Read', read),
    ...listed('Open', open),
  ]);
}

/** `initial 10 deg (2 deg more)` */
function changeLine(change: Changed): string {
  const { after } = change;
  const step = stepText(change);
  return `${causeText(change)} ${after === undefined ? 'off' : settingOrWordsText(after)}${step ? ` (${step})` : ''}`;
}

function listed(title: string, names: readonly string[]): readonly string[] {
  if (names.length === 0) return [];
  const left = names.length - MOST_NAMED;
  const shown = names.slice(0, left > 1 ? MOST_NAMED : names.length).join(', ');
  return [plain(`${title}: ${shown}${left > 1 ? ` and ${left} more` : ''}`)];
}
