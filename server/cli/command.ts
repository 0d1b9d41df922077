/** The terminal's commands: the arguments after `tappet`, their help, and the exit code. */
import { Command, CommanderError, InvalidArgumentError, Option } from 'commander';
import { type CheckOptions, check, FORMATS, LEVELS, levelNamed } from './check.ts';
import { explain } from './explain.ts';
import { type FormatOptions, format, UNIT_SPELLINGS } from './format.ts';
import { wrap } from './layout.ts';
import { type ShowOptions, show } from './show.ts';
import { EXIT, type Terminal } from './terminal.ts';

const ABOUT = 'Checks, shows and formats engine tuning notebooks (*.tappet).';

const EXAMPLES = `
Examples:
  tappet check                              every notebook below this folder
  tappet check boat.tappet --fail-on error  fail on errors alone
  tappet check - --format json < x.tappet   the standard input, for a program
  tappet show boat.tappet                   settings and totals at the end
  tappet show boat.tappet --at 2026-05-02   the same at the end of that day
  tappet show boat.tappet --at 17           the same after line 17
  tappet format boat.tappet                 formatted; --write changes the file
  tappet explain over-limit                 the page of that rule

Exit codes: 0 nothing found at the level of --fail-on or above, 1 something found, 2 wrong usage or a file that can't be read (the others are still checked).

Findings are hints, not proof: the maker's figures, local law and a licensed mechanic overrule them.`;

const JSON_LINES = `
In JSON, lines and characters count from zero, as in the Language Server Protocol.`;

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
    .showHelpAfterError('Try "tappet --help".')
    .addHelpText('after', wrapped(EXAMPLES, terminal));
  addCheck(program, terminal, end);
  addShow(program, terminal, end);
  addFormat(program, terminal, end);
  addExplain(program, terminal, end);
  return program;
}

type End = (code: number) => void;

const NOTEBOOKS =
  'notebooks, folders, or - for the standard input; without any, all notebooks below this folder';

const formatOption = () =>
  new Option('--format <form>', 'output format').choices(FORMATS).default(FORMATS[0]);

function addCheck(program: Command, terminal: Terminal, end: End): void {
  program
    .command('check')
    .summary('find what may be wrong')
    .description('Lists what may be wrong in notebooks, with line and column.')
    .argument('[FILES...]', NOTEBOOKS)
    .addOption(formatOption())
    .addOption(
      new Option('--fail-on <level>', 'the lowest severity that gives exit code 1')
        .choices(LEVELS)
        .argParser(levelIn)
        .default('warning'),
    )
    .addHelpText('after', wrapped(JSON_LINES, terminal))
    .action((files: readonly string[], options: CheckOptions) => end(check(files, options, terminal)));
}

function addShow(program: Command, terminal: Terminal, end: End): void {
  program
    .command('show')
    .summary('settings in force, open items, limits and totals')
    .description('Shows settings, parts, open items and limits in force, and totals with their working.')
    .argument('<FILE>', 'a notebook, or - for the standard input')
    .option(
      '--at <line|date>',
      'after that line (counted from 1) or at the end of that day; without it, at the end of the notebook',
    )
    .addOption(formatOption())
    .addHelpText('after', wrapped(JSON_LINES, terminal))
    .action((file: string, options: ShowOptions) => end(show(file, options, terminal)));
}

function addFormat(program: Command, terminal: Terminal, end: End): void {
  program
    .command('format')
    .summary('format notebooks in columns')
    .description(
      "Formats notebooks: names and values in columns within a section, comments below each other. No word is changed, and a line that can't be read stays as it is. One notebook is printed; files are changed only with --write.",
    )
    .argument('[FILES...]', NOTEBOOKS)
    .option(
      '--check',
      'change nothing; list the notebooks that are not formatted, with exit code 1 if there are any',
    )
    .addOption(
      new Option('--write', 'format files in place, and list those that were changed').conflicts('check'),
    )
    .addOption(
      new Option('--indent <spaces>', 'spaces of indent inside a section').default(2).argParser(indentIn),
    )
    .addOption(
      new Option('--units <spelling>', 'spelling of units')
        .choices(UNIT_SPELLINGS)
        .default(UNIT_SPELLINGS[0]),
    )
    .action((files: readonly string[], options: FormatOptions) => end(format(files, options, terminal)));
}

function addExplain(program: Command, terminal: Terminal, end: End): void {
  program
    .command('explain')
    .summary('what a rule checks, why, and how to silence it')
    .description('Prints the page of a rule, with an example that has the finding and one that does not.')
    .argument('[CODE]', 'the code in brackets after a finding; without one, all rules are listed')
    .action((code: string | undefined) => end(explain(code, terminal)));
}

/** The level an option names. Throws for an unknown one. */
function levelIn(text: string): CheckOptions['failOn'] {
  const level = levelNamed(text);
  if (!level) throw new InvalidArgumentError(`Allowed choices are ${LEVELS.join(', ')}.`);
  return level;
}

/** Throws for anything but a whole number from 0 to 8. */
function indentIn(text: string): number {
  if (!/^[0-8]$/.test(text)) throw new InvalidArgumentError('Use a whole number from 0 to 8.');
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

/** Width of the help where the output is no terminal. */
const HELP_COLUMNS = 80;

const wrapped = (text: string, { columns = HELP_COLUMNS }: Terminal): string =>
  text
    .split('\n')
    .flatMap((line) => wrap(line, columns, line.startsWith(' ') ? 6 : 0))
    .join('\n');
