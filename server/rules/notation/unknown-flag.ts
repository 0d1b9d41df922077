import { replaceWith, rule } from '../rule.ts';

export const unknownFlag = rule({
  code: 'unknown-flag',
  severity: 'warning',
  title: 'An unknown mark in brackets',
  why: 'The only mark is [safety]: a fault with it should be fixed before a road run. Any other mark has no effect, a misspelt one included.',
  standing: 'notation',
  good: 'session 2026-05-02\n  fault steering: binds hard over [safety]\n',
  bad: 'session 2026-05-02\n  fault steering: binds hard over [saftey]\n',
  on: ['item'],
  check: ({ flags }) =>
    flags
      .filter(({ text }) => text !== 'safety')
      .map(({ text, span }) => ({
        span,
        message: `[${text}] has no effect. ${isLikeSafety(text) ? 'Did you mean [safety]?' : 'The only mark is [safety].'}`,
        fixes: isLikeSafety(text) ? [replaceWith(span, '[safety]')] : [],
      })),
});

const isLikeSafety = (text: string): boolean => /^s[afety]{3,6}$/.test(text);
