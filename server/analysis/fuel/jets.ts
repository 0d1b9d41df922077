/** Jets: the change in area with each size, and the size that suits the air of the day. */

import { firstAmount } from '../../model/entry/amount.ts';
import type { Origin } from '../../model/entry/entry.ts';
import { saidBetween } from '../../model/snapshot/locate.ts';
import type { Page } from '../../model/snapshot/page.ts';
import { sectionsUpFrom } from '../../model/snapshot/section-ranges.ts';
import { ofName } from '../../model/state/immutable.ts';
import { settingText } from '../../model/state/setting-text.ts';
import type { SettingInForce, State } from '../../model/state/state.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { exact, type Interval, middle, monotoneEach, multiply } from '../../trade/measure/interval.ts';
import { convertInterval, type Unit, unitById } from '../../trade/measure/units.ts';
import { JET_CAUTION, jetAreaForAir, jetDiameterForAir, relativeDensity } from '../../trade/sums/air.ts';
import { areaChangePercent } from '../../trade/sums/carburation.ts';
import { nearestListed } from '../../trade/sums/drills.ts';
import { namesWith, VOCABULARY } from '../../trade/vocabulary/vocabulary.ts';
import { airOfSessionAt, referenceDay } from '../air/reference-day.ts';
import { airOf, type DayAir, densityOf } from '../air/session-air.ts';
import { type Figure, type FigureContext, figure, type Working } from '../figure.ts';
import { inWords, jetSizes } from '../inputs.ts';

/** Metering jets: sized by number, by bore or by flow. */
const JETS: readonly string[] = VOCABULARY.filter(
  (quantity) => quantity.kind === 'setting' && quantity.orIn?.includes('fuel flow'),
).map((quantity) => quantity.name);

const MAIN_JETS = namesWith('mainJet');

export const JET_CHANGES: Working = {
  topic: 'fuel',
  about: JETS,
  work: (moment, word) => jetsInForce(moment.state, word, JETS).flatMap((jet) => changes(jet, moment)),
};

export const JET_FOR_AIR: Working = {
  topic: 'air',
  about: [...MAIN_JETS, 'weather'],
  work: (moment, word) => jetsInForce(moment.state, word, MAIN_JETS).flatMap((jet) => forAir(jet, moment)),
};

/** More jets than an engine has are not gone into: of more, those last named. */
const MOST_JETS = 24;

/** All of the names; only the one asked about where it is one of them. */
function jetsInForce(
  { settings }: State,
  word: string | undefined,
  names: readonly string[],
): readonly SettingInForce[] {
  const wanted = word !== undefined && names.includes(word) ? [word] : names;
  return ofName(settings, wanted, MOST_JETS)
    .filter((setting) => setting.base !== undefined)
    .slice(-MOST_JETS);
}

const nameOf = ({ quantity, place }: SettingInForce): string =>
  place ? `${quantity.name} ${place}` : quantity.name;

interface Size {
  readonly text: string;
  readonly interval: Interval;
  readonly unit: Unit;
  readonly by: Origin;
}

function sizeOf(setting: SettingInForce): Size | undefined {
  const amount = firstAmount(setting.values);
  if (setting.values.length !== 1 || !amount?.interval) return undefined;
  const unit = amount.unit ?? unitById('number');
  return { text: formatValue(amount.interval, unit), interval: amount.interval, unit, by: setting.by };
}

/** Sizes this jet has had, each with its change in area, which flow follows. */
function changes(setting: SettingInForce, moment: FigureContext): readonly Figure[] {
  const sizes = history(setting, moment);
  const [before, now] = sizes.slice(-2);
  if (!before || !now) return [];
  const value = areaChange(before, now);
  if (!value) return [];
  const by = now.unit.dimension === 'fuel flow' ? 'flow' : 'area';
  return [
    figure({
      topic: 'fuel',
      name: `${nameOf(setting)} ${by}`,
      text: `${signed(value)} from ${before.text} to ${now.text}`,
      value,
      unit: unitById('%'),
      formula: FORMULAS[by],
      working: `(${now.text} / ${before.text})${by === 'area' ? '²' : ''} - 1 = ${signed(value)}`,
      inputs: [before, now].map((size) => ({ name: nameOf(setting), value: size.text, by: size.by })),
      standing: 'published',
      source:
        'orifice equation; a jet number is taken as proportional to the bore, as most makers number them',
      rows: [
        ['set', 'size', by],
        ...sizes.map((size, i) => [size.by.date ?? '', size.text, changeText(sizes[i - 1], size)]),
      ],
    }),
  ];
}

const FORMULAS = {
  area: '(size after / size before) squared - 1',
  flow: 'flow after / flow before - 1',
} as const;

const changeText = (before: Size | undefined, after: Size): string => {
  const change = before && areaChange(before, after);
  return change ? signed(change) : '';
};

