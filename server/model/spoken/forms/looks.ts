/** Forms of a clause that tells in words: how plugs look, that nothing knocks. */
import { namesWith } from '../../../trade/vocabulary/vocabulary.ts';
import type { Piece } from '../classify.ts';
import type { Clause } from '../clauses.ts';
import type { Context, Fact, Form, Meaning } from '../form.ts';
import { LOOKS } from '../lexicon.ts';
import { sizeOf } from '../numbers.ts';

export const WORDS: readonly Form[] = [
  {
    name: 'none of it',
    pattern: 'filler|time* no filler|other* name any*',
    means: none,
    examples: [
      ['no ping at 34', 'knock none'],
      ['no smoke', 'smoke none'],
    ],
  },
  {
    name: 'gone',
    pattern: 'filler* name filler|trouble|other+',
    means: gone,
    examples: [['flat spots gone', 'hesitation none']],
  },
  {
    name: 'how plugs look',
    pattern: 'any+',
    means: looks,
    examples: [
      [
        'plugs 1 to 4 tan, rest sooty',
        'plug #1 tan, #2 tan, #3 tan, #4 tan, #5 sooty, #6 sooty',
        { cylinders: 6 },
      ],
      ['plug 4 white', 'plug #4 white'],
    ],
  },
  {
    name: 'what the engine does when a pin is lifted, or how it starts',
    pattern: 'any+',
    means: told,
    examples: [
      ['lift pin: front steady', 'lift pin front carb steady', { places: ['front carb', 'rear carb'] }],
    ],
  },
];

const DENIED = new Set(namesWith('symptom'));

const fact = (name: string, value: string, place?: string, remark = ''): Fact => ({
  name,
  place,
  value,
  states: [],
  remark,
  of: 'now',
  others: [],
});

function none(clause: Clause): Meaning | undefined {
  const name = clause.find(({ kind }) => kind === 'n')?.names[0] ?? '';
  if (!DENIED.has(name) || clause.some(({ kind }) => /[twq?]/.test(kind))) return undefined;
  const speed = clause.find(({ kind, text }) => kind === 'g' && text.startsWith('@'));
  return { facts: [{ ...fact(name, 'none'), states: speed ? [speed.text] : [] }], names: [name] };
}

function gone(clause: Clause): Meaning | undefined {
  const name = clause.find(({ kind }) => kind === 'n')?.names[0] ?? '';
  const rest = clause.filter(({ kind }) => kind !== 'n' && kind !== 'f');
  if (!DENIED.has(name) || rest.length !== 1 || !/^(?:gone|cured|vanished)$/.test(rest[0]?.text ?? ''))
    return undefined;
  return { facts: [fact(name, 'none')], names: [name] };
}

/** Cylinders, then the words for them; `rest` and `others` are those not yet named. */
function looks(clause: Clause, context: Context): Meaning | undefined {
  const subject = clause.find(({ kind }) => kind === 'n');
  const isPlugs = subject
    ? /^(?:spark|plugs?|plug (?:chop|colou?rs?|looks?|reading))$/.test(subject.text)
    : context.names?.[0] === 'plug';
  if (!isPlugs) return undefined;
  const rest = clause.filter(
    (piece) => piece !== subject && !/[:fa,/=-]/.test(piece.kind) && !OUT.has(piece.text),
  );
  const sided = bySides(rest);
  if (sided) return { facts: sided, names: ['plug'] };
  const cylinders: number[] = [];
  const words: string[] = [];
  for (const piece of rest) {
    const numbers = cylindersOf(piece, context, rest);
    if (numbers && words.length === 0) cylinders.push(...numbers);
    else if (LOOKS.has(piece.text) && SHADES.has(words.at(-1) ?? ''))
      words.push(`${words.pop()} ${piece.text}`);
    else if (LOOKS.has(piece.text)) words.push(piece.text);
    else if (piece.text === 'n' && words.length > 0) continue;
    else return undefined;
  }
  if (rest.length === 0) return { names: ['plug'], isHeading: true };
  if (words.length === 0) return undefined;
  const each = cylinders.length > 0 ? cylinders : everyCylinder(words, context);
  if (each.length === words.length && each.length > 2)
    return {
      facts: each.map((cylinder, i) => fact('plug', quotedIf(words[i] as string), `#${cylinder}`)),
      names: ['plug'],
    };
  // More looks than plugs, or fewer: which is whose is not said.
  if (words.length > 2 && cylinders.length > 1) return undefined;
  if (cylinders.length === 0)
    return subject && words.length > 0
      ? { facts: [fact('plug', `"${words.join(' ')}"`)], names: ['plug'] }
      : undefined;
  const value =
    words.length === 1 && !words[0]?.includes(' ') ? (words[0] as string) : `"${words.join(' ')}"`;
  return { facts: cylinders.map((cylinder) => fact('plug', value, `#${cylinder}`)), names: ['plug'] };
}

/** `L light brown R a little white`: sides, then the words for each. */
function bySides(rest: readonly Piece[]): readonly Fact[] | undefined {
  const sides = rest.flatMap(({ kind, text }, i) => (kind === 'p' && !text.startsWith('#') ? [i] : []));
  if (sides[0] !== 0) return undefined;
  const each = sides.map((from, i) => rest.slice(from, sides[i + 1] ?? rest.length));
  if (each.some(([, ...looks]) => looks.length === 0 || !looks.every(isLook))) return undefined;
  return each.map(([side, ...looks]) =>
    fact('plug', `"${looks.map(({ text }) => text).join(' ')}"`, (side as Piece).text),
  );
}

