/** The colouring grammar of editors, made from the tables of the notation and of the trade. */
import { FIRST_WORDS, type KindName } from '../../grammar/index.ts';
import { UNITS } from '../../server/trade/measure/units.ts';
import type { QuantityKind } from '../../server/trade/vocabulary/quantity.ts';
import { PLACE_WORDS, VOCABULARY } from '../../server/trade/vocabulary/vocabulary.ts';

interface Pattern {
  readonly name?: string;
  readonly match: string;
  readonly captures?: Readonly<Record<string, { readonly name: string }>>;
}

const TIME = String.raw`(?:(\d{1,2}:\d\d(?::\d\d)?|\+[ \t]*\d+(?:\.\d+)?[ \t]*\p{L}+)[ \t]+)?`;
const NUMBER = String.raw`\d+(?:\.\d+)?(?:[ \t]+\d+/\d+|/\d+|:\d+(?:\.\d+)?|(?:-\d+)+)?|\.\d+`;
const WORD_ENDS = String.raw`(?![\p{L}\p{N}])`;
/** `850 in drive` means no inches. */
const NO_INCHES = String.raw`(?!in[ \t]+(?!hg|h2o|w[gc]\b)\p{L})`;

/** The text of the grammar's file. */
export function colouring(): string {
  const grammar = {
    name: 'Tappet',
    scopeName: 'text.tappet',
    patterns: [...heads(), ...insideALine()].map(scoped),
  };
  return `${JSON.stringify(grammar, null, 2)}\n`;
}

/** What a line begins with, each with what belongs to it alone. The rest of the line is coloured by what is inside it. */
function heads(): readonly Pattern[] {
  const name = '([^;"]*)';
  const date = String.raw`(\d{4}-\d\d-\d\d)?[ \t]*(\d{1,2}:\d\d)?[ \t]*`;
  const item = String.raw`([^:;\s]*)[ \t]*(:?)([^;\["]*)`;
  const trial = '([^;]*?)(?:(->|→)([^;]*))?(?=;|$)';
  return [
    heading(head('Notebook', name, 'entity.name.section')),
    heading(head('Section')),
    heading(
      head('Session', date + name, 'constant.numeric.date', 'constant.numeric.time', 'entity.name.section'),
    ),
    head('Note', '(.*)', 'markup.italic'),
    head('Item', item, 'entity.name.type', 'punctuation.separator', 'markup.italic'),
    head('Fit', name, 'entity.name.type'),
    head('File', name, 'string.unquoted'),
    head('Trial', trial, 'variable.parameter', 'keyword.operator', 'variable.parameter'),
    ...(['Check', 'Keep', 'Revert', 'Want', 'Recheck'] as const).map((kind) => head(kind)),
    entry('setting', 'variable.parameter'),
    entry('reading', 'entity.name.function'),
    entry('fact', 'variable.parameter'),
  ];
}

function insideALine(): readonly Pattern[] {
  return [
    { name: 'comment.line.semicolon', match: ';.*$' },
    { name: 'string.quoted.double', match: String.raw`(?<!\d)"[^"]*"` },
    { name: 'storage.modifier', match: String.raw`\[[\p{L}-]+\]` },
    { name: 'constant.numeric.date', match: String.raw`\d{4}-\d\d-\d\d` },
    { name: 'constant.language', match: String.raw`#\d+` },
    {
      match: `(${NUMBER})(?:[ \\t]*${NO_INCHES}(${anyOf(unitSpellings())}))?${WORD_ENDS}`,
      captures: captures('constant.numeric', 'keyword.other.unit'),
    },
    { name: 'constant.numeric', match: NUMBER },
    { name: 'keyword.operator', match: '->|→|\\.{2,}|[<>]=?|[≤≥±~+=@-]' },
    { name: 'keyword.operator.word', match: `(?<![\\p{L}\\p{N}])(?:at|in|out)${WORD_ENDS}` },
    {
      name: 'constant.language',
      match: `(?<![\\p{L}\\p{N}])(?:${anyOf([...PLACE_WORDS.keys(), ...valueWords()])})${WORD_ENDS}`,
    },
  ];
}

/** A line that begins with a word of this kind; `scopes` are those of the groups of `rest`. */
function head(kind: KindName, rest = '', ...scopes: readonly string[]): Pattern {
  const words = Object.keys(FIRST_WORDS).filter((word) => FIRST_WORDS[word] === kind);
  const match = `^[ \\t]*${TIME}(${anyOf(words)})${WORD_ENDS}[ \\t]*${rest}`;
  return { match, captures: captures('constant.numeric.time', 'keyword.control', ...scopes) };
}

function heading(pattern: Pattern): Pattern {
  return { name: 'markup.heading', ...pattern };
}

function entry(kind: QuantityKind, scope: string): Pattern {
  const names = VOCABULARY.filter((row) => row.kind === kind).flatMap((row) => [row.name, ...row.aliases]);
  return {
    match: `^[ \\t]*${TIME}(${anyOf(names)})${WORD_ENDS}`,
    captures: captures('constant.numeric.time', scope),
  };
}

function unitSpellings(): readonly string[] {
  return UNITS.flatMap(({ symbol, spellings }) => [symbol, ...spellings]);
}

/** The words that stand for a value: `manifold`, `capped`, `gasoline`. */
function valueWords(): readonly string[] {
  return VOCABULARY.flatMap((row) => row.words ?? []);
}

/** Longest first, so that `mechanical limit` is not taken for `mechanical`. */
function anyOf(words: readonly string[]): string {
  const unique = [...new Set(words.map((word) => word.toLowerCase()))];
  return unique
    .sort((a, b) => b.length - a.length || (a < b ? -1 : 1))
    .map(asPattern)
    .join('|');
}

function asPattern(words: string): string {
  return words.replace(/[\\^$.*+?()[\]{}|/]/g, '\\$&').replace(/[ ·-]/g, '[ \\t·.-]*');
}

function captures(...scopes: readonly string[]) {
  return Object.fromEntries(scopes.map((name, index) => [index + 1, { name: `${name}.tappet` }]));
}

function scoped(pattern: Pattern): Pattern {
  const name = pattern.name ? { name: `${pattern.name}.tappet` } : {};
  return { ...pattern, ...name, match: `(?i)${pattern.match}` };
}
