/** `tappet check`: the findings of the rules in notebooks. */

import type { LocatedFinding, Severity } from '../model/snapshot/finding.ts';
import type { Shared } from '../model/snapshot/look-up.ts';
import { type Stream, streamFindings } from '../model/snapshot/read-pages.ts';
import { checkLine, openNotebook } from '../rules/check.ts';
import { jsonFindings } from './check-json.ts';
import { textFindings } from './check-text.ts';
import { whyUnwritten } from './faults.ts';
import { fixed } from './fix.ts';
import { visible } from './layout.ts';
import { sharingWith } from './shared.ts';
import { EXIT, type Terminal } from './terminal.ts';
import { pathsOf, type ReportProblem, STANDARD_INPUT, type Text, textOf, wholeTextOf } from './texts.ts';
import type { Tally, Writer } from './writer.ts';

export const LEVELS = ['error', 'warning', 'information'] as const;
/** Another name for `information`, accepted and not documented. */
const SHORT_NAMES: ReadonlyMap<string, string> = new Map([['info', 'information']]);
export const FORMATS = ['text', 'json'] as const;

export interface CheckOptions {
  readonly format: (typeof FORMATS)[number];
  readonly failOn: (typeof LEVELS)[number];
  readonly fix?: true;
}

/** The level that an option names; undefined where it names none. */
export const levelNamed = (text: string): CheckOptions['failOn'] | undefined =>
  LEVELS.find((level) => level === (SHORT_NAMES.get(text) ?? text));

/** Checks every file that can be read and reports those that cannot. @returns the exit code. */
export function check(args: readonly string[], options: CheckOptions, terminal: Terminal): number {
  const writer = options.format === 'json' ? jsonFindings(terminal) : textFindings(terminal);
  const tally = {
    files: 0,
    filesWithFindings: 0,
    findings: { error: 0, warning: 0, information: 0, hint: 0 },
  };
  const sharedAt = sharingWith(terminal);
  let unreadable = 0;
  const report: ReportProblem = (path, problem) => {
    unreadable++;
    terminal.complain(`tappet: ${visible(path)}: ${problem}\n`);
  };
  for (const path of pathsOf(args, terminal, report)) {
    const read = options.fix ? mendedText(path, sharedAt(path), terminal, report) : textOf(path, terminal);
    if ('problem' in read) report(path, read.problem);
    else checkOne(path, streamFindings(read.text, checkLine, sharedAt(path)), writer, tally);
  }
  writer.end(tally);
  if (unreadable > 0) return EXIT.unusable;
  return AT_LEAST[options.failOn].some((severity) => tally.findings[severity] > 0) ? EXIT.found : EXIT.clean;
}

/** The text of a file after it was corrected in place; as it was, and reported, where it could not be written. */
function mendedText(path: string, shared: Shared, terminal: Terminal, report: ReportProblem): Text {
  if (path === STANDARD_INPUT) return { problem: 'the standard input cannot be corrected in place' };
  const read = wholeTextOf(path, terminal);
  if ('problem' in read) return read;
  const text = fixed(read.text, (each) => openNotebook(each, shared));
  if (text === read.text) return read;
  try {
    terminal.save(path, read.mark + read.text, read.mark + text);
  } catch (error) {
    report(path, whyUnwritten(error));
    return read;
  }
  return { ...read, text };
}

interface Count extends Tally {
  files: number;
  filesWithFindings: number;
  readonly findings: Record<Severity, number>;
}

function checkOne(path: string, read: Stream, writer: Writer, tally: Count): void {
  let found = 0;
  const count = (finding: LocatedFinding) => {
    found++;
    tally.findings[finding.severity]++;
  };
  writer.file({ ...read, path, findings: seeEach(read.findings, count) });
  tally.files++;
  if (found > 0) tally.filesWithFindings++;
}

function* seeEach<T>(each: Iterable<T>, see: (one: T) => void): Generator<T> {
  for (const one of each) {
    see(one);
    yield one;
  }
}

const AT_LEAST: Readonly<Record<CheckOptions['failOn'], readonly Severity[]>> = {
  error: ['error'],
  warning: ['error', 'warning'],
  information: ['error', 'warning', 'information'],
};
