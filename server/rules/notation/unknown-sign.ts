import { KIND, tokenSpan, tokenText } from '../../../grammar/index.ts';
import { EVERY_KIND } from '../lib/kinds.ts';
import { tokensOf } from '../lib/line-syntax.ts';
import { rule } from '../rule.ts';

export const unknownSign = rule({
  code: 'unknown-sign',
  severity: 'error',
  title: 'An unexpected character',
  why: 'Characters that the notation does not use often come with pasted text or a damaged file. Some of them are invisible.',
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
    const character = tokenText(line, first);
    const remark = /[([{]/.test(character) ? ' Write a remark after a ";".' : '';
    const more = tokens.length > 1 ? `, and ${tokens.length - 1} more like it` : '';
    return [
      {
        span: tokenSpan(line, first),
        message: `Unexpected character ${shown(character)}${more}. Everything after it on this line is ignored.${remark}`,
      },
    ];
  },
});

/** A character with its code point; the code point alone where it is invisible. */
function shown(character: string): string {
  const point = character.codePointAt(0) ?? 0;
  const number = `U+${point.toString(16).toUpperCase().padStart(4, '0')}`;
  return /^[\p{L}\p{N}\p{P}\p{S}]$/u.test(character) ? `${character} (${number})` : number;
}
