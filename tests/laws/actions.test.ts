/** Law 6 for what can be done: every edit lies inside the text, those of one action never overlap, and a rewriting says the same. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { comparePositions, cutLines } from '../../grammar/index.ts';
import { type CodeAction, codeActionsAt } from '../../server/features/code-actions.ts';
import { readyLine } from '../../server/features/completion/setting-line.ts';
import { findingsIn, lineCount, lineStateAt, parsedLine } from '../../server/model/snapshot/locate.ts';
import { sameSetting } from '../../server/model/state/same-setting.ts';
import { EMPTY_STATE } from '../../server/model/state/state.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { withEdits } from '../harness/checks.ts';
import { law } from './law.ts';
import { notebook } from './notebooks.ts';

const place = fc.record({ line: fc.nat({ max: 25 }), character: fc.nat({ max: 40 }) });
const around = {
  levels: new Map(),
  units: new Map(),
  indent: 2,
  today: '2026-05-03',
  only: undefined,
  elsewhere: () => ['b.tappet'],
};

law(
  'law 6: edits of one action lie inside the text and do not overlap',
  fc.tuple(notebook, place),
  ([text, at]) => {
    const snapshot = openNotebook(text);
    for (const { title, edits } of codeActionsAt(snapshot, { start: at, end: at }, around)) {
      expect(title).not.toBe('');
      const sorted = [...edits].sort((a, b) => comparePositions(a.range.start, b.range.start));
      for (const [i, { range }] of sorted.entries()) {
        expect(comparePositions(range.start, range.end)).toBeLessThanOrEqual(0);
        expect(range.end.line).toBeLessThan(lineCount(snapshot));
        expect(range.end.character).toBeLessThanOrEqual(parsedLine(snapshot, range.end.line).text.length);
        const before = sorted[i - 1];
        if (before) expect(comparePositions(before.range.end, range.start)).toBeLessThanOrEqual(0);
      }
    }
  },
);

law(
  'writing settings out leaves them in force as they were',
  notebook,
  (text) => {
    for (const { title, edits } of rewritings(text, /^Write out/)) {
      const [old, now] = [text, withEdits(text, edits)].map(
        (each) => openNotebook(each).pages.at(-1)?.after.settings,
      );
      expect([...(now?.keys() ?? [])].sort(), title).toEqual([...(old?.keys() ?? [])].sort());
      for (const [key, setting] of old ?? []) {
        const other = now?.get(key);
        expect(other && sameSetting(setting, other), `${title} ${key}`).toBe(true);
      }
    }
  },
  0.5,
);

const step = fc.constantFrom('1', '2 1/2', '9', '0.75', '3/8', '12.3');
const size = fc.oneof(step, fc.constantFrom('40..44', '~7'));
const way = fc.constantFrom('+', '-', 'in', 'out');
const word = fc.constantFrom(
  ['initial', 'deg'],
  ['mixture', 'turns'],
  ['mixture left', 'turns'],
  ['idle jet', ''],
);

law(
  'what a change comes to is offered, and is what it came to',
  fc.tuple(word, size, fc.array(fc.tuple(way, step), { minLength: 1, maxLength: 3 })),
  ([[name, unit], start, changes]) => {
    const lines = [`${name} ${start} ${unit}`, ...changes.map(([way, by]) => `${name} ${way} ${by} ${unit}`)];
    const text = ['session 2026-05-02', ...lines].join('\n');
    const at = { line: lines.length, character: 1 };
    const snapshot = openNotebook(text);
    // Degrees are not screwed in or out: such a line is not in force, or is read as plain speech.
    const entry = lineStateAt(snapshot, at.line)?.entry;
    if (entry?.kind !== 'setting' || entry.isVoid) return;
    const [before] = snapshot.pages.at(-1)?.after.settings.values() ?? [];
    const action = codeActionsAt(snapshot, { start: at, end: at }, { ...around, only: ['refactor'] }).find(
      ({ title }) => title.startsWith('Write the result'),
    );
    if (!action) {
      // Sums that the notation has no way to write: below nought, or finer than a value is printed.
      expect(before && readyLine(EMPTY_STATE, before)).toBeUndefined();
      return;
    }
    const after = openNotebook(withEdits(text, action.edits));
    const [now] = after.pages.at(-1)?.after.settings.values() ?? [];
    expect(before && now && sameSetting(before, now)).toBe(true);
  },
);

law('a line that is said to be meant is not told of by that rule any more', notebook, (text) => {
  const snapshot = openNotebook(text);
  const [first] = snapshot.findings;
  if (!first) return;
  const at = { line: first.at, character: 0 };
  const actions = codeActionsAt(snapshot, { start: at, end: at }, { ...around, only: ['quickfix'] });
  for (const { edits, found } of actions.filter(({ title }) => title.startsWith('Silence '))) {
    const after = openNotebook(withEdits(text, edits));
    for (const { finding } of found) {
      const line = finding?.at ?? 0;
      expect(findingsIn(after, line, line + 1).map(({ code }) => code)).not.toContain(finding?.code);
    }
  }
});

law(
  'a value in another unit is of that line and nothing else',
  notebook,
  (text) => {
    const snapshot = openNotebook(text);
    for (const { edits } of rewritings(text, /^Write as/)) {
      const after = openNotebook(withEdits(text, edits));
      const line = edits[0]?.range.start.line ?? -1;
      expect(lineCount(after)).toBe(lineCount(snapshot));
      expect(lineStateAt(after, line)?.entry.kind).toBe(lineStateAt(snapshot, line)?.entry.kind);
    }
  },
  0.5,
);

test.each([/^Write out/, /^Write as/])('notebooks of these laws have something to %s', (title) => {
  const texts = fc.sample(notebook, { numRuns: 100, seed: 1 });
  expect(texts.filter((text) => rewritings(text, title).length > 0).length).toBeGreaterThan(5);
});

/** The rewritings that are offered wherever a line or a number begins. */
function rewritings(text: string, title: RegExp): readonly CodeAction[] {
  const snapshot = openNotebook(text);
  const places = cutLines(text).flatMap((each, line) =>
    [0, ...[...each.matchAll(/\d+/g)].map(({ index }) => index)].map((character) => ({ line, character })),
  );
  return places
    .flatMap((at) => codeActionsAt(snapshot, { start: at, end: at }, { ...around, only: ['refactor'] }))
    .filter((action) => title.test(action.title));
}
