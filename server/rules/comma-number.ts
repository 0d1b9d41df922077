import { KIND, tokenSpan, tokenText } from '../../grammar/index.ts';
import { EVERY_KIND } from './kinds.ts';
import { replaceWith, rule } from './rule.ts';
import { tokensOf } from './syntax.ts';

export const commaNumber = rule({
  code: 'comma-number',
  severity: 'error',
  title: 'A comma inside a number',
  why: 'A comma parts two values, so inside a number it could mean a decimal point, thousands, or a list. The number is not used until that is plain.',
  standing: 'notation',
  good: 'session 2026-05-02\n  mixture 1.5 turns\n',
  bad: 'session 2026-05-02\n  mixture 1,5 turns\n',
  outranks: ['unreadable', 'list-length'],
  on: EVERY_KIND,
  formed: ({ kinds }) => kinds.includes(KIND.CommaNumber),
  check: ({ line }) =>
    tokensOf(line, KIND.CommaNumber).map((token) => {
      const span = tokenSpan(line, token);
      const text = tokenText(line, token);
      const point = decimal(text);
      return {
        span,
        message: point
          ? `Decimal comma in ${text}: write ${point}. A comma parts two values.`
          : `${text} may be one number or several: write ${text.replaceAll(',', '')} for one, ${text.replaceAll(',', ' ')} for several.`,
        fixes: point ? [replaceWith(span, point)] : [],
      };
    }),
});

/** With a point, where the comma can be nothing but a decimal one: three figures after it could be thousands. */
function decimal(text: string): string | undefined {
  const parts = text.split(',');
  const after = parts[1] ?? '';
  if (parts.length !== 2 || after.includes('.')) return undefined;
  return after.length === 3 && !/^0+$/.test(parts[0] ?? '') ? undefined : parts.join('.');
}
