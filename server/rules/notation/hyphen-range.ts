import { KIND, type Line, tokenSpan, tokenText } from '../../../grammar/index.ts';
import { LISTED_KINDS } from '../lib/kinds.ts';
import { tokensOf } from '../lib/line-syntax.ts';
import { type Problem, replaceWith, rule } from '../rule.ts';

export const hyphenRange = rule({
  code: 'hyphen-range',
  severity: 'information',
  title: 'A range written with a hyphen',
  why: 'A hyphen also joins the cylinders of a firing order and is the minus sign of a change, so 58-62 is read as a range only where it can be nothing else. Two dots are a range everywhere.',
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
    // The value of an unknown word may well be a firing order.
    const ranges = joinedRanges(entry.line).filter(({ fixes }) => fixes || entry.kind !== 'unknown');
    return [...ranges, ...spacedRanges(entry.line)];
  },
});

/** `58-62` */
const joinedRanges = (line: Line): Problem[] =>
  tokensOf(line, KIND.Order).map((token) => {
    const span = tokenSpan(line, token);
    const numbers = tokenText(line, token).split('-');
    if (numbers.length !== 2)
      return {
        span,
        message: `${numbers.join('-')} is not a value. Separate the values of a list with spaces.`,
      };
    const text = numbers.join('..');
    const read = Number(numbers[0]) < Number(numbers[1]);
    return {
      span,
      message: read
        ? `Read as ${text}. Write two dots: a hyphen can also be a minus sign or a firing order.`
        : `Write a range as ${text}, not with a hyphen.`,
      fixes: [replaceWith(span, text)],
    };
  });

/** `450 - 580` */
function spacedRanges(line: Line): Problem[] {
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
      message: `Write a range as ${text}, not with a hyphen.`,
      fixes: [replaceWith(span, text)],
    });
  }
  return found;
}
