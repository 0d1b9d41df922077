/** Ports in force: each with what is connected to it, and the section that says so. */
import { portState } from '../../trade/sums/ports.ts';
import type { Origin, PortEntry } from '../entry/entry.ts';
import { ofName, put, withoutKey } from './immutable.ts';
import { keyOf, type State } from './state.ts';

type Ports = Pick<State, 'ports' | 'connected'>;

/** Moves a hose that a later section puts on another port: the old port is then unknown. */
export function withPort(state: State, entry: PortEntry, by: Origin): Ports {
  const { name, on = '' } = entry;
  const path = entry.path.map((word) => word.text);
  const thing = path.length === 0 ? thingOn(on) : '';
  let { ports } = state;
  let connected = withoutKey(state.connected, keyOf(thingOn(ports.get(name)?.on ?? ''), name));
  for (const other of ofName(connected, thing, MOST_ENDS)) {
    const port = ports.get(other);
    if (!port || sameSection(port.within, state.portsHead)) continue;
    ports = put(ports, other, { ...port, on: '', movedTo: name });
    connected = withoutKey(connected, keyOf(thing, other));
  }
  ports = put(ports, name, { on, path, by, within: state.portsHead, movedTo: undefined });
  return { ports, connected: thing === '' ? connected : put(connected, keyOf(thing, name), name) };
}

/** The other ports of this section that a thing is on. */
export const alsoOn = (
  { ports, connected, portsHead }: State,
  thing: string,
  name: string,
): readonly string[] =>
  ofName(connected, thing, MOST_ENDS).filter(
    (other) => other !== name && sameSection(ports.get(other)?.within, portsHead),
  );

/** Most ports searched for one thing, the latest: a hose has two ends. */
const MOST_ENDS = 24;

/** What is connected to a port, as a key; empty for nothing. */
export const thingOn = (on: string): string => portState(on).thing.replaceAll('|', ' ');

export const sameSection = (a: Origin | undefined, b: Origin | undefined): boolean =>
  a?.ref.line === b?.ref.line;
