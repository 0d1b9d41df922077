/** `tappet explain`: the page of a rule, or the list of all rules. */
import { RULES, ruleOf } from '../rules/check.ts';
import { didYouMean, guessAmong } from '../rules/lib/did-you-mean.ts';
import { pageOf } from '../rules/pages.ts';
import { padded, visible, wrap } from './layout.ts';
import { painter } from './paint.ts';
import { EXIT, type Terminal } from './terminal.ts';

/** Prints the page of a rule; without a code, a line for each rule. @returns the exit code. */
export function explain(code: string | undefined, terminal: Terminal): number {
  if (code === undefined) return print(ruleList(), terminal);
  const rule = ruleOf(code.toLowerCase());
  return rule ? print(pageOf(rule).split('\n'), terminal) : refuse(code, terminal);
}

function ruleList(): readonly string[] {
  const width = Math.max(...RULES.map(({ code }) => code.length));
  return RULES.map(({ code, title }) => `${padded(code, width)}  ${title}`);
}

function print(lines: readonly string[], { write, columns, colours }: Terminal): number {
  const paint = painter(colours);
  const printed = lines
    .flatMap((line) => wrap(line, columns))
    .map((line) => (line.startsWith('#') ? paint('title', line) : line));
  write(`${printed.join('\n')}\n`);
  return EXIT.clean;
}

function refuse(code: string, { complain }: Terminal): number {
  const codes = RULES.map((rule) => rule.code);
  const guess = didYouMean(guessAmong(code, codes));
  complain(`tappet: no rule "${visible(code)}".${guess} "tappet explain" lists all rules.\n`);
  return EXIT.unusable;
}
