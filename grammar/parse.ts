/**
 * Parser entry point: text to lines. A line is parsed from its own text alone. Trees are cached by shape, so the parser proper runs a
 * few hundred times for a notebook of any length; lines themselves are not cached, as finding one again costs as
 * much as its tokens.
 */
import { lex, type Tokens } from './lexer.ts';
import { parseShape } from './parser.ts';
import type { Span } from './source.ts';
import type { LineSyntax, Run } from './syntax.ts';
import { KIND } from './tokens.ts';

export interface Line {
  /** Without its break. */
  readonly text: string;
  readonly tokens: Tokens;
  readonly syntax: LineSyntax;
  /** Number of the comment's token, if there is one: always the last. */
  readonly comment: number | undefined;
  /** True where the line is longer than `LONGEST_LINE` and was not read. */
  readonly tooLong: boolean;
}

/** UTF-16 code units. A longer line is kept and reported, not read: nobody pencils one. */
export const LONGEST_LINE = 2000;
const UNREAD: Tokens = { kinds: '', starts: [], ends: [] };
const BLANK: LineSyntax = { kind: 'blank', time: [0, 0], stray: [0, 0] };

/** Reads one line (without its break). Any text has an answer; nothing throws. */
export function parseLine(text: string): Line {
  if (text.length > LONGEST_LINE)
    return { text, tokens: UNREAD, syntax: BLANK, comment: undefined, tooLong: true };
  const tokens = lex(text);
  const commented = tokens.kinds.endsWith(KIND.Comment);
  const shape = commented ? tokens.kinds.slice(0, -1) : tokens.kinds;
  const comment = commented ? shape.length : undefined;
  return { text, tokens, syntax: treeOf(shape), comment, tooLong: false };
}

const treeOf = remembered(2000, parseShape);

/** Cache of the latest answers: two generations of `size`, the older dropped as a whole. */
function remembered<Answer>(size: number, ask: (question: string) => Answer): (question: string) => Answer {
  let young = new Map<string, Answer>();
  let old = new Map<string, Answer>();
  return (question) => {
    let answer = young.get(question);
    if (answer !== undefined) return answer;
    answer = old.get(question) ?? ask(question);
    if (young.size >= size) {
      old = young;
      young = new Map();
    }
    young.set(question, answer);
    return answer;
  };
}

/** Empty for a token that the line does not have. */
export function tokenText(line: Line, token: number): string {
  return line.text.slice(line.tokens.starts[token], line.tokens.ends[token]);
}

/** The end of the line for a token that it does not have. */
export function tokenSpan(line: Line, token: number): Span {
  return {
    from: line.tokens.starts[token] ?? line.text.length,
    to: line.tokens.ends[token] ?? line.text.length,
  };
}

/** A rule that found nothing leaves a run without tokens. */
export const isEmpty = (run: Run): boolean => run[0] === run[1];

/** The columns of a run; of an empty one, the place where it would be. */
export function runSpan(line: Line, run: Run): Span {
  if (!isEmpty(run)) return { from: tokenSpan(line, run[0]).from, to: tokenSpan(line, run[1] - 1).to };
  const from = run[0] === 0 ? 0 : tokenSpan(line, run[0] - 1).to;
  return { from, to: from };
}

/** The text of a run, including white space between its tokens. */
export function runText(line: Line, run: Run): string {
  const { from, to } = runSpan(line, run);
  return line.text.slice(from, to);
}

/** The texts of the tokens of a run. */
export function runWords(line: Line, run: Run): string[] {
  const words: string[] = [];
  for (let token = run[0]; token < run[1]; token++) words.push(tokenText(line, token));
  return words;
}
