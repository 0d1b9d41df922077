/** Templates in a notebook: which lines of one are still to be filled in. */
import { TEMPLATES } from './completion/sections.ts';

/**
 * The forms of the template that some lines are, line for line, with nothing filled in; undefined where they are none.
 * @param lineAt the text of one of the `count` lines, from zero.
 */
export function templateOf(count: number, lineAt: (line: number) => string): readonly string[] | undefined {
  return TEMPLATES.find(
    (forms) => forms.length === count && forms.every((form, i) => bare(form) === plain(lineAt(i))),
  );
}

/** True where a line still has its form, with at least one stop of the cursor empty. */
export function isUnfilled(form: string, line: string): boolean {
  const [first = '', ...others] = form.split(STOP).map(plain);
  const text = plain(line);
  if (others.length === 0 || !text.startsWith(first)) return false;
  let at = first.length;
  let isEmpty = false;
  for (const [i, literal] of others.entries()) {
    const isLast = i === others.length - 1;
    const found = isLast && literal === '' ? text.length : text.indexOf(literal, at);
    if (found < 0) return false;
    isEmpty ||= text.slice(at, found).trim() === '';
    at = found + literal.length;
  }
  return isEmpty;
}

const STOP = /\$\d/;

const bare = (form: string): string => plain(form.replaceAll(/\$\d/g, ''));

/** The text without white space differences, which the editor may change. */
const plain = (text: string): string => text.trim().replaceAll(/\s+/g, ' ');
