/** Words that mean something else beside their neighbours: `put in`, `dead on`, `in traffic`, `driver side`. */
import type { Piece } from './classify.ts';
import type { Habits } from './habits.ts';
import { sizeOf } from './numbers.ts';

/** A number with nothing beside it. */
export const bare = (piece: Piece | undefined): number | undefined => {
  const amount = piece?.kind === 'v' ? piece.amount : undefined;
  return amount && !amount.unit && !amount.high && amount.prefix === ''
    ? sizeOf(amount.low[0] as string)
    : undefined;
};

/** `put in a 160 stat`, `went to 68s`: what is fitted is no change of so much. */
export function fitted(all: readonly Piece[], { units }: Habits): readonly Piece[] {
  const pieces = all.map((piece, i) => asMeant(piece, i, all, units));
  const [verb, way] = pieces;
  const isFitted = FITTED.test(verb?.text ?? '') && /^(?:in|on|up|up to|down)$/.test(way?.text ?? '');
  return isFitted && verb && way && pieces[2]?.kind !== 'k'
    ? [{ ...verb, kind: 'f', text: 'fitted', names: [], to: way.to }, ...pieces.slice(2)]
    : pieces;
}

/** `knocked it back 2` is a change and no noise; `2 runs` are two of them. */
function asMeant(piece: Piece, at: number, all: readonly Piece[], units: Habits['units']): Piece {
  const isMoved = /^knock(?:ed|s)?$/.test(piece.text) && all.slice(at).some(({ kind }) => kind === 'c');
  if (isMoved) return { ...piece, kind: 'c', names: [] };
  const before = all[at - 1];
  const next = all[at + 1];
  // Where people drive on the right the driver sits on the left.
  const side =
    units === 'us' && piece.kind === 'p'
      ? { 'driver side': 'left', 'passenger side': 'right' }[piece.text]
      : '';
  if (side) return { ...piece, text: side };
  if (piece.text === 'off' && before?.text === 'backed') return { ...piece, kind: 'f' };
  if (piece.text === 'dead' && next?.text === 'on') return { ...piece, kind: 'f' };
  // `pulls down to 1800`: what it came to.
  if (
    /^(?:pulls|pulled|pulling|drags|dragged)$/.test(piece.text) &&
    /^(?:down|up)$/.test(next?.text ?? '') &&
    all[at + 2]?.text === 'to'
  )
    return { ...piece, kind: 'f' };
  if (
    /^(?:down|up)$/.test(piece.text) &&
    /^(?:pull|drag|goes|went|dropp?|com|came|crept|climb|fell|fall|rose|run|ran|settl)/.test(
      before?.text ?? '',
    ) &&
    next?.text === 'to'
  )
    return { ...piece, kind: 'f' };
  // `creeps to 185`
  if (/^(?:creeps|crept|creeping|creep)$/.test(piece.text) && /^(?:to|up)$/.test(next?.text ?? ''))
    return { ...piece, kind: 'f' };
  // `14.1 at fast idle`: when, of what is no speed itself.
  const value = all.slice(0, at).findLast(({ kind }) => kind === 'v');
  if (/^(?:fast|high) idle$/.test(piece.text) || (piece.names.includes('fast idle') && before?.text === 'at'))
    if (before?.text === 'at' && (bare(value) ?? 1000) < 300) return { ...piece, kind: 'x', names: [] };
  // A balancer with marks on it is read with a light, and no meter for carburettors.
  if (
    piece.text === 'balancer' &&
    all.some(({ text }) => /^(?:marks?|pointer|tab|paint|painted)$/.test(text))
  )
    return { ...piece, names: ['initial'] };
  if (isWhere(all, at)) return { ...piece, kind: 'x', names: [] };
  if (piece.text === 'pulling' && all.slice(0, at).some(({ kind }) => kind === 'v'))
    return { ...piece, kind: 'x' };
  // `in traffic`, `on the run`: where, and no change or run.
  if (piece.kind === 'c' && piece.text === 'in' && next?.kind === 'x') return { ...piece, kind: 'x' };
  if (piece.text === 'run' && /^(?:the|a)$/.test(before?.text ?? '') && all[at - 2]?.text === 'on')
    return { ...piece, kind: 'x', names: [] };
  const isAll =
    before?.text === 'all' && /^[23468]$/.test(piece.amount?.low[0] ?? '') && bare(piece) !== undefined;
  if (isAll && next?.kind !== ':' && all.filter(({ kind }) => kind === 'v').length > 1)
    return { ...piece, kind: 'r', amount: undefined };
  const isCounted = piece.text === 'runs' && at === 1 && bare(all[0]) !== undefined;
  return isCounted ? { ...piece, kind: 'n', names: ['run time'] } : piece;
}

const WHERE = /^(?:at|on|in|by|for|over|near|past|through|off|up|down|after|along|from)$/;
/** Words that leave open what was read, so that where it was read says it. */
const OPEN =
  /^(?:temps?|temperature|tmp|pressure|gauge|meter|vac|light|screws?|needles?|jets?|gap|clearance|advance)$/;
const SELF = new Set(['fuel economy', 'road speed', 'voltage', 'power']);

/** `fuel pressure 5.5 on the gauge`: a word of the trade that only says where, behind a number that has its own. */
function isWhere(all: readonly Piece[], at: number): boolean {
  const piece = all[at] as Piece;
  const opener = /^(?:the|a|her|each)$/.test(all[at - 1]?.text ?? '') ? at - 2 : at - 1;
  if (piece.kind !== 'n' || !WHERE.test(all[opener]?.text ?? '')) return false;
  const start = all.findLastIndex(({ kind }, i) => i < at && /[,;(]/.test(kind)) + 1;
  const end = all.findIndex(({ kind }, i) => i > at && /[,;)]/.test(kind));
  const before = all.slice(start, opener);
  const value = before.findLastIndex(({ kind }) => kind === 'v');
  if (value < 0 || all.slice(at, end < 0 ? all.length : end).some(({ kind }) => kind === 'v')) return false;
  const named = before.filter(({ kind }) => kind === 'n');
  if (named.length === 0) return SELF.has(before[value]?.amount?.unit?.dimension ?? '');
  const isOther = named.every(
    ({ names, text }) => !OPEN.test(text) && !names.some((name) => piece.names.includes(name)),
  );
  return isOther && before.findIndex(({ kind }) => kind === 'n') < value;
}

const FITTED = /^(?:put|puts|stuck|popped|dropped|bunged|swapped|fitted|threw|screwed|slipped|went)$/;
