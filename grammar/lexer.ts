/**
 * Lexer: a line of text to its tokens. White space between tokens is not stored.
 */
import { FIRST_WORDS, KIND, type Kind, type KindName } from './tokens.ts';

/** Tokens of one line in parallel arrays: the kind of each as one character, and where each begins and ends. */
export interface Tokens {
  /** One character a token: the line's shape. */
  readonly kinds: string;
  readonly starts: readonly number[];
  readonly ends: readonly number[];
}

export interface Token {
  readonly kind: Kind;
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** Token patterns in three lists by first character, so that each scan is short. Order decides within each. */
const AFTER_DIGIT = scanner([
  ['Date', /\d{4}-\d{2}-\d{2}(?![\d-])/],
  ['Clock', /\d{1,2}:\d{2}(?::\d{2})?(?![\d:.])/],
  ['Ratio', /\d+(?:\.\d+)?:\d+(?:\.\d+)?/],
  ['Mixed', /\d+(?:[ \t]+|-)\d+\/\d+(?![\d/])/],
  ['Fraction', /\d+\/\d+(?![\d/])/],
  ['Order', /\d+(?:-\d+)+(?!\d)/],
  ['Word', /\d(?:st|nd|rd|th)(?![\p{L}\p{N}])/u],
  ['CommaNumber', /\d+(?:,\d+)+(?:\.\d+)?/],
  ['Number', /\d+(?:\.\d+)?/],
]);
const AFTER_LETTER = scanner([
  [
    'At',
    /at(?![\p{L}\p{N}_-])|in(?=[ \t]+(?:neutral|drive|gear|park|reverse|[dnpr]|ahead|astern|first|second|third|fourth|fifth|\d(?:st|nd|rd|th)|top|low|high)(?![\p{L}\p{N}]))/u,
  ],
  ['Word', /(?:all[ \t]+in|in\.?[ \t]+hg|in\.?[ \t]+h2o)(?![\p{L}\p{N}])/u],
  ['In', /in(?![\p{L}\p{N}_-]|\.[\p{L}\p{N}])(?:\.(?!\.))?/u],
  ['Out', /out(?![\p{L}\p{N}_-])/u],
  [
    'Word',
    /[\p{L}°%][\p{L}\p{M}\p{N}_°%²³]*(?:[-'’·*/.&][\p{L}\p{N}][\p{L}\p{M}\p{N}_°%²³]*)*(?:\.(?!\.))?/u,
  ],
]);
const AFTER_SIGN = scanner([
  ['Comment', /;[\s\S]*/],
  ['Comma', /,/],
  ['At', /@/],
  ['Text', /(?<!\d)"[^"]*"/],
  ['InchMark', /(?<=\d)"|″/],
  ['OpenText', /"[\s\S]*/],
  ['Cylinder', /#\d+/],
  ['Dots', /\.{2,}|…|–/],
  ['Ratio', /\.\d+:\d+(?:\.\d+)?/],
  ['Number', /\.\d+/],
  ['PlusMinus', /±|\+\/-/],
  ['Plus', /\+/],
  ['Arrow', /->|→/],
  ['Minus', /[-−]/],
  ['About', /~/],
  ['Bound', /[<>]=?|[≤≥]/],
  ['Flag', /\[[\p{L}-]+\]/u],
  ['Colon', /[:=]/],
  ['Unknown', /\S/],
]);

const isBlank = (character: string): boolean => /\s/.test(character);

/** By the first character, which may come in two halves. */
const scanFor = (first: string): Scan =>
  /^[0-9]/.test(first) ? AFTER_DIGIT : /^[\p{L}°%]/u.test(first) ? AFTER_LETTER : AFTER_SIGN;

/** Fast path of `scanFor` for the characters nearly all lines are made of, where a pattern would cost more than the token itself; undefined for white space. */
const SCAN_AFTER: readonly (Scan | undefined)[] = Array.from({ length: 128 }, (_, code) => {
  const character = String.fromCharCode(code);
  return isBlank(character) ? undefined : scanFor(character);
});

const PROSE = /[^\s;][^;]*/y;
/** Prose up to the first flag, so that a flag inside the text is not overlooked. */
const PROSE_WITH_FLAG = /(?!\[[\p{L}-]+\])[^\s;](?:(?!\[[\p{L}-]+\])[^;])*/uy;
const AS_IT_STANDS = /\S[\s\S]*/y;

/** Conflict marker as git writes it: exactly seven characters, then a space or the end of the line. */
const CONFLICT = /^(?:<{7}|\|{7}|={7}|>{7})(?![^ ])/;

/** The tokens of a line (without its break). Any text has an answer; nothing throws. */
export function lex(line: string): Tokens {
  if (CONFLICT.test(line)) return { kinds: KIND.Conflict, starts: [0], ends: [line.trimEnd().length] };
  const starts: number[] = [];
  const ends: number[] = [];
  let kinds = '';
  let first: KindName | undefined;
  let end = 0;
  for (let from = nextToken(line, 0); from < line.length; from = nextToken(line, end)) {
    const scanned = scanAt(line, from);
    const prose = startsProse(first, kinds, scanned.kind) ? proseAt(first, line, from) : undefined;
    const text = line.slice(from, scanned.to);
    if (scanned.kind === KIND.Word && beginsLine(kinds)) first = keyword(text, kinds);
    kinds += prose ? KIND.Prose : kindInLine(scanned.kind, first, kinds, text);
    end = prose ?? scanned.to;
    starts.push(from);
    ends.push(end);
  }
  return { kinds, starts, ends };
}

interface Scanned {
  readonly kind: Kind;
  readonly to: number;
}

type Scan = (line: string, from: number) => Scanned;

function scanner(patterns: readonly (readonly [KindName, RegExp])[]): Scan {
  const kinds = patterns.map(([name]) => KIND[name]);
  const pattern = new RegExp(patterns.map(([, { source }]) => `(${source})`).join('|'), 'iuy');
  return (line, from) => {
    pattern.lastIndex = from;
    const match = pattern.exec(line);
    // Half of a surrogate pair matches no pattern; it is kept as an unknown character.
    if (!match) return { kind: KIND.Unknown, to: from + 1 };
    const group = match.findIndex((text, i) => i > 0 && text !== undefined);
    return { kind: kinds[group - 1] as Kind, to: from + match[0].length };
  };
}

/** Where the next token begins; the end of the line where none does. */
function nextToken(line: string, from: number): number {
  let at = from;
  while (at < line.length && SCAN_AFTER[line.charCodeAt(at)] === undefined && isBlank(line.charAt(at))) at++;
  return at;
}

const scanAt: Scan = (line, from) =>
  (SCAN_AFTER[line.charCodeAt(from)] ?? scanFor(line.slice(from, from + 2)))(line, from);

function kindInLine(kind: Kind, first: KindName | undefined, before: string, text: string): Kind {
  if (kind !== KIND.Word) return kind;
  if (beginsLine(before)) return first ? KIND[first] : kind;
  return insideWord(first, text);
}

/** Whether only a clock time or `+20 min` comes before it. */
const beginsLine = (kinds: string): boolean =>
  kinds === '' || kinds === 'c' || kinds === '+nw' || kinds === '+fw' || kinds === '+mw';

/** Section words only at the very start: nobody writes `09:30 session`, and it begins no section. */
function keyword(word: string, before: string): KindName | undefined {
  const name = word.toLowerCase();
  const kind = Object.hasOwn(FIRST_WORDS, name) ? FIRST_WORDS[name] : undefined;
  return kind && before !== '' && SECTIONS.has(kind) ? undefined : kind;
}

const SECTIONS: ReadonlySet<KindName> = new Set(['Notebook', 'Section', 'Session']);

function insideWord(first: KindName | undefined, word: string): Kind {
  if (first === 'Revert' && /^to$/i.test(word)) return KIND.To;
  if (first === 'Recheck' && /^(?:after|every)$/i.test(word)) return KIND.After;
  return KIND.Word;
}

/** Start of free text on a line: a title, a note, a path, the text of an item. */
function startsProse(first: KindName | undefined, kinds: string, next: Kind): boolean {
  const last = kinds.at(-1);
  if (next === KIND.Comment) return first === 'Note' && last === KIND.Note;
  if (first === 'Notebook' || first === 'Keep') return last === KIND[first];
  if (first === 'Note') return last === KIND.Note;
  if (first === 'File') return last === KIND.File && next !== KIND.Text;
  if (first === 'Item') return last === KIND.Colon;
  return first === 'Session' && startsTitle(last, next);
}

/** A session's title comes after its date and clock time; `3-4 hours of work` is a title too. */
function startsTitle(last: string | undefined, next: Kind): boolean {
  if (last === KIND.Session) return next !== KIND.Date && next !== KIND.Order && next !== KIND.Clock;
  if (last === KIND.Date || last === KIND.Order) return next !== KIND.Clock;
  return last === KIND.Clock;
}

function proseAt(first: KindName | undefined, line: string, at: number): number | undefined {
  const pattern = first === 'Note' ? AS_IT_STANDS : first === 'Item' ? PROSE_WITH_FLAG : PROSE;
  pattern.lastIndex = at;
  const match = pattern.exec(line);
  return match ? at + match[0].trimEnd().length : undefined;
}

/** Every token of the line and the white space between: joined they are the line again. */
export function* everyToken(line: string, tokens: Tokens = lex(line)): Generator<Token> {
  let at = 0;
  const token = (kind: Kind, from: number, to: number): Token => ({
    kind,
    from,
    to,
    text: line.slice(from, to),
  });
  for (let i = 0; i < tokens.kinds.length; i++) {
    const from = tokens.starts[i] as number;
    const to = tokens.ends[i] as number;
    if (from > at) yield token(KIND.Blank, at, from);
    yield token(tokens.kinds[i] as Kind, from, to);
    at = to;
  }
  if (at < line.length) yield token(KIND.Blank, at, line.length);
}
