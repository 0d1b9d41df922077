import type { RowEntry } from '../../model/entry/entry.ts';
import { findQuantity } from '../../trade/vocabulary/vocabulary.ts';
import { lineSpan } from '../lib/line-syntax.ts';
import { NO_PROBLEMS, type Problem, replaceWith, rule } from '../rule.ts';

export const rowOutsideTrial = rule({
  code: 'row-outside-trial',
  severity: 'warning',
  title: 'A row that belongs to no trial',
  why: 'A line that begins with a number is a row of the trial above it. A trial ends at the first other entry. Anything else begins with the word for what was set or read.',
  standing: 'notation',
  good: 'session 2026-05-02\n  trial feed restrictor -> oil pressure\n    1/8 in 12 psi\n    5/32 in 14.5 psi\n',
  bad: 'session 2026-05-02\n  1/8 in 12 psi\n',
  on: ['row', 'want'],
  check(entry, { before }) {
    const { kind, line } = entry;
    if (before.trial) return NO_PROBLEMS;
    const turned = kind === 'row' ? wordFirst(entry) : undefined;
    if (turned) return [turned];
    const message =
      kind === 'want'
        ? '"want" belongs to a trial, and none is open here. Begin one with "trial ... -> ...".'
        : 'A line that begins with a number is a row of a trial, and none is open here. For a setting or reading, write its word first.';
    return [{ span: lineSpan(line), message }];
  },
});

/** The problem of a word after its value: `32 total`, `850 rpm idle`. */
function wordFirst({ values, words, line }: RowEntry): Problem | undefined {
  const [value] = values;
  const texts = words.map(({ text }) => text);
  const found = findQuantity(texts);
  if (values.length !== 1 || !value || !found || found.length < words.length) return undefined;
  const text = `${texts.join(' ')} ${line.text.slice(value.span.from, value.span.to)}`;
  const span = { from: value.span.from, to: words.at(-1)?.span.to ?? value.span.to };
  return {
    span,
    message: `Write the word first: ${text}. A line that begins with a number is a row of a trial.`,
    fixes: [replaceWith(span, text)],
  };
}
