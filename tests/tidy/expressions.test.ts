/** No expression of the program takes long over any text: each is given texts made to delay it. */
import { expect, test } from 'vitest';
import { expressionsIn, slowOn } from './expressions.ts';
import { projectFiles } from './files.ts';

const LEXER = 'grammar/lexer.ts';
const found = [...projectFiles()]
  .filter(([path]) => /^(?:grammar|server)\/.*\.ts$/.test(path))
  .flatMap(([path, text]) => expressionsIn(path, text));

/** The lexer tries its patterns at one place only. */
const asApplied = (at: string, { source, flags }: RegExp): RegExp =>
  new RegExp(source, at.startsWith(LEXER) ? 'iuy' : flags);

test.each(found.map(({ at, expression }) => [at, expression] as const))('%s %s', (at, expression) =>
  expect(slowOn(asApplied(at, expression))).toBeUndefined(),
);

test('all are found', () => expect(found.length).toBeGreaterThan(180));

test.each<readonly [slow: RegExp]>([
  [/\s+$/],
  [/^\s*x?\s*y/],
  [/(a+)+b/],
  [/^(.*?)[([{]\s*([^)\]}]*?)\s*[)\]}]\s*$/],
  [/\bscrews?\b.*\bnothing\b/],
])('%s is slow', (slow) => expect(slowOn(slow)).toBeDefined());

test.each<readonly [text: string, sources: readonly string[]]>([
  ['const a = /b+/g.exec(c);', ['b+']],
  ['a / b / c', []],
  ["'/a/' // /b/\n/* /c/ */ `d / e`", []],
  ['f(/[/]\\/"/, x => /y/u.test(x))', ['[/]\\/"', 'y']],
  ['return /a/.test(b) ? /c/ : d[0] / 2', ['a', 'c']],
])('in %s', (text, sources) =>
  expect(expressionsIn('x.ts', text).map(({ expression }) => expression.source)).toEqual(sources),
);
