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
    pattern: 'filler|time* name any+',
    means: smoke,
    examples: [
      ['smoked blue on start up, then cleared', 'smoke blue "on start up" | note cleared'],
      ['smokes black when floored', 'smoke black "when floored"'],
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

const COLOURS = /^(?:blue|black|white|grey)$/;

/** A colour that the word takes, and what is said after it. */
function smoke(clause: Clause, { text }: Context): Meaning | undefined {
  const at = clause.findIndex(({ kind }) => kind === 'n');
  const [named, colour] = clause.slice(at);
  if (!named?.names.includes('smoke') || !colour || !COLOURS.test(colour.text)) return undefined;
  const rest = clause.slice(at + 2);
  if (rest.some(({ kind }) => /[vqwok?"]/.test(kind))) return undefined;
  const remark = rest.length > 0 ? textOf(rest, text) : '';
  return { facts: [fact('smoke', colour.text, remark)], names: ['smoke'] };
}
