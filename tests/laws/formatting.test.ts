/** Law 7: what formatting may do. */
import fc from 'fast-check';
import { expect } from 'vitest';
import { cutLines, everyToken, isEmpty, KIND, parseLine } from '../../grammar/index.ts';
import { DEFAULT_STYLE, type FormatStyle, formatEdits } from '../../server/features/formatting.ts';
import { linesBetween } from '../../server/model/snapshot/locate.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { withEdits } from '../harness/checks.ts';
import { law } from './law.ts';
import { conflicted, longNotebook, notebook } from './notebooks.ts';

const style = fc.record<FormatStyle>({
  indent: fc.nat({ max: 8 }),
  unitSpelling: fc.constantFrom('as written', 'table'),
});
const lines = fc.nat({ max: 25 });
const anyRange = fc.tuple(lines, lines).map(([a, b]) => ({
  start: { line: Math.min(a, b), character: 0 },
  end: { line: Math.max(a, b), character: 1 },
}));

const formatted = (text: string, style: FormatStyle, range?: Parameters<typeof formatEdits>[2]): string =>
  withEdits(text, formatEdits(openNotebook(text), style, range));

const written = (style: FormatStyle): FormatStyle => ({ ...style, unitSpelling: 'as written' });
const tokens = (text: string) =>
  [...everyToken(text)].filter(({ kind }) => kind !== KIND.Blank).map(({ kind, text }) => kind + text);
const breaks = (text: string) => cutLines(text).map((line) => /[\r\n]*$/.exec(line)?.[0]);

law('law 7: formatting keeps tokens and line breaks', fc.tuple(notebook, style), ([text, style]) => {
  const after = formatted(text, written(style));
  expect(cutLines(after).map(tokens)).toEqual(cutLines(text).map(tokens));
  expect(breaks(after)).toEqual(breaks(text));
});

law('law 7: formatting twice is formatting once', fc.tuple(notebook, style), ([text, style]) => {
  const once = formatted(text, style);
  expect(formatted(once, style)).toBe(once);
});

law('law 7: and with a merge that was not finished', fc.tuple(conflicted, style), ([text, style]) => {
  const once = formatted(text, style);
  expect(formatted(once, style)).toBe(once);
  const [before, after] = [cutLines(text), cutLines(once)];
  for (const { entry, at } of linesBetween(openNotebook(text)))
    if (entry.kind === 'conflict') expect(after[at]).toBe(before[at]);
});

law('law 7: and of a range', fc.tuple(notebook, style, anyRange), ([text, style, range]) => {
  const once = formatted(text, style, range);
  expect(formatted(once, style, range)).toBe(once);
  const [before, after] = [cutLines(text), cutLines(once)];
  before.forEach((line, i) => {
    if (i < range.start.line || i > range.end.line) expect(after[i]).toBe(line);
  });
});

law(
  'law 7: and in sections longer than a page',
  longNotebook,
  (text) => {
    const once = formatted(text, DEFAULT_STYLE);
    expect(formatted(once, DEFAULT_STYLE)).toBe(once);
  },
  0.1,
);

law('law 7: a broken line stays as it stands', fc.tuple(notebook, style), ([text, style]) => {
  const after = cutLines(formatted(text, style));
  for (const [i, line] of cutLines(text).entries()) {
    const { syntax, tokens } = parseLine(line.replace(/[\r\n]+$/, ''));
    if (!isEmpty(syntax.stray) || tokens.kinds.includes(KIND.Unknown)) expect(after[i]).toBe(line);
  }
});

law(
  'law 7: what a notebook says, and what is found in it, stays',
  fc.tuple(notebook, style),
  ([text, style]) => {
    const said = (text: string) => [...linesBetween(openNotebook(text))].map(({ entry }) => entry.kind);
    const found = (text: string) => openNotebook(text).findings.map(({ at, code }) => `${at} ${code}`);
    const after = formatted(text, style);
    expect(said(after)).toEqual(said(text));
    expect(found(after)).toEqual(found(text));
  },
);
