/** Whole lines of what a meter shows: the distance of a vehicle, where nothing else has numbers of that size. */
import type { Piece } from '../classify.ts';
import type { Habits } from '../habits.ts';
import { sizeOf } from '../numbers.ts';

/** `71,260`, `61.220`: thousands parted as a meter has them, of five figures at least. */
const SHOWN = /^\d{2,3}[., \u2009]\d{3}$/;
const BESIDE = new Set(
  'out home back start finish started finished end ended left arrived there away at on off the and to now in mi km miles kms clock shows say says reads reading is it me today garage depot filled'.split(
    ' ',
  ),
);

/** `72,118`, `out 71,260, home 71,342`: one line for each; undefined where anything else is said. */
export function metersIn(
  pieces: readonly Piece[],
  text: string,
  { units }: Habits,
): readonly string[] | undefined {
  const numbers = pieces.filter(({ kind }) => kind === 'v');
  if (!units || numbers.length === 0 || numbers.length > 2) return undefined;
  const isPlain = pieces.every(
    ({ kind, text: word }) => kind === 'v' || /^[,:;.-]$/.test(kind) || BESIDE.has(word),
  );
  const isShown = numbers.every(
    ({ amount, from, to }) =>
      amount &&
      !amount.unit &&
      !amount.high &&
      amount.prefix === '' &&
      SHOWN.test(text.slice(from, to)) &&
      amount.low.length === 2 &&
      sizeOf(amount.low[1] as string) >= 10_000,
  );
  if (!isPlain || !isShown) return undefined;
  if (!units) return undefined;
  const unit = units === 'metric' ? 'km' : 'mi';
  const shown = numbers.map(({ amount }) => amount?.low[1] as string);
  // A meter never goes back.
  if (shown.length === 2 && Number(shown[0]) > Number(shown[1])) return undefined;
  return shown.map((number) => `odometer ${number} ${unit}`);
}
