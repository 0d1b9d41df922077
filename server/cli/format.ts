/** `tappet format`: notebooks formatted in columns. Files are written only with `--write`. */
import { cutLines } from '../../grammar/index.ts';
import { type FormatStyle, formatEdits } from '../features/formatting.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import { whyUnwritten } from './faults.ts';
import { visible } from './layout.ts';
import { openingWith } from './shared.ts';
import { EXIT, type Terminal } from './terminal.ts';
import { pathsOf, type ReportProblem, STANDARD_INPUT, wholeTextOf } from './texts.ts';

export const UNIT_SPELLINGS = ['as written', 'table'] as const;

export interface FormatOptions {
  readonly check?: true;
  readonly write?: true;
  readonly indent: number;
  readonly units: FormatStyle['unitSpelling'];
}

/** Prints one notebook formatted; or names those that are not formatted (`--check`), or formats files in place (`--write`). @returns the exit code. */
export function format(args: readonly string[], options: FormatOptions, terminal: Terminal): number {
  let unusable = 0;
  const report: ReportProblem = (path, problem) => {
    unusable++;
    terminal.complain(`tappet: ${visible(path)}: ${problem}\n`);
  };
  const paths = [...pathsOf(args, terminal, report)];
  const deliver = options.check ? name : options.write ? write : print;
  if (deliver === print && paths.length > 1) {
    terminal.complain(ONE_AT_A_TIME);
    return EXIT.unusable;
  }
  const open = openingWith(terminal);
  const style = { indent: options.indent, unitSpelling: options.units };
  let different = 0;
  for (const path of paths) {
    const read = wholeTextOf(path, terminal);
    if ('problem' in read) {
      report(path, read.problem);
      continue;
    }
    const text = formatted(open(path, read.text), read.text, style);
    if (text !== read.text) different++;
    deliver({ path, before: read.mark + read.text, after: read.mark + text }, terminal, report);
  }
  if (unusable > 0) return EXIT.unusable;
  return options.check && different > 0 ? EXIT.found : EXIT.clean;
}

const ONE_AT_A_TIME =
  'tappet: only one notebook can be printed. Use --check to name those that are not formatted, --write to format files in place\n';

function formatted(snapshot: Snapshot, text: string, style: FormatStyle): string {
  const lines = cutLines(text);
  for (const { range, text } of formatEdits(snapshot, style).toReversed()) {
    const { line, character } = range.start;
    const old = lines[line] as string;
    lines[line] = old.slice(0, character) + text + old.slice(range.end.character);
  }
  return lines.join('');
}

interface Formatted {
  readonly path: string;
  readonly before: string;
  readonly after: string;
}

const print = ({ after }: Formatted, terminal: Terminal): void => terminal.write(after);

function name({ path, before, after }: Formatted, terminal: Terminal): void {
  if (before !== after) terminal.write(`${visible(path)}\n`);
}

function write({ path, before, after }: Formatted, terminal: Terminal, report: ReportProblem): void {
  if (path === STANDARD_INPUT) {
    report(path, "the standard input can't be written. Leave out --write to print it");
    return;
  }
  if (before === after) return;
  try {
    terminal.save(path, before, after);
  } catch (error) {
    report(path, whyUnwritten(error));
    return;
  }
  terminal.write(`${visible(path)}\n`);
}
