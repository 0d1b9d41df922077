/** The terminal's commands: what may be written after `tappet`, and what it comes to. */
import { Command, CommanderError, InvalidArgumentError, Option } from 'commander';
import { type CheckOptions, check, FORMATS, LEVELS } from './check.ts';
import { explain } from './explain.ts';
import { type FormatOptions, format, UNIT_SPELLINGS } from './format.ts';
import { wrap } from './layout.ts';
import { READ_FORMATS, type ReadOptions, read } from './read.ts';
import { type ShowOptions, show } from './show.ts';
import { EXIT, type Terminal } from './terminal.ts';

const ABOUT =
  'Reads engine tuning notebooks (*.tappet): what may be wrong in them, what is set where, and how they are laid out.';

const EXAMPLES = `
Examples:
  tappet check                              every notebook below this folder
  tappet check boat.tappet --fail-on error  fail on errors alone
  tappet check - --format json < x.tappet   the standard input, for a program
  tappet show boat.tappet                   what holds at the end
  tappet show boat.tappet --at 2026-05-02   as it was at the end of that day
  tappet show boat.tappet --at 17           as it was after line 17
  tappet read boat.tappet                   what each line was taken for
  tappet format boat.tappet                 laid out in columns; written with --write
  tappet explain over-limit                 why that rule asks

Exit codes: 0 nothing found at the level of --fail-on or above, 1 something found, 2 wrong usage or a file that cannot be read (the others are still checked).

What is found here is no more than that: the maker's figures, local law and a licensed mechanic overrule it.`;

const JSON_LINES = `
In JSON, lines and characters count from zero, as in the Language Server Protocol.`;

const READ_LINES = `
As ndjson, one object for each line, lines counted from one; schemas/read-line.schema.json says what is in it.`;

/** Runs one command. @returns the exit code: 0 clean, 1 findings, 2 wrong usage or an unreadable file. */
export function run(args: readonly string[], terminal: Terminal): number {
  let code: number = EXIT.clean;
  const program = programFor(terminal, (outcome) => {
    code = outcome;
  });
  try {
    program.parse(args, { from: 'user' });
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    return error.exitCode === 0 ? EXIT.clean : EXIT.unusable;
  }
  return code;
}

function programFor(terminal: Terminal, end: End): Command {
  const program = new Command('tappet')
    .description(ABOUT)
    .version(terminal.version, '--version', 'print the version')
    .helpOption('--help', 'print this help')
    .helpCommand(false)
    .option('--no-color', 'no colours (NO_COLOR=1 does the same, FORCE_COLOR=1 the opposite)')
    .exitOverride()
    .configureHelp({ showGlobalOptions: true, minWidthToWrap: 12 })
    .configureOutput(outputTo(terminal))
    .showHelpAfterError('("tappet --help" tells how it is used)')
    .addHelpText('after', wrapped(EXAMPLES, terminal));
  addCheck(program, terminal, end);
  addShow(program, terminal, end);
  addRead(program, terminal, end);
  addFormat(program, terminal, end);
  addExplain(program, terminal, end);
  return program;
}

type End = (code: number) => void;

const NOTEBOOKS = 'notebooks, folders of notebooks, or - for the standard input; else all below here';

const written = () => new Option('--format <form>', 'how it is written').choices(FORMATS).default(FORMATS[0]);

function addCheck(program: Command, terminal: Terminal, end: End): void {
  program
    .command('check')
    .summary('tell what may be wrong')
    .description('Tells what may be wrong in notebooks, each with its line.')
    .argument('[FILES...]', NOTEBOOKS)
    .addOption(written())
    .addOption(
      new Option('--fail-on <level>', 'the least severity that gives exit code 1')
        .choices(LEVELS)
        .default('warning'),
    )
    .option('--fix', 'first write plain speech as it was read, and put right what is sure, in place')
    .addHelpText('after', wrapped(JSON_LINES, terminal))
    .action((files: readonly string[], options: CheckOptions) => end(check(files, options, terminal)));
}

function addShow(program: Command, terminal: Terminal, end: End): void {
  program
    .command('show')
    .summary('settings in force, open items, limits and totals')
    .description('Shows what holds: settings, parts, open items, limits, and the totals with their working.')
    .argument('<FILE>', 'a notebook, or - for the standard input')
    .option('--at <line|date>', 'after that line (from one), or at the end of that day; else at the end')
    .addOption(written())
    .addHelpText('after', wrapped(JSON_LINES, terminal))
    .action((file: string, options: ShowOptions) => end(show(file, options, terminal)));
}

function addRead(program: Command, terminal: Terminal, end: End): void {
  program
    .command('read')
    .summary('what each line was taken for')
    .description(
      'Tells of each line of a notebook what it was taken for: plain speech as the lines of the notation it means, what may mean several things with the readings to choose from.',
    )
    .argument('<FILE>', 'a notebook, or - for the standard input')
    .addOption(
      new Option('--format <form>', 'how it is written').choices(READ_FORMATS).default(READ_FORMATS[0]),
    )
    .addHelpText('after', wrapped(READ_LINES, terminal))
    .action((file: string, options: ReadOptions) => end(read(file, options, terminal)));
}

function addFormat(program: Command, terminal: Terminal, end: End): void {
  program
    .command('format')
    .summary('lay notebooks out in columns')
    .description(
      'Lays notebooks out: names and values in columns within a section, comments below each other. No word is changed, and a line that cannot be read stays as it stands. One notebook is printed; a file is written only with --write.',
    )
    .argument('[FILES...]', NOTEBOOKS)
    .option('--check', 'write nothing; name those that are not laid out, with exit code 1 if there are any')
    .addOption(
      new Option('--write', 'lay them out in place, and name those that were changed').conflicts('check'),
    )
    .addOption(
      new Option('--indent <blanks>', 'before a line inside a section').default(2).argParser(indentIn),
    )
    .addOption(
      new Option('--units <spelling>', 'how units are spelled')
        .choices(UNIT_SPELLINGS)
        .default(UNIT_SPELLINGS[0]),
    )
    .action((files: readonly string[], options: FormatOptions) => end(format(files, options, terminal)));
}

function addExplain(program: Command, terminal: Terminal, end: End): void {
  program
    .command('explain')
    .summary('why a rule asks, and how it is silenced')
    .description('Prints the page of a rule, with a notebook that has the finding and one that has not.')
    .argument('[CODE]', 'as it stands in brackets after a finding; without one, all rules are listed')
    .action((code: string | undefined) => end(explain(code, terminal)));
}

/** Throws for anything but a whole number from 0 to 8, as commander wants it. */
function indentIn(text: string): number {
  if (!/^[0-8]$/.test(text)) throw new InvalidArgumentError('It is a whole number from 0 to 8.');
  return Number(text);
}

function outputTo({ write, complain, columns, colours }: Terminal) {
  return {
    writeOut: write,
    writeErr: complain,
    getOutHelpWidth: () => columns ?? HELP_COLUMNS,
    getErrHelpWidth: () => columns ?? HELP_COLUMNS,
    getOutHasColors: () => colours,
    getErrHasColors: () => colours,
  };
}

/** Where nobody says how wide the window is. */
const HELP_COLUMNS = 80;

const wrapped = (text: string, { columns = HELP_COLUMNS }: Terminal): string =>
  text
    .split('\n')
    .flatMap((line) => wrap(line, columns, line.startsWith(' ') ? 6 : 0))
    .join('\n');
