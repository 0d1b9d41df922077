/** `tappet check`: the findings of the rules in notebooks. */

import type { LocatedFinding, Severity } from '../model/snapshot/finding.ts';
import { type Stream, streamFindings } from '../model/snapshot/read-pages.ts';
import { checkLine } from '../rules/check.ts';
import { jsonFindings } from './check-json.ts';
import { textFindings } from './check-text.ts';
import { visible } from './layout.ts';
import { sharingWith } from './shared.ts';
import { EXIT, type Terminal } from './terminal.ts';
import { pathsOf, type ReportProblem, textOf } from './texts.ts';
import type { Tally, Writer } from './writer.ts';

export const LEVELS = ['error', 'warning', 'information'] as const;
/** Another name for `information`, accepted and not documented. */
const SHORT_NAMES: ReadonlyMap<string, string> = new Map([['info', 'information']]);
export const FORMATS = ['text', 'json'] as const;

export interface CheckOptions {
  readonly format: (typeof FORMATS)[number];
  readonly failOn: (typeof LEVELS)[number];
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
    const read = textOf(path, terminal);
    if ('problem' in read) report(path, read.problem);
    else checkOne(path, streamFindings(read.text, checkLine, sharedAt(path)), writer, tally);
  }
  writer.end(tally);
  if (unreadable > 0) return EXIT.unusable;
  return AT_LEAST[options.failOn].some((severity) => tally.findings[severity] > 0) ? EXIT.found : EXIT.clean;
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
