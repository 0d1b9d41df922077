/** Completion in tests: a notebook with its cursor in, the list or the line after a choice out. */
import { type Around, type Suggestion, suggestionsAt } from '../../server/features/completion.ts';
import { textOf } from '../../server/model/snapshot/locate.ts';
import { edit, type Snapshot } from '../../server/model/snapshot/snapshot.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { fixture } from './fixture.ts';

export const TODAY = '2026-07-01';

interface Asked {
  readonly snapshot: Snapshot;
  readonly suggestions: readonly Suggestion[];
  readonly line: number;
}

function ask(marked: string, around: Partial<Around>): Asked {
  const { text, cursor } = fixture(marked);
  if (!cursor) throw new Error('no ‸ in the notebook');
  const snapshot = openNotebook(text);
  const suggestions = suggestionsAt(snapshot, cursor, { today: TODAY, ...around });
  return { snapshot, suggestions, line: cursor.line };
}

/** What an editor would list, each as `label | detail`. */
export const listed = (marked: string, around: Partial<Around> = {}): readonly string[] =>
  ask(marked, around).suggestions.map(({ label, detail }) => (detail ? `${label} | ${detail}` : label));

/** The text from the line of the cursor on, after the first suggestion of a label is taken. */
export function taken(marked: string, label: string, around: Partial<Around> = {}): string {
  const { snapshot, suggestions, line } = ask(marked, around);
  const chosen = suggestions.find((each) => each.label === label);
  if (!chosen) throw new Error(`no "${label}" among ${suggestions.map((each) => each.label).join(', ')}`);
  const after = textOf(edit(snapshot, { range: chosen.range, text: chosen.text }));
  return after.split('\n').slice(line).join('\n');
}
