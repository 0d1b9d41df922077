/** Whole lines of rows without a word for each number: a curve, inlet and exhaust, the looks of plugs, oil down a bore. */
import type { Piece } from '../classify.ts';
import type { Habits } from '../habits.ts';
import { bare } from '../in-context.ts';
import { LOOKS } from '../lexicon.ts';
import { fitsOf } from '../resolve.ts';

/** Lines of the notation; undefined where the line is none of these. */
export const rowsIn = (
  pieces: readonly Piece[],
  text: string,
  habits: Habits,
): readonly string[] | undefined =>
  curveIn(pieces) ?? lashIn(pieces, habits) ?? looksIn(pieces, habits) ?? wetIn(text, habits);

const kindsOf = (pieces: readonly Piece[]): string => pieces.map(({ kind }) => kind).join('');

/** `mechanical 0 at 900, 10 at 1800`: two points at least, each at a higher speed than the one before. */
function curveIn(all: readonly Piece[]): readonly string[] | undefined {
  const pieces = all.filter(({ kind }) => !/[,:/a]/.test(kind));
  if (!/^nf?vg(?:vg)+$/.test(kindsOf(pieces)) || !pieces[0]?.names.includes('mechanical limit'))
    return undefined;
  const values = pieces.filter(({ kind }) => kind === 'v');
  const speeds = pieces.filter(({ kind }) => kind === 'g').map(({ text }) => text);
  const revs = speeds.map((speed) => Number(/^@ (\d+) rpm$/.exec(speed)?.[1] ?? Number.NaN));
  const isRising = revs.every((each, i) => each > (revs[i - 1] ?? 0));
  const isDegrees = values.every(({ amount }) => amount && !amount.high && !amount.prefix && isAngle(amount));
  if (!isRising || !isDegrees) return undefined;
  return [`mechanical ${values.map(({ amount }, i) => `${amount?.low[0]} deg ${speeds[i]}`).join(', ')}`];
}

const isAngle = ({ unit, low }: NonNullable<Piece['amount']>): boolean =>
  (unit === undefined || unit.id === 'deg') && Number(low[0]) <= 40;

/** `in 0,25 ex 0,30 cold`, `inlets 12, ex 14`: clearances, where both are said and nothing else is. */
function lashIn(all: readonly Piece[], habits: Habits): readonly string[] | undefined {
  const pieces = all.filter(({ kind }) => !/[,/a:]/.test(kind));
  const kinds = kindsOf(pieces);
  const places = pieces.filter(({ kind }) => kind === 'p').map(({ text }) => text);
  if (!/^pvpv[rg]?$/.test(kinds) || places.toSorted().join(' ') !== 'exhaust inlet') return undefined;
  const tail = pieces[4]?.text;
  if (tail !== undefined && !/^(?:cold|hot|warm)$/.test(tail)) return undefined;
  const values = pieces
    .filter(({ kind }) => kind === 'v')
    .map(({ amount }) => amount && fitsOf(['valve lash'], amount, habits, false));
  if (values.some((fits) => fits?.length !== 1)) return undefined;
  const said = places.map((place, i) => [place, values[i]?.[0]?.value, tail].filter(Boolean).join(' '));
  return [`valve lash ${said.join(', ')}`];
}

/** `1 3 5 7 tan 2 4 ok 6 oily`: cylinders, then how their plugs look; four of them at least, each once. */
function looksIn(all: readonly Piece[], { cylinders = 8 }: Habits): readonly string[] | undefined {
  const named = all[0]?.kind === 'n' && /^plugs?$/.test(all[0].text);
  const pieces = (named ? all.slice(1) : all).filter(({ kind }) => !/[,:a]/.test(kind));
  const facts: string[] = [];
  const seen = new Set<number>();
  let waiting: number[] = [];
  let groups = 0;
  for (const piece of pieces) {
    const cylinder = bare(piece);
    if (cylinder !== undefined) {
      if (!Number.isInteger(cylinder) || cylinder < 1 || cylinder > cylinders || seen.has(cylinder))
        return undefined;
      seen.add(cylinder);
      waiting.push(cylinder);
    } else if (LOOKS.has(piece.text) && waiting.length > 0) {
      facts.push(...waiting.map((each) => `#${each} ${piece.text}`));
      waiting = [];
      groups++;
    } else return undefined;
  }
  return groups > 1 && seen.size > 3 && waiting.length === 0 ? [`plug ${facts.join(', ')}`] : undefined;
}

const WET =
  /^(?:(?:a )?(?:spoon|spoonful|squirt|shot|drop|drip) of )?oil down (?:no\.? ?|#)?(\d{1,2})(?:,| -|:) ?(\d[\d.,]*)$/i;

/** `oil down 5, 134`: the compression of a bore with oil in it. */
function wetIn(text: string, habits: Habits): readonly string[] | undefined {
  const [, cylinder, size] = WET.exec(text) ?? [];
  const value = cylinder && size && valueAt(cylinder, size, habits);
  return value ? [`compression #${cylinder} ${value} wet`] : undefined;
}

/** Of a cylinder that the engine has. */
function valueAt(cylinder: string, size: string, habits: Habits): string | undefined {
  if (Number(cylinder) < 1 || Number(cylinder) > (habits.cylinders ?? 8)) return undefined;
  const low = [size.replace(',', '.')];
  const number = { low, high: undefined, link: '..', isStep: undefined, called: '', prefix: '' } as const;
  const fits = fitsOf(['compression'], { ...number, unit: undefined, unitText: '' }, habits, false);
  return fits.length === 1 ? fits[0]?.value : undefined;
}
