/** Specifications by name, each with the last value written; a torque estimate only where there is no figure. */

import { amountIn } from '../../model/entry/amount.ts';
import { statementText, valueText } from '../../model/entry/as-written.ts';
import type { Origin } from '../../model/entry/entry.ts';
import { specName } from '../../model/entry/spec-names.ts';
import type { Value } from '../../model/entry/value.ts';
import { lineOf, saidAt } from '../../model/snapshot/locate.ts';
import { type LineState, saidBy } from '../../model/snapshot/page.ts';
import { keptByPage, onPages } from '../../model/snapshot/per-page.ts';
import { sectionsUpFrom } from '../../model/snapshot/section-ranges.ts';
import { specFor } from '../../model/state/spec-for.ts';
import type { Spec } from '../../model/state/state.ts';
import {
  contains,
  exact,
  type Interval,
  scale,
  surelyAbove,
  surelyBelow,
  width,
} from '../../trade/measure/interval.ts';
import { unitById } from '../../trade/measure/units.ts';
import {
  CLAMP_SHARE,
  estimateTorqueInch,
  estimateTorqueMetric,
  TORQUE_COEFFICIENTS,
  type TorqueEstimate,
} from '../../trade/sums/fasteners.ts';
import { type Fastener, parseFastener } from '../../trade/sums/threads.ts';
import { type Figure, type FigureContext, figure, type Input, type Working } from '../figure.ts';
import { inWords } from '../inputs.ts';

export const SPECS: Working = { topic: 'specs', about: 'every word', work: specs };

/** Specs of a word; on a spec's own line that one; else all. */
function specs(moment: FigureContext, word?: string): readonly Figure[] {
  const all = [...moment.state.specs.values()];
  if (all.length === 0) return [];
  const own = word === undefined ? undefined : specOnLine(moment, word);
  const asked = own
    ? [own]
    : all.filter((spec) => word === undefined || word === 'spec' || isNamed(spec, word));
  const read = lastReadings(new Set(asked.map(specName)), moment);
  return asked.flatMap((spec) => specFigures(spec, moment, read.get(specName(spec)) ?? []));
}

const isNamed = (spec: Spec, word: string): boolean =>
  word === spec.name || word === spec.quantity.name || word === specName(spec);

/** The spec a line gives, or the one its value is compared with. */
function specOnLine({ snapshot, line, state }: FigureContext, word: string): Spec | undefined {
  const said = saidAt(snapshot, line).map((each) => each.entry);
  const entry = said.find((each) => 'quantity' in each && each.quantity?.name === word) ?? said[0];
  if (entry?.kind === 'spec') return state.specs.get(`${entry.name}|${entry.quantity.name}`);
  if (entry?.kind !== 'setting' && entry?.kind !== 'reading') return undefined;
  return entry.quantity.name === word ? specFor(state.specs, entry.quantity, entry.statements[0]) : undefined;
}

function specFigures(spec: Spec, moment: FigureContext, read: readonly Read[]): readonly Figure[] {
  if (spec.values.length > 0) return [recalled(spec, moment, read)];
  const fastener = spec.quantity.dimension === 'torque' ? parseFastener(spec.source ?? '') : undefined;
  const estimate = fastener && estimateOf(fastener);
  return fastener && estimate ? [estimated(spec, fastener, estimate)] : [];
}

function recalled(spec: Spec, moment: FigureContext, read: readonly Read[]): Figure {
  const unit = spec.quantity.unit;
  const wanted = spec.values.map((value) => valueText(value, unit)).join(' ');
  const written = [...settingsOf(spec, moment), ...read];
  const verdicts = written.map(({ text, value }) => `${text}: ${verdict(spec, value)}`);
  const [only] = spec.values;
  const value = spec.values.length === 1 && unit ? amountIn(only, unit, unit) : undefined;
  return figure({
    topic: 'specs',
    name: specName(spec),
    text: [wanted, ...verdicts.map((each) => `last ${each}`)].join('; '),
    value,
    unit: value && unit ? unitById(unit) : undefined,
    formula: 'as written in the notebook',
    working: '',
    inputs: [
      { name: 'given', value: wanted, by: spec.by },
      ...written.map(({ name, text, by }): Input => ({ name, value: text, by })),
    ],
    standing: spec.source === undefined ? 'from memory' : 'published',
    source: spec.source ?? 'no source written',
    caution: "The maker's own figure for this engine overrules this one.",
  });
}

interface Written {
  readonly name: string;
  readonly text: string;
  readonly value: Value;
  readonly by: Origin;
}

