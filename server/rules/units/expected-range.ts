/** Values outside the usual range of their word, and the mistake that would explain each. */
import type { QuantityEntry, Statement } from '../../model/entry/entry.ts';
import type { Amount } from '../../model/entry/value.ts';
import type { Context, Fix } from '../../model/snapshot/finding.ts';
import { keyOf } from '../../model/state/state.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { contains, type Interval, middle } from '../../trade/measure/interval.ts';
import { convertInterval, type Unit, unitById } from '../../trade/measure/units.ts';
import type { Band, Quantity } from '../../trade/vocabulary/quantity.ts';
import { bandIn, bandText } from '../lib/band-text.ts';
import { signedAmounts } from '../lib/statement-values.ts';
import { family, NO_PROBLEMS, type ProblemOf, problemsIn, replaceWith } from '../rule.ts';

export const expectedRange = family({
  rules: [
    {
      code: 'degrees-mixed-up',
      severity: 'warning',
      title: 'Degrees Fahrenheit and Celsius mixed up',
      why: 'Gauges come in both. The value is outside its usual range as written, and inside it in the other degrees.',
      standing: 'common practice',
      good: 'session 2026-05-02\n  water 82 C\n',
      bad: 'session 2026-05-02\n  water 82 F\n',
      outranks: ['missing-unit'],
    },
    {
      code: 'units-mixed-up',
      severity: 'warning',
      title: 'Units of two systems mixed up',
      why: 'The value is outside its usual range as written, and inside it in another unit that is often used for the same thing.',
      standing: 'common practice',
      good: 'session 2026-05-02\n  points gap 0.4 mm\n',
      bad: 'session 2026-05-02\n  points gap 0.4 in\n',
      outranks: ['missing-unit'],
    },
    {
      code: 'ten-times',
      severity: 'warning',
      title: 'Ten times too much or too little',
      why: 'A zero too many or a misplaced decimal point makes a value ten times too large or small. The value is outside its usual range, and a tenth of it or ten times it is inside.',
      standing: 'common practice',
      good: 'session 2026-05-02\n  idle 750 rpm\n',
      bad: 'session 2026-05-02\n  idle 75 rpm\n',
    },
    {
      code: 'outside-band',
      severity: 'warning',
      title: 'A value outside the usual range',
      why: "Each word of the trade has a range its value is usually in. A value outside it is more often a typing error, a wrong unit or a bad gauge than the truth; the message says what the range is based on. The maker's figure overrules it.",
      standing: 'common practice',
      good: 'session 2026-05-02\n  idle 850 rpm\n',
      bad: 'session 2026-05-02\n  idle 2400 rpm\n',
    },
  ],
  on: ['setting', 'reading', 'fact'],
  about: ({ band, parts }) => band !== undefined || parts !== undefined,
  check: (entry, context) =>
    problemsIn(entry.statements, (said) =>
      isOfColdEngine(entry.quantity, said)
        ? NO_PROBLEMS
        : problemsIn(signedAmounts(said, entry.kind), (amount) => {
            const outside = outsideBand(entry, said, amount, context);
            return outside ? [problemOf(outside, entry)] : NO_PROBLEMS;
          }),
    ),
});

interface Outside {
  readonly quantity: Quantity;
  readonly amount: Amount;
  /** The value in the unit it was written in, with relative changes added up. */
  readonly value: Interval;
  readonly unit: Unit;
  readonly band: Band;
  /** The mistake that would explain it; undefined where none or more than one would. */
  readonly slip: Slip | undefined;
}

type Slip =
  | { readonly kind: 'unit'; readonly unit: Unit }
  | { readonly kind: 'ten times'; readonly value: number };

type Code = 'outside-band' | 'ten-times' | 'degrees-mixed-up' | 'units-mixed-up';

function problemOf(outside: Outside, entry: QuantityEntry): ProblemOf<Code> {
  const { amount, quantity, value, unit, band, slip } = outside;
  const { span } = amount;
  if (!slip) return { code: 'outside-band', span, message: messageOf(outside) };
  const odd = `${quantity.name} ${formatValue(value, unit)} is outside the usual ${bandText(band, unit)}`;
  if (slip.kind === 'ten times') {
    const plain = /^[\d.]+$/.test(entry.line.text.slice(amount.numberSpan.from, amount.numberSpan.to));
    return {
      code: 'ten-times',
      span,
      message: `${odd}. Did you mean ${slip.value}?`,
      fixes: plain ? [replaceWith(amount.numberSpan, String(slip.value))] : [],
    };
  }
  const { symbol } = slip.unit;
  return {
    code: unit.dimension === 'temperature' ? 'degrees-mixed-up' : 'units-mixed-up',
    span,
    message: `${odd}; ${formatValue(value, slip.unit)} is inside. Did you mean ${symbol}?`,
    fixes: [writeUnit(amount, symbol)],
  };
}

