/** The specification: every example in it is run, and its grammar names what the parser has. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { isEmpty, KIND } from '../../grammar/index.ts';
import { linesBetween } from '../../server/model/snapshot/locate.ts';
import { openNotebook } from '../../server/rules/check.ts';

const file = (name: string) => readFileSync(join(import.meta.dirname, '../../grammar', name), 'utf8');
const SPECIFICATION = file('NOTATION.md');
const PARSER = file('parser.ts') + file('value-parser.ts');

const blocks = (fence: string): readonly (readonly [info: string, text: string])[] =>
  [...SPECIFICATION.matchAll(/^```(\S+)(.*)\n([\s\S]*?)^```$/gm)]
    .filter(([, language]) => language === fence)
    .map(([, , info, text]) => [(info as string).trim(), text as string]);

const examples = blocks('tappet');
const codesOf = (text: string) => openNotebook(text).findings.map(({ code }) => code);

describe('examples', () => {
  test.each(examples.filter(([info]) => info === ''))('%s%s', (_, text) => {
    for (const { entry } of linesBetween(openNotebook(text))) {
      expect(entry.kind).not.toBe('unknown');
      expect(isEmpty(entry.line.syntax.stray)).toBe(true);
    }
    const told = openNotebook(text).findings.filter(({ severity }) => /error|warning/.test(severity));
    expect(told.map(({ code, message }) => `${code}: ${message}`)).toEqual([]);
  });

  test.each(examples.filter(([info]) => info !== ''))('%s: %s', (info, text) => {
    expect([...new Set(codesOf(text))]).toEqual([info.replace('broken ', '')]);
  });
});

/** Names on the left of `=` in a grammar. */
const namesIn = (grammar: string) => [...grammar.matchAll(/^(\w+) *=/gm)].map(([, name]) => name as string);
const [lines, tokens] = blocks('ebnf').map(([, text]) => text) as [string, string];

test('the grammar has the rules of the parser', () => {
  const rules = [...PARSER.matchAll(/this\.RULE\(\s*'(\w+)'/g)].map(([, name]) => name as string);
  expect(namesIn(lines).sort()).toEqual(rules.sort());
});

test('each rule of the grammar uses the tokens that the parser consumes there', () => {
  for (const piece of PARSER.split('this.RULE(').slice(1)) {
    const name = /\w+/.exec(piece)?.[0] as string;
    const written = lines.match(new RegExp(`^${name} +=([\\s\\S]*?) ;`, 'm'))?.[1] ?? '';
    for (const [, token] of piece.matchAll(/CONSUME\d?\(T?\.?(\w+)\)/g))
      expect(written.split(/\W+/), name).toContain(token);
  }
});

test('the tokens are those of the lexer', () => {
  const byWord =
    /^(Prose|Notebook|Section|Session|Fit|Note|Item|Check|File|Keep|Revert|Trial|Want|Recheck|To|After|Blank)$/;
  expect(namesIn(tokens).sort()).toEqual(
    Object.keys(KIND)
      .filter((name) => !byWord.test(name))
      .sort(),
  );
});