/** In per cent; undefined where the two are not given in the same form. */
function areaChange(before: Size, after: Size): Interval | undefined {
  if (before.unit.dimension !== after.unit.dimension || !(before.interval.low > 0)) return undefined;
  const sizes = [convertInterval(before.interval, before.unit, after.unit), after.interval] as const;
  return after.unit.dimension === 'fuel flow'
    ? monotoneEach(sizes, (a, b) => (b / a - 1) * 100)
    : monotoneEach(sizes, areaChangePercent);
}

const signed = (percent: Interval): string => (percent.low > 0 ? '+' : '') + inWords(percent, '%', 0.1);

/** Older sizes than these are left out. */
const MOST_SIZES = 12;

/**
 * Successive values of the setting of this name and place. A session at whose end it is as at its beginning
 * is not read: what was changed and changed back within one session is passed over.
 */
function history(
  { quantity, place }: SettingInForce,
  { state, snapshot, line }: FigureContext,
): readonly Size[] {
  const key = `${quantity.name}|${place}`;
  const at = ({ settings }: State): Size | undefined => {
    const setting = settings.get(key);
    return setting?.base && sizeOf(setting);
  };
  let sizes: readonly Size[] = [];
  let after = at(state);
  for (const { from, to } of sectionsUpFrom(snapshot, line)) {
    if (sizes.length >= MOST_SIZES) break;
    const before = at((snapshot.pages[from] as Page).before);
    if (before?.text !== after?.text) {
      const end = Math.min(line + 1, snapshot.starts[to] as number);
      const read = [...saidBetween(snapshot, snapshot.starts[from], end)];
      sizes = changesIn([...read.flatMap((reading) => at(reading.after) ?? []), ...sizes]);
    }
    after = before;
  }
  return sizes.slice(-MOST_SIZES);
}

const changesIn = (sizes: readonly Size[]): readonly Size[] =>
  sizes.filter((size, i) => size.text !== sizes[i - 1]?.text);

/** Jet for the air of this session, from the air in which it was set (else the reference day). */
function forAir(setting: SettingInForce, moment: FigureContext): readonly Figure[] {
  const now = airOf(moment.state);
  const size = sizeOf(setting);
  const from = now && size && airItWasSetIn(setting, moment);
  if (!now || !size || !from) return [];
  const ratio = monotoneEach([densityOf(now), densityOf(from.air)] as const, relativeDensity);
  const area = monotoneEach([ratio] as const, jetAreaForAir);
  const diameter = monotoneEach([ratio] as const, jetDiameterForAir);
  const isFlow = size.unit.dimension === 'fuel flow';
  const value = multiply(size.interval, isFlow ? area : diameter);
  const { unit } = size;
  // No series of numbered jets is finer than a tenth.
  const wanted = unit.dimension === 'number' ? inWords(value, unit.id, 0.1) : formatValue(value, unit);
  const [byArea, byBore] = [percent(area), percent(diameter)];
  return [
    figure({
      topic: 'air',
      name: `${nameOf(setting)} for this air`,
      text: `${wanted}${atHand(value, unit, moment.state)}: area ${byArea}, bore ${byBore} from ${size.text} in the air of ${from.name}`,
      value,
      unit,
      formula: isFlow
        ? 'flow x square root of the density ratio'
        : 'bore x fourth root of the density ratio; area with its square root',
      working: `${size.text} x ${inWords(ratio, 'number')}^${isFlow ? '1/2' : '1/4'} = ${wanted}`,
      inputs: [
        { name: nameOf(setting), value: settingText(setting), by: setting.by },
        ...now.inputs,
        ...from.air.inputs,
      ],
      standing: 'published',
      source: 'orifice equation; a jet number is taken as proportional to the bore',
      caution: JET_CAUTION,
    }),
  ];
}

const percent = (factor: Interval): string =>
  signed(monotoneEach([factor] as const, (each) => 100 * (each - 1)));

/** Air the jet was set in; undefined in the session that set it, where the air is the same. */
function airItWasSetIn(
  setting: SettingInForce,
  moment: FigureContext,
): { readonly name: string; readonly air: DayAir } | undefined {
  const own = airOfSessionAt(moment.snapshot, setting.by);
  if (setting.by.date !== undefined && setting.by.date === moment.state.session?.date) return undefined;
  return own ? { name: setting.by.date ?? 'the day it was set', air: own } : referenceDay(moment);
}

/** `, nearest at hand 118`: from the notebook's own list. */
function atHand(wanted: Interval, unit: Unit, state: State): string {
  const nearest = nearestListed(jetSizes(state, unit), middle(wanted));
  return nearest === undefined ? '' : `, nearest at hand ${formatValue(exact(nearest), unit)}`;
}
