/** Every rule is proved by its own examples: the bad one has its finding and no other, the good one has none. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { RULES, ruleOf } from '../../server/rules/check.ts';
import type { Rule } from '../../server/rules/rule.ts';
import { found, mended } from './found.ts';

const codesOf = (text: string): readonly string[] => found(text).map((finding) => finding.code);

describe.each(RULES.map((rule) => [rule.code, rule] as const))('%s', (code, rule) => {
  test('the bad example has this finding and no other', () => expect(codesOf(rule.bad)).toEqual([code]));
  test('the good example has none', () => expect(codesOf(rule.good)).toEqual([]));
  test('its severity is the one in the table', () =>
    expect(found(rule.bad)[0]?.severity).toBe(rule.severity));
});

/** An open quote takes the comment into the text, a line too long is not read, a marker takes all of its line, the last one is a comment itself. */
const NOT_SILENCED = ['unclosed-quote', 'merge-conflict', 'line-too-long', 'meant-unknown'];
const silenceable = RULES.filter(({ code }) => !NOT_SILENCED.includes(code));

test.each(silenceable.map((rule) => [rule.code, rule] as const))(
  '%s is silenced on its line',
  (code, rule) => {
    expect(codesOf(silenced(rule))).not.toContain(code);
  },
);

const fixable = RULES.filter(({ bad }) => found(bad).some(({ fixes }) => fixes.length > 0));

test.each(fixable.map((rule) => [rule.code, rule] as const))(
  'the fix of %s leaves nothing to find',
  (_, rule) => {
    expect(codesOf(mended(rule.bad))).toEqual([]);
  },
);

test('codes are words joined by hyphens, and each is there once', () => {
  const codes = RULES.map((rule) => rule.code);
  expect(codes.filter((code) => !/^[a-z]+(-[a-z]+)*$/.test(code))).toEqual([]);
  expect(new Set(codes).size).toBe(codes.length);
  for (const code of codes) expect(ruleOf(code)?.code).toBe(code);
  expect(ruleOf('no-such-rule')).toBeUndefined();
});

test('what a rule outranks is a rule', () =>
  expect(RULES.flatMap((rule) => rule.outranks ?? []).filter((code) => !ruleOf(code))).toEqual([]));

test('a published rule names its source', () =>
  expect(RULES.filter((rule) => rule.standing === 'published' && !rule.source)).toEqual([]));

test('the broken samples are those of the rules: a code that was given once keeps its file and is not given again', () => {
  const files = readdirSync(join(import.meta.dirname, '../../samples/broken'));
  expect(files.toSorted()).toEqual(RULES.map(({ code }) => `${code}.tappet`).toSorted());
});

/** The bad example with a comment on the line of its finding. */
function silenced({ code, bad }: Rule): string {
  const lines = bad.split('\n');
  const at = found(bad)[0]?.at ?? 0;
  return lines.map((line, i) => (i === at ? `${line} ; meant: ${code}` : line)).join('\n');
}
