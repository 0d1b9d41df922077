import { KIND, type Span, tokenSpan, tokenText } from '../../../grammar/index.ts';
import type { Entry } from '../../model/entry/entry.ts';
import { EVERY_KIND } from '../lib/kinds.ts';
import { tokensOf } from '../lib/line-syntax.ts';
import { type Problem, replaceWith, rule } from '../rule.ts';

export const commaNumber = rule({
  code: 'comma-number',
  severity: 'error',
  title: 'A comma inside a number',
  why: 'A comma separates two values, so inside a number it could be a decimal point, thousands, or a list. The number is not used until that is clear.',
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
          ? `Decimal comma in ${text}: write ${point}. A comma separates two values.`
          : `${text} could be one number or several: write ${text.replaceAll(',', '')} for one, ${text.replaceAll(',', ' ')} for several.`,
        fixes: point ? [replaceWith(span, point)] : [],
      };
    }),
});

/** Odometer, hour meter and tachometer: their readings run into whole thousands. */
const isOfThousands = (entry: Entry): boolean =>
  'quantity' in entry &&
  (entry.quantity?.dimension === 'rotation' || entry.quantity?.traits?.meter !== undefined);

const THOUSANDS = /^[1-9]\d{0,2}(?:,\d{3})+$/;

function thousands(span: Span, text: string): Problem {
  const plain = text.replaceAll(',', '');
  const message = `${text} is not used: write ${plain}. A comma separates two values.`;
  return { span, message, fixes: [replaceWith(span, plain)] };
}

/** The number with a decimal point; undefined where the comma could mark thousands (three digits after it). */
function decimal(text: string): string | undefined {
  const parts = text.split(',');
  const after = parts[1] ?? '';
  if (parts.length !== 2 || after.includes('.')) return undefined;
  return after.length === 3 && !/^0+$/.test(parts[0] ?? '') ? undefined : parts.join('.');
}
