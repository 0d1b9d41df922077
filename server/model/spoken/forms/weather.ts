/** A line of the air: temperature, pressure and humidity in any order, with the sky beside them. */
import { namesWith } from '../../../trade/vocabulary/vocabulary.ts';
import type { Piece } from '../classify.ts';
import type { Habits } from '../habits.ts';
import { SKY } from '../lexicon.ts';
import { sizeOf } from '../numbers.ts';
import type { SpokenAmount } from '../spoken-amount.ts';

const AIR = new Set(namesWith('weather'));

/** Lines of the notation; undefined where the line is not of the air alone. */
export function weatherIn(
  all: readonly Piece[],
  text: string,
  habits: Habits,
): readonly string[] | undefined {
  const { rest, asides } = withoutAsides(all, text);
  const pieces = rest;
  const numbers = pieces.filter(({ kind }) => kind === 'v');
  if (numbers.length === 0 || numbers.length > 4) return undefined;
  const parts = numbers.map(({ amount }) => partOf(amount as SpokenAmount, habits, pieces));
  if (parts.some((part) => part === undefined)) return undefined;
  const kinds = parts.map((part) => part?.kind);
  // Temperature and pressure together are the air, whatever is said of the day beside them.
  const isAirOnly = kinds.includes('temperature') && kinds.includes('pressure');
  const foreign = pieces.some(
    (piece) =>
      (isAirOnly ? /[tw?"]/ : /[twqc?opg"]/).test(piece.kind) &&
      !isAir(piece) &&
      !SKY.has(piece.text) &&
      piece.text !== 'in',
  );
  const isOther = ({ kind, names, text: word }: Piece) =>
    kind === 'n' && !SKY.has(word) && !names.some((name) => AIR.has(name));
  if (foreign || pieces.some(isOther)) return undefined;
  const said = pieces.filter(({ kind, text: word }) => /[xrk]/.test(kind) || SKY.has(word));
  const isSky = said.some(({ text: word }) => SKY.has(word));
  const isPlain = said.some(({ text: word }) =>
    /^(?:sunny|cloudy|overcast|clear|raining|rain|windy|foggy|muggy|humid|snow)$/.test(word),
  );
  const isDegrees =
    isPlain || numbers.some(({ amount }) => amount?.unit) || /\b(?:out|outside|shade)\b/i.test(text);
  if (!isAirOnly && said.some(({ text: word, kind }) => kind === 'x' && !SKY.has(word) && !AROUND.has(word)))
    return undefined;
  if (new Set(kinds).size < kinds.length) return undefined;
  const air = parts.filter((part) => part?.kind !== 'altitude');
  const named = pieces.some(({ names }) => names.some((name) => AIR.has(name)));
  if (air.length < 2 && !((isSky && isDegrees) || (named && kinds.includes('temperature')))) return undefined;
  const order = ['temperature', 'pressure', 'humidity'];
  const values = air
    .toSorted((a, b) => order.indexOf(a?.kind ?? '') - order.indexOf(b?.kind ?? ''))
    .map((part) => part?.value);
  const altitude = parts.find((part) => part?.kind === 'altitude');
  const isShade = /\b(?:in the )?shade\b/i.test(text) && air.length === 1;
  const head = isShade ? `air temperature ${values[0]}` : `weather ${values.join(', ')}`;
  if (asides.length > 0 && !isAirOnly) return undefined;
  const sky = [said.map(({ text: word }) => word).join(' '), ...asides].filter(Boolean).join(', ');
  return [
    ...(altitude ? [`altitude ${altitude.value}`] : []),
    head,
    ...(sky !== '' && !isShade ? [`note ${sky}`] : []),
  ];
}

/** `wind NW 25`, `lake 52 F`: numbers of the day that the notation has no word for. */
function withoutAsides(
  pieces: readonly Piece[],
  text: string,
): { readonly rest: readonly Piece[]; readonly asides: readonly string[] } {
  const from = pieces.findIndex(({ text: word }) => ASIDE.test(word));
  if (from < 0) return { rest: pieces, asides: [] };
  let to = from + 1;
  while (to < pieces.length && to < from + 4 && pieces[to]?.kind === 'x') to++;
  const counted = pieces[to];
  if (counted?.kind !== 'v' || !isAside(counted.amount as SpokenAmount)) return { rest: pieces, asides: [] };
  const aside = text.slice((pieces[from] as Piece).from, counted.to);
  return { rest: [...pieces.slice(0, from), ...pieces.slice(to + 1)], asides: [aside] };
}

/** No pressure, which a line of the air ends with. */
const isAside = ({ low, unit }: SpokenAmount): boolean =>
  unit?.dimension !== 'pressure' && sizeOf(low[0] as string) <= 120 && !(!unit && low[0]?.includes('.'));

const ASIDE = /^(?:wind|winds|lake|sea|river|pond|bay|harbour|harbor|creek|canal|rain)$/;

const isAir = ({ names, text }: Piece): boolean => names.some((name) => AIR.has(name)) || text === 'out';
const AROUND = new Set(['in', 'with', 'today', 'morning', 'evening', 'afternoon', 'outside', 'on']);

interface Part {
  readonly kind: 'temperature' | 'pressure' | 'humidity' | 'altitude';
  readonly value: string;
}

function partOf(
  { low, high, unit }: SpokenAmount,
  { units }: Habits,
  pieces: readonly Piece[],
): Part | undefined {
  const text = low.find((each) => sizeOf(each) >= 800 && sizeOf(each) <= 1090) ?? (low[0] as string);
  const size = sizeOf(text);
  const number = high ? `${text}..${high[0]}` : text;
  switch (unit?.dimension) {
    case 'temperature':
      return { kind: 'temperature', value: `${number} ${unit.symbol}` };
    case 'pressure':
      // `45 psi hot` is none of the air.
      if (!/^(?:hPa|mbar|kPa|inHg|mmHg)$/.test(unit.id)) return undefined;
      return { kind: 'pressure', value: `${number} ${unit.symbol}` };
    case 'percent':
    case 'humidity':
      return { kind: 'humidity', value: `${number} %RH` };
    case 'length':
      if (unit.id === 'in' && size > 25 && size < 32) return { kind: 'pressure', value: `${number} inHg` };
      return unit.id === 'ft' || unit.id === 'm'
        ? { kind: 'altitude', value: `${number} ${unit.symbol}` }
        : undefined;
  }
  if (unit && unit.id !== 'deg') return undefined;
  if (!unit && size >= 800 && size <= 1090) return { kind: 'pressure', value: `${number} hPa` };
  if (
    !unit &&
    /\./.test(text) &&
    size >= 18 &&
    size <= 32 &&
    pieces.filter(({ kind }) => kind === 'v').length > 1
  )
    return { kind: 'pressure', value: `${number} inHg` };
  const degree = units === 'metric' ? 'C' : units === 'us' ? 'F' : undefined;
  if (degree === 'C' && size <= 45) return { kind: 'temperature', value: `${number} C` };
  if (degree === 'F' && size >= -30 && size <= 120) return { kind: 'temperature', value: `${number} F` };
  return undefined;
}
