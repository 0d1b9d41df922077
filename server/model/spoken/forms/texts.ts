/** Forms of a clause that says by a code or a share which one is fitted or filled in: an emulsion tube, a plug, antifreeze. */
import { type Clause, textOf } from '../clauses.ts';
import type { Context, Fact, Form, Meaning } from '../form.ts';

export const TEXTS: readonly Form[] = [
  {
    name: 'the code of what is fitted',
    pattern: 'filler* name any+',
    means: code,
    examples: [
      ['emulsion tubes F16', 'emulsion tube "F16"'],
      ['plugs W7', 'plug type "W7"'],
      ['antifreeze 40%', 'coolant "antifreeze 40%"'],
    ],
  },
  {
    name: 'the colour of the smoke',
    pattern: 'filler|time|other|remark* name any+',
    means: smoke,
    examples: [
      ['smoked blue on start up, then cleared', 'smoke blue "on start up" | note cleared'],
      ['smokes black when floored', 'smoke black "when floored"'],
      ['Downhill smoke greyish', 'smoke grey "Downhill"'],
    ],
  },
  {
    name: 'what was too lean or too rich, before another was put in',
    pattern: 'filler* name amount comparison any+',
    means: replaced,
    examples: [
      [
        'main jet 130 was lean above 4000, put 135 in',
        'main jet 135 | note main jet 130 was lean above 4000',
        { units: 'metric' },
      ],
    ],
  },
  {
    name: 'smoke that has gone',
    pattern: 'any+',
    means: cleared,
    examples: [['the grey haze has gone on the overrun', 'smoke none "on the overrun"']],
  },
  {
    name: 'a plug of another heat range',
    pattern: 'name filler|other|amount+',
    means: heat,
    examples: [
      ['plugs one step hotter', 'heat range "one step hotter"'],
      ['plugs one grade colder, 0,7', 'heat range "one grade colder" | plug gap 0.7 mm', { units: 'metric' }],
    ],
  },
];

const fact = (name: string, value: string, remark = ''): Fact => ({
  name,
  place: undefined,
  value,
  states: [],
  remark,
  of: 'now',
  others: [],
});

const CODE = /^[A-Z]{1,3}-?\d{1,4}[A-Z]{0,3}$/;
const SHARE = /^\d{1,2} ?%(?: mix)?$/;
const OCTANE = /^(?:9\d|1\d\d|8\d)(?: ?(?:RON|octane|E5|E10))?$/i;

/** By what it is called: which word of the trade, how it is written, and whether the name is part of it. */
const CODED: readonly (readonly [called: RegExp, name: string, written: RegExp, whole?: true])[] = [
  [/^emulsion(?: tubes?)?$/i, 'emulsion tube', CODE],
  [/^(?:spark ?)?plugs?$/i, 'plug type', CODE],
  [/^(?:jet )?needles?$/i, 'needle', CODE],
  [/^anti-?freeze$/i, 'coolant', SHARE, true],
  [/^coolant$/i, 'coolant', SHARE],
  [/^(?:fuel|petrol|gas|benzin)(?: grade)?$/i, 'fuel grade', OCTANE],
];

function code(clause: Clause, { text }: Context): Meaning | undefined {
  const at = clause.findIndex(({ kind }) => kind === 'n');
  const called = textOf(clause.slice(at, at + 1), text);
  const rest = textOf(clause.slice(at + 1), text).trim();
  const row = CODED.find(([name, , written]) => name.test(called) && written.test(rest));
  if (!row) return undefined;
  const [, name, , whole] = row;
  return { facts: [fact(name, `"${whole ? `${called.toLowerCase()} ${rest}` : rest}"`)], names: [name] };
}

const COLOURS: ReadonlyMap<string, string> = new Map([
  ['blue', 'blue'],
  ['bluish', 'blue'],
  ['black', 'black'],
  ['blackish', 'black'],
  ['white', 'white'],
  ['whitish', 'white'],
  ['grey', 'grey'],
  ['gray', 'grey'],
  ['greyish', 'grey'],
  ['grayish', 'grey'],
]);

/** Where it smokes, said before the word for it. */
const WHEN = /^(?:overrun|downhill|uphill|startup|start-up|tickover|idle)$/;

/** A colour that the word takes, and what is said after it. */
function smoke(clause: Clause, { text }: Context): Meaning | undefined {
  const at = clause.findIndex(({ kind }) => kind === 'n');
  const [named, colour] = clause.slice(at);
  const shade = COLOURS.get(colour?.text ?? '');
  const lead = clause.slice(0, at).filter(({ kind }) => /[xr]/.test(kind));
  if (!named?.names.includes('smoke') || !shade || lead.some(({ text: word }) => !WHEN.test(word)))
    return undefined;
  const rest = clause.slice(at + 2);
  if (rest.some(({ kind }) => /[vqwok?"]/.test(kind))) return undefined;
  const remark = [lead, rest].filter((each) => each.length > 0).map((each) => textOf(each, text));
  return { facts: [fact('smoke', shade, remark.join(', '))], names: ['smoke'] };
}

const CLEARED =
  /^(?:that |the )?(?:blue|black|white|grey|gray) (?:haze|smoke) (?:has |is |all )?gone(?: (?:(?:off|on|from) (the overrun|start up|tickover)))?$/i;

function cleared(clause: Clause, { text }: Context): Meaning | undefined {
  const found = CLEARED.exec(textOf(clause, text));
  return found
    ? { facts: [fact('smoke', 'none', found[1] ? `on ${found[1]}` : '')], names: ['smoke'] }
    : undefined;
}

const HEAT = /^plugs? ((?:one|two|1|2) (?:numbers?|steps?|grades?|ranges?) (?:colder|hotter|cooler))$/i;

function heat(clause: Clause, { text }: Context): Meaning | undefined {
  const said = HEAT.exec(textOf(clause, text))?.[1];
  return said ? { facts: [fact('heat range', `"${said}"`)], names: ['plug gap'] } : undefined;
}

/** Only a heading, so that another value of the same thing must follow. */
function replaced(clause: Clause, { text }: Context): Meaning | undefined {
  const at = clause.findIndex(({ kind }) => kind === 'q');
  const how = clause[at + 1]?.text === 'too' ? clause[at + 2] : clause[at + 1];
  const named = clause.find(({ kind }) => kind === 'n');
  const isPast = /^(?:was|were)$/.test(clause[at]?.text ?? '');
  if (!named || !isPast || !/^(?:lean|weak|rich)$/.test(how?.text ?? '')) return undefined;
  return { note: textOf(clause, text), names: named.names, isHeading: true };
}
