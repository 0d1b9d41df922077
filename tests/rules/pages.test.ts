/** Every rule has a page that says what a reader needs. */
import { describe, expect, test } from 'vitest';
import { RULES, ruleOf } from '../../server/rules/check.ts';
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
  test('says how to silence it', () => expect(page).toContain(`; meant: ${code}`));
  test('says how reliable it is', () =>
    expect(page).toMatch(
      /reliable it is:\*\* (?:it follows from the notation|published, \w|from memory|common practice)/,
    ));
  if (rule.source) test('names its source', () => expect(page).toContain(rule.source));
});

test('a page reads well', () =>
  expect(pageOf(ruleOf('not-a-day') as Rule)).toBe(`# Not a valid date

\`not-a-day\`, an error: all or part of the line cannot be read

A date is written year-month-day with two digits each for month and day, so that it means the same everywhere and sorts by itself.

**How reliable it is:** published, ISO 8601.

## Reported here

\`\`\`tappet
session 2026-5-2
  initial 9 deg
\`\`\`

## Not reported here

\`\`\`tappet
session 2026-05-02
  initial 9 deg
\`\`\`

## When the line is right as it is

Write \`; meant: not-a-day\` at the end of the line; separate several codes with commas. In the editor, the setting \`tappet.severity\` changes the severity of the rule in all notebooks, or turns it off.`));