const isLook = ({ text }: Piece): boolean => LOOKS.has(text) || /^(?:little|touch|n)$/.test(text);

/** `plugs tan, tan, brown, tan`: one for each cylinder of the engine. */
const everyCylinder = (words: readonly string[], { habits }: Context): readonly number[] =>
  words.length === habits.cylinders ? words.map((_, i) => i + 1) : [];

/** These belong to the colour after them. */
const SHADES = new Set(['light', 'dark', 'pale', 'very', 'slightly']);
const OUT = new Set([
  'out',
  'chop',
  'look',
  'looks',
  'looking',
  'came',
  'are',
  'is',
  'all',
  'both',
  'four',
  'six',
  'eight',
]);

function cylindersOf(
  piece: Piece,
  { facts, habits }: Context,
  rest: readonly Piece[],
): readonly number[] | undefined {
  const { kind, text, amount } = piece;
  if (kind === 'p' && text.startsWith('#')) return [Number(text.slice(1))];
  if (text === 'rest' || text === 'others') {
    const named = new Set(facts.filter(({ name }) => name === 'plug').map(({ place }) => place));
    if (!habits.cylinders || named.size === 0) return undefined;
    return Array.from({ length: habits.cylinders }, (_, i) => i + 1).filter((each) => !named.has(`#${each}`));
  }
  if (kind !== 'v' || !amount || amount.unit || rest.length < 2) return undefined;
  const from = sizeOf(amount.low[0] as string);
  const to = amount.high ? sizeOf(amount.high[0] as string) : from;
  if (!Number.isInteger(from) || !Number.isInteger(to) || from < 1 || to > (habits.cylinders ?? 16))
    return undefined;
  return Array.from({ length: to - from + 1 }, (_, i) => from + i);
}

const quotedIf = (text: string): string => (text.includes(' ') ? `"${text}"` : text);

const TOLD = new Set(namesWith('inOwnWords'));
const STARTS =
  /^(?:(?:it|she|he) )?(?:fired|started|caught|starts|took (?:\S+ )?(?:pulls|swings|turns)|(?:hot |cold )?restart)\b/;
const KNOWN = /^(?:rises|falls|stalls|steady|easy|hard|none)$/;
const AWAY = new Set(['away', 'slowly', 'quickly']);

/** `bogs when the secs come in`, `flat spot at 1500`: what it does, in quotes, with the speed it does it at. */
function hesitates(clause: Clause, context: Context): Meaning | undefined {
  if (clause.some(({ kind }) => /[vw?o]/.test(kind)) || clause[0]?.kind !== 'n') return undefined;
  if (/^holes?$/.test(clause[0].text) && !clause.every(isOfThrottle)) return undefined;
  const states = clause
    .filter(({ kind, text }) => kind === 'g' && text.startsWith('@'))
    .map(({ text }) => text);
  const words = clause.filter(({ kind }) => kind !== 'g');
  const said = context.text.slice((words[0] as Piece).from, (words.at(-1) as Piece).to);
  return { facts: [{ ...fact('hesitation', `"${said}"`), states }], names: ['hesitation'] };
}

/** `hole off idle`, and no hole in the floor. */
const isOfThrottle = ({ kind, text }: Piece): boolean =>
  /[ngfrp]/.test(kind) ||
  /^(?:off|in|between|till|under|over|when|opening|slight|bad|small|big|gone|there|still)$/.test(text);

/** One of the words that the reading takes, else what is said in quotes. */
function told(clause: Clause, context: Context): Meaning | undefined {
  const at = clause.findIndex(({ kind }) => kind === 'n');
  const isStart =
    at < 0 &&
    !clause.some(({ kind }) => /[t?]/.test(kind)) &&
    STARTS.test(clause.map(({ text }) => text).join(' '));
  const state = at < 0 && clause.some(({ kind }) => kind === 'p') ? (context.names?.[0] ?? '') : '';
  const name = isStart ? 'starting' : at < 0 ? state : (clause[at]?.names[0] ?? '');
  if (!TOLD.has(name) || clause.slice(0, Math.max(at, 0)).some(({ kind }) => kind !== 'f')) return undefined;
  const rest = clause.slice(at + 1).filter(({ kind }) => kind !== ':' && kind !== 'f');
  if (rest.length === 0 && name !== 'hesitation') return { names: [name], isHeading: true };
  const places = rest
    .filter(({ kind }) => kind === 'p')
    .map(({ text }) => (context.habits.places?.includes(`${text} carb`) ? `${text} carb` : text));
  const words = rest.filter(({ kind }) => kind !== 'p');
  if (name === 'hesitation') return hesitates(clause, context);
  if (words.length === 0 || words.some(({ kind, text }) => kind === '?' || (kind === 'w' && text !== 'try')))
    return undefined;
  const first = words[0] as Piece;
  const last = words.at(-1) as Piece;
  const text = context.text.slice(first.from, last.to).replaceAll('"', '');
  const isKnown = KNOWN.test(first.text) && words.slice(1).every((word) => AWAY.has(word.text));
  const value = isKnown ? first.text : `"${text}"`;
  const both = words.some((word) => word.text === 'both') ? (context.habits.places ?? []) : [];
  const at2 = name === 'lift pin' && both.length === 2 ? both : [places[0]];
  return { facts: at2.map((place) => fact(name, value, place)), names: [name] };
}
