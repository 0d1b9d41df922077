import { KIND, type Line, tokenSpan, tokenText } from '../../grammar/index.ts';
import { LISTED_KINDS } from './kinds.ts';
import { type Problem, replaceWith, rule } from './rule.ts';
import { tokensOf } from './syntax.ts';

export const hyphenRange = rule({
  code: 'hyphen-range',
  severity: 'information',
  title: 'A range written with a hyphen',
  why: 'A hyphen joins the cylinders of a firing order and is the minus of a change, so that 58-62 is taken for a range only where it can be nothing else. Two dots are a range everywhere.',
  standing: 'notation',
  good: 'specs\n  head bolts torque 58..62 lb-ft\n',
  bad: 'specs\n  head bolts torque 58-62 lb-ft\n',
  outranks: [
    'no-value',
    'too-many-values',
    'list-length',
    'change-without-start',
    'unreadable',
    'missing-unit',
  ],
  on: LISTED_KINDS,
  formed: ({ kinds }) => kinds.includes(KIND.Order) || kinds.includes('n-n'),
  check(entry) {
    if ('quantity' in entry && entry.quantity?.form === 'order') return [];
    if ('quantity' in entry && (entry.quantity?.form === 'text' || entry.quantity?.name === 'run time'))
      return [];
    // What a word that is not known takes may well be an order.
    const ranges = joined(entry.line).filter(({ fixes }) => fixes || entry.kind !== 'unknown');
    return [...ranges, ...parted(entry.line)];
  },
});

/** `58-62` */
const joined = (line: Line): Problem[] =>
  tokensOf(line, KIND.Order).map((token) => {
    const span = tokenSpan(line, token);
    const numbers = tokenText(line, token).split('-');
    if (numbers.length !== 2)
      return { span, message: `${numbers.join('-')} is no value: part a list with spaces.` };
    const text = numbers.join('..');
    const read = Number(numbers[0]) < Number(numbers[1]);
    return {
      span,
      message: read
        ? `Read as the range ${text}: a hyphen may also be a minus or an order.`
        : `A range is written ${text}, not with a hyphen.`,
      fixes: [replaceWith(span, text)],
    };
  });

/** `450 - 580` */
function parted(line: Line): Problem[] {
  if (!line.tokens.kinds.includes(KIND.Minus)) return [];
  const found: Problem[] = [];
  for (const match of line.tokens.kinds.matchAll(/n-n/g)) {
    const from = tokenSpan(line, match.index);
    const to = tokenSpan(line, match.index + 2);
    const span = { from: from.from, to: to.to };
    if (line.text[to.from - 1] !== ' ') continue;
    const text = `${line.text.slice(from.from, from.to)}..${line.text.slice(to.from, to.to)}`;
    found.push({
      span,
      message: `A range is written ${text}, not with a hyphen.`,
      fixes: [replaceWith(span, text)],
    });
  }
  return found;
}
