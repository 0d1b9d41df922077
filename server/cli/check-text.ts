/** Findings as text for a person: place and message, the line with the spot underlined, related lines and fixes. */
import type { LocatedFinding, Severity } from '../model/snapshot/finding.ts';
import { excerpt } from './excerpt.ts';
import { visible, wrap } from './layout.ts';
import { type Paint, painter } from './paint.ts';
import type { Terminal } from './terminal.ts';
import { STANDARD_INPUT } from './texts.ts';
import type { Checked, Tally, Writer } from './writer.ts';

const SEVERITY_WORDS: Readonly<Record<Severity, string>> = {
  error: 'error',
  warning: 'warning',
  information: 'information',
  hint: 'hint',
};
const COUNT_WORDS: Readonly<Record<Severity, readonly [one: string, more: string]>> = {
  error: ['error', 'errors'],
  warning: ['warning', 'warnings'],
  information: ['note', 'notes'],
  hint: ['hint', 'hints'],
};
/** Under the line of the place, so that the eye finds the next place. */
const INDENT = '    ';

/** Writes file by file, and the count of all at the end. */
export function textFindings({ write, columns, colours }: Terminal): Writer {
  const paint = painter(colours);
  return {
    file: (checked) => {
      for (const finding of checked.findings) write(findingText(checked, finding, paint, columns));
    },
    end: (tally) => write(summaryText(tally, paint, columns)),
  };
}

function findingText(
  { path, lineText, lineOf }: Checked,
  finding: LocatedFinding,
  paint: Paint,
  columns: number | undefined,
): string {
  const name = path === STANDARD_INPUT ? '(standard input)' : visible(path);
  const place = `${name}:${finding.at + 1}:${finding.span.from + 1}`;
  const severity = `${SEVERITY_WORDS[finding.severity]}:`;
  const [head = '', ...rest] = wrap(
    `${place} ${severity} ${visible(finding.message)} [${finding.code}]`,
    columns,
    INDENT.length,
  );
  const coloured = head
    .replace(place, (text) => paint('title', text))
    .replace(severity, (text) => paint(finding.severity, text));
  const spot = excerpt(lineText(finding.at), finding.span, columns);
  const below = [
    `${INDENT}${spot.text}`,
    `${INDENT}${' '.repeat(spot.before)}${paint(finding.severity, '^'.repeat(spot.width))}`,
    ...relatedLines(lineOf, finding).flatMap((text) => indented(text, columns, (line) => line)),
    ...finding.fixes.flatMap((fix) =>
      indented(`fix: ${visible(fix.title)}`, columns, (line) => paint('fix', line)),
    ),
  ];
  return lines([coloured, ...rest, ...below, '']);
}

function relatedLines(lineOf: Checked['lineOf'], { related }: LocatedFinding): readonly string[] {
  return related.map(({ origin, message }) => {
    const line = lineOf(origin.ref);
    const day = origin.date ? `, ${origin.date}` : '';
    return `${line === undefined ? 'a line above' : `line ${line + 1}${day}`}: ${visible(message)}`;
  });
}

const indented = (text: string, columns: number | undefined, each: (line: string) => string) =>
  wrap(text, columns === undefined ? undefined : columns - INDENT.length, 2).map(
    (line) => INDENT + each(line),
  );

function summaryText({ files, filesWithFindings, findings }: Tally, paint: Paint, columns?: number): string {
  if (files === 0) return '';
  const checked = `${files} ${files === 1 ? 'notebook' : 'notebooks'} checked`;
  const counts = (Object.keys(SEVERITY_WORDS) as Severity[])
    .filter((severity) => findings[severity] > 0)
    .map((severity) => `${findings[severity]} ${COUNT_WORDS[severity][findings[severity] === 1 ? 0 : 1]}`);
  const summary =
    counts.length > 0
      ? `${checked}, ${filesWithFindings} with findings: ${counts.join(', ')}.`
      : `${checked}: nothing found by these checks.`;
  return lines(wrap(summary, columns).map((line) => paint('strong', line)));
}

const lines = (each: readonly string[]): string => each.map((line) => `${line}\n`).join('');
