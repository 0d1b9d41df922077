import { KIND, type Span, tokenSpan, tokenText } from '../../grammar/index.ts';
import type { Entry } from '../model/notebook.ts';
import { EVERY_KIND } from './kinds.ts';
import { type Problem, replaceWith, rule } from './rule.ts';
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
  check: (entry) =>
    tokensOf(entry.line, KIND.CommaNumber).map((token) => {
      const span = tokenSpan(entry.line, token);
      const text = tokenText(entry.line, token);
      const point = decimal(text);
      if (isOfThousands(entry) && THOUSANDS.test(text)) return thousands(span, text);
      return {
        span,
        message: point
          ? `Decimal comma in ${text}: write ${point}. A comma parts two values.`
          : `${text} may be one number or several: write ${text.replaceAll(',', '')} for one, ${text.replaceAll(',', ' ')} for several.`,
        fixes: point ? [replaceWith(span, point)] : [],
      };
    }),
});

/** An odometer, an hour meter and a tachometer count whole thousands. */
const isOfThousands = (entry: Entry): boolean =>
  'quantity' in entry &&
  (entry.quantity?.dimension === 'rotation' || ['odometer', 'hours'].includes(entry.quantity?.name ?? ''));

const THOUSANDS = /^[1-9]\d{0,2}(?:,\d{3})+$/;

function thousands(span: Span, text: string): Problem {
  const plain = text.replaceAll(',', '');
  const message = `${text} is not used: write ${plain}. A comma parts two values.`;
  return { span, message, fixes: [replaceWith(span, plain)] };
}

/** With a point, where the comma can be nothing but a decimal one: three figures after it could be thousands. */
function decimal(text: string): string | undefined {
  const parts = text.split(',');
  const after = parts[1] ?? '';
  if (parts.length !== 2 || after.includes('.')) return undefined;
  return after.length === 3 && !/^0+$/.test(parts[0] ?? '') ? undefined : parts.join('.');
}
