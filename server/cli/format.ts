/** `tappet format`: notebooks laid out in columns. Files are written only when that is asked for. */
import { type FormatStyle, formatEdits } from '../features/formatting.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import { whyUnwritten } from './faults.ts';
import { edited } from './fix.ts';
import { visible } from './layout.ts';
import { openingWith } from './shared.ts';
import { EXIT, type Terminal } from './terminal.ts';
import { pathsOf, STANDARD_INPUT, type Tell, wholeTextOf } from './texts.ts';

export const UNIT_SPELLINGS = ['as written', 'table'] as const;

export interface FormatOptions {
  readonly check?: true;
  readonly write?: true;
  readonly indent: number;
  readonly units: FormatStyle['unitSpelling'];
}

/** Prints one notebook laid out; or names those that are not (`--check`), or lays them out in place (`--write`). @returns the exit code. */
export function format(args: readonly string[], options: FormatOptions, terminal: Terminal): number {
  let unusable = 0;
  const tell: Tell = (path, problem) => {
    unusable++;
    terminal.complain(`tappet: ${visible(path)}: ${problem}\n`);
  };
  const paths = [...pathsOf(args, terminal, tell)];
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
      tell(path, read.problem);
      continue;
    }
    const text = formatted(open(path, read.text), read.text, style);
    if (text !== read.text) different++;
    deliver({ path, before: read.mark + read.text, after: read.mark + text }, terminal, tell);
  }
  if (unusable > 0) return EXIT.unusable;
  return options.check && different > 0 ? EXIT.found : EXIT.clean;
}

const ONE_AT_A_TIME =
  'tappet: one notebook at a time is printed; --check names those that are not laid out, --write lays them out in place\n';

function formatted(snapshot: Snapshot, text: string, style: FormatStyle): string {
  return edited(text, formatEdits(snapshot, style));
}

interface Laid {
  readonly path: string;
  readonly before: string;
  readonly after: string;
}

const print = ({ after }: Laid, terminal: Terminal): void => terminal.write(after);

function name({ path, before, after }: Laid, terminal: Terminal): void {
  if (before !== after) terminal.write(`${visible(path)}\n`);
}

function write({ path, before, after }: Laid, terminal: Terminal, tell: Tell): void {
  if (path === STANDARD_INPUT) {
    tell(path, 'the standard input cannot be written; without --write it is printed');
    return;
  }
  if (before === after) return;
  try {
    terminal.save(path, before, after);
  } catch (error) {
    tell(path, whyUnwritten(error));
    return;
  }
  terminal.write(`${visible(path)}\n`);
}
