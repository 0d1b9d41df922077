/**
 * A line of text to its tokens. Only what carries meaning is kept; what lies between two tokens is blank.
 */
import { FIRST_WORDS, KIND, type Kind, type KindName } from './tokens.ts';

/** The tokens of one line, side by side: the kind of each as one character, and where each begins and ends. */
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

/** Order decides: the first that fits is taken. Groups are numbered; `GROUPS` names them. */
const PATTERNS: readonly (readonly [KindName, RegExp])[] = [
  ['Comment', /;[^]*/],
  ['Date', /\d{4}-\d{2}-\d{2}(?![\d-])/],
  ['Clock', /\d{1,2}:\d{2}(?::\d{2})?(?![\d:.])/],
  ['Ratio', /(?:\d+(?:\.\d+)?|\.\d+):\d+(?:\.\d+)?/],
  ['Mixed', /\d+(?:[ \t]+|-)\d+\/\d+(?![\d/])/],
  ['Fraction', /\d+\/\d+(?![\d/])/],
  ['Order', /\d+(?:-\d+)+(?!\d)/],
  ['CommaNumber', /\d+(?:,\d+)+(?:\.\d+)?/],
  ['Number', /\d+(?:\.\d+)?|\.\d+/],
  ['Text', /(?<!\d)"[^"]*"/],
  ['InchMark', /(?<=\d)"|″/],
  ['OpenText', /"[^]*/],
  ['Cylinder', /#\d+/],
  ['Flag', /\[[\p{L}-]+\]/u],
  ['Arrow', /->|→/],
  ['Dots', /\.{2,}|…|–/],
  ['Bound', /[<>]=?|[≤≥]/],
  ['PlusMinus', /±|\+\/-/],
  ['About', /~/],
  ['Plus', /\+/],
  ['Minus', /[-−]/],
  [
    'At',
    /@|at(?![\p{L}\p{N}_-])|in(?=[ \t]+(?:neutral|drive|gear|park|reverse|first|second|third|fourth|fifth|top|low|high)(?![\p{L}]))/iu,
  ],
  ['Word', /(?:all[ \t]+in|in[ \t]+hg|in[ \t]+h2o)(?![\p{L}\p{N}])/iu],
  ['In', /in(?![\p{L}\p{N}_-])/iu],
  ['Out', /out(?![\p{L}\p{N}_-])/iu],
  ['Word', /[\p{L}°%][\p{L}\p{M}\p{N}_°%²³]*(?:[-'’·*/.&][\p{L}\p{N}][\p{L}\p{M}\p{N}_°%²³]*)*/u],
  ['Comma', /,/],
  ['Colon', /[:=]/],
  ['Unknown', /[^\s]/u],
];
const GROUPS: readonly Kind[] = PATTERNS.map(([name]) => KIND[name]);
const SCAN = new RegExp(PATTERNS.map(([, pattern]) => `(${pattern.source})`).join('|'), 'giu');
const PROSE = /[^\s;][^;]*/y;
const PROSE_WITH_FLAG = /(?!\s*\[[\p{L}-]+\])[^\s;](?:(?!\s\[[\p{L}-]+\]\s*(?:;|$))[^;])*/uy;
const AS_IT_STANDS = /\S[^]*/y;

/** The tokens of a line (without its break). Any text has an answer; nothing throws. */
export function lex(line: string): Tokens {
  const starts: number[] = [];
  const ends: number[] = [];
  let kinds = '';
  let first: KindName | undefined;
  const push = (kind: string, from: number, to: number) => {
    kinds += kind;
    starts.push(from);
    ends.push(to);
  };
  SCAN.lastIndex = 0;
  for (let match = SCAN.exec(line); match; match = SCAN.exec(line)) {
    const at = match.index;
    const prose = startsProse(first, kinds, kindOf(match)) ? proseAt(first, line, at) : undefined;
    if (prose) {
      push(KIND.Prose, at, prose);
      SCAN.lastIndex = prose;
      continue;
    }
    let kind = kindOf(match);
    if (kind === KIND.Word && beginsLine(kinds)) {
      first = keyword(match[0]);
      if (first) kind = KIND[first];
    } else if (kind === KIND.Word) kind = insideWord(first, match[0]);
    push(kind, at, at + match[0].length);
  }
  return { kinds, starts, ends };
}

function kindOf(match: RegExpExecArray): Kind {
  for (let group = 1; group < match.length; group++)
    if (match[group] !== undefined) return GROUPS[group - 1] as Kind;
  return KIND.Unknown;
}

/** Nothing before it but a clock time, or `+20 min`. */
const beginsLine = (kinds: string): boolean =>
  kinds === '' || kinds === 'c' || kinds === '+nw' || kinds === '+fw';

const keyword = (word: string): KindName | undefined => {
  const name = word.toLowerCase();
  return Object.hasOwn(FIRST_WORDS, name) ? FIRST_WORDS[name] : undefined;
};

function insideWord(first: KindName | undefined, word: string): Kind {
  if (first === 'Revert' && /^to$/i.test(word)) return KIND.To;
  if (first === 'Recheck' && /^after$/i.test(word)) return KIND.After;
  return KIND.Word;
}

/** Where a line of free text leaves the notation: a title, a note, a path, the text of an item. */
function startsProse(first: KindName | undefined, kinds: string, next: Kind): boolean {
  const last = kinds.at(-1);
  if (next === KIND.Comment) return first === 'Note' && last === KIND.Note;
  if (first === 'Notebook' || first === 'Keep') return last === KIND[first];
  if (first === 'Note') return last === KIND.Note;
  if (first === 'File') return last === KIND.File && next !== KIND.Text;
  if (first === 'Item') return last === KIND.Colon;
  if (first !== 'Session' || last === KIND.Prose) return false;
  return next !== KIND.Date && next !== KIND.Clock && next !== KIND.Order;
}

function proseAt(first: KindName | undefined, line: string, at: number): number | undefined {
  const pattern = first === 'Note' ? AS_IT_STANDS : first === 'Item' ? PROSE_WITH_FLAG : PROSE;
  pattern.lastIndex = at;
  const match = pattern.exec(line);
  return match ? at + match[0].trimEnd().length : undefined;
}

/** Every token of the line, blanks too: joined they are the line again. */
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
