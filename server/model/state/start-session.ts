/** A day begins: what belonged to the one before is let go. */
import type { Origin, SessionEntry } from '../entry/entry.ts';
import { jetAirAfter } from './jet-air.ts';
import { ageWindows } from './reading-window.ts';
import { cooledDown, withRechecksDue } from './rechecks.ts';
import { NO_WORK } from './road-checks-due.ts';
import type { State } from './state.ts';

export function startSession(state: State, entry: SessionEntry, where: Origin): State {
  const { date, clock, title } = entry;
  const later = date !== undefined && (state.lastDate === undefined || date >= state.lastDate.date);
  return withRechecksDue(state, {
    ...state,
    section: 'session',
    recentLines: NO_LINES,
    isElsewhere: false,
    session: { date, title, by: where },
    lastDate: later ? { date, clock, by: where } : state.lastDate,
    portsHead: undefined,
    readings: NO_READINGS,
    checksDueSinceRun: NO_WORK,
    jetAir: jetAirAfter(state),
    recheckIndex: cooledDown(state.recheckIndex),
    recentReadings: ageWindows(state.recentReadings),
  });
}

const NO_LINES: State['recentLines'] = [];
const NO_READINGS: State['readings'] = new Map();
