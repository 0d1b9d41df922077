/** Whole lines with a form of their own: the engine's facts, limits, a speed at its revs, the rows of a table. */
import type { Piece } from '../classify.ts';
import type { Habits } from '../habits.ts';
import { sizeOf } from '../numbers.ts';
import type { SpokenAmount } from '../spoken-amount.ts';
import { FLAT_OUT } from '../subjects.ts';

/** `fires 18436572`, `firing order 1 3 4 2`: each cylinder once. */
export function firingIn(text: string): readonly string[] | undefined {
  const digits = /^(?:it )?(?:fires|firing order|fire order|firing)[:\s]([\d\s,-]+)$/i.exec(text.trim())?.[1];
  if (!digits) return undefined;
  const split = /[^\d]/.test(digits.trim()) ? digits.split(/\D+/).filter(Boolean) : [...digits.trim()];
  const cylinders = split.map(Number);
  const isOrder =
    cylinders.length > 1 &&
    cylinders.every((_, i) => cylinders.includes(i + 1)) &&
    new Set(cylinders).size === cylinders.length;
  return isOrder ? ['engine', `firing order ${cylinders.join('-')}`] : undefined;
}

const LIMIT =
  /^(?:please )?(?:don'?t|do not|dont|never|not to) (?:ever )?(?:go |run |rev |let (?:it|her) )?(?:go )?(?:past|over|above|beyond|exceed)\s+/i;
const KEEP = /^(?:keep|stay|hold) (?:it |her )?(?:under|below)\s+/i;

/** What stands after `never go over`; undefined for any other line. */
export function limitedIn(text: string): string | undefined {
  const found = LIMIT.exec(text) ?? KEEP.exec(text);
  return found ? text.slice(found[0].length) : undefined;
}

/** `total 36 deg`, as a limit from above; undefined for what is no single value. */
export function atMost(lines: readonly string[]): readonly string[] | undefined {
  const limits = lines
    .map((line) => /^(\D+?) (\d\S*(?: \S+)?)$/.exec(line))
    .map((found) => found && `${found[1]} <= ${found[2]}`);
  return limits.every((limit) => limit !== null) ? ['limits', ...(limits as string[])] : undefined;
}

/** `60 in top is 2900`, `60 to 65, 2900 to 3100`: a road speed and the revs it takes. */
export function speedAtRevs(pieces: readonly Piece[], { units }: Habits): readonly string[] | undefined {
  const open = flatOut(pieces);
  if (open) return open;
  const [speed, revs, ...more] = pieces.filter(({ kind }) => kind === 'v');
  if (!units || !speed?.amount || !revs?.amount || more.length > 0) return undefined;
  if (pieces.some(({ kind }) => !/[vfgr,xc]/.test(kind))) return undefined;
  const states = pieces.filter(({ kind }) => kind === 'g').map(({ text }) => text);
  const isDriving = states.some((state) => /^in (?:top|first|second|3rd|fourth|fifth|6th)$/.test(state));
  const isBoth = Boolean(speed.amount.high && revs.amount.high);
  const given = speed.amount.unit?.dimension === 'road speed';
  if (!(isDriving || isBoth || given) || !isWithin(speed.amount, 5, 180) || !isWithin(revs.amount, 700, 9000))
    return undefined;
  if ((speed.amount.unit && !given) || (revs.amount.unit && revs.amount.unit.id !== 'rpm')) return undefined;
  if (!given && !units) return undefined;
  const unit = speed.amount.unit?.symbol ?? (units === 'metric' ? 'km/h' : 'mph');
  return [[`speed ${numberOf(speed.amount)} ${unit} @ ${numberOf(revs.amount)} rpm`, ...states].join(' ')];
}

/** `31 mph flat out at 4100`: what it does with the throttle wide open, and the revs of it. */
function flatOut(pieces: readonly Piece[]): readonly string[] | undefined {
  const kinds = pieces.map(({ kind }) => kind).join('');
  const at = kinds.indexOf('v');
  const speed = pieces[at]?.amount;
  const [open, revs] = [pieces[at + 1], pieces[at + 2]];
  const isIt = open && FLAT_OUT.has(open.text) && revs?.kind === 'g' && revs.text.startsWith('@');
  if (!isIt || !speed || speed.unit?.dimension !== 'road speed' || !/^f*vgg(?:h[xfarv]*)?$/.test(kinds))
    return undefined;
  return [`speed ${numberOf(speed)} ${speed.unit.symbol}`, `wide open speed ${revs.text.slice(2)}`];
}

const isWithin = ({ low, high }: SpokenAmount, from: number, to: number): boolean =>
  [low.at(-1), high?.at(-1)].every(
    (each) => each === undefined || (sizeOf(each) >= from && sizeOf(each) <= to),
  );

const numberOf = ({ low, high, prefix }: SpokenAmount): string =>
  `${prefix}${low.at(-1)}${high ? `..${high.at(-1)}` : ''}`;

/** What the columns of a hand-drawn table are called, and where they are taken from: the heading among the lines above. */
const COLUMNS: readonly (readonly [heading: RegExp, name: string])[] = [
  [/^(?:cyl|cylinder|no|#)\.?$/i, 'cylinder'],
  [/^(?:pilot|mixture|mix|screw|air screw)s?$/i, 'mixture'],
  [/^(?:clip|needle|needle clip)s?$/i, 'needle clip'],
  [/^mains?(?: jets?)?$/i, 'main jet'],
  [/^(?:comp|compression)s?$/i, 'compression'],
  [/^(?:vac|vacuum|depression)$/i, 'depression'],
  [/^(?:gap|plug gap)s?$/i, 'plug gap'],
  [/^(?:slow|idle) jets?$/i, 'idle jet'],
];

const cellsOf = (text: string): readonly string[] =>
  text
    .replace(/^note /, '')
    .split('|')
    .map((cell) => cell.trim());

interface TableRow {
  /** Nothing stands between it and its heading but other rows. */
  readonly isNext: boolean;
  readonly cylinder: number;
  readonly cells: readonly { readonly name: string; readonly text: string }[];
}

/** A row under its heading; a ditto takes what the row above has. */
export function rowUnder(text: string, lines: readonly string[]): TableRow | undefined {
  const cells = cellsOf(text);
  if (cells.length < 3) return undefined;
  const headed = lines.findLastIndex((line) => /^(?:note )?[^\d|]+\|/.test(line));
  const heading = lines[headed];
  const names = heading ? cellsOf(heading).map((cell) => COLUMNS.find(([said]) => said.test(cell))?.[1]) : [];
  if (
    names[0] !== 'cylinder' ||
    names.length !== cells.length ||
    names.includes(undefined) ||
    !/^\d+$/.test(cells[0] as string)
  )
    return undefined;
  const cylinder = Number(cells[0]);
  return {
    cylinder,
    isNext: lines
      .slice(headed + 1)
      .every((line) => names.some((name) => name && line.startsWith(`${name} #`))),
    cells: cells.slice(1).map((cell, i) => {
      const name = names[i + 1] as string;
      return { name, text: cell === '"' ? above(lines, name, cylinder) : cell };
    }),
  };
}

const above = (lines: readonly string[], name: string, cylinder: number): string =>
  lines
    .findLast((line) => line.startsWith(`${name} #${cylinder - 1} `))
    ?.slice(`${name} #${cylinder - 1} `.length) ?? '';
