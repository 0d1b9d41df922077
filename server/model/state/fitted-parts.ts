/** Fitted parts: what goes on and comes off, with the settings each owns. */
import { partKind } from '../../trade/vocabulary/parts.ts';
import type { PartKind } from '../../trade/vocabulary/quantity.ts';
import type { FitEntry, Origin } from '../entry/entry.ts';
import { addChange } from './changed-since-reading.ts';
import { put, putAll, without, withoutKey } from './immutable.ts';
import { withChecksDue } from './road-checks-due.ts';
import type { State } from './state.ts';

/** The kind of a part by its name: as declared, else by the words of the name. */
export function kindOfPart(state: State, name: string): PartKind | undefined {
  return state.parts.get(name)?.part ?? partKind(name.split(' '));
}

/** Fits a part: the settings of the one before it are parked under its name, and this one's own are restored. */
export function fitPart(state: State, entry: FitEntry, where: Origin): State {
  const kind = kindOfPart(state, entry.name);
  if (!kind || state.fitted.get(kind)?.name === entry.name) return state;
  const bare = takeOff(state, kind);
  const back = bare.parked.get(entry.name) ?? new Map();
  const after: State = {
    ...bare,
    changesSinceReading: state.fitted.has(kind)
      ? addChange(state.changesSinceReading, kind, where)
      : state.changesSinceReading,
    settings: putAll(bare.settings, back),
    fitted: put(bare.fitted, kind, { name: entry.name, written: writtenName(entry), by: where }),
    parked: withoutKey(bare.parked, entry.name),
  };
  return withChecksDue(after, [{ owner: kind }], where);
}

const writtenName = ({ line, nameSpan }: FitEntry): string =>
  line.text.slice(nameSpan.from, nameSpan.to).replace(/\s+/g, ' ');

export function remove(state: State, entry: FitEntry, where: Origin): State {
  const kind = kindOfPart(state, entry.name);
  if (!kind || state.fitted.get(kind)?.name !== entry.name) return state;
  return withChecksDue(takeOff(state, kind), [{ owner: kind }], where);
}

/** A part that was never named keeps its settings under the empty name of its kind. */
function takeOff(state: State, kind: PartKind): State {
  const owned = new Map([...state.settings].filter(([, setting]) => setting.quantity.owner === kind));
  const name = state.fitted.get(kind)?.name ?? `(${kind})`;
  return {
    ...state,
    settings: without(state.settings, (key) => owned.has(key)),
    fitted: withoutKey(state.fitted, kind),
    parked: owned.size > 0 || state.fitted.has(kind) ? put(state.parked, name, owned) : state.parked,
  };
}
