/** Carburettor screws: where each was set over time, and what it means when they have no effect. */

import type { Origin } from '../../model/entry/entry.ts';
import { saidBetween } from '../../model/snapshot/locate.ts';
import { sessionHead } from '../../model/snapshot/section-ranges.ts';
import { keyOf } from '../../model/state/state.ts';
import { PLATES_TOO_FAR_OPEN } from '../../trade/practice/idle-screws.ts';
import type { Comparison } from '../evidence/comparisons.ts';
import { evidenceOf } from '../evidence/comparisons.ts';
import { nameOf, withHead } from '../evidence/effect-text.ts';
import { againstNoise, causeText } from '../evidence/effects.ts';
import type { Figure, FigureContext, Working } from '../figure.ts';
import { readTrial } from '../trials/trial.ts';
import { trialsOfSession } from '../trials/written-trials.ts';
import { NOTED_WITHOUT_EFFECT } from './idle-readings.ts';
import { type Turn, turnsUpTo } from './screw-turns.ts';

/** Most settings of a screw that are shown, the latest. */
const MOST_ROWS = 12;

export const TURNS: Working = {
  topic: 'idle and mixture',
  about: ['mixture', 'idle screw', 'secondary stop', 'fast idle screw'],
  work: ({ snapshot, line, state }, word) => {
    // Screws of a carburettor that is off the engine are not shown.
    const turns = turnsUpTo(snapshot, line).filter(
      ({ name, place }) => (word === undefined || name === word) && state.settings.has(keyOf(name, place)),
    );
    return [...byScrew(turns).values()].filter((each) => each.length > 1).map(history);
  },
};

/** Screws without effect: shown by a flat trial, by a note, or by readings that stayed within the scatter. */
export const NO_EFFECT: Working = {
  topic: 'idle and mixture',
  about: ['mixture', 'idle', 'trial'],
  work: (moment) => withoutEffect(moment),
};

function byScrew(turns: readonly Turn[]): ReadonlyMap<string, readonly Turn[]> {
  const screws = new Map<string, Turn[]>();
  for (const turn of turns) {
    const screw = `${turn.name} ${turn.place}`.trim();
    const known = screws.get(screw);
    if (known) known.push(turn);
    else screws.set(screw, [turn]);
  }
  return screws;
}

function history(turns: readonly Turn[]): Figure {
  const [first, last] = [turns[0] as Turn, turns.at(-1) as Turn];
  const screw = `${first.name} ${first.place}`.trim();
  const shown = turns.slice(-MOST_ROWS);
  return {
    topic: 'idle and mixture',
    name: `turns of ${screw}`,
    text: `${last.stands}, set ${turns.length} times since ${first.by.date ?? 'the first line'}${shown.length < turns.length ? `; the last ${shown.length} shown` : ''}`,
    value: undefined,
    unit: undefined,
    formula: 'as written, with turns in and out added up',
    working: shown.map(({ written }) => written).join(', then '),
    inputs: [{ name: screw, value: last.stands, by: last.by }],
    standing: 'common practice',
    source: 'as written in the notebook',
    caution: undefined,
    rows: withHead(
      ['date', 'written', 'now at'],
      shown.map(({ by, written, stands }) => [by.date ?? '', written, stands]),
    ),
  };
}

interface Sign {
  readonly text: string;
  readonly by: Origin;
}

function withoutEffect(moment: FigureContext): readonly Figure[] {
  const signs = [...flatTrials(moment), ...notes(moment), ...quietReadings(moment)];
  if (signs.length === 0) return [];
  return [
    {
      topic: 'idle and mixture',
      name: 'mixture screws without effect',
      text: PLATES_TOO_FAR_OPEN,
      value: undefined,
      unit: undefined,
      formula: 'a trial without response, a note, or readings within the scatter',
      working: signs.map(({ text }) => text).join('; '),
      inputs: signs.map(({ text, by }) => ({ name: 'evidence', value: text, by })),
      standing: 'common practice',
      source: 'no source',
      caution: undefined,
      rows: [],
    },
  ];
}

function flatTrials(moment: FigureContext): readonly Sign[] {
  return trialsOfSession(moment).flatMap(({ trial }): Sign[] => {
    const { knob, response, fit } = readTrial(trial, moment.state.words);
    if (knob.quantity?.name !== 'mixture' || !fit?.flat) return [];
    return [{ text: `trial of ${knob.name}: ${response.name} ${fit.flat}`, by: trial.by }];
  });
}

/**
 * Notes about screws count here, where somebody looks, and in no rule: a note is a person's own sentence, which may as well
 * say that the trouble is over; and it takes its whole line, so nothing on the line could silence a finding.
 */
function notes({ snapshot, state, line }: FigureContext): readonly Sign[] {
  const head = sessionHead(snapshot, state);
  if (head === undefined) return [];
  return [...saidBetween(snapshot, head, line + 1)].flatMap(({ entry, where }): Sign[] =>
    entry.kind === 'note' && NOTED_WITHOUT_EFFECT.test(entry.text)
      ? [{ text: `noted: ${entry.text}`, by: where }]
      : [],
  );
}

/** Readings that did not move, only where the scatter is known: without it one such reading means nothing. */
function quietReadings({ snapshot, state }: FigureContext): readonly Sign[] {
  const evidence = evidenceOf(snapshot);
  const ofSession = ({ after }: Comparison) =>
    after.by.date !== undefined && after.by.date === state.session?.date;
  return evidence.comparisons.filter(ofSession).flatMap((comparison): Sign[] => {
    const { changes, after } = comparison;
    const [change] = changes;
    if (!change || changes.length > 1 || change.name !== 'mixture') return [];
    if (!['idle', 'depression'].includes(after.quantity.name)) return [];
    if (!againstNoise(comparison, evidence)?.within) return [];
    return [{ text: `${causeText(change)} turned, ${nameOf(after)} within the scatter`, by: after.by }];
  });
}
