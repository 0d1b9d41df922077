/** Look of plugs by number: `1 3 4 tan, 6 sooty`, `1+2 brown`, `1-6 grey`. A number there is a cylinder. */
import { isExact } from '../../trade/measure/interval.ts';
import type { Statement } from './entry.ts';
import type { Value, Word } from './value.ts';

/** One statement per cylinder named; one without a cylinder is left alone. */
export function plugConditions(said: Statement): readonly Statement[] {
  const numbered = said.values.filter((value) => cylindersIn(value).length > 0);
  if (said.place || numbered.length === 0 || numbered.length < said.values.length) return [said];
  const looks = groupsOf(numbered, said.words);
  return looks.flatMap(({ values, words }) =>
    values.flatMap((value) => cylindersIn(value).map((cylinder) => lookOf(said, cylinder, value, words))),
  );
}

const lookOf = (said: Statement, cylinder: number, { span }: Value, words: readonly Word[]): Statement => ({
  ...said,
  place: { text: `#${cylinder}`, cylinder, span },
  values: [],
  words,
  span: { from: span.from, to: words.at(-1)?.span.to ?? span.to },
});

interface Group {
  readonly values: Value[];
  readonly words: Word[];
}

/** Numbers, then the words for them, by position. Words before the first number are for all. */
function groupsOf(values: readonly Value[], words: readonly Word[]): readonly Group[] {
  const groups: Group[] = [];
  for (const piece of [...values, ...words].toSorted((a, b) => a.span.from - b.span.from)) {
    const last = groups.at(-1);
    if ('form' in piece) {
      if (last && last.words.length === 0) last.values.push(piece);
      else groups.push({ values: [piece], words: [] });
    } else last?.words.push(piece);
  }
  return groups;
}

/** `4`, `+2` of `1+2`, `1-6`; more than 16 cylinders are no cylinders. */
function cylindersIn(value: Value): readonly number[] {
  if (value.form === 'order') return spanned(value.text.split('-').map(Number));
  if (value.form !== 'amount' || value.unit || !value.interval || !isExact(value.interval)) return [];
  const { low } = value.interval;
  return isCylinder(low) && value.relative !== 'less' ? [low] : [];
}

function spanned([from, to, ...more]: readonly number[]): readonly number[] {
  if (!isCylinder(from) || !isCylinder(to) || more.length > 0 || from >= to) return [];
  return Array.from({ length: to - from + 1 }, (_, i) => from + i);
}

const isCylinder = (n: number | undefined): n is number =>
  n !== undefined && Number.isInteger(n) && n > 0 && n <= 16;
