import { isEmpty, runSpan, runText, type Span } from '../../../grammar/index.ts';
import { EVERY_KIND } from '../lib/kinds.ts';
import { NO_PROBLEMS, type Problem, replaceWith, rule } from '../rule.ts';

export const unreadable = rule({
  code: 'unreadable',
  severity: 'error',
  title: 'Part of the line cannot be read',
  why: 'What cannot be read is kept but ignored. The rest of the line is read as if it were not there.',
  standing: 'notation',
  good: 'session 2026-05-02\n  initial 9 deg\n',
  bad: 'session 2026-05-02\n  initial 9 deg : 7\n',
  on: EVERY_KIND,
  formed: ({ syntax }) => !isEmpty(syntax.stray),
  check({ line }) {
    const { stray } = line.syntax;
    if (isEmpty(stray)) return NO_PROBLEMS;
    const text = runText(line, stray);
    const tolerance = toleranceAt(line.text, runSpan(line, stray));
    if (tolerance) return [tolerance];
    return [
      {
        span: runSpan(line, stray),
        message: `Can't read "${text}"; it is ignored and the rest of the line is kept.`,
      },
    ];
  },
});

/** `60 deg ± 3`, `55 Nm ± 5 Nm`: a tolerance after the unit. */
function toleranceAt(line: string, stray: Span): Problem | undefined {
  const [, number, unit] = /(?<!\d)(\d+(?:\.\d+)?) ?([^\d\s]+)\s*$/.exec(line.slice(0, stray.from)) ?? [];
  const [, plusMinus, by, again] =
    /^(±|\+\/-)\s*(\d+(?:\.\d+)?)\s*([^\d\s]+)?$/.exec(line.slice(stray.from, stray.to)) ?? [];
  if (!number || !plusMinus || (again !== undefined && again !== unit)) return undefined;
  const span = { from: line.slice(0, stray.from).lastIndexOf(number), to: stray.to };
  const text = `${number} ± ${by} ${unit}`;
  return {
    span,
    message: `A tolerance goes before the unit: write ${text}.`,
    fixes: [replaceWith(span, text)],
  };
}