/** Values in force. */
function settingsOf(spec: Spec, moment: FigureContext): readonly Written[] {
  const { settings, specs } = moment.state;
  return [...settings.values()].flatMap(
    ({ quantity, place, values, words, by, base }): readonly Written[] => {
      const [value] = values;
      const said = {
        place: place === '' ? undefined : { text: place },
        words: words.map((text) => ({ text })),
      };
      if (!base || !value || values.length !== 1 || specFor(specs, quantity, said) !== spec) return [];
      return [{ name: nameAt(quantity.name, place), text: valueText(value, quantity.unit), value, by }];
    },
  );
}

interface Read extends Written {
  readonly spec: string;
}

const readOn = keptByPage((readings: readonly LineState[]): readonly Read[] =>
  saidBy(readings).flatMap(({ entry, before, where }) => {
    if (entry.kind !== 'reading' || before.specs.size === 0) return [];
    const { quantity, statements: said } = entry;
    return said.flatMap((each) => {
      const spec = specFor(before.specs, quantity, each);
      const [value] = each.values;
      if (!spec || !value) return [];
      const text = `${statementText(each, quantity.unit)}${where.date ? ` on ${where.date}` : ''}`;
      return [
        { spec: specName(spec), name: nameAt(quantity.name, each.place?.text), text, value, by: where },
      ];
    });
  }),
);

/** By the name of a spec, the last reading of each place in the latest session that has any. */
function lastReadings(
  wanted: ReadonlySet<string>,
  { snapshot, line }: FigureContext,
): ReadonlyMap<string, readonly Read[]> {
  const found = new Map<string, readonly Read[]>();
  for (const pages of sectionsUpFrom(snapshot, line)) {
    if (found.size === wanted.size) break;
    const read = onPages(snapshot, pages, readOn).filter(
      ({ spec, by }) =>
        wanted.has(spec) && !found.has(spec) && (lineOf(snapshot, by.ref) ?? line + 1) <= line,
    );
    const byPlace = new Map<string, Map<string, Read>>();
    for (const each of read) {
      const places = byPlace.get(each.spec) ?? new Map<string, Read>();
      byPlace.set(each.spec, places.set(each.name, each));
    }
    for (const [spec, places] of byPlace) found.set(spec, [...places.values()]);
  }
  return found;
}

const nameAt = (name: string, place: string | undefined): string => (place ? `${name} ${place}` : name);

function verdict(spec: Spec, value: Value): string {
  const unit = spec.quantity.unit;
  const [wanted, is] = [spec.values[0], value].map((each) => (unit ? amountIn(each, unit, unit) : undefined));
  if (!wanted || !is) return "can't be compared";
  if (surelyAbove(is, wanted)) return 'above spec';
  if (surelyBelow(is, wanted)) return 'below spec';
  return contains(wanted, is.low) && contains(wanted, is.high) ? 'within spec' : 'may be out of spec';
}

function estimateOf({ system, diameter, thread, grade, lubrication }: Fastener): TorqueEstimate | undefined {
  const estimate = system === 'inch' ? estimateTorqueInch : estimateTorqueMetric;
  return estimate(diameter, thread, grade, TORQUE_COEFFICIENTS[lubrication]);
}

/** Scatter of a torque coefficient: a third either way. */
const SCATTER = { low: 2 / 3, high: 4 / 3, about: true } as const;

function estimated(spec: Spec, fastener: Fastener, estimate: TorqueEstimate): Figure {
  const { torque, clamp } = estimate;
  const inch = fastener.system === 'inch';
  const unit = inch ? 'lb-ft' : 'Nm';
  const k = TORQUE_COEFFICIENTS[fastener.lubrication];
  const size = inch ? `${fastener.diameter} in` : `${fastener.diameter} mm`;
  const force = `${Math.round(clamp)} ${inch ? 'lbf' : 'N'}`;
  const rough: Interval = scale(SCATTER, torque);
  return figure({
    topic: 'specs',
    name: `${specName(spec)}, estimate`,
    text: `about ${inWords(exact(torque), unit, 0.5)}, an estimate (${inWords(rough, unit, 0.5)}), ${fastener.lubrication}`,
    value: width(rough) > 0 ? rough : exact(torque),
    unit: unitById(unit),
    formula: `torque = K x diameter x clamp load; clamp load = ${CLAMP_SHARE} x proof strength x stress area`,
    working: `${k} x ${size} x ${force}${inch ? ' / 12' : ' / 1000'} = ${inWords(exact(torque), unit, 0.5)}`,
    inputs: [{ name: specName(spec), value: spec.source ?? '', by: spec.by }],
    standing: estimate.standing,
    source: `${estimate.source}; K ${k} ${fastener.lubrication} from standard texts`,
    caution: estimate.caution,
  });
}
