/** Every rule has a page that says what a reader needs. */
import { describe, expect, test } from 'vitest';
import { RULES, ruleOf } from '../../server/rules/index.ts';
import { pageOf } from '../../server/rules/pages.ts';
import type { Rule } from '../../server/rules/rule.ts';

describe.each(RULES.map((rule) => [rule.code, rule] as const))('%s', (code, rule) => {
  const page = pageOf(rule);
  test('says what and why', () => {
    expect(page).toContain(`# ${rule.title}`);
    expect(page).toContain(rule.why);
  });
  test('shows both examples', () => {
    const lines = [rule.good, rule.bad].flatMap((example) => example.trimEnd().split('\n'));
    const shown = (line: string) =>
      line.length > 120 ? page.includes(line.slice(0, 100)) : page.includes(line);
    expect(lines.filter((line) => !shown(line))).toEqual([]);
  });
  test('tells how to silence it', () => expect(page).toContain(`; meant: ${code}`));
  test('says how far it may be leaned on', () =>
    expect(page).toMatch(/leaned on:\*\* (?:it follows from how|published, \w|from memory|common practice)/));
  if (rule.source) test('names its source', () => expect(page).toContain(rule.source));
});

test('a page reads well', () =>
  expect(pageOf(ruleOf('not-a-day') as Rule)).toBe(`# Not a day of the calendar

\`not-a-day\`, an error: the line, or a part of it, cannot be read

A day is written year-month-day with two figures for month and day, so that it means the same everywhere and sorts by itself.

**How far it may be leaned on:** published, ISO 8601.

## Found here

\`\`\`tappet
session 2026-5-2
  initial 9 deg
\`\`\`

## Nothing found here

\`\`\`tappet
session 2026-05-02
  initial 9 deg
\`\`\`

## When the line is as it should be

Write \`; meant: not-a-day\` at the end of the line. Several codes are parted by commas. In the editor the setting \`tappet.severity\` makes the rule louder, quieter or silent in all notebooks.`));
