import { KIND, tokenSpan, tokenText } from '../../grammar/index.ts';
import { EVERY_KIND } from './kinds.ts';
import { rule } from './rule.ts';
import { tokensOf } from './syntax.ts';

export const unknownSign = rule({
  code: 'unknown-sign',
  severity: 'error',
  title: 'A sign that means nothing here',
  why: 'Signs that are no part of the notation often come with text that was copied, or with a damaged file. Some of them cannot be seen.',
  standing: 'notation',
  good: 'session 2026-05-02\n  initial 9 deg\n',
  bad: 'session 2026-05-02\n  initial 9 deg $\n',
  outranks: ['unreadable'],
  on: EVERY_KIND,
  formed: ({ kinds }) => kinds.includes(KIND.Unknown),
  check({ line }) {
    const tokens = tokensOf(line, KIND.Unknown);
    const first = tokens[0];
    if (first === undefined) return [];
    const sign = tokenText(line, first);
    const remark = /[([{]/.test(sign) ? ' A remark goes after a ";".' : '';
    const more = tokens.length > 1 ? `, and ${tokens.length - 1} more like it` : '';
    return [
      {
        span: tokenSpan(line, first),
        message: `The sign ${shown(sign)} means nothing here${more}; the line is not read from it on.${remark}`,
      },
    ];
  },
});

/** What can be seen as it is, with its number: what cannot be seen has nothing else. */
function shown(sign: string): string {
  const point = sign.codePointAt(0) ?? 0;
  const number = `U+${point.toString(16).toUpperCase().padStart(4, '0')}`;
  return /^[\p{L}\p{N}\p{P}\p{S}]$/u.test(sign) ? `${sign} (${number})` : number;
}
