/** Drill sizes really sold: number 80..1, letter A..Z, 64ths of an inch to 1/2, metric by tenths. Source: ASME B94.11M. */

export type DrillKind = 'number' | 'letter' | '64ths' | 'metric';

/** One drill: its name as marked on the drill index, and its diameter in inches. */
interface Drill {
  readonly kind: DrillKind;
  readonly name: string;
  readonly inches: number;
}

/** The drill nearest a diameter, and by how much it is over it (inches, negative when under). */
interface NearestDrill {
  readonly drill: Drill;
  readonly over: number;
}

const MM_PER_INCH = 25.4;

/** Ten-thousandths of an inch of the number drills, from 80 down to 1. */
const NUMBER_SIZES: readonly number[] = [
  135, 145, 160, 180, 200, 210, 225, 240, 250, 260, 280, 292, 310, 320, 330, 350, 360, 370, 380, 390, 400,
  410, 420, 430, 465, 520, 550, 595, 635, 670, 700, 730, 760, 785, 810, 820, 860, 890, 935, 960, 980, 995,
  1015, 1040, 1065, 1100, 1110, 1130, 1160, 1200, 1285, 1360, 1405, 1440, 1470, 1495, 1520, 1540, 1570, 1590,
  1610, 1660, 1695, 1730, 1770, 1800, 1820, 1850, 1890, 1910, 1935, 1960, 1990, 2010, 2040, 2055, 2090, 2130,
  2210, 2280,
];

/** Thousandths of an inch of the letter drills, A to Z. */
const LETTER_SIZES: readonly number[] = [
  234, 238, 242, 246, 250, 257, 261, 266, 272, 277, 281, 290, 295, 302, 316, 323, 332, 339, 348, 358, 368,
  377, 386, 397, 404, 413,
];

const FIRST_METRIC_TENTHS = 3;
const LAST_METRIC_TENTHS = 130;

/** Every drill of the four kinds: number, letter, 64ths up to 1/2 in, and 0.3 to 13.0 mm by tenths. */
export const DRILLS: readonly Drill[] = [
  ...NUMBER_SIZES.map((size, index) => drill('number', `#${80 - index}`, size / 10000)),
  ...LETTER_SIZES.map((size, index) => drill('letter', String.fromCharCode(65 + index), size / 1000)),
  ...Array.from({ length: 32 }, (_, index) => drill('64ths', fractionName(index + 1), (index + 1) / 64)),
  ...metricDrills(),
];

function metricDrills(): Drill[] {
  return Array.from({ length: LAST_METRIC_TENTHS - FIRST_METRIC_TENTHS + 1 }, (_, index) => {
    const mm = (FIRST_METRIC_TENTHS + index) / 10;
    return drill('metric', `${mm.toFixed(1)} mm`, mm / MM_PER_INCH);
  });
}

function drill(kind: DrillKind, name: string, inches: number): Drill {
  return { kind, name, inches };
}

function fractionName(sixtyFourths: number): string {
  let [top, bottom] = [sixtyFourths, 64];
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return `${top}/${bottom} in`;
}

/**
 * The drill called by this name: `#21`, `21`, `no. 21`, `F`, `9/32`, `9/32 in`, `9/32"`, `5.5 mm`. A bare whole number is a
 * number drill. Undefined when none is.
 */
export function drillNamed(name: string): Drill | undefined {
  const wanted = plainName(name);
  return DRILLS.find((each) => plainName(each.name) === wanted);
}

function plainName(name: string): string {
  return name
    .toLowerCase()
    .replace(/^(number|no\.?|letter)\s*/, '')
    .replace(/^#/, '')
    .replace(/\s+/g, '')
    .replace(/("|in(ch)?)$/, '')
    .replace(/\.0mm$/, 'mm');
}

/** The drill nearest a diameter in inches among the kinds wanted (all four unless given); the first listed wins a tie. */
export function nearestDrill(inches: number, kinds?: readonly DrillKind[]): NearestDrill | undefined {
  return drillsNear(inches, 1, kinds)[0];
}

/** The `count` drills nearest a diameter in inches, nearest first. */
export function drillsNear(inches: number, count: number, kinds?: readonly DrillKind[]): NearestDrill[] {
  return DRILLS.filter((each) => kinds === undefined || kinds.includes(each.kind))
    .map((each) => ({ drill: each, over: each.inches - inches }))
    .sort((one, other) => Math.abs(one.over) - Math.abs(other.over))
    .slice(0, count);
}

/** The size of a list (a notebook's own jets, say) nearest the one wanted, in one unit; undefined for an empty list. */
export function nearestListed(sizes: readonly number[], wanted: number): number | undefined {
  return sizes.toSorted((one, other) => Math.abs(one - wanted) - Math.abs(other - wanted))[0];
}

/** The size nearest the one wanted that lies a whole number of steps from `from`, where sizes are sold by a step above 0. */
export function nearestStep(wanted: number, step: number, from = 0): number {
  return from + Math.round((wanted - from) / step) * step;
}
