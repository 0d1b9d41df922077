/** What is carried on from lines of plain speech, beyond what they mean: days without a date, doubts, what was said last. */
import type { AskedEntry, Origin, SessionEntry, SpokenEntry } from '../entry/entry.ts';
import { machineIn } from '../spoken/machines.ts';
import { inDoubt } from './apply-setting.ts';
import { habitsAfterHead } from './habits.ts';
import { startSession } from './start-session.ts';
import type { State } from './state.ts';

/** A day begins where its date is asked too: what is below it is none of the day before. */
export function withAsked(before: State, entry: AskedEntry, where: Origin): State {
  const state = before.trial ? { ...before, trial: undefined } : before;
  if (entry.head) {
    const title = entry.line.text.trim();
    const head: SessionEntry = {
      ...entry,
      kind: 'session',
      date: undefined,
      dateText: undefined,
      clock: undefined,
      title,
    };
    const after = startSession(state, head, { ...where, date: undefined });
    return entry.head === 'elsewhere' ? { ...after, isElsewhere: true } : after;
  }
  return entry.doubts.length === 0
    ? state
    : { ...state, settings: inDoubt(state.settings, entry.doubts, where) };
}

/** What a spoken head shows of how days are dated here, and what the notebook is kept of. */
export function withHead(state: State, { entries, line }: SpokenEntry): State {
  const head = entries.find((entry) => entry.kind === 'session');
  if (!head) return state;
  const habits = habitsAfterHead(state.habits, line.text, head);
  return { ...state, habits, machine: state.machine ?? machineIn(head.title) };
}

/** Lines that what follows may lean on: a table's head and its rows, "2 more". */
const RECENT_LINES = 12;

export function withLines(state: State, lines: readonly string[]): State {
  if (state.section !== 'session' || state.inConflict) return state;
  const said = lines.filter((line) => !/^session\b/i.test(line));
  if (said.length === 0) return state;
  return { ...state, recentLines: [...state.recentLines, ...said].slice(-RECENT_LINES) };
}

/** The section that a spoken line goes to is its own: what is below it still belongs to the day. */
export function backIn(before: State, after: State): State {
  if (before.section === after.section || after.section === 'session') return after;
  const {
    section,
    session,
    portsHead,
    readings,
    checksDueSinceRun,
    rechecks,
    recheckIndex,
    jetAir,
    recentLines,
  } = before;
  return {
    ...after,
    section,
    session,
    portsHead,
    readings,
    checksDueSinceRun,
    rechecks,
    recheckIndex,
    jetAir,
    recentLines,
  };
}
