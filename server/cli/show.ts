/** `tappet show`: the state after a line of a notebook. */
import { type Files, partsWithin } from '../model/snapshot/named-files.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import { type InForceReport, inForceAt, logsAt } from '../report/in-force.ts';
import { endOf, momentOf, type ReportLine } from '../report/moment.ts';
import { visible } from './layout.ts';
import { openingWith } from './shared.ts';
import { inForceText } from './show-text.ts';
import { EXIT, type Terminal } from './terminal.ts';
import { wholeTextOf } from './texts.ts';

export interface ShowOptions {
  /** A line, from one, or a date; the end of the notebook where undefined. */
  readonly at: string | undefined;
  readonly format: 'text' | 'json';
}

/** @returns the exit code. */
export function show(path: string, { at, format }: ShowOptions, terminal: Terminal): number {
  const read = wholeTextOf(path, terminal);
  if ('problem' in read) return refuse(path, read.problem, terminal);
  const snapshot = openingWith(terminal)(path, read.text);
  const moment = momentIn(snapshot, at);
  if ('problem' in moment) return refuse(path, moment.problem, terminal);
  const report = inForceAt(snapshot, moment.line, filesBeside(path, logsAt(snapshot, moment.line), terminal));
  terminal.write(format === 'json' ? jsonOf(path, report) : inForceText(report, terminal));
  return EXIT.clean;
}

/** The files a notebook names, by the paths it writes. */
function filesBeside(notebook: string, paths: readonly string[], { readBeside }: Terminal): Files {
  return new Map(
    paths.map((path) => {
      const parts = partsWithin(path);
      return [path, parts ? readBeside(notebook, parts) : { problem: 'outside' }];
    }),
  );
}

const momentIn = (snapshot: Snapshot, at: string | undefined): ReportLine =>
  at === undefined ? { line: endOf(snapshot) } : momentOf(snapshot, at);

function refuse(path: string, problem: string, { complain }: Terminal): number {
  complain(`tappet: ${visible(path)}: ${visible(problem)}\n`);
  return EXIT.unusable;
}

/** Lines count from zero, as in the protocol; a bound that is open on one side is null. */
const jsonOf = (path: string, report: InForceReport): string =>
  `${JSON.stringify({ path, ...report }, null, 2)}\n`;
