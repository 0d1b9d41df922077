import { replaceWith, rule } from './rule.ts';

export const unknownFlag = rule({
  code: 'unknown-flag',
  severity: 'warning',
  title: 'A mark in brackets that is not known',
  why: 'Only [safety] is known: a fault so marked stands in the way of a road run until it is done. Any other mark does nothing, a misspelt one too.',
  standing: 'notation',
  good: 'session 2026-05-02\n  fault steering: binds hard over [safety]\n',
  bad: 'session 2026-05-02\n  fault steering: binds hard over [saftey]\n',
  on: ['item'],
  check: ({ flags }) =>
    flags
      .filter(({ text }) => text !== 'safety')
      .map(({ text, span }) => ({
        span,
        message: `[${text}] does nothing: the one mark that is known is [safety].`,
        fixes: /^s[afety]{3,6}$/.test(text) ? [replaceWith(span, '[safety]')] : [],
      })),
});
