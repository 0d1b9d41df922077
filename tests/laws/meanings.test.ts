/** Laws of the colouring by meaning: tokens in order, inside their lines, and the same by steps as at once. */
import fc from 'fast-check';
import { expect } from 'vitest';
import { semanticTokens } from '../../server/features/semantic-tokens.ts';
import { editsBetween, encoded, encodedAll, LEGEND } from '../../server/lsp/semantic.ts';
import { lineCount, parsedLine } from '../../server/model/snapshot/locate.ts';
import { edit } from '../../server/model/snapshot/snapshot.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { law } from './law.ts';
import { changeIn, notebook } from './notebooks.ts';

law('law 6: what has a meaning lies inside its line, in order, and nothing overlaps', notebook, (text) => {
  const snapshot = openNotebook(text);
  let [line, end] = [0, 0];
  for (const { line: at, span } of semanticTokens(snapshot)) {
    if (at > line) [line, end] = [at, 0];
    expect(at).toBe(line);
    expect(span.from).toBeGreaterThanOrEqual(end);
    expect(span.to).toBeGreaterThan(span.from);
    expect(span.to).toBeLessThanOrEqual(parsedLine(snapshot, at).text.length);
    end = span.to;
  }
});

const edited = notebook.chain((text) =>
  fc.tuple(fc.constant(text), fc.array(changeIn(text), { minLength: 1, maxLength: 3 })),
);

law('meanings told as changes are the meanings told at once', edited, ([text, changes]) => {
  let snapshot = openNotebook(text);
  let told = encodedAll(snapshot);
  for (const change of changes) {
    snapshot = edit(snapshot, change);
    const data = encodedAll(snapshot);
    expect(data).toEqual(encoded(semanticTokens(snapshot)));
    for (const { start, deleteCount, data: put = [] } of editsBetween(told, data))
      told = told.toSpliced(start, deleteCount, ...put);
    expect(told).toEqual(data);
  }
});

law(
  'meanings of some lines are those of all that stand there',
  fc.tuple(notebook, fc.nat({ max: 25 })),
  ([text, from]) => {
    const snapshot = openNotebook(text);
    const to = Math.min(from + 4, lineCount(snapshot));
    const all = [...semanticTokens(snapshot)].filter(({ line }) => line >= from && line < to);
    expect([...semanticTokens(snapshot, from, to)]).toEqual(all);
    for (let i = 3; i < encoded(all).length; i += 5)
      expect(LEGEND.tokenTypes[encoded(all)[i] as number]).toBeDefined();
  },
);
