/** `tappet read`: what each line of a notebook was taken for. */
import { type LineRead, linesRead } from '../report/lines-read.ts';
import { visible } from './layout.ts';
import { openingWith } from './shared.ts';
import { EXIT, type Terminal } from './terminal.ts';
import { wholeTextOf } from './texts.ts';

export const READ_FORMATS = ['text', 'ndjson'] as const;

export interface ReadOptions {
  readonly format: (typeof READ_FORMATS)[number];
}

/** @returns the exit code. */
export function read(path: string, { format }: ReadOptions, terminal: Terminal): number {
  const file = wholeTextOf(path, terminal);
  if ('problem' in file) {
    terminal.complain(`tappet: ${visible(path)}: ${visible(file.problem)}\n`);
    return EXIT.unusable;
  }
  const write = format === 'ndjson' ? (line: LineRead) => `${JSON.stringify(line)}\n` : lineText;
  for (const line of linesRead(openingWith(terminal)(path, file.text))) terminal.write(write(line));
  return EXIT.clean;
}

/** Only what was taken for something else than it says: that a line of the notation was read as it is needs no telling. */
function lineText({ line, text, status, as, offers, safety }: LineRead): string {
  const head = `${line}`.padStart(5);
  const shown = visible(text.trim());
  if (status === 'read') return `${head}  ${shown}`.trimEnd().concat('\n');
  const told =
    status === 'spoken'
      ? as.map((each) => `-> ${each}`)
      : [TOLD[status], ...offers.map((each) => ` ? ${each}`)];
  const lines = [
    shown,
    ...told.map((each) => `  ${visible(each)}`),
    ...(safety ? ['  may be dangerous'] : []),
  ];
  return lines.map((each, i) => `${i === 0 ? head : '     '}  ${each}\n`).join('');
}

const TOLD = {
  note: 'a note',
  asked: 'not clear; nothing of it is in force',
  unread: 'not understood; nothing of it is in force',
} as const;