/** Replaces the written unit, or adds one after the number. */
const writeUnit = ({ unitSpan }: Amount, symbol: string): Fix =>
  unitSpan.from < unitSpan.to
    ? replaceWith(unitSpan, symbol)
    : { title: `Write "${symbol}"`, edits: [{ span: unitSpan, text: ` ${symbol}` }] };

function messageOf({ quantity, amount, value, unit, band }: Outside): string {
  const side = value.low > bandIn(unit, band).high ? 'above' : 'below';
  const name = `${quantity.name} ${formatValue(value, unit)}`;
  const finding = amount.relative ? `This makes ${name}, ${side}` : `${name} is ${side}`;
  return `${finding} the usual ${bandText(band, unit)}.`;
}

/** Whether a temperature was taken on a cold engine, which is as cold as the day. */
const isOfColdEngine = (quantity: Quantity, said: Statement): boolean =>
  quantity.dimension === 'temperature' && said.qualifiers.includes('cold');

function outsideBand(
  entry: QuantityEntry,
  said: Statement,
  amount: Amount,
  { after }: Context,
): Outside | undefined {
  const { quantity } = entry;
  const whole = amount.relative ? sumOf(after.settings.get(keyOf(quantity.name, said.place?.text))) : amount;
  const unit = whole?.unit ?? unitById(quantity.unit ?? 'number');
  const band = bandFor(quantity, unit);
  if (!whole?.interval || !band || isInside(whole.interval, unit, band)) return undefined;
  return { quantity, amount, value: whole.interval, unit, band, slip: slipOf(amount, unit, band) };
}

/** The value after a relative change, where its start is known. */
function sumOf(setting: { readonly values: readonly unknown[]; readonly base: unknown } | undefined) {
  return setting?.base ? (setting.values[0] as Amount | undefined) : undefined;
}

const bandFor = ({ band, parts }: Quantity, { dimension }: Unit): Band | undefined => {
  const found = band ?? parts?.find((part) => part.dimension === dimension)?.band;
  return found && unitById(found.unit).dimension === dimension ? found : undefined;
};

function isInside(value: Interval, unit: Unit, band: Band): boolean {
  const { low, high } = convertInterval(value, unit, unitById(band.unit));
  const slack = 1e-9 * Math.max(Math.abs(band.low), Math.abs(band.high));
  return high >= band.low - slack && low <= band.high + slack;
}

function slipOf(amount: Amount, unit: Unit, band: Band): Slip | undefined {
  if (amount.relative || !amount.interval) return undefined;
  const value = amount.interval;
  if (unit.dimension !== 'temperature' && isJustOutside(value, bandIn(unit, band))) return undefined;
  const units = (OFTEN_MIXED.get(unit.id) ?? [])
    .map(unitById)
    .filter((other) => isInside(value, other, band));
  const usual = unitById(band.unit);
  const only = isInside(value, usual, band) ? usual : units.length === 1 ? units[0] : undefined;
  const ten = tenthOrTenfold(value, bandIn(unit, band));
  if (only && (ten === undefined || unit.dimension === 'temperature')) return { kind: 'unit', unit: only };
  return ten !== undefined && units.length === 0 ? { kind: 'ten times', value: ten } : undefined;
}

/** Whether a value is so near the band that the engine itself may be odd and another unit explains nothing. Common practice, no source. */
const isJustOutside = ({ low, high }: Interval, band: Interval): boolean =>
  low <= 1.1 * band.high && high >= band.low / 1.1;

/** Factor outside the band from which a misplaced zero explains a value better than an odd engine. Common practice, no source. */
const FAR_OUT = 2.5;

function tenthOrTenfold(value: Interval, band: Interval): number | undefined {
  const n = middle(value);
  const isFar = n > 0 && (n > FAR_OUT * band.high || FAR_OUT * n < band.low);
  if (!isFar || value.low !== value.high) return undefined;
  return [10, 0.1]
    .map((factor) => Number((n * factor).toPrecision(12)))
    .find((other) => contains(band, other));
}

/** Units found side by side on instruments, in drawers and in manuals, so often mixed up. */
const OFTEN_MIXED: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries({
    F: ['C'],
    C: ['F'],
    in: ['mm', 'thou'],
    mm: ['in', 'thou'],
    thou: ['in', 'mm'],
    psi: ['bar', 'kPa'],
    bar: ['psi', 'kPa'],
    kPa: ['psi', 'bar', 'inHg'],
    inHg: ['kPa', 'mmHg', 'hPa'],
    hPa: ['inHg', 'mmHg', 'kPa'],
    kg: ['lb'],
    cc: ['L', 'cu-in'],
    L: ['cc', 'cu-in'],
  }),
);
