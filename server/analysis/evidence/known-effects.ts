/** Cause and effect: a reading against the last comparable one, and the known effects and scatter of the whole notebook. */

import { saidAt } from '../../model/snapshot/locate.ts';
import { exact } from '../../trade/measure/interval.ts';
import type { Figure, FigureContext, Working } from '../figure.ts';
import { type Evidence, evidenceOf } from './comparisons.ts';
import { each, nameOf, readingName, repeats, tellerOf } from './effect-text.ts';
import { type Effect, effectsIn, leastReal } from './effects.ts';
import { comparisonFigures } from './since-last.ts';

export const COMPARED: Working = {
  topic: 'effects',
  about: 'every word',
  work: (moment, word) => {
    const evidence = evidenceFor(moment, word);
    return evidence ? comparisonFigures(moment, evidence, word) : [];
  },
};

export const KNOWN_EFFECTS: Working = { topic: 'effects', about: 'every word', work: knownEffects };

/** Most rows the table shows. */
const MOST_ROWS = 40;

function knownEffects(moment: FigureContext, word?: string): readonly Figure[] {
  const evidence = evidenceFor(moment, word);
  if (!evidence) return [];
  const known = effectsIn(evidence, word);
  return [...(known.length > 0 ? [table(known)] : []), ...noiseFigures(evidence, word)];
}

/** Undefined where there is none, or it does not involve the word. */
function evidenceFor(moment: FigureContext, word: string | undefined): Evidence | undefined {
  if (word !== undefined && !isAbout(moment, word)) return undefined;
  const evidence = evidenceOf(moment.snapshot);
  return evidence.comparisons.length === 0 ? undefined : evidence;
}

/** Whether the line is a setting or reading of the word; nothing else has effects, and walking them all would slow a hover. */
function isAbout({ snapshot, line }: FigureContext, word: string): boolean {
  return saidAt(snapshot, line).some(
    ({ entry }) =>
      entry.kind === 'fit' ||
      ((entry.kind === 'setting' || entry.kind === 'reading') && entry.quantity.name === word),
  );
}

function table(known: readonly Effect[]): Figure {
  const sorted = [...known].sort((a, b) => b.sizes.length - a.sizes.length).slice(0, MOST_ROWS);
  const credited = known.filter(({ verdict }) => verdict === 'clear of the scatter').length;
  const unknown = known.some(({ verdict }) => verdict === 'scatter not known');
  const left = known.length > MOST_ROWS ? `; the ${MOST_ROWS} seen most often are shown` : '';
  return {
    topic: 'effects',
    name: 'known effects',
    text: `${known.length} seen, ${credited} clear of the scatter${left}${unknown ? '; repeat a reading with nothing changed to measure its scatter' : ''}`,
    value: undefined,
    unit: undefined,
    formula: 'difference between two comparable readings / the one change between them',
    working: '',
    inputs: [],
    standing: 'published',
    source: 'ISO 5725-6: two readings differ by less than 2.8 standard deviations 19 times in 20',
    caution: undefined,
    rows: [['change', 'reading', 'effect', 'seen', 'spread', 'verdict'], ...sorted.map(row)],
  };
}

function row(effect: Effect): readonly string[] {
  const { cause, reading, sizes, mean, spread, airMoved, verdict } = effect;
  const teller = tellerOf(reading);
  const air = airMoved > 0 ? `, air changed in ${airMoved}` : '';
  return [
    cause,
    nameOf(reading),
    `${teller.signed(mean)}${effect.per ? ` per ${each(effect.per)}` : ''}`,
    `${sizes.length}${air}`,
    sizes.length > 1 ? teller.size(spread) : '',
    verdict,
  ];
}

function noiseFigures({ noise, comparisons }: Evidence, word: string | undefined): readonly Figure[] {
  const latest = new Map(comparisons.map(({ after }) => [after.family, after]));
  return [...noise].flatMap(([family, known]): Figure[] => {
    const reading = latest.get(family);
    if (!reading || (word !== undefined && reading.quantity.name !== word)) return [];
    const teller = tellerOf(reading);
    const { rough, size } = teller;
    const least = leastReal(known);
    return [
      {
        topic: 'effects',
        name: `repeatability of ${readingName(reading.quantity.name, '', reading.under)}`,
        text: `${rough(known.deviation)}; a change under ${rough(least)} can't be told from scatter`,
        value: teller.ownDifference(exact(known.deviation)),
        unit: teller.unit,
        formula: 'pooled standard deviation of repeat readings; least real change = t x root 2 x deviation',
        working: `deviation ${size(known.deviation)} from ${repeats(known.degrees)}; least real change ${size(least)}`,
        inputs: [],
        standing: 'published',
        source: 'ISO 5725-6, with Student t for few repeats',
        caution: undefined,
        rows: [],
      },
    ];
  });
}
