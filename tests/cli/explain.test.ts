/** The pages of the rules in the terminal. */
import { expect, test } from 'vitest';
import { RULES, ruleOf } from '../../server/rules/check.ts';
import { pageOf } from '../../server/rules/pages.ts';
import type { Rule } from '../../server/rules/rule.ts';
import { ran } from './terminal.ts';

test('the page is the one that the editor shows', () =>
  expect(ran('explain idle-swapped').out).toBe(`${pageOf(ruleOf('idle-swapped') as Rule)}\n`));

test('without a code every rule has its line', () => {
  const lines = ran('explain').out.trimEnd().split('\n');
  expect(lines.map((line) => line.split(' ')[0])).toEqual(RULES.map(({ code }) => code));
  expect(lines.map((line) => line.replace(/^\S+ {2,}/, ''))).toEqual(RULES.map(({ title }) => title));
});

test('a code that there is not names the nearest', () =>
  expect(ran('explain idle-swaped')).toMatchObject({
    code: 2,
    out: '',
    err: 'tappet: no rule "idle-swaped". Did you mean idle-swapped? "tappet explain" lists all rules.\n',
  }));

test('a page fits the window', () => {
  const { out } = ran('explain total-over-limit', {}, { columns: 60 });
  expect(out.split('\n').filter((line) => line.length > 60)).toEqual([]);
});
