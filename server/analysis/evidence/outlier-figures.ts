/** A reading against its own past under the same conditions, as a question where it is an outlier. */

import { saidBetween } from '../../model/snapshot/locate.ts';
import { sessionHead } from '../../model/snapshot/section-ranges.ts';
import { formatNumber } from '../../trade/measure/format.ts';
import { SCORE_LIMIT, WITHIN_GAUGES } from '../../trade/sums/noise.ts';
import type { Figure, FigureContext, Working } from '../figure.ts';
import { nameOf, tellerOf } from './effect-text.ts';
import { type AgainstPast, againstPast } from './outliers.ts';

export const HISTORY: Working = {
  topic: 'history',
  about: 'every word',
  work: (moment, word) => {
    const lines = linesOf(moment, word);
    return lines.size === 0 ? [] : againstPast(moment.snapshot, lines).map(figureOf);
  },
};

/** With a word, the line itself if it is a reading of it; else the session's lines up to here. */
function linesOf({ snapshot, line, state }: FigureContext, word: string | undefined): ReadonlySet<number> {
  const head = word === undefined ? sessionHead(snapshot, state) : undefined;
  const read = [...saidBetween(snapshot, head ?? line, line + 1)].filter(
    ({ entry }) => entry.kind === 'reading' && (word === undefined || entry.quantity.name === word),
  );
  return new Set(read.map(({ where }) => where.ref.line));
}

function figureOf({ reading, number, median, deviation, score, odd, past }: AgainstPast): Figure {
  const teller = tellerOf(reading);
  const asText = teller.number;
  const [low, high] = [Math.min(...past), Math.max(...past)];
  const range = `${past.length} earlier readings ${teller.value({ low, high, about: false })}, median ${asText(median)}`;
  return {
    topic: 'history',
    name: `${nameOf(reading)} against past readings`,
    text: odd
      ? `${asText(number)} is unlike past readings: ${range}. Misread, or has something changed?`
      : `${asText(number)} is in line with past readings: ${range}`,
    value: teller.own(reading.value),
    unit: teller.unit,
    formula: '0.6745 x distance from the median / median absolute deviation',
    working: `deviation ${teller.size(deviation)}, score ${formatNumber(score, undefined)}; flagged from ${SCORE_LIMIT} up if over ${100 * WITHIN_GAUGES} % off`,
    inputs: [{ name: nameOf(reading), value: asText(number), by: reading.by }],
    standing: 'published',
    source: 'modified z-score, NIST/SEMATECH e-Handbook of Statistical Methods 1.3.5.17',
    caution: undefined,
    rows: [],
  };
}
