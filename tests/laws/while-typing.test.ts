/** Laws of what helps in writing: nothing throws, every edit lies inside its line, and an edited notebook answers as one opened. */
import fc from 'fast-check';
import { expect } from 'vitest';
import { lensesOf } from '../../server/features/code-lens.ts';
import { folderWanted, suggestionsAt } from '../../server/features/completion.ts';
import { hintsOf } from '../../server/features/inlay-hints.ts';
import { newSession } from '../../server/features/new-session.ts';
import { lineCount, parsedLine, textOf } from '../../server/model/snapshot/locate.ts';
import { sessionsOf } from '../../server/model/snapshot/section-ranges.ts';
import { edit, type Snapshot } from '../../server/model/snapshot/snapshot.ts';
import { comparisonOf } from '../../server/report/comparison.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { law } from './law.ts';
import { changeIn, notebook } from './notebooks.ts';

const AROUND = { today: '2026-07-01', folder: [{ name: 'run.csv', isFolder: false }] };
const HINTS = { kinds: new Set(['total', 'change', 'unit'] as const), units: new Map() };

const placed = fc.tuple(notebook, fc.nat({ max: 30 }), fc.nat({ max: 40 }));

const squashed = (text: string): string => text.toLowerCase().replaceAll(/[\s-]/g, '');

law(
  'law 6: a suggestion begins with what is typed, and replaces columns of its line up to the cursor or past it',
  placed,
  ([text, line, character]) => {
    const snapshot = openNotebook(text);
    const length = line < lineCount(snapshot) ? parsedLine(snapshot, line).text.length : 0;
    expect(folderWanted(snapshot, { line, character })).toSatisfy(
      (parts: unknown) => parts === undefined || Array.isArray(parts),
    );
    const written = line < lineCount(snapshot) ? parsedLine(snapshot, line).text : '';
    for (const { range, label, text, foundBy = label } of suggestionsAt(
      snapshot,
      { line, character },
      AROUND,
    )) {
      expect(label).not.toBe('');
      const typed = written.slice(range.start.character, character);
      expect(text).not.toBe(typed);
      expect(squashed(foundBy).startsWith(squashed(typed)), `${foundBy} after ${typed}`).toBe(true);
      expect([range.start.line, range.end.line]).toEqual([line, line]);
      expect(range.start.character).toBeGreaterThanOrEqual(0);
      expect(range.start.character).toBeLessThanOrEqual(character);
      expect(range.end.character).toBeGreaterThanOrEqual(character);
      expect(range.end.character).toBeLessThanOrEqual(length);
    }
  },
);

/** What is said of a notebook, without the ids that differ with how it came about. */
const answers = (snapshot: Snapshot) => ({
  hints: hintsOf(snapshot, 0, lineCount(snapshot), HINTS),
  lenses: [...lensesOf(snapshot)],
  comparisons: sessionsOf(snapshot).map(({ from }) =>
    comparisonOf(snapshot, { line: from, against: 'before' }),
  ),
  suggestions: suggestionsAt(snapshot, { line: lineCount(snapshot) - 1, character: 0 }, AROUND),
});

const edited = notebook.chain((text) => fc.tuple(fc.constant(text), changeIn(text)));

law(
  'law 5: an edited notebook is hinted, summed up, compared and completed as one opened',
  edited,
  ([text, change]) => {
    const after = edit(openNotebook(text), change);
    expect(answers(after)).toEqual(answers(openNotebook(textOf(after))));
  },
  0.3,
);

law('law 6: hints stand in their lines', notebook, (text) => {
  const snapshot = openNotebook(text);
  for (const { position, text } of hintsOf(snapshot, 0, lineCount(snapshot), HINTS)) {
    expect(text).not.toBe('');
    expect(position.character).toBeLessThanOrEqual(parsedLine(snapshot, position.line).text.length);
  }
});

law('a session that is started is the last one, and the text above it stays', notebook, (text) => {
  const snapshot = openNotebook(text);
  const { cursor, ...change } = newSession(snapshot, { today: '2026-07-01', title: 'x' });
  const after = edit(snapshot, change);
  expect(sessionsOf(after).at(-1)).toMatchObject({ date: '2026-07-01', title: 'x' });
  expect(textOf(after).startsWith(text.trimEnd())).toBe(true);
  expect(cursor.line).toBe(lineCount(after) - 1);
});
