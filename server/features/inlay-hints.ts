/** Inlay hints after a line: the total it makes, the difference from last time, the value in another unit. */

import type { NumberFigure } from '../analysis/figure.ts';
import { totalNamed } from '../analysis/ignition/timing-totals.ts';
import type { QuantityEntry, SpokenEntry } from '../model/entry/entry.ts';
import { linesBetween } from '../model/snapshot/locate.ts';
import { type LineState, saidOn } from '../model/snapshot/page.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import type { State } from '../model/state/state.ts';
import { lineSpan } from '../rules/lib/line-syntax.ts';
import { formatValue } from '../trade/measure/format.ts';
import type { Hint, HintKind, Remark } from './inlay-hints/hint.ts';
import { readingChanges } from './inlay-hints/readings.ts';
import { settingChanges } from './inlay-hints/settings.ts';
import { inOtherUnits, type UnitChoice } from './units.ts';

export type { Hint, HintKind } from './inlay-hints/hint.ts';

interface HintChoice {
  readonly kinds: ReadonlySet<HintKind>;
  readonly units: UnitChoice;
}

/** Hints of the lines `from` to before `to`, in their order. */
export function hintsOf(snapshot: Snapshot, from: number, to: number, choice: HintChoice): readonly Hint[] {
  if (choice.kinds.size === 0) return [];
  const lines = [...linesBetween(snapshot, Math.max(0, from), to)];
  const changes = choice.kinds.has('change') ? readingChanges(snapshot, lines) : new Map<number, Remark>();
  return lines.flatMap((reading) => {
    const { entry, at } = reading;
    if (entry.kind === 'spoken') return spokenHints(reading, entry, choice);
    if (!('statements' in entry) || entry.isVoid) return [];
    const position = { line: at, character: endOf(entry) };
    return remarksOn(reading, entry, choice, changes.get(at)).map((remark) => ({ position, ...remark }));
  });
}

/** What the line was taken for, and the totals it changes. */
function spokenHints(
  reading: LineState & { readonly at: number },
  entry: SpokenEntry,
  { kinds }: HintChoice,
): readonly Hint[] {
  const position = { line: reading.at, character: lineSpan(entry.line).to };
  const said = saidOn(reading);
  const meant = entry.as
    .filter((line) => !/^note\b/.test(line))
    .map((line) => line.replace(/^(session \S+).*/, '$1').replace(/ +/g, ' '));
  const text = `→ ${meant.join('; ')}`;
  const about = 'what this line means; it can be written so from the light bulb';
  const remarks: Remark[] = kinds.has('spoken') && meant.length > 0 ? [{ kind: 'spoken', text, about }] : [];
  if (kinds.has('total'))
    for (const { entry: each, before, after } of said)
      if (each.kind === 'setting') remarks.push(...totals(each, before, after));
  return remarks.map((remark) => ({ position, ...remark }));
}

const endOf = ({ statements: said, name }: QuantityEntry): number =>
  Math.max(name.to, ...said.map(({ span }) => span.to));

function remarksOn(
  { before, after }: LineState,
  entry: QuantityEntry,
  { kinds, units }: HintChoice,
  change: Remark | undefined,
): readonly Remark[] {
  const remarks: Remark[] = [];
  if (kinds.has('change')) remarks.push(...settingChanges(entry, before, after), ...(change ? [change] : []));
  if (kinds.has('total') && entry.kind === 'setting') remarks.push(...totals(entry, before, after));
  if (kinds.has('unit')) remarks.push(...otherUnit(entry, units));
  return remarks;
}

const TOTALS: ReadonlyMap<string, string> = new Map([
  ['total', 'total'],
  ['cruise total', 'cruise'],
  ['timing at idle', 'idle'],
]);

/** Totals that the line changes, with the unit written once: an editor cuts long hints. */
function totals({ quantity }: QuantityEntry, before: State, after: State): readonly Remark[] {
  if (quantity.owner !== 'distributor') return [];
  const changed = [...TOTALS.keys()].flatMap((name) => {
    const total = totalNamed(after, name);
    return total && !isSame(total, totalNamed(before, name)) ? [total] : [];
  });
  if (changed.length === 0) return [];
  const texts = changed.map(({ name, value, unit }) => `${TOTALS.get(name)} ${formatValue(value, unit)}`);
  const text = texts.map((each, i) => (i < texts.length - 1 ? each.replace(/ deg$/, '') : each)).join(', ');
  const about = changed.map(({ name, working }) => `${name}: ${working}`).join('\n');
  return [{ kind: 'total', text, about }];
}

const isSame = (a: NumberFigure, b: NumberFigure | undefined): boolean =>
  a.value.low === b?.value.low && a.value.high === b.value.high && a.value.about === b.value.about;

function otherUnit({ statements: said, quantity }: QuantityEntry, units: UnitChoice): readonly Remark[] {
  const [only, ...others] = said;
  const amounts = only?.values.filter((value) => value.form === 'amount') ?? [];
  if (others.length > 0 || amounts.length === 0 || quantity.form === 'several') return [];
  const { preferred, others: beside } = inOtherUnits(amounts, quantity, units);
  const text = preferred ?? beside[0];
  return text === undefined ? [] : [{ kind: 'unit', text: `= ${text}`, about: 'the same in another unit' }];
}
