/**
 * The kinds of token. A kind is one character, so that the kinds of a line joined are its **shape**: a short string
 * that decides how the line is parsed and is shared by all lines that are built alike.
 */
import { createToken, Lexer, type TokenType } from 'chevrotain';

export const KIND = {
  Blank: ' ',
  Comment: ';',
  /** A word, a unit, or words the trade never splits: letters with inner hyphens, dots, slashes. */
  Word: 'w',
  /** A cylinder or place by number: `#3`. */
  Cylinder: '#',
  Number: 'n',
  /** `3/8` */
  Fraction: 'f',
  /** `1 1/2` */
  Mixed: 'm',
  /** `1,5`: refused, so that `14 C, 1011 hPa` stays unambiguous. */
  CommaNumber: 'k',
  Date: 'd',
  Clock: 'c',
  /** `8.4:1` */
  Ratio: 'r',
  /** `1-3-4-2` */
  Order: 'o',
  Text: 't',
  /** A quote that is never closed. */
  OpenText: 'q',
  InchMark: '"',
  Flag: '[',
  Prose: 'p',
  About: '~',
  Bound: '<',
  Plus: '+',
  Minus: '-',
  PlusMinus: '±',
  Dots: '.',
  At: '@',
  In: 'i',
  Out: 'u',
  Comma: ',',
  Colon: ':',
  Arrow: '>',
  Unknown: '?',
  /** A line of a merge that was not finished: `<<<<<<< main`. */
  Conflict: '=',
  // Words that begin a line, and the two used inside such lines.
  Notebook: 'N',
  Section: 'S',
  Session: 'D',
  Fit: 'F',
  Note: 'T',
  Item: 'I',
  Check: 'C',
  File: 'P',
  Keep: 'K',
  Revert: 'V',
  Trial: 'X',
  Want: 'W',
  Recheck: 'R',
  To: 'y',
  After: 'z',
} as const;

export type KindName = keyof typeof KIND;
export type Kind = (typeof KIND)[KindName];

/** The words that begin a line of their own kind. Any other first word begins an entry. */
export const FIRST_WORDS: Readonly<Record<string, KindName>> = {
  notebook: 'Notebook',
  engine: 'Section',
  vehicle: 'Section',
  parts: 'Section',
  limits: 'Section',
  targets: 'Section',
  specs: 'Section',
  ports: 'Section',
  words: 'Section',
  session: 'Session',
  fit: 'Fit',
  remove: 'Fit',
  note: 'Note',
  todo: 'Item',
  fault: 'Item',
  done: 'Item',
  check: 'Check',
  photo: 'File',
  log: 'File',
  use: 'File',
  keep: 'Keep',
  revert: 'Revert',
  trial: 'Trial',
  want: 'Want',
  recheck: 'Recheck',
};

/** Chevrotain token types. `Anything` is the category of all of them, for what a rule leaves over. */
export const Anything = createToken({ name: 'Anything', pattern: Lexer.NA });
const named = (Object.keys(KIND) as KindName[]).map((name) => [
  name,
  createToken({ name, pattern: Lexer.NA, categories: Anything }),
]);
export const TOKEN = Object.fromEntries(named) as Readonly<Record<KindName, TokenType>>;
export const TOKEN_OF_KIND: ReadonlyMap<string, TokenType> = new Map(
  (Object.keys(KIND) as KindName[]).map((name) => [KIND[name], TOKEN[name]]),
);
